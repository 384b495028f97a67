"""What a catalogue says of itself: what it is for, of which source, and when that was taken out."""

from collections.abc import Mapping
from datetime import UTC, datetime

from guidebuild.translate.po.header import MADE, SOURCE_FILE, SOURCE_HASH

NOBODY = "none"  # PO's own word for a language that no team looks after


def header(
    before: Mapping[str, str], issue: str, file: str, source: str, language: str
) -> dict[str, str]:
    """The lines that are ours. `issue`: number and issue of a guide, or empty; `source`: its checksum.

    The date is that of the source as it is: it changes when the source does and never else, so that taking
    out twice gives the same bytes. A translator's own lines (who, when) are not ours to write.
    """
    made = before.get(MADE) if before.get(SOURCE_HASH) == source else None
    return {
        "Project-Id-Version": f"{issue} {file}" if issue else f"{file} {source[:8]}",
        MADE: made or f"{datetime.now(UTC):%Y-%m-%d %H:%M%z}",
        "Language-Team": before.get("Language-Team") or NOBODY,
        "Language": language.replace("-", "_"),
        "MIME-Version": "1.0",
        "Content-Type": "text/plain; charset=UTF-8",
        "Content-Transfer-Encoding": "8bit",
        SOURCE_FILE: file,
        SOURCE_HASH: source,
    }
