"""What is in a configuration at all."""

from tests.device.records import layout

RECORD = """
    base: frame
    options:
      revision: {ask: Which letter?, values: {a: "A", b: "B"}}
    parts:
      frame: Frame
      bracket: {name: Bracket, when: revision = b}
      lamp: {name: Lamp, mounted-on: bracket}
      board: Board
    fasteners:
      bracket-screws: {holds: bracket, screw: M3x6 pan PH1, torque: not-known, holes: 2}
      clamp-screw: {holds: [bracket, board], screw: M3x6 pan PH1, torque: not-known, holes: 1}
    stores:
      spring: {kind: spring, in: lamp}
"""
EVERYWHERE, ONLY_B = 0b11, 0b10


def test_a_part_is_there_where_its_host_is() -> None:
    where = layout(RECORD).presence.where
    assert where["bracket"] == where["lamp"] == ONLY_B
    assert where["board"] == EVERYWHERE


def test_a_screw_is_there_where_it_has_two_parts_to_tie() -> None:
    where = layout(RECORD).presence.where
    assert where["bracket-screws.1"] == ONLY_B
    assert where["clamp-screw.1"] == EVERYWHERE  # board and frame are left


def test_a_store_is_there_where_its_part_is() -> None:
    where = layout(RECORD).presence.where
    assert where["spring"] == ONLY_B
    assert where["device"] == EVERYWHERE


def test_hundreds_of_hosts_on_each_other_are_no_trouble() -> None:
    parts = ["parts:", "  frame: Frame", "  part-0: Part 0"]
    parts += [f"  part-{n}: {{name: Part {n}, mounted-on: part-{n - 1}}}" for n in range(1, 800)]
    asked = layout("base: frame\n" + "\n".join(parts) + "\n")
    assert asked.presence.where["part-799"] == 1
    assert len(asked.hosts.chains("part-799")[0].parts) == 801
