"""A few hundred inputs a reader; `python -m tests.fuzz` feeds as many as are asked for."""

import pytest

from tests.fuzz.readers import Reader, readers
from tests.fuzz.running import SLOWEST, fed


@pytest.mark.parametrize("reader", readers(), ids=lambda reader: reader.name)
def test_no_reader_falls_over(reader: Reader) -> None:
    taken, slowest = fed(reader, 20 * reader.share, seeded=True)
    assert taken >= reader.share
    assert slowest < SLOWEST
