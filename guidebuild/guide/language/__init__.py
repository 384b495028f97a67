"""How a language builds its sentences, as far as the text rules ask: English first, silence for the rest.

Counting and limits follow public rules of simplified technical writing (restated in public digests; no
dictionary of anybody's is used or shipped). The word lists in `en/` are our own, but where a file says so.
"""
