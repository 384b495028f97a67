"""What moves as one piece, and what rides on what: asked of a scene, for sure and perhaps."""

from collections.abc import Sequence

from guidebuild.device.between import Path
from guidebuild.device.things import Link
from guidebuild.proof.plain import GONE, HOLDING, IN
from guidebuild.proof.scene import Scene


def all_surely(scene: Scene, parts: Sequence[str], states: int, where: int) -> int:
    """The configurations of `where` in which each of these parts is surely in one of `states`."""
    for part in parts:
        if not where:
            break
        where = scene.both(where, scene.surely(part, states))
    return where


def all_perhaps(scene: Scene, parts: Sequence[str], states: int, where: int) -> int:
    """The configurations of `where` in which each of these parts may be in one of `states`."""
    for part in parts:
        if not where:
            break
        where = scene.both(where, scene.perhaps(part, states))
    return where


def one_body(scene: Scene, paths: Sequence[Path], where: int, fitted: int = IN) -> tuple[int, int]:
    """Where these paths make one body: surely, and perhaps. A path that is not there asks nothing."""
    sure = maybe = where
    for path in paths:
        elsewhere = scene.without(where, path.where)
        if path.apart:
            sure, maybe = scene.both(sure, elsewhere), scene.both(maybe, elsewhere)
            continue
        if elsewhere:
            sure &= elsewhere | all_surely(scene, path.parts, fitted, path.where)
            maybe &= elsewhere | all_perhaps(scene, path.parts, fitted, path.where)
        else:
            sure = all_surely(scene, path.parts, fitted, sure)
            maybe = all_perhaps(scene, path.parts, fitted, maybe)
    return sure, maybe


def rides(scene: Scene, part: str, on: str, holding: int = HOLDING) -> tuple[int, int]:
    """Where a part rides on another (or is it): surely, and perhaps."""
    if part == on:
        return scene.everywhere, scene.everywhere
    sure = maybe = 0
    for chain in scene.layout.hosts.chains(part):
        if on in chain.parts:
            way = chain.parts[: chain.parts.index(on)]
            sure |= all_surely(scene, way, holding, chain.where)
            maybe |= all_perhaps(scene, way, holding, chain.where)
    return sure, maybe


def ties(scene: Scene, link: Link, part: str, holding: int = HOLDING, gone: int = GONE) -> int:
    """Where a link surely ties what rides on a part to what surely does not, and surely is here."""
    on_it = off_it = 0
    for end, there in scene.layout.ends.of(link):
        sure, maybe = rides(scene, end, part, holding)
        on_it |= scene.both(there, sure)
        away = scene.without(there, maybe)
        off_it |= scene.without(away, scene.perhaps(end, gone)) if away else 0
    return on_it & off_it


def may_tie(scene: Scene, link: Link, part: str, riding: int = HOLDING) -> tuple[int, int]:
    """Where a link ties what rides on a part to what does not, here or not: surely, and perhaps."""
    on_sure = on_maybe = off_sure = off_maybe = 0
    for end, there in scene.layout.ends.of(link):
        sure, maybe = rides(scene, end, part, riding)
        on_sure |= scene.both(there, sure)
        on_maybe |= scene.both(there, maybe)
        off_sure |= scene.without(there, maybe)
        off_maybe |= scene.without(there, sure)
    return on_sure & off_sure, on_maybe & off_maybe


def inside(scene: Scene, link: Link, part: str, holding: int = HOLDING) -> tuple[int, int]:
    """Where each end of a link is a part or rides on it: surely, and perhaps."""
    sure = maybe = scene.layout.presence.where[link.key]
    for end, there in scene.layout.ends.of(link):
        surely, perhaps = rides(scene, end, part, holding)
        sure = scene.without(sure, scene.without(there, surely))
        maybe = scene.without(maybe, scene.without(there, perhaps))
    return sure, maybe
