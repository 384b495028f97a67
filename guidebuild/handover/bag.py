"""A tree of files as a bag, for archives that ask for one.

Source: RFC 8493, The BagIt File Packaging Format (V1.0): `bagit.txt`, `bag-info.txt`, the payload under `data/`,
manifests of payload and tag files; CR, LF and % in names are percent-encoded.
"""

import hashlib
from collections.abc import Mapping


def bagged(files: Mapping[str, bytes], info: Mapping[str, str]) -> dict[str, bytes]:
    """Path -> bytes of the whole bag; `info` is what `bag-info.txt` says beside the payload's size."""
    payload = {f"data/{path}": data for path, data in sorted(files.items())}
    size = sum(len(data) for data in payload.values())
    lines = {**info, "Payload-Oxum": f"{size}.{len(payload)}"}
    tags = {
        "bagit.txt": b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n",
        "bag-info.txt": "".join(f"{name}: {value}\n" for name, value in lines.items()).encode(),
        "manifest-sha256.txt": _manifest(payload),
    }
    return {**payload, **tags, "tagmanifest-sha256.txt": _manifest(tags)}


def _manifest(files: Mapping[str, bytes]) -> bytes:
    lines = [
        f"{hashlib.sha256(data).hexdigest()}  {_encoded(path)}\n"
        for path, data in sorted(files.items())
    ]
    return "".join(lines).encode()


def _encoded(path: str) -> str:
    return path.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")
