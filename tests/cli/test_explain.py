"""`guidebuild explain`: a rule's card with its examples, the list of all, and all as one page."""

from html.parser import HTMLParser
from pathlib import Path

import pytest

from guidebuild.build import rulebook
from guidebuild.build.examples import example
from guidebuild.cli.explaining import explained
from guidebuild.cli.main import main
from guidebuild.read.shape.topics import topic, topic_names

FIXTURES = Path(__file__).parents[1] / "rules"
FIXTURE = """\
---
title: A
---

# Stage

## One

Nothing.

## Two

```part
remove: cover
        ^^^^^ %% out-of-reach: the cover is behind the door, which is still fitted
%% only when: edition = b
see: door
     ^^^^ %% see: it is fitted here
```

## Three
"""


def test_an_example_shows_the_step_with_the_place_set_off() -> None:
    shown = example(FIXTURE, "out-of-reach")
    assert shown.text == "## Two\n\n```part\nremove: ⟦cover⟧\nsee: door\n```"
    assert shown.message == "the cover is behind the door, which is still fitted"


def test_a_good_example_is_shown_whole_but_for_its_front_matter() -> None:
    lines = [line for line in FIXTURE.splitlines() if "%%" not in line]
    assert example("\n".join(lines), "out-of-reach").text.startswith("# Stage\n\n## One")


@pytest.mark.parametrize("name", rulebook.names())
def test_a_rule_s_card_says_all_that_is_known_of_it(name: str) -> None:
    card, said = rulebook.card(name), explained(name)
    flat = " ".join(said.split())
    assert said.startswith(f"{name}\n")
    assert " ".join(card.summary.split()) in flat
    assert " ".join(card.source.split()) in flat
    assert (
        f"allow: {{{name}: " in said or f"# allow {name}: " in said or "can't be silenced" in said
    )
    assert ("An example of what it finds" in said) is any((FIXTURES / name).glob("bad*.md"))
    assert max(len(line) for line in said.splitlines() if not line.startswith("    ")) <= 80


def test_without_a_name_all_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert [line.split()[0] for line in lines] == [*rulebook.names(), *topic_names()]


@pytest.mark.parametrize("name", topic_names())
def test_a_word_of_the_markup_has_a_card(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", name]) == 0
    said = capsys.readouterr().out
    before, _, example = said.partition("An example\n")
    assert all(f"    {key.name}:" in before for key in topic(name).keys)
    assert topic(name).example.splitlines()[-1].strip() in example
    assert max(map(len, before.splitlines())) <= 80


def test_a_word_of_the_bench_leads_to_the_block(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", "bolts"]) == 2
    assert "Did you mean fasteners?" in capsys.readouterr().err


class Page(HTMLParser):
    """The ids of a page, where its links lead, and whether its tags are closed in order."""

    def __init__(self) -> None:
        super().__init__()
        self.ids: list[str] = []
        self.links: list[str] = []
        self.open: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        told = dict(attrs)
        self.ids += [told["id"]] if told.get("id") else []  # type: ignore[list-item]
        self.links += [told["href"]] if told.get("href") else []  # type: ignore[list-item]
        if tag not in ("meta", "input"):
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag


def test_all_rules_as_one_page(tmp_path: Path) -> None:
    assert main(["explain", "--all", str(tmp_path / "rules.html")]) == 0
    page = Page()
    page.feed((tmp_path / "rules.html").read_text(encoding="utf-8"))
    assert page.open == []
    assert set(rulebook.names()) <= set(page.ids)
    assert len(page.ids) == len(set(page.ids))
    assert sorted(page.links) == [f"#{name}" for name in rulebook.names()]
