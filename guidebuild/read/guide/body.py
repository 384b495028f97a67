"""The Markdown of a guide or a shared stage into stages and steps, before ids are looked up."""

from dataclasses import dataclass, field, replace

from guidebuild.guide.guide import Allow
from guidebuild.guide.prose import Bullets, Paragraph, Picture, Prose, Quote
from guidebuild.guide.stage import Remedy, Stage
from guidebuild.guide.step import Item, Step
from guidebuild.read.faults import wrong_type
from guidebuild.read.guide.allow import allows
from guidebuild.read.guide.block import Blocks
from guidebuild.read.guide.section import Section, sections
from guidebuild.read.guide.slug import slug
from guidebuild.read.guide.steps import Filled, Find, filled, step
from guidebuild.read.guide.usual import usual_pieces
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source


@dataclass(slots=True)
class RawStage:
    """A stage as it stands in its file; `link` is the shared file whose steps come before its own."""

    stage: Stage
    link: Said | None
    steps: list[Step] = field(default_factory=list)


@dataclass(slots=True)
class Body:
    """`loose`: steps that stand in no stage."""

    intro: list[Prose] = field(default_factory=list)
    pictures: list[Picture] = field(default_factory=list)
    loose: list[Step] = field(default_factory=list)
    stages: list[RawStage] = field(default_factory=list)
    allows: list[Allow] = field(default_factory=list)


def body(source: Source, start: int, report: Report, find: Find) -> Body:
    """Everything after the front matter, which ends at `start`."""
    blocks = Blocks(report)
    found = Body()
    cut = _cut(sections(usual_pieces(source, start, report)), report)
    first = filled(cut[0][0], "", blocks, find)
    found.intro, found.pictures = _said(first, "before the first stage", report)
    for group in cut[1:]:
        heading = group[0].heading
        if heading is not None and heading.level == 1:
            found.stages.append(_stage(group[0], blocks, find))
        else:
            made = step(group, blocks, find)
            (found.stages[-1].steps if found.stages else found.loose).append(made)
    found.allows = blocks.allows
    return found


def _cut(found: list[Section], report: Report) -> list[list[Section]]:
    """Sections put together: a step with its methods; each group begins with a stage or a step."""
    groups: list[list[Section]] = [[found[0]]]
    for section in found[1:]:
        heading = section.heading
        assert heading is not None  # only the first section has none
        in_step = groups[-1][0].heading is not None and groups[-1][0].heading.level == 2
        if heading.level <= 2:
            groups.append([section])
        elif in_step:
            if heading.level > 3:
                _deep(section, report)
            groups[-1].append(section)
        else:
            _homeless(section, report)
            groups[-1][0].pieces += section.pieces
    return groups


def _deep(section: Section, report: Report) -> None:
    heading = section.heading
    assert heading is not None  # told of headings only
    report.tell(
        wrong_type,
        heading.line,
        what="a heading",
        wanted="have one to three `#`",
        found="",
        do="write `#` for a stage, `##` for a step, `###` for a method",
    )


def _homeless(section: Section, report: Report) -> None:
    heading = section.heading
    assert heading is not None  # told of headings only
    report.tell(
        wrong_type,
        heading.line,
        what="a method",
        wanted="stand in a step",
        found="",
        do="write a `##` heading for the step above it",
    )


def _stage(section: Section, blocks: Blocks, find: Find) -> RawStage:
    heading = section.heading
    assert heading is not None  # a stage begins with its heading
    made = filled(section, "stage", blocks, find)
    intro, pictures = _said(made, "in a stage, before its first step", blocks.report)
    span = heading.title.span
    stage = Stage(
        id=slug(heading.title.text),
        title=heading.title,
        span=span,
        file=span.source.path,
        intro=tuple(intro),
        pictures=tuple(pictures),
    )
    if made.head is not None:
        blocks.allows += allows(made.head, Span(span.source, heading.line.start, section.end))
        stage = _with_head(stage, made.head)
    return RawStage(stage, heading.link)


def _with_head(stage: Stage, entry: Entry) -> Stage:
    id_ = entry.said("id")
    return replace(
        stage,
        id=id_.text if id_ else stage.id,
        when=entry.get("when", None),
        then=entry.said("then"),
        remedy=_remedy(entry.entry("remedy")),
    )


def _remedy(entry: Entry | None) -> Remedy | None:
    if entry is None:
        return None
    return Remedy(
        functions=entry.all_said("for"),
        resume=entry.said("resume"),
        tries=entry.get("tries", None),
        stop=entry.said("stop"),
        span=entry.span,
    )


def _said(made: Filled, place: str, report: Report) -> tuple[list[Prose], list[Picture]]:
    """The prose and pictures of a place where no work may stand."""
    prose: list[Prose] = []
    pictures: list[Picture] = []
    for item in made.items:
        match item:
            case Paragraph() | Bullets() | Quote():
                prose.append(item)
            case Picture():
                pictures.append(item)
            case _:
                _no_step(item, place, report)
    return prose, pictures


def _no_step(item: Item, place: str, report: Report) -> None:
    report.tell(
        wrong_type,
        item.span,
        what="work",
        wanted="stand in a step",
        found=f", not {place}",
        do="write a `##` heading above it",
    )
