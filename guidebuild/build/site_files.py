"""The files of a site in memory: everything checked, every language proved, every output asked."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import partial
from pathlib import Path

from guidebuild.build import outputs
from guidebuild.build.catalogues import has_catalogue
from guidebuild.build.check import check_and_keep
from guidebuild.build.fault import fault
from guidebuild.build.held_back import held_back
from guidebuild.build.pictures import PICTURES
from guidebuild.build.result import CheckResult
from guidebuild.build.rules_site import rules_page
from guidebuild.build.translations import Translation, translation
from guidebuild.draw.limits import too_many_bytes
from guidebuild.guide.content import Content
from guidebuild.guide.settings import Settings
from guidebuild.outputs.made import Made, nowhere
from guidebuild.reports.parts.report import Fault, Report
from guidebuild.translate.pseudo import is_pseudo
from guidebuild.translate.xliff.shapes import is_language

Progress = Callable[[int, int], None]


@dataclass(frozen=True, slots=True)
class Chosen:
    """What of a content folder is wanted: guides by their ids or numbers, languages by their tags; none: all."""

    guides: tuple[str, ...] = ()
    languages: tuple[str, ...] = ()


ALL = Chosen()


@dataclass(frozen=True, slots=True)
class SiteFiles:
    """`files`: site path -> bytes, empty where a fault of ours came in the way."""

    result: CheckResult
    files: Mapping[str, bytes] = field(default_factory=dict)
    faults: tuple[Fault, ...] = ()
    languages: tuple[str, ...] = ()
    paths: tuple[str, ...] = ()  # the guides that are in it
    made: Mapping[str, Made] = field(default_factory=dict)  # by output
    lists: tuple[str, ...] = ()  # the files that list all guides

    def report(self, prefix: str = "") -> Report:
        """The check's report, with the faults of the outputs."""
        report = self.result.report(prefix)
        return replace(report, faults=report.faults + self.faults)


def site_files(
    root: Path, chosen: Chosen = ALL, progress: Progress = lambda done, total: None
) -> SiteFiles:
    """Everything that the outputs make of a content folder. Findings do not stop it: an author wants to see a draft."""
    result = held_back(check_and_keep(root, progress))
    content = result.content
    if result.faults or content is None:
        return SiteFiles(result)
    try:
        proofs = [
            one for one in result.proofs if _is_chosen(one.guide.path, one.guide.number, chosen)
        ]
        paths = tuple(one.guide.path for one in proofs)
        others = tuple(translations(root, content, paths, chosen.languages))
        load = partial(load_file, root)
        made = {
            name: outputs.in_part(one, content, proofs, load, others, nowhere)
            for name, one in outputs.modules()
        }
        listed = {name: one.listed for name, one in made.items()}
        languages = (content.settings.languages[0], *(one.language for one in others))
        lists = outputs.lists(content.settings, listed)
        files = outputs.merged(
            [
                *((name, one.files) for name, one in made.items()),
                ("lists", lists),
                ("rules", rules_page(content.settings.theme, languages[0])),
            ]
        )
        return SiteFiles(result, files, (), languages, paths, made, tuple(lists))
    except Exception as error:
        return SiteFiles(result, faults=(fault(error),))


def _is_chosen(path: str, number: object, chosen: Chosen) -> bool:
    names = {path, path.removesuffix(".md").rpartition("/")[2], str(number)}
    return not chosen.guides or bool(names & set(chosen.guides))


def languages_of(settings: Settings, wanted: Sequence[str]) -> tuple[str, ...]:
    """What a site of these settings may be in, in order: the authors' own language first."""
    own, *named = settings.languages
    others = (one for one in wanted or named if one != own and is_language(one))
    return (own, *dict.fromkeys(others))


def translations(
    root: Path, content: Content, paths: Sequence[str], wanted: Sequence[str]
) -> list[Translation]:
    """The other languages; in each, the guides that have a catalogue in it."""
    there = [
        (one, [path for path in paths if is_in(root, path, one)])
        for one in languages_of(content.settings, wanted)[1:]
    ]
    return [translation(root, content, one, some) for one, some in there if some]


def is_in(root: Path, path: str, language: str) -> bool:
    """Whether a guide is there in a language that is not its own."""
    return is_pseudo(language) or has_catalogue(root, path, language)


def load_file(root: Path, path: str) -> bytes | None:
    """A file of the content folder for an output: outputs touch no disk themselves."""
    file = (root / path).resolve()
    inside = root.resolve() in file.parents
    if not inside or not file.is_file() or _is_too_large(file):
        return None
    return file.read_bytes()


def _is_too_large(file: Path) -> bool:
    """A picture that no page shows, which a rule has told."""
    is_picture = file.suffix.lower() in PICTURES
    return is_picture and too_many_bytes(file.name, file.stat().st_size) is not None
