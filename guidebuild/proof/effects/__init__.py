"""What an act does besides its own change of state: one file a kind of consequence."""
