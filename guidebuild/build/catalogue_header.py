"""What a catalogue says of itself: what it is for, of which source, when that was taken out, whom to ask about it."""

import re
from collections.abc import Mapping
from datetime import UTC, datetime

from guidebuild.guide.settings import Settings
from guidebuild.translate.po.header import ASK, LANGUAGE, MADE, REVISED, SOURCE_FILE, SOURCE_HASH

NOBODY = "none"  # PO's own word for a language that no team looks after


def header(
    before: Mapping[str, str], issue: str, file: str, source: str, language: str, settings: Settings
) -> dict[str, str]:
    """The lines that are ours. `issue`: number and issue of a guide, or empty; `source`: its checksum.

    The date is that of the source as it is: it changes when the source does and never else, so that taking
    out twice gives the same bytes. A translator's own lines (who, when) are not ours to write.
    """
    made = before.get(MADE) if before.get(SOURCE_HASH) == source else None
    return {
        "Project-Id-Version": f"{issue} {file}" if issue else f"{file} {source[:8]}",
        **_help_line(settings),
        MADE: made or _now(),
        "Language-Team": before.get("Language-Team") or NOBODY,
        LANGUAGE: language.replace("-", "_"),
        "MIME-Version": "1.0",
        "Content-Type": "text/plain; charset=UTF-8",
        "Content-Transfer-Encoding": "8bit",
        SOURCE_FILE: file,
        SOURCE_HASH: source,
    }


def revised(now: Mapping[str, str], before: Mapping[str, str]) -> dict[str, str]:
    """The header of a catalogue that took something in; the date is the translator's, if the file told one."""
    told = now.get(REVISED)
    return {**now, REVISED: told if told and told != before.get(REVISED) else _now()}


def _help_line(settings: Settings) -> dict[str, str]:
    """Where a translator asks: an address or a page as it is, a telephone number as RFC 3966 writes it."""
    said = settings.help_line.text if settings.help_line else ""
    number = re.sub(r"[\s().-]", "", said)
    if "@" in said or said.startswith(("https://", "http://")):
        return {ASK: said}
    return {ASK: f"tel:{number}"} if re.fullmatch(r"\+?\d{3,}", number) else {}


def _now() -> str:
    return f"{datetime.now(UTC):%Y-%m-%d %H:%M%z}"
