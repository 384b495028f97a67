"""The walk through a guide: acts, checks, steps, where ways part and meet, and the ways back from remedies."""
