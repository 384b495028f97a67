"""The picture that the reader holds beside the unit stands on the page, cleaned, with no id of its own."""

import re
from dataclasses import replace
from io import BytesIO

from PIL import Image

from guidebuild.outputs.html.looks import look_files, looks_of
from guidebuild.outputs.html.page.identify import identity
from guidebuild.translate.messages.text import plain
from tests.outputs.demo import BOARD, load, readings

LABEL = "devices/brindle-e4/rating-label.svg"
HOSTILE = b"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 36" width="9000" onload="x()">
<script>x()</script><rect id="top" class="wide" x="1" y="1" width="58" height="34" onclick="x()"/></svg>"""


def test_the_label_is_drawn_beside_what_must_be_on_it() -> None:
    reading = readings()[BOARD]
    told = identity(replace(reading, looks=looks_of([reading.proof], load)))
    assert told is not None and plain(told.expect) == "The label shows E4 and 230\u00a0V."
    assert told.svg.startswith("<svg") and "230 V" in told.svg and told.file is None


def test_a_drawing_from_a_stranger_is_only_its_shapes() -> None:
    (look,) = looks_of([readings()[BOARD].proof], lambda path: HOSTILE).values()
    assert "<rect" in look.svg
    assert not re.search(r"script|onload|onclick|id=|9000", look.svg)


def test_a_photograph_becomes_one_file() -> None:
    out = BytesIO()
    Image.new("RGB", (1200, 800), "white").save(out, "JPEG")
    reading = readings()[BOARD]
    looks = looks_of([reading.proof], lambda path: out.getvalue())
    # by its name it is a drawing; a photograph has another name
    assert not dict(look_files(looks))
    device = reading.device
    assert device.identify is not None and device.identify.look is not None
    look = replace(device.identify.look, text="rating-label.jpg")
    device = replace(device, identify=replace(device.identify, look=look))
    reading = replace(reading, proof=replace(reading.proof, device=device), root="../../")
    looks = looks_of([reading.proof], lambda path: out.getvalue())
    told = identity(replace(reading, looks=looks))
    ((path, data),) = look_files(looks)
    assert told is not None and told.src == f"../../{path}" and told.file is not None
    assert Image.open(BytesIO(data)).size == (told.file.width, told.file.height)


def test_without_a_file_the_words_stand_alone() -> None:
    told = identity(readings()[BOARD])
    assert told is not None and not told.svg and not told.src
