"""What mending changes, as a unified diff: `patch` reads it, and so do people."""

from difflib import unified_diff

from guidebuild.build.fix import Fixed


def difference(fixed: Fixed, prefix: str) -> str:
    """The changed lines of all files, with their paths as seen from here."""
    return "".join(_of(path, fixed, prefix) for path in sorted(fixed.after))


def _of(path: str, fixed: Fixed, prefix: str) -> str:
    name = f"{prefix}/{path}" if prefix else path
    before, after = (
        text.splitlines(keepends=True) for text in (fixed.before[path], fixed.after[path])
    )
    lines = unified_diff(before, after, name, name)
    return "".join(
        line if line.endswith("\n") else f"{line}\n\\ No newline at end of file\n" for line in lines
    )
