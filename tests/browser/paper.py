"""A page on paper: printed once a process, read as words with their places, and as a picture in pure black."""

import io
import re
import subprocess
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from tests import needs
from tests.browser.chrome import A4, LETTER, Browser

PAPERS = {"A4": A4, "Letter": LETTER}
MM = 25.4 / 72  # of a point
_DOTS = 150  # an inch, of a plain printer
_WORD = re.compile(r'<word xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax="(.*?)">(.*?)</word>')


@dataclass(frozen=True)
class Word:
    """A word of a print; places in mm from the sheet's upper left corner."""

    side: int
    left: float
    top: float
    right: float
    bottom: float
    text: str


@dataclass(frozen=True)
class Paper:
    """A print."""

    pdf: bytes

    def text(self, *how: str) -> str:
        """As `pdftotext` reads it."""
        command = ["pdftotext", *how, "-", "-"]
        told = subprocess.run(command, input=self.pdf, capture_output=True, check=True)
        return told.stdout.decode("utf-8")

    @cached_property
    def sides(self) -> list[str]:
        """The words of every side, without blanks and without the side's own number."""
        sides = [re.sub(r"\s", "", side) for side in self.text("-raw").split("\f")[:-1]]
        own = (f"{number}/{len(sides)}" for number in range(1, len(sides) + 1))
        return [
            side.removeprefix(one).removesuffix(one) for side, one in zip(sides, own, strict=True)
        ]

    @cached_property
    def words(self) -> list[Word]:
        """Every word with its place."""
        sides = self.text("-bbox").split("<page ")[1:]
        return [
            Word(n, float(left) * MM, float(top) * MM, float(right) * MM, float(bottom) * MM, text)
            for n, side in enumerate(sides)
            for left, top, right, bottom, text in _WORD.findall(side)
        ]

    def lines(self) -> Iterator[tuple[int, Any]]:
        """Every straight line with its side."""
        pdfplumber = needs.library("pdfplumber")
        with pdfplumber.open(io.BytesIO(self.pdf)) as document:
            for page in document.pages:
                for line in page.lines:
                    yield page.page_number, line

    def marks(self) -> dict[str, int]:
        """Of every mark that `marked.js` made the side that it stands on."""
        pdfplumber = needs.library("pdfplumber")
        with pdfplumber.open(io.BytesIO(self.pdf)) as document:
            links = [
                (link["uri"], page.page_number)
                for page in document.pages
                for link in page.hyperlinks
            ]
        return {uri.rpartition("/")[2]: side for uri, side in links if ".invalid/" in str(uri)}

    def beyond(self, edge: float, paper: tuple[float, float]) -> list[Word]:
        """Words that come nearer to the edge of the paper, in mm; of a line the middle, since fonts differ in air."""
        wide, high = paper
        return [
            one
            for one in self.words
            if not (one.left > edge and one.right < wide - edge)
            or not edge < (one.top + one.bottom) / 2 < high - edge / 2
        ]

    def illegible(self) -> list[str]:
        """Words that are gone when every colour becomes black or white, whichever is nearer."""
        pypdfium2 = needs.library("pypdfium2")
        document = pypdfium2.PdfDocument(self.pdf)
        dots = _DOTS / 25.4
        found = []
        for number, page in enumerate(document):
            grey = page.render(scale=_DOTS / 72, grayscale=True).to_pil().convert("L")
            black = grey.point(lambda tone: 255 * (tone < 128))
            for one in (word for word in self.words if word.side == number and len(word.text) > 1):
                box = (one.left * dots, one.top * dots, one.right * dots, one.bottom * dots)
                ink = black.crop(tuple(round(edge) for edge in box)).histogram()
                share = ink[255] / max(1, sum(ink))
                if not 0.005 < share < 0.98:
                    found.append(f"{one.text} on side {number + 1}: {share:.0%} black")
        return found


_PRINTED: dict[tuple[str, str], Paper] = {}  # a page is printed once a process: it takes seconds


def printed(browser: Browser, url: str, paper: str) -> Paper:
    """The print of a page, which is open afterwards."""
    browser.screen(1200)
    browser.open(url)
    if (url, paper) not in _PRINTED:
        _PRINTED[url, paper] = Paper(browser.printed(PAPERS[paper]))
    return _PRINTED[url, paper]
