"""What is to be said of a site's languages that no finding says: one without pages, one without labels of its own."""

from collections.abc import Iterator, Sequence

from guidebuild.translate.messages.sayer import Sayer


def remarks(built: Sequence[str], wanted: Sequence[str]) -> Iterator[str]:
    """`built`: the languages of the site; `wanted`: those that were asked for by name."""
    for tag in wanted:
        if tag not in built:
            yield (
                f"{tag}: no guide is translated into it, so it has no pages. "
                f"Begin with: guidebuild translate take-out --to {tag}"
            )
    for tag in built:
        if not Sayer(tag).speaks:
            yield f"{tag}: guidebuild has no words of its own in it, so labels and orders are in English."
