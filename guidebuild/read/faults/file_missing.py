"""A file that is named does not exist.

The reader would see a gap where a picture, a film or a stage belongs.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "there is no file `{file}`"
HELP = "{do}"
