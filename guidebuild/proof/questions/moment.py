"""The device at a kept moment, to be asked as the walk asks it: what hides a thing, what ties a part."""

from guidebuild.device.things import Link
from guidebuild.proof.again import scene_at
from guidebuild.proof.bodies import ties
from guidebuild.proof.needs.reach import hidden
from guidebuild.proof.plain import IN
from guidebuild.proof.proof import Proof, Snapshot


def covers_of(proof: Proof, snapshot: Snapshot, key: str) -> dict[str, int]:
    """Each cover that surely hides a thing at that moment, and where."""
    return hidden(scene_at(proof, snapshot), key, proof.configurations.everywhere)


def links_across(proof: Proof, snapshot: Snapshot, part: str) -> dict[str, int]:
    """Each link that surely is closed and ties what rides on a part to what does not, and where."""
    scene = scene_at(proof, snapshot)
    links = (thing for thing in proof.device.things.values() if isinstance(thing, Link))
    found = {link.key: scene.surely(link.key, IN) & ties(scene, link, part) for link in links}
    return {key: where for key, where in found.items() if where}
