"""A device record from what is known of the device: a strip-down sheet, or the names of its parts."""

from collections.abc import Sequence

from guidebuild.plan.draft.markdown import flow
from guidebuild.plan.draft.script import Value
from guidebuild.plan.draft.sealing import MANY
from guidebuild.plan.start import exploded
from guidebuild.plan.start.dangers import functions, hazards
from guidebuild.plan.start.exploded import Place
from guidebuild.plan.start.ids import plain
from guidebuild.plan.start.stores import stores
from guidebuild.plan.start.strip import Hold, Removal
from guidebuild.plan.start.stripped import Stripped

_JOINTS = (
    "clip", "hook", "press", "magnet", "solder", "tape", "bead", "route", "hinge", "seal", "adhesive", "film",
)  # fmt: skip
_OFTEN_NEW = ("tape", "bead", "seal", "adhesive", "film")
_SOCKET = "Wall socket"
Entries = list[tuple[str, Value]]


def record(id_: str, name: str, base: str, removals: Sequence[Removal], expect: str = "") -> str:
    """The text of device.yaml. What nobody can know from the bench is a comment that says so."""
    sheet = Stripped(base, removals)
    drawn = exploded.views(sheet)
    places = {part: place for view in drawn for part, place in view.places.items()}
    lines = [
        f"# The record of {name}: what it is made of. Every entry may carry `when:`.",
        f"device: {id_}",
        f"name: {flow(name, inside=False)}",
        f"base: {sheet.base_id}                            # everything is finally fitted to it",
        f"identify: {{expect: {flow(expect or f'The rating label shows {name}.')}}}",
    ]
    for head, why, entries in (
        ("parts", "sit on the base unless `mounted-on`", _parts(sheet)),
        ("fasteners", "go into the base unless `into`", _fasteners(sheet, places)),
        ("connectors", "worked at the last part that they join", _connectors(sheet)),
        ("joints", "what holds without a screw", _joints(sheet)),
        ("stores", "what it holds besides its parts", stores(sheet)),
        ("functions", "what it does", functions(sheet)),
        ("hazards", "the words stand here once", hazards(sheet)),
    ):
        if entries:
            lines += ["", f"{head}:".ljust(39) + f"# {why}"]
            lines += [f"  {key}: {flow(value)}" for key, value in entries]
    if drawn:
        lines += ["", "views:".ljust(39) + "# from the sizes; screws stand in a row until placed"]
        lines += exploded.written(drawn)
    return "\n".join([*lines, "", *_later(sheet, bool(drawn))])


_LATER = {
    "functions": "functions: {printing: Printing}, and at each plug `carries: [printing]`: what works through it;",
    "hazards": "hazards: what is dangerous to handle, in words, with `when-handling: [ids]`;",
    "plugs": "`source: true` at the plug that feeds the device; `style:` and `with:` (a tool) at plugs;",
    "torque": "`torque:` as a figure (0.30 N·m), `grip:` and `thread-depth:` at screws;",
    "views": "`views:` to scale, with the place of each hole;",
    "opens": "`opens-to: 70` at a cover that is opened while its plugs stay connected.",
}


def _later(sheet: Stripped, drawn: bool) -> list[str]:
    """What the sheet leaves to be said, as comments."""
    plugs = sheet.holds("connector", "source", "mains")
    known = {
        "functions": bool(functions(sheet)) or not plugs,
        "hazards": bool(hazards(sheet)),
        "plugs": bool(sheet.lines) and not plugs,
        "views": drawn,
        "opens": bool(sheet.lines) and not plugs,
    }
    said = [f"# - {words}" for key, words in _LATER.items() if not known.get(key)]
    return ["# Still to say, where it is so:", *said, ""]


