"""Captions into a WebVTT file: the same bytes for the same captions, and nothing that a reader drops."""

from guidebuild.translate.webvtt.cue import Captions, Cue, Region
from guidebuild.translate.webvtt.timing import write_stamp


def write_webvtt(captions: Captions) -> str:
    """The file's text, LF line ends, one at its end. What `read_webvtt` gives of it is `captions` again.

    An empty line inside a cue would end it, and `-->` would start another: both are written so that they
    can't (a cue's text with them never comes from a reader, only from a translator).
    """
    head = "WEBVTT" + (f" {captions.header}" if captions.header else "")
    blocks = [head]
    blocks += [f"STYLE\n{style}" for style in captions.styles]
    blocks += [_region(region) for region in captions.regions]
    blocks += [_cue(cue) for cue in captions.cues]
    return "\n\n".join(blocks) + "\n"


def _region(region: Region) -> str:
    anchor, viewport = region.anchor, region.viewport
    lines = [
        "REGION",
        f"id:{region.id}",
        f"width:{region.width:g}%",
        f"lines:{region.lines}",
        f"regionanchor:{anchor[0]:g}%,{anchor[1]:g}%",
        f"viewportanchor:{viewport[0]:g}%,{viewport[1]:g}%",
    ]
    return "\n".join(lines + (["scroll:up"] if region.scroll else []))


def _cue(cue: Cue) -> str:
    times = f"{write_stamp(cue.start)} --> {write_stamp(cue.end)}"
    head = [cue.id] if cue.id else []
    text = "\n".join(line for line in cue.text.split("\n") if line).replace("-->", "--&gt;")
    return "\n".join([*head, f"{times} {cue.settings}".rstrip(), *([text] if text else [])])
