"""A released guide in which the check finds an error does not go out as released: its pages say that it is not
for work.

Findings do not stop a build, an author wants to see the pages. But whoever opens them on a bench has not seen the
findings.
"""

from dataclasses import replace

from guidebuild.build import rulebook
from guidebuild.build.result import CheckResult
from guidebuild.guide.content import Content
from guidebuild.guide.guide import Guide
from guidebuild.source.finding import Loudness

RELEASED, REFUSED = "released", "refused"


def held_back(result: CheckResult) -> CheckResult:
    """The result with `refused` as the status of each released guide that has an error.

    What a rule says of all guides together does not count: it would change pages of guides that nobody touched.
    """
    if result.content is None:
        return result
    bad = _with_errors(result)
    held = {
        one.guide.path: _refused(one.guide)
        for one in result.content.guides
        if _is_released(one.guide) and bad & {one.guide.path, *one.files}
    }
    guides = tuple(
        replace(one, guide=held.get(one.guide.path, one.guide)) for one in result.content.guides
    )
    proofs = tuple(replace(one, guide=held.get(one.guide.path, one.guide)) for one in result.proofs)
    return replace(result, content=replace(result.content, guides=guides), proofs=proofs)


def names(content: Content | None) -> tuple[str, ...]:
    """Number (or id) and issue of the guides that were held back."""
    guides = (one.guide for one in content.guides) if content else ()
    return tuple(_name(one) for one in guides if one.status and one.status.text == REFUSED)


def _with_errors(result: CheckResult) -> frozenset[str]:
    """Every place, file or guide, with an error that one guide alone shows."""
    loud = [slip for slip in result.slips if slip.loudness is Loudness.ERROR]
    own = [slip for slip in loud if _counts(slip.finding.rule)]
    files = {slip.finding.span.source.path for slip in own if not slip.guides}
    return frozenset(files | {path for slip in own for path in slip.guides})


def _counts(rule: str) -> bool:
    """A rule about all guides does not count, nor one about translations: a bad one is not shown."""
    translated = rulebook.places().get(rule, "").startswith("guidebuild.translate.")
    return not translated and rulebook.entry(rule).check_gathered is None


def _is_released(guide: Guide) -> bool:
    return guide.status is not None and guide.status.text == RELEASED


def _refused(guide: Guide) -> Guide:
    assert guide.status is not None
    return replace(guide, status=replace(guide.status, text=REFUSED))


def _name(guide: Guide) -> str:
    number = guide.number.text if guide.number else guide.id
    return f"{number}/{guide.issue.text}" if guide.issue else number
