"""The preview in a real browser: clicks land in the source, saves come on the screen, strangers can't write."""

import threading
import time
from collections.abc import Callable, Iterator
from decimal import Decimal
from http.server import BaseHTTPRequestHandler, HTTPServer
from pathlib import Path

import pytest

from guidebuild.read.content import read_content
from tests.browser.chrome import Browser
from tests.plan.previewed import HEAD, Preview, previewed

READY = "document.documentElement.dataset.preview || ''"
STEP = "lift-out-the-head"
# The middle of the window on a view of the step, as the browser reports it, and where that is on the view.
AT = f"""(() => {{
  const step = document.getElementById('{STEP}');
  const view = step.querySelector('svg.view');
  view.scrollIntoView({{block: 'center'}});
  const box = view.getBoundingClientRect();
  return [box.left + box.width * 0.41, box.top + box.height * 0.37];
}})()"""


@pytest.fixture
def preview(tmp_path: Path) -> Iterator[Preview]:
    with previewed(tmp_path) as running:
        yield running


def until(holds: Callable[[], object]) -> None:
    for _ in range(600):
        if holds():
            return
        time.sleep(0.05)
    raise AssertionError("it never came")


def opened(browser: Browser, preview: Preview) -> None:
    browser.screen(1440)
    browser.open(f"{preview.url}/{HEAD}")
    until(lambda: browser.value(READY))


def click(browser: Browser, x: float, y: float) -> None:
    for kind in ("mousePressed", "mouseReleased"):
        browser.command(
            "Input.dispatchMouseEvent", type=kind, x=x, y=y, button="left", clickCount=1
        )


def test_a_click_lands_within_half_a_per_cent(browser: Browser, preview: Preview) -> None:
    opened(browser, preview)
    browser.value(
        "(() => { const s = document.querySelector('.preview-bar select'); s.value = 'head-screws.b';"
        " s.dispatchEvent(new Event('change')); })()"
    )
    x, y = browser.value(AT)
    wanted = browser.value(
        f"(() => {{ const g = document.getElementById('{STEP}').querySelector('svg.view > g');"
        f" const p = new DOMPoint({x}, {y}).matrixTransform(g.getScreenCTM().inverse()); return [p.x, p.y]; }})()"
    )
    before = preview.record.read_text(encoding="utf-8")
    click(browser, x, y)
    until(lambda: preview.record.read_text(encoding="utf-8") != before)
    lines = zip(
        before.splitlines(), preview.record.read_text(encoding="utf-8").splitlines(), strict=True
    )
    assert sum(one != other for one, other in lines) == 1
    device = read_content(preview.root)[0].devices["larch-p2"]
    hole = next(one for one in device.holes if one.id == "head-screws.b")
    assert hole.xy is not None
    for found, asked, size in zip(hole.xy, wanted, device.views["inside"].size, strict=True):
        assert abs(found - Decimal(asked)) < size * Decimal("0.005")


@pytest.mark.parametrize("point", ["head-flex", "plate-screws.right"])
def test_a_click_on_a_photograph_lands_within_half_a_per_cent(
    browser: Browser, preview: Preview, point: str
) -> None:
    opened(browser, preview)
    name = {"head-flex": "head-plugs.jpg"}.get(point, "plug-plate.jpg")
    x, y = browser.value(f"""(() => {{
      const select = document.querySelector('.preview-bar select');
      select.value = '{point}';
      select.dispatchEvent(new Event('change'));
      const image = [...document.querySelectorAll('.photo img')].find(one => one.src.includes('{name[:-4]}'));
      image.scrollIntoView({{block: 'center'}});
      const box = image.getBoundingClientRect();
      return [box.left + box.width * 0.613, box.top + box.height * 0.287];
    }})()""")
    before = preview.record.read_bytes().decode()
    click(browser, x, y)
    until(lambda: preview.record.read_bytes().decode() != before)
    after = preview.record.read_bytes().decode()
    assert sum(map(str.__ne__, before.splitlines(), after.splitlines())) == 1
    assert before.count("#") == after.count("#")
    pictures = read_content(preview.root)[0].devices["larch-p2"].pictures
    found = pictures[name].points[point]
    for one, wanted in zip(found, (Decimal("61.3"), Decimal("28.7")), strict=True):
        assert abs(one - wanted) < Decimal("0.5")


def test_a_save_comes_on_the_screen_where_the_reader_was(
    browser: Browser, preview: Preview
) -> None:
    opened(browser, preview)
    browser.value(f"document.getElementById('{STEP}').scrollIntoView()")
    guide = preview.root / "guides/larch-p2/replace-the-print-head.md"
    text = guide.read_text(encoding="utf-8")
    guide.write_text(
        text.replace("The head springs up by 2 mm. Hold", "The head jumps by 3 mm. Hold"),
        encoding="utf-8",
    )
    until(lambda: "The head jumps by 3 mm." in (browser.value("document.body.textContent") or ""))
    until(lambda: browser.value(READY))
    top = browser.value(f"document.getElementById('{STEP}').getBoundingClientRect().top")
    assert abs(top) < 20


def test_a_finding_stands_beside_its_step(browser: Browser, preview: Preview) -> None:
    guide = preview.root / "guides/larch-p2/replace-the-print-head.md"
    text = guide.read_text(encoding="utf-8")
    guide.write_text(text.replace("undo: head-screws\n", ""), encoding="utf-8")
    preview.server.pages.build()
    opened(browser, preview)
    notes = browser.value(
        f"[...document.querySelectorAll('#{STEP} .preview-finding b')].map(one => one.textContent)"
    )
    assert any(note.startswith("part-still-held") for note in notes)


class _Stranger(BaseHTTPRequestHandler):
    def do_GET(self) -> None:
        body = b"<!doctype html><title>elsewhere</title>"
        self.send_response(200)
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, *words: object) -> None:
        pass


def test_a_page_from_elsewhere_can_neither_write_nor_read(
    browser: Browser, preview: Preview
) -> None:
    stranger = HTTPServer(("127.0.0.1", 0), _Stranger)
    threading.Thread(target=stranger.serve_forever, daemon=True).start()
    before = preview.record.read_bytes()
    browser.screen(1440)
    browser.open(f"http://127.0.0.1:{stranger.server_port}/")
    for kind, mode in (("application/json", "cors"), ("text/plain", "no-cors")):
        said = browser.value(
            f"fetch('{preview.url}/preview/place', {{method: 'POST', mode: '{mode}', body: '{{}}',"
            f" headers: {{'Content-Type': '{kind}'}}}}).then(r => r.type + r.status, e => 'refused')"
        )
        assert said in ("refused", "opaque0")
    read = browser.value(f"fetch('{preview.url}/{HEAD}').then(r => r.text(), e => 'refused')")
    assert read == "refused"
    assert preview.record.read_bytes() == before
    stranger.shutdown()
    stranger.server_close()
