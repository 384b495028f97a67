"""A file is not text in UTF-8.

Letters outside plain English would come out wrong, and `µ` or `Ω` are not decoration.

Source: RFC 3629.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "this file is not UTF-8: byte {byte} on line {line}"
HELP = "save it as UTF-8 in your editor"
