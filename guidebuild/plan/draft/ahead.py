"""Taking apart for a guide: the part out of the device, hanging covers laid aside, what rides on it moved over."""

from collections.abc import Sequence
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.ends import is_soft
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.guide import KitUse
from guidebuild.plan.bench import Bench, Needs
from guidebuild.plan.draft.work import Work
from guidebuild.plan.habits import is_energy
from guidebuild.plan.openings import Opening, is_hinge, links_across
from guidebuild.plan.taking import Taking, take

LIES_FLAT = 170  # degrees: a cover that opens further needs no hand


@dataclass(frozen=True, slots=True)
class Ahead:
    """`out`: until the part is off (or at hand); `moved`: what is taken off it on the bench."""

    out: tuple[Work, ...]
    moved: tuple[Work, ...]
    needs: Needs
    cost: int
    bound: int

    @property
    def works(self) -> tuple[Work, ...]:
        """All of it in order."""
        return self.out + self.moved


def ahead(
    bench: Bench, parts: Sequence[str], stays: bool = False, moved: dict[str, int] | None = None
) -> Ahead | None:
    """None where no order leads there. `stays`: the parts are only reached. `moved`: riders, and where they move."""
    wanted = _wanted(bench, parts, stays)
    if wanted is None:
        return None
    wanted = [*_energy(bench, wanted, moved or {}), *wanted]
    taken = _laid_aside(bench, take(bench, wanted), wanted)
    if taken is None:
        return None
    works = tuple(_work(one.opening, one.where, one.task) for one in taken.acts)
    if not moved:
        return Ahead(works, (), taken.needs, taken.cost, taken.bound)
    riders = [(task, where) for key, where in moved.items() if (task := bench.off(key)) is not None]
    riders = [(task, where) for task, where in riders if not taken.tasks >> task & 1]
    more = take(bench, [task for task, _ in riders], taken.tasks)
    if more is None:
        return None
    needs = tuple(
        (*one, *(need for need in two if need not in one))
        for one, two in zip(taken.needs, more.needs, strict=True)
    )
    limits: dict[int, int] = {}
    for task, there in riders:
        alone = take(bench, [task], taken.tasks)
        for one in alone.acts if alone is not None else ():
            limits[one.task] = limits.get(one.task, 0) | there
    over = tuple(
        _work(one.opening, one.where & limits.get(one.task, 0), one.task)
        for one in more.acts
        if not taken.tasks >> one.task & 1 and one.where & limits.get(one.task, 0)
    )
    return Ahead(works, over, needs, taken.cost + more.cost, taken.bound + more.bound)


def _energy(bench: Bench, wanted: list[int], moved: dict[str, int]) -> list[int]:
    """What has to be dead or empty for the riders, too: it is, before the part that carries them goes anywhere."""
    more = [task for key in moved if (task := bench.off(key)) is not None]
    whole = take(bench, [*wanted, *more]) if more else None
    return [one.task for one in whole.acts if is_energy(bench, one.task)] if whole else []


def riders(
    bench: Bench, parts: Sequence[str], kits: Sequence[KitUse], cases: Configurations
) -> dict[str, int]:
    """What sits on these parts directly, and the configurations in which the new units do not bring it."""
    layout = bench.layout
    found = {}
    for one in layout.device.parts:
        on_it = any(host in parts for host, _ in layout.hosts.host(one.key))
        if on_it and not one.packing and one.key not in parts:
            found[one.key] = layout.presence.where[one.key]
    for use in kits:
        for form in use.kit.forms:
            there = _chosen(use, form.id, cases)
            for key, _ in layout.presence.of(form.arrives_with):
                if key in found:
                    found[key] &= ~there
    return {key: where for key, where in found.items() if where}


def _chosen(use: KitUse, form: str, cases: Configurations) -> int:
    if use.option is None:
        return cases.everywhere
    found = 0
    for number in range(cases.total):
        if form in cases.answers(number).get(use.option, ()):
            found |= 1 << number
    return found


def _work(opening: Opening, where: int, task: int) -> Work:
    return Work(opening.verb, opening.keys, where, task)


def _wanted(bench: Bench, parts: Sequence[str], stays: bool) -> list[int] | None:
    """The tasks that make it so: the parts off, or all open that hides or guards them."""
    tasks: list[int] = []
    for part in parts:
        if not stays:
            off = bench.off(part)
            if off is None:
                return None
            tasks.append(off)
            continue
        for need in bench.at_hand(part):
            tasks.append((need.tasks & -need.tasks).bit_length() - 1)
    return tasks


def _laid_aside(bench: Bench, taken: Taking | None, wanted: list[int]) -> Taking | None:
    """Covers that would hang on their cables over the work are taken off, where that is possible."""
    if taken is None:
        return None
    more = list(wanted)
    early = 0
    for one in taken.acts:
        key = one.opening.keys[0]
        off = bench.off(key)
        if one.opening.verb is Verb.LIFT and off is not None and _hangs(bench, key, taken):
            more.append(off)
            early |= 1 << off
    again = take(bench, more, early=early) if early else None
    return again or taken


def _hangs(bench: Bench, key: str, taken: Taking) -> bool:
    """It has no hinge, and does not lie flat beside the device; or its plugs are opened anyhow."""
    soft = [link for link in links_across(bench.layout, key) if is_soft(link)]
    if any(is_hinge(link) for link in soft):
        return False
    open_anyhow = not bench.numbered(link.key for link in soft) & ~taken.tasks
    opens_to = bench.layout.device.part(key).opens_to
    return open_anyhow or opens_to is None or opens_to < LIES_FLAT
