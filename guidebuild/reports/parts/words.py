"""The sentences that text reports share: where, in which units, how many in all."""

from collections.abc import Iterator

from guidebuild.reports.parts.report import Fault, Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Loudness, Told


def count(number: int, one: str, many: str = "") -> str:
    """`1 guide`, `2 guides`."""
    return f"{number} {one if number == 1 else many or one + 's'}"


def sentence(text: str) -> str:
    """The text with a capital and a full stop, as a sentence of its own. An id keeps its small letter."""
    text = text.strip()
    if text and text[-1] not in ".!?…:":
        text += "."
    first = text.split(" ", 1)[0]
    return text[:1].upper() + text[1:] if first.rstrip(".,:;").isalpha() else text


def units(told: Told | None) -> str:
    """In which configurations; empty where it is so in all, or where they have no say."""
    if told is None or not told.words:
        return ""
    among = f" ({told.count} of {count(told.total, 'configuration')})" if told.total > 1 else ""
    return told.words + among


def places(slip: Slip, report: Report) -> str:
    """The file and line, and the guides that a shared place belongs to."""
    span = slip.finding.span
    shared = span.source.path.endswith(".md")  # of a record's place all its guides are no news
    also = [guide for guide in slip.guides if shared and guide != span.source.path]
    met = f" (met in {', '.join(report.path(guide) for guide in also)})" if also else ""
    return f"{report.path(span.source.path)}, line {span.line}{met}"


def where(slip: Slip, report: Report) -> str:
    """The step by its heading, then file and line."""
    step = f'step "{slip.step_title}" · ' if slip.step_title else ""
    return step + places(slip, report)


def summary(report: Report) -> str:
    """One line for the whole check."""
    if not (report.slips or report.guides or report.unproved or report.faults):
        return "There is no guide here."
    counts = report.counts
    kinds = ", ".join(
        count(counts[each], each.value) for each in reversed(Loudness) if counts[each]
    )
    if report.slips:
        first = f"{count(len(report.slips), 'finding')}: {kinds}."
    elif report.faults or report.unproved:
        first = ""
    else:
        first = "Nothing new." if report.known else "All is well."
    return " ".join(filter(None, (first, *_done(report))))


def _done(report: Report) -> Iterator[str]:
    """What was proved, what was not, and what was left out."""
    guides = count(len(report.guides), "guide")
    if (
        report.guides or report.unproved
    ):  # else it is about something that is not proved, as a catalogue
        yield f"Proved: {guides}, {count(report.configurations, 'configuration')}."
    if report.unproved:
        yield f"Not proved, as not readable as a whole: {count(len(report.unproved), 'guide')}."
    if report.known:
        yield f"Known from before and left out: {count(report.known, 'finding')}."


def fault(found: Fault) -> str:
    """Our own mistake, told to somebody who can't mend it but can pass it on."""
    doing = f"The rule {found.rule} fell over" if found.rule else "guidebuild fell over"
    at = f" at {found.path}" if found.path else ""
    rest = " All other rules were run." if found.rule else ""
    file = ", with that file," if found.path else ""
    return (
        f"{doing}{at}: {found.what}. This is our mistake, not yours.{rest} "
        f"Please pass this line on{file} to whoever gave you guidebuild; `--trace` tells more."
    )
