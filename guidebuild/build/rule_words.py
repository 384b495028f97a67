"""A rule's words outside of a finding: its templates as one reads them, and what silences it in one place."""

import re

from guidebuild.build.pair_checks import ALWAYS, having


def readable(template: str) -> str:
    """A template as one reads it: what is filled in stands between angles."""
    return re.sub(r"\{(\w+)\}", r"‹\1›", template).replace("{{", "{").replace("}}", "}")


def silenced(name: str) -> str:
    """What an author or a translator writes so that the rule is silent in one place."""
    if name in ALWAYS:
        return "It can't be silenced: the sentence could not be shown."
    if name in having("check_pair"):
        return (
            f"# allow {name}: the reason why it is right here   (above the entry of the catalogue)"
        )
    return f"allow: {{{name}: the reason why it is right here}}"
