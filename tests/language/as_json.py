"""A YAML text as the plain values that a JSON Schema is asked about, and plain values as YAML."""

from typing import Any

import yaml
from jsonschema import Draft202012Validator
from referencing import Registry, Resource

from guidebuild.read.shape.schema import document

_HOST = "file:///schema/"


def plain(node: Any) -> Any:
    """A node without types of YAML's own: every scalar is a string, an empty one null."""
    if isinstance(node, yaml.ScalarNode):
        return None if not node.value and not node.style else node.value
    if isinstance(node, yaml.SequenceNode):
        return [plain(one) for one in node.value]
    return {str(plain(key)): plain(value) for key, value in node.value}


def as_yaml(value: Any) -> str:
    """Plain values in brackets, every string in quotes, so that no trap can snap."""
    match value:
        case None:
            return ""
        case dict():
            inside = ", ".join(f"{_quoted(key)}: {as_yaml(one)}" for key, one in value.items())
            return "{" + inside + "}"
        case list():
            return (
                "[" + ", ".join(as_yaml(one) or '""' for one in value) + "]"
            )  # nothing can't stand there
        case _:
            return _quoted(value)


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n") + '"'


def _retrieve(uri: str) -> Resource[Any]:
    name = uri.removeprefix(_HOST).removesuffix(".schema.json")
    return Resource.from_contents(document(name))


def validator(name: str) -> Draft202012Validator:
    """The jsonschema package's own judge of a schema of ours."""
    reference = {"$ref": f"{_HOST}{name}.schema.json"}
    registry: Registry[Any] = Registry(retrieve=_retrieve)  # type: ignore[call-arg]
    return Draft202012Validator(reference, registry=registry)
