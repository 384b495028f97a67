"""`python -m tests.browser.hostile [TURNS]`: each payload in each place, by as many builds as there are payloads."""

import sys
import tempfile
from pathlib import Path

from tests.browser.chrome import started
from tests.browser.hostile.corpus import PAYLOADS
from tests.browser.hostile.looking import seen, watching
from tests.browser.hostile.planted import built, slots

if __name__ == "__main__":
    turns = int(sys.argv[1]) if len(sys.argv) > 1 else len(PAYLOADS)
    chromium = started()
    pages, shown, troubles = 0, 0, []
    with watching(chromium):
        for turn in range(0, len(PAYLOADS), -(-len(PAYLOADS) // turns)):
            for source in (True, False):
                with tempfile.TemporaryDirectory() as room:
                    site = built(Path(room), turn, source)
                    for page in sorted(site.rglob("*.html")):
                        if not source and "/de/" not in page.as_posix():
                            continue
                        told = seen(chromium, page, site)
                        pages, shown = pages + 1, shown + told.words
                        for trouble in told.troubles:
                            troubles.append(trouble)
                            print(f"turn {turn}, {page.relative_to(site)}: {trouble}", flush=True)
    chromium.driver.quit()
    print(
        f"{len(PAYLOADS)} payloads, {slots()} places, {pages} pages, {shown} payloads shown as words"
    )
    print(f"{len(troubles)} troubles")
    sys.exit(bool(troubles))
