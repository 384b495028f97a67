"""What earlier checks found, by the content of all that went into it; never trusted when damaged."""
