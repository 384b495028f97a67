"""Things are called by their author's names, in words that make a sentence."""

from dataclasses import replace

import pytest

from guidebuild.device.acts import Verb
from guidebuild.device.designation import parse_screw
from guidebuild.device.naming import all_called, called, done, listed, lowered, subject
from guidebuild.device.record import POWER, Device, Group
from guidebuild.device.states import Kind
from guidebuild.device.things import Case, Connector, Hole, Joint, Part, Store, Thing
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source

HERE = Span(Source("devices/elm/device.yaml", ""), 0, 0)


def said(text: str) -> Said:
    return Said(text, HERE)


def part(key: str, name: str | None) -> Part:
    return Part(key=key, id=key, span=HERE, kind=Kind.PART, name=said(name) if name else None)


def hole(key: str, screw: str) -> Hole:
    known = parse_screw(screw, HERE)
    assert known is not None
    group = key.partition(".")[0]
    return Hole(
        key=key,
        id=key,
        span=HERE,
        kind=Kind.FASTENER,
        group=group,
        screw=(Case(known, None, HERE),),
    )


def device(*things: Thing) -> Device:
    groups: dict[str, Group] = {}
    for thing in things:
        if isinstance(thing, Hole):
            before = groups.get(thing.group)
            holes = (*(before.holes if before else ()), thing.key)
            groups[thing.group] = Group(thing.group, HERE, holes, None)
    power = Store(key=POWER, id=POWER, span=HERE, kind=Kind.POWER)
    by_key = {thing.key: thing for thing in (power, *things)}
    names = {key: (key,) for key in by_key}
    return Device(
        id="elm",
        name=said("Elm"),
        span=HERE,
        base="frame",
        identify=None,
        options=(),
        things=by_key,
        names=names,
        groups=groups,
        functions={},
        hazards={},
        pictures={},
        views={},
    )


ELM = device(
    part("frame", "Frame"),
    part("usb", "USB board"),
    part("clips", "Spring clips"),
    part("glass", "Glass"),
    part("bare", None),
    hole("plate.near", "M2x4 pan TX6"),
    hole("plate.far", "M2x6 pan TX6"),
    hole("rim.1", "M3x8 pan TX10"),
    hole("rim.2", "M3x8 pan TX10"),
    Connector(key="flex", id="flex", span=HERE, kind=Kind.CONNECTOR),
    Joint(key="pad", id="pad", span=HERE, kind=Kind.JOINT, joint="press"),
    Store(key="oil", id="oil", span=HERE, kind=Kind.STORE, store="fluid"),
)


@pytest.mark.parametrize(
    ("key", "words"),
    [
        ("frame", "the frame"),
        ("usb", "the USB board"),
        ("bare", "part bare"),
        ("plate.near", "screw plate.near (M2x4 pan TX6)"),
        ("flex", "plug flex"),
        ("pad", "press fit pad"),
        ("oil", "store oil"),
        (POWER, "the power"),
    ],
)
def test_one_thing(key: str, words: str) -> None:
    assert called(ELM, key) == words


def test_screws_of_a_group_are_named_together() -> None:
    assert all_called(ELM, ["rim.1", "rim.2"]) == "screws rim (M3x8 pan TX10)"
    assert all_called(ELM, ["plate.near", "plate.far"]) == "screws plate"
    assert all_called(ELM, ["frame", "rim.2", "usb"]) == (
        "the frame, screw rim.2 (M3x8 pan TX10) and the USB board"
    )


def test_a_screw_that_differs_by_configuration_has_no_designation() -> None:
    one = hole("plate.near", "M2x4 pan TX6")
    other = hole("plate.near", "M2x5 pan TX6").screw
    assert called(device(replace(one, screw=one.screw + other)), "plate.near") == "screw plate.near"


@pytest.mark.parametrize(
    ("keys", "verb"),
    [(["frame"], "is"), (["clips"], "are"), (["glass"], "is"), (["frame", "usb"], "are")],
)
def test_a_name_in_the_plural_has_a_plural_verb(keys: list[str], verb: str) -> None:
    assert subject(ELM, keys)["is"] == verb


@pytest.mark.parametrize(
    ("verb", "key", "words"),
    [
        (Verb.REMOVE, "frame", "taken off"),
        (Verb.REMOVE, "rim.1", "taken out"),
        (Verb.REFIT, "frame", "fitted"),
        (Verb.REFIT, "rim.1", "put back"),
        (Verb.RELEASE, "oil", "drained"),
        (Verb.RESTORE, "oil", "filled"),
        (Verb.RELEASE, "pad", "opened"),
        (Verb.SWITCH_OFF, POWER, "switched off"),
    ],
)
def test_what_was_done(verb: Verb, key: str, words: str) -> None:
    assert done(verb, ELM.things[key]) == words


def test_every_act_has_a_word() -> None:
    assert all(done(verb, ELM.things["frame"]) for verb in Verb)


def test_lists() -> None:
    assert listed([]) == ""
    assert listed(["a"]) == "a"
    assert listed(["a", "b"]) == "a and b"
    assert listed(["a", "b", "c"]) == "a, b and c"
    assert listed(["a", "b", "c", "d", "e"]) == "a, b, c and 2 more"


def test_small_letters_inside_a_sentence() -> None:
    assert lowered("Plug plate") == "plug plate"
    assert lowered("LCD") == "LCD"
    assert lowered("") == ""


def with_name(one: Device, group: str, name: str) -> Device:
    """The device with a name for a group of screws."""
    named = replace(one.groups[group], name=said(name))
    return replace(one, groups={**one.groups, group: named})


def test_screws_are_called_by_the_name_of_their_group() -> None:
    """The author writes ids; a person at the bench says what is printed on the list."""
    holes = [hole(f"cap-screws.{where}", "M4x10 pan TX20") for where in ("a", "b", "c")]
    one = with_name(device(*holes, hole("drain.1", "M8x12 pan TX40")), "cap-screws", "Cap screws")
    one = with_name(one, "drain", "Drain screw")
    assert called(one, "drain.1") == "the drain screw (M8x12 pan TX40)"
    assert called(one, "cap-screws.b") == "screw b of the cap screws (M4x10 pan TX20)"
    assert all_called(one, [f"cap-screws.{where}" for where in "ab"]) == (
        "screws a and b of the cap screws"
    )
    assert subject(one, [f"cap-screws.{where}" for where in "abc"]) == {
        "thing": "the cap screws (M4x10 pan TX20)",
        "is": "are",
        "it": "them",
    }
