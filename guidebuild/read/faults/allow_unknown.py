"""A rule that is silenced does not exist.

A misspelt name silences nothing.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "there is no rule `{rule}`"
HELP = "{do}"
