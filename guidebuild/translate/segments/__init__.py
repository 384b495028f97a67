"""What a translator gets: the author's sentences, each with a stable id, and the way back into the guide."""
