"""Floor 0: the author's text, places in it, findings about it, edits to it."""
