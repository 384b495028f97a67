"""The quick cut of a guide's usual lines against CommonMark's own parser: the same pieces at the same places."""

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from guidebuild.read.guide.pieces import pieces
from guidebuild.read.guide.usual import usual_pieces
from guidebuild.read.markdown.document import Document
from guidebuild.read.markdown.fences import closed
from guidebuild.read.report import Report
from guidebuild.read.shape.schema import block_names
from guidebuild.source.text import Source
from tests.language.places import with_places

CONTENT = Path(__file__).resolve().parents[2] / "content"
LINES = st.sampled_from(
    [
        *["", "", "", " ", "\t", "\f", "\N{NO-BREAK SPACE}"],
        *[
            "# Open it",
            "## Take the cover off",
            "##  Two  ",
            "## Shut #",
            "#",
            "#No space",
            "####### 7",
        ],
        *[
            "### With *marks*",
            "## [Shared](shared/open.md)",
            " ## Indented",
            "## Tab\tin it ",
            "## C#",
        ],
        *[
            "Hold the cover.",
            "Hold *it* there.",
            "Pull `it`  ",
            "Two spaces  ",
            "Back \\",
            "A & B &amp; C",
        ],
        *[
            "É is a letter",
            '"Quoted."',
            "(In brackets)",
            "20 mm",
            "1. one",
            "2) two",
            "12 turns.",
            "_x_ y",
        ],
        *[
            "- item",
            "* item",
            "+ item",
            "  - deeper",
            "  goes on",
            "    code",
            "> quoted",
            ">quoted",
        ],
        *["===", "---", "***", "* * *", "| a | b |", "Setext", "![A picture](a.png)", "[word]"],
        *[
            "[word]: there.html",
            "<https://a.example>",
            "<!-- not shown",
            "-->",
            "<div>",
            "</div>",
            "<x>",
        ],
        *[
            "```part",
            "```",
            "```",
            "remove: cover",
            "```` part",
            "````",
            "~~~",
            "```part x",
            "  ```part",
        ],
        *[
            "  ```",
            "```Part",
            "```part ",
            "``` part",
            "- ```part",
            "x: `y`",
            "note: |",
            "  # no heading",
        ],
        *[
            "a\0b",
            "cr\r",
            "\N{LINE SEPARATOR}x",
            "x\vy",
            "\N{IDEOGRAPHIC SPACE}y",
            "日本語。",
            "\N{ZERO WIDTH SPACE}z",
        ],
    ]
)


def both(text: str) -> tuple[object, object]:
    """What the two make of a text, pieces and findings.

    A comment's sign inside a block is no comment; only the quick cut knows, so its finding is not held against it.
    """
    source = Source("guides/a/b.md", text)
    quick, slow = Report(), Report()
    found = list(map(with_places, usual_pieces(source, 0, quick)))
    document = Document(source, 0, closed(source, 0, block_names(), slow))
    wanted = list(map(with_places, pieces(document)))
    if "<!--" in text:
        return found, wanted
    return (found, list(map(with_places, quick.findings))), (
        wanted,
        list(map(with_places, slow.findings)),
    )


@settings(max_examples=600, deadline=None)
@given(st.lists(LINES, max_size=12), st.booleans())
def test_any_lines_are_cut_as_commonmark_says(lines: list[str], ended: bool) -> None:
    quick, slow = both("\n".join(lines) + "\n" * ended)
    assert quick == slow


@pytest.mark.parametrize("path", sorted(CONTENT.rglob("*.md")), ids=lambda path: path.stem)
def test_the_demo_is_cut_as_commonmark_says(path: Path) -> None:
    body = path.read_text(encoding="utf-8").partition("\n---\n")[2]
    quick, slow = both(body)
    assert quick == slow
