"""YAML texts into nodes, safely, and what YAML would do to an author's sentence."""
