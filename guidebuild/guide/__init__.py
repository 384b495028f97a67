"""Floor 2: a procedure as its author wrote it, and the options that choose a way through it."""
