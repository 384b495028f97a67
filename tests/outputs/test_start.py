"""The alphabetical list of the start page: words with the guides and steps that they lead to."""

from guidebuild.guide.settings import Settings
from guidebuild.outputs.html.page.index import Found
from guidebuild.outputs.html.page.start import MOST, GuideEntry, StartView, start_view
from guidebuild.translate.messages.text import text


def listed(count: int) -> StartView:
    """So many guides with a word in common, and each with one of its own."""
    entries = []
    for number in range(count):
        found = (
            Found("fan", ("take-out", "3")),
            Found("fan", ("put-in", "7")),
            Found(f"lid {number}", None),
        )
        words = (
            text("Rack"),
            "",
            f"R-{number}",
            text(f"Guide {number}"),
            "1",
            text("5 min"),
            "released",
        )
        entries.append(GuideEntry(f"en/r/{number}.html", "r", *words, "fan", found))
    return start_view(Settings(), entries)


def words(view: StartView) -> dict[str, int]:
    """Each word of the list with how many guides it leads to."""
    return {word.words: len(word.places) for _, some in view.letters for word in some}


def test_a_word_leads_to_its_guides_and_their_steps() -> None:
    view = listed(2)
    assert words(view) == {"fan": 2, "lid 0": 1, "lid 1": 1}
    fan = view.letters[0][1][0]
    assert fan.places[0].steps == (("en/r/0.html#take-out", "3"), ("en/r/0.html#put-in", "7"))
    assert fan.places[1].number == "R-1"


def test_a_word_of_very_many_guides_is_left_to_the_search() -> None:
    assert words(listed(MOST))["fan"] == MOST
    many = listed(MOST + 1)
    assert "fan" not in words(many)
    assert len(words(many)) == MOST + 1
    assert all(entry.words == "fan" for device in many.devices for entry in device.guides)
