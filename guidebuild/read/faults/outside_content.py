"""A path leads out of the content folder.

A guide travels as one folder. What lies elsewhere is not on the stick, and may be nobody's
business.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "`{path}` lies outside the content folder"
HELP = "copy the file into the content folder and name it from there"
