"""The tree keeps its shape: the fixed top level, small files, names that say something."""

from statistics import median

from tests.repo.tree import ROOT, modules, tracked

TOP = {
    "README.md",
    "DEVELOPERS.md",
    "pyproject.toml",
    "guidebuild",
    "content",
    "schema",
    "themes",
    "tests",
    "site",
}
EMPTY_WORDS = {"utils", "util", "helpers", "helper", "common", "base", "misc"}


def lines(name: str) -> int:
    return len((ROOT / name).read_text(encoding="utf-8").splitlines())


def test_the_top_level_is_the_fixed_one() -> None:
    top = {name.split("/")[0] for name in tracked()}
    assert {name for name in top if not name.startswith(".")} == TOP


def test_of_the_site_only_its_page_is_kept() -> None:
    assert [name for name in tracked() if name.startswith("site/")] == ["site/README.md"]


def test_no_code_file_is_longer_than_400_lines() -> None:
    long = {name: lines(name) for name in tracked() if name.endswith(".py") and lines(name) > 400}
    assert not long


def test_the_typical_file_is_small() -> None:
    sizes = [lines(str(path.relative_to(ROOT))) for path in modules().values()]
    assert median(size for size in sizes if size > 3) <= 100


def test_no_file_has_a_name_that_says_nothing() -> None:
    stems = {name.rsplit("/", 1)[-1].split(".")[0] for name in tracked()}
    assert not stems & EMPTY_WORDS


def test_every_module_says_what_it_is_for() -> None:
    silent = [
        name
        for name, path in modules().items()
        if not path.read_text(encoding="utf-8").lstrip().startswith(('"""', 'r"""'))
    ]
    assert not silent
