"""The markup, specified by example."""
