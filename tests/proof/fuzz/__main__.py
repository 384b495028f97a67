"""`python -m tests.proof.fuzz 17 42` shows these seeds; `--count 20000 --from 0` tries so many."""

import argparse
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor

from tests.proof.fuzz.case import case
from tests.proof.fuzz.compare import disagreements
from tests.proof.fuzz.dice import seeded
from tests.proof.fuzz.showing import show


def differences(seed: int) -> tuple[int, list[str]]:
    """Of one seed."""
    return seed, list(disagreements(case(seeded(seed))))


def show_seeds(seeds: Sequence[int]) -> None:
    """Each with its device, its guide and what differs."""
    for seed in seeds:
        print(f"seed {seed}", show(case(seeded(seed))), sep="\n")
        print(*differences(seed)[1], sep="\n")


def count(first: int, number: int) -> int:
    """How many of so many seeds differ; each of these is named."""
    bad = 0
    with ProcessPoolExecutor() as pool:
        for seed, words in pool.map(differences, range(first, first + number), chunksize=50):
            if words:
                bad += 1
                print(f"seed {seed}: {len(words)} differences, first: {words[0]}")
    print(f"{bad} of {number} cases differ")
    return bad


def main() -> int:
    """1 where anything differs."""
    wanted = argparse.ArgumentParser(description=__doc__)
    wanted.add_argument("seeds", nargs="*", type=int)
    wanted.add_argument("--from", dest="first", type=int, default=0)
    wanted.add_argument("--count", type=int, default=0)
    asked = wanted.parse_args()
    show_seeds(asked.seeds)
    return int(count(asked.first, asked.count) > 0) if asked.count else 0


if __name__ == "__main__":
    raise SystemExit(main())
