"""Tables: delimiters, headers by meaning in ten languages, columns by content, bad rows."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from service.comments.spans import Span
from service.errors import BadExport, NoTextColumn
from tests.comments.conftest import Read

NOON = Span.at(datetime(2026, 2, 27, 12, 0, 9, tzinfo=UTC))


@pytest.mark.parametrize("delimiter", [",", ";", "\t", "|"])
def test_the_delimiter_is_found(read: Read, delimiter: str) -> None:
    rows = [
        ["author", "posted_at", "text"],
        ["Gran T", "2026-02-27T12:00:09Z", "12"],
        ["Annie", "2026-02-27T12:00:09Z", '"8, 9; or | 10"'],
    ]
    export = read("\r\n".join(delimiter.join(row) for row in rows))
    assert export.format == "table"
    assert [one.text for one in export.comments] == ["12", "8, 9; or | 10"]
    assert {one.posted for one in export.comments} == {NOON}


def test_a_first_line_may_name_the_delimiter(read: Read) -> None:
    export = read("sep=;\nauthor;text\nGran T;12, please\n")
    assert [(one.author, one.text, one.place) for one in export.comments] == [
        ("Gran T", "12, please", "line 3")
    ]


@pytest.mark.parametrize(
    "header",
    [
        pytest.param("author,author_id,id,date,edited_at,reply_to,comment", id="English"),
        pytest.param(
            "Username,User ID,Comment ID,Timestamp,Last edited,In reply to,Message",
            id="more English",
        ),
        pytest.param(
            "authorName,authorId,commentId,createdAt,updatedAt,parentId,body", id="joined words"
        ),
        pytest.param(
            "Auteur,ID auteur,ID commentaire,Publié le,Modifié le,Réponse à,Commentaire",
            id="French",
        ),
        pytest.param(
            "Verfasser,Benutzer-ID,Kommentar-ID,Datum,Geändert am,Antwort auf,Kommentar",
            id="German",
        ),
        pytest.param(
            "Usuario,ID de usuario,ID comentario,Fecha,Editado,Respuesta a,Comentario", id="Spanish"
        ),
        pytest.param(
            "Utente,ID utente,ID commento,Data,Modificato il,Risposta a,Commento", id="Italian"
        ),
        pytest.param(
            "Usuário,ID do usuário,ID comentário,Publicado em,Editado em,Resposta a,Comentário",
            id="Portuguese",
        ),
        pytest.param(
            "Gebruiker,Gebruikers-ID,Reactie-ID,Geplaatst op,Bewerkt op,Antwoord op,Reactie",
            id="Dutch",
        ),
        pytest.param(
            "Användarnamn,Användar-ID,Kommentarens ID,Publicerad,Senast redigerad,Svar på,Kommentar",
            id="Swedish",
        ),
        pytest.param(
            "Użytkownik,ID użytkownika,ID komentarza,Opublikowano,Edytowano,Odpowiedź na,Treść",
            id="Polish",
        ),
        pytest.param("投稿者,投稿者ID,コメントID,投稿日時,編集日時,返信先,コメント", id="Japanese"),
    ],
)
def test_headers_are_understood_in_ten_languages(read: Read, header: str) -> None:
    export = read(
        f"{header}\nGran T,a-1,c2,2026-02-27T12:00:09Z,2026-02-27T12:30:00Z,c1,Seite 12\n"
    )
    comment = export.comments[0]
    assert (comment.author, comment.author_id, comment.id) == ("Gran T", "a-1", "c2")
    assert (comment.text, comment.reply_to, comment.posted) == ("Seite 12", "c1", NOON)
    assert comment.edited == Span.at(datetime(2026, 2, 27, 12, 30, tzinfo=UTC))
    names = dict(
        zip(
            ("author", "author_id", "id", "posted", "edited", "reply_to", "text"),
            header.split(","),
            strict=True,
        )
    )
    assert dict(export.mapping) == names


def test_the_order_of_columns_does_not_matter_and_others_are_passed_over(read: Read) -> None:
    export = read("likes,text,replies,author,url\n5,12,7,Gran T,https://hall.example/1\n")
    assert [(one.author, one.text) for one in export.comments] == [("Gran T", "12")]
    assert export.mapping == (("text", "text"), ("author", "author"))


@pytest.mark.parametrize(
    "table",
    [
        pytest.param(
            "wann;wer;was\n2026-02-27T12:00:09Z;Gran T;12\n2026-02-27T12:00:09Z;Annie;8\n",
            id="names of few letters",
        ),
        pytest.param(
            "foo;bar;baz\n2026-02-27T12:00:09Z;Gran T;12\n2026-02-27T12:00:09Z;Annie;8\n",
            id="names that say nothing",
        ),
        pytest.param(
            "2026-02-27T12:00:09Z;Gran T;12\n2026-02-27T12:00:09Z;Annie;8\n", id="no header"
        ),
        pytest.param(
            "Timestamp,Your name,Which page next?\n2026-02-27T12:00:09Z,Gran T,12\n"
            "2026-02-27T12:00:09Z,Annie,8\n",
            id="questions as names",
        ),
    ],
)
def test_columns_are_told_by_what_stands_in_them(read: Read, table: str) -> None:
    export = read(table)
    assert [(one.author, one.text, one.posted) for one in export.comments] == [
        ("Gran T", "12", NOON),
        ("Annie", "8", NOON),
    ]


def test_a_table_without_a_header_says_so(read: Read) -> None:
    export = read("2026-02-27T12:00:09Z;Gran T;12\n2026-02-27T12:00:09Z;Annie;8\n")
    assert export.mapping == (("text", "column 3"), ("author", "column 2"), ("posted", "column 1"))
    assert "no headers" in export.notes[0]


def test_ids_are_told_apart_without_a_header(read: Read) -> None:
    export = read(
        "c101,Gran T,a-77,2026-02-27T12:00:09Z,,,Page 12 please\n"
        "c102,Annie,a-78,2026-02-27T12:00:09Z,2026-02-27T13:00:00Z,c101,me too\n"
        "c103,Gran T,a-77,2026-02-27T12:00:09Z,,c102,kettle is on\n"
    )
    second = export.comments[1]
    assert (second.id, second.author, second.author_id) == ("c102", "Annie", "a-78")
    assert (second.reply_to, second.text) == ("c101", "me too")
    assert second.edited == Span.at(datetime(2026, 2, 27, 13, 0, tzinfo=UTC))


def test_the_caller_s_columns_overrule(read: Read) -> None:
    table = "text,note,who\nnot this,12,Gran T\n"
    export = read(table, columns=(("text", "note"), ("author", "WHO")))
    assert [(one.author, one.text) for one in export.comments] == [("Gran T", "12")]
    assert export.mapping == (("text", "note"), ("author", "who"))


@pytest.mark.parametrize(
    "header", ["login,ts,msg", "name,when,page", "commenter,commented at,vote"]
)
def test_short_and_other_names_are_understood(read: Read, header: str) -> None:
    export = read(f"{header}\nGran T,2026-02-27T12:00:09Z,12\n")
    assert [(one.author, one.posted, one.text) for one in export.comments] == [
        ("Gran T", NOON, "12")
    ]


def test_columns_of_a_headerless_table_are_named_by_number(read: Read) -> None:
    export = read("x1,Gran T,12\ny2,Annie,8\n", columns=(("text", "3"), ("author", "2")))
    assert [(one.author, one.text) for one in export.comments] == [("Gran T", "12"), ("Annie", "8")]


@pytest.mark.parametrize(
    ("columns", "why"),
    [
        pytest.param(
            (("text", "Wörter"),),
            "there is no column 'Wörter': name one of these: a, text",
            id="no such header",
        ),
        pytest.param((("text", "9"),), "there is no column '9'", id="no such number"),
        pytest.param(
            (("words", "text"),),
            "a column cannot mean 'words': name one of text, author",
            id="no such meaning",
        ),
    ],
)
def test_a_column_that_is_not_there_is_one_sentence(
    read: Read, columns: tuple[tuple[str, str], ...], why: str
) -> None:
    with pytest.raises(BadExport, match=why.replace("'", ".")):
        read("a,text\nGran T,12\n", columns=columns)


@pytest.mark.parametrize(
    "table",
    [
        "id,posted_at,likes\n1,2026-02-27T12:00:09Z,4\n2,2026-02-27T12:01:00Z,5\n",
        "x,y\n1,2\n3,4\n",
    ],
)
def test_a_table_without_texts_is_one_sentence_with_its_columns(read: Read, table: str) -> None:
    with pytest.raises(NoTextColumn) as error:
        read(table, name="comments.csv")
    assert error.value.columns == tuple(table.split("\n", maxsplit=1)[0].split(","))
    assert "--columns text=HEADER" in str(error.value)


def test_rows_that_cannot_be_read_are_shown_with_their_lines(read: Read) -> None:
    export = read(
        "author,text,date\r\n"
        'Gran T,"12,\r\nplease",2026-02-27T12:00:09Z\r\n'
        "Annie\r\n"
        "Bo,8,2026-02-27T12:00:09Z,and,more\r\n"
        "\r\n"
        "Cy,,2026-02-27T12:00:09Z\r\n"
        "Dee,9,2026-02-27T12:00:09Z,,\r\n"
        "Eve,10\r\n"
    )
    assert [(one.place, one.text) for one in export.comments] == [
        ("line 2", "12,\nplease"),
        ("line 8", "9"),
        ("line 9", "10"),
    ]
    assert [one.place for one in export.unreadable] == ["line 4", "line 5", "line 7"]
    assert export.unreadable[0].why == "the row has 1 columns where 3 were expected"
    assert "5 columns" in export.unreadable[1].why
    assert "Bo,8" in export.unreadable[1].text
    assert "without words" in export.unreadable[2].why


def test_words_that_should_have_been_quoted_are_kept_whole_where_they_stand_last(
    read: Read,
) -> None:
    export = read("author,text\nGran T,12, no wait, 14\n")
    assert export.comments[0].text == "12, no wait, 14"


def test_a_quotation_mark_that_never_closes_loses_no_row_after_it(read: Read) -> None:
    export = read('author,text\nGran T,12\nAnnie,"8 please\nBo,27\nCy,4\n')
    assert [(one.author, one.text) for one in export.comments] == [
        ("Gran T", "12"),
        ("Bo", "27"),
        ("Cy", "4"),
    ]
    assert [(one.place, one.text) for one in export.unreadable] == [("line 3", 'Annie,"8 please')]
    assert "never closed" in export.unreadable[0].why


def test_very_many_open_quotation_marks_end_in_one_row(read: Read) -> None:
    rows = "".join(f'A{number},"x{number}" "\n' for number in range(200))
    export = read(f'author,text\nGran T,12\nAnnie,"{rows}', name="comments.csv")
    assert export.comments[0].text == "12"
    assert len(export.unreadable) < 200


def test_a_field_that_is_far_too_long_is_one_unreadable_row(read: Read) -> None:
    export = read(f"author,text\nGran T,{'1' * 200_000}\nAnnie,8\n")
    assert [one.text for one in export.comments] == ["8"]
    assert "longer than" in export.unreadable[0].why
    assert len(export.unreadable[0].text) < 200


def test_an_id_column_that_is_the_author_s_is_taken_as_such(read: Read) -> None:
    export = read("id,name,comment\n7,Gran T,12\n8,Annie,9\n7,Gran T,14\n7,Gran T,kettle on\n")
    assert {one.id for one in export.comments} == {None}
    assert [one.author_id for one in export.comments] == ["7", "8", "7", "7"]


def test_a_table_of_texts_alone_has_as_many_voters_as_rows(read: Read) -> None:
    export = read("comment\n12\n14\n", name="comments.csv")
    assert [(one.author, one.text) for one in export.comments] == [("", "12"), ("", "14")]
    assert any("voter of its own" in note for note in export.notes)


def test_a_kind_of_row_is_not_taken_for_an_author(read: Read) -> None:
    rows = "".join(f"2026-02-27T12:00:09Z,mobile,page {number} please\n" for number in range(1, 12))
    export = read(f"posted,device,text\n{rows}")
    assert {one.author for one in export.comments} == {""}


def test_a_table_with_a_header_alone_has_no_comments(read: Read) -> None:
    export = read("author,posted_at,text\n")
    assert export.comments == ()
    assert export.unreadable == ()


def test_nul_characters_are_shown_as_what_they_are(read: Read) -> None:
    export = read(
        "author,text\nGran T,12\0 please and thank you very much indeed\n" + "Bo,8\n" * 20
    )
    assert export.comments[0].text.startswith("12\ufffd please")
