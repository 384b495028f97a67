"""What CLDR says of numbers and plurals in each language: an extract of a few kilobytes, and its reading.

Source: Unicode CLDR 47, taken out of babel 2.18.0 into `locales.csv` (fields `decimal`, `group`, `percent`
of the Latin digits, the default digits, the plural rules in babel's spelling of UTS 35). The tests hold it
against babel itself.
"""
