"""The local page: who may read, who may write, and what a click does to the author's text."""

import json
from collections.abc import Iterator
from decimal import Decimal
from difflib import unified_diff
from http.client import HTTPConnection
from pathlib import Path
from typing import Any

import pytest

from guidebuild.build.preview.place import Click, NoPlace, placed
from tests.plan.previewed import HEAD, Preview, previewed

PLACE = {
    "page": HEAD,
    "on": "view",
    "name": "inside",
    "id": "head-screws.a",
    "x": 18.44,
    "y": 21.06,
}


@pytest.fixture(scope="module")
def preview(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Preview]:
    with previewed(tmp_path_factory.mktemp("preview")) as running:
        yield running


def ask(
    preview: Preview, method: str, path: str, body: str = "", **headers: str
) -> tuple[int, Any]:
    port = preview.server.server_port
    line = HTTPConnection("127.0.0.1", port, timeout=30)
    said = {"Host": f"127.0.0.1:{port}"} | {
        name.replace("_", "-"): value for name, value in headers.items()
    }
    line.request(method, path, body, said)
    answer = line.getresponse()
    data = answer.read()
    kind = answer.headers["Content-Type"]
    return answer.status, json.loads(data) if "json" in kind else data.decode("utf-8", "replace")


def ours(preview: Preview) -> dict[str, str]:
    """What a page of the preview sends."""
    return {
        "Origin": preview.url,
        "Content-Type": "application/json",
        "X-Preview-Token": preview.server.token,
        "Sec-Fetch-Site": "same-origin",
    }


def test_a_page_is_shown_with_what_was_found(preview: Preview) -> None:
    status, page = ask(preview, "GET", f"/{HEAD}")
    assert status == 200
    assert "/preview/client.js" in page
    assert "connect-src 'self'" in page
    assert "default-src 'none'" in page
    status, told = ask(preview, "GET", f"/preview/told?page={HEAD}")
    assert "head-screws.a" in told["places"]
    assert "inside" in told["views"]


def test_it_listens_on_the_loopback_address_only(preview: Preview) -> None:
    assert preview.server.server_address[0] == "127.0.0.1"


@pytest.mark.parametrize("method", ["GET", "POST"])
def test_a_name_that_leads_here_from_elsewhere_is_refused(preview: Preview, method: str) -> None:
    """What makes a page of a stranger's name reach this server sends that name as host."""
    before = preview.record.read_bytes()
    headers = ours(preview) | {"Host": "evil.example"}
    status, _ = ask(preview, method, "/preview/place", json.dumps(PLACE), **headers)
    assert status == 403
    assert preview.record.read_bytes() == before


@pytest.mark.parametrize(
    ("header", "value"),
    [
        ("Origin", "http://evil.example"),
        ("Origin", "null"),
        ("Origin", ""),
        ("X-Preview-Token", "guess"),
        ("X-Preview-Token", ""),
        ("X-Preview-Token", "é"),
        ("Content-Type", "text/plain"),
        ("Content-Type", "application/x-www-form-urlencoded"),
        ("Sec-Fetch-Site", "cross-site"),
        ("Sec-Fetch-Site", "same-site"),
    ],
)
def test_a_page_from_elsewhere_can_not_write(preview: Preview, header: str, value: str) -> None:
    before = preview.record.read_bytes()
    headers = ours(preview) | {header: value.encode("utf-8").decode("latin-1")}
    status, _ = ask(preview, "POST", "/preview/place", json.dumps(PLACE), **headers)
    assert status == 403
    assert preview.record.read_bytes() == before


@pytest.mark.parametrize("path", ["/preview/plac", "/", f"/{HEAD}", "/preview/place/../place"])
def test_nothing_else_takes_anything(preview: Preview, path: str) -> None:
    assert ask(preview, "POST", path, json.dumps(PLACE), **ours(preview))[0] == 403


@pytest.mark.parametrize(
    "path",
    [
        "/../devices/larch-p2/device.yaml",
        "/%2e%2e/guidebuild.yaml",
        "/preview/server.py",
        "/preview/../pages.py",
    ],
)
def test_only_pages_are_given_out(preview: Preview, path: str) -> None:
    assert ask(preview, "GET", path)[0] == 404


@pytest.mark.parametrize(
    "body",
    [
        "",
        "[]",
        "nonsense",
        "{}",
        json.dumps(PLACE | {"x": "NaN"}),
        json.dumps(PLACE | {"on": "disk"}),
        json.dumps(PLACE | {"id": "../x"}),
        json.dumps(PLACE | {"page": "no"}),
        "[" * 3000,
    ],
)
def test_what_is_no_place_is_told(preview: Preview, body: str) -> None:
    before = preview.record.read_bytes()
    status, answer = ask(preview, "POST", "/preview/place", body, **ours(preview))
    assert status in (400, 409)
    assert answer["error"]
    assert preview.record.read_bytes() == before


