"""Allows and settings over all guides, and what a shared stage would tell twice."""

from guidebuild.build.loudness import loudness
from guidebuild.build.settle import settle
from guidebuild.guide.settings import Settings
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Category, Loudness, Told
from guidebuild.source.text import Source
from tests.build.guides import allow, found, outcome, span

USUAL = Settings()
ALLOWS = "allow: {look-alike-screws: It is so here.}\n"
GUIDE = Source("guides/a.md", f"---\n{ALLOWS}---\nundo: pins\nundo: plugs\n")
OTHER = Source("guides/b.md", "undo: pins\n")
SHARED = Source("guides/shared/safe.md", f"undo: pins\n{ALLOWS}")


def rules(slips: tuple[Slip, ...]) -> list[str]:
    return [slip.finding.rule for slip in slips]


def test_findings_are_told_by_path_then_place_then_rule() -> None:
    first, second = found(GUIDE, "pins"), found(GUIDE, "plugs")
    earlier_rule = found(GUIDE, "plugs", rule="fastener-left-loose")
    outcomes = [outcome(OTHER, found(OTHER, "pins")), outcome(GUIDE, second, earlier_rule, first)]
    told = [slip.finding for slip in settle(outcomes, [], USUAL)]
    assert told == [first, earlier_rule, second, found(OTHER, "pins")]


def test_an_allow_in_the_front_matter_silences_the_whole_guide() -> None:
    here = allow(GUIDE, "look-alike-screws")
    done = outcome(GUIDE, found(GUIDE, "pins"), found(GUIDE, "plugs"), allows=(here,))
    assert settle([done], [], USUAL) == ()


def test_an_allow_in_the_front_matter_silences_the_shared_stages_of_that_guide_only() -> None:
    here = allow(GUIDE, "look-alike-screws")
    in_stage = found(SHARED, "pins")
    quiet, loud = outcome(GUIDE, in_stage, allows=(here,)), outcome(OTHER, in_stage)
    assert settle([quiet], [], USUAL) == ()
    (told,) = settle([quiet, loud], [], USUAL)
    assert told.guides == (OTHER.path,)


def test_an_allow_in_a_block_silences_that_block_only() -> None:
    here = allow(GUIDE, "look-alike-screws", over="undo: pins")
    done = outcome(GUIDE, found(GUIDE, "pins"), found(GUIDE, "plugs"), allows=(here,))
    assert [slip.finding.span.text for slip in settle([done], [], USUAL)] == ["plugs"]


def test_an_allow_silences_its_own_rule_only() -> None:
    here = allow(GUIDE, "look-alike-screws")
    other = found(GUIDE, "pins", rule="fastener-left-loose")
    done = outcome(GUIDE, other, found(GUIDE, "plugs"), allows=(here,))
    assert rules(settle([done], [], USUAL)) == ["fastener-left-loose"]


def test_an_allow_that_silences_nothing_is_told() -> None:
    done = outcome(GUIDE, allows=(allow(GUIDE, "look-alike-screws"),))
    (told,) = settle([done], [], USUAL)
    assert told.finding.rule == "allow-not-needed"
    assert told.finding.span.text == "look-alike-screws"


def test_an_allow_of_a_shared_stage_is_needed_if_one_guide_needs_it() -> None:
    here = allow(SHARED, "look-alike-screws", over="undo: pins")
    needs, needs_not = (
        outcome(GUIDE, found(SHARED, "pins"), allows=(here,)),
        outcome(OTHER, allows=(here,)),
    )
    assert settle([needs, needs_not], [], USUAL) == ()
    assert rules(settle([needs_not], [], USUAL)) == ["allow-not-needed"]


def test_a_guide_checked_alone_says_nothing_about_allows_of_shared_stages() -> None:
    done = outcome(OTHER, allows=(allow(SHARED, "look-alike-screws"),))
    assert settle([done], [], USUAL, whole=False) == ()


def test_an_allow_of_no_rule_is_told_with_the_nearest_name() -> None:
    source = Source("guides/c.md", "allow: {look-alike-screw: It is so here.}")
    (told,) = settle([outcome(source, allows=(allow(source, "look-alike-screw"),))], [], USUAL)
    assert told.finding.rule == "allow-unknown"
    assert "look-alike-screws" in told.finding.help


def test_an_allow_without_a_reason_silences_and_is_told() -> None:
    here = allow(GUIDE, "look-alike-screws", reason=" ")
    (told,) = settle([outcome(GUIDE, found(GUIDE, "pins"), allows=(here,))], [], USUAL)
    assert told.finding.rule == "allow-without-reason"


def test_what_two_guides_tell_alike_of_a_shared_stage_is_told_once() -> None:
    both = [outcome(GUIDE, found(SHARED, "pins")), outcome(OTHER, found(SHARED, "pins"))]
    (told,) = settle(both, [], USUAL)
    assert told.guides == (GUIDE.path, OTHER.path)


def test_what_they_tell_of_other_units_is_told_apart() -> None:
    only = Told("only when a = b", 1, 2)
    both = [
        outcome(GUIDE, found(SHARED, "pins")),
        outcome(OTHER, found(SHARED, "pins", told=only)),
    ]
    assert len(settle(both, [], USUAL)) == 2


def test_each_category_has_its_usual_loudness() -> None:
    loud = {each: loudness(USUAL, "any", each, "draft") for each in Category}
    assert loud == {
        Category.SAFETY: Loudness.ERROR,
        Category.CORRECTNESS: Loudness.ERROR,
        Category.SUSPICIOUS: Loudness.WARNING,
        Category.TEXT: Loudness.WARNING,
        Category.TRANSLATION: Loudness.WARNING,
    }


def test_settings_make_a_rule_louder_softer_or_silent_by_status() -> None:
    told = {"look-alike-screws": {"": "note", "draft": "off", "released": "warning"}}
    settings = Settings(rules=told)
    loud = {
        status: [slip.loudness for slip in settle([done], [], settings)]
        for status in ("draft", "tried", "released", "")
        for done in [outcome(GUIDE, found(GUIDE, "pins"), status=status)]
    }
    assert loud == {
        "draft": [],
        "tried": [Loudness.NOTE],
        "released": [Loudness.WARNING],
        "": [Loudness.NOTE],
    }


def test_a_shared_finding_is_as_loud_as_in_its_loudest_guide() -> None:
    settings = Settings(rules={"look-alike-screws": {"draft": "note", "": "error"}})
    both = [
        outcome(GUIDE, found(SHARED, "pins"), status="draft"),
        outcome(OTHER, found(SHARED, "pins")),
    ]
    (told,) = settle(both, [], settings)
    assert told.loudness is Loudness.ERROR


def test_an_allow_of_a_rule_that_is_off_is_not_called_useless() -> None:
    settings = Settings(rules={"look-alike-screws": {"": "off"}})
    done = outcome(GUIDE, found(GUIDE, "pins"), allows=(allow(GUIDE, "look-alike-screws"),))
    assert settle([done], [], settings) == ()


def test_settings_for_a_rule_that_does_not_exist_are_told_with_the_nearest_name() -> None:
    source = Source("guidebuild.yaml", "rules: {look-alike-screw: off}")
    settings = Settings(rule_spans={"look-alike-screw": span(source, "look-alike-screw")})
    (told,) = settle([], [], settings)
    assert told.finding.rule == "unknown-key"
    assert "look-alike-screws" in told.finding.help
