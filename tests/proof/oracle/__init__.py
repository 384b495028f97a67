"""The plain, slow simulator of one configuration: what `prove` says of all at once must agree with it.

Nothing here knows bits or shortcuts, and nothing is taken from `guidebuild.proof` but the names of the needs.
"""
