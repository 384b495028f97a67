"""The lines of a catalogue's header in one order, whichever order a tool has left them in."""

from collections.abc import Mapping

# Source: GNU gettext manual, "Filling in the Header Entry": the order in which xgettext writes them.
_ORDER = (
    "Project-Id-Version",
    "Report-Msgid-Bugs-To",
    "POT-Creation-Date",
    "PO-Revision-Date",
    "Last-Translator",
    "Language-Team",
    "Language",
    "MIME-Version",
    "Content-Type",
    "Content-Transfer-Encoding",
    "Plural-Forms",
)
SOURCE_FILE, SOURCE_HASH = "X-Source-File", "X-Source-Hash"
ASK, MADE, REVISED = "Report-Msgid-Bugs-To", "POT-Creation-Date", "PO-Revision-Date"
LANGUAGE = "Language"


def in_order(header: Mapping[str, str]) -> dict[str, str]:
    """The header's lines: those of the standard first, ours and other tools' behind them by name."""
    rest = sorted(name for name in header if name not in _ORDER)
    return {name: header[name] for name in (*_ORDER, *rest) if name in header}
