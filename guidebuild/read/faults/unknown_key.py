"""A key is not one that belongs here.

A misspelt key says nothing at all: a torque that nobody reads is a torque that nobody sets.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "`{key}` is no key of {where}"
HELP = "{do}"
