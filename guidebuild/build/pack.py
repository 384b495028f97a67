"""What a technician gets: a stick, a zip, a bag; names checked before anything is written."""

import hashlib
import os
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, date, datetime
from pathlib import Path

from guidebuild.build.site_files import Chosen, Progress, SiteFiles, site_files
from guidebuild.build.stick_page import stick_page
from guidebuild.build.sticks import note
from guidebuild.build.trouble import Trouble
from guidebuild.build.whole_file import put_whole
from guidebuild.handover.bag import bagged
from guidebuild.handover.single import single
from guidebuild.handover.write import WriteFailed, write_tree
from guidebuild.handover.zipped import zipped
from guidebuild.source.portable import BadName, bad_names

SINGLE = "single"  # the folder of the guides as one file each


@dataclass(frozen=True, slots=True)
class Wish:
    """What to pack, and as what: `form` is `folder`, `zip` or `bag`; `number` names the stick, `holder` who gets it."""

    to: Path
    form: str = "folder"
    chosen: Chosen = field(default_factory=Chosen)
    number: str = ""
    holder: str = ""
    with_single: bool = True
    dry: bool = False


@dataclass(frozen=True, slots=True)
class Packed:
    """`bad`: names that would not arrive; then nothing was written. `written`: bytes that had to be copied."""

    site: SiteFiles
    files: Mapping[str, int]  # path -> bytes
    bad: tuple[BadName, ...] = ()
    written: int = 0


def pack(root: Path, wish: Wish, progress: Progress = lambda done, total: None) -> Packed:
    """Make the site and hand it over. Trouble where the place can't be written, or the medium did not keep it."""
    site = site_files(root, wish.chosen)
    if not site.files:
        return Packed(site, {})
    files = dict(site.files)
    if wish.with_single:
        pages = [path for path in files if _is_guide(path)]
        files |= {f"{SINGLE}/{path.replace('/', '-')}": single(path, files) for path in pages}
    files["this-stick.html"] = stick_page(
        site, files, wish.number or "-", written_on(), wish.with_single
    )
    sizes = {path: len(data) for path, data in files.items()}
    bad = tuple(bad_names(sizes))
    if bad or wish.dry:
        return Packed(site, sizes, bad)
    written = _write(wish, files, progress)
    if wish.holder:
        note(root, site, wish.number or "-", wish.holder, written_on().isoformat())
    return Packed(site, sizes, (), written)


def written_on() -> date:
    """Today, or the day that SOURCE_DATE_EPOCH says, so that the same input gives the same bytes."""
    told = os.environ.get("SOURCE_DATE_EPOCH", "")
    return (
        datetime.fromtimestamp(int(told), UTC).date()
        if told.isdigit()
        else datetime.now(UTC).date()
    )


def _is_guide(path: str) -> bool:
    return path.endswith(".html") and path.count("/") == 2 and not path.endswith("-tray.html")


def _write(wish: Wish, files: Mapping[str, bytes], progress: Progress) -> int:
    try:
        if wish.form == "zip":
            sums = {path: hashlib.sha256(data).hexdigest() for path, data in files.items()}
            data = zipped(files, sums)
            put_whole(wish.to, data)
            return len(data)
        if wish.form == "bag":
            info = {
                "Bagging-Date": written_on().isoformat(),
                "External-Identifier": wish.number or "-",
            }
            return write_tree(wish.to, bagged(files, info), progress)
        return write_tree(wish.to, files, progress)
    except WriteFailed as error:
        raise Trouble(f"{error}. What stood there before is still whole; run it again.") from error
    except OSError as error:
        raise Trouble(f"Can't write {error.filename or wish.to}: {error.strerror}.") from error
