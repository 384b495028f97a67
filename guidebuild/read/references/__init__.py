"""Ids looked up: each one that names nothing is told at its place, with the nearest that does."""
