"""One id looked up among those that may stand there."""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass, field, replace

from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.read.faults import unknown_id
from guidebuild.read.report import Report
from guidebuild.source.nearest import meant, nearest
from guidebuild.source.respelt import respelt
from guidebuild.source.said import Said

_CALLED = {
    Kind.PART: "part",
    Kind.FASTENER: "fastener",
    Kind.CONNECTOR: "connector",
    Kind.JOINT: "joint",
    Kind.STORE: "store",
    Kind.POWER: "power",
}


@dataclass(slots=True)
class Names:
    """A device's ids. `aliases`: misspelt ids and what they surely mean, so that reading can go on."""

    device: Device
    report: Report
    aliases: dict[str, str] = field(default_factory=dict)
    _guesses: dict[str, str | None] = field(default_factory=dict)
    _by_kind: dict[Kind, frozenset[str]] = field(default_factory=dict)

    def of_kind(self, kind: Kind) -> frozenset[str]:
        """All ids of a kind, groups among those of fasteners."""
        if kind not in self._by_kind:
            things = self.device.things
            self._by_kind[kind] = frozenset(
                id_ for id_, keys in self.device.names.items() if things[keys[0]].kind is kind
            )
        return self._by_kind[kind]

    def things(self, said: Iterable[Said], *kinds: Kind) -> None:
        """Each must be an id of the record, of one of these kinds (none: of any)."""
        names = self.device.names
        for one in said:
            known = one.text in names or one.text in self.aliases
            if known and (not kinds or self._kind(one.text) in kinds):
                continue
            among = (
                frozenset().union(*(self.of_kind(kind) for kind in kinds))
                if kinds
                else names.keys()
            )
            what = _any_of([_CALLED[kind] for kind in kinds]) or "entry of the record"
            self._tell(one, what, among)

    def _kind(self, id_: str) -> Kind:
        keys = self.device.names[self.aliases.get(id_, id_)]
        return self.device.things[keys[0]].kind

    def _tell(self, said: Said, what: str, among: Collection[str]) -> None:
        other = said.text in self.device.names
        sure = None if other else self._meant(said.text, among)
        is_ = f"`{said.text}` is a {_CALLED[self._kind(said.text)]}" if other else ""
        tell_unknown(
            self.report, said, what, among, lost=sure is None, instead=is_, family="record"
        )
        if sure is not None:
            self.aliases[said.text] = sure

    def _meant(self, id_: str, among: Collection[str]) -> str | None:
        """What a misspelt id surely means; worked out once for each."""
        if id_ not in self._guesses:
            self._guesses[id_] = meant(id_, among)
        return self._guesses[id_]

    def one_of(self, said: Iterable[Said], what: str, among: Mapping[str, object]) -> None:
        """Each must be a key of `among`."""
        for one in said:
            if one.text not in among:
                tell_unknown(self.report, one, what, among)

    def mended(self) -> Device:
        """The device, in which misspelt ids lead to what they surely mean."""
        if not self.aliases:
            return self.device
        more = {wrong: self.device.names[right] for wrong, right in self.aliases.items()}
        return replace(self.device, names={**self.device.names, **more})


def _any_of(words: list[str]) -> str:
    """`fastener, connector or joint`."""
    return " or ".join(filter(None, (", ".join(words[:-1]), *words[-1:])))


def tell_unknown(
    report: Report,
    said: Said,
    what: str,
    among: Iterable[str],
    *,
    lost: bool = True,
    instead: str = "",
    family: str = "",
) -> None:
    """Tell that an id names nothing, with the nearest that does; an id is told of once.

    `family`: what `what` is a kind of; the same id of the same family is the same mistake.
    """
    if report.knows(said.span):
        return
    known = list(among)
    guess = None if instead else nearest(said.text, known)
    few = ", ".join(sorted(known)[:12])
    report.tell(
        unknown_id,
        said.span,
        lost=lost,
        edits=() if instead else respelt(said.span, said.text, known),
        same=(family or what, said.text),
        what=what,
        id=said.text,
        do=instead or (f"write `{guess}`" if guess else f"there are: {few}" if few else "add it"),
    )
