"""What is made, and what must hold of it after a stop: a site, a first folder, a stick written again, a bag, a zip."""

import os
import shutil
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from statistics import median

from guidebuild.build.swap import NEW
from guidebuild.build.swap import OLD as ASIDE
from guidebuild.handover.manifest import COMING
from guidebuild.handover.manifest import NAME as SUMS
from guidebuild.handover.verify import Trouble, verify
from guidebuild.handover.write import BESIDE
from tests.kill.scene import Scene, Tree, lasted, ran, tree, warm

MINE, WORDS = "notes-of-the-owner.txt", b"not yours"


@dataclass
class Form:
    """`words`: the command for a content folder; `begun`: whether writing has begun; `whole`: what it may hold now."""

    name: str
    place: Path
    words: Callable[[Path], list[str]]
    begun: Callable[[], bool]
    check: Callable[["Form"], None]
    before: Tree = field(default_factory=dict)
    after: Tree = field(default_factory=dict)
    fresh: bool = False  # there is no old result: a first writing
    notes: dict[str, int] = field(default_factory=dict)  # what came about how often
    writing: float = 0.0  # seconds that it takes here, or so

    def note(self, what: str) -> None:
        """Count what a stop left."""
        self.notes[what] = self.notes.get(what, 0) + 1

    def now(self) -> Tree:
        """What stands in the place."""
        if self.place.is_file():
            return {"": self.place.read_bytes()}
        return tree(self.place)

    def make(self, root: Path) -> None:
        """Run the command undisturbed: then all must be as it should."""
        assert ran(self.words(root)) == 0

    def reset(self, scene: Scene) -> None:
        """Back to the old result."""
        saved = scene.old.parent / f"saved-{self.name}"
        if self.place.is_file():
            shutil.copy2(saved, self.place)
        else:
            shutil.rmtree(self.place)
            shutil.copytree(saved, self.place)
        assert self.now() == self.before

    def mend(self, scene: Scene) -> None:
        """One more run: the new result, and nothing left beside it."""
        self.make(scene.new)
        assert self.now() == self.after
        assert not [name for name in os.listdir(self.place.parent) if ".guidebuild" in name]
        assert not [name for name in os.listdir(self.place.parent) if name.endswith(BESIDE)]


def prepared(form: Form, scene: Scene) -> Form:
    """With the old result in its place, and a file of the owner's in it."""
    warm(scene.new)
    form.make(scene.new)
    if form.place.is_dir():
        (form.place / MINE).write_bytes(WORDS)
    form.after = form.now()
    if form.fresh:
        shutil.rmtree(form.place)
        form.place.mkdir()
        (form.place / MINE).write_bytes(WORDS)
    else:
        form.make(scene.old)
    form.before = form.now()
    saved = scene.old.parent / f"saved-{form.name}"
    shutil.rmtree(saved, ignore_errors=True)  # of the same form, tried before in this scene
    shutil.copy2(form.place, saved) if form.place.is_file() else shutil.copytree(form.place, saved)
    assert form.before != form.after
    took = []
    for _ in range(5):
        took.append(lasted(form.words(scene.new), form.begun))
        form.reset(scene)
    form.writing = median(took)
    return form


def forms(scene: Scene) -> list[Form]:
    """All of them."""
    places = ("site", "folder", "stick", "bag", "guides.zip")
    site, folder, stick, bag, packed = (scene.room / name for name in places)

    def build(root: Path) -> list[str]:
        return ["build", str(root), "--out", str(site)]

    def pack(to: Path, *more: str) -> Callable[[Path], list[str]]:
        return lambda root: ["pack", str(root), "--to", str(to), "--number", "TS-01", *more]

    new, part = Path(f"{site}{NEW}"), Path(f"{packed}{BESIDE}")
    first, again, bagged = (one / COMING for one in (folder, stick, bag))
    return [
        Form("site", site, build, new.exists, _site),
        Form("folder", folder, pack(folder), first.exists, _stick, fresh=True),
        Form("stick", stick, pack(stick), again.exists, _stick),
        Form("bag", bag, pack(bag, "--bag"), bagged.exists, _stick),
        Form("zip", packed, pack(packed), part.exists, _zip),
    ]


def _site(form: Form) -> None:
    """All old or all new; between the two renames the old one stands aside, whole."""
    aside = Path(f"{form.place}{ASIDE}")
    if form.place.exists():
        assert form.now() in (form.before, form.after)
        form.note("old" if form.now() == form.before else "new")
    else:
        assert tree(aside) == form.before
        form.note("old, aside")


def _stick(form: Form) -> None:
    """Every file is the old one or the new one, and `verify` tells which are new."""
    for path, data in form.now().items():
        if path in (SUMS, COMING) or path.endswith(BESIDE):
            continue
        assert data in (form.before.get(path), form.after.get(path)), path
    known = {Trouble.NEWER.value, Trouble.ADDED.value}
    found = verify(form.place)[1]
    if form.fresh and not (form.place / SUMS).exists():
        assert [(one.path, one.trouble) for one in found] == [(SUMS, Trouble.MISSING.value)]
        form.note("not whole yet, told")
        return
    assert {one.trouble for one in found} <= known
    added = {one.path for one in found if one.trouble == Trouble.ADDED.value}
    assert all(path == MINE or path.endswith(BESIDE) for path in added)
    newer = [one for one in found if one.trouble == Trouble.NEWER.value]
    form.note("part new, told" if newer else "old or new")


def _zip(form: Form) -> None:
    assert form.now() in (form.before, form.after)
    form.note("old" if form.now() == form.before else "new")