def test_a_click_changes_one_line(preview: Preview) -> None:
    before = preview.record.read_text(encoding="utf-8")
    status, answer = ask(preview, "POST", "/preview/place", json.dumps(PLACE), **ours(preview))
    assert (status, answer) == (200, {"written": "devices/larch-p2/device.yaml"})
    after = preview.record.read_text(encoding="utf-8")
    changed = [
        line
        for line in unified_diff(before.splitlines(), after.splitlines(), n=0)
        if line[0] in "+-"
    ][2:]
    assert changed == [
        "-    holes: {a: [18, 21], b: [68, 21], c: [18, 35], d: [68, 35]}",
        "+    holes: {a: [18.4, 21.1], b: [68, 21], c: [18, 35], d: [68, 35]}",
    ]


def test_news_of_a_save_reach_the_page_and_no_other(preview: Preview) -> None:
    other = "en/brindle-e4/replace-the-control-board.html"
    before = {
        page: ask(preview, "GET", f"/preview/told?page={page}")[1]["version"]
        for page in (HEAD, other)
    }
    guide = preview.root / "guides/larch-p2/replace-the-print-head.md"
    text = guide.read_text(encoding="utf-8")
    guide.write_text(
        text.replace("Begin at the left end.", "Begin at the right end."), encoding="utf-8"
    )
    _, news = ask(preview, "GET", f"/preview/wait?page={HEAD}&version={before[HEAD]}")
    assert news["version"] != before[HEAD]
    assert preview.server.pages.version(other) == before[other]


def click(text: str, id_: str, on: str = "view", name: str = "inside") -> str:
    return placed(text, Click(on, name, id_, Decimal("1.25"), Decimal("40.04")))


RECORD = "fasteners:  # all\n  s:\n    view: inside\n    holes: "


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("{a: [1, 2], b: }  # two\n", "{a: [1.3, 40], b: }  # two\n"),
        ("{a: , b: }\n", "{a: [1.3, 40], b: }\n"),
        ("{a: }\n", "{a: [1.3, 40]}\n"),
        ("{a: {screw: M2x4 pan TX6}, b: }\n", "{a: {xy: [1.3, 40], screw: M2x4 pan TX6}, b: }\n"),
        ("{a: {screw: M2x4 pan TX6, xy: [9, 9]}}\n", "{a: {screw: M2x4 pan TX6, xy: [1.3, 40]}}\n"),
        ("\n      a: [3, 4]  # left\n      b: [5, 6]\n", "\n      a: [1.3, 40]  # left\n      b: [5, 6]\n"),
        ("\n      a:   # left\n      b: [5, 6]\n", "\n      a: [1.3, 40]   # left\n      b: [5, 6]\n"),
        ("\n      a:\n        screw: M2x4 pan TX6\n",
         "\n      a:\n        xy: [1.3, 40]\n        screw: M2x4 pan TX6\n"),
    ],
)  # fmt: skip
def test_every_way_to_write_a_hole(before: str, after: str) -> None:
    assert click(RECORD + before, "s.a") == RECORD + after


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("pictures: {p.jpg: {plug: [1, 2]}}\n", "pictures: {p.jpg: {plug: [1.3, 40]}}\n"),
        ("pictures:\n  p.jpg: {}\n", "pictures:\n  p.jpg: {plug: [1.3, 40]}\n"),
        (
            "pictures:\n  q.jpg: {x: [1, 2]}\n",
            "pictures:\n  p.jpg: {plug: [1.3, 40]}\n  q.jpg: {x: [1, 2]}\n",
        ),
        ("parts: {a: A}\n", "parts: {a: A}\n\npictures:\n  p.jpg: {plug: [1.3, 40]}\n"),
        ("parts: {a: A}\r\n", "parts: {a: A}\r\n\r\npictures:\r\n  p.jpg: {plug: [1.3, 40]}\r\n"),
    ],
)
def test_every_way_to_write_a_point(before: str, after: str) -> None:
    assert click(before, "plug", "picture", "p.jpg") == after


def test_a_point_of_a_hole_stands_under_its_group() -> None:
    text = "pictures: {p.jpg: {s: {a: [1, 2]}}}\n"
    assert (
        click(text, "s.b", "picture", "p.jpg")
        == "pictures: {p.jpg: {s: {b: [1.3, 40], a: [1, 2]}}}\n"
    )


@pytest.mark.parametrize(
    ("text", "id_", "words"),
    [
        (RECORD + "2\n", "s.1", "Name the holes"),
        (RECORD + "{a: }\n", "s.z", "no hole z"),
        (RECORD + "{a: }\n", "plug", "no hole"),
        (RECORD.replace("inside", "back") + "{a: }\n", "s.a", "on the view back"),
        ("a: [\n", "s.a", "can't be read"),
    ],
)
def test_what_the_author_must_say_first(text: str, id_: str, words: str) -> None:
    with pytest.raises(NoPlace, match=words):
        click(text, id_)


def test_wrong_ports_are_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    from guidebuild.cli.main import main

    (tmp_path / "guidebuild.yaml").write_text("publisher: x\n", encoding="utf-8")
    assert main(["preview", str(tmp_path), "--port", "99999"]) == 2
    assert "--port" in capsys.readouterr().err
