"""The acts of a proof in one configuration, in order, as far as nothing was found."""

from collections.abc import Iterator

from guidebuild.proof.proof import Proof, Snapshot


def clean_moments(proof: Proof, number: int) -> Iterator[Snapshot]:
    """The device before each act and after each step of the main way, up to the first step with a finding."""
    spoilt = {one.step.id for one in proof.unmet if one.where >> number & 1}
    spoilt |= {one.step.id for one in proof.partings if one.where >> number & 1}
    for passage in proof.passages:
        if passage.stage.remedy is None and passage.shown >> number & 1:
            if passage.step.id in spoilt:
                return
            for walked in passage.walked:
                if walked.where >> number & 1:
                    yield walked.before
            yield passage.after
