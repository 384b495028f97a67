"""A piece of a film in a step: the film at its times, its captions in every language, and what is said in it."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from urllib.parse import quote

from guidebuild.draw.times import wait_svg
from guidebuild.guide.blocks.video import Video
from guidebuild.guide.inside import items
from guidebuild.guide.step import Step
from guidebuild.guide.stills import second
from guidebuild.outputs.html.films import Film, film_path
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.when import When
from guidebuild.outputs.html.photos import photo_path
from guidebuild.translate.captions.chapters import chapters
from guidebuild.translate.messages.sayer import Sayer
from guidebuild.translate.messages.text import Text
from guidebuild.translate.webvtt.cue_text import plain_text
from guidebuild.translate.webvtt.reader import read_webvtt
from guidebuild.translate.webvtt.writer import write_webvtt

_DATA = "data:text/vtt;charset=utf-8,"  # the only `<track>` that a page from a disk may load
_SAFE = "!'()*,/:;=?@"


@dataclass(frozen=True, slots=True)
class Track:
    """`kind`: captions, subtitles or chapters; `label` is the language's name in itself."""

    kind: str
    language: str
    label: str
    src: str


@dataclass(frozen=True, slots=True)
class Moment:
    """A time in the film to go to: `at` in seconds, `clock` as it is read; `step` (id, number) if one begins there."""

    at: str
    clock: str
    words: Text | str
    step: tuple[str, str] | None = None


@dataclass(frozen=True, slots=True)
class FilmView:
    """`src` ends in the piece's times; `said` are its captions, `others` the film's other pieces."""

    id: str
    src: str
    type: str
    poster: str
    width: int
    height: int
    title: Text
    length: str
    tracks: tuple[Track, ...]
    said: tuple[Moment, ...]
    others: tuple[Moment, ...]
    when: When | None


def film_views(reading: Reading, step: Step, shown: int) -> tuple[FilmView, ...]:
    """The pieces of films that a step shows, in the author's order; `shown` is where the step is."""
    found = [one for one in items(step) if isinstance(one, Video)]
    views = (_view(reading, step, piece, n, shown) for n, piece in enumerate(found, start=1))
    return tuple(view for view in views if view is not None)


def _view(reading: Reading, step: Step, piece: Video, n: int, shown: int) -> FilmView | None:
    film = reading.films.of(reading.guide, piece)
    where = shown & reading.configurations.bits(piece.when)
    if film is None or (shown and not where):
        return None
    length = reading.say.plain("film.length", time=reading.say.time(piece.end - piece.start))
    clocks = {"start": clock(piece.start), "end": clock(piece.end)}
    return FilmView(
        id=f"{reading.numbers.steps[step.id]}.f{n}",
        src=f"{reading.root}{film_path(film.path)}#t={second(piece.start)},{second(piece.end)}",
        type=film.type,
        poster=_poster(reading, film, piece),
        width=film.size[0],
        height=film.size[1],
        title=reading.say("film.title", step=reading.author.words(step.title), **clocks),
        length=wait_svg(float(piece.end - piece.start), length, length),
        tracks=tuple(_tracks(reading, film, piece)),
        said=tuple(_said(reading, film, piece)),
        others=tuple(_others(reading, film, step)),
        when=reading.when(where, shown),
    )


def clock(seconds: Decimal) -> str:
    """`2:10`, `1:02:10`: a time as the browser's own controls tell it."""
    whole = int(seconds)
    hours = f"{whole // 3600}:{whole // 60 % 60:02d}" if whole >= 3600 else f"{whole // 60}"
    return f"{hours}:{whole % 60:02d}"


def _poster(reading: Reading, film: Film, piece: Video) -> str:
    """The still of this piece, else of the film."""
    still = film.stills.get(second(piece.start)) or film.stills.get("")
    return reading.root + photo_path(still.path, still.file) if still else ""


def _tracks(reading: Reading, film: Film, piece: Video) -> Iterator[Track]:
    """The reader's language first, as captions that show at once; then all others; then the chapters."""
    here = reading.say.language
    captions = reading.films.captions.get(film.path, ())
    for language, text in sorted(captions, key=lambda one: one[0] != here):
        kind = "captions" if language == here else "subtitles"
        yield Track(kind, language, Sayer(language).name, _address(text))
    name = piece.file or reading.guide.video
    parts = chapters(reading.guide, name.text) if name else None
    if parts is not None:
        label = reading.say.plain("film.chapters")
        yield Track("chapters", here, label, _address(write_webvtt(parts)))


def _address(text: str) -> str:
    """The text as an address; letters beyond ASCII stay as they are, as a quoted one takes six bytes for two."""
    return _DATA + "".join(sign if ord(sign) > 127 else quote(sign, safe=_SAFE) for sign in text)


def _said(reading: Reading, film: Film, piece: Video) -> Iterator[Moment]:
    """The captions that begin in the piece, as a text: in the reader's language, else in the authors' own."""
    captions = dict(reading.films.captions.get(film.path, ()))
    text = captions.get(reading.say.language) or next(iter(captions.values()), "")
    read = read_webvtt(text) if text else None
    for cue in read.cues if read else ():
        start = Decimal(cue.start) / 1000
        if piece.start <= start < piece.end:
            words = " ".join(plain_text(cue.text).split())
            yield Moment(second(start), clock(start), words)


def _others(reading: Reading, film: Film, here: Step) -> Iterator[Moment]:
    """Where the other steps of the guide begin in the same film."""
    found = [
        (min(starts), step)
        for step in reading.guide.steps
        if step.id != here.id and (starts := _starts(reading, film, step))
    ]
    for start, step in sorted(found, key=lambda one: one[0]):
        number = reading.numbers.steps[step.id]
        words = reading.author.words(step.title)
        yield Moment(second(start), clock(start), words, (step.id, number))


def _starts(reading: Reading, film: Film, step: Step) -> Sequence[Decimal]:
    guide = reading.guide
    return [
        one.start
        for one in items(step)
        if isinstance(one, Video) and reading.films.of(guide, one) is film
    ]
