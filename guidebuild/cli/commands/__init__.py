"""One file a command: a docstring, `arguments(parser)` and `run(args) -> int`.

The first line of the docstring is what `guidebuild --help` shows. Nothing heavy is imported at the top of a
command's file: that would slow every other command down.
"""
