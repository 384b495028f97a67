"""How far each language is, and catalogues written as we write them."""

from collections.abc import Iterator
from pathlib import Path

from guidebuild.build.catalogues import FOLDER
from guidebuild.build.take_out import now
from guidebuild.build.whole_file import put_whole
from guidebuild.guide.content import Content
from guidebuild.guide.language.words import count_words
from guidebuild.translate.catalogue.bring import Status, status
from guidebuild.translate.po.reader import read_po
from guidebuild.translate.po.writer import write_po
from guidebuild.translate.pseudo import is_pseudo


def languages(root: Path, content: Content) -> list[str]:
    """The languages that the settings name or that have catalogues, the authors' own apart."""
    folder = root / FOLDER
    there = {one.name for one in folder.iterdir() if one.is_dir()} if folder.is_dir() else set()
    named = {one for one in content.settings.languages[1:] if not is_pseudo(one)}
    return sorted(there | named)


def states(root: Path, content: Content) -> Iterator[tuple[str, str, Status]]:
    """Language, content file, and where its catalogue stands."""
    for language in languages(root, content):
        for file, catalogue in now(root, content, language)[0].items():
            yield language, file, status(catalogue, count_words)


def tidy(root: Path) -> list[str]:
    """Rewrite every catalogue that another program has left in another form; those that were, by path.

    One that can't be read is left as it is.
    """
    changed = []
    for path in sorted((root / FOLDER).rglob("*.po")):
        text = path.read_text(encoding="utf-8", errors="replace")
        catalogue, faults = read_po(text)
        new = write_po(catalogue)
        if not faults and new != text:
            put_whole(path, new.encode())
            changed.append(path.relative_to(root).as_posix())
    return changed
