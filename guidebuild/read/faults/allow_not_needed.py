"""A silenced rule had nothing to say.

What it was for is gone. Left in place, it would hide the next mistake.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)
MESSAGE = "`{rule}` has nothing to say here"
HELP = "take it out"
