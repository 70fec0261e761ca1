"""Feeds against RFC 4287 (December 2005) and RFC 4685 (September 2006).

The RFCs' own examples; where an example names a living person, an invented one stands instead.
"""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from service.comments.comment import Comment
from service.comments.formats import Export, Source
from service.comments.intake import read_export
from service.comments.spans import Span

BRIEF = """<?xml version="1.0" encoding="utf-8"?>
<feed xmlns="http://www.w3.org/2005/Atom">
  <title>Example Feed</title>
  <link href="http://example.org/"/>
  <updated>2003-12-13T18:30:02Z</updated>
  <author>
    <name>John Doe</name>
  </author>
  <id>urn:uuid:60a76c80-d399-11d9-b93C-0003939e0af6</id>
  <entry>
    <title>Atom-Powered Robots Run Amok</title>
    <link href="http://example.org/2003/12/13/atom03"/>
    <id>urn:uuid:1225c695-cfb8-4ebb-aaaa-80da344efa6a</id>
    <updated>2003-12-13T18:30:02Z</updated>
    <summary>Some text.</summary>
  </entry>
</feed>
"""
EXTENSIVE = """<?xml version="1.0" encoding="utf-8"?>
<feed xmlns="http://www.w3.org/2005/Atom">
  <title type="text">dive into stitching</title>
  <subtitle type="html">
    A &lt;em&gt;lot&lt;/em&gt; of effort
    went into making this effortless
  </subtitle>
  <updated>2005-07-31T12:29:29Z</updated>
  <id>tag:example.org,2003:3</id>
  <link rel="alternate" type="text/html" hreflang="en" href="http://example.org/"/>
  <link rel="self" type="application/atom+xml" href="http://example.org/feed.atom"/>
  <rights>Copyright (c) 2003, Gran T</rights>
  <generator uri="http://www.example.com/" version="1.0">
    Example Toolkit
  </generator>
  <entry>
    <title>Atom draft-07 snapshot</title>
    <link rel="alternate" type="text/html" href="http://example.org/2005/04/02/atom"/>
    <link rel="enclosure" type="audio/mpeg" length="1337"
      href="http://example.org/audio/ph34r_my_podcast.mp3"/>
    <id>tag:example.org,2003:3.2397</id>
    <updated>2005-07-31T12:29:29Z</updated>
    <published>2003-12-13T08:29:29-04:00</published>
    <author>
      <name>Gran T</name>
      <uri>http://example.org/</uri>
      <email>gran@example.com</email>
    </author>
    <contributor><name>Annie</name></contributor>
    <contributor><name>Bo</name></contributor>
    <content type="xhtml" xml:lang="en" xml:base="http://example.org/">
      <div xmlns="http://www.w3.org/1999/xhtml">
        <p><i>[Update: The Atom draft is finished.]</i></p>
      </div>
    </content>
  </entry>
</feed>
"""
THREADED = """<feed xmlns="http://www.w3.org/2005/Atom"
      xmlns:thr="http://purl.org/syndication/thread/1.0">
  <id>http://www.example.org/myfeed</id>
  <title>My Example Feed</title>
  <updated>2005-07-28T12:00:00Z</updated>
  <link href="http://www.example.org/myfeed" />
  <author><name>James</name></author>
  <entry>
    <id>tag:example.org,2005:1</id>
    <title>My original entry</title>
    <updated>2006-03-01T12:12:12Z</updated>
    <link type="application/xhtml+xml" href="http://www.example.org/entries/1" />
    <summary>This is my original entry</summary>
  </entry>
  <entry>
    <id>tag:example.org,2005:1,1</id>
    <title>A response to the original</title>
    <updated>2006-03-01T12:12:12Z</updated>
    <link href="http://www.example.org/entries/1/1" />
    <thr:in-reply-to ref="tag:example.org,2005:1" type="application/xhtml+xml"
      href="http://www.example.org/entries/1"/>
    <summary>This is a response to the original entry</summary>
  </entry>
</feed>
"""


