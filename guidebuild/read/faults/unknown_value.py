"""A word is not one of those that may stand here.

Some keys have a closed list of words, so that the same thing is always called the same.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "`{value}` is no {what}"
HELP = "{do}"
