"""Which steps of which guides a change touches: where the thing is handled, tried or warned of."""

from collections.abc import Iterable, Iterator, Sequence

from guidebuild.device.condition import leaves
from guidebuild.device.record import Device
from guidebuild.device.things import Link
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import conditions, items
from guidebuild.guide.step import Step
from guidebuild.plan.compare.change import Change, Difference, Touched


def differences(
    changes: Iterable[Change], guides: Sequence[Guide], devices: Sequence[Device]
) -> list[Difference]:
    """Each change with its steps, guides in the order given."""
    spoken = [
        (Touched(guide.title.text, guide.path, step.id, step.title.text), _of(step, devices))
        for guide in guides
        for step in guide.steps
    ]
    return [
        Difference(one, tuple(step for step, ids in spoken if ids & _wide(one.ids, devices)))
        for one in changes
    ]


def _of(step: Step, devices: Sequence[Device]) -> frozenset[str]:
    """The ids that a step handles, written out: a group is its holes."""
    return frozenset(key for id_ in _said(step) for key in (id_, *_keys(id_, devices)))


def _said(step: Step) -> Iterator[str]:
    for item in items(step):
        match item:
            case Act():
                more = (*item.undo, *item.do_up, *item.first) if isinstance(item, PartAct) else ()
                yield from (said.text for said in (*item.targets, *more))
            case Check():
                yield from (said.text for said in item.tests)
            case Caution():
                yield from (said.text for said in item.hazards)
            case _:
                pass
    for condition in (step.when, *conditions(step)):
        yield from (leaf.option for leaf in leaves(condition))


def _keys(id_: str, devices: Sequence[Device]) -> Iterator[str]:
    for device in devices:
        yield from device.names.get(id_, ())


def _wide(ids: frozenset[str], devices: Sequence[Device]) -> frozenset[str]:
    """A joint that closes with its part is touched where the part is."""
    found = set(ids)
    for device in devices:
        for id_ in ids:
            for key in device.names.get(id_, ()):
                thing = device.things[key]
                if isinstance(thing, Link) and thing.kind.value == "joint":
                    found |= {said.text for said in thing.ends if said.text != device.base}
    return frozenset(found)
