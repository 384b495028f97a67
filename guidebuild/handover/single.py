"""A guide as one HTML file: style, script, fonts and pictures inside it, for a phone that opens one file alone.

Source: a phone's file managers hand a browser one `content:` file and none of its neighbours (measured, in the
reference on offline pages). An inline script and style are let in by their own checksum, as CSP Level 2 has it.
"""

import base64
import hashlib
import posixpath
import re
from collections.abc import Callable, Mapping

_STYLE = re.compile(r'<link rel="stylesheet" href="([^"]+)">')
_SCRIPT = re.compile(r'<script src="([^"]+)"(?: defer)?></script>')
_PICTURE = re.compile(
    r'(<(?:img|source|video|track|a class="enlarge")\b[^>]*?\s(?:src|href|poster))="([^"#]+)(#[^"]*)?"'
)
# of a picture in several sizes and formats the one stays that every browser shows
_SET = re.compile(r'<source\b[^>]*\ssrcset="[^"]*"[^>]*>|\s(?:srcset|sizes)="[^"]*"')
_TONGUE = re.compile(r'(<a\b[^>]*?\sdata-elsewhere="[^"]*"[^>]*?)\shreflang="[^"]*"')
_LINK = re.compile(r'(<a\b[^>]*?\shref)="([^"#]*)(#[^"]*)?"')
_URL = re.compile(r'url\("([^"#:]+)"\)')
_POLICY = re.compile(r'(<meta http-equiv="Content-Security-Policy" content=")[^"]*(">)')
_TYPES = {
    ".ttf": "font/ttf",
    ".woff2": "font/woff2",
    ".svg": "image/svg+xml",
    ".jpg": "image/jpeg",
    ".png": "image/png",
    ".webp": "image/webp",
    ".webm": "video/webm",
    ".mp4": "video/mp4",
    ".vtt": "text/vtt",
}


def single(path: str, files: Mapping[str, bytes]) -> bytes:
    """The page at a site path with everything that it needs inside; KeyError where the site lacks a file of it.

    Links to other pages of the site are taken off, their words stay: there is nothing beside this file.
    """
    page = files[path].decode()
    near = _resolver(path)
    sums: dict[str, list[str]] = {"style": [], "script": []}

    def style(found: re.Match[str]) -> str:
        sheet = near(found[1])
        inside = _resolver(sheet)
        text = _URL.sub(lambda url: f'url("{_data(inside(url[1]), files)}")', files[sheet].decode())
        sums["style"].append(_sum(text))
        return f"<style>{text}</style>"

    def script(found: re.Match[str]) -> str:
        text = files[near(found[1])].decode().replace("</script", "<\\/script")
        sums["script"].append(_sum(text))
        return f"<script>{text}</script>"

    page = _SET.sub("", page)
    page = _PICTURE.sub(lambda found: _inside(found, near, files), page)
    page = _LINK.sub(lambda found: _link(found, path, near, files), page)
    page = _TONGUE.sub(r"\1", page)
    page = _STYLE.sub(style, page)
    page = _SCRIPT.sub(script, page)
    return _POLICY.sub(lambda found: found[1] + _policy(sums) + found[2], page).encode()


def _resolver(path: str) -> Callable[[str], str]:
    folder = posixpath.dirname(path)
    return lambda link: posixpath.normpath(posixpath.join(folder, link))


def _data(path: str, files: Mapping[str, bytes]) -> str:
    kind = _TYPES.get(posixpath.splitext(path)[1].lower(), "application/octet-stream")
    return f"data:{kind};base64,{base64.b64encode(files[path]).decode()}"


def _inside(found: re.Match[str], near: Callable[[str], str], files: Mapping[str, bytes]) -> str:
    if found[2].startswith("data:"):
        return found[0]
    return (
        f'{found[1]}="{_data(near(found[2]), files)}{found[3] or ""}"'  # the times of a film stay
    )


def _link(
    found: re.Match[str], path: str, near: Callable[[str], str], files: Mapping[str, bytes]
) -> str:
    """A link in the page stays; one to another page becomes a place that leads nowhere."""
    if found[2].startswith("data:") or (not found[2] and found[3]):
        return found[0]
    target = near(found[2]) if found[2] else path
    if target == path:
        return f'{found[1]}="{found[3] or "#top"}"'
    return found[1].removesuffix(" href") + ' data-elsewhere="' + posixpath.basename(target) + '"'


def _sum(text: str) -> str:
    return "'sha256-" + base64.b64encode(hashlib.sha256(text.encode()).digest()).decode() + "'"


def _policy(sums: Mapping[str, list[str]]) -> str:
    style, script = " ".join(sums["style"]) or "'none'", " ".join(sums["script"]) or "'none'"
    return (
        f"default-src 'none'; script-src {script}; style-src {style}; font-src data:; img-src data:; "
        "media-src data:; connect-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'"
    )
