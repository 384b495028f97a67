"""CommonMark into sections, blocks and prose, every run of text with its place."""
