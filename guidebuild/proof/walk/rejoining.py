"""After a remedy: where it does not end as the main way enters its `resume` step, the rest is walked again."""

from guidebuild.proof.ending.endings import Ends, left_over
from guidebuild.proof.walk.findings import Findings
from guidebuild.proof.walk.main import MainWay, walk_rest
from guidebuild.proof.walk.record import Record
from guidebuild.proof.walk.remedies import Mended, beyond
from guidebuild.proof.walk.stepping import Stepping


def rejoin(mended: Mended, way: MainWay, stepping: Stepping, ends: Ends, found: Findings) -> None:
    """Add what the rest shows that nothing showed before; nothing where the remedy ends as it should."""
    remedy = mended.way.remedy.remedy
    resume = remedy.resume if remedy is not None else None
    if resume is None or resume.text not in way.entered:
        return
    scene = mended.scene
    where = beyond(scene.cells, scene.keep(), way.entered[resume.text], mended.way.where)
    if not where:
        return
    where = scene.configurations.same(where)
    record = Record(entered_from=mended.way.moment.check, after=mended.way.remedy)
    spare = len(scene.history.spare)
    walk_rest(way, scene, stepping, record, resume.text, where)
    found.add(record.unmet, record.partings)
    found.add(endings=ends.of(scene, where, record.entered_from, record.after))
    found.add(endings=left_over(scene, spare, record.entered_from, record.after))


def tell_remedy(mended: Mended, found: Findings) -> None:
    """Add what was found inside a remedy itself."""
    record = mended.record
    spare = left_over(mended.scene, mended.way.moment.spare, record.entered_from)
    found.add(record.unmet, record.partings, spare)
