"""Floor 4: the tool's own words in each language, the catalogues of translators, and captions."""
