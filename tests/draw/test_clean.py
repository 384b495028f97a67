"""An author's SVG loses everything that could run, load or link; its shapes stay."""

import pytest

from guidebuild.draw.clean import SHAPES, clean_svg
from guidebuild.draw.view import read_view
from guidebuild.draw.view_symbols import view_symbols
from tests.draw.records import device, view_of_file

HOSTILE = [
    "<svg><script>alert(1)</script><path d='M0,0H9V9Z'/></svg>",
    "<svg onload='x()'><path d='M0,0H9V9Z' onclick='x()'/></svg>",
    "<svg><a href='javascript:x()'><path d='M0,0H9V9Z'/></a></svg>",
    "<svg><foreignObject><iframe src='https://elsewhere.example/'></iframe></foreignObject><path d='M0,0H9V9Z'/></svg>",
    "<svg><image href='//elsewhere.example/x'/><use href='https://elsewhere.example/#a'/><path d='M0,0H9V9Z'/></svg>",
    "<svg><style>@import url(https://elsewhere.example/x.css);</style><path d='M0,0H9V9Z'/></svg>",
    "<svg><path d='M0,0H9V9Z' style='fill:url(https://elsewhere.example/#x)'/></svg>",
    "<!DOCTYPE svg [<!ENTITY a 'x'><!ENTITY b '&a;&a;'>]><svg><path d='M0,0H9V9Z'/><text x='1'>&b;</text></svg>",
    "<svg><set attributeName='onload' to='x()'/><animate/><path d='M0,0H9V9Z'/></svg>",
    "<?xml version='1.0'?><!-- a comment --><svg xmlns:x='urn:x' x:y='z'><x:thing/><path d='M0,0H9V9Z'/></svg>",
    "<svg><path d='M0,0H9V9Z'><title><![CDATA[<script>alert(1)</script>]]></title></path></svg>",
    "<svg><path d='M0,0H9V9Z'/><desc><svg><script>1</script></svg></desc></svg>",
]
BAD_WORDS = [
    "script",
    "alert",
    "onload",
    "onclick",
    "javascript",
    "iframe",
    "elsewhere",
    "http",
    "import",
    "url(",
]


@pytest.mark.parametrize("svg", HOSTILE)
def test_nothing_that_runs_or_loads_comes_through(svg: str) -> None:
    view = view_of_file()
    drawn = read_view(device(view), view, svg)
    shown = view_symbols(drawn)
    assert not [word for word in BAD_WORDS if word in shown]
    assert shown.count("<path") == 1


@pytest.mark.parametrize("svg", HOSTILE)
def test_only_listed_elements_stay(svg: str) -> None:
    assert {node.tag for node in clean_svg(svg).iter()} <= SHAPES | {"svg", "g"}


BROKEN = [
    "",
    "no drawing",
    "<svg",
    "<svg><path d='M0,0",
    "<g></g>",
    "\x00\xff",
    "</svg><svg>",
    "<svg/>" * 50,
]


@pytest.mark.parametrize("svg", BROKEN)
def test_a_broken_file_is_an_empty_view(svg: str) -> None:
    view = view_of_file()
    assert read_view(device(view), view, svg).layers == ()


def test_case_of_names_is_kept() -> None:
    """SVG is case-sensitive: `viewBox` must not become `viewbox`, or the drawing loses its scale."""
    assert clean_svg('<svg VIEWBOX="0 0 1 1" viewBox="0 0 10 20"></svg>').get("viewBox")


def test_deep_nesting_does_not_break_the_reader() -> None:
    view = view_of_file()
    deep = "<svg>" + "<g>" * 3000 + "<path d='M0,0H9V9Z'/>" + "</g>" * 3000 + "</svg>"
    read_view(device(view), view, deep)
