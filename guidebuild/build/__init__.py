"""Floor 6: content in, findings or a site out; settings, allows, and the one place where rules are run."""
