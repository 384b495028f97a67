"""Front matter of a draft: what can be known of it beforehand, and what an author has to look at."""

from collections.abc import Collection, Mapping, Sequence

from guidebuild.device.record import Device
from guidebuild.plan.draft.names import name
from guidebuild.plan.draft.script import Entry, Value
from guidebuild.rules.who_may_not_said import DANGEROUS

ONLY = "A person whom the local code allows to do this work, or an instructed person under that person's eyes."
SAFETY_TEST = (
    "Do the safety test that your local code asks for after a repair, and write its result down."
)


def front(
    device: Device,
    title: str,
    goal: Entry,
    handled: Collection[str],
    *,
    kits: Sequence[str] = (),
    ends: Mapping[str, str] | None = None,
    exclude: str = "",
    parts: Sequence[str] = (),
) -> Entry:
    """The keys in the order in which the guides have them. `handled`: everything that is worked on."""
    dangerous = is_dangerous(device, handled)
    found: dict[str, Value] = {"title": title, "status": "draft", "device": device.id, "goal": goal}
    if kits:
        found["kits"] = tuple(kits)
    found["skill"] = "licensed" if dangerous else "instructed"
    if dangerous:
        found["only"] = ONLY
    found["before"] = {
        "data": "none", "charge": "none", "people": 1, "bench": ("clean mat", "tray sheet"),
    }  # fmt: skip
    if exclude:
        found["exclude"] = (exclude,)
    if ends:
        found["ends"] = {device.things[key].id: word for key, word in ends.items()}
    after = [SAFETY_TEST] if dangerous else []
    after += [_waste(device, part) for part in parts if device.part(part).waste is not None]
    if after:
        found["after"] = tuple(after)
    return found


def is_dangerous(device: Device, handled: Collection[str]) -> bool:
    """Whether something is handled that in most places only some people may work on."""
    words = [
        hazard.hazard.text
        for hazard in device.hazards.values()
        for said in hazard.when_handling
        if set(device.names.get(said.text, ())) & set(handled)
    ]
    words += [f"{key.replace('-', ' ')} {name(device, key)}" for key in handled]
    return any(pattern.search(text) for pattern in DANGEROUS.values() for text in words)


def _waste(device: Device, part: str) -> str:
    waste = device.part(part).waste
    kind = {"battery": "batteries", "electronics": "electronic waste"}.get(str(waste), str(waste))
    return f"Hand the old {name(device, part)} to a collector of {kind}."
