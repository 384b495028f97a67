"""Safety messages: signal word, hazard and result, and how to avoid it."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from guidebuild.device.record import Hazard
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.signal_words import gravity
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.when import When
from guidebuild.source.said import Said
from guidebuild.translate.messages.text import Text


@dataclass(frozen=True, slots=True)
class Panel:
    """`level` is danger, warning, caution or notice; `word` is the signal word as shown."""

    level: str
    word: str
    hazard: Text
    result: Text
    avoid: tuple[Text, ...]
    when: When | None = None

    @property
    def stays(self) -> bool:
        """Whether it is kept in sight through all of its step."""
        return self.level in ("danger", "warning")


def panels(reading: Reading, cautions: Iterable[Caution], among: int) -> tuple[Panel, ...]:
    """The panels, the gravest first; `among` is where their step is shown."""
    found = [panel for caution in cautions for panel in _panels(reading, caution, among)]
    return tuple(sorted(dict.fromkeys(found), key=lambda panel: gravity(panel.level)))


def hazard_panel(reading: Reading, hazard: Hazard) -> Panel:
    """A hazard of the record."""
    return _panel(reading, hazard.level, hazard.hazard, hazard.result, hazard.avoid)


def _panels(reading: Reading, caution: Caution, among: int) -> Iterator[Panel]:
    where = among & reading.configurations.bits(caution.when)
    if not where:
        return
    when = reading.when(where, among)
    for said in caution.hazards:
        hazard = reading.device.hazards.get(said.text)
        if hazard is not None:
            yield replace(hazard_panel(reading, hazard), when=when)
    if caution.level is not None and caution.hazard is not None:
        own = (caution.level.text, caution.hazard, caution.result, caution.avoid)
        yield replace(_panel(reading, *own), when=when)


def _panel(
    reading: Reading, level: str, hazard: Said, result: Said | None, avoid: tuple[Said, ...]
) -> Panel:
    word = reading.say.plain(f"signal.{level}") if gravity(level) < 4 else level.upper()
    return Panel(
        level,
        word,
        reading.author.words(hazard),
        reading.author.words(result),
        tuple(reading.author.words(said) for said in avoid),
    )
