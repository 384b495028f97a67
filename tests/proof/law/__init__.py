"""What must be true of a device as long as nothing is found."""
