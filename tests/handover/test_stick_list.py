"""The stick list as spreadsheets and strangers may leave it: what can't be read is told by its line."""

from guidebuild.handover.stick_list import read_list

HEAD = "stick,date,holder,guide,issue,languages,steps\n"
GOOD = "TS-01,2026-01-01,bench,guides/a.md,1,en,open=12/34\n"


def test_a_field_that_never_ends_is_a_bad_line_and_the_next_one_is_read() -> None:
    held, bad = read_list(HEAD + GOOD + f"TS-02,{'x' * 200_000},b,g,1,en,\n" + GOOD)
    assert [one.stick for one in held] == ["TS-01", "TS-01"]
    assert bad == [3]


def test_signs_that_no_spreadsheet_writes() -> None:
    assert read_list(HEAD + GOOD.replace("bench", "be\0nch"))[0][0].holder == "bench"
    assert read_list("\0\r\r\n\x85")[1] in ([], [1], [2], [3])
