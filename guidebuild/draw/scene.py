"""What a view shows at a step: derived from the record, the passage through the step, and the labels."""

from collections.abc import Collection, Iterable, Iterator, Mapping
from functools import lru_cache, reduce
from operator import or_

from guidebuild.device.acts import REPLACING
from guidebuild.device.record import Device, View
from guidebuild.device.screw import Screw
from guidebuild.device.things import Hole, Part
from guidebuild.draw.look import End, HoleLook, Reference, Scene
from guidebuild.draw.moment import Moment
from guidebuild.draw.sight import own_view
from guidebuild.draw.view import Drawn
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage, Snapshot


def worked(passage: Passage, where: int | None = None) -> tuple[str, ...]:
    """Keys of what hands touch on the device in a step, in order; what is renewed on the bench is not.

    `where`: only what is done in some of these configurations.
    """
    done = (one.doing for one in passage.walked if where is None or one.where & where)
    moves = (one for one in done if isinstance(one, Move))
    found = [move.thing for move in moves if move.verb not in REPLACING]
    return tuple(dict.fromkeys(found))


def view_for(device: Device, passage: Passage, drawn: Mapping[str, Drawn]) -> str | None:
    """The view (by id) that shows most of the step's work; None where none shows any.

    Among equals the one on which the record places the screws wins, then the one that shows it largest.
    """
    keys = worked(passage)
    best, most = None, (0, 0, 0.0)
    for id, view in device.views.items():
        if id not in drawn:
            continue
        shown = [key for key in keys if shows(device, view, drawn[id], key)]
        own = [key for key in shown if own_view(device.things[key]) == id]
        rank = (len(shown), len(own), 1 / max(drawn[id].size))
        if shown and rank > most:
            best, most = id, rank
    return best


def shows(device: Device, view: View, drawn: Drawn, key: str) -> bool:
    """Whether a view can show a thing: it has its group, or its place."""
    thing = device.things[key]
    if drawn.box_of(thing.id) is not None:
        return True
    return isinstance(thing, Hole) and thing.xy is not None and own_view(thing) == view.id


def scene_at(
    drawn: Drawn,
    passage: Passage,
    labels: Mapping[str, str],
    where: int | None = None,
    only: Collection[str] | None = None,
    orders: Mapping[str, int] | None = None,
    screws: Mapping[str, Screw] | None = None,
) -> Scene:
    """The scene of a step in the configurations `where` (all in which it is shown, if None).

    `labels` maps keys to what stands on their leaders; `only` keeps the marks to some of the worked keys (a
    face of the bench); `orders` maps holes' keys to their place in a tightening sequence; `screws` to the
    screws that belong in them there, where a record has several.
    """
    now = tuple(key for key in worked(passage, where) if only is None or key in only)
    bits = where or passage.shown or passage.before.everywhere
    return _scene(
        drawn,
        _states(drawn.sight.keys, passage.before, bits),
        now,
        tuple(labels.get(key) for key in now),
        tuple((orders or {}).items()),
        tuple((screws or {}).items()),
    )


def _states(keys: tuple[str, ...], before: Snapshot, bits: int) -> tuple[int, ...]:
    """In which states each thing may be in these configurations."""
    values = before.values
    return tuple(
        [value if isinstance(value := values[key], int) else _any_of(value, bits) for key in keys]
    )


def _any_of(value: Mapping[int, int], bits: int) -> int:
    """All states of all cells that these configurations touch."""
    return reduce(or_, (states for states, where in value.items() if where & bits), 0)


@lru_cache(
    maxsize=4_000
)  # guides of a device, and their translations, pass through the same states
def _scene(
    drawn: Drawn,
    states: tuple[int, ...],
    now: tuple[str, ...],
    labels: tuple[str | None, ...],
    orders: tuple[tuple[str, int], ...],
    screws: tuple[tuple[str, Screw], ...],
) -> Scene:
    seen = drawn.sight
    moment = Moment(seen, dict(zip(seen.keys, states, strict=True)), now)
    holes = tuple(moment.holes(dict(orders), dict(screws)))
    marked = {hole.key for hole in holes if hole.look is HoleLook.NOW}
    references = tuple(_references(drawn, zip(now, labels, strict=True), marked))
    return Scene(moment.looks(), holes, references, len(seen.places))


def _references(
    drawn: Drawn, now: Iterable[tuple[str, str | None]], marked: set[str]
) -> Iterator[Reference]:
    for key, label in now:
        thing = drawn.sight.things[key]
        if label is None:
            continue
        if key in marked:
            yield Reference(label, key, End.ARROW)
        elif not isinstance(thing, Hole) and drawn.box_of(thing.id) is not None:
            end = End.DOT if isinstance(thing, Part) else End.ARROW
            yield Reference(label, thing.id, end)
