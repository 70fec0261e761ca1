"""Feeds of comments: threads, deletions, RSS, other encodings, and XML that would hurt."""

from __future__ import annotations

import tracemalloc
from datetime import UTC, datetime

import pytest

from service.comments.spans import Span
from service.errors import BadExport
from tests.comments.conftest import Read

ATOM = 'xmlns="http://www.w3.org/2005/Atom" xmlns:thr="http://purl.org/syndication/thread/1.0"'
NOON = Span.at(datetime(2026, 2, 27, 12, 0, 9, tzinfo=UTC))


def atom(*entries: str, inside: str = "") -> str:
    return f"<feed {ATOM}>{inside}{''.join(f'<entry>{one}</entry>' for one in entries)}</feed>"


def test_comments_of_a_feed_are_read_with_their_threads(read: Read) -> None:
    first = (
        "<id>urn:1</id><author><name>Gran T</name><uri>https://hall.example/gran</uri></author>"
        "<published>2026-02-27T12:00:09Z</published><updated>2026-02-27T12:00:09Z</updated>"
        '<content type="html">&lt;p>12&lt;/p>&lt;p>please&lt;/p></content>'
    )
    second = (
        '<id>urn:2</id><author><name>Annie</name></author><thr:in-reply-to ref="urn:1"/>'
        "<published>2026-02-27T12:00:09Z</published><updated>2026-02-27T13:00:00Z</updated>"
        "<content>me too</content>"
    )
    export = read(atom(first, second))
    one, two = export.comments
    assert (one.author, one.author_id, one.text) == (
        "Gran T",
        "https://hall.example/gran",
        "12\n\nplease",
    )
    assert (one.posted, one.edited, one.place) == (NOON, None, "entry 1")
    assert (two.reply_to, two.posted) == ("urn:1", NOON)
    assert two.edited == Span.at(datetime(2026, 2, 27, 13, tzinfo=UTC))
    assert dict(export.mapping)["reply_to"] == "in-reply-to"


def test_what_a_feed_leaves_open_is_told(read: Read) -> None:
    deleted = '<at:deleted-entry xmlns:at="http://purl.org/atompub/tombstones/1.0" ref="urn:2"/>'
    inside = f'<author><name>Host</name></author><link rel="next" href="x"/>{deleted}'
    export = read(
        atom(
            "<id>urn:1</id><updated>2026-02-27T12:00:09Z</updated><content>12</content>",
            "<id>urn:2</id><content>14</content>",
            '<id>urn:3</id><content src="https://hall.example/3"/>',
            inside=inside,
        )
    )
    assert [(one.author, one.text) for one in export.comments] == [("Host", "12")]
    assert [one.place for one in export.unreadable] == ["entry 3"]
    told = " ".join(export.notes)
    for words in (
        "last updated: 1, taken as posted then",
        "name no author: 3, taken as by the feed's",
        "stand elsewhere, behind a link: 1",
        "further pages of comments that are not in this file: 1",
        "deleted at their source, left out: 1",
    ):
        assert words in told


def test_rss_is_read_too(read: Read) -> None:
    item = (
        "<title>Comment on the vote, by Gran T</title><link>https://hall.example/1#c1</link>"
        "<dc:creator>Gran T</dc:creator><pubDate>Fri, 27 Feb 2026 12:00:09 +0000</pubDate>"
        '<guid isPermaLink="false">c1</guid><description>12 &amp;#8230;</description>'
        "<content:encoded><![CDATA[<p>12 please</p>]]></content:encoded>"
    )
    plain = "<author>annie@hall.example (Annie)</author><description>8 &lt;b&gt;!&lt;/b&gt;</description>"
    namespaces = (
        'xmlns:dc="http://purl.org/dc/elements/1.1/" '
        'xmlns:content="http://purl.org/rss/1.0/modules/content/"'
    )
    export = read(
        f'<rss version="2.0" {namespaces}><channel><title>x</title><item>{item}</item>'
        f"<item>{plain}</item></channel></rss>"
    )
    first, second = export.comments
    assert (first.author, first.text, first.id, first.posted) == ("Gran T", "12 please", "c1", NOON)
    assert (second.author, second.text, second.place) == ("Annie", "8 !", "item 2")


