"""`material`: one that no act implies; read as a tool is."""

from guidebuild.read.guide.blocks.tool import read

__all__ = ["read"]
