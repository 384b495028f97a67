"""A content folder of many guides of 40 steps, ten a device, with nothing wrong in them."""

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
  power-plug: {{name: Power plug, joins: [card-0, rack], source: true, live: any}}
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
  card-{n}-screws:
    holds: card-{n}
    screw: M3x8 pan PH1
    torque: by-hand
    view: inside
    holes: {{left: [10, {y}], right: {{xy: [60, {y}], when: edition = b}}}}"""
PLUG = "  card-{n}-plug: {{name: Plug {n}, joins: [card-{n}, rack], live: any, carries: [signal]}}"
OUTLINE = """\
      card-{n}: M8 {y} h56 v3 h-56 z
      card-{n}-plug: M30 {y} h6 v2 h-6 z"""
HEAD = """\
---
title: Change card {n}
device: {device}
goal: {{inspect: card-1}}
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

Hold the card at its handle. Pull it straight out and lay it on the mat.

```part
remove: card-{n}
undo: [card-{n}-plug, card-{n}-screws]
```

Look at the contacts of the card. Clean them with a dry cloth.

"""
IN = """\
## Put card {n} back

Push the card home until its front meets the rack.

```part
refit: card-{n}
do-up: [card-{n}-screws, card-{n}-plug]
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


def record(device: str, cards: int) -> str:
    """A rack with so many cards, each with two screws and a plug."""
    numbers = range(cards)
    return RECORD.format(
        device=device,
        height=cards * 4 + 20,
        parts="\n".join(f"  card-{n}: Card {n}" for n in numbers),
        screws="\n".join(SCREWS.format(n=n, y=n * 4 + 5) for n in numbers),
        plugs="\n".join(PLUG.format(n=n) for n in numbers if n),
        outlines="\n".join(OUTLINE.format(n=n, y=n * 4 + 3) for n in numbers if n),
    )


def guide(device: str, number: int, steps: int) -> str:
    """Half of the steps take cards out, half put them back."""
    cards = range(1, (steps - 2) // 2 + 1)
    out = "".join(OUT.format(n=n) for n in cards)
    back = "".join(IN.format(n=n) for n in reversed(cards))
    return f"{HEAD.format(n=number, device=device)}{out}# Put the cards back\n\n{back}{TAIL}"


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
