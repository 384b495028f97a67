"""Floor 1: what a device is made of and what may be asked of it at rest; knows no file, no Markdown, no HTML."""
