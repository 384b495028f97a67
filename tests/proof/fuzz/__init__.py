"""Random devices, random procedures on them and random mistakes, for the proof to be tried on."""
