"""A rule is silenced without a reason.

Whoever reads this next year must see why it is right here.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "`{rule}` is silenced without a reason"
HELP = "write the reason after the rule's name"
