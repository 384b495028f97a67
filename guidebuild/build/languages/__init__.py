"""The rules about translations, run on a guide and on what no guide is, in every language of the settings."""
