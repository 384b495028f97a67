"""Where links may lead. Source: RFC 3986 section 3.1; the WHATWG URL standard on what a browser drops."""

import pytest

from guidebuild.source.address import may_lead

GOOD = (
    "http://tarnwick.example/x", "HTTPS://tarnwick.example", "mailto:help@tarnwick.example", "#step-2",
    "other-guide.html", "../shared/x.html#a:b", "", "a/b:c", "?x=a:b",
)  # fmt: skip
BAD = (
    "javascript:alert(1)", "JaVaScRiPt:alert(1)", " javascript:alert(1)", "java\tscript:alert(1)",
    "java\nscript:alert(1)", "\x01javascript:alert(1)", "data:text/html,x", "data:image/svg+xml,x", "file:///etc/passwd",
    "vbscript:x", "blob:x", "ftp://x", "tel:1", "intent://x", "ms-settings:x", "about:blank", "//host/x", "\\\\host\\x",
    "java%73cript:alert(1)", "/\\host", "x y:z",
)  # fmt: skip


@pytest.mark.parametrize("address", GOOD)
def test_leads_there(address: str) -> None:
    assert may_lead(address)


@pytest.mark.parametrize("address", BAD)
def test_leads_nowhere(address: str) -> None:
    assert not may_lead(address)
