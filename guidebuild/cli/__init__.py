"""Floor 7: the command line, one file a command."""
