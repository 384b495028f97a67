"""What a new guide may be for, in the words of its front matter."""

GOALS = ("replace", "remove", "add", "inspect", "clean", "adjust")
