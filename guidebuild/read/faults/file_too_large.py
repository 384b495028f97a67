"""A file is larger than a text of this kind can be.

A guide of a hundred pages has a tenth of this. Most likely it is another file by mistake.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "{what} is {size}, more than {limit}"
HELP = "check that this is the file that you mean; split it if it is"
