"""A step works on something that no picture and no view shows.

The reader has only words to find it by, and two screws side by side have the same words.

Source: common practice, no source.
"""

from collections.abc import Iterator, Mapping

from guidebuild.device.naming import subject
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.guide.content import Content
from guidebuild.guide.inside import steps_with
from guidebuild.guide.prose import Picture
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage, Proof
from guidebuild.source.finding import Category
from guidebuild.source.remembered import remembered
from guidebuild.source.span import Span

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "nothing in this step shows where {thing} {is}"

HELP = "put a picture into the step, or draw it in a view of the record"

_SHOWN = (Kind.FASTENER, Kind.CONNECTOR)  # parts and clips are found by their size


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    drawn = _in_views(proof.device, content.drawn)
    told: set[str] = set()
    with_picture = {step.id for step in steps_with(proof.guide, Picture)}
    for passage in proof.passages:
        if passage.step.id in with_picture:
            continue
        unseen: dict[Span, list[str]] = {}  # by what the author wrote: a group is one finding
        for move in _moves(passage):
            thing = proof.device.things[move.thing]
            if thing.kind not in _SHOWN or thing.id in told:
                continue
            told.add(thing.id)
            if thing.id not in drawn and thing.id.partition(".")[0] not in drawn:
                unseen.setdefault(move.span, []).append(move.thing)
        for span, keys in unseen.items():
            yield Hit(span, subject(proof.device, keys))


def _moves(passage: Passage) -> Iterator[Move]:
    return (one.doing for one in passage.walked if isinstance(one.doing, Move))


@remembered
def _in_views(device: Device, of_files: Mapping[str, frozenset[str]]) -> set[str]:
    """Ids that some view of the record shows: outlines, holes with a place, groups of a drawing."""
    drawn = {id_ for view in device.views.values() for id_ in view.outline}
    drawn |= {hole.id for hole in device.holes if hole.xy is not None}
    for view in device.views.values():
        if view.file is not None:
            drawn |= of_files.get(f"{device.folder}/{view.file.text}", frozenset())
    return drawn
