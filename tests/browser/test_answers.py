"""Answers choose what is shown; the address holds them."""

from tests.browser.reader import Reader
from tests.browser.site import Site
from tests.browser.window import Window

BRACKET = "#remove-the-stiffening-bracket"
PEEL = "#fit-the-peel-bar-to-the-new-head"
POCKETS = "#open-the-plugs-of-the-head .tray li"


def test_without_an_answer_all_is_shown_with_its_condition(window: Window, site: Site) -> None:
    reader = Reader(window, site)
    told = ["Only if the answer to “Which letter stands after P2 on the rating label?” is B"]
    assert reader.seen(f"{BRACKET} .cond") == told
    assert reader.seen(f"{PEEL} h3")
    assert "4\n1/3" in reader.seen(POCKETS)


def test_an_answer_takes_away_what_is_not_for_this_unit(window: Window, site: Site) -> None:
    reader = Reader(window, site)
    reader.answer("revision", "a")
    reader.answer("supplied", "complete")
    assert reader.seen(f"{BRACKET} h3") == reader.seen(f"{PEEL} h3") == []
    assert "LP2-110" not in "\n".join(reader.seen("tr"))
    assert "LP2-111" in "\n".join(reader.seen("tr"))


def test_what_is_sure_needs_no_condition_any_more(window: Window, site: Site) -> None:
    reader = Reader(window, site)
    reader.answer("revision", "b")
    assert reader.seen(f"{BRACKET} h3")
    assert reader.seen(f"{BRACKET} .cond") == []
    assert "4\n3" in reader.seen(POCKETS) and "4\n1/3" not in reader.seen(POCKETS)


def test_a_reload_and_a_copied_link_find_the_answers(window: Window, site: Site) -> None:
    reader = Reader(window, site)
    reader.answer("revision", "a")
    assert "revision=a" in reader.hash
    reader.reload()
    assert reader.seen(f"{BRACKET} h3") == []
    reader = Reader(window, site, hash="tighten-the-head-screws?revision=a&supplied=bare")
    place = "document.getElementById('tighten-the-head-screws').getBoundingClientRect().top"
    assert abs(reader.run(place)) < 60
    assert reader.seen(f"{PEEL} h3") and not reader.seen(f"{BRACKET} h3")


def test_a_link_within_the_page_keeps_the_answers(window: Window, site: Site) -> None:
    reader = Reader(window, site)
    reader.answer("revision", "a")
    reader.run("location.hash = 'faults'")
    reader.after(200)
    assert reader.hash == "#faults?revision=a"
