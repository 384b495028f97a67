"""One guide with its device: the file, its shared stages, its kits, its options, all ids looked up."""

from dataclasses import dataclass

from guidebuild.device.kit import Kit
from guidebuild.device.option import Option, Origin
from guidebuild.device.record import Device
from guidebuild.device.states import State
from guidebuild.guide.content import GuideRead
from guidebuild.guide.guide import Allow, Guide
from guidebuild.read.device.join import joined, model_option
from guidebuild.read.device.options import options
from guidebuild.read.device.thing import state
from guidebuild.read.faults import duplicate_id
from guidebuild.read.guide.allow import allows
from guidebuild.read.guide.body import Body, body
from guidebuild.read.guide.matter import devices, matter
from guidebuild.read.guide.pictures import finder, folders
from guidebuild.read.guide.shared import SharedStages
from guidebuild.read.guide.stages import Drawn, stages
from guidebuild.read.guide.supply import kit_options, uses, with_packing
from guidebuild.read.library import Library
from guidebuild.read.markdown.front import front
from guidebuild.read.references.guide import Lookup, Unsure
from guidebuild.read.references.record import there
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.read.yaml.read import read_entry
from guidebuild.source.finding import Related
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source


@dataclass(slots=True)
class _Parts:
    """What a guide is made of, before it is one."""

    source: Source
    entry: Entry
    body: Body
    drawn: Drawn
    models: list[Device]
    kits: list[tuple[Kit, Span]]


def read_guide(path: str, shared: SharedStages) -> GuideRead | None:
    """The guide of a file; None (and told) where it has no front matter or no device that can be read."""
    library = shared.library
    source = library.folder.source(path)
    found = front(source, library.report) if source else None
    if source is None or found is None:
        library.report.lose(path)
        return None
    entry = read_entry(source, found.start, found.end, "guide", "front matter", library.report)
    named = devices(entry) if entry else ()
    find = finder(source, [said.text for said in named], library)
    shared.open.append(path)
    read = body(source, found.body, library.report, find)
    title = (entry.said("title") if entry else None) or Said(_name(path), Span(source, 0, 0))
    drawn = stages(read, title, path.rpartition("/")[0], shared)
    shared.open.pop()
    if entry is None:
        return None
    models = [one for one in map(library.device, named) if one is not None]
    kits = [
        (kit, said.span)
        for said in entry.all_said("kits")
        if (kit := library.kit(said)) is not None
    ]
    return _made(_Parts(source, entry, read, drawn, models, kits), library) if models else None


def _name(path: str) -> str:
    return path.rpartition("/")[2].removesuffix(".md")


def _made(parts: _Parts, library: Library) -> GuideRead:
    entry, path = parts.entry, parts.source.path
    fields = matter(entry, _name(path))
    joint = len(fields["devices"]) > 1
    named = fields["devices"][0].span
    device = joined(parts.models, named) if len(parts.models) > 1 else parts.models[0]
    kits = uses(parts.kits)
    device = with_packing(device, kits)
    lookup = Lookup(device, library, parts.drawn.stages, _unsure(parts, library.report))
    asked = (
        *device.options,
        *kit_options(kits),
        *options(entry.entry("options"), Origin.GUIDE),
        *((model_option(parts.models, named),) if joint else ()),
    )
    guide = Guide(
        **fields,
        id=_name(path),
        path=path,
        span=Span(parts.source, 0, len(parts.source.text)),
        language=library.settings.languages[0],
        kits=kits,
        options=_unique(asked, library.report),
        exclude=(*device.exclude, *entry.get("exclude", ())),
        starts=_states(entry.entry("starts"), device, lookup),
        ends=_states(entry.entry("ends"), device, lookup),
        state_spans=_state_spans(entry),
        allows=_allows(parts, library),
        intro=tuple(parts.body.intro),
        pictures=tuple(parts.body.pictures),
        stages=parts.drawn.stages,
    )
    lookup.guide(guide)
    if guide.video is not None:
        there(guide.video, folders(path, [one.id for one in parts.models]), library)
    return _with_files(guide, lookup.names.mended(), parts, library)


def _unsure(parts: _Parts, report: Report) -> Unsure:
    """What can't be judged, because what would have given the ids could not be read."""
    named = (*devices(parts.entry), *parts.entry.all_said("kits"))
    used = [one.span.source.path for one in parts.models]
    used += [kit.span.source.path for kit, _ in parts.kits]
    texts = [parts.source.path, *(one.path for one in parts.drawn.shared)]
    links = [stage.link for stage in parts.body.stages if stage.link is not None]
    return Unsure(
        ids=len(used) < len(named) or not report.holed.isdisjoint(used),
        steps=len(links) > len(parts.drawn.shared) or not report.holed.isdisjoint(texts),
    )


def _unique(asked: tuple[Option, ...], report: Report) -> tuple[Option, ...]:
    """Each option once; a second of the same id is told."""
    found: dict[str, Option] = {}
    for option in asked:
        if option.id in found:
            first = Related(found[option.id].span, "taken here")
            do = "give it another id"
            report.tell(duplicate_id, option.span, related=(first,), id=option.id, do=do)
        found.setdefault(option.id, option)
    return tuple(found.values())


def _states(entry: Entry | None, device: Device, lookup: "Lookup") -> dict[str, State]:
    """`starts` and `ends`: a word of the kind for each id."""
    found = {}
    for id_, word in (entry.values if entry else {}).items():
        lookup.names.things([entry.key(id_)] if entry else ())
        keys = device.names.get(lookup.names.aliases.get(id_, id_))
        if keys:
            said = state(word, device.things[keys[0]].kind, lookup.report)
            found.update({id_: said} if said is not None else {})
    return found


def _state_spans(entry: Entry) -> dict[str, Span]:
    inside = [entry.entry(key) for key in ("starts", "ends")]
    return {id_.text: id_.span for one in inside if one for id_, _ in one.each()}


def _allows(parts: _Parts, library: Library) -> tuple[Allow, ...]:
    whole = Span(parts.source, 0, len(parts.source.text))
    found = [*allows(parts.entry, whole), *parts.body.allows]
    for shared in parts.drawn.shared:
        found += shared.allows
    for model in parts.models:
        found += library.record_allows.get(model.id, [])
    return tuple(found)


def _with_files(guide: Guide, device: Device, parts: _Parts, library: Library) -> GuideRead:
    files = dict.fromkeys(
        [
            guide.path,
            *(one.path for one in parts.drawn.shared),
            *(one.span.source.path for one in parts.models),
            *(kit.span.source.path for kit, _ in parts.kits),
        ]
    )
    whole = not library.report.broken & files.keys()
    return GuideRead(guide, device, whole, tuple(files))
