"""A whole XLIFF file: its tree if it keeps every rule, else all its faults in the order of the file."""

from guidebuild.translate.fault import Fault
from guidebuild.translate.xliff.code_rules import check_codes
from guidebuild.translate.xliff.document_rules import check_document
from guidebuild.translate.xliff.id_rules import check_ids
from guidebuild.translate.xliff.order_rules import check_order
from guidebuild.translate.xliff.reference_rules import check_references
from guidebuild.translate.xliff.shape_rules import check_shapes
from guidebuild.translate.xliff.tree import Element, read_tree

_RULES = (check_ids, check_codes, check_order, check_references, check_document)


def read_xliff(text: str) -> tuple[Element | None, list[Fault]]:
    """The root element and no fault, or no element and the faults. Never raises on a user's file.

    Shape comes first: what stands in the wrong place is not asked for its meaning.
    """
    root, fault = read_tree(text.removeprefix("\ufeff"))
    if root is None or fault is not None:
        return None, [fault] if fault else []
    faults = list(check_shapes(root))
    if not faults:
        faults = [fault for rule in _RULES for fault in rule(root)]
    return (None if faults else root), sorted(faults)
