"""Seeds of the fuzz that between them notice most breakages: tried first, to save time.

`python -m tests.proof.breakages` prints a new list, where the generator has changed.
"""

SHARP: tuple[int, ...] = (
    1083, 920, 159, 33, 129, 1234, 103, 294, 467, 253, 980, 95,
    106, 261, 650, 709, 1488, 2, 23, 56, 139, 141, 304, 306,
    317, 617, 784, 969, 1134, 1227, 1257, 1890, 2247,
)  # fmt: skip
