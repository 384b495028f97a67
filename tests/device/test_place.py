"""Where the hand goes, and what lies on the way between two parts."""

from guidebuild.device.between import Path
from tests.device.records import layout, places

RECORD = """
    base: frame
    options:
      revision: {ask: Which letter?, values: {a: "A", b: "B"}}
    parts:
      frame: Frame
      wall: {name: Wall, mounted-on: nothing}
      board: Board
      card: {name: Card, mounted-on: board}
      shield: {name: Shield, mounted-on: board, when: revision = b}
      lid: Lid
    fasteners:
      card-screw: {holds: card, into: frame, screw: M3x6 pan PH1, torque: not-known, holes: 1}
      clamp: {holds: [shield, card], into: board, screw: M3x6 pan PH1, torque: not-known, holes: 1}
    connectors:
      card-lead: {joins: [card, board], name: Card lead}
      lid-lead: {joins: [lid, board], at: lid, name: Lid lead}
    joints:
      lid-clip: {kind: clip, joins: [lid, frame]}
    stores:
      charge: {kind: charge, in: board}
      far-charge: {kind: charge, in: board, at: lid}
"""


def test_each_kind_has_its_usual_place() -> None:
    asked = layout(RECORD)
    assert places(asked, "card") == ["board"]  # a part's is its host
    assert places(asked, "card-screw.1") == ["card"]  # a fastener's the first part that it holds
    assert places(asked, "card-lead") == ["board"]  # a connector's the last that it joins
    assert places(asked, "lid-clip") == ["lid"]  # a joint's the first
    assert places(asked, "charge") == ["board"]  # a store's the part that it is in


def test_the_record_may_say_another_place() -> None:
    asked = layout(RECORD)
    assert places(asked, "lid-lead") == ["lid"]
    assert places(asked, "far-charge") == ["lid"]


def test_the_base_and_the_switch_are_in_no_place() -> None:
    asked = layout(RECORD)
    assert places(asked, "frame") == places(asked, "device") == places(asked, "wall") == []


def test_a_part_that_a_unit_lacks_is_no_place_there() -> None:
    asked = layout(RECORD)
    assert asked.places.of("clamp.1") == (("shield", 0b10), ("card", 0b01))


def test_between_two_parts_lies_all_but_where_they_meet() -> None:
    between = layout(RECORD).between
    assert between.paths("card", "lid") == (Path(0b11, ("card", "board", "lid")),)
    assert between.paths("card", "board") == (Path(0b11, ("card",)),)
    assert between.paths("board", "board") == (Path(0b11, ()),)


def test_what_stands_on_its_own_is_apart_for_good() -> None:
    (path,) = layout(RECORD).between.paths("board", "wall")
    assert path.apart


def test_hosts_that_go_round_in_a_circle_come_to_an_end() -> None:
    asked = layout("""
        base: frame
        parts:
          frame: Frame
          left: {name: Left, mounted-on: right}
          right: {name: Right, mounted-on: left}
    """)
    assert asked.hosts.chains("left")[0].parts == ("left", "right")
    assert asked.hosts.carried("left") == ("right",)
    assert asked.between.paths("left", "frame")[0].apart
