"""Broken and hostile input: a clear finding at its place, no traceback, bounded time and memory."""
