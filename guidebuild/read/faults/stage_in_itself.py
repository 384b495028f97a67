"""A shared stage draws itself in.

It would never end.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "this stage is part of itself: {chain}"
HELP = "take the link out, or write the steps here"
