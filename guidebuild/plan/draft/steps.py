"""Acts cut into steps as a person would cut them: one move a step, with the few screws that belong to it.

A part takes along the clips and hooks that were released just before it, and one group of up to four screws.
More screws, glue, tape and what the device stores have steps of their own; plugs that lie together share one.
"""

from collections.abc import Iterable, Sequence

from guidebuild.device.acts import Verb
from guidebuild.device.ends import STAY_OPEN
from guidebuild.device.layout import Layout
from guidebuild.device.record import POWER
from guidebuild.device.things import Connector, Hole, Joint, Part, Store
from guidebuild.plan.draft.sealing import wants_sequence
from guidebuild.plan.draft.work import Work
from guidebuild.plan.openings import links_across

FEW_SCREWS, FEW_PLUGS = 4, 4
_ALONE = STAY_OPEN | {"adhesive", "film"}

Group = list[Work]


def opening_groups(layout: Layout, works: Sequence[Work]) -> list[Group]:
    """Acts in order, each group one step; a part stands behind what is undone for it."""
    groups: list[Group] = []
    waiting: Group = []
    for work in works:
        if isinstance(layout.device.things[work.keys[0]], Part):
            taken = _belonging(layout, work, reversed(waiting))
            groups += _alone(layout, waiting[: len(waiting) - len(taken)])
            groups.append([*reversed(taken), work])
            waiting = []
        else:
            waiting.append(work)
    return groups + _alone(layout, waiting)


def closing_groups(layout: Layout, works: Sequence[Work]) -> list[Group]:
    """The same backwards: a part stands before what is done up for it."""
    groups: list[Group] = []
    at = 0
    while at < len(works):
        work = works[at]
        if isinstance(layout.device.things[work.keys[0]], Part) and work.verb in (
            Verb.REFIT,
            Verb.LOWER,
        ):
            taken = _belonging(layout, work, works[at + 1 :])
            groups.append([work, *taken])
            at += 1 + len(taken)
            continue
        end = at + 1
        while end < len(works) and _together(layout, works[at:end], works[end]):
            end += 1
        groups.append(list(works[at:end]))
        at = end
    return groups


def _belonging(layout: Layout, part: Work, near: Iterable[Work]) -> Group:
    """What stands next to a part's act and goes with it, from the nearest on."""
    across = {link.key for link in links_across(layout, part.keys[0])}
    candidates: Group = []
    for work in near:
        thing = layout.device.things[work.keys[0]]
        joint = isinstance(thing, Joint) and thing.joint not in _ALONE
        fits = set(work.keys) <= across and work.where == part.where
        if not (fits and (joint or isinstance(thing, Hole)) and work.verb is not Verb.RENEW):
            break
        candidates.append(work)
    screws = [one for one in candidates if isinstance(layout.device.things[one.keys[0]], Hole)]
    groups = {one.keys[0].partition(".")[0] for one in screws}
    many = sum(len(one.keys) for one in screws) > FEW_SCREWS
    if len(groups) > 1 or many or any(wants_sequence(layout.device, one.keys) for one in screws):
        return candidates[: candidates.index(screws[0])]
    return candidates


def _alone(layout: Layout, works: Sequence[Work]) -> list[Group]:
    groups: list[Group] = []
    for work in works:
        if groups and _together(layout, groups[-1], work):
            groups[-1].append(work)
        else:
            groups.append([work])
    return groups


def _together(layout: Layout, group: Sequence[Work], work: Work) -> bool:
    """Whether an act goes on in the step of these."""
    last = layout.device.things[group[-1].keys[0]]
    thing = layout.device.things[work.keys[0]]
    match last, thing:
        case Connector(), Connector():
            same = group[-1].verb is work.verb and last.source == thing.source
            return same and len(group) < FEW_PLUGS
        case Store(), Connector():  # switched off and unplugged
            return last.key == POWER and thing.source and work.verb is Verb.DISCONNECT
        case Hole(), Hole():
            return last.group == thing.group and group[-1].where == work.where
        case Joint(), Joint():
            return last.key == thing.key and group[-1].where == work.where
        case _:
            return False
