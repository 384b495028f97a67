"""The guides of the other parts, as far as a link leads to them: each is read and proved only when it is asked for."""

from collections.abc import Container
from dataclasses import dataclass, field
from pathlib import Path

from guidebuild.build.site_files import is_in
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content


@dataclass(slots=True)
class OtherParts:
    """`paths`: all guides of the folder; `own`: the language that they are written in."""

    root: Path
    paths: frozenset[str]
    own: str
    _proved: dict[str, bool] = field(default_factory=dict)

    def in_language(self, language: str, here: Container[str]) -> Container[str]:
        """All guides that the whole site has in a language; `here` are those of this part."""
        return _There(self, language, here)

    def has(self, path: str, language: str) -> bool:
        """Whether another part has a page of this guide in a language."""
        if path not in self.paths or (
            language != self.own and not is_in(self.root, path, language)
        ):
            return False
        if path not in self._proved:
            self._proved[path] = _proved(self.root, path)
        return self._proved[path]


@dataclass(frozen=True, slots=True)
class _There:
    others: OtherParts
    language: str
    here: Container[str]

    def __contains__(self, path: object) -> bool:
        return path in self.here or self.others.has(str(path), self.language)


def _proved(root: Path, path: str) -> bool:
    """Whether a proof can be made of it: without one a guide has no page."""
    try:
        content, _ = read_content(root, [path])
        for each in content.guides:
            if each.whole:
                prove(each.guide, each.device)
                return True
    except Exception:  # its own part tells what fell over
        return False
    return False
