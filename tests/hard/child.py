"""`python -m tests.hard.child FOLDER`: reads a folder with little to spend, and prints what was found."""

import json
import resource
import sys
from pathlib import Path

from guidebuild.read.content import read_content

SECONDS, BYTES = 20, 1_500_000_000  # of processor time and of memory, for all that it does

if __name__ == "__main__":
    resource.setrlimit(resource.RLIMIT_CPU, (SECONDS, SECONDS))
    resource.setrlimit(resource.RLIMIT_AS, (BYTES, BYTES))
    _, findings = read_content(Path(sys.argv[1]))
    spans = [(one.rule, one.span) for one in findings]
    print(json.dumps([(rule, at.source.path, at.line, at.column) for rule, at in spans]))
