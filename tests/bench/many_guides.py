"""A content folder of many guides of 40 steps, ten a device, with nothing wrong in them.

No two devices have a card in common, and each guide has its sentences from some hundreds: what is worked out once
for the same words does not help more than in a house of one hand's writing.
"""

from pathlib import Path

A_DEVICE = 10  # guides

RECORD = """\
device: {device}
name: Rack {device}
base: rack
identify: {{expect: The plate shows R.}}
options:
  edition:
    ask: Which letter stands on the plate?
    values: {{a: "A", b: "B"}}
parts:
  rack: Rack
{parts}
fasteners:
{screws}
connectors:
  power-plug: {{name: Power plug, joins: [{device}-card-0, rack], source: true, live: any}}
{plugs}
functions: {{signal: Signal}}
views:
  inside:
    size: [80, {height}]
    outline:
      rack: M5 2 h70 v90 h-70 z
      power-plug: M70 2 h5 v5 h-5 z
{outlines}
"""
SCREWS = """\
  {d}-card-{n}-screws:
    holds: {d}-card-{n}
    screw: M3x8 pan PH1
    torque: by-hand
    view: inside
    holes: {{left: [10, {y}], right: {{xy: [60, {y}], when: edition = b}}}}"""
PLUG = "  {d}-card-{n}-plug: {{name: Plug {n}, joins: [{d}-card-{n}, rack], live: any, carries: [signal]}}"
OUTLINE = """\
      {d}-card-{n}: M8 {y} h56 v3 h-56 z
      {d}-card-{n}-plug: M30 {y} h6 v2 h-6 z"""
HEAD = """\
---
title: Change card {n}
device: {device}
goal: {{inspect: {device}-card-1}}
skill: skilled
before: {{data: none, charge: none, people: 1, bench: [clean mat]}}
---

Cards are taken out, looked at, and put back in turn.

# Make it dead

## Switch it off

```power
switch-off: device
```

```connector
disconnect: power-plug
```

# Take the cards out

"""
OUT = """\
## Take card {n} out

Hold card {n} {grip}. Pull it straight out and lay it {down}.

```part
remove: {d}-card-{n}
undo: [{d}-card-{n}-plug, {d}-card-{n}-screws]
```

Look at the contacts of card {n}. Clean them with a dry cloth{way}.

"""
IN = """\
## Put card {n} back

Push card {n} home until its front meets the rack.

```part
refit: {d}-card-{n}
do-up: [{d}-card-{n}-screws, {d}-card-{n}-plug]
```

"""
TAIL = """\
# Test

## Switch it on

```connector
reconnect: power-plug
```

```power
switch-on: device
```

```check
expect: The signal lamp lights.
tests: [signal]
powered: true
stop: Switch it off and ask the maker.
```
"""
GRIPS = ("at its handle", "at both edges", "by the grip", "at its front", "with two fingers")
DOWNS = ("on the mat", "on the left of the mat", "in its sleeve", "on the tray", "beside the rack")
WAYS = ("", ", along the rows", " from the middle out", ", one row at a time", " without pressing")


def record(device: str, cards: int) -> str:
    """A rack with so many cards, each with two screws and a plug."""
    numbers = range(cards)
    return RECORD.format(
        device=device,
        height=cards * 4 + 20,
        parts="\n".join(f"  {device}-card-{n}: Card {n}" for n in numbers),
        screws="\n".join(SCREWS.format(d=device, n=n, y=n * 4 + 5) for n in numbers),
        plugs="\n".join(PLUG.format(d=device, n=n) for n in numbers if n),
        outlines="\n".join(OUTLINE.format(d=device, n=n, y=n * 4 + 3) for n in numbers if n),
    )


def guide(device: str, number: int, steps: int) -> str:
    """Half of the steps take cards out, half put them back."""
    cards = range(1, (steps - 2) // 2 + 1)
    out = "".join(OUT.format(d=device, n=n, **_words(number, n)) for n in cards)
    back = "".join(IN.format(d=device, n=n) for n in reversed(cards))
    return f"{HEAD.format(n=number, device=device)}{out}# Put the cards back\n\n{back}{TAIL}"


def _words(number: int, card: int) -> dict[str, str]:
    """How this guide says it of this card."""
    pick = number * 7 + card * 3
    return {
        "grip": GRIPS[pick % 5],
        "down": DOWNS[pick // 5 % 5],
        "way": WAYS[pick // 25 % 5],
    }


def write(root: Path, guides: int, steps: int = 40) -> None:
    """So many guides into an empty folder."""
    for first in range(0, guides, A_DEVICE):
        device = f"rack-{first // A_DEVICE}"
        for room in ("devices", "guides"):
            (root / room / device).mkdir(parents=True)
        text = record(device, steps // 2)
        (root / "devices" / device / "device.yaml").write_text(text, encoding="utf-8")
        for number in range(first, min(first + A_DEVICE, guides)):
            path = root / "guides" / device / f"change-{number}.md"
            path.write_text(guide(device, number, steps), encoding="utf-8")
    (root / "guidebuild.yaml").write_text("publisher: Tarnwick Instruments\n", encoding="utf-8")
    (root / "tools.yaml").write_text(
        "ph1-driver: {name: Screwdriver PH1, fits: PH1, basic: true}\n", encoding="utf-8"
    )
