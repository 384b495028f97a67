"""What must come off for what, drawn: a row for each part, a mark under each part that comes off for it.

Rows stand from the shallowest part to the deepest, columns in the same order, so that the marks make a stair.
"""

from collections.abc import Sequence
from xml.sax.saxutils import escape

from guidebuild.device.record import Device
from guidebuild.plan.depth.measure import Depth
from guidebuild.plan.draft.names import name, title

CELL, HEAD, TEXT = 26, 150, 210  # px: a cell, room for the slanted names, room for the row's name
FAR = 110  # px: room for steps and points
OWN = 'fill="#fdfdf9" stroke="#222" stroke-width="2"'
LEAST = 560  # px: the line at the foot stands on one line
FOOT = 72  # px: what the marks mean, and that it is an estimate


def chart(device: Device, found: Sequence[Depth], label: str) -> str:
    """An SVG; every mark is also told in words in its title."""
    rows = sorted((one for one in found if one.steps), key=lambda one: (one.steps or (0, 0))[1])
    columns = [one.part for one in rows if any(one.part in row.off for row in rows)]
    width = max(LEAST, TEXT + CELL * len(columns) + FAR)
    height = HEAD + CELL * len(rows) + FOOT
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" width="{width}" height="{height}" '
        'font-family="Atkinson Hyperlegible, sans-serif" font-size="13">',
        f"<title>{escape(f'What must come off for what: {device.name.text}')}</title>",
        f'<rect width="{width}" height="{height}" fill="#fdfdf9"/>',
        f'<text x="8" y="22" font-size="16" font-weight="bold">{escape(device.name.text)}</text>',
        '<text x="8" y="40">What must come off for what</text>',
    ]
    parts += [_column(device, number, key) for number, key in enumerate(columns)]
    for number, row in enumerate(rows):
        parts += _row(device, number, row, columns)
    parts += _legend(HEAD + CELL * len(rows) + 14)
    parts.append(
        f'<text x="8" y="{height - 12}" font-size="10" fill="#555">{escape(label[:150])}</text></svg>\n'
    )
    return "\n".join(parts)


def _legend(y: int) -> list[str]:
    return [
        f'<rect x="8" y="{y}" width="16" height="16" fill="#222"/>',
        f'<text x="32" y="{y + 13}">comes off first</text>',
        f'<rect x="150" y="{y}" width="16" height="16" {OWN}/>',
        f'<text x="174" y="{y + 13}">the part itself</text>',
    ]


def _column(device: Device, number: int, key: str) -> str:
    x, y = TEXT + CELL * number + CELL / 2, HEAD - 8
    return f'<text x="{x}" y="{y}" transform="rotate(-50 {x} {y})">{escape(title(name(device, key)))}</text>'


def _row(device: Device, number: int, row: Depth, columns: Sequence[str]) -> list[str]:
    y = HEAD + CELL * number
    called = title(name(device, row.part))
    least, most = row.steps or (0, 0)
    count = f"{least}" if least == most else f"{least} to {most}"
    found = [
        f'<line x1="0" x2="{TEXT + CELL * len(columns) + FAR}" y1="{y}" y2="{y}" stroke="#d5d5cc"/>',
        f'<text x="{TEXT - 10}" y="{y + 18}" text-anchor="end">{escape(called)}</text>',
        f'<text x="{TEXT + CELL * len(columns) + 12}" y="{y + 18}">{count} {"step" if most == 1 else "steps"}</text>',
    ]
    for place, key in enumerate(columns):
        if key in row.off:
            x = TEXT + CELL * place
            own = key == row.part
            words = f"{called}: {'comes off' if own else 'the ' + name(device, key) + ' comes off first'}"
            fill = OWN if own else 'fill="#222"'
            found.append(
                f'<rect x="{x + 5}" y="{y + 5}" width="16" height="16" {fill}><title>{escape(words)}</title></rect>'
            )
    return found
