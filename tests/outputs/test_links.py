"""An author's link leads to a step or a guide of the site, and to nothing else."""

import pytest

from guidebuild.outputs.html.links import links
from tests.outputs.demo import HEAD, readings

GUIDES = (
    "guides/larch-p2/replace-the-print-head.md",
    "guides/brindle-e4/replace-the-control-board.md",
)


@pytest.mark.parametrize(
    ("href", "leads"),
    [
        ("#close-the-cover", "#close-the-cover"),
        (
            "../brindle-e4/replace-the-control-board.md",
            "../brindle-e4/replace-the-control-board.html",
        ),
        ("replace-the-print-head.md#try-keys", "replace-the-print-head.html#try-keys"),
        ("#no-such-step", None),
        ("shared/make-safe.md", None),
        ("../../../../etc/passwd", None),
        ("https://example.org/", None),
        ("//example.org/x.md", None),
        ("javascript:alert(1)", None),
        ("data:text/html,x", None),
        ("mailto:x@example.org", None),
    ],
)
def test_where_it_leads(href: str, leads: str | None) -> None:
    assert links(readings()[HEAD].guide, GUIDES)(href) == leads
