"""What the tool itself says to a reader: one TOML file a language, and the sayer that fills it.

A message is a whole sentence with `{placeholders}`, or a table of CLDR plural categories of one, chosen by
`{count}`. A key is where the message stands: `act.part.remove`. English is written first and has every key;
what another language lacks is said in English.
"""
