"""The YAML here can't be read.

Indentation, brackets or quotes do not match, so what belongs to what is open.

Source: YAML 1.2.2.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "this is not readable as YAML: {problem}"
HELP = "{do}"
