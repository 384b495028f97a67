"""Steps as links to the guide's page, for a page that stands beside it."""

from collections.abc import Iterable
from dataclasses import dataclass

from guidebuild.translate.messages.sayer import Sayer
from guidebuild.translate.messages.text import Piece, Text


@dataclass(frozen=True, slots=True)
class StepLinks:
    """`sheet` is the guide's page, as the other page gets there."""

    say: Sayer
    sheet: str

    def __call__(self, steps: Iterable[tuple[str, str]]) -> Text:
        """`step 4, step 7`; `steps` are (id, number)."""
        links: list[Text] = [
            (Piece(self.say.plain("step.link", number=number), href=f"{self.sheet}#{id}"),)
            for id, number in steps
        ]
        return self.say.listed(links, "unit")
