"""The start page: all guides by device, and every word that leads to one of them."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from guidebuild.guide.settings import Settings
from guidebuild.outputs.html.page.guide import GuideView
from guidebuild.translate.messages.text import Text, plain


@dataclass(frozen=True, slots=True)
class GuideEntry:
    """A guide as the start page lists it."""

    href: str
    device: str
    view: GuideView

    @property
    def words(self) -> str:
        """What a search finds it by, beside what stands in its line: steps, parts, screws, faults."""
        said = [step.title for step in self.view.steps]
        said += [fault.see for fault in self.view.faults]
        said += [supply.name for supply in self.view.supplies]
        numbers = [supply.number for supply in self.view.supplies if supply.number]
        return " ".join([*dict.fromkeys(plain(one) for one in said), *numbers])


@dataclass(frozen=True, slots=True)
class DeviceEntry:
    """A device with its guides and its outline."""

    id: str
    name: Text
    svg: str
    guides: tuple[GuideEntry, ...]


@dataclass(frozen=True, slots=True)
class Word:
    """A word of the alphabetical list: what it says, and the place that it leads to."""

    words: str
    href: str
    place: str


@dataclass(frozen=True, slots=True)
class StartView:
    """Everything on the start page."""

    publisher: str
    help_line: str
    devices: tuple[DeviceEntry, ...]
    letters: tuple[tuple[str, tuple[Word, ...]], ...]
    count: int


def start_view(settings: Settings, entries: Sequence[GuideEntry]) -> StartView:
    """The page for these guides."""
    return StartView(
        publisher=settings.publisher.text if settings.publisher else "",
        help_line=settings.help_line.text if settings.help_line else "",
        devices=tuple(_devices(entries)),
        letters=tuple(_letters(word for entry in entries for word in _words(entry))),
        count=len(entries),
    )


def _devices(entries: Sequence[GuideEntry]) -> Iterator[DeviceEntry]:
    by_device: dict[str, list[GuideEntry]] = {}
    for entry in entries:
        by_device.setdefault(entry.device, []).append(entry)
    for id, guides in by_device.items():
        yield DeviceEntry(id, guides[0].view.device, guides[0].view.portrait, tuple(guides))


def _words(entry: GuideEntry) -> Iterator[Word]:
    """The guide's title, its steps, and what can be seen."""
    view = entry.view
    number = view.number or plain(view.title)
    yield Word(plain(view.title), entry.href, number)
    for step in view.steps:
        yield Word(plain(step.title), f"{entry.href}#{step.id}", f"{number}, {step.number}")
    for fault in view.faults:
        yield Word(plain(fault.see), f"{entry.href}#faults", number)


def _letters(words: Iterable[Word]) -> Iterator[tuple[str, tuple[Word, ...]]]:
    found: dict[str, dict[tuple[str, str], Word]] = {}
    for word in sorted(words, key=lambda one: (one.words.casefold(), one.place)):
        letter = word.words[:1].upper()
        found.setdefault(letter, {}).setdefault((word.words, word.place), word)
    for letter, all_words in found.items():
        yield letter, tuple(all_words.values())
