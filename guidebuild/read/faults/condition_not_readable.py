"""A condition can't be read.

A condition decides who sees a step. It is a comparison such as `revision = b`, joined by `and`,
`or`, `not`.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "this condition can't be read: {problem}"
HELP = (
    "write it like `revision = b`, `supplied != bare`, `region in (eu, uk)`, joined by and, or, not"
)
