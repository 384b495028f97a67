"""A guide's front matter: its map as read into the fields of Guide that need no device."""

from typing import TypedDict

from guidebuild.device.quantity import Quantity
from guidebuild.guide.guide import Before, Goal, Tried
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said

_VERBS = ("replace", "inspect", "clean", "adjust", "remove", "add")
_NONE = "none"


class Matter(TypedDict):
    """Fields of Guide."""

    title: Said
    number: Said | None
    issue: Said | None
    status: Said | None
    tried_on: tuple[Tried, ...]
    devices: tuple[Said, ...]
    goal: Goal
    skill: Said | None
    only: Said | None
    before: Before
    after: tuple[Said, ...]
    video: Said | None


def matter(entry: Entry, name: str) -> Matter:
    """What the front matter says; a guide without a title has its file's name."""
    return Matter(
        title=entry.said("title") or Said(name, entry.span),
        number=entry.said("number"),
        issue=entry.said("issue"),
        status=entry.said("status"),
        tried_on=_trials(entry),
        devices=devices(entry),
        goal=_goal(entry),
        skill=entry.said("skill"),
        only=entry.said("only"),
        before=_before(entry.entry("before")),
        after=entry.all_said("after"),
        video=entry.said("video"),
    )


def devices(entry: Entry) -> tuple[Said, ...]:
    """The models that a file is for."""
    one = entry.said("device")
    several: tuple[Said, ...] = tuple(dict.fromkeys(entry.all_said("devices")))
    return several or ((one,) if one else ())


def _goal(entry: Entry) -> Goal:
    inside = entry.entry("goal")
    verb = next((word for word in _VERBS if inside and word in inside.values), None)
    if inside is None or verb is None:
        return Goal("inspect", (), inside.span if inside else entry.span)
    return Goal(verb, inside.values[verb], inside.span)


def _trials(entry: Entry) -> tuple[Tried, ...]:
    trials: tuple[Entry, ...] = entry.get("tried-on", ())
    found = ((one.said("serial"), one.said("date"), one.said("by")) for one in trials)
    return tuple(Tried(serial, date, by) for serial, date, by in found if serial and date and by)


def _before(entry: Entry | None) -> Before:
    if entry is None:
        return Before()
    charge = entry.entry("charge")
    most: Quantity | None = charge.get("max", None) if charge else None
    bench = entry.all_said("bench") if "bench" in entry.values else None
    return Before(
        data=entry.said("data"),
        charge_most=most.value if most else None,
        charge_said=charge.said("said") if charge else None,
        people=entry.get("people", None),
        bench=() if bench and [one.text for one in bench] == [_NONE] else bench,
        span=entry.span,
    )
