"""What no checker tells: every link leads to a file of the site and a place in it, in the same letters."""

import re
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import unquote, urlsplit

from tests.browser.reading import Page, read
from tests.browser.site import Site


def _addresses(page: Page) -> Iterator[str]:
    for _, said in page.elements:
        for name in ("href", "src", "poster"):
            if name in said:
                yield said[name]
        yield from (one.split()[0] for one in said.get("srcset", "").split(",") if one.strip())


def test_every_link_arrives(sites: dict[str, Site]) -> None:
    """No link to a folder, outside, or to a file or place that is not there (letters' case counts on a stick)."""
    lost = []
    for site in sites.values():
        pages = {file: read(file) for file in site.html}
        names = {str(path) for path in site.folder.rglob("*") if path.is_file()}
        for file, page in pages.items():
            for address in _addresses(page):
                if not address.startswith("data:") and not _arrives(file, address, names, pages):
                    lost.append(f"{file.name}: {address}")
    assert lost == []


def _arrives(file: Path, address: str, names: set[str], pages: dict[Path, Page]) -> bool:
    parts = urlsplit(address)
    if parts.scheme or parts.netloc or parts.query or " " in address:
        return False
    target = (file.parent / unquote(parts.path)).resolve() if parts.path else file
    if str(target) not in names:
        return False
    if target not in pages:  # a moment of a film (Media Fragments 1.0), or a file without places
        return not parts.fragment or re.fullmatch(r"t=[\d.,]+", parts.fragment) is not None
    return not parts.fragment or unquote(parts.fragment) in pages[target].ids


def test_ids_are_unique(sites: dict[str, Site]) -> None:
    """One thing, one id."""
    for site in sites.values():
        for file in site.html:
            ids = read(file).ids
            assert sorted(ids) == sorted(set(ids)), file.name


def test_nothing_that_a_folder_refuses(sites: dict[str, Site]) -> None:
    """`crossorigin`, `integrity`, modules, lazy pictures, sibling captions, symbols of other files."""
    for site in sites.values():
        for file in site.html:
            page = read(file)
            for _, said in page.elements:
                assert not {"crossorigin", "integrity", "onclick", "onload"} & said.keys()
                assert said.get("type") != "module" and said.get("loading") != "lazy"
            assert all(said["src"].startswith("data:text/vtt") for said in page.each("track"))
            assert all(said["href"].startswith("#") for said in page.each("use"))


def test_every_page_says_its_language_and_policy(sites: dict[str, Site]) -> None:
    """Language, direction, a policy without any network, and letters in UTF-8."""
    for site in sites.values():
        for file in site.html:
            page = read(file)
            (root,) = page.each("html")
            assert root["lang"] and root["dir"] in {"ltr", "rtl"}
            metas = page.each("meta")
            policies = [one["content"] for one in metas if "Policy" in one.get("http-equiv", "")]
            assert len(policies) == 1 and "connect-src 'none'" in policies[0]
            assert "http" not in policies[0] and "unsafe" not in policies[0]
            assert metas[0].get("charset") == "utf-8"
