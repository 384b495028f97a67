"""`guidebuild explain fastener`: the schemas and the samples say enough to be read as words."""

import pytest

from guidebuild.read.shape.topics import Topic, topic, topic_names

TOPICS = [topic(name) for name in topic_names()]


def test_each_block_and_each_part_of_a_record_can_be_asked_for() -> None:
    assert {"fastener", "stage", "guide", "kit", "fasteners", "hazards"} <= set(topic_names())


@pytest.mark.parametrize("one", TOPICS, ids=[one.name for one in TOPICS])
def test_each_key_is_told_in_words_and_an_example_stands_beside(one: Topic) -> None:
    assert one.about
    assert one.example, "schema/samples shows nothing of it"
    assert one.keys or one.name == "functions"  # their keys are all the author's own
    assert [key.name for key in one.keys if not key.takes or not key.about] == []


def test_an_act_is_told_from_what_may_stand_beside_it() -> None:
    keys = {key.name: key for key in topic("fastener").keys}
    assert keys["refit"].acts
    assert not keys["torque"].acts
    assert (keys["torque"].about, keys["sequence"].takes) == (
        "Where it differs from the record's: a first pass.",
        "`cross` or `listed`",
    )
