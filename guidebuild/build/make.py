"""The site: its files made in memory, and all put in place at once."""

from dataclasses import dataclass
from pathlib import Path

from guidebuild.build.check import check
from guidebuild.build.held_back import names
from guidebuild.build.last_site import LastSite, Now, last_site
from guidebuild.build.listing import others
from guidebuild.build.parts.packing import packed
from guidebuild.build.renew import entries_of, guides_of, renewed
from guidebuild.build.site_files import ALL, Chosen, Progress, SiteFiles, site_files
from guidebuild.build.swap import mended, put
from guidebuild.build.trouble import Trouble
from guidebuild.guide.content import Content
from guidebuild.read.files import folder, guide_paths
from guidebuild.read.report import Report
from guidebuild.reports.parts import report


@dataclass(frozen=True, slots=True)
class Made:
    """`written`: how many files stand in the site by us; `kept`: the names of others' files beside them."""

    site: SiteFiles
    written: int = 0
    kept: tuple[str, ...] = ()

    @property
    def held_back(self) -> tuple[str, ...]:
        """The released guides whose pages say that they are not for work."""
        return names(self.site.result.content)

    def report(self, prefix: str = "") -> report.Report:
        """The check's report, with the faults of the outputs."""
        return self.site.report(prefix)


def make(
    root: Path,
    out: Path,
    progress: Progress = lambda done, total: None,
    chosen: Chosen = ALL,
    *,
    cache: bool = True,
) -> Made:
    """Build the site of a content folder into `out`.

    Findings do not stop it, an author wants to see a draft (see `held_back`, too); a fault of ours does, and the old
    site stays. With `cache`, pages of which nothing changed since the last build stay as they lie there.
    Trouble where `out` and the content lie in each other, or `out` can't be written.
    """
    apart(root, out)
    mended(out)
    if not cache or chosen.guides:
        return _whole(site_files(root, chosen, progress), out)
    there = folder(root, Report())
    last = last_site(root, out, chosen.languages, there.files)
    every = guide_paths(there)
    fresh = last.fresh(every)
    if fresh == set(every) == set(last.guides):
        site = SiteFiles(check(root, progress=progress), languages=last.languages)
        return Made(site, len(last.pages), tuple(others(out)))
    if len(fresh) * 2 >= len(every) > 0:
        new = renewed(root, last, frozenset(every) - fresh, chosen.languages, progress)
        if isinstance(new, SiteFiles):
            return Made(new)
        if new is not None:
            kept = put(new.site.files, out, new.same)
            last.keep(new.now, new.still)
            return Made(new.site, len(new.site.files) + len(new.same), kept)
    site = site_files(root, chosen, progress)
    made = _whole(site, out)
    if made.written and site.result.content is not None:
        _remember(last, site, site.result.content)
    return made


def _whole(site: SiteFiles, out: Path) -> Made:
    if not site.files:
        return Made(site)
    return Made(site, len(site.files), put(site.files, out))


def _remember(last: LastSite, site: SiteFiles, content: Content) -> None:
    """What the next build of the same site need not make again."""
    guides = guides_of(content, site.made)
    own = {page for _, pages in guides.values() for page in pages}
    shared = set(site.files) - own - set(site.lists)
    last.keep(Now(guides, shared, site.lists, packed(entries_of(site.made)), site.languages))


def apart(root: Path, out: Path) -> None:
    """A site in the content folder would be read as content, and the other way round would be replaced."""
    inside, outside = out.resolve(), root.resolve()
    if inside == outside or outside in inside.parents or inside in outside.parents:
        raise Trouble(f"The site can't be in the content folder, nor around it: {out}. Use --out.")
