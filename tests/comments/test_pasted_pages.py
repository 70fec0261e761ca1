"""Pasted pages: blocks of author, time, words and buttons, from pages of many kinds."""

from __future__ import annotations

from datetime import timedelta

import pytest

from service.comments.spans import Span
from tests.comments.conftest import COPIED, Read

DAY = timedelta(days=1)


def days_ago(number: int) -> Span:
    return Span(COPIED - (number + 1) * DAY, COPIED - number * DAY)


TWO = [("Gran T", "12 please"), ("Annie", "8")]


@pytest.mark.parametrize(
    "page",
    [
        pytest.param(
            "Gran T\n5 days ago\n12 please\n3\nReply\nAnnie\n2 days ago\n8\nReply\n",
            id="with counts and buttons",
        ),
        pytest.param(
            "Gran T\n\n5 days ago\n\n12 please\n\n3\n\nReply\n\nAnnie\n\n2 days ago\n\n8\n\nReply\n",
            id="an empty line between all lines",
        ),
        pytest.param("Gran T\n5 days ago\n12 please\n\nAnnie\n2 days ago\n8\n", id="no buttons"),
        pytest.param(
            "Gran T\nHost\n5 days ago\n12 please\nReply\nAnnie\nTop fan\nAuthor\n2 days ago\n8\nReply",
            id="marks beside the name",
        ),
        pytest.param(
            "Gran T · 5 days ago\n12 please\nReply\nAnnie • 2 days ago\n8\nReply\n",
            id="name and time on one line",
        ),
        pytest.param(
            "@Gran T\t5d\n12 please\nAnnie | 2d | Author\n8\n".replace("@", ""), id="short times"
        ),
        pytest.param(
            "Gran T\n·\n5 days ago\n12 please\nReply\nAnnie\n·\n2 days ago\n8\nReply\n",
            id="a dot on a line of its own",
        ),
        pytest.param("Gran T\n5d\n12 please\nReply\nAnnie\n2d\n8\nReply\n", id="short times alone"),
        pytest.param(
            "Gran T\n12 please\n5 days ago\nLike\nReply\nAnnie\n8\n2 days ago\nLike\nReply\n",
            id="times below the words",
        ),
        pytest.param(
            "Gran T\n12 please\n5d · Like · Reply\nAnnie\nHost\n8\n2d Like Reply\n",
            id="times below the words, on a line with buttons",
        ),
        pytest.param(
            "Gran T - 5 days ago\n12 please\nAnnie, 2 days ago\n8\n", id="a dash and a comma"
        ),
        pytest.param("Gran T (5 days ago)\n12 please\nAnnie (2 days ago)\n8\n", id="brackets"),
        pytest.param(
            "148 comments\nOrder\nPinned by the host\nGran T\n5 days ago\n12 please\nLike\n7\n"
            "Reply\nHide replies\nAnnie\n2 days ago\n8\nTranslate\n1.2K\nReply\n3 replies\n"
            "Show more comments\n",
            id="a page with all around it",
        ),
        pytest.param(
            "Gran T\nvor 5 Tagen\n12 please\n4\nAntworten\n2 Antworten anzeigen\n"
            "Annie\nvor 2 Tagen\n8\nÜbersetzen\nAntworten\nWeitere Kommentare anzeigen\n",
            id="German",
        ),
        pytest.param(
            "Gran T\nil y a 5 jours\n12 please\n4\nRépondre\nMasquer les réponses\n"
            "Annie\nil y a 2 jours\n8\nVoir la traduction\nRépondre\n",
            id="French",
        ),
        pytest.param(
            "Gran T\nhace 5 días\n12 please\nMe gusta\nResponder\nVer 3 respuestas\n"
            "Annie\nhace 2 días\n8\nResponder\n",
            id="Spanish",
        ),
        pytest.param(
            "Gran T\n5 giorni fa\n12 please\n1\nRispondi\nAnnie\n2 giorni fa\n8\nRispondi\n",
            id="Italian",
        ),
        pytest.param(
            "Gran T\nhá 5 dias\n12 please\nCurtir\nResponder\nAnnie\nhá 2 dias\n8\nResponder\n",
            id="Portuguese",
        ),
        pytest.param(
            "Gran T\n5 dagen geleden\n12 please\nBeantwoorden\nToon 2 reacties\n"
            "Annie\n2 dagen geleden\n8\nBeantwoorden\n",
            id="Dutch",
        ),
        pytest.param(
            "Gran T\nför 5 dagar sedan\n12 please\nSvara\nAnnie\nför 2 dagar sedan\n8\nSvara\n",
            id="Swedish",
        ),
        pytest.param(
            "Gran T\n5 dni temu\n12 please\nOdpowiedz\nAnnie\n2 dni temu\n8\nOdpowiedz\n",
            id="Polish",
        ),
        pytest.param(
            "Gran T\n5 日前\n12 please\n翻訳\n3\n返信\n2 件の返信\nAnnie\n2 日前\n8\n返信\n",
            id="Japanese",
        ),
    ],
)
def test_pages_of_many_kinds_are_read_alike(read: Read, page: str) -> None:
    export = read(page)
    assert export.format == "pasted"
    assert [(one.author, one.text) for one in export.comments] == TWO
    assert [one.posted for one in export.comments] == [days_ago(5), days_ago(2)]
    assert export.unreadable == ()


