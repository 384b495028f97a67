"""The machine-readable reports keep to their schemas: our own, the OASIS one of SARIF, the common XSD of JUnit."""

import json
from io import StringIO
from pathlib import Path

import jsonschema
import pytest
import xmlschema

from guidebuild.reports.parts.report import Report
from guidebuild.shipped import shipped
from tests.reports.golden import WIDE, rendered
from tests.reports.sample import CLEAN, FAULTY, REPORT

DATA = Path(__file__).parent / "data"
REPORTS = {"sample": REPORT, "clean": CLEAN, "faulty": FAULTY}
every_report = pytest.mark.parametrize("report", REPORTS.values(), ids=REPORTS)


@every_report
def test_json_keeps_to_our_schema(report: Report) -> None:
    schema = json.loads((shipped("schema") / "report.schema.json").read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.Draft202012Validator(schema).validate(json.loads(rendered("json", report, WIDE)))


def test_our_schema_refuses_what_is_not_in_it() -> None:
    schema = json.loads((shipped("schema") / "report.schema.json").read_text(encoding="utf-8"))
    written = json.loads(rendered("json", REPORT, WIDE))
    written["findings"][0]["severity"] = "high"
    assert not jsonschema.Draft202012Validator(schema).is_valid(written)


@every_report
def test_sarif_keeps_to_the_schema_of_oasis(report: Report) -> None:
    schema = json.loads((DATA / "sarif-2.1.0-rtm.5.json").read_text(encoding="utf-8"))
    jsonschema.Draft4Validator(schema).validate(json.loads(rendered("sarif", report, WIDE)))


@every_report
def test_junit_keeps_to_the_common_xsd(report: Report) -> None:
    schema = xmlschema.XMLSchema(str(DATA / "junit-10.xsd"))
    schema.validate(StringIO(rendered("junit", report, WIDE)))
