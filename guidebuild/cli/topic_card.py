"""What may be written in a block, a file or a section of the record, as text for a terminal."""

from collections.abc import Iterable, Iterator

from guidebuild.read.shape.topics import Key, Topic
from guidebuild.reports.parts import words
from guidebuild.reports.parts.wrap import wrap

WIDTH = 80
HANGS = 14  # columns, where what a key takes begins


def topic_card(topic: Topic) -> str:
    """The keys that may stand there, and an example that is right."""
    return "\n\n".join(_sections(topic))


def _sections(topic: Topic) -> Iterator[str]:
    kind = f"{topic.kind}: {words.sentence(topic.title)}" if topic.title else topic.kind
    yield f"{topic.name}\n" + "\n".join(f"    {line}" for line in wrap(kind, WIDTH - 4))
    if topic.about:
        yield "\n".join(wrap(topic.about, WIDTH))
    acts = [key for key in topic.keys if key.acts]
    must = [key for key in topic.keys if key.must and not key.acts]
    may = [key for key in topic.keys if not key.must and not key.acts]
    for title, keys in (("One of these", acts), ("Always", must), ("As needed", may)):
        if keys:
            yield f"{title}\n{_table(keys)}"
    yield "An example\n\n" + "\n".join(
        f"    {line}".rstrip() for line in topic.example.splitlines()
    )


def _table(keys: Iterable[Key]) -> str:
    return "\n".join(line for key in keys for line in _row(key))


def _row(key: Key) -> Iterator[str]:
    said = wrap(f"{key.about} {words.sentence(key.takes)}".strip(), WIDTH - 4 - HANGS)
    name = f"{key.name}:"
    if len(name) < HANGS:
        yield f"    {name.ljust(HANGS)}{said[0]}"
        said = said[1:]
    else:
        yield f"    {name}"
    for line in said:
        yield " " * (4 + HANGS) + line
