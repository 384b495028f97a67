"""`python -m tests.fuzz.guided [SECONDS] [READER...]`: inputs that are bred by what they reach in our code.

Needs `atheris` (`pip install atheris`), which is in no list of ours: there are no wheels of it for many a Python.
Each reader has a process of its own that may take 512 MiB, 10 s for one input, and so many seconds in all. What
falls over is left in the folder that is told, with the input; it goes to `tests/hard/`.
"""

import re
import subprocess
import sys
import tempfile
from pathlib import Path

MEMORY, SLOWEST = 512, 10  # MiB, seconds


def breed(name: str, words: list[str]) -> None:
    """In the reader's own process: never returns."""
    import atheris  # type: ignore[import-not-found,import-untyped,unused-ignore]

    with atheris.instrument_imports(include=["guidebuild"]):
        from tests.fuzz.readers import readers
    reader = next(one for one in readers() if one.name == name)
    is_text = isinstance(reader.seeds[0], str)

    def one(data: bytes) -> None:
        reader.read(data.decode("utf-8", "replace") if is_text else data)

    atheris.Setup([sys.argv[0], *words], one)
    atheris.Fuzz()


def seeded(name: str, folder: Path) -> None:
    """The sound inputs, to begin with."""
    from tests.fuzz.readers import readers

    reader = next(one for one in readers() if one.name == name)
    folder.mkdir()
    for number, seed in enumerate(reader.seeds):
        data = seed.encode() if isinstance(seed, str) else seed
        (folder / str(number)).write_bytes(data)


def main(seconds: int, wanted: list[str]) -> int:
    """Each reader in turn; how many fell over."""
    from tests.fuzz.readers import readers

    room, fell, inputs = Path(tempfile.mkdtemp(prefix="guidebuild-bred-")), 0, 0
    for reader in readers():
        if wanted and reader.name not in wanted:
            continue
        seeded(reader.name, room / reader.name)
        words = [
            str(room / reader.name), f"-max_total_time={seconds}", f"-rss_limit_mb={MEMORY}", f"-timeout={SLOWEST}",
            f"-artifact_prefix={room}/{reader.name}-", "-print_final_stats=1", "-verbosity=0", "-max_len=8000",
        ]  # fmt: skip
        command = [
            sys.executable,
            "-W",
            "ignore",
            "-m",
            "tests.fuzz.guided",
            "--breed",
            reader.name,
        ]
        done = subprocess.run([*command, *words], capture_output=True, text=True, errors="replace")
        run = re.search(r"stat::number_of_executed_units:\s*(\d+)", done.stderr)
        peak = re.search(r"stat::peak_rss_mb:\s*(\d+)", done.stderr)
        count = int(run[1]) if run else 0
        inputs += count
        print(f"{reader.name}: {count} inputs, at most {peak[1] if peak else '?'} MiB", flush=True)
        if done.returncode:
            fell += 1
            print(done.stdout[-3000:], done.stderr[-1500:], f"See {room}.", flush=True)
    print(f"{inputs} inputs in all, {fell} readers fell over")
    return fell


if __name__ == "__main__":
    if sys.argv[1:2] == ["--breed"]:
        breed(sys.argv[2], sys.argv[3:])
    sys.exit(main(int(sys.argv[1]) if len(sys.argv) > 1 else 60, sys.argv[2:]))
