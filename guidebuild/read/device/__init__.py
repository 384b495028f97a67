"""Device records, kits and what lies beside them, into the values of `device/`."""
