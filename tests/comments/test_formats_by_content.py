"""Which format an export is in, told by what is in it; its name only settles the rest."""

from __future__ import annotations

import pytest

from service.comments.formats import FORMATS, Format
from service.errors import BadExport, BadTime
from tests.comments.conftest import COPIED, Read
from tests.comments.sheets import xlsx

TABLE = "author,posted_at,text\nGran T,2026-02-27T12:00:00Z,12\n"
PAGE = "Gran T\n5 days ago\n12\nReply\n"


@pytest.mark.parametrize(
    ("text", "name", "form"),
    [
        pytest.param(TABLE, "x.txt", "table", id="a table in a text file"),
        pytest.param(TABLE.replace(",", "\t"), "-", "table", id="a table pasted"),
        pytest.param("12, please\n14, thanks\n8, lol\n", "-", "pasted", id="commas in a list"),
        pytest.param("Gran T,12\nAnnie,8\n", "x.csv", "table", id="a table by its name"),
        pytest.param("Gran T\t12\nAnnie\t8\n", "-", "table", id="a table by its tabs"),
        pytest.param(PAGE, "x.csv", "pasted", id="a page in a file that says table"),
        pytest.param("comment\n12\n14\n", "x.csv", "table", id="a lone column by its name"),
        pytest.param(PAGE, "-", "pasted", id="a page"),
        pytest.param("Comments, latest first\n" + PAGE, "-", "pasted", id="a page with a comma"),
        pytest.param('[{"author": "A", "text": "12"}]', "x.csv", "json", id="JSON in a table's file"),
        pytest.param('{"author":"A","text":"12"}\n{"author":"B","text":"8"}', "x.json", "json lines", id="JSON Lines in a JSON file"),
        pytest.param('{"type":"Collection","items":[{"type":"Note","content":"x"}]}', "x", "activitystreams", id="a collection"),
        pytest.param('<?xml version="1.0"?>\n<!-- x -->\n<feed xmlns="http://www.w3.org/2005/Atom"></feed>', "x.txt", "feed", id="a feed"),
        pytest.param('<a:entry xmlns:a="http://www.w3.org/2005/Atom"/>', "x", "feed", id="one entry"),
        pytest.param('<rss version="2.0"><channel/></rss>', "x.html", "feed", id="RSS"),
        pytest.param("[deleted]\n12 please\n", "-", "pasted", id="brackets that are no JSON"),
        pytest.param("{12} is my vote\n14\n", "-", "pasted", id="braces that are no JSON"),
    ],
)  # fmt: skip
def test_the_format_is_told_by_content(read: Read, text: str, name: str, form: Format) -> None:
    assert read(text, name=name).format == form


@pytest.mark.parametrize("form", FORMATS)
def test_the_caller_s_format_overrules(read: Read, form: Format) -> None:
    contents: dict[Format, bytes | str] = {
        "table": "text\n12\n",
        "spreadsheet": xlsx([["text"], ["12"]]),
        "feed": '<rss version="2.0"><channel><item><title>12</title></item></channel></rss>',
        "json": '["12"]',
        "json lines": '{"text": "12"}',
        "activitystreams": '{"@context": "https://www.w3.org/ns/activitystreams", "content": "12"}',
        "pasted": "12\n",
    }
    export = read(contents[form], form=form)
    assert export.format == form
    assert [one.text for one in export.comments] == ["12"]


def test_a_format_that_there_is_not_is_one_sentence(read: Read) -> None:
    with pytest.raises(
        BadExport, match="there is no format 'tables': name one of table, spreadsheet"
    ):
        read(TABLE, form="tables")  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "text",
    ['<?xml version="1.0"?><html/>', "<!DOCTYPE html><p>12</p>", "<html><body>12", "  <head>"],
)
def test_markup_is_no_export(read: Read, text: str) -> None:
    with pytest.raises(BadExport, match="markup, not its comments: open the page and paste"):
        read(text)


def test_a_zone_that_there_is_not_is_refused_first(read: Read) -> None:
    with pytest.raises(BadTime, match="no such time zone"):
        read(TABLE, zone="Mars/Phobos")


def test_a_time_of_copying_needs_its_zone(read: Read) -> None:
    with pytest.raises(BadTime, match="the time of copying has no zone"):
        read(TABLE, copied_at=COPIED.replace(tzinfo=None))


def test_columns_that_a_page_does_not_have_are_told(read: Read) -> None:
    export = read(PAGE, columns=(("text", "Kommentar"),))
    assert export.format == "pasted"
    assert "Columns were named, but this format has none." in export.notes
