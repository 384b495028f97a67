"""The end of a guide: how each thing must be, and what surely is not so."""
