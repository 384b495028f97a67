"""A step's flow as nodes: the author's order, acts said in words, conditions gathered."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from itertools import groupby

from guidebuild.draw.screw import screw_svg
from guidebuild.draw.svg import Box
from guidebuild.draw.symbols import fork_svg
from guidebuild.draw.times import wait_svg
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.blocks.use import Use
from guidebuild.guide.blocks.wait import Wait
from guidebuild.guide.prose import Bullets, Paragraph, Quote
from guidebuild.guide.step import Fork, Item, Method, Step
from guidebuild.outputs.html.page import prose
from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.acts.lines import lines_of
from guidebuild.outputs.html.page.acts.use import use_line
from guidebuild.outputs.html.page.alike import Likes, likes
from guidebuild.outputs.html.page.cautions import panels
from guidebuild.outputs.html.page.checks import CheckView, check_view
from guidebuild.outputs.html.page.nodes import (
    Acts,
    Entry,
    Methods,
    Node,
    Only,
    OnlyNodes,
    Saying,
    Tick,
    WaitView,
    Way,
)
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.when import When
from guidebuild.proof.proof import Passage, Walked
from guidebuild.translate.messages.text import Piece as Words

Piece = tuple[When | None, Entry | Node]


@dataclass(slots=True)
class Flow:
    """Makes the nodes of one step; `lines` collects what was said, for tools, tally and drawings."""

    reading: Reading
    step: Step
    passage: Passage
    screws: Box | None  # of all screws of the guide, so that their lengths compare
    lines: list[Line] = field(default_factory=list)
    checks: list[CheckView] = field(default_factory=list)
    _ticks: int = 0

    @property
    def number(self) -> str:
        """The step's number, with which the ids of its ticks begin."""
        return self.reading.numbers.steps[self.step.id]

    def nodes(self) -> tuple[Node, ...]:
        """Everything of the step but its cautions and pictures."""
        pieces = [*self._again(self.step, ()), *self._pieces(self.step)]
        return tuple(_gathered(_with_strip(pieces, likes(self.reading, self.lines))))

    def _pieces(self, step: Step) -> Iterator[Piece]:
        return (piece for part in step.flow for piece in self._part(part))

    def _again(self, step: Step, seen: tuple[str, ...]) -> Iterator[Piece]:
        """The acts of the step that this one repeats, which are done before its own."""
        id = step.same_as.text if step.same_as is not None else None
        named = next((one for one in self.reading.guide.steps if one.id == id), None)
        if named is None or named.id in seen:
            return
        yield from self._again(named, (*seen, named.id))
        number = self.reading.numbers.steps[named.id]
        link = self.reading.say.plain("step.link", number=number)
        said = self.reading.say("step.same", step=(Words(link, href=f"#{named.id}"),))
        yield None, Saying(prose.Paragraph(said))
        repeated = (one for one in named.flow if isinstance(one, Act | Fork))
        yield from (piece for part in repeated for piece in self._part(part))

    def _part(self, part: Item | Fork) -> Iterator[Piece]:
        if isinstance(part, Fork):
            yield None, self._methods(part)
        else:
            yield from self._item(part, self.passage.shown)

    def _item(self, item: Item, among: int) -> Iterator[Piece]:
        match item:
            case Act():
                for line in lines_of(self.reading, item, self._walked(item), among):
                    yield line.when, self._tick(line)
            case Use():
                use = use_line(self.reading, item, among)
                if use is not None:
                    yield use.when, self._tick(use)
            case Paragraph() | Bullets() | Quote():
                yield None, Saying(self.reading.author.block(item))
            case Wait():
                where = among & self.reading.configurations.bits(item.when)
                yield self.reading.when(where, among), self._wait(item)
            case Check():
                where = among & self.reading.configurations.bits(item.when)
                yield self.reading.when(where, among), self._check(item, among)
            case _:  # cautions stand before the acts, pictures beside them
                return

    def _walked(self, act: Act) -> list[Walked]:
        return [
            one
            for one in self.passage.walked
            if not isinstance(one.doing, Check) and one.doing.act is act
        ]

    def _tick(self, line: Line) -> Tick:
        self._ticks += 1
        line = replace(line, id=f"{self.number}.{self._ticks}")
        self.lines.append(line)
        svg = screw_svg(line.screw, 2, self.screws, by_use=True) if line.screw else ""
        return Tick(line, svg)

    def _check(self, check: Check, among: int) -> CheckView:
        id = f"{self.number}.c{len(self.checks) + 1}"
        view = check_view(self.reading, check, id, among)
        self.checks.append(view)
        return view

    def _wait(self, wait: Wait) -> WaitView:
        say, seconds = self.reading.say, wait.time.value
        self._ticks += 1
        time = say.time(seconds)
        plain = "".join(piece.words for piece in time)
        return WaitView(
            id=f"{self.number}.w{self._ticks}",
            title=say("wait.title", time=time),
            reason=self.reading.author.words(wait.reason),
            seconds=int(seconds),
            svg=wait_svg(float(seconds), plain, plain),
            clock=f"{int(seconds) // 60}:{int(seconds) % 60:02d}",
        )

    def _methods(self, fork: Fork) -> Methods:
        ways = tuple(self._way(n, method) for n, method in enumerate(fork.methods))
        return Methods(ways, fork_svg(len(ways)), fork_svg(len(ways), joins=True))

    def _way(self, n: int, method: Method) -> Way:
        shown = self.passage.shown
        among = shown & self.reading.configurations.bits(method.when)
        pieces = [piece for item in method.items for piece in self._item(item, among)]
        cautions = [item for item in method.items if isinstance(item, Caution)]
        return Way(
            letter="abcdefghijklmnopqrstuvwxyz"[n % 26],
            title=self.reading.author.words(method.title),
            panels=panels(self.reading, cautions, among),
            nodes=tuple(_gathered(pieces)),
            when=self.reading.when(among, shown),
        )


def _with_strip(pieces: list[Piece], strip: Likes | None) -> list[Piece]:
    """The look-alike strip stands before the first of its screws."""
    if strip is None:
        return pieces
    for n, (_, one) in enumerate(pieces):
        if isinstance(one, Tick) and set(one.line.references) & set(strip.numbers):
            return [*pieces[:n], (None, strip), *pieces[n:]]
    return pieces


def _gathered(pieces: Sequence[Piece]) -> Iterator[Node]:
    """Neighbours under one condition together, and what goes in one list in one list."""
    entries: list[Entry] = []
    for when, run in groupby(pieces, key=lambda piece: piece[0]):
        parts = [part for _, part in run]
        if all(isinstance(part, Tick | Saying | Likes | Only) for part in parts):
            inside: Iterable[Entry] = parts  # type: ignore[assignment]
            entries += inside if when is None else [Only(when, tuple(inside))]
            continue
        if when is not None:
            nodes = tuple(_gathered([(None, part) for part in parts]))
            yield from _flushed(entries)
            yield OnlyNodes(when, nodes)
            continue
        for part in parts:
            if isinstance(part, Tick | Saying | Likes | Only):
                entries.append(part)
            else:
                yield from _flushed(entries)
                yield part
    yield from _flushed(entries)


def _flushed(entries: list[Entry]) -> Iterator[Acts]:
    if entries:
        yield Acts(tuple(entries))
        entries.clear()
