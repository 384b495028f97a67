"""An id names nothing that exists.

A procedure is about the things of the record. A name that is not there is a part that the reader
will look for in vain.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "there is no {what} `{id}`"
HELP = "{do}"
