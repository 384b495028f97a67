"""The return sheet takes over what the record knows, reads an address back, and is one page on paper."""

import pytest

from tests.browser.chrome import Browser
from tests.browser.site import Site

GUIDE = "en/brindle-e4/replace-the-control-board.html"
WRITE = (
    "((id, said) => { const field = document.getElementById(id); field.value = said;"
    " field.dispatchEvent(new Event('input', {bubbles: true})); })"
)
TITLE = "document.getElementById('return-step').textContent"


@pytest.fixture
def opened(browser: Browser, site: Site) -> Browser:
    browser.screen(1366, 650)
    browser.open(site.url(GUIDE))
    return browser


def test_what_the_record_knows_stands_there(opened: Browser) -> None:
    opened.value(f"{WRITE}('record.serial', 'E4-0099')")
    opened.value(f"{WRITE}('6.c1.v', '4.2')")
    assert opened.value("document.getElementById('return.serial').value") == "E4-0099"
    assert opened.value("document.querySelector('output.copied').value") == "4.2"
    opened.value(f"{WRITE}('return.serial', 'E4-1')")  # what is written here is not overwritten
    opened.value(f"{WRITE}('record.serial', 'E4-0100')")
    assert opened.value("document.getElementById('return.serial').value") == "E4-1"


def test_an_address_is_read_back_as_its_step(opened: Browser) -> None:
    codes = opened.value("[...document.querySelectorAll('.step')].map(step => step.dataset.code)")
    opened.value(f"{WRITE}('return.code', '{codes[5].lower()}')")
    assert opened.value(TITLE) == "Measure the storage capacitor"
    opened.value(f"{WRITE}('return.code', '{codes[5][:-1]}?')")
    assert opened.value(TITLE) == ""


def test_it_is_one_page_of_its_own_on_paper(opened: Browser) -> None:
    opened.command("Emulation.setEmulatedMedia", media="print")
    try:
        shown = "[...document.querySelector('main').children].filter(e => e.checkVisibility())"
        opened.value("document.documentElement.classList.add('print-return')")
        assert opened.value(f"{shown}.map(e => e.id)") == ["return"]
        high = opened.value("document.getElementById('return').offsetHeight * 25.4 / 96")
        assert high < 260
    finally:
        opened.command("Emulation.setEmulatedMedia", media="")
