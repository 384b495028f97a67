"""The pages of a content folder, built anew whenever a file in it changes."""

import os
import threading
from collections.abc import Mapping
from dataclasses import dataclass, field
from hashlib import sha256
from pathlib import Path
from time import monotonic
from typing import Any

from guidebuild.build.preview.alone import alone
from guidebuild.build.preview.clicks import file_of, pictures
from guidebuild.build.preview.place import Click, NoPlace, placed
from guidebuild.build.scratch import write
from guidebuild.build.site_files import Chosen, SiteFiles, site_files
from guidebuild.guide.content import GuideRead
from guidebuild.outputs.html.paths import guide_page
from guidebuild.reports.parts.slip import Slip

POLL = 0.05  # seconds between two looks at the folder
QUIET = 1.5  # seconds after a save before all is built: the page that is looked at has the machine first


@dataclass(slots=True)
class Pages:
    """A page's version is what stands on it and beside it: where neither changed, nobody is disturbed."""

    root: Path
    files: dict[str, bytes] = field(default_factory=dict)
    slips: tuple[Slip, ...] = ()
    looked_at: str = ""
    site: SiteFiles | None = None
    changed: threading.Condition = field(default_factory=threading.Condition)
    seen: Mapping[str, tuple[int, int]] = field(default_factory=dict)

    def build(self) -> None:
        """All pages of the authors' language."""
        self.seen = self.stamps()
        made = site_files(self.root, Chosen(languages=(self._language(),)))
        self.site = made
        self._show(made.files, made.result.slips)

    def follow(self) -> None:
        """The guide that is looked at."""
        self.seen = self.stamps()
        files, slips = self._alone(self.looked_at)
        others = tuple(one for one in self.slips if self.looked_at not in one.guides)
        self._show(files, slips + others)

    def _alone(self, path: str) -> tuple[dict[str, bytes], tuple[Slip, ...]]:
        """A fault of ours in one guide shows in the build of all, which follows."""
        try:
            return alone(self.root, path)
        except Exception:
            return {}, ()

    def _show(self, files: Mapping[str, bytes], slips: tuple[Slip, ...]) -> None:
        if files:
            with self.changed:
                self.files.update(files)
                self.slips = slips
                self.changed.notify_all()

    def watch(self, stop: threading.Event) -> None:
        """After each change the guide that is looked at; everything once nobody has saved for a while."""
        due = 0.0
        while not stop.wait(POLL):
            if self.stamps() != self.seen:
                if self.looked_at:
                    self.follow()
                due = monotonic() + (QUIET if self.looked_at else 0)
            if due and monotonic() >= due:
                due = 0.0
                self.build()

    def stamps(self) -> dict[str, tuple[int, int]]:
        """Every file with its size and the time of its last change."""
        found = {}
        for folder, _, names in os.walk(self.root):
            for name in names:
                path = os.path.join(folder, name)
                try:
                    state = os.stat(path)
                except OSError:
                    continue
                found[path] = state.st_mtime_ns, state.st_size
        return found

    def version(self, page: str) -> str:
        """Another whenever the page, or what stands beside it, is another."""
        said = repr(self._findings(self.guide_at(page))).encode()
        return sha256(self.files.get(page, b"") + said).hexdigest()[:16]

    def wait(self, page: str, version: str, seconds: float) -> str:
        """The page's version once it is another than this one, or after so long."""
        with self.changed:
            self.changed.wait_for(lambda: self.version(page) != version, seconds)
            return self.version(page)

    def told(self, page: str) -> dict[str, Any]:
        """What stands beside the steps of a page: findings, and what can be placed on its pictures."""
        read = self.guide_at(page)
        places: list[str] = []
        if read is not None:
            self.looked_at = read.guide.path
            device = read.device
            places = [one.id for one in (*device.holes, *device.connectors, *device.parts)]
        return {
            "version": self.version(page),
            "findings": self._findings(read),
            "places": places,
            "views": list(read.device.views) if read is not None else [],
            "pictures": pictures(read.guide) if read is not None else {},
        }

    def guide_at(self, page: str) -> GuideRead | None:
        """The guide whose page this is."""
        content = self.site.result.content if self.site else None
        for each in content.guides if content else ():
            if guide_page(each.guide.path, self._language()) == page:
                return each
        return None

    def place(self, page: str, click: Click) -> str:
        """Write a place into the record; the path of the file. NoPlace says why not."""
        read = self.guide_at(page)
        if read is None:
            raise NoPlace("This page is no guide.")
        if click.on == "picture" and click.name not in pictures(read.guide).values():
            raise NoPlace("This page does not show that picture.")
        path = file_of(read.device, click)
        text = (self.root / path).read_bytes().decode("utf-8-sig")
        write(self.root, {path: placed(text, click)})
        return path

    def _findings(self, read: GuideRead | None) -> list[dict[str, str]]:
        if read is None:
            return []
        path = read.guide.path
        return [
            {
                "step": slip.step,
                "rule": slip.finding.rule,
                "loud": slip.loudness.value,
                "message": slip.finding.message,
                "help": slip.finding.help,
                "told": slip.finding.told.words if slip.finding.told else "",
                "line": str(slip.finding.span.line),
            }
            for slip in self.slips
            if path in slip.guides
        ]

    def _language(self) -> str:
        content = self.site.result.content if self.site else None
        return content.settings.languages[0] if content else "en"
