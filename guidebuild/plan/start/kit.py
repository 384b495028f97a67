"""A kit to start from."""

from collections.abc import Sequence

from guidebuild.plan.draft.markdown import flow


def kit(id_: str, name: str, brings: str, number: str, used_up: Sequence[str] = ()) -> str:
    """The text of a kit's file, with comments on what may be added. `used_up`: what has to be new with the part."""
    materials = flow(dict.fromkeys(used_up, 1)) if used_up else "{cover-seal: 1, alcohol-wipe: 2}"
    return f"""\
# What is sold or handed out together.
kit: {id_}
name: {flow(name, inside=False)}
brings: {brings}                       # the part (or a list) that it replaces
part-number: {flow(number, inside=False) if not number.isdigit() else f'"{number}"'}
arrives-with: []                       # parts and screws of the record that are on the new unit already
{"" if used_up else "# "}materials: {materials}     # single-use things of the record, and what is used up
# tools: [tx8-driver]                  # only what comes in the box
# take-off: {{film: Protective film}}    # what must be off the new unit at the end
# inspect: [The contacts are bright and flat.]
# In several forms: `forms: {{bare: {{...}}, complete: {{...}}}}` instead of the number above.
"""
