"""Floor 4: one file a rule; its name says what is wrong and reads well after `allow`."""
