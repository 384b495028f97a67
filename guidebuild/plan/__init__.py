"""Floor 5: what must come off for a part, in the cheapest order, and the way back.

`tasks.py` lists all that could be opened and asks the record, with the static questions that the proof asks
(what hides, what holds, what guards, what feeds), what each needs first. That is a precedence graph with
alternatives: `graph.py`. `choose.py` settles the alternatives, `order.py` finds the cheapest order by dynamic
programming over down-sets, `counting.py` counts states and orders. `taking.py` puts these together for one or
several parts; `putting.py` turns the result round. Nothing here writes words: that is `writing/`.
"""
