"""What may be worked only while a guard is open or empty."""

from tests.device.records import guards, layout

RECORD = """
    base: frame
    parts:
      frame: Frame
      wall: {name: Wall socket, mounted-on: nothing}
      inlet: {name: Inlet, mounted-on: frame}
      board: Board
      card: {name: Card, mounted-on: board}
      cap: Cap
    fasteners:
      board-screws: {holds: board, screw: M3x6 pan PH1, torque: not-known, holes: 1}
      drain-plug: {holds: cap, screw: M8x12 hex 6, torque: not-known, holes: 1}
    connectors:
      mains-plug: {joins: [inlet, wall], source: true, guards: [board], name: Mains plug, at: board}
      card-lead: {joins: [board, card], name: Card lead}
    stores:
      oil: {kind: fluid, in: board, through: drain-plug, guards: [board, cap]}
      charge: {kind: charge, in: board, at: frame, guards: [board], filled-by: [mains-plug]}
"""


def test_to_guard_a_part_is_to_guard_what_is_on_it_and_worked_there() -> None:
    asked = layout(RECORD)
    for key in ("board", "card", "board-screws.1", "card-lead"):
        assert guards(asked, key) == {"mains-plug", "oil", "charge"}, key


def test_nothing_guards_itself() -> None:
    asked = layout(RECORD)
    assert "mains-plug" not in guards(asked, "mains-plug")
    assert "oil" not in guards(asked, "oil")


def test_a_store_does_not_guard_its_own_way_in_and_out() -> None:
    asked = layout(RECORD)
    assert guards(asked, "drain-plug.1") == set()  # on the cap, which the oil guards
    assert guards(asked, "mains-plug") == {"oil"}  # worked at the board; it fills the charge


def test_of_a_part_only_the_part_must_be_in_before_its_guard_is_closed() -> None:
    asked = layout(RECORD)
    assert [key for key, _ in asked.guarding.named("mains-plug")] == ["board"]
    assert [key for key, _ in asked.guarding.named("oil")] == ["board", "cap"]
