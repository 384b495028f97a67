"""`python -m tests.proof.breakages`: every breakage, and the case that notices it; the survivors last."""

from tests.proof.breakages.listed import BREAKAGES
from tests.proof.breakages.noticing import CASES, noticed


def main() -> int:
    """1 where one survives."""
    survivors, seeds = [], set()
    for number, breakage in enumerate(BREAKAGES, 1):
        notice = noticed(breakage)
        how = "SURVIVES" if notice is None else f"case {notice.case}: {notice.words[:100]}"
        print(f"{number:3} {breakage.module}: {breakage.what}: {how}", flush=True)
        if notice is None:
            survivors.append(breakage)
        else:
            seeds.add(notice.case)
    print(f"{len(BREAKAGES) - len(survivors)} of {len(BREAKAGES)} noticed within {CASES} cases")
    print(f"by {len(seeds)} cases: {sorted(seeds)}")
    for one in survivors:
        print(f"not noticed: {one.module}: {one.what}")
    return int(bool(survivors))


if __name__ == "__main__":
    raise SystemExit(main())
