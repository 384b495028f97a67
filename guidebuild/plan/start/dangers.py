"""The hazards and the functions of a sheet: each once, with all that it is about."""

from guidebuild.plan.draft.script import Value
from guidebuild.plan.start.cells import Danger
from guidebuild.plan.start.strip import STORED, Hold, Removal
from guidebuild.plan.start.stripped import Stripped


def hazards(sheet: Stripped) -> list[tuple[str, dict[str, Value]]]:
    """By id; the same words on several lines are one hazard."""
    handled: dict[Danger, list[str]] = {}
    called: dict[Danger, str] = {}
    for one in sheet.lines:
        for danger in one.dangers:
            handled.setdefault(danger, []).append(sheet.of(one.part))
            called.setdefault(danger, f"{one.part} hazard")
        for hold in one.holds:
            if hold.danger is not None:
                handled.setdefault(hold.danger, []).extend(_handled(sheet, one, hold))
                called.setdefault(hold.danger, f"{sheet.called(one, hold)} hazard")
    return [
        (
            sheet.ids.of(called[danger], f"hazard: {danger}"),
            {
                danger.level: danger.words,
                "result": danger.result,
                "avoid": danger.avoid,
                "when-handling": tuple(dict.fromkeys(ids)),
            },
        )
        for danger, ids in handled.items()
    ]


def _handled(sheet: Stripped, one: Removal, hold: Hold) -> list[str]:
    """Letting a store go, and undoing the part that it pushes at."""
    found = [sheet.id_of(one, hold)]
    if hold.kind not in ("spring", "pressure", "charge") or one is sheet.of_base:
        return found
    screws = [
        sheet.id_of(one, other) for other in one.holds if other.kind in ("fastener", "captive")
    ]
    return [*found, *screws, sheet.of(one.part)] if hold.kind in STORED else found


def functions(sheet: Stripped) -> list[tuple[str, str]]:
    """What works through plugs and contacts, by id."""
    named = dict.fromkeys(name for one in sheet.lines for hold in one.holds for name in hold.works)
    return [(sheet.ids.of(name, "function"), name) for name in named]
