"""The rules about translations: one file a check, each with its words, found by its name as rules are."""
