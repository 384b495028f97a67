"""What a link ties: its ends, and what must be fitted for them to be one body."""

from itertools import combinations

from guidebuild.device.between import Between, Path
from guidebuild.device.states import HOLDING, State
from guidebuild.device.things import Connector, Hole, Joint, Link

SOFT_JOINTS = frozenset({"hinge"})
LYING_BETWEEN = frozenset(
    {"seal", "adhesive", "film"}
)  # can only be renewed while its parts are apart
STAY_OPEN = frozenset(
    {"solder", "tape", "bead"}
)  # do not close by themselves when their part goes on


def is_soft(link: Link) -> bool:
    """Whether the parts may move while it holds: plugs and hinges."""
    return isinstance(link, Connector) or (isinstance(link, Joint) and link.joint in SOFT_JOINTS)


def holds_while(link: Link) -> State:
    """The states in which it holds: a loose screw does, a loose captive screw (or keyhole slot) does not."""
    return State.IN if isinstance(link, Hole) and link.captive else HOLDING


class Ends:
    """Asked once a link (or once for all links with the same ends), then known."""

    def __init__(self, between: Between) -> None:
        self.between = between
        self._seats: dict[tuple[tuple[str, int], ...], tuple[Path, ...]] = {}
        self._ends: dict[str, tuple[tuple[str, int], ...]] = {}

    def of(self, link: Link) -> tuple[tuple[str, int], ...]:
        """The parts that it ties and where each of them is there."""
        found = self._ends.get(link.key)
        if found is None:
            found = self._ends[link.key] = tuple(self.between.hosts.presence.parts(link.ends))
        return found

    def seats(self, link: Link) -> tuple[Path, ...]:
        """The ways between each two of its ends."""
        ends = self.of(link)
        found = self._seats.get(ends)
        if found is None:
            keys = [key for key, _ in ends]
            pairs = combinations(keys, 2)
            found = tuple(path for pair in pairs for path in self.between.paths(*pair))
            self._seats[ends] = found
        return found
