"""A Schematron schema whose tests are XPath 2, run: each pattern becomes a mode of a style sheet, each rule a template.

Source: ISO/IEC 19757-3: in a pattern the first rule whose context fits is the one that counts. No phases, no
abstract rules, no diagnostics: the committee's core schema has the first two not, and the last are only words.
"""

from html import escape
from typing import Any

SCH = "{http://purl.oclc.org/dsdl/schematron}"
XSL = "http://www.w3.org/1999/XSL/Transform"


def style_sheet(schema: Any) -> str:
    """The style sheet of a parsed schema (lxml); its output is one line for each test that fails."""
    spaces = " ".join(
        f'xmlns:{one.get("prefix")}="{one.get("uri")}"' for one in schema.iter(f"{SCH}ns")
    )
    patterns = list(schema.iter(f"{SCH}pattern"))
    calls = "".join(
        f'<xsl:apply-templates select="//node()|//@*" mode="p{number}"/>'
        for number in range(len(patterns))
    )
    templates = "".join(_pattern(one, number) for number, one in enumerate(patterns))
    return (
        f'<xsl:stylesheet version="3.0" xmlns:xsl="{XSL}" {spaces}><xsl:output method="text"/>'
        f'<xsl:template match="/">{calls}</xsl:template>{templates}</xsl:stylesheet>'
    )


def _pattern(pattern: Any, number: int) -> str:
    rules = list(pattern.iter(f"{SCH}rule"))
    nothing = f'<xsl:template match="node()|@*" mode="p{number}" priority="-1"/>'
    return nothing + "".join(
        f'<xsl:template match="{escape(rule.get("context"))}" mode="p{number}"'
        f' priority="{len(rules) - place}">{"".join(map(_said, rule))}</xsl:template>'
        for place, rule in enumerate(rules)
    )


def _said(piece: Any) -> str:
    match piece.tag:
        case tag if tag == f"{SCH}let":
            value = escape(piece.get("value"))
            return f'<xsl:variable name="{piece.get("name")}" select="{value}"/>'
        case tag if tag in (f"{SCH}assert", f"{SCH}report"):
            test = escape(piece.get("test"))
            wrong = f"not({test})" if tag == f"{SCH}assert" else test
            words = escape(" ".join("".join(piece.itertext()).split()))
            return f'<xsl:if test="{wrong}"><xsl:text>{words}&#10;</xsl:text></xsl:if>'
        case _:
            return ""
