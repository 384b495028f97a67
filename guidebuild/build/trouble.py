"""What stops a command through no fault of ours: a folder that is not there, a place that can't be written."""


class Trouble(Exception):
    """Wrong use, in one sentence that says what to do; the command ends with exit code 2."""
