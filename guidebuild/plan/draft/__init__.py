"""A guide written from the record: what comes off and goes back as Markdown that an author goes on with.

`work.py` is an act that will be written; `closing.py` the way back of a list of them; `testing.py` what must be
tried and where; `opening_steps.py` and `closing_steps.py` make steps of acts as a person would cut them;
`titles.py` and `sentences.py` hold the words; `markdown.py` writes it down.
"""
