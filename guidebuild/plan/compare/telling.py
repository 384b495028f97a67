"""Differences as plain text, and as a page that needs nothing from elsewhere."""

from collections.abc import Sequence
from html import escape

from guidebuild.plan.compare.change import Difference, Touched


def text(one: str, other: str, found: Sequence[Difference]) -> str:
    """A sentence each, with the steps that it touches below."""
    lines = [f"{one} against {other}", ""]
    for each in found:
        lines.append(f"- {each.change.words}")
        lines += [
            f"    {guide}: {', '.join(steps)}" for guide, steps in _by_guide(each.steps).items()
        ]
    if not found:
        lines.append("There is no difference.")
    lines += ["", _summary(found)]
    return "\n".join(lines) + "\n"


def page(one: str, other: str, found: Sequence[Difference]) -> str:
    """The same as one HTML file."""
    rows = "".join(
        f"<tr><td>{escape(each.change.words)}</td><td>{_steps(each.steps)}</td></tr>"
        for each in found
    )
    empty = "" if found else "<p>There is no difference.</p>"
    return f"""<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>{escape(one)} against {escape(other)}</title>
<style>
body {{ font: 1rem/1.4 "Atkinson Hyperlegible", sans-serif; margin: 2rem auto; max-width: 70rem; padding: 0 1rem;
  color: #161616; background: #fdfdf9 }}
table {{ border-collapse: collapse; width: 100% }}
th, td {{ text-align: left; vertical-align: top; padding: .5rem .75rem; border-bottom: 1px solid #c9c9c0 }}
th {{ border-bottom: 2px solid #161616 }}
td:first-child {{ width: 50% }}
h2 {{ font-size: 1rem; margin: 0 }}
ul {{ margin: 0; padding-left: 1.2rem }}
</style></head><body>
<h1>{escape(one)} against {escape(other)}</h1>
<p>{escape(_summary(found))}</p>
{empty}<table><thead><tr><th>What is different</th><th>Steps to look at</th></tr></thead><tbody>{rows}</tbody></table>
</body></html>
"""


def _summary(found: Sequence[Difference]) -> str:
    steps = {(step.path, step.step) for each in found for step in each.steps}
    return f"{_count(len(found), 'difference')}; {_count(len(steps), 'step')} of guides to look at."


def _steps(steps: Sequence[Touched]) -> str:
    return "".join(
        f"<h2>{escape(guide)}</h2><ul>{''.join(f'<li>{escape(one)}</li>' for one in titles)}</ul>"
        for guide, titles in _by_guide(steps).items()
    )


def _by_guide(steps: Sequence[Touched]) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for one in steps:
        found.setdefault(one.guide, []).append(one.title)
    return found


def _count(number: int, word: str) -> str:
    return f"{number} {word}" if number == 1 else f"{number} {word}s"
