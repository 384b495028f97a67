"""`python -m tests.mutation`: every act of every demo guide spoilt in every way, and what became of it."""

from collections import Counter
from pathlib import Path

from guidebuild.read.content import read_content
from tests.mutation.classes import REASONS
from tests.mutation.judging import Bench
from tests.mutation.mutants import mutants
from tests.mutation.tally import Tally

CONTENT = Path(__file__).parents[2] / "content"


def main() -> int:
    """1 where a mistake is missed, or a silent one is not explained."""
    content, _ = read_content(CONTENT)
    tally = Tally()
    for read in content.guides:
        bench = Bench(content, read)
        several = list(mutants(read.guide, read.device))
        print(f"{read.guide.path}: {len(several)} mutants")
        tally.add(bench, several)
    report(tally)
    return int(bool(tally.missed or tally.unexplained or tally.elsewhere))


def report(tally: Tally) -> None:
    """Figures first, then the silent ones by class."""
    ways = Counter(one.mutant.how for one in tally.noticed)
    print(f"noticed: {len(tally.noticed)} ({', '.join(f'{n} {how}' for how, n in ways.items())})")
    print(f"findings a noticed mutant: {tally.findings_a_mutant:.2f}")
    print(f"findings a noticed mistake: {tally.findings_a_mistake:.2f} (a re-targeted act is two)")
    for name, verdicts in tally.silent.items():
        print(f"\nsilent, {name}: {len(verdicts)}: {REASONS[name]}")
        for one in verdicts:
            print(f"  {one.mutant.how} {one.mutant.what}")
    beyond = {
        "MISSED": tally.missed,
        "NOT EXPLAINED": tally.unexplained,
        "TOLD IN A WRONG CONFIGURATION": tally.elsewhere,
    }
    for name, verdicts in beyond.items():
        print(f"\n{name}: {len(verdicts)}")
        for one in verdicts:
            told = ", ".join(f"{rule} {sorted(where)}" for rule, where in one.told)
            print(f"  {one.mutant.how} {one.mutant.what}: wrong in {sorted(one.wrong)}; {told}")


if __name__ == "__main__":
    raise SystemExit(main())
