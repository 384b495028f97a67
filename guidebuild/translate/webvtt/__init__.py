"""WebVTT by the W3C's parsing rules: what a browser shows, and what it drops, exactly."""
