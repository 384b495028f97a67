"""A condition as the reader meets it: in words, and in the form that the script evaluates."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from guidebuild.device.option import Option
from guidebuild.guide.configurations import Configurations
from guidebuild.outputs.html.page.boxes import Box, cover
from guidebuild.translate.messages.sayer import Sayer
from guidebuild.translate.messages.text import Mark, Text, plain, text


@dataclass(frozen=True, slots=True)
class When:
    """`data`: `revision=a,c&supplied=bare|...`, any of these; `words` follow on "Only if", `short` on "if"."""

    data: str
    words: Text
    short: Text

    @property
    def plain(self) -> str:
        """The words without marks."""
        return plain(self.words)


class Conditions:
    """Turns sets of configurations into conditions; the same set of the same place is worked out once."""

    def __init__(self, say: Sayer, configurations: Configurations, options: Sequence[Option]):
        self._say = say
        self._configurations = configurations
        self._options: Mapping[str, Option] = {option.id: option for option in options}
        asked = {axis.option for axis in configurations.axes if len(axis.classes) > 1}
        numbered = enumerate((option.id for option in options if option.id in asked), start=1)
        self._numbers = {id: number for number, id in numbered}
        self._known: dict[tuple[int, int], When | None] = {}

    def when(self, where: int, among: int) -> When | None:
        """The condition that tells `where` from the rest of `among`; None where nothing is to be told."""
        where &= among
        if where == among:
            return None
        key = (where, among)
        if key not in self._known:
            boxes = cover(self._configurations, where, among)
            data = "|".join("&".join(self._data(*one) for one in box.items()) for box in boxes)
            words = self._say.listed([self._words(box) for box in boxes], "or")
            short = self._say.listed([self._short(box) for box in boxes], "or")
            self._known[key] = When(data, words, short)
        return self._known[key]

    def options_told(self) -> frozenset[str]:
        """The options on which any condition that was asked for depends."""
        leaves = (
            leaf.partition("=")[0]
            for one in self._known.values()
            if one is not None
            for box in one.data.split("|")
            for leaf in box.split("&")
        )
        return frozenset(leaves)

    def _values(self, axis: int, classes: frozenset[int]) -> tuple[Option | None, list[str]]:
        one = self._configurations.axes[axis]
        values = [value for number in sorted(classes) for value in one.classes[number]]
        return self._options.get(one.option), values

    def _data(self, axis: int, classes: frozenset[int]) -> str:
        _, values = self._values(axis, classes)
        return f"{self._configurations.axes[axis].option}={','.join(values)}"

    def _words(self, box: Box) -> Text:
        return self._say.listed([self._answer(axis, some) for axis, some in box.items()])

    def _short(self, box: Box) -> Text:
        """`Q1 = A`, for where there is little room."""
        return self._say.listed([self._comparison(axis, some) for axis, some in box.items()])

    def _comparison(self, axis: int, classes: frozenset[int]) -> Text:
        option, values = self._values(axis, classes)
        labels = {value.id: value.label.text for value in option.values} if option else {}
        answers = [text(labels.get(value, value)) for value in values]
        answer = self._say.listed(answers, "or")
        number = self._numbers.get(self._configurations.axes[axis].option, 0)
        return self._say("condition.comparison", number=number, answer=answer)

    def number(self, option: str) -> int:
        """The number of a question, as short conditions name it."""
        return self._numbers.get(option, 0)

    def _answer(self, axis: int, classes: frozenset[int]) -> Text:
        """`A (Which letter stands after P2?)`."""
        option, values = self._values(axis, classes)
        if option is None:
            return self._say.listed([text(value, Mark.STRONG) for value in values], "unit")
        labels = {value.id: value.label.text for value in option.values}
        answers = [text(labels[value], Mark.STRONG) for value in values]
        answer = self._say.listed(answers, "or")
        ask = text(option.ask.text, Mark.SOFT)
        return self._say(f"condition.{option.origin.value}", answer=answer, ask=ask)
