"""Floor 3: the device taken apart in memory, in every configuration at once, and what that showed."""
