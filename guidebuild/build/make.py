"""The site: its files made in memory, and all put in place at once."""

from dataclasses import dataclass
from pathlib import Path

from guidebuild.build.site_files import ALL, Chosen, Progress, SiteFiles, site_files
from guidebuild.build.swap import put
from guidebuild.build.trouble import Trouble
from guidebuild.reports.parts.report import Report


@dataclass(frozen=True, slots=True)
class Made:
    """`written`: how many files stand in the site by us; `kept`: the names of others' files beside them."""

    site: SiteFiles
    written: int = 0
    kept: tuple[str, ...] = ()

    def report(self, prefix: str = "") -> Report:
        """The check's report, with the faults of the outputs."""
        return self.site.report(prefix)


def make(
    root: Path,
    out: Path,
    progress: Progress = lambda done, total: None,
    chosen: Chosen = ALL,
) -> Made:
    """Build the site of a content folder into `out`.

    Findings do not stop it, an author wants to see a draft; a fault of ours does, and the old site stays.
    Trouble where `out` and the content lie in each other, or `out` can't be written.
    """
    apart(root, out)
    site = site_files(root, chosen, progress)
    if not site.files:
        return Made(site)
    return Made(site, len(site.files), put(site.files, out))


def apart(root: Path, out: Path) -> None:
    """A site in the content folder would be read as content, and the other way round would be replaced."""
    inside, outside = out.resolve(), root.resolve()
    if inside == outside or outside in inside.parents or inside in outside.parents:
        raise Trouble(f"The site can't be in the content folder, nor around it: {out}. Use --out.")
