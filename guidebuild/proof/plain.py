"""The states as plain integers: the walk asks them thousands of times, and flags of an enum are slow."""

from guidebuild.device import states

IN = int(states.State.IN)
HALF = int(states.State.HALF)
OUT = int(states.State.OUT)
WORN = int(states.State.WORN)
LEFT = int(states.State.LEFT)
ABSENT = int(states.State.ABSENT)

HOLDING = IN | HALF
GONE = LEFT | ABSENT
ANY = int(states.ANY)
NOT_IN = HALF | OUT | WORN  # here, and not as it should be
