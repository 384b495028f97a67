"""Two things have the same id.

An id leads to one thing. With two of them, a link, a translation or an act could mean either.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "the id `{id}` is already taken"
HELP = "{do}"
