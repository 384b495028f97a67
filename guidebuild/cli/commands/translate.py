"""Give a guide to translators and take it back.

guidebuild translate take-out --to de       catalogues in translations/de, ready to be filled in
guidebuild translate take-out --to fr --format xliff --out FOLDER     one XLIFF 2.1 file each
guidebuild translate bring-back FILE...     check what came back, and take it if all of it is right
guidebuild translate status                 what is translated, outdated and missing, in words to pay for
guidebuild translate tidy                   catalogues that another program wrote, as we write them
"""

from argparse import SUPPRESS, ArgumentParser, Namespace
from itertools import groupby
from operator import itemgetter
from pathlib import Path
from typing import TYPE_CHECKING

from guidebuild.cli import asking, codes

if TYPE_CHECKING:
    from guidebuild.build.bring_back import Returned
    from guidebuild.guide.content import Content
    from guidebuild.source.finding import Finding
    from guidebuild.translate.catalogue.bring import Status

FORMATS = ("po", "xliff", "xliff-1.2")


def arguments(parser: ArgumentParser) -> None:
    """What `translate` takes."""
    each = parser.add_subparsers(dest="what", metavar="WHAT", required=True)
    out = each.add_parser("take-out", help="write what is to be translated")
    out.add_argument("--to", required=True, metavar="LANGUAGE", help="a tag such as de or pt-BR")
    out.add_argument("--format", choices=FORMATS, default="po", help="usual: po")
    out.add_argument("--out", metavar="FOLDER", help="where to (usual for po: translations/)")
    back = each.add_parser("bring-back", help="check what came back, and take it")
    back.add_argument("files", nargs="+", metavar="FILE")
    status = each.add_parser("status", help="how far each language is")
    tidy = each.add_parser("tidy", help="write catalogues as we do")
    back.add_argument("--content", metavar="FOLDER", dest="path", help="usual: content")
    for one in (out, status, tidy):
        one.add_argument("path", metavar="PATH", nargs="?", help="content folder (usual: content)")
        one.add_argument(
            "--content", metavar="FOLDER", dest="path", default=SUPPRESS, help=SUPPRESS
        )
    for one in (out, back, status, tidy):
        one.add_argument("--trace", action="store_true", help="tell all of a fault of ours")


def run(args: Namespace) -> int:
    """Do it, and say in a line what was done; a refused file is a finding, a style remark on a taken one is none."""
    root = asking.whole(args.path).root
    if args.what == "tidy":
        return _tidy(root)
    from guidebuild.read.content import read_content

    content, _ = read_content(root)
    if args.what == "take-out":
        return _take_out(root, content, args)
    if args.what == "bring-back":
        return max(_bring_back(root, content, Path(name)) for name in args.files)
    return _status(root, content)


def _take_out(root: Path, content: "Content", args: Namespace) -> int:
    from guidebuild.build.take_out import take_out

    out = Path(args.out) if args.out else None
    taken = take_out(root, content, args.to, args.format, out)
    for name, state in taken.files.items():
        print(
            f"{name}: {state.total} texts, {state.fresh} translated, {state.words_to_do} words to do"
        )
    _tell(taken.findings, content)
    return codes.FINDINGS if taken.findings else codes.CLEAN


def _bring_back(root: Path, content: "Content", path: Path) -> int:
    from guidebuild.build.bring_back import bring_back
    from guidebuild.build.trouble import Trouble

    try:
        returned = bring_back(root, content, path)
    except OSError as error:
        raise Trouble(f"Can't read {path}: {error.strerror}.") from error
    _tell(returned.findings, content)
    print(_summary(returned))
    return codes.FINDINGS if returned.refused else codes.CLEAN


def _summary(returned: "Returned") -> str:
    done = returned.brought
    if done is None:
        return f"{returned.name}: refused. Nothing was changed; mend it and bring it back again."
    parts = [
        (done.older, "made for an older source, kept as outdated"),
        (done.known, "known already"),
        (done.empty, "not translated"),
        (len(done.gone), "whose sentence is gone"),
    ]
    told = [f"{done.taken} taken", *(f"{count} {what}" for count, what in parts if count)]
    return f"{returned.name}, for {returned.file} in {returned.language}: {', '.join(told)}."


def _status(root: Path, content: "Content") -> int:
    from guidebuild.build.language_status import states
    from guidebuild.translate.catalogue.bring import Status

    print(
        f"{'language':9}{'translated':>11}{'outdated':>10}{'missing':>9}{'words to do':>13}  file"
    )
    for language, rows in groupby(states(root, content), key=itemgetter(0)):
        known = [(file, state) for _, file, state in rows]
        for file, state in known:
            print(_row(language, file, state))
        print(_row(language, "all of it", sum((state for _, state in known), Status())))
    return codes.CLEAN


def _row(language: str, what: str, state: "Status") -> str:
    figures = f"{state.fresh:>11}{state.outdated:>10}{state.missing:>9}{state.words_to_do:>13}"
    return f"{language:9}{figures}  {what}"


def _tidy(root: Path) -> int:
    from guidebuild.build.language_status import tidy

    changed = tidy(root)
    print(
        "\n".join(f"written anew: {path}" for path in changed)
        or "All catalogues are as we write them."
    )
    return codes.CLEAN


def _tell(findings: "tuple[Finding, ...]", content: "Content") -> None:
    """The findings in the terminal's own form, as loud as `check` tells them; what is no rule is an error."""
    if not findings:
        return
    from guidebuild import __version__
    from guidebuild.build import rulebook
    from guidebuild.build.loudness import loudness
    from guidebuild.cli import reporting
    from guidebuild.reports.parts.report import Report
    from guidebuild.reports.parts.slip import Slip
    from guidebuild.source.finding import Loudness

    known = rulebook.names()
    told = [
        (
            one,
            loudness(content.settings, one.rule, one.category, "")
            if one.rule in known
            else Loudness.ERROR,
        )
        for one in findings
    ]
    slips = tuple(Slip(one, loud) for one, loud in told if loud is not None)
    reporting.write(reporting.wanted([]), Report(__version__, slips))
