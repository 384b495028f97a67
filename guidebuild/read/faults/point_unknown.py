"""A point on a picture or an outline in a view names nothing of the record.

The mark would stand on the picture and lead to nothing, and what it was meant for has no mark at all.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "`{id}`, marked in `{where}`, is nothing of the record"
HELP = "{do}"
