"""The benches: `python -m tests.bench` lists them, with a name or more it runs these, with `all` every one."""

import ast
import runpy
import sys
from pathlib import Path

ROOM = Path(__file__).parent
MARK = "Run it:"  # a bench says in its docstring how it is run


def benches() -> dict[str, str]:
    """Each bench by name, with the first sentence of what it says of itself."""
    texts = {path.stem: path.read_text(encoding="utf-8") for path in sorted(ROOM.glob("*.py"))}
    said = {name: ast.get_docstring(ast.parse(text)) or "" for name, text in texts.items()}
    return {name: told.splitlines()[0] for name, told in said.items() if MARK in told}


def main(asked: list[str]) -> int:
    """List or run; 2 where a name is no bench's."""
    known = benches()
    if not asked:
        print("\n".join(f"{name:10} {about}" for name, about in known.items()))
        return 0
    names = list(known) if asked == ["all"] else asked
    unknown = [name for name in names if name not in known]
    if unknown:
        print(f"no bench: {', '.join(unknown)}; there are {', '.join(known)}", file=sys.stderr)
        return 2
    sys.argv[1:] = []  # each bench at its usual size
    for name in names:
        print(f"# {name}: {known[name]}", flush=True)
        runpy.run_module(f"tests.bench.{name}", run_name="__main__")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
