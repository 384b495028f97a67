"""A device record from what is known of the device: a strip-down sheet, or the names of its parts."""

import re
import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from guidebuild.plan.draft.markdown import flow
from guidebuild.plan.draft.script import Value
from guidebuild.plan.draft.sealing import MANY
from guidebuild.plan.start.strip import Hold, Removal

_STORES = ("fluid", "spring", "pressure", "charge", "heat")
_JOINTS = (
    "clip", "hook", "press", "magnet", "solder", "tape", "bead", "route", "hinge", "seal", "adhesive", "film",
)  # fmt: skip
_OFTEN_NEW = ("tape", "bead", "seal", "adhesive", "film")


@dataclass(slots=True)
class Ids:
    """Ids from names: `a-z 0-9 -`, each once."""

    taken: dict[str, str] = field(default_factory=dict)

    def of(self, name: str) -> str:
        """The id of a name; the same name has the same id."""
        if name not in self.taken:
            plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode()
            slug = re.sub(r"[^a-z0-9]+", "-", plain.lower()).strip("-") or "part"
            tried, number = slug, 1
            while tried in self.taken.values() or tried == "device":
                number += 1
                tried = f"{slug}-{number}"
            self.taken[name] = tried
        return self.taken[name]


def record(id_: str, name: str, base: str, removals: Sequence[Removal], expect: str = "") -> str:
    """The text of device.yaml. What nobody can know from the bench is a comment that says so."""
    ids = Ids()
    base_id = ids.of(base)
    for one in removals:
        ids.of(one.part)
    known = {one.part for one in removals} | {base}
    hosts = [name_ for one in removals for name_ in (one.on, *one.under) if name_]
    hosts += [hold.to for one in removals for hold in one.holds if hold.to]
    outside = [name_ for name_ in dict.fromkeys(hosts) if name_ not in known]
    lines = [
        f"# The record of {name}: what it is made of. Every entry may carry `when:`.",
        f"device: {id_}",
        f"name: {flow(name, inside=False)}",
        f"base: {base_id}                            # everything is finally fitted to it",
        f"identify: {{expect: {flow(expect or f'The rating label shows {name}.')}}}",
        "",
        "parts:                                 # sit on the base unless `mounted-on`",
        f"  {base_id}: {flow(base)}",
    ]
    for one in removals:
        lines.append(f"  {ids.of(one.part)}: {_part(ids, base, one)}{_picture(one)}")
    for other in outside:
        lines.append(f"  {ids.of(other)}: {flow(other)}  # named on the sheet, never taken off")
    lines += _fasteners(ids, base, removals)
    lines += _connectors(ids, base, removals)
    lines += _joints(ids, base, removals)
    lines += _stores(ids, removals)
    return "\n".join([*lines, "", *_LATER])


_LATER = (
    "# Still to say, where it is so:",
    "# - functions: {printing: Printing}, and at each plug `carries: [printing]`: what fails when it is not right;",
    "# - hazards: what is dangerous to handle, in words, with `when-handling: [ids]`;",
    "# - `source: true` at the plug that feeds the device; `style:` and `with:` (a tool) at plugs;",
    "# - `torque:` as a figure (0.30 N·m); `views:` to scale, with the place of each hole;",
    "# - `opens-to: 70` at a cover that is opened while its plugs stay connected.",
    "",
)


def _part(ids: Ids, base: str, one: Removal) -> str:
    said: dict[str, Value] = {"name": one.part}
    if one.on and one.on != base:
        said["mounted-on"] = ids.of(one.on)
    if one.under:
        under = tuple(ids.of(name) for name in one.under)
        said["behind"] = under if len(under) > 1 else under[0]
    return flow(said) if len(said) > 1 else flow(one.part)


def _picture(one: Removal) -> str:
    return f"  # picture {one.picture}" if one.picture else ""


def _each(removals: Iterable[Removal], *kinds: str) -> list[tuple[Removal, Hold]]:
    return [(one, hold) for one in removals for hold in one.holds if hold.kind in kinds]


def _fasteners(ids: Ids, base: str, removals: Sequence[Removal]) -> list[str]:
    found = _each(removals, "fastener", "captive")
    lines = (
        ["", "fasteners:                             # go into the base unless `into`"]
        if found
        else []
    )
    for one, hold in found:
        said: dict[str, Value] = {"holds": ids.of(one.part)}
        if hold.to and hold.to != base:
            said["into"] = ids.of(hold.to)
        if hold.screw:
            said["screw"] = hold.screw
        if hold.kind == "captive":
            said["captive"] = True
        said["torque"] = "not-known"
        if hold.count >= MANY and any(other.kind == "seal" for other in one.holds):
            said["sequence"] = "cross"
        said["holes"] = hold.count
        called = _own_name(one, hold, "screws" if hold.count > 1 else "screw", one.holds)
        lines.append(f"  {ids.of(called)}: {flow(said)}{_note(hold)}")
    return lines


def _connectors(ids: Ids, base: str, removals: Sequence[Removal]) -> list[str]:
    found = _each(removals, "connector")
    lines = (
        ["", "connectors:                            # worked at the last part that they join"]
        if found
        else []
    )
    for one, hold in found:
        called = _own_name(one, hold, "plug", one.holds)
        said: dict[str, Value] = {
            "name": called,
            "joins": (ids.of(one.part), ids.of(hold.to or one.on or base)),
        }
        if hold.tool:
            said["with"] = Ids().of(hold.tool)
        lines.append(f"  {ids.of(called)}: {flow(said)}{_note(hold)}")
    return lines


def _joints(ids: Ids, base: str, removals: Sequence[Removal]) -> list[str]:
    found = _each(removals, *_JOINTS)
    lines = (
        ["", "joints:                                # what holds without a screw"] if found else []
    )
    for one, hold in found:
        called = _own_name(one, hold, hold.kind if hold.count == 1 else f"{hold.kind}s", one.holds)
        said: dict[str, Value] = {
            "name": called,
            "kind": hold.kind,
            "joins": (ids.of(one.part), ids.of(hold.to or one.on or base)),
        }
        if hold.kind in _OFTEN_NEW:
            said["single-use"] = True
        if hold.tool:
            said["with"] = Ids().of(hold.tool)
        lines.append(f"  {ids.of(called)}: {flow(said)}{_note(hold)}")
    return lines


def _stores(ids: Ids, removals: Sequence[Removal]) -> list[str]:
    found = _each(removals, *_STORES)
    lines = (
        ["", "stores:                                # what it holds besides its parts"]
        if found
        else []
    )
    for one, hold in found:
        called = _own_name(one, hold, {"spring": "load"}.get(hold.kind, hold.kind), one.holds)
        part = ids.of(one.part)
        said: dict[str, Value] = {"name": called, "kind": hold.kind, "in": part, "guards": (part,)}
        lines.append(f"  {ids.of(called)}: {flow(said)}{_note(hold)}")
    return lines


def _own_name(one: Removal, hold: Hold, word: str, among: Sequence[Hold]) -> str:
    """`Battery door screws`; of several of a kind the later ones are numbered."""
    same = [other for other in among if other.kind == hold.kind]
    number = next(n for n, other in enumerate(same) if other is hold)
    return f"{one.part} {word}" + (f" {number + 1}" if number else "")


def _note(hold: Hold) -> str:
    return f"  # {' '.join(hold.note.split())}" if hold.note else ""
