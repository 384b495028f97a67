"""A value has another shape than its key needs.

A list where one value is wanted, a sentence where a number is: what was meant can only be guessed,
and a guess has no place in a procedure.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "{what} must {wanted}{found}"
HELP = "{do}"
