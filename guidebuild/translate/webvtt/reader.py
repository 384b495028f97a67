"""A WebVTT file into captions, by the W3C's "WebVTT parser": a bad block is dropped, the rest is kept."""

from dataclasses import dataclass, field, replace

from guidebuild.translate.webvtt.cue import Captions, Cue, Region
from guidebuild.translate.webvtt.settings import read_placing, read_region
from guidebuild.translate.webvtt.timing import read_stamp

_SPACE = " \t\n\f\r"


def read_webvtt(text: str) -> Captions | None:
    """The captions in a decoded file, or None where the signature is missing (a browser refuses it too)."""
    text = text.removeprefix("\ufeff").replace("\0", "\ufffd")
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    head = lines[0]
    if not head.startswith("WEBVTT") or head[6:7] not in ("", " ", "\t"):
        return None
    reading = _Reading(lines, at=1)
    if len(lines) > 1 and lines[1]:
        _block(reading, in_header=True)
    while reading.skip_empty():
        _block(reading, in_header=False)
    return Captions(
        head[6:].strip(_SPACE),
        tuple(reading.styles),
        tuple(reading.regions.values()),
        tuple(reading.cues),
    )


@dataclass(slots=True)
class _Reading:
    """Where the reader stands, and what it has found so far."""

    lines: list[str]
    at: int
    cues: list[Cue] = field(default_factory=list)
    styles: list[str] = field(default_factory=list)
    regions: dict[str, Region] = field(default_factory=dict)

    def skip_empty(self) -> bool:
        """Go to the next line that says something; False at the end."""
        while self.at < len(self.lines) and not self.lines[self.at]:
            self.at += 1
        return self.at < len(self.lines)


def _block(reading: _Reading, in_header: bool) -> None:
    """Take lines up to an empty one, or to times that can't belong to this block."""
    gathered: list[str] = []
    cue: Cue | None = None
    special = ""
    first = reading.at
    seen_times = False
    while reading.at < len(reading.lines):
        line = reading.lines[reading.at]
        count = reading.at - first + 1
        if "-->" in line:
            if in_header or seen_times or count > 2:
                # right under WEBVTT, browsers take a line of white space above the times as their name
                reading.at -= bool(in_header and gathered and not gathered[-1].strip(_SPACE))
                break
            seen_times = True
            cue = _times(line, "\n".join(gathered), reading)
            if cue is not None:
                gathered = []
        elif not line:
            break
        else:
            if count == 2 and not in_header and cue is None:
                special = _special(gathered)
                gathered = [] if special else gathered
            gathered.append(line)
        reading.at += 1
    _keep(reading, cue, special, "\n".join(gathered))


def _special(gathered: list[str]) -> str:
    """STYLE or REGION, where the block's first line is just that word."""
    word = gathered[0].rstrip(_SPACE) if gathered else ""
    return word if word in ("STYLE", "REGION") else ""


def _times(line: str, name: str, reading: _Reading) -> Cue | None:
    """`00:01.000 --> 00:02.500 align:start` as a cue that still wants its text."""
    start = read_stamp(line, len(line) - len(line.lstrip(_SPACE)))
    if start is None:
        return None
    rest = line[start[1] :].lstrip(_SPACE)
    if not rest.startswith("-->"):
        return None
    rest = rest[3:].lstrip(_SPACE)
    end = read_stamp(rest, 0)
    if end is None:
        return None
    settings = rest[end[1] :]
    placing = read_placing(settings, reading.regions)
    return Cue(name, start[0], end[0], "", placing, settings.strip(_SPACE), reading.at + 1)


def _keep(reading: _Reading, cue: Cue | None, special: str, text: str) -> None:
    if cue is not None:
        reading.cues.append(replace(cue, text=text))
    elif special == "STYLE":
        reading.styles.append(text)
    elif special == "REGION":
        region = read_region(text)
        reading.regions.pop(region.id, None)
        reading.regions[region.id] = region
