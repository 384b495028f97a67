"""Floor 5: a check's findings in a form that somebody reads, one file a report.

A report is a file here with a docstring and `render(report, look) -> str`; it is found by its file name.
What several of them share lies in `parts`.
"""
