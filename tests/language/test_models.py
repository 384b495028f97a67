"""What needs more than one file: models joined, records based on others, kits, packing, shared stages."""

from guidebuild.device.option import Origin
from guidebuild.device.states import State
from guidebuild.device.things import Part
from guidebuild.guide.content import GuideRead
from guidebuild.read.content import read_content
from tests.language.folders import laid_out, read
from tests.language.told import told

P2 = """\
device: larch-p2
name: Larch P2
base: frame
options: {revision: {ask: Which letter?, values: {a: "A", b: "B"}}}
parts:
  frame: Frame
  cover: {name: Cover, opens-to: 70}
  head: {name: Print head, behind: cover}
  bar: {name: Peel bar, mounted-on: head}
  bracket: {name: Bracket, when: revision = b}
fasteners:
  screws: {holds: cover, screw: M2x4 pan TX6, holes: {left: , right: }}
functions: {printing: Printing}
"""
P3 = """\
device: larch-p3
based-on: larch-p2
name: Larch P3
options: {revision: {values: [b, c]}}
parts:
  cover: {opens-to: 90}
  bar: {dropped: true}
  fan: Fan
fasteners:
  screws: {holes: {right: {screw: M2x6 pan TX6}, middle: }}
"""
HEAD = "---\ntitle: Look inside\n{}\ngoal: {{inspect: head}}\n{}---\n\n"
STEP = "# Open it\n\n## Take the cover off\n\n```part\nremove: cover\nundo: screws\n```\n"


def one(files: dict[str, str]) -> GuideRead:
    """The only guide of a folder in which nothing is wrong."""
    content, findings = read(files)
    assert [f"{found.rule}: {found.message}" for found in findings] == []
    (guide,) = content.guides
    assert guide.whole
    return guide


def both(
    front: str = "devices: [larch-p2, larch-p3]", more: str = "", body: str = STEP
) -> dict[str, str]:
    """Two models, and a guide for what `front` says."""
    return {
        "devices/larch-p2/device.yaml": P2,
        "devices/larch-p3/device.yaml": P3,
        "guides/larch/look-inside.md": HEAD.format(front, more) + body,
    }


def test_a_record_starts_from_another() -> None:
    device = one(both("device: larch-p3")).device
    assert list(device.things) == ["device", "frame", "cover", "head", "bracket", "fan",
                                   "screws.left", "screws.right", "screws.middle"]  # fmt: skip
    cover = device.part("cover")
    assert (str(cover.name), str(cover.opens_to)) == ("Cover", "90")
    assert [case.value.text for case in device.holes[1].screw] == ["M2x6 pan TX6"]
    assert [value.id for value in device.options[0].values] == ["b", "c"]
    assert device.folder == "devices/larch-p3"


def test_models_share_what_is_equal() -> None:
    device = one(both()).device
    assert told(
        tuple(device.part(key).when or "" for key in ("frame", "head", "bracket"))
    ).splitlines() == [
        "- ",
        "- ",
        "- revision is b (10:34-46)",
    ]
    assert device.names["head"] == ("head",)


def test_models_differ_by_model() -> None:
    device = one(both()).device
    assert device.names["cover"] == ("cover@larch-p2", "cover@larch-p3")
    assert device.names["screws.right"] == ("screws.right@larch-p2", "screws.right@larch-p3")
    assert device.names["screws"] == (
        "screws.left",
        "screws.right@larch-p2",
        "screws.right@larch-p3",
        "screws.middle",
    )
    assert told(device.part("cover@larch-p3").when) == "model is larch-p3 (3:11-19)"
    assert told(device.part("bar").when) == "model is larch-p2 (3:11-19)"
    assert device.groups["screws"].holes == device.names["screws"]


def test_the_model_is_an_option() -> None:
    guide = one(both()).guide
    assert [(option.id, option.origin) for option in guide.options] == [
        ("revision", Origin.DEVICE),
        ("model", Origin.MODEL),
    ]
    assert [value.id for value in guide.options[0].values] == ["a", "b", "c"]
    assert [str(value.label) for value in guide.options[1].values] == ["Larch P2", "Larch P3"]
    assert [told(condition) for condition in guide.exclude] == [
        "[model is larch-p2 (3:11-19) and revision is c (3:11-19)]",
        "[model is larch-p3 (3:11-19) and revision is a (3:11-19)]",
    ]


def test_a_condition_may_name_the_model() -> None:
    body = STEP.replace("undo: screws\n", "undo: screws\nwhen: model = larch-p3\n")
    act = one(both(body=body)).guide.steps[0].flow[0]
    assert told(getattr(act, "when")) == "model is larch-p3 (14:7-23)"  # noqa: B009


HEAD_KIT = """\
kit: head-kit
name: Head
brings: head
forms:
  bare: Bare
  whole: {name: Whole, take-off: {tape: Tape}}
take-off: {film: Film}
"""
FAN_KIT = "kit: fan-kit\nname: Fan\nbrings: fan\nforms: {loud: Loud, quiet: Quiet}\n"
BOX_KIT = "kit: box-kit\nname: Box\nmaterials: {wipe: 2}\n"


