"""Floor 4: authors' files into values. The only room that knows Markdown, YAML and JSON Schema."""
