"""Pasted pages: blocks of author, time, words and buttons, from pages of many kinds."""

from __future__ import annotations

from datetime import timedelta

import pytest

from service.comments.spans import Span
from tests.comments.conftest import COPIED, TICK, Read

DAY = timedelta(days=1)


def days_ago(number: int) -> Span:
    return Span(COPIED - (number + 1) * DAY + TICK, COPIED - number * DAY)


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
        pytest.param(
            "Gran T\n5 days ago\n12 please\nLike 3 Reply\nAnnie\n2 days ago\n8\n14 Reply Share\n",
            id="buttons and counts on one line",
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
    assert comment.edited == Span(days_ago(5).earliest, COPIED)


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
