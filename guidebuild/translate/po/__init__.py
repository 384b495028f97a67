"""PO catalogues, lossless both ways, and written so that a version control system shows only what changed.

Source of the form: GNU gettext manual, "The Format of PO Files".
"""
