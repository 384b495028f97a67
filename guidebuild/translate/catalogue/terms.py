"""Which term of one language stands for which term of another, as `terms.yaml` has them."""

from collections.abc import Mapping

from guidebuild.guide.settings import Terms


def approved(terms: Mapping[str, Terms], source: str, target: str) -> dict[str, str]:
    """Source term -> the target language's approved word `for` it. A word whose `for` is no source term is none."""
    known = terms.get(source, Terms()).approved
    theirs = terms.get(target, Terms()).approved
    return {said.text: word for word, said in theirs.items() if said and said.text in known}
