"""Ids from the names that people say."""

import re
import unicodedata
from dataclasses import dataclass, field


@dataclass(slots=True)
class Ids:
    """Ids from names: `a-z 0-9 -`, each once. `taken`: the id of what is called so, by what it is and its name."""

    taken: dict[tuple[str, str], str] = field(default_factory=dict)

    def of(self, name: str, what: str = "part", else_: str = "") -> str:
        """The id of a name; the same name of the same sort has the same. `else_`: a longer name, if it is taken."""
        key = what, name
        if key not in self.taken:
            given = set(self.taken.values()) | {"device", "power"}
            slug = plain(name)
            if slug in given and else_:
                slug = plain(else_)
            tried, number = slug, 1
            while tried in given:
                number += 1
                tried = f"{slug}-{number}"
            self.taken[key] = tried
        return self.taken[key]


def plain(name: str) -> str:
    """A name in the letters of an id."""
    letters = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode()
    return re.sub(r"[^a-z0-9]+", "-", letters.lower()).strip("-") or "part"
