"""Acts said in words, one file a kind of thing."""
