"""What a translator sends back into a catalogue that went on in the meantime: fresh, outdated, known or gone."""

from dataclasses import replace

from guidebuild.translate.catalogue.bring import Brought, brought, by_id
from guidebuild.translate.po.entry import Catalogue
from guidebuild.translate.segments.take import segments
from tests.translate.edits import CHANGES, NOTHING, Part, catalogue_of, fresh, guide_of, part


def back(returned: Catalogue, parts: list[Part], before: Catalogue = NOTHING) -> Brought:
    """`returned` brought into the catalogue of the guide as it is now."""
    now = catalogue_of(parts, before)
    return brought(now, returned, by_id(now, segments(guide_of(parts))), "en")


def changed(edit: str) -> Part:
    """A step whose hazard is edited, or whose signal word is."""
    one = part(1)
    if edit == "signal word":
        return replace(one, level="danger")
    hazard = replace(one.hazard, words=CHANGES[edit](one.hazard.words))
    return replace(one, hazard=hazard)


def test_what_was_made_for_the_source_as_it_is_is_taken() -> None:
    done = back(fresh([part(1)]), [part(1)])
    assert (done.taken, done.older, done.empty, done.gone) == (
        len(done.catalogue.entries),
        0,
        0,
        (),
    )
    assert back(fresh([part(1)]), [part(1)], done.catalogue).known == done.taken


def test_what_was_made_for_another_signal_word_is_kept_as_outdated() -> None:
    """It has the same words, but it was written for a warning, and this is a danger now."""
    now = [changed("signal word")]
    done = back(fresh([part(1)]), now)
    (hazard,) = [one for one in done.catalogue.entries if "spring" in one.source]
    assert done.older >= 1
    assert hazard.fuzzy
    assert "changed: signal word warning → danger" in hazard.notes
    again = catalogue_of(now, done.catalogue)
    assert again.entries == done.catalogue.entries


def test_what_was_made_for_an_older_hazard_never_takes_the_place_of_a_fresh_one() -> None:
    now = [changed("negation")]
    current = fresh(now)
    done = back(fresh([part(1)]), now, current)
    assert all(not one.fuzzy for one in done.catalogue.entries)
    assert {one.translations for one in current.entries} == {
        one.translations for one in done.catalogue.entries
    }


def test_a_sentence_that_is_no_longer_there_is_told() -> None:
    short = replace(part(1), lines=part(1).lines[:1])
    assert len(back(fresh([part(1)]), [short]).gone) == 2
