"""Inputs for readers: a sound file of each kind with damage, pieces of its own grammar, and plain noise."""

from hypothesis import strategies as st

PO = 'msgid ""\nmsgstr "Language: de\\n"\n\n#, fuzzy\nmsgctxt "a/b"\nmsgid "Open %s"\nmsgstr "Öffnen %s"\n'
XLIFF = (
    '<xliff xmlns="urn:oasis:names:tc:xliff:document:2.0" version="2.0" srcLang="en" trgLang="de">'
    '<file id="f"><unit id="u"><segment><source>A <ph id="1"/></source><target>B <ph id="1"/></target>'
    "</segment></unit></file></xliff>"
)
VTT = "WEBVTT\n\nSTYLE\n::cue{}\n\nREGION\nid:r\n\n1\n00:01.000 --> 00:02.000 align:end line:1%\n<v A>x <i>y</i>\n"
SRT = (
    "1\n00:00:01,000 --> 00:00:02,500\n<i>One</i>\n\n2\n00:00:03,000 --> 00:00:04,000\nTwo\nlines\n"
)
SVG = '<svg viewBox="0 0 9 9"><g id="a"><path d="M0 0l1 1a1 1 0 0 1 2 2z" transform="scale(2)"/></g></svg>'
GUIDE = "---\ntitle: T\ndevice: d\n---\n\n# A\n\n## B\n\n```part\nremove: [x, y]\nwhen: a = b\n```\n\nWords `c` *d*.\n"
RECORD = "device: d\nname: N\nparts: {a: A, b: {name: B, behind: a}}\nfasteners: {s: {holds: a, screw: M2x3 pan PH1}}\n"
SUMS = f"{'0' * 64}  a/b.html\n{'f' * 64} *c\n"
CSV = "stick,date,holder,guide,issue,languages,steps\nTS-01,2026-01-01,bench,guides/a.md,1,en,a=1234\n"
STRIP = (
    "no,part,on,under,held by,to,screw,count,tool,picture,note\n"
    "1,Lid,Base,,screws,,M3x8 pan PH1,4,,a.jpg,x\n2,Fan,Base,Lid,plug,Board,,1,,,\n"
)
REPORT = '{"version": "0.1.0", "findings": [{"rule": "a", "file": "b", "line": 1}]}'
WEBM = bytes.fromhex("1a45dfa3808018538067ff1549a966892ad7b1830f42404489844479f000")
MP4 = b"\0\0\0\x10ftypisom\0\0\0\0" + b"\0\0\0\x08moov" + b"\0\0\0\x6cmvhd" + bytes(100)


_GRAMMAR = [
    '"', "'", "\\", "\n", "\r", "\t", "\0", " ", ":", ": ", "- ", "#", "#~ ", "#| ", "msgid ", "msgstr[1] ", "{", "}",
    "[", "]", "<", ">", "</", "/>", "<!--", "-->", "<![CDATA[", "]]>", "<!DOCTYPE x [", "<!ENTITY a 'b'>", "&a;",
    "&#0;",
    "&amp;", "-->", "00:00:00.000 --> 99:99:99.999", "STYLE\n", "REGION\n", "NOTE\n", "```", "---\n", "***\n", "&a ",
    "*a", "!!x ", "%", "1e999", "-0", "NaN", "∞", "\u2028", "\u202e", "\ud7ff", "\U0001f600", "\ufeff", "z" * 300,
    "9" * 40, "y" * 140_000,
    "M", "a1e9 1e9 0 0 1 9 9", "scale(1e308)", "matrix(", "x" + "\u0301" * 50, ",", ";", "=", "|", "../", "\x1b[2J",
]  # fmt: skip


@st.composite
def damaged(draw: st.DrawFn, whole: str) -> str:
    """A sound text after some of it was lost, doubled, replaced or put in."""
    text = whole
    for _ in range(draw(st.integers(1, 6))):
        at = draw(st.integers(0, len(text)))
        end = min(len(text), at + draw(st.sampled_from([0, 1, 2, 7, 40])))
        piece = draw(st.sampled_from(_GRAMMAR) | st.text(max_size=5) | st.just(text[at:end] * 2))
        text = text[:at] + piece + text[end:]
    return text


def texts(whole: str) -> st.SearchStrategy[str]:
    """Mostly damage; now and then a heap of grammar, or noise."""
    heap = st.lists(st.sampled_from(_GRAMMAR), max_size=40).map("".join)
    return damaged(whole) | damaged(whole) | heap | st.text(max_size=80)


@st.composite
def bits(draw: st.DrawFn, whole: bytes) -> bytes:
    """Bytes after some were changed or lost."""
    data = bytearray(whole)
    for _ in range(draw(st.integers(1, 5))):
        at = draw(st.integers(0, len(data)))
        data[at : at + draw(st.integers(0, 4))] = draw(st.binary(max_size=6))
    return bytes(data)
