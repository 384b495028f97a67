"""Floor 5: from a built site to a stick, a zip or a bag, and back: is everything there, unchanged?"""
