"""One browser and one built site for all tests of a process."""

from collections.abc import Iterator

import pytest

from tests import needs
from tests.browser.chrome import Browser, started
from tests.browser.site import THEMES, Site, built


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Everything here that asks for the browser needs Chromium and its driver."""
    for item in items:
        if "browser" in getattr(item, "fixturenames", ()):
            item.add_marker(needs.program("chromedriver"))
            item.add_marker(pytest.mark.browser)


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium, started once."""
    chromium = started()
    yield chromium
    chromium.driver.quit()


@pytest.fixture(scope="session")
def sites(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Site]:
    """The demo in every theme."""
    return {theme: built(theme, tmp_path_factory.mktemp(theme)) for theme in THEMES}


@pytest.fixture
def site(sites: dict[str, Site]) -> Site:
    """The demo in the theme that it has."""
    return sites["sheet"]
