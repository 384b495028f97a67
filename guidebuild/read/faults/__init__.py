"""What may be wrong with an author's text before anything is proved: one file a fault."""
