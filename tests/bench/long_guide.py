"""A long guide in the author's markup: 60 steps, 200 acts, a third of them under a condition.

As many words an act as the guides in content/ have, and no two blocks alike. Ten modules sit side by side, each a
plate over a board with a plug. In two rounds every plate comes off and the board behind it is taken out and put back,
"""

from pathlib import Path

MODULES = 10
ROUNDS = 2


def write(root: Path, options: int, values: tuple[str, ...] = ("no", "yes")) -> None:
    """A content folder with the one device and the one guide; each option has these values."""
    device, guide = root / "devices" / "rack", root / "guides" / "rack"
    device.mkdir(parents=True)
    guide.mkdir(parents=True)
    (device / "device.yaml").write_text(_device(), encoding="utf-8")
    (guide / "service.md").write_text(_guide(options, values), encoding="utf-8")


def _device() -> str:
    lines = ["device: rack", "name: Module rack", "base: frame", "parts:", "  frame: Frame"]
    lines += ["  supply: {name: Supply, mounted-on: nothing}"]
    for number in range(MODULES):
        lines.append(f"  plate-{number}: Plate {number}")
        lines.append(f"  board-{number}: {{name: Board {number}, behind: plate-{number}}}")
    lines.append("fasteners:")
    for number in range(MODULES):
        for part in ("plate", "board"):
            lines.append(
                f"  {part}-{number}-screws: {{holds: {part}-{number}, screw: M3x6 pan PH1,"
                " torque: 0.5 N·m, holes: 2}"
            )
    lines.append("connectors:")
    lines.append(
        "  supply-plug: {joins: [frame, supply], source: true, live: any, name: Supply plug}"
    )
    for number in range(MODULES):
        lines.append(f"  plug-{number}: {{name: Plug {number}, joins: [frame, board-{number}]}}")
    return "\n".join(lines) + "\n"


def _guide(options: int, values: tuple[str, ...]) -> str:
    lines = [
        "---",
        "title: Service all modules",
        "device: rack",
        "goal: {clean: board-0}",
        "options:",
    ]
    for number in range(options):
        lines.append(
            f"  o{number}: {{ask: Is fault {number} seen?, values: {{{_values(values)}}}}}"
        )
    lines += ["---", "", "# Make safe", "", "## Unplug", ""]
    lines += _act("connector", "disconnect: supply-plug", note="Pull at the plug, not at the lead.")
    for turn in range(ROUNDS):
        lines += [f"# Round {turn}", ""]
        for number in range(MODULES):
            lines += _module(turn, number, _condition(turn, number, options))
    lines += ["# Finish", "", "## Plug in", "", *_act("connector", "reconnect: supply-plug")]
    return "\n".join(lines) + "\n"


def _values(values: tuple[str, ...]) -> str:
    return ", ".join(f'{value}: "{value}"' for value in values)


def _condition(turn: int, number: int, options: int) -> str | None:
    """Single options in the first round, pairs of them in the second; three modules have none."""
    if turn and number < 3:
        return None
    first = (turn * MODULES + number) % options
    second = (first + 3) % options
    return f"o{first} = yes or o{second} = yes" if turn and number % 2 else f"o{first} = yes"


def _module(turn: int, number: int, when: str | None) -> list[str]:
    """Three steps, ten acts."""
    plate, board, plug = f"plate-{number}", f"board-{number}", f"plug-{number}"
    return [
        *_step(
            turn,
            number,
            "open",
            f"Hold plate {number} with one hand in round {turn}, since it falls.",
        ),
        *_act("fastener", f"remove: {plate}-screws", note=f"Round {turn}: both screws are short."),
        *_act("part", f"remove: {plate}", note=f"Round {turn}: tilt it towards you first."),
        *_act("connector", f"disconnect: {plug}", note=f"Round {turn}: pull at the plug itself."),
        *_step(
            turn, number, "clean", f"Put the parts of module {number} on the mat in round {turn}."
        ),
        *_act("fastener", f"remove: {board}-screws", when, f"Round {turn}: the near one first."),
        *_act("part", f"remove: {board}", when, f"Round {turn}: straight out of its slot."),
        f"Brush the dust off board {number} and out of the slot behind it, round {turn}.",
        "",
        *_act("part", f"refit: {board}", when, f"Round {turn}: until you feel it stop."),
        *_act("fastener", f"refit: {board}-screws", when, f"Round {turn}: the far one first."),
        *_step(
            turn, number, "close", f"Look once more into slot {number} before round {turn} ends."
        ),
        *_act("connector", f"reconnect: {plug}", note=f"Round {turn}: until it clicks."),
        *_act("part", f"refit: {plate}", note=f"Round {turn}: its arrow points up."),
        *_act("fastener", f"refit: {plate}-screws", note=f"Round {turn}: both to the torque."),
    ]


def _step(turn: int, number: int, what: str, words: str) -> list[str]:
    return [
        f"## Round {turn}, module {number}: {what}",
        "",
        "```step",
        "minutes: 2",
        "```",
        "",
        words,
        "",
    ]


def _act(block: str, act: str, when: str | None = None, note: str = "As before.") -> list[str]:
    condition = [f"when: {when}"] if when else []
    return [f"```{block}", act, *condition, f"note: {note!r}", "```", ""]
