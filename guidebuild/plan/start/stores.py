"""What a sheet says of what the device holds besides its parts: fluid, springs under load, pressure, charge."""

from guidebuild.plan.draft.script import Value
from guidebuild.plan.start.strip import STORED, Hold, Removal
from guidebuild.plan.start.stripped import Stripped


def stores(sheet: Stripped) -> list[tuple[str, dict[str, Value]]]:
    """By id. What stands on the line of a part is let go before that part; on the line of the base, before all."""
    return [
        (sheet.id_of(one, hold), _store(sheet, one, hold)) for one, hold in sheet.holds(*STORED)
    ]


def _store(sheet: Stripped, one: Removal, hold: Hold) -> dict[str, Value]:
    drain = sheet.screws_of(hold.to) if hold.kind == "fluid" else None
    inside = sheet.base_id if drain else sheet.of(hold.to)
    said: dict[str, Value] = {"name": sheet.called(one, hold), "kind": hold.kind}
    if hold.kind == "calibration":
        return said | _setting(sheet, one, hold) | _note(hold)
    said["in"] = inside
    if inside != sheet.base_id:
        said["at"] = sheet.base_id  # let go from outside of what it is in
    under = tuple(sheet.of(name) for name in one.under)
    if under:
        said["behind"] = under
    if drain:
        said["through"] = drain
    said["guards"] = sheet.outer() if one is sheet.of_base else (sheet.of(one.part),)
    return said | _note(hold)


def _setting(sheet: Stripped, one: Removal, hold: Hold) -> dict[str, Value]:
    """Set from outside when all is in, at the part that `to` names: as long as nothing lies over that."""
    part = sheet.of(one.part)
    over = next(
        (line.under for line in sheet.removals if sheet.of(line.part) == sheet.of(hold.to)), ()
    )
    said: dict[str, Value] = {"in": part, "at": sheet.base_id}
    if over:
        said["behind"] = tuple(sheet.of(name) for name in over)
    return said | {"emptied-by": (part,)}


def _note(hold: Hold) -> dict[str, Value]:
    return {"note": " ".join(hold.note.split())} if hold.note else {}
