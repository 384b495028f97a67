"""The proof broken on purpose, one line at a time: the fuzz must notice each."""
