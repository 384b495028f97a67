"""What reports are made of: the report as a value, a finding as a slip, words and wrapping."""
