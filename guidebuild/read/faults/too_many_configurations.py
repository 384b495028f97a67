"""The options have more combinations than can be proved.

Every combination that makes a difference is proved, none is left out and none is guessed. Past this
number that is no longer possible.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "the options make {count} configurations that differ, more than {limit}"
HELP = "say with `exclude` which combinations can't occur, or make two guides"
