"""The headings of steps: what is done, in the words of the trade."""

from guidebuild.device.acts import Verb
from guidebuild.device.record import Device
from guidebuild.device.things import Connector, Hole, Joint, Part, Store
from guidebuild.plan.draft.names import name, names, plural, shared_end
from guidebuild.plan.draft.work import Work

_EMPTY = {
    "charge": "Discharge",
    "spring": "Relax",
    "pressure": "Let off",
    "fluid": "Drain",
    "heat": "Let cool down:",
}
_FILL = {"fluid": "Fill in", "calibration": "Set", "spring": "Tension", "pressure": "Restore"}
_RELEASE = {
    "adhesive": "Loosen",
    "tape": "Peel off",
    "film": "Peel off",
    "solder": "Unsolder",
    "bead": "Cut",
    "press": "Pull out",
    "route": "Take out of its guide:",
}
_CLOSE = {"solder": "Solder", "tape": "Press on", "bead": "Lay", "press": "Press in"}
_PART = {
    Verb.REMOVE: "Remove",
    Verb.REFIT: "Fit",
    Verb.LOWER: "Close",
    Verb.RENEW: "Unpack the new one:",
}


def heading(device: Device, works: list[Work], about: str | None = None) -> str:
    """For a step of these acts; of a part with its screws the part gives the name."""
    part = next((one for one in works if isinstance(device.things[one.keys[0]], Part)), None)
    main = part or works[-1]
    thing = device.things[main.keys[0]]
    called = name(device, main.keys[0])
    match thing:
        case Part():
            return _of_part(main.verb, thing, called)
        case Hole():
            return f"{'Remove' if main.verb is Verb.REMOVE else _turned(main.verb)} the {called}"
        case Connector():
            plugs = [one for one in works if isinstance(device.things[one.keys[0]], Connector)]
            words = _of_plugs(device, plugs, about)
            return (
                words
                if len(plugs) == len(works)
                else f"Switch off and {words[:1].lower()}{words[1:]}"
            )
        case Joint():
            return _of_joint(works, thing, called)
        case Store(store="charge", inside=inside) if inside is not None:
            keys = device.names.get(inside.text, main.keys)
            return f"Discharge the {name(device, keys[0])}"
        case Store() if main.verb is Verb.RELEASE:
            return f"{_EMPTY.get(thing.store, 'Empty')} the {called}"
        case Store() if main.verb is Verb.RESTORE:
            return f"{_FILL.get(thing.store, 'Restore')} the {called}"
        case _:
            return "Switch off"


def _turned(verb: Verb) -> str:
    return {Verb.LOOSEN: "Loosen", Verb.TIGHTEN: "Tighten", Verb.RENEW: "Renew"}.get(verb, "Fit")


def _of_part(verb: Verb, part: Part, called: str) -> str:
    if verb is Verb.LIFT:
        return f"Open the {called}" if part.opens_to is not None else f"Lift the {called}"
    if verb is Verb.OFFER:
        return f"Bring the {called} to its place"
    return f"{_PART.get(verb, 'Work on')} the {called}"


def _of_plugs(device: Device, works: list[Work], about: str | None) -> str:
    keys = [key for one in works for key in one.keys]
    opening = works[-1].verb is Verb.DISCONNECT
    if len(keys) == 1:
        thing = device.things[keys[0]]
        style = thing.style.text if isinstance(thing, Connector) and thing.style else ""
        pulled = isinstance(thing, Connector) and thing.source and style == "push-in"
        verb = ("Unplug" if pulled else "Open") if opening else "Connect"
        return f"{verb} the {name(device, keys[0])}"
    part = shared_end(device, keys, [about] if about else ())
    if part is not None and len(keys) > 2:
        return f"{'Open the plugs of' if opening else 'Connect'} the {name(device, part)}"
    return f"{'Open' if opening else 'Connect'} {names(device, keys)}"


def _of_joint(works: list[Work], joint: Joint, called: str) -> str:
    verbs = {one.verb for one in works}
    if Verb.RELEASE in verbs:
        return f"{_RELEASE.get(joint.joint, 'Release')} the {called}"
    if Verb.RENEW in verbs:
        return f"Put on new {called}" if plural(called) else f"Put on a new {called}"
    return f"{_CLOSE.get(joint.joint, 'Close')} the {called}"
