"""`python -m tests.fuzz [INPUTS] [READER]`: 200,000 inputs over all readers, no traceback, no hang, no bloat."""

import sys
from multiprocessing import get_context

from tests.fuzz.readers import readers
from tests.fuzz.running import MEMORY, SLOWEST, one

if __name__ == "__main__":
    total = int(sys.argv[1]) if len(sys.argv) > 1 else 200_000
    shares = sum(reader.share for reader in readers())
    sound, inputs = True, 0
    for reader in readers():
        if sys.argv[2:] and reader.name not in sys.argv[2:]:
            continue
        ours, theirs = get_context("spawn").Pipe(duplex=False)
        words = (reader.name, -(-total * reader.share // shares), theirs)
        process = get_context("spawn").Process(target=one, args=words)
        process.start()
        theirs.close()
        try:
            taken, slowest, memory, fell = ours.recv()
        except EOFError:  # a library of C, perhaps
            taken, slowest, memory, fell = 0, 0.0, 0, "the process died"
        process.join()
        inputs += taken
        sound &= not fell and slowest < SLOWEST and memory < MEMORY
        print(
            f"{reader.name}: {taken} inputs, slowest {slowest:.3f} s, at most {memory >> 20} MiB",
            fell[-3000:],
            flush=True,
        )
    print(f"{inputs} inputs in all")
    sys.exit(not sound)
