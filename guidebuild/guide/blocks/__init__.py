"""The typed blocks of a step: one file a block."""
