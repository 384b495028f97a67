"""Floor 5: what a reader gets. One file or folder an output, each with a `make_site`."""
