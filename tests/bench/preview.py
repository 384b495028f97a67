"""How long after a save the page of a guide shows it, against a full build of that guide in the same run.

Run it: `python -m tests.bench.preview [ROUNDS]` (usual: 5); it needs Chromium. The promise is the build plus 300 ms.
"""

import sys
import tempfile
from pathlib import Path
from statistics import median
from time import perf_counter, sleep

from guidebuild.build.site_files import Chosen, site_files
from tests.browser.chrome import Browser, started
from tests.plan.previewed import HEAD, Preview, previewed

GUIDE = "guides/larch-p2/replace-the-print-head.md"
LINE = "The head springs up by"
SPARE = 0.3  # seconds


def shown(browser: Browser, words: str) -> float:
    """Seconds until the page says this."""
    begun = perf_counter()
    asked = f"document.body ? document.body.textContent.includes({words!r}) : false"
    while not browser.value(asked):  # the words stay in the page: to hand them out would hold it up
        sleep(0.02)
    return perf_counter() - begun


def ready(browser: Browser, preview: Preview) -> None:
    """The page is open, and all that a save brought is built."""
    while not browser.value("document.documentElement.dataset.preview || ''"):
        sleep(0.05)
    sleep(6)


def main(rounds: int) -> None:
    """Both times, in the middle of the rounds."""
    browser = started()
    with tempfile.TemporaryDirectory() as folder, previewed(Path(folder)) as preview:
        guide = preview.root / GUIDE
        text = guide.read_text(encoding="utf-8")
        browser.open(f"{preview.url}/{HEAD}")
        saves, builds = [], []
        for number in range(rounds):
            ready(browser, preview)
            begun = perf_counter()
            site_files(preview.root, Chosen((GUIDE,), ("en",)))
            builds.append(perf_counter() - begun)
            words = f"The head springs up {'again ' * (number + 1)}and"
            guide.write_text(text.replace(LINE, f"{words} by"), encoding="utf-8")
            saves.append(shown(browser, words))
    browser.driver.quit()
    save, build = median(saves), median(builds)
    print(f"save to screen {save * 1000:.0f} ms, build of the guide {build * 1000:.0f} ms")
    print(
        f"beyond the build: {(save - build) * 1000:.0f} ms (at most {SPARE * 1000:.0f}); ratio {save / build:.2f}"
    )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