def read(feed: str) -> Export:
    export = read_export(feed.encode(), Source("x", "UTC", datetime(2026, 3, 5, tzinfo=UTC)))
    assert (export.format, export.unreadable) == ("feed", ())
    return export


def entry(inner: str, before: str = "", after: str = "") -> Comment:
    """The comment in an entry that has what section 4.1.2 asks of each, and `inner`."""
    return read(
        f'<feed xmlns="http://www.w3.org/2005/Atom" xmlns:x="http://www.w3.org/1999/xhtml">{before}'
        f"<entry><id>urn:x:1</id><updated>2026-03-01T12:00:00Z</updated><title>t</title>{inner}"
        f"</entry>{after}</feed>"
    ).comments[0]


def test_rfc_4287_section_1_1_the_brief_example() -> None:
    assert read(BRIEF).comments == (
        Comment(
            author="John Doe",
            text="Some text.",
            posted=Span.at(datetime(2003, 12, 13, 18, 30, 2, tzinfo=UTC)),
            id="urn:uuid:1225c695-cfb8-4ebb-aaaa-80da344efa6a",
            place="entry 1",
        ),
    )


def test_rfc_4287_section_1_1_the_extensive_example() -> None:
    assert read(EXTENSIVE).comments == (
        Comment(
            author="Gran T",
            text="[Update: The Atom draft is finished.]",
            posted=Span.at(datetime(2003, 12, 13, 12, 29, 29, tzinfo=UTC)),
            id="tag:example.org,2003:3.2397",
            author_id="http://example.org/",
            edited=Span.at(datetime(2005, 7, 31, 12, 29, 29, tzinfo=UTC)),
            place="entry 1",
        ),
    )


def test_rfc_4685_section_3_an_answer_names_what_it_answers() -> None:
    found = [(one.id, one.reply_to, one.text) for one in read(THREADED).comments]
    assert found == [
        ("tag:example.org,2005:1", None, "This is my original entry"),
        (
            "tag:example.org,2005:1,1",
            "tag:example.org,2005:1",
            "This is a response to the original entry",
        ),
    ]


@pytest.mark.parametrize(
    ("inner", "words"),
    [
        pytest.param('<content type="text">a &lt; b &amp;amp; c</content>', "a < b &amp; c", id="text"),
        pytest.param("<content>a &lt;b&gt; c</content>", "a <b> c", id="text without saying so"),
        pytest.param('<content type="html">&lt;b>AT&amp;amp;T&lt;/b> 12</content>', "AT&T 12", id="html"),
        pytest.param(
            '<content type="xhtml"><x:div><x:p>Less: &lt;</x:p><x:ul><x:li>12</x:li></x:ul></x:div></content>',
            "Less: <\n\n- 12", id="xhtml with a prefix",
        ),
        pytest.param('<content type="text/plain">12</content>', "12", id="a media type of text"),
        pytest.param('<content type="image/png">MTI=</content><summary>8</summary>', "8", id="a picture"),
        pytest.param('<content src="http://example.org/1"/><summary>8</summary>', "8", id="elsewhere"),
        pytest.param("", "t", id="nothing but the title, which each entry has"),
    ],
)  # fmt: skip
def test_rfc_4287_sections_3_1_and_4_1_3_words_of_each_type(inner: str, words: str) -> None:
    assert entry(inner).text == words


def test_rfc_4287_section_4_2_1_who_an_entry_without_author_is_by() -> None:
    feed = "<author><name>Feed</name></author>"
    source = "<source><author><name>Source</name></author></source>"
    own = "<author><name>Own</name></author>"
    assert entry(own + source, feed).author == "Own"
    assert entry(source, feed).author == "Source"
    assert entry("", feed).author == "Feed"
    assert entry("").author == ""


def test_rfc_4287_section_2_one_entry_may_be_the_document() -> None:
    alone = (
        '<entry xmlns="http://www.w3.org/2005/Atom"><id>urn:x:1</id><content>12</content></entry>'
    )
    assert [(one.id, one.text) for one in read(alone).comments] == [("urn:x:1", "12")]