def test_rss_1_has_its_items_beside_the_channel(read: Read) -> None:
    export = read(
        '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#" '
        'xmlns="http://purl.org/rss/1.0/" xmlns:dc="http://purl.org/dc/elements/1.1/">'
        "<channel/><item><title>8</title><link>u</link><dc:date>2026-02-27T12:00:09Z</dc:date>"
        "</item></rdf:RDF>"
    )
    assert [(one.text, one.id, one.posted) for one in export.comments] == [("8", "u", NOON)]


@pytest.mark.parametrize("encoding", ["utf-8", "utf-16", "iso-8859-2", "windows-1250", "shift_jis"])
def test_the_encoding_that_xml_declares_is_used(read: Read, encoding: str) -> None:
    words = "十二番" if encoding == "shift_jis" else "dwanaście" if "1" in encoding else "zwölf"
    text = f'<?xml version="1.0" encoding="{encoding}"?>' + atom(f"<content>{words}</content>")
    assert [one.text for one in read(text.encode(encoding)).comments] == [words]


BILLION = (
    '<?xml version="1.0"?><!DOCTYPE feed [<!ENTITY a "hahahahaha">'
    + "".join(
        f'<!ENTITY {name} "{f"&{before};" * 10}">'
        for before, name in zip("abcdefgh", "bcdefghi", strict=True)
    )
    + "]>"
)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        pytest.param(BILLION + atom("<content>&i;</content>"), "defines entities", id="a bomb"),
        pytest.param(
            '<!DOCTYPE feed [<!ENTITY x SYSTEM "file:///etc/hostname">]>'
            + atom("<content>&x;</content>"),
            "defines entities", id="a file of this computer",
        ),
        pytest.param(
            '<!DOCTYPE feed [<!ENTITY % x SYSTEM "https://hall.example/x.dtd"> %x;]>' + atom(),
            "defines entities", id="a definition elsewhere",
        ),
        pytest.param(atom("<content>&nbsp;</content>"), "line 1: the XML is broken", id="unknown entity"),
        pytest.param(atom("<content>12</content>")[:-9], "broken or cut off here", id="cut off"),
        pytest.param(atom("<content>12</content>\n\n<b>"), "line 3: the XML is", id="its line"),
        pytest.param("<feed><entry/></feed>", "first element is 'feed' in no namespace", id="no Atom"),
        pytest.param("<a:rss xmlns:a='urn:b'/>", "first element is 'rss' in urn:b", id="no RSS"),
    ],
)  # fmt: skip
def test_xml_that_cannot_be_read_is_one_sentence(read: Read, text: str, sentence: str) -> None:
    with pytest.raises(BadExport, match=sentence):
        read(text)


def test_elements_nested_without_end_are_one_sentence(read: Read) -> None:
    deep = "<b>" * 20_000 + "12" + "</b>" * 20_000
    with pytest.raises(BadExport, match="the feed's XML cannot be read"):
        read(atom(f'<content type="xhtml">{deep}</content>'))
    assert read(atom(deep)).comments == ()


def test_a_long_feed_takes_no_more_room_than_its_comments(read: Read) -> None:
    """A thousand entries full of what is no comment leave nothing behind."""
    text = atom(*(f"<content>{number}</content><x>{'y' * 5000}</x>" for number in range(1000)))
    content = text.encode()
    tracemalloc.start()
    assert len(read(content).comments) == 1000
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak < 4 * len(content)


def test_a_feed_of_nothing_says_so(read: Read) -> None:
    assert read(atom()).notes == ("The feed holds no comments.",)
