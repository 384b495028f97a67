"""Floor 1: what a device is made of and what may be asked of it at rest; no file, no Markdown, no HTML."""
