"""Pasted pages in ten languages: times as Babel writes them, marks and buttons as pages do.

The words on buttons are common practice, no source; the times are Unicode CLDR's.
"""

from __future__ import annotations

from datetime import timedelta

import pytest
from babel.dates import format_timedelta

from tests.comments.conftest import COPIED, TICK, Read

#: By language: pinned, edited, translate, reply, replies shown, replies hidden.
WORDS = {
    "en": ("Pinned by the host", "edited", "Translate", "Reply", "2 replies", "Hide replies"),
    "fr": ("Épinglé par l'hôte", "modifié", "Traduire", "Répondre", "2 réponses", "Masquer les réponses"),
    "de": ("Angepinnt von der Gastgeberin", "bearbeitet", "Übersetzen", "Antworten", "2 Antworten", "Antworten ausblenden"),
    "es": ("Fijado por la anfitriona", "editado", "Traducir", "Responder", "2 respuestas", "Ocultar las respuestas"),
    "it": ("Fissato in alto", "modificato", "Traduci", "Rispondi", "2 risposte", "Nascondi risposte"),
    "pt": ("Fixado pela anfitriã", "editado", "Traduzir", "Responder", "2 respostas", "Ocultar respostas"),
    "nl": ("Vastgezet door de gastvrouw", "bewerkt", "Vertalen", "Beantwoorden", "2 reacties", "Reacties verbergen"),
    "sv": ("Fäst av värden", "redigerad", "Översätt", "Svara", "2 svar", "Dölj svar"),
    "pl": ("Przypięty przez gospodynię", "edytowano", "Przetłumacz", "Odpowiedz", "2 odpowiedzi", "Ukryj odpowiedzi"),
    "ja": ("主催者によって固定されています", "編集済み", "翻訳", "返信", "2 件の返信", "返信を非表示"),
}  # fmt: skip
UNITS = {"hour": 3600, "day": 86400, "week": 604800}
LAYOUTS = ("above", "beside", "below")
#: A name that is a number cannot be told from a count where it stands below a button.
NUMBER = "42"


def ago(language: str, unit: str, number: int) -> str:
    back = timedelta(seconds=-UNITS[unit] * number)
    return format_timedelta(back, threshold=1, add_direction=True, locale=language)


def block(layout: str, language: str, author: str, time: str, words: str, count: str) -> str:
    """One comment as a page shows it."""
    _, _, translate, reply, _, _ = WORDS[language]
    if layout == "above":
        return f"{author}\n{time}\n{words}\n{translate}\n{count}\n{reply}\n"
    if layout == "beside":
        return f"{author} · {time}\n\n{words}\n\n{count}\n\n{reply}\n\n"
    return f"{author}\n{words}\n{time}\n{reply}\n"


@pytest.mark.parametrize("language", WORDS)
@pytest.mark.parametrize("layout", LAYOUTS)
def test_a_page_is_read_in_ten_languages(read: Read, language: str, layout: str) -> None:
    told = [
        ("Gran T", "hour", 3, "12 please"),
        ("糸と風", "day", 2, "8"),
        (NUMBER if layout != "below" else "Frogging", "week", 1, "page 9\n- 12:47 -"),
        ("Bo", "day", 5, "No page today!"),
    ]
    page = "".join(
        block(layout, language, author, ago(language, unit, number), words, "1.2K")
        for author, unit, number, words in told
    )
    export = read(page)
    assert export.unreadable == ()
    assert [(one.author, one.text) for one in export.comments] == [
        (author, words) for author, _, _, words in told
    ]
    for comment, (_, unit, number, _) in zip(export.comments, told, strict=True):
        size = timedelta(seconds=UNITS[unit])
        assert comment.posted.latest == COPIED - number * size
        assert comment.posted.earliest == COPIED - (number + 1) * size + TICK


@pytest.mark.parametrize("language", WORDS)
def test_pinned_edited_and_answered_comments_are_told_apart(read: Read, language: str) -> None:
    pinned, edited, _, reply, shown, hidden = WORDS[language]
    time = ago(language, "day", 3)
    page = (
        f"{pinned}\nGran T\n{time} ({edited})\n12 please\n1.2K\n{reply}\n{shown}\n{hidden}\n"
        f"Annie\n{time}\n@Gran T me too\n{reply}\nBo\n{time} · {edited}\n8\n{reply}\n{shown}\n"
        f"{time}\n14 from nobody\n{reply}\n"
    )
    export = read(page)
    assert [(one.author, one.text, one.edited is not None) for one in export.comments] == [
        ("Gran T", "12 please", True),
        ("Annie", "@Gran T me too", False),
        ("Bo", "8", True),
        ("", "14 from nobody", False),
    ]
    assert export.unreadable == ()


@pytest.mark.parametrize("language", WORDS)
def test_words_that_look_like_buttons_stay_words_inside_a_comment(
    read: Read, language: str
) -> None:
    _, edited, translate, reply, _, _ = WORDS[language]
    time = ago(language, "day", 3)
    said = f"I say {reply}\n{edited}? No: 12"
    page = f"Gran T\n{time}\n{said}\n{translate}\n{reply}\nAnnie\n{time}\n8\n{reply}\n"
    assert [one.text for one in read(page).comments] == [said, "8"]
