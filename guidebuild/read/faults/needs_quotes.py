"""A sentence has characters that YAML takes for its own.

A ` #` begins a comment, a `: ` a key, a comma in braces the next entry. The rest of the sentence
would be cut off or torn apart, mostly without a word.

Source: YAML 1.2.2, 6.6 (comments), 7.3.3 (plain style), 7.4 (flow collections).
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)
MESSAGE = "{what} cuts this text short"
HELP = "put quotes round it"
