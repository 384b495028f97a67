"""What every part of a draft is written with: the record, its cases, and the headings that are taken."""

import re
from collections.abc import Iterable

from guidebuild.device.ends import is_soft
from guidebuild.device.layout import Layout
from guidebuild.device.things import Hole
from guidebuild.guide.configurations import Configurations
from guidebuild.plan.draft.lengths import Lengths
from guidebuild.plan.draft.names import noun
from guidebuild.plan.openings import is_hinge, links_across

_SLUG = re.compile(r"[^a-z0-9]+")


class Desk:
    """`about`: the part that the guide is about, which gives headings their name."""

    def __init__(self, layout: Layout, cases: Configurations, about: str | None = None) -> None:
        self.layout = layout
        self.device = layout.device
        self.cases = cases
        self.about = about
        self.noun = noun(layout.device)
        self.lengths = Lengths(layout.device, ())
        self._titles: set[str] = set()

    def take(self, ids: Iterable[str]) -> None:
        """Headings that are taken already."""
        self._titles.update(ids)

    def titled(self, title: str) -> str:
        """A heading that no other step has."""
        tried, number = title, 1
        while self.slug(tried) in self._titles:
            number += 1
            tried = f"{title} again" if number == 2 else f"{title}, time {number}"
        self._titles.add(self.slug(tried))
        return tried

    def slug(self, title: str) -> str:
        """A heading as an id."""
        return _SLUG.sub("-", title.lower()).strip("-")

    def view_of(self, key: str) -> str:
        """On which view a screw is placed, for whoever takes the picture."""
        thing = self.device.things[key]
        return f" (view {thing.view})" if isinstance(thing, Hole) and thing.view else ""

    def hangs(self, part: str) -> bool:
        """Whether a part has plugs and no hinge, so that a hand must hold it."""
        soft = [one for one in links_across(self.layout, part) if is_soft(one)]
        return bool(soft) and not any(is_hinge(one) for one in soft)
