"""The breakages: what no longer holds, where, and the words that are changed for it."""

from tests.proof.breakages.breakage import Breakage
from tests.proof.breakages.of_effects import EFFECTS
from tests.proof.breakages.of_needs import NEEDS
from tests.proof.breakages.of_records import RECORDS
from tests.proof.breakages.of_ways import WAYS

BREAKAGES: tuple[Breakage, ...] = tuple(
    Breakage(*row) for row in (*NEEDS, *EFFECTS, *WAYS, *RECORDS)
)