def test_buttons_in_a_language_nobody_listed_are_learned(read: Read) -> None:
    page = "".join(
        f"{name}\n{days} days ago\n{words}\nVastustele\nTykkäile\n"
        for name, days, words in [
            ("A", 4, "12"),
            ("B", 3, "14\nthanks"),
            ("C", 2, "hello"),
            ("D", 1, "9"),
        ]
    )
    export = read(page)
    assert [one.text for one in export.comments] == ["12", "14\nthanks", "hello", "9"]
    assert any("vastustele" in note and "tykkäile" in note for note in export.notes)


def test_a_mark_that_nobody_listed_is_learned(read: Read) -> None:
    page = "".join(
        f"{name}\nKlabautermann\n{days} days ago\n{days}\nReply\n"
        for name, days in [("A", 4), ("B", 3)]
    )
    page += "C\n2 days ago\n9\nReply\n"
    assert [one.author for one in read(page).comments] == ["A", "B", "C"]


def test_what_everybody_says_first_is_no_button(read: Read) -> None:
    page = "".join(f"{name}\n2 days ago\ntwelve\n" for name in "ABCD")
    assert [one.text for one in read(page).comments] == ["twelve"] * 4


@pytest.mark.parametrize(
    "time",
    [
        "5 days ago (edited)",
        "5 days ago\n(edited)",
        "5 days ago · Edited",
        "vor 5 Tagen (bearbeitet)",
        "il y a 5 jours (modifié)",
        "hace 5 días (editado)",
        "5 dagen geleden (bewerkt)",
        "5 日前（編集済み）",
        "5 days ago (ändrattt)",
    ],
)
def test_a_mark_of_editing_means_any_time_up_to_the_copying(read: Read, time: str) -> None:
    comment = read(f"Gran T\n{time}\n12\nReply\n").comments[0]
    assert comment.text == "12"
    assert comment.posted == days_ago(5)
    assert comment.edited == Span(COPIED - 6 * DAY, COPIED)


def test_a_time_of_editing_is_kept(read: Read) -> None:
    comment = read("Gran T\n5 days ago (edited 2 days ago)\n12\nReply\n").comments[0]
    assert (comment.posted, comment.edited) == (days_ago(5), days_ago(2))


def test_a_time_of_editing_alone_leaves_the_posting_open(read: Read) -> None:
    comment = read("Gran T\nedited 2 days ago\n12\nReply\n").comments[0]
    assert comment.written == days_ago(2)
    assert comment.posted.latest == COPIED - 2 * DAY
    assert comment.posted.earliest.year == 1970


def test_paragraphs_and_odd_lines_stay_the_writer_s(read: Read) -> None:
    words = "My nana stitched until she was 93.\n\nPage 60 in her memory.\n\nI'll reply\nto anyone\n- 12:47 -"
    export = read(f"Gran T\n5 days ago\n{words}\nReply\nAnnie\n2 days ago\n8\nReply\n")
    assert export.comments[0].text == words


