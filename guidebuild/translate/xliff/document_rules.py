"""What holds for the document as a whole: languages, states, the skeleton, validation rules."""

from collections.abc import Iterator

from guidebuild.translate.fault import Fault
from guidebuild.translate.xliff.tree import XML, Element

_VALIDATION = "urn:oasis:names:tc:xliff:validation:2.0"
_TESTS = ("isPresent", "isNotPresent", "startsWith", "endsWith")


def check_document(root: Element) -> Iterator[Fault]:
    """Faults of languages, states and skeletons."""
    yield from _languages(root)
    for segment in root.core_within("segment"):
        yield from _state(segment)
    for skeleton in root.core_within("skeleton"):
        filled = bool("".join(one if isinstance(one, str) else "x" for one in skeleton.children))
        if filled == ("href" in skeleton.attributes):
            yield skeleton.fault("skeleton", "a skeleton is either in the file or named by `href`")
    for element in root.walk():
        if element.space == _VALIDATION and element.name == "rule":
            yield from _validation(element)


def _languages(root: Element) -> Iterator[Fault]:
    wanted = {"source": root.get("srcLang"), "target": root.get("trgLang")}
    for part in root.core_within("segment", "ignorable"):
        for text in part.elements:
            language = wanted.get(text.name, "")
            if not language:
                yield text.fault("target-language-missing", "there is a target, but no `trgLang`")
                continue
            said = _inherited(text).lower()
            if said and said != language.lower() and not said.startswith(f"{language.lower()}-"):
                message = f"`xml:lang` says `{said}` where the document says `{language}`"
                yield text.fault("language-differs", message)


def _inherited(element: Element) -> str:
    """`xml:lang` as XML hands it down."""
    here: Element | None = element
    while here is not None:
        if f"{{{XML}}}lang" in here.attributes:
            return here.get(f"{{{XML}}}lang")
        here = here.parent
    return ""


def _state(segment: Element) -> Iterator[Fault]:
    state = segment.get("state")
    if state not in ("", "initial") and not any(one.name == "target" for one in segment.elements):
        yield segment.fault(
            "state-without-target", f"the state is `{state}`, but there is no target"
        )
    if "subState" in segment.attributes and not state:
        yield segment.fault("sub-state-without-state", "`subState` stands without `state`")


def _validation(rule: Element) -> Iterator[Fault]:
    tests = [name for name in _TESTS if name in rule.attributes]
    others = [name for name in rule.attributes if name.startswith("{")]
    if len(tests) + bool(others and not tests) != 1:
        yield rule.fault("validation-rule", "a validation rule tests one thing")
    if "occurs" in rule.attributes and "isPresent" not in rule.attributes:
        yield rule.fault("validation-rule", "`occurs` counts what `isPresent` names")
