"""HTML of comments as the text that a reader sees."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.comments.markup import looks_like_markup, text_of


@pytest.mark.parametrize(
    ("markup", "text"),
    [
        pytest.param("<p>27</p>", "27", id="a paragraph"),
        pytest.param("<p>a</p>\n<p>b</p>", "a\n\nb", id="two paragraphs"),
        pytest.param("<p>a<br />b<br>c</p>", "a\nb\nc", id="line breaks"),
        pytest.param("<div>a</div><div>b</div>", "a\nb", id="divisions"),
        pytest.param("<p>a <em>b</em>\n  c</p>", "a b c", id="spaces are one space"),
        pytest.param("<pre>a\n  b</pre>", "a\n  b", id="spaces that were meant"),
        pytest.param(
            "<p>kids:</p><ul><li>big: 4</li><li>small</li></ul><p>help</p>",
            "kids:\n\n- big: 4\n- small\n\nhelp",
            id="a list",
        ),
        pytest.param(
            "<ol><li>the harbour</li><li>the hen</li></ol>",
            "- the harbour\n- the hen",
            id="a numbered list gives no numbers",
        ),
        pytest.param(
            "<ul><li><p>a</p></li><li></li><li>b</li></ul>",
            "- a\n\n- b",
            id="items in paragraphs, and an empty one",
        ),
        pytest.param("<p><del>14</del> 41</p>", "~~14~~ 41", id="struck out"),
        pytest.param(
            "<s>12</s> <strike>13</strike> 14", "~~12~~ ~~13~~ 14", id="struck out otherwise"
        ),
        pytest.param("<del>a<br>b</del> c", "~~a~~\n~~b~~ c", id="struck out over two lines"),
        pytest.param("<del>a<del>b</del></del>", "~~ab~~", id="struck out twice"),
        pytest.param(
            "<blockquote><p>30 then</p></blockquote><p>31</p>", "> 30 then\n\n31", id="a quote"
        ),
        pytest.param(
            "<blockquote>a<br>b<blockquote>c</blockquote></blockquote>d",
            "> a\n> b\n>\n> > c\n\nd",
            id="a quote in a quote",
        ),
        pytest.param("<q>thirty</q> she said", "“thirty” she said", id="quotation marks"),
        pytest.param(
            'see <a href="https://hall.example/#57">the photo</a>', "see the photo", id="a link"
        ),
        pytest.param('<p>8 <img src="x" alt="❤️"></p>', "8 ❤️", id="a picture's words"),
        pytest.param("I &lt;3 this &amp; that&hellip;", "I <3 this & that…", id="entities"),
        pytest.param("Page&nbsp;50", "Page 50", id="a space that does not break"),
        pytest.param("pla&icirc;t &#233;t&#xe9;", "plaît été", id="letters as entities"),
        pytest.param(
            "<script>alert(42)</script>12<style>p{}</style>", "12", id="what is never shown"
        ),
        pytest.param("<p>12", "12", id="not closed"),
        pytest.param("12</p></del></blockquote>", "12", id="never opened"),
        pytest.param(
            "<table><tr><td>a</td><td>b</td></tr><tr><td>c</td></tr></table>",
            "a b\nc",
            id="a table",
        ),
        pytest.param("<br><br>12<br><br><br>13<br>", "12\n\n13", id="empty lines"),
        pytest.param("", "", id="nothing"),
    ],
)
def test_markup_becomes_the_text_that_is_seen(markup: str, text: str) -> None:
    assert text_of(markup) == text


@pytest.mark.parametrize(
    "text", ["I <3 cats & dogs", "12 < 13 > 11", "a -> b", "&c.", "AT&T;", "<12>"]
)
def test_signs_of_talk_are_not_markup(text: str) -> None:
    assert not looks_like_markup(text)


@pytest.mark.parametrize("text", ["<p>12</p>", "12<br/>13", "that&#39;s 12", "R&amp;D"])
def test_tags_and_entities_are(text: str) -> None:
    assert looks_like_markup(text)


TAGS = (
    "<p> </p> <del> </del> <blockquote> </blockquote> <li> </ul> <ul> <br> <![x[ <!-- <a&href=' "
    "<pre> </pre> <script> &#x110000; &lt 12 < > & ' é"
)
PIECES = st.lists(st.sampled_from([*TAGS.split(), " ", "\n"]), max_size=30).map("".join)


@given(PIECES | st.text(max_size=60))
def test_no_markup_however_broken_fails(markup: str) -> None:
    text = text_of(markup)
    assert "\n\n\n" not in text
    assert text == text.strip("\n")


@given(
    st.lists(
        st.sampled_from(["twelve", "page", "<p>", "</p>", "<br>", "<li>", "<em>", "</em>"]),
        max_size=20,
    )
)
def test_no_word_is_lost(pieces: list[str]) -> None:
    words = [piece for piece in pieces if not piece.startswith("<")]
    text = text_of(" ".join(pieces))
    assert [word for word in text.split() if word != "-"] == words
