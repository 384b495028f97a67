"""A key stands twice in the same place.

Only one of the two values can count, and the reader of the file sees both.

Source: YAML 1.2.2, 3.2.1.1: keys of a mapping are unique.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "`{key}` stands here twice"
HELP = "keep one of the two"
