"""What a thing lies behind: its own covers, and those of the part where it is worked."""

from tests.device.records import covers, layout

RECORD = """
    base: frame
    parts:
      frame: Frame
      cover: Cover
      lamp: {name: Lamp, mounted-on: cover}
      board: {name: Board, behind: cover}
      card: {name: Card, mounted-on: board}
      chip: {name: Chip, mounted-on: card, behind: nothing}
      shield: {name: Shield, mounted-on: board}
      coil: {name: Coil, behind: [shield, hood]}
      hood: {name: Hood, mounted-on: coil}
      foot: Foot
    fasteners:
      cover-screws: {holds: cover, screw: M3x6 pan PH1, torque: not-known, holes: 1}
      board-screws: {holds: board, screw: M3x6 pan PH1, torque: not-known, holes: 1}
      hidden-screw: {holds: cover, screw: M3x6 pan PH1, torque: not-known, behind: foot, holes: 1}
      hood-screw: {holds: hood, into: coil, screw: M3x6 pan PH1, torque: not-known, at: coil, holes: 1}
    connectors:
      card-lead: {joins: [card, board], name: Card lead}
      cover-lead: {joins: [cover, board], name: Cover lead}
      lamp-lead: {joins: [lamp, board], name: Lamp lead}
"""


def test_what_is_worked_at_a_part_lies_behind_what_that_lies_behind() -> None:
    asked = layout(RECORD)
    for key in ("board", "card", "shield", "board-screws.1", "card-lead"):
        assert covers(asked, key) == {"cover"}, key


def test_a_thing_adds_its_own() -> None:
    assert covers(layout(RECORD), "hidden-screw.1") == {"foot"}


def test_nothing_stops_what_would_be_inherited() -> None:
    assert covers(layout(RECORD), "chip") == set()


def test_a_cover_does_not_hide_what_is_its_own() -> None:
    asked = layout(RECORD)
    assert covers(asked, "cover-screws.1") == set()
    assert covers(asked, "cover-lead") == set()  # it hangs on the cover that is lifted
    assert covers(asked, "lamp-lead") == {"cover"}  # ends inside, at the board


def test_a_part_does_not_lie_behind_what_rides_on_it() -> None:
    asked = layout(RECORD)
    assert covers(asked, "coil") == {"shield"}
    assert covers(asked, "hood") == set()  # a cover of the coil itself, beside the shield
    assert covers(asked, "hood-screw.1") == set()


def test_covers_that_lie_behind_each_other_come_to_an_end() -> None:
    asked = layout("""
        base: frame
        parts:
          frame: Frame
          left: {name: Left, behind: right}
          right: {name: Right, behind: left}
    """)
    assert covers(asked, "left") == {"right"}
    assert covers(asked, "right") == {"left"}
