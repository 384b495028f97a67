"""What must come off for what, in which order: closure, cheapest order, drafts."""
