"""A small report of invented findings that every report's test renders."""

from guidebuild.reports.parts.report import Card, Fault, Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Category, Finding, Loudness, Related, Told
from guidebuild.source.span import Span
from guidebuild.source.text import Source

GUIDE = Source(
    "guides/brill-7/change-lamp.md",
    """\
# Take out the lamp

## Remove the shade

```part
remove: shade
undo: [shade-screws, shade-clip]
```

Lift it straight up & away, about some millimetres.

## Fit the new lamp

```fastener
tighten: lamp-scrws
```
""",
)
RECORD = Source(
    "devices/brill-7/device.yaml", "device: brill-7\nparts:\n  shade: Lampenschirm “groß”\n"
)


def mark(source: Source, text: str, after: str = "") -> Span:
    """Where a text stands in a source (the first after another)."""
    start = source.text.index(text, source.text.index(after))
    return Span(source, start, start + len(text))


NOT_RETURNED = Slip(
    Finding(
        rule="fastener-not-returned",
        category=Category.CORRECTNESS,
        span=mark(GUIDE, "shade-screws"),
        message="the screw shade-screws.left is still out at the end",
        help="put it back after the shade is on, or say under `ends` that it stays out",
        related=(Related(mark(RECORD, "shade"), "this is what it holds"),),
        told=Told("only when supplied = bare and revision is b", 2, 8),
    ),
    Loudness.ERROR,
    (GUIDE.path,),
    "Take out the lamp",
    "remove-the-shade",
    "Remove the shade",
)
VAGUE = Slip(
    Finding(
        rule="vague-quantity",
        category=Category.TEXT,
        span=mark(GUIDE, "about some"),
        message='"about some" says no figure',
        help="give the figure",
    ),
    Loudness.WARNING,
    (GUIDE.path, "guides/brill-7/clean.md"),
    "Take out the lamp",
    "remove-the-shade",
    "Remove the shade",
)
MISSPELT = Slip(
    Finding(
        rule="unknown-id",
        category=Category.CORRECTNESS,
        span=mark(GUIDE, "lamp-scrws"),
        message="the record of brill-7 has no lamp-scrws",
        help="write lamp-screws, the nearest that it has",
        edits=(Edit(mark(GUIDE, "lamp-scrws"), "lamp-screws"),),
    ),
    Loudness.ERROR,
    (GUIDE.path,),
    "Take out the lamp",
    "fit-the-new-lamp",
    "Fit the new lamp",
)
NO_BASE = Slip(
    Finding(
        rule="wrong-type",
        category=Category.CORRECTNESS,
        span=mark(RECORD, "Lampenschirm “groß”"),
        message="quotes are missing",
        help="",
    ),
    Loudness.NOTE,
)
REPORT = Report(
    version="0.1.0",
    slips=(NO_BASE, NOT_RETURNED, VAGUE, MISSPELT),
    guides=("guides/brill-7/change-lamp.md", "guides/brill-7/clean.md"),
    unproved=("guides/brill-7/adjust.md",),
    configurations=12,
    cards={
        "fastener-not-returned": Card(
            "fastener-not-returned",
            Category.CORRECTNESS,
            "A screw that came out is not back at the end.",
            "A screw left on the mat works loose what it held, or rattles into the works.",
            "Source: common practice, no source.",
            "the screw {screw} is still out at the end",
            "put it back",
        )
    },
    prefix="content",
)
CLEAN = Report("0.1.0", guides=("guides/brill-7/change-lamp.md",), configurations=1)
FAULTY = Report(
    "0.1.0",
    faults=(Fault("look-alike-screws", GUIDE.path, "KeyError: 'shade' (rules/x.py, line 3)"),),
    guides=(GUIDE.path,),
    configurations=4,
    prefix="content",
)
