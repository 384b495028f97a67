"""`python -m tests.language`: writes what is read now into every example."""

from tests.language.examples import HERE, rewrite

for path in sorted(HERE.glob("*.md")):
    rewrite(path)
