"""XLIFF 2.0 to 2.2 core, as strict as the standard: one file a kind of rule, each refusal with its place.

Source of every rule: OASIS, XLIFF Version 2.1 (sections 4.2 to 4.8, "Constraints" and "Processing").
"""
