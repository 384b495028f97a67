"""One browser of each make and one built site for all tests of a process."""

import os
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path
from typing import TypeAlias

import pytest

from tests import needs
from tests.browser import chrome, firefox
from tests.browser.chrome import Browser
from tests.browser.firefox import Firefox
from tests.browser.once import once
from tests.browser.site import FOLDER, THEMES, Site, packed, themed, worldwide
from tests.browser.window import Window

Made: TypeAlias = Callable[[str, Callable[[Path], None]], Site]
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
def made(tmp_path_factory: pytest.TempPathFactory) -> Made:
    """Makes a site once for all processes of a run."""
    own = tmp_path_factory.getbasetemp()
    room = own.parent if "PYTEST_XDIST_WORKER" in os.environ else own

    def site(name: str, make: Callable[[Path], None]) -> Site:
        return Site(once(name, room, make) / FOLDER)

    return site


@pytest.fixture(scope="session")
def sites(made: Made) -> dict[str, Site]:
    """The demo in every theme."""
    return {theme: made(theme, partial(themed, theme)) for theme in THEMES}


@pytest.fixture
def site(sites: dict[str, Site]) -> Site:
    """The demo in the theme that it has."""
    return sites["sheet"]


@pytest.fixture(scope="session")
def world(made: Made) -> Site:
    """The demo in the languages of `site.py`: translated ones, two that nobody speaks, and others with labels only."""
    return made("world", worldwide)


@pytest.fixture(scope="session")
def stick(made: Made) -> Site:
    """The demo as it is handed over, with every guide as one file, too."""
    return made("stick", packed)
