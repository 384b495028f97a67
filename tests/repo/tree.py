"""The project's own files, for the tests that look at them."""

import ast
import subprocess
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "guidebuild"


@cache
def tracked() -> tuple[str, ...]:
    """Every file that git knows or would add, relative to the project's top."""
    listing = subprocess.run(
        ["git", "ls-files", "--cached", "--others", "--exclude-standard"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    return tuple(name for name in listing.stdout.splitlines() if (ROOT / name).is_file())


@cache
def modules() -> dict[str, Path]:
    """Every module of the package, `guidebuild.device.things` -> its file."""
    found = {}
    for path in sorted(PACKAGE.rglob("*.py")):
        parts = path.relative_to(ROOT).with_suffix("").parts
        found[".".join(parts[:-1] if parts[-1] == "__init__" else parts)] = path
    return found


@cache
def imports(module: str) -> frozenset[str]:
    """The names of all modules that one module imports, anywhere in it."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(modules()[module].read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found.update(alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
            names = {f"{node.module}.{alias.name}" for alias in node.names}
            found.update(names & modules().keys())
            if not names <= modules().keys():
                found.add(node.module if node.module != "pathlib" else _paths(node))
    return frozenset(found)


def _paths(node: ast.ImportFrom) -> str:
    """`pathlib` where files can be touched through it; pure paths are only names."""
    pure = all(alias.name.startswith("Pure") for alias in node.names)
    return "pathlib.pure" if pure else "pathlib"
