"""A step got another heading, and with it another id: catalogues, links and addresses know the old one.

Its sentences are found again by what they say, yet links from other files and addresses on paper are not. Where the
step is still the same, keeping its id costs nothing.

Source: common practice, no source.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TRANSLATION)

MESSAGE = "the catalogues in {languages} know this step as `{old}`"

HELP = "put `id: {old}` into its `step` block; or take out anew, if it is another step now"