@pytest.mark.parametrize(
    ("words", "text"),
    [
        pytest.param("20", "20", id="a number alone"),
        pytest.param("27\n4", "27", id="a number and its likes"),
        pytest.param("8\n8", "8", id="the same number twice"),
        pytest.param("7\n14\n21\n3", "7\n14\n21", id="several numbers"),
        pytest.param("12 please\n1.2K", "12 please", id="many likes"),
        pytest.param("12 please\n1,204", "12 please", id="a count with a comma"),
        pytest.param("12 please\n👍 3", "12 please", id="a thumb"),
        pytest.param("12\n14\nTranslate\n3", "12\n14", id="numbers above a button"),
        pytest.param("12\nShow more\n3", "12", id="a number above a button"),
    ],
)
def test_a_number_below_the_words_is_a_count_where_the_page_counts(
    read: Read, words: str, text: str
) -> None:
    rest = "".join(
        f"{name}\n2 days ago\nhello\n{name_count}\nReply\n"
        for name, name_count in [("A", 3), ("B", 14), ("C", "2K")]
    )
    export = read(f"Gran T\n5 days ago\n{words}\nReply\n{rest}")
    assert export.comments[0].text == text
    assert export.unreadable == ()


def test_numbers_that_may_be_the_writer_s_are_listed(read: Read) -> None:
    rest = "".join(f"{name}\n2 days ago\n9 please\n2K\nReply\n" for name in "ABC")
    export = read(f"Gran T\n5 days ago\nhello\n14\nReply\n{rest}")
    assert any("line 4 (14)" in note for note in export.notes)


@pytest.mark.parametrize(
    "page",
    [
        pytest.param(
            "Gran T\n5 days ago\nMy vote is\n14\nReply\n", id="a page that shows no counts"
        ),
        pytest.param(
            "Gran T\n5 days ago\nMy vote:\n14\nReply\nA\n2 days ago\nhi\n2K\nReply\n",
            id="words that lead up to the number",
        ),
    ],
)
def test_a_number_that_cannot_be_told_apart_is_shown(read: Read, page: str) -> None:
    export = read(page)
    assert "14" not in export.comments[0].text
    assert [(one.place, one.text) for one in export.unreadable] == [("line 4", "14")]
    assert "the writer may have meant it" in export.unreadable[0].why


def test_words_that_read_like_a_time_stay_words(read: Read) -> None:
    page = (
        "Gran T\n2 days ago\nI told my sister\nyesterday\nand she says 12\n4\nReply\n"
        "Annie\n2 days ago\nyesterday\nReply\n"
        "Bo\n1 day ago\n30 years ago\nI stitched 44\nReply\n"
    )
    export = read(page)
    assert [(one.author, one.text) for one in export.comments] == [
        ("Gran T", "I told my sister\nyesterday\nand she says 12"),
        ("Annie", "yesterday"),
        ("Bo", "30 years ago\nI stitched 44"),
    ]
    assert any("read like a time" in note and "line 4" in note for note in export.notes)


def test_words_that_look_like_buttons_are_shown_and_never_make_a_vote(read: Read) -> None:
    page = (
        "Gran T\n5 days ago\nReply\nReply\n"
        "Annie\n4 days ago\nTranslate\n2\nReply\n"
        "Cy\n4 days ago\nShow more\nof the hall, 12\nReply\n"
    )
    export = read(page)
    assert [(one.author, one.text) for one in export.comments] == [
        ("Cy", "Show more\nof the hall, 12")
    ]
    assert [one.text for one in export.unreadable] == ["Reply / Reply", "Translate / 2 / Reply"]


def test_a_comment_whose_answer_button_is_missing_is_not_swallowed(read: Read) -> None:
    page = (
        "Gran T\n5 days ago\n12\nReply\nAnnie\n4 days ago\n8\n\nBo\n3 days ago\n14\nReply\n"
        "Cy\n2 days ago\n9\nReply\n"
    )
    assert [(one.author, one.text) for one in read(page).comments] == [
        ("Gran T", "12"),
        ("Annie", "8"),
        ("Bo", "14"),
        ("Cy", "9"),
    ]


