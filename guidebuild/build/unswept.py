"""Values made without the search for circles among them, which walks through all that lives again and again."""

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def unswept() -> Iterator[None]:
    """Within, Python looks for no circles of dead values; everything else goes as soon as nobody holds it.

    What is read of a content folder lives until all its guides are done, and hardly any of it is a circle:
    each search finds nothing, and takes longer than the one before.
    """
    before = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if before:
            gc.enable()
