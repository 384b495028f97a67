"""A block has a name that is none.

A fenced block is read by its name. Under a wrong name it would be shown as plain text, and the work
that it tells of would be missing from the proof.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "there is no block `{name}`"
HELP = "{do}"
