"""The blocks of a step that are no acts: one file each, found by its name; each offers `read`."""
