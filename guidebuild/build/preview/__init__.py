"""A local page of the guides that follows every save, and writes the places that are clicked into the record.

`pages.py` builds and watches, `server.py` answers on the loopback address only, `place.py` changes one value in the
author's text. What may write: a page that this server gave out itself, by its token, its origin and its host.
"""
