"""The demo's guides as pages: read, proved and viewed once for all tests of this folder."""

from functools import cache
from pathlib import Path

from guidebuild.outputs.html.page.guide import GuideView, guide_view
from guidebuild.outputs.html.page.reading import Reading, reading
from guidebuild.outputs.html.views import views
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content

CONTENT = Path(__file__).resolve().parents[2] / "content"


def load(path: str) -> bytes | None:
    """A file of the demo."""
    file = CONTENT / path
    return file.read_bytes() if file.is_file() else None


@cache
def readings() -> dict[str, Reading]:
    """By guide id, in English."""
    content, _ = read_content(CONTENT)
    proofs = (prove(one.guide, one.device) for one in content.guides)
    return {
        proof.guide.id: reading(proof, "en", content.tools, content.settings) for proof in proofs
    }


@cache
def page(guide: str) -> GuideView:
    """A guide's page."""
    one = readings()[guide]
    return guide_view(one, views(one.device, load))


GUIDES = ("replace-the-print-head", "replace-the-battery", "replace-the-control-board")
HEAD, BATTERY, BOARD = GUIDES
