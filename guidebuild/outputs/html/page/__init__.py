"""What stands on a guide's page, as plain values: small functions from the proof to view models.

A template shows these values and decides nothing.
"""
