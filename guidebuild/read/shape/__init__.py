"""YAML nodes into values, as the schemas in `schema/` say."""
