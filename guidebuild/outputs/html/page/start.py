"""The start page: all guides by device, and every word that leads to one of them."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby

from guidebuild.guide.settings import Settings
from guidebuild.outputs.html.page.guide import GuideView
from guidebuild.outputs.html.page.index import Found
from guidebuild.translate.messages.text import Text, plain

MOST = 100  # guides that a word of the list may lead to


@dataclass(frozen=True, slots=True)
class GuideEntry:
    """A guide as the start page lists it: it needs no more of it, so that guides may be made ready in parts.

    `words`: what a search finds it by, beside what stands in its line: steps, parts, screws, faults.
    """

    href: str
    device: str
    device_name: Text
    portrait: str
    number: str
    title: Text
    issue: str
    time: Text
    status: str
    words: str
    found_by: tuple[Found, ...]


def entry(href: str, device: str, view: GuideView) -> GuideEntry:
    """What the start page says of a guide."""
    return GuideEntry(
        href=href,
        device=device,
        device_name=view.device,
        portrait=view.portrait,
        number=view.number,
        title=view.title,
        issue=view.issue,
        time=view.time,
        status=view.status,
        words=_searched(view),
        found_by=view.found_by,
    )


def _searched(view: GuideView) -> str:
    said = [step.title for step in view.steps]
    said += [fault.see for fault in view.faults]
    said += [supply.name for supply in view.supplies]
    numbers = [supply.number for supply in view.supplies if supply.number]
    return " ".join([*dict.fromkeys(plain(one) for one in said), *numbers])


@dataclass(frozen=True, slots=True)
class DeviceEntry:
    """A device with its guides and its outline."""

    id: str
    name: Text
    svg: str
    guides: tuple[GuideEntry, ...]


@dataclass(frozen=True, slots=True)
class Place:
    """A guide's page and number, and the steps (href, number) of it that a word leads to."""

    href: str
    number: str
    steps: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Word:
    """A word of the alphabetical list with its places."""

    words: str
    places: tuple[Place, ...]


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
        letters=tuple(_letters(entries)),
        count=len(entries),
    )


def _devices(entries: Sequence[GuideEntry]) -> Iterator[DeviceEntry]:
    by_device: dict[str, list[GuideEntry]] = {}
    for entry in entries:
        by_device.setdefault(entry.device, []).append(entry)
    for id, guides in by_device.items():
        yield DeviceEntry(id, guides[0].device_name, guides[0].portrait, tuple(guides))


def _letters(entries: Sequence[GuideEntry]) -> Iterator[tuple[str, tuple[Word, ...]]]:
    words = sorted(_words(entries), key=lambda one: (one.words.casefold(), one.words))
    for letter, some in groupby(words, key=lambda one: one.words[:1].upper()):
        yield letter, tuple(some)


def _words(entries: Sequence[GuideEntry]) -> Iterator[Word]:
    """A word of very many guides leads to none of them in particular: the search has it, the list does not."""
    often = Counter(words for one in entries for words in {found.words for found in one.found_by})
    places: dict[str, list[Place]] = {}
    for entry in entries:
        steps: dict[str, dict[tuple[str, str], None]] = {}
        for found in entry.found_by:
            if often[found.words] > MOST:
                continue
            known = steps.setdefault(found.words, {})
            if found.step is not None:
                known[f"{entry.href}#{found.step[0]}", found.step[1]] = None
        for words, some in steps.items():
            number = entry.number or plain(entry.title)
            places.setdefault(words, []).append(Place(entry.href, number, tuple(some)))
    for words, all_places in places.items():
        yield Word(words, tuple(all_places))
