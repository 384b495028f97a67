"""A site built again where little has changed: what changed is made, all else stays as it lies there.

It is the same site, byte for byte, as one that is made at once.
"""

from collections.abc import Collection, Container, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import Any

from guidebuild.build import outputs
from guidebuild.build.check import check_and_keep
from guidebuild.build.fault import fault
from guidebuild.build.held_back import held_back
from guidebuild.build.last_site import LastSite, Now
from guidebuild.build.parts.packing import packed, unpacked
from guidebuild.build.result import CheckResult
from guidebuild.build.site_files import Progress, SiteFiles, load_file, translations
from guidebuild.guide.content import Content
from guidebuild.outputs.made import Made
from guidebuild.proof.proof import Proof

Entries = dict[str, dict[str, dict[str, Any]]]  # path of a guide -> output -> language -> entry


@dataclass(frozen=True, slots=True)
class Renewed:
    """`site.files` are new, `same` stay. `still`: the guides of which nothing changed."""

    site: SiteFiles
    same: frozenset[str]
    still: frozenset[str]
    now: Now


def renewed(
    root: Path,
    last: LastSite,
    stale: Collection[str],
    wanted: Sequence[str],
    progress: Progress = lambda done, total: None,
) -> Renewed | SiteFiles | None:
    """The site with what is new in it; SiteFiles where a fault of ours came in the way.

    None where it must be made at once: other guides have pages than before, or there are other languages.
    """
    result = held_back(check_and_keep(root, progress, stale))
    if result.faults or result.content is None:
        return SiteFiles(result)
    try:
        return _renewed(root, last, result, result.content, wanted)
    except Exception as error:
        return SiteFiles(result, faults=(fault(error),))


def _renewed(
    root: Path, last: LastSite, result: CheckResult, content: Content, wanted: Sequence[str]
) -> Renewed | None:
    before: Entries = unpacked(last.listed, ours=True)
    if set(result.guides) != set(last.guides) or set(before) != set(last.guides):
        return None
    made = _made(root, content, result.proofs, wanted, before)
    changed = frozenset(proof.guide.path for proof in result.proofs)
    entries = {**before, **entries_of(made)}
    languages = _languages(before)
    if set(languages) != set(_languages(entries)):
        return None
    lists = {} if entries == before else _lists(content, languages, entries)
    own = {page for one in made.values() for pages in one.own.values() for page in pages}
    files = {page: data for one in made.values() for page, data in one.files.items() if page in own}
    still = frozenset(result.guides) - changed
    gone = _of(last, changed) - _of(last, still)
    same = last.pages - gone - {*files, *lists}
    site = SiteFiles(result, {**files, **lists}, (), languages, result.guides)
    now = Now(guides_of(content, made), last.shared, last.lists, packed(entries), languages)
    return Renewed(site, frozenset(same), still, now)


def _made(
    root: Path, content: Content, proofs: Sequence[Proof], wanted: Sequence[str], before: Entries
) -> dict[str, Made]:
    """What the outputs make of the guides that changed; they know of the others."""
    changed = tuple(proof.guide.path for proof in proofs)
    others = tuple(translations(root, content, changed, wanted))

    def elsewhere(language: str, here: Container[str]) -> Container[str]:
        there = {
            path
            for path, said in before.items()
            if path not in changed and any(language in one for one in said.values())
        }
        return there | {path for path in changed if path in here}

    load = partial(load_file, root)
    return {
        name: outputs.in_part(one, content, proofs, load, others, elsewhere)
        for name, one in outputs.modules()
    }


def _of(last: LastSite, guides: Collection[str]) -> set[str]:
    return {page for path in guides for page in last.guides[path].pages}


def entries_of(made: Mapping[str, Made]) -> Entries:
    """What the lists say of each guide."""
    found: Entries = {}
    for name, one in made.items():
        for language, listed in one.listed.items():
            for path, entry in zip(one.guides[language], listed, strict=True):
                found.setdefault(path, {}).setdefault(name, {})[language] = entry
    return found


def guides_of(
    content: Content, made: Mapping[str, Made]
) -> dict[str, tuple[Sequence[str], Sequence[str]]]:
    """Of each guide the content that it was made of, and its site files."""
    files = {each.guide.path: each.files for each in content.guides}
    paths = dict.fromkeys(path for one in made.values() for path in one.own)
    return {
        path: (files[path], [page for one in made.values() for page in one.own.get(path, ())])
        for path in paths
    }


def _languages(entries: Entries) -> tuple[str, ...]:
    """The languages of a site, in the order in which guides have them."""
    said = (one for path in entries for one in entries[path].values())
    return tuple(dict.fromkeys(language for one in said for language in one))


def _lists(content: Content, languages: Sequence[str], entries: Entries) -> dict[str, bytes]:
    listed: dict[str, dict[str, list[Any]]] = {}
    for language in languages:
        for path in sorted(entries):
            for name, said in entries[path].items():
                if language in said:
                    listed.setdefault(name, {}).setdefault(language, []).append(said[language])
    return outputs.lists(content.settings, listed)