def _parts(sheet: Stripped) -> Entries:
    found: Entries = [(sheet.base_id, sheet.base)]
    found += [(sheet.of(one.part), _part(sheet, one)) for one in sheet.removals]
    known = {part for part, _ in found}
    named = [name for one in sheet.lines for name in (one.on, *one.under) if name]
    named += [hold.to for one in sheet.lines for hold in one.holds if hold.to]
    for name in dict.fromkeys(named):  # named on the sheet, never taken off
        if sheet.of(name) not in known:
            known.add(sheet.of(name))
            found.append((sheet.of(name), name))
    if any(not hold.to for _, hold in sheet.holds("mains")):
        found.append((sheet.of(_SOCKET), {"name": _SOCKET, "mounted-on": "nothing"}))
    return found


def _part(sheet: Stripped, one: Removal) -> Value:
    said: dict[str, Value] = {"name": one.part}
    if sheet.of(one.on) != sheet.base_id:
        said["mounted-on"] = sheet.of(one.on)
    if one.under:
        under = tuple(sheet.of(name) for name in one.under)
        said["behind"] = under if len(under) > 1 else under[0]
    if one.picture:
        said["note"] = f"Picture {one.picture}."
    return said if len(said) > 1 else one.part


def _fasteners(sheet: Stripped, places: dict[str, Place]) -> Entries:
    found: Entries = []
    for one, hold in sheet.holds("fastener", "captive"):
        part = sheet.of(one.part)
        said: dict[str, Value] = {"name": sheet.called(one, hold), "holds": part}
        if sheet.of(hold.to) != sheet.base_id:
            said["into"] = sheet.of(hold.to)
        if hold.screw:
            said["screw"] = hold.screw
        if hold.kind == "captive":
            said["captive"] = True
        said["torque"] = hold.torque
        if hold.count >= MANY and any(other.kind == "seal" for other in one.holds):
            said["sequence"] = "cross"
        said |= _carried(sheet, hold)
        place = places.get(part)
        if place is None:
            said["holes"] = hold.count
        else:
            said["view"] = place.view
            said["holes"] = {
                str(n + 1): exploded.point(at) for n, at in enumerate(place.holes(hold.count))
            }
        found.append((sheet.id_of(one, hold), said | _note(hold)))
    return found


def _connectors(sheet: Stripped) -> Entries:
    found: Entries = []
    for one, hold in sheet.holds("connector", "source", "mains"):
        mains = hold.kind == "mains"
        other = sheet.of(hold.to or (_SOCKET if mains else one.on))
        said: dict[str, Value] = {
            "name": sheet.called(one, hold),
            "joins": (sheet.of(one.part), other),
        }
        if hold.kind != "connector":
            said["source"] = True
        if mains:
            said |= {"live": "any", "style": "push-in", "guards": _guarded(sheet, one)}
        found.append((sheet.id_of(one, hold), said | _more(sheet, hold)))
    return found


def _guarded(sheet: Stripped, lead: Removal) -> Value:
    """Mains comes out before anything is opened."""
    return tuple(part for part in sheet.outer() if part != sheet.of(lead.part))


def _joints(sheet: Stripped) -> Entries:
    found: Entries = []
    for one, hold in sheet.holds(*_JOINTS):
        said: dict[str, Value] = {
            "name": sheet.called(one, hold),
            "kind": hold.kind,
            "joins": (sheet.of(one.part), sheet.of(hold.to or one.on)),
        }
        if hold.kind in _OFTEN_NEW:
            said["single-use"] = True
        found.append((sheet.id_of(one, hold), said | _more(sheet, hold)))
    return found


def _more(sheet: Stripped, hold: Hold) -> dict[str, Value]:
    """The tool, what works through it, and the note."""
    tool: dict[str, Value] = {"with": plain(hold.tool)} if hold.tool else {}
    return tool | _carried(sheet, hold) | _note(hold)


def _carried(sheet: Stripped, hold: Hold) -> dict[str, Value]:
    return (
        {"carries": tuple(sheet.ids.of(name, "function") for name in hold.works)}
        if hold.works
        else {}
    )


def _note(hold: Hold) -> dict[str, Value]:
    return {"note": " ".join(hold.note.split())} if hold.note else {}
