"""guidebuild: write, prove and hand over service procedures."""

__version__ = "0.1.0"
