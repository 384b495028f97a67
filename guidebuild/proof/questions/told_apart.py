"""Whether a guide tells two screws apart where they are taken out or put back."""

import re

from guidebuild.device.things import Hole
from guidebuild.guide.blocks.points import Points
from guidebuild.guide.inside import cautions, items
from guidebuild.guide.language.spoken import spoken
from guidebuild.guide.prose import Picture
from guidebuild.guide.step import Step
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import walked

_LENGTH = re.compile(
    r"\b(?:long|longer|longest|short|shorter|shortest|length|lengths)\b|\d\s*mm\b", re.IGNORECASE
)


def told_apart(proof: Proof, one: Hole, other: Hole) -> bool:
    """Whether a step that works one of them speaks of lengths, names a hole, or shows both on a picture.

    Generous on purpose: a guide that says anything of the kind is believed.
    """
    steps = _steps(proof, one, other)
    return (
        any(_shown(proof, step, one, other) for step in steps)
        or _said(proof, steps, one, other)
        or _in_hazard(proof, steps)
    )


def _steps(proof: Proof, *holes: Hole) -> list[Step]:
    keys = {hole.key for hole in holes}
    found: list[Step] = []
    for one in walked(proof):
        if isinstance(one.doing, Move) and one.doing.thing in keys and one.step not in found:
            found.append(one.step)
    return found


def _said(proof: Proof, steps: list[Step], one: Hole, other: Hole) -> bool:
    """English has its words for length; of another language any sentence counts, as we can't read it."""
    ids = {step.id for step in steps}
    spoken_here = [
        sentence.text
        for sentence in spoken(proof.guide)
        if sentence.step and sentence.step.id in ids
    ]
    if not proof.guide.language.startswith("en"):
        return bool(spoken_here)
    names = {hole.hole for hole in (one, other) if not hole.hole.isdigit()}
    holes = [
        re.compile(rf"\b{re.escape(name)}\b", re.IGNORECASE) for name in names if len(name) > 1
    ]
    return any(pattern.search(text) for text in spoken_here for pattern in (_LENGTH, *holes))


def _in_hazard(proof: Proof, steps: list[Step]) -> bool:
    """A caution that the record holds in words: `for: long-screw`."""
    for step in steps:
        for caution in cautions(step):
            for said in caution.hazards:
                hazard = proof.device.hazards.get(said.text)
                texts = (hazard.hazard, hazard.result, *hazard.avoid) if hazard else ()
                if any(text and _LENGTH.search(text.text) for text in texts):
                    return True
    return False


def _shown(proof: Proof, step: Step, one: Hole, other: Hole) -> bool:
    """Two marks set by hand, or a picture on which the record places both holes."""
    for item in items(step):
        if isinstance(item, Points) and len(item.here) > 1:
            return True
        if isinstance(item, Picture):
            for record in proof.device.pictures.values():
                both = {one.id, other.id} <= record.points.keys()
                if both and item.file.text.rpartition("/")[2] == record.file.text:
                    return True
    return False
