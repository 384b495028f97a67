"""One browser of each make and one built site for all tests of a process."""

from collections.abc import Iterator

import pytest

from tests import needs
from tests.browser import chrome, firefox
from tests.browser.chrome import Browser
from tests.browser.firefox import Firefox
from tests.browser.site import THEMES, Site, built, packed, worldwide
from tests.browser.window import Window

MAKES = {"chromium": "chromedriver", "firefox": "firefox-esr"}


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Everything here that asks for a browser needs the programs of it."""
    for item in items:
        asked = getattr(item, "fixturenames", ())
        make = getattr(getattr(item, "callspec", None), "params", {}).get("window")
        if "browser" in asked or make == "chromium":
            item.add_marker(needs.program(MAKES["chromium"]))
        if "mozilla" in asked or make == "firefox":
            item.add_marker(needs.program(MAKES["firefox"]))
        if {"browser", "mozilla", "window"} & set(asked):
            item.add_marker(pytest.mark.browser)


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium, started once."""
    chromium = chrome.started()
    yield chromium
    chromium.driver.quit()


@pytest.fixture(scope="session")
def mozilla(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Firefox]:
    """Firefox, started once."""
    fox = firefox.started(tmp_path_factory.mktemp("profile"))
    yield fox
    fox.quit()


@pytest.fixture(scope="session", params=MAKES)
def window(request: pytest.FixtureRequest) -> Window:
    """The browser of each make in turn: what a reader does is tried in both."""
    found: Window = request.getfixturevalue("browser" if request.param == "chromium" else "mozilla")
    return found


@pytest.fixture(scope="session")
def sites(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Site]:
    """The demo in every theme."""
    return {theme: built(theme, tmp_path_factory.mktemp(theme)) for theme in THEMES}


@pytest.fixture
def site(sites: dict[str, Site]) -> Site:
    """The demo in the theme that it has."""
    return sites["sheet"]


@pytest.fixture(scope="session")
def world(tmp_path_factory: pytest.TempPathFactory) -> Site:
    """The demo in the languages of `site.py`: translated ones, two that nobody speaks, and others with labels only."""
    return worldwide(tmp_path_factory.mktemp("world"))


@pytest.fixture(scope="session")
def stick(tmp_path_factory: pytest.TempPathFactory) -> Site:
    """The demo as it is handed over, with every guide as one file, too."""
    return packed(tmp_path_factory.mktemp("stick"))
