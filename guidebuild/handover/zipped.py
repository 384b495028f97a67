"""A tree of files as one zip: the same bytes for the same files, on any machine."""

import io
import zipfile
from collections.abc import Mapping

from guidebuild.handover.manifest import NAME, write_manifest

_TIME = (1980, 1, 1, 0, 0, 0)  # the earliest that a zip can say
_PACKED = {".png", ".jpg", ".jpeg", ".webp", ".webm", ".mp4", ".woff2", ".zip"}


def zipped(files: Mapping[str, bytes], sums: Mapping[str, str]) -> bytes:
    """The zip's bytes: the files sorted by path, and their manifest, which lets it be verified once unpacked."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        for path, data in sorted({**files, NAME: write_manifest(sums)}.items()):
            info = zipfile.ZipInfo(path, _TIME)
            info.create_system = 3
            info.external_attr = 0o644 << 16
            packed = any(path.endswith(ending) for ending in _PACKED)
            info.compress_type = zipfile.ZIP_STORED if packed else zipfile.ZIP_DEFLATED
            archive.writestr(info, data, compresslevel=9)
    return out.getvalue()
