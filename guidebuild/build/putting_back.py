"""The second half of a guide, added to the author's own text."""

from guidebuild.build.drafting import guides_of
from guidebuild.build.place import Asked
from guidebuild.build.trouble import Trouble
from guidebuild.plan.draft.markdown import written
from guidebuild.plan.draft.putback import put_back as stages
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content


def put_back(asked: Asked) -> str:
    """The guide as it stands with the stages that are missing; Trouble where it can't be read."""
    content, _ = read_content(asked.root)
    read = next((one for one in content.guides if one.guide.path == asked.within), None)
    if read is None or not read.whole:
        raise Trouble(f"{asked.within} can't be read as a guide yet. `guidebuild check` says why.")
    proof = prove(read.guide, read.device)
    device = read.guide.devices[0].text if len(read.guide.devices) == 1 else ""
    found = stages(proof, guides_of(content, device))
    if not found:
        raise Trouble(f"{asked.within} leaves nothing open: there is nothing to put back.")
    text = content.sources[asked.within].text
    return text.rstrip("\n") + "\n\n" + written(found)
