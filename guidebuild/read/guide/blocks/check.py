"""`check`: what must be seen, and the way on when it is not."""

from guidebuild.device.quantity import Quantity
from guidebuild.guide.blocks.check import Check, Fault, Measure
from guidebuild.read.faults import wrong_type
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry


def read(name: str, entry: Entry, report: Report) -> Check | None:
    """None where nothing is expected."""
    expect = entry.said("expect")
    if expect is None:
        return None
    return Check(
        expect=expect,
        tests=entry.all_said("tests"),
        measure=_measure(entry.entry("measure"), report),
        powered=entry.get("powered", False),
        if_not=entry.said("if-not"),
        faults=_faults(entry),
        stop=entry.said("stop"),
        when=entry.get("when", None),
        note=entry.said("note"),
        span=entry.span,
        with_=entry.all_said("with"),
    )


def _faults(entry: Entry) -> tuple[Fault, ...]:
    faults: tuple[Entry, ...] = entry.get("faults", ())
    pairs = ((one.said("see"), one.said("go")) for one in faults)
    return tuple(Fault(see, go) for see, go in pairs if see and go)


def _measure(entry: Entry | None, report: Report) -> Measure | None:
    quantity = entry.said("quantity") if entry else None
    if entry is None or quantity is None:
        return None
    least: Quantity | None = entry.get("min", None)
    most: Quantity | None = entry.get("max", None)
    units = {one.unit for one in (least, most) if one is not None and one.unit}
    if len(units) > 1 and most is not None and least is not None:
        report.tell(
            wrong_type,
            most.span,
            lost=False,
            what="`max`",
            wanted=f"have the unit of `min`, {least.unit}",
            found=f", not {most.unit}",
            do="write both limits in one unit",
        )
    return Measure(
        quantity=quantity,
        least=least.value if least else None,
        most=most.value if most else None,
        unit=min(units) if units else "",
        span=entry.span,
    )
