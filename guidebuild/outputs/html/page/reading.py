"""A proved guide as a reader of one language meets it: what every part of the page asks."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from guidebuild.device.kit import Kit
from guidebuild.device.naming import lowered
from guidebuild.device.record import Device
from guidebuild.device.things import Hole, Store
from guidebuild.device.tool import Tool
from guidebuild.draw.photo import Photo
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.guide import Guide
from guidebuild.guide.settings import Settings
from guidebuild.outputs.html.films import Films
from guidebuild.outputs.html.looks import Look
from guidebuild.outputs.html.page.author import Author
from guidebuild.outputs.html.page.labels import Labels, labels, printed
from guidebuild.outputs.html.page.numbers import Numbers, numbers
from guidebuild.outputs.html.page.when import Conditions, When
from guidebuild.proof.proof import Passage, Proof
from guidebuild.source.span import Span
from guidebuild.translate.catalogue.apply import Stale
from guidebuild.translate.messages.sayer import Sayer, sayer
from guidebuild.translate.messages.text import Mark, Text, joined, text


@dataclass(frozen=True, slots=True)
class Reading:
    """`say` speaks the reader's language; `passages` by step id."""

    proof: Proof
    say: Sayer
    labels: Labels
    numbers: Numbers
    conditions: Conditions
    tools: Mapping[str, Tool]
    settings: Settings
    passages: Mapping[str, Passage]
    author: Author
    photos: Mapping[str, Photo] = field(default_factory=dict)  # by content path
    films: Films = field(default_factory=Films)
    looks: Mapping[str, Look] = field(default_factory=dict)  # by content path
    root: str = ""  # how the page gets to the site's root
    known: dict[str, Text] = field(default_factory=dict, repr=False)  # names, asked in every step

    @property
    def guide(self) -> Guide:
        """The guide."""
        return self.proof.guide

    @property
    def device(self) -> Device:
        """The device, of all the guide's models."""
        return self.proof.device

    @property
    def configurations(self) -> Configurations:
        """What can be answered."""
        return self.proof.configurations

    @property
    def kits(self) -> tuple[Kit, ...]:
        """The kits that the guide names."""
        return tuple(use.kit for use in self.guide.kits)

    @property
    def is_fed(self) -> bool:
        """Whether anything feeds the device: a valve has neither power nor charge nor data."""
        return any(plug.source for plug in self.device.connectors)

    def when(self, where: int, among: int) -> When | None:
        """The condition of `where` for a reader who is in `among`."""
        return self.conditions.when(where, among)

    def name(self, key: str) -> str:
        """What a thing is called, without what is printed on it if that is its label."""
        thing = self.device.things[key]
        if isinstance(thing, Hole):
            return self._hole_name(thing)
        name = thing.name.text if thing.name else thing.id.replace("-", " ").replace(".", " ")
        short, mark = printed(name)
        return short if mark and mark == self.labels.of_thing.get(key) else name

    def _hole_name(self, hole: Hole) -> str:
        """`Cap screws left`, and the group alone where it has one hole."""
        group = self.device.groups.get(hole.group)
        name = group.name.text if group and group.name else hole.group.replace("-", " ")
        alone = group is not None and len(group.holes) == 1
        return name if alone else f"{name} {self.say.hole(hole.hole)}"

    def is_printed(self, key: str) -> bool:
        """Whether a thing's label is printed on it, as the end of its name tells."""
        name = self.device.things[key].name
        return name is not None and printed(name.text)[1] == self.labels.of(key) != ""

    def store_name(self, store: Store) -> str:
        """A charge is called by the part that holds it, a fluid by itself."""
        if store.store == "charge" and store.inside is not None:
            for key in self.device.names.get(store.inside.text, ()):
                return self.name(key)
        return self.name(store.key)

    def inside(self, name: str) -> str:
        """A name inside a sentence, as the language writes it there."""
        return lowered(name) if self.say.plain("name.inside") == "lower" else name

    def named(self, key: str) -> Text:
        """Reference and name: `A cover`, `P1 battery plug`."""
        known = self.known.get(key)
        if known is None:
            known = self.known[key] = self._named(key)
        return known

    def _named(self, key: str) -> Text:
        mark = text(self.labels.of(key), Mark.REFERENCE)
        return joined([mark, text(self.inside(self.name(key)))], "\u00a0")

    def tool(self, id: str) -> str:
        """The name of a tool or material by its id."""
        known = self.tools.get(id)
        return known.name.text if known else id.replace("-", " ")


def reading(
    proof: Proof,
    language: str,
    tools: Mapping[str, Tool],
    settings: Settings,
    stale: Mapping[Span, Stale] | None = None,
    link: Callable[[str], str | None] = lambda href: None,
) -> Reading:
    """The reading of a proof in a language; `link` says where an author's link leads."""
    say = sayer(language)
    return Reading(
        proof=proof,
        say=say,
        labels=labels(proof),
        numbers=numbers(proof.guide),
        conditions=Conditions(say, proof.configurations, proof.guide.options),
        tools=tools,
        settings=settings,
        passages={passage.step.id: passage for passage in proof.passages},
        author=Author(stale or {}, proof.guide.language, link),
    )
