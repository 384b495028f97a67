"""A content folder as it stood at a commit, in a folder of its own for as long as it is looked at."""

import io
import subprocess
import tarfile
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from guidebuild.build.trouble import Trouble


@contextmanager
def at_commit(root: Path, commit: str) -> Iterator[Path]:
    """Trouble where there is no Git, no repository, or no such commit; nothing of the work tree changes."""
    top = Path(_git(root, "rev-parse", "--show-toplevel").strip())
    prefix = _git(root, "rev-parse", "--show-prefix").strip()
    name = _git(
        root, "rev-parse", "--verify", "--quiet", "--end-of-options", f"{commit}^{{commit}}"
    ).strip()
    archive = _run(top, "archive", "--format=tar", name, *([f"{prefix}"] if prefix else []))
    with tempfile.TemporaryDirectory(prefix="guidebuild-") as folder:
        with tarfile.open(fileobj=io.BytesIO(archive)) as tar:
            tar.extractall(folder, filter="data")
        yield Path(folder) / prefix


def _git(root: Path, *words: str) -> str:
    return _run(root, *words).decode("utf-8", "replace")


def _run(root: Path, *words: str) -> bytes:
    try:
        done = subprocess.run(["git", *words], cwd=root, capture_output=True, check=False)
    except OSError as error:
        raise Trouble(
            f"Git is needed to look at an earlier state, and can't be run: {error}."
        ) from error
    if done.returncode:
        said = done.stderr.decode("utf-8", "replace").strip().partition("\n")[0]
        raise Trouble(f"Git does not find that state: {said or 'there is no such commit'}.")
    return done.stdout
