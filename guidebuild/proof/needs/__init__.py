"""What an act needs before it can be done: one file a need, asked in the order of `order.py`."""
