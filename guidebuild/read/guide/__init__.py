"""Guides and shared stages: sections, typed blocks and front matter into the values of `guide/`."""
