"""A block is opened and not closed.

Everything after it would be read as part of the block, and so be lost.

Source: CommonMark 0.31.2, 4.5 (fenced code blocks).
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "{what} is opened here and not closed"
HELP = "{do}"