def test_authors_with_odd_names_are_authors(read: Read) -> None:
    names = [
        "42",
        "the 6.30 ferry",
        "Frogging, Again",
        '"Hoop" (yes really)',
        "糸と風",
        "1984",
        "Reply All",
    ]
    page = "".join(f"{name}\n2 days ago\nhello from here\nReply\n" for name in names)
    assert [one.author for one in read(page).comments] == names


def test_comments_without_a_name_are_read_and_told(read: Read) -> None:
    export = read("3 days ago\n12\nReply\n2 days ago\n44\nReply\n")
    assert [(one.author, one.text) for one in export.comments] == [("", "12"), ("", "44")]
    assert any("without an author's name: 2" in note for note in export.notes)


def test_what_is_taken_out_is_told(read: Read) -> None:
    page = (
        "148 comments\nLatest on top\n"
        "Gran T\n5 days ago\n12\nShow more\n3\nReply\nThis comment was removed\n\n"
        "Annie\n2 days ago\n8\nReply\nsome words of nobody\n"
        "Bo\n2 days ago\n❤️\nReply\n"
    )
    export = read(page)
    assert len(export.comments) == 3
    told = " ".join(export.notes)
    assert "148 comments / Latest on top" in told
    assert "removed at their source: 1 (line 9)" in told
    assert "Folded comments, whose words may be cut off: 1 (line 3)" in told
    assert [(one.place, one.text) for one in export.unreadable] == [
        ("line 15", "some words of nobody")
    ]


def test_much_text_above_the_first_time_is_shown_line_by_line(read: Read) -> None:
    above = "".join(f"words {number}\n" for number in range(20))
    export = read(f"{above}Gran T\n5 days ago\n12\nReply\n")
    assert [one.place for one in export.unreadable] == [
        f"line {number}" for number in range(13, 21)
    ]


def test_no_line_of_a_page_disappears(read: Read) -> None:
    """Every line is a comment's, an author's or a time's, a known button or count, or is shown."""
    page = "Gran T\n5 days ago\nalpha\nbeta 12\n3\nReply\ngamma\nAnnie\n2 days ago\ndelta\nReply\nepsilon\n"
    export = read(page)
    shown = " ".join(
        [one.text for one in export.comments]
        + [one.text for one in export.unreadable]
        + list(export.notes)
    )
    for word in ("alpha", "beta", "gamma", "delta", "epsilon"):
        assert word in shown


@pytest.mark.parametrize(
    ("paste", "expected"),
    [
        pytest.param(
            "12 please\n14\n\nPage 7, thanks\nlol: 44\n",
            [("", "12 please"), ("", "14"), ("", "Page 7, thanks"), ("", "lol: 44")],
            id="one a line",
        ),
        pytest.param(
            "Gran T: page 12\nAnnie: 8, or:\n9 if taken\nBo : 14\n",
            [("Gran T", "page 12"), ("Annie", "8, or:\n9 if taken"), ("Bo", "14")],
            id="names before colons",
        ),
        pytest.param(
            "My vote: 12\nPage: 8\nvote: 14\n",
            [("", "My vote: 12"), ("", "Page: 8"), ("", "vote: 14")],
            id="what is no name",
        ),
        pytest.param(
            "糸と風： 16\nAnnie: 8\n", [("糸と風", "16"), ("Annie", "8")], id="a wide colon"
        ),
    ],
)
def test_a_list_without_times_is_read_as_one(
    read: Read, paste: str, expected: list[tuple[str, str]]
) -> None:
    export = read(paste)
    assert export.format == "pasted"
    assert [(one.author, one.text) for one in export.comments] == expected
    assert all(one.posted.latest == COPIED for one in export.comments)
    assert all(one.posted.earliest.year == 1970 for one in export.comments)
    assert "The paste tells no times" in export.notes[0]
