"""The strip-down sheet to print: what the CSV asks for, to be filled in by hand at the bench."""

from html import escape

from guidebuild.plan.start.strip import COLUMNS, HELD_BY

_WIDTHS = {
    "no": 7, "part": 26, "on": 18, "under": 18, "held by": 18, "called": 20, "to": 18, "screw": 30,
    "torque": 15, "count": 10, "tool": 16, "works": 16, "size": 14, "hazard": 21, "picture": 10, "note": 20,
}  # fmt: skip
_ASKS = {
    "part": "what came off", "on": "what it sits on", "under": "what lay over it",
    "held by": "a line for each", "called": "if it has a name", "to": "other end, drain",
    "screw": "M2.5x8 pan TX8", "torque": "if it is known", "works": "what goes through it",
    "size": "w x h, mm", "hazard": "level: what", "picture": "no.",
}  # fmt: skip
ROWS = 22


def sheet(device: str) -> str:
    """One A4 page across, with room for 22 lines; it needs nothing from elsewhere."""
    heads = "".join(
        f'<th style="width:{_WIDTHS[one]}mm">{escape(one)}<small>{escape(_ASKS.get(one, ""))}</small></th>'
        for one in COLUMNS
    )
    rows = "".join(
        f"<tr><td>{number}</td>{'<td></td>' * (len(COLUMNS) - 1)}</tr>"
        for number in range(1, ROWS + 1)
    )
    words = ", ".join(sorted(word for word in HELD_BY if word))
    return f"""<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Strip-down sheet: {escape(device)}</title>
<style>
@page {{ size: A4 landscape; margin: 10mm }}
body {{ font: 10pt sans-serif; margin: 0; color: #111 }}
h1 {{ font-size: 14pt; margin: 0 0 2mm }}
p {{ margin: 0 0 2mm; max-width: 250mm }}
table {{ border-collapse: collapse; width: 277mm; table-layout: fixed }}
th, td {{ box-sizing: border-box; border: 0.3mm solid #333; height: 6.4mm; padding: 0 1mm }}
th, td {{ text-align: left; vertical-align: bottom }}
th {{ height: auto; padding: 1mm }}
small {{ display: block; font-weight: normal; font-size: 7pt; color: #444 }}
</style></head><body>
<h1>Strip-down sheet: {escape(device)}</h1>
<p>Write in the order of removal. A part that three things held takes three lines. Energy first: switch off, unplug,
discharge, and write that down, too: a spring or a fluid on the line of the part that it must be gone from; pressure and
charge of the whole device on a line of its base. Sizes give a first drawing. A hazard: its signal word, then what, what
happens, how to avoid it, with / between. Held by: {escape(words)}.</p>
<table><thead><tr>{heads}</tr></thead><tbody>{rows}</tbody></table>
</body></html>
"""


def blank() -> str:
    """The CSV with its heads only."""
    return ",".join(COLUMNS) + "\n"
