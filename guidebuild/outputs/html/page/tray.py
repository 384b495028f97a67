"""The tray sheet: a pocket for each kind of screw that is laid out, true to size, and the parts laid aside."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from guidebuild.device.screw import Screw
from guidebuild.draw.screw import screw_symbols
from guidebuild.draw.tray import lie_height, lie_svg
from guidebuild.outputs.html.page.aside import Aside, laid_aside
from guidebuild.outputs.html.page.counting import count
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.screw_words import head_words, size_words
from guidebuild.outputs.html.page.screws import ScrewRow
from guidebuild.outputs.html.page.step_links import StepLinks
from guidebuild.outputs.html.page.when import When
from guidebuild.translate.messages.text import Text, text

_PAGE = 200.0  # mm of height for pockets: what Letter leaves between head and title block
_POCKET = 66.0  # mm: least height of a pocket, room for a hand to drop a screw into
_LINE = 4.8  # mm
_TALLEST = 170.0  # mm: a longer drawing would not fit on a sheet, and is told in words


@dataclass(frozen=True, slots=True)
class Lot:
    """The screws of one group in a pocket: where they belong, and when they come out and go in."""

    holes: Text
    moves: Text
    when: When | None


@dataclass(frozen=True, slots=True)
class TrayPocket:
    """A pocket with its number; `svg` shows the screws as they lie."""

    number: str
    title: Text
    kind: Text
    lots: tuple[Lot, ...]
    svg: str
    height: float


@dataclass(frozen=True, slots=True)
class TraySheet:
    """One printed page; parts stand on the last."""

    pockets: tuple[TrayPocket, ...]
    aside: tuple[Aside, ...]


@dataclass(frozen=True, slots=True)
class TrayView:
    """All pages, and what their drawings refer to."""

    sheets: tuple[TraySheet, ...]
    symbols: str


def tray_view(reading: Reading, rows: Sequence[ScrewRow], sheet: str) -> TrayView:
    """The tray sheet of a guide whose screw list is `rows`; `sheet` is how it gets to the guide's page."""
    steps = StepLinks(reading.say, sheet)
    pockets = tuple(_pockets(reading, [row for row in rows if not row.captive], steps))
    aside = laid_aside(reading, steps)
    pages = list(_pages(pockets, bool(aside)))
    sheets = tuple(
        TraySheet(page, aside if n == len(pages) else ()) for n, page in enumerate(pages, start=1)
    )
    return TrayView(sheets, screw_symbols(*(row.screw for row in rows)))


def _pockets(reading: Reading, rows: Sequence[ScrewRow], steps: StepLinks) -> Iterator[TrayPocket]:
    for number in dict.fromkeys(row.number for row in rows):
        yield _pocket(reading, [row for row in rows if row.number == number], steps)


def _pocket(reading: Reading, rows: Sequence[ScrewRow], steps: StepLinks) -> TrayPocket:
    screw, counts = rows[0].screw, _counts(reading, rows[0].number)
    say, most = reading.say, max(counts)
    size = size_words(say, screw)
    how_many = say.listed([text(say.number(one)) for one in counts], "or")
    kind = [part for part in (head_words(say, screw), rows[0].driver) if part]
    drawn = lie_height(screw, most) <= _TALLEST
    title = say.plain("tray.drawing", count=most, size=size)
    lots = tuple(_lot(reading, row, steps) for row in rows)
    return TrayPocket(
        number=rows[0].number,
        title=say("tray.pocket", count=most, number=how_many, size=size),
        kind=say.listed(kind, "unit"),
        lots=lots,
        svg=lie_svg(screw, most, title, say.figure) if drawn else "",
        height=_height(screw, most if drawn else 0, len(lots)),
    )


def _counts(reading: Reading, number: str) -> tuple[int, ...]:
    """How many screws may lie in a pocket: one figure, or one for each kind of device."""
    there = (
        reading.configurations.bits(reading.device.things[key].when) & where
        for key in reading.labels.loose
        for one, where in reading.labels.of_hole[key]
        if one.number == number
    )
    return tuple(one for one in count(there, reading.configurations.everywhere) if one)


def _lot(reading: Reading, row: ScrewRow, steps: StepLinks) -> Lot:
    say, out = reading.say, steps(row.out)
    holes = say(
        "tray.holes",
        count=len(row.holes),
        group=row.group,
        holes=say.listed([text(hole) for hole in row.holes], "unit"),
    )
    if not row.back:
        return Lot(holes, say("tray.gone", out=out), row.when)
    if not row.torque:
        return Lot(holes, say("tray.moves", out=out, back=steps(row.back)), row.when)
    moves = say("tray.moves-torque", out=out, back=steps(row.back), torque=row.torque)
    return Lot(holes, moves, row.when)


def _height(screw: Screw, most: int, lots: int) -> float:
    """A close guess from above: two lines of head, three for each group, the drawing, the air between."""
    drawing = lie_height(screw, most) if most else 0.0
    return max(_POCKET, 8.0 + 2 * _LINE + 3 * _LINE * lots + drawing)


def _pages(pockets: Sequence[TrayPocket], aside: bool) -> Iterator[tuple[TrayPocket, ...]]:
    """As many rows of two pockets as a page takes; the parts take the last pocket's place."""
    page: list[TrayPocket] = []
    used = 0.0
    for pair in _pairs(pockets):
        high = max(pocket.height for pocket in pair)
        if page and used + high > _PAGE:
            yield tuple(page)
            page, used = [], 0.0
        page += pair
        used += high
    full = len(page) % 2 == 0 and used + _POCKET > _PAGE
    if page and aside and full:
        yield tuple(page)
        page = []
    yield tuple(page)


def _pairs(pockets: Sequence[TrayPocket]) -> Iterable[Sequence[TrayPocket]]:
    return (pockets[n : n + 2] for n in range(0, len(pockets), 2))
