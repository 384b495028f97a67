"""`python -m tests.hard`: writes what the reader says now into every broken file."""

from tests.hard.broken import broken

for one in broken():
    one.rewrite()