def kits(*named: str) -> GuideRead:
    """A guide that names these kits."""
    files = both("device: larch-p3", f"kits: [{', '.join(named)}]\n")
    return one(files | {f"kits/{name}-kit.yaml": text for name, text in
                        (("head", HEAD_KIT), ("fan", FAN_KIT), ("box", BOX_KIT))})  # fmt: skip


def test_one_kit_with_forms_asks_how_it_was_supplied() -> None:
    guide = kits("head-kit", "box-kit").guide
    assert [use.option for use in guide.kits] == ["supplied", None]
    option = guide.options[-1]
    assert (option.id, option.origin, str(option.ask)) == ("supplied", Origin.KIT, "Head")
    assert [(value.id, str(value.label)) for value in option.values] == [
        ("bare", "Bare"),
        ("whole", "Whole"),
    ]


def test_two_kits_with_forms_are_told_apart_by_name() -> None:
    assert [use.option for use in kits("head-kit", "fan-kit").guide.kits] == ["head-kit", "fan-kit"]


def test_packing_comes_with_the_new_unit() -> None:
    device = kits("head-kit").device
    film, tape = device.part("film"), device.part("tape")
    assert (film.packing, film.starts, film.when) == (True, State.ABSENT, None)
    assert film.host is not None and film.host.text == "head"
    assert told(tape.when).startswith("supplied is whole")
    assert device.names["film"] == ("film",)
    assert not any(
        isinstance(thing, Part) and thing.packing for thing in one(both()).device.things.values()
    )


SAFE = """\
---
device: larch-p2
allow: {no-test-at-all: Shared.}
---

## Switch it off

```power
switch-off: device
```

## And again

```step
same-as: switch-it-off
```
"""
TWICE = """\
# [Make it safe](shared/safe.md)

# [Make it safe again](shared/safe.md)

```stage
when: revision = b
```
"""


def test_a_shared_stage_drawn_in_twice() -> None:
    files = both("device: larch-p2", body=TWICE) | {"guides/larch/shared/safe.md": SAFE}
    read_ = one(files)
    guide = read_.guide
    assert [stage.id for stage in guide.stages] == ["make-it-safe", "make-it-safe-again"]
    assert [step.id for step in guide.steps] == [
        "switch-it-off",
        "and-again",
        "switch-it-off-2",
        "and-again-2",
    ]
    assert [str(step.same_as) for step in guide.steps[1::2]] == ["switch-it-off", "switch-it-off-2"]
    assert all(
        stage.shared and stage.file == "guides/larch/shared/safe.md" for stage in guide.stages
    )
    assert told(guide.stages[1].when) == "revision is b (12:7-19)"
    assert {str(allow.rule): allow.over.source.path for allow in guide.allows} == {
        "no-test-at-all": "guides/larch/shared/safe.md"
    }
    assert read_.files == (
        "guides/larch/look-inside.md",
        "guides/larch/shared/safe.md",
        "devices/larch-p2/device.yaml",
    )


def test_what_an_allow_covers() -> None:
    body = (
        STEP
        + "allowed\n\n```step\nallow: {a-rule: Step.}\n```\n\n```connector\ndisconnect: x\nallow: {b-rule: }\n```\n"
    )
    content, _ = read(both("device: larch-p2", "allow: {c-rule: All.}\n", body))
    guide = content.guides[0].guide
    over = {str(allow.rule): allow.over.text for allow in guide.allows}
    assert over["a-rule"].startswith("## Take the cover off")
    assert over["b-rule"] == "```connector\ndisconnect: x\nallow: {b-rule: }\n```"
    assert over["c-rule"] == guide.span.text
    assert {str(allow.reason) for allow in guide.allows} == {"All.", "Step.", ""}


def test_one_guide_is_read_without_the_others() -> None:
    files = both("device: larch-p2") | {
        "guides/larch/broken.md": "no front matter",
        "kits/broken.yaml": "kit: [",
    }
    with laid_out(files) as root:
        content, findings = read_content(root, ["guides/larch/look-inside.md"])
    assert findings == []
    assert [one.guide.id for one in content.guides] == ["look-inside"]
    assert set(content.sources) == {"guides/larch/look-inside.md", "devices/larch-p2/device.yaml"}


def test_what_no_guide_draws_on_is_read_too() -> None:
    files = both("device: larch-p2") | {
        "kits/broken.yaml": "kit: [",
        "guides/larch/shared/s.md": "x",
    }
    content, findings = read(files)
    assert sorted({found.span.source.path for found in findings}) == [
        "guides/larch/shared/s.md",
        "kits/broken.yaml",
    ]
    assert set(content.devices) == {"larch-p2", "larch-p3"}
    assert [guide.whole for guide in content.guides] == [True]


def test_a_guide_that_lost_something_is_not_whole() -> None:
    content, findings = read(
        both("device: larch-p2", body=STEP.replace("undo: screws", "undo: nails"))
    )
    assert [found.rule for found in findings] == ["unknown-id"]
    assert [guide.whole for guide in content.guides] == [False]


def test_a_surely_misspelt_id_leads_to_what_it_means() -> None:
    content, findings = read(both("device: larch-p2", body=STEP.replace("screws", "screwss")))
    assert [(found.rule, [edit.text for edit in found.edits]) for found in findings] == [
        ("unknown-id", ["screws"])
    ]
    assert [guide.whole for guide in content.guides] == [True]
    assert content.guides[0].device.names["screwss"] == ("screws.left", "screws.right")
