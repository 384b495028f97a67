"""Files to start from: records, kits and guides that pass the checks, with comments that say what comes next."""
