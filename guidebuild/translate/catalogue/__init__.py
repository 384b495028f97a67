"""A source and its catalogue over time: what still holds, what went out of date, and how."""
