/* Everything stands: now read the address. */
if (guide) startAddress();
