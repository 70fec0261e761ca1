"""What a header or a field's name means, in ten languages.

Common practice, no source: names as tools and people write them over columns of comments.
"""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache
from typing import Literal

from service.comments.formats import Meaning

#: `clock` is a time of day beside a column of dates; `other` is known to be none of a comment's.
Known = Literal[Meaning, "clock", "other"]

# Best names first: where two columns mean the same, the earlier name is taken.
_NAMES: dict[Known, str] = {
    "text": (
        "text, comment text, message text, raw text, plain text, original text, content text, "
        "comment, comment body, comment content, message, body, content, "
        "texte, commentaire, contenu, kommentar, kommentartext, nachricht, inhalt, beitrag, wortlaut, "
        "texto, comentario, mensaje, contenido, testo, commento, messaggio, contenuto, "
        "mensagem, conteudo, tekst, reactie, opmerking, bericht, inhoud, commentaar, "
        "comments, commentaires, kommentare, comentarios, commenti, "
        "reacties, msg, note, remark, feedback, answer, antwort, reponse, respuesta, risposta, resposta, "
        "antwoord, kommentaren, meddelande, inlagg, innehall, svar, komentarz, komentarze, wiadomosc, "
        "tresc, wypowiedz, wpis, odpowiedz, コメント, コメント本文, コメント内容, 本文, 内容, メッセージ, "
        "投稿内容, テキスト, vote, guess, choice, pick, page, what"
    ),
    "author": (
        "author, author name, display name, author username, commenter, "
        "comment author, auteur, autor, autorin, autora, autore, autrice, verfasser, verfasserin, "
        "user name, username, user, nickname, nick, handle, posted by, written by, "
        "nom d utilisateur, pseudo, utilisateur, benutzername, nutzername, benutzer, nutzer, "
        "nombre de usuario, usuario, usuaria, nome utente, utente, nome de usuario, utilizador, "
        "gebruikersnaam, gebruiker, schrijver, sender, absender, expediteur, remitente, mittente, "
        "remetente, afzender, full name, name, nom, nombre, nome, naam, member, membre, mitglied, "
        "forfattare, anvandarnamn, anvandare, namn, avsandare, skribent, autorka, nazwa uzytkownika, "
        "uzytkownik, uzytkowniczka, imie, nazwa, nadawca, 投稿者名, 投稿者, ユーザー名, ユーザー, 名前, "
        "氏名, 作成者, 著者, ニックネーム, 表示名, "
        "viewer, person, poster, writer, login, commented by, from, by, who, wer, von, vem, kto, "
        "participant, account"
    ),
    "author_id": (
        "author id, user id, uid, commenter id, member id, author user id, author account id, "
        "account id, sender id, from id, author uri, author url, user uri, "
        "id auteur, id de l auteur, id utilisateur, autor id, autoren id, benutzer id, nutzer id, "
        "id autor, id de autor, id del autor, id usuario, id de usuario, id autore, id utente, "
        "id do autor, id do usuario, id do utilizador, auteur id, gebruiker id, gebruikers id, "
        "anvandar id, forfattar id, forfattarens id, id autora, id uzytkownika, ユーザーid, 投稿者id"
    ),
    "id": (
        "comment id, message id, id, comment uuid, uuid, guid, comment key, identifier, "
        "id commentaire, id du commentaire, identifiant, kommentar id, kennung, id comentario, "
        "id del comentario, identificador, id commento, id do comentario, reactie id, bericht id, "
        "kommentars id, kommentarens id, id komentarza, identyfikator, コメントid, 識別子"
    ),
    "posted": (
        "posted at, posted on, posted, published at, published, created at, created time, "
        "created, comment date, comment time, date posted, post date, publish date, publish time, "
        "publication date, submitted at, submitted, sent at, sent, written at, written, "
        "commented at, commented on, timestamp, ts, date time, date and time, date, time, when, added at, added, ago, "
        "publie le, publie, date de publication, date et heure, horodatage, cree le, ecrit le, "
        "envoye le, quand, heure, veroffentlicht am, veroffentlicht, erstellt am, erstellt, "
        "geschrieben am, geschrieben, gepostet am, gepostet, zeitstempel, zeitpunkt, "
        "datum und uhrzeit, datum uhrzeit, datum, zeit, uhrzeit, wann, gesendet, publicado el, publicado, "
        "fecha y hora, fecha de publicacion, fecha, creado el, creado, escrito, enviado, marca de tiempo, "
        "hora, cuando, pubblicato il, pubblicato, data e ora, data di pubblicazione, data, "
        "creato il, creato, scritto, inviato, ora, quando, publicado em, data e hora, data hora, "
        "data de publicacao, criado em, criado, enviado em, geplaatst op, geplaatst, "
        "gepubliceerd op, gepubliceerd, aangemaakt op, aangemaakt, datum en tijd, tijdstip, "
        "tijdstempel, tijd, wanneer, verzonden, publicerad, publicerat, publiceringsdatum, skapad, "
        "skapat, skrivet, postat, skickat, datum och tid, tidpunkt, tidsstampel, tid, nar, "
        "opublikowano, data publikacji, data utworzenia, utworzono, dodano, data dodania, napisano, "
        "wyslano, data i godzina, znacznik czasu, czas, godzina, kiedy, "
        "投稿日時, 投稿日, 公開日時, 公開日, 作成日時, 作成日, 日時, 日付, 送信日時, 時刻"
    ),
    "edited": (
        "edited at, edited on, last edited at, last edited, last edit, edited, updated at, updated on, "
        "updated, last updated, modified at, modified, last modified, changed at, changed, "
        "is edited, was edited, edit time, modifie le, modifie, mis a jour le, mis a jour, "
        "bearbeitet am, bearbeitet, geandert am, geandert, aktualisiert am, aktualisiert, "
        "editado el, editado, modificado el, modificado, actualizado el, actualizado, "
        "modificato il, modificato, aggiornato il, aggiornato, editado em, alterado em, alterado, "
        "atualizado em, atualizado, modificado em, bewerkt op, bewerkt, gewijzigd op, gewijzigd, "
        "bijgewerkt op, bijgewerkt, redigerad, redigerat, senast redigerad, andrad, andrat, uppdaterad, "
        "uppdaterat, edytowano, data edycji, zmieniono, zmodyfikowano, zaktualizowano, "
        "編集日時, 編集日, 更新日時, 更新日, 編集済み"
    ),
    "reply_to": (
        "reply to, reply to id, reply to comment id, replied to id, in reply to comment id, in reply to, in reply to id, parent comment id, parent id, parent, "
        "parent comment, answer to, answers, replies to, reponse a, en reponse a, parent id, "
        "antwort auf, antwort zu, eltern id, ubergeordnet, respuesta a, en respuesta a, padre, "
        "id padre, risposta a, in risposta a, resposta a, em resposta a, antwoord op, reactie op, "
        "svar pa, svar till, overordnad, odpowiedz na, w odpowiedzi na, nadrzedny, 返信先, 返信先id, 親コメント"
    ),
    "clock": (
        "time, clock, time of day, heure, uhrzeit, zeit, hora, ora, ore, tijd, tid, klockslag, "
        "godzina, czas, 時刻, 時間, comment time"
    ),
    "other": (
        "likes, like count, like, favorites, favourites, upvotes, downvotes, dislikes, score, votes, points, rank, "
        "replies, reply count, replies count, number of replies, count, number, no, nr, row, index, #, "
        "url, link, permalink, uri, href, avatar, picture, image, photo, email, e mail, mail, "
        "language, lang, locale, platform, source, title, "
        "subject, post, post id, thread, thread id, page id, pinned, is pinned, is host, is owner, is reply, "
        "deleted, is deleted, hidden, spam, status, state, type, kind, version, country, badge, role, "
        "j aime, mentions j aime, reponses, nombre de reponses, lien, langue, titre, gefallt mir, antworten, anzahl antworten, "
        "sprache, titel, me gusta, respuestas, enlace, idioma, titulo, mi piace, risposte, "
        "collegamento, lingua, titolo, gostos, curtidas, respostas, ligacao, vind ik leuks, antwoorden, koppeling, "
        "taal, gilla, gillar, gilla markeringar, antal svar, antal, sprak, lank, polubienia, "
        "liczba polubien, liczba odpowiedzi, liczba, jezyk, いいね, いいね数, 高評価, 返信数, 言語, "
        "views, reactions, reports, level, depth, position"
    ),
}


#: Letters that stand for others with a mark, and that Unicode does not take apart.
_LETTERS = str.maketrans({"ß": "ss", "ł": "l", "ø": "o", "æ": "ae", "đ": "d"})


#: Longer headers are not remembered: anybody may send any.
_LONGEST_REMEMBERED = 40


def spelled(name: str) -> str:
    """A header as names are compared: words in lower case without accents, one space between."""
    return _remembered(name) if len(name) <= _LONGEST_REMEMBERED else _spelled(name)


@lru_cache(maxsize=2048)
def _remembered(name: str) -> str:
    return _spelled(name)


def _spelled(name: str) -> str:
    name = re.sub(r"([a-z\d])([A-Z])", r"\1 \2", name)
    bare = unicodedata.normalize("NFKD", name.casefold().translate(_LETTERS))
    bare = "".join(sign for sign in bare if not unicodedata.combining(sign))
    return " ".join(re.sub(r"[^\w#]|_", " ", bare).split())


@lru_cache(maxsize=1)
def _ranks() -> dict[str, dict[Known, int]]:
    """For each name, joined without spaces, what it may mean and how good a name it is."""
    ranks: dict[str, dict[Known, int]] = {}
    for meaning, names in _NAMES.items():
        for rank, name in enumerate(names.split(",")):
            ranks.setdefault(spelled(name).replace(" ", ""), {}).setdefault(meaning, rank)
    return ranks


#: Words that tell what a longer header means ("Your name", "Which comment?").
_TELLING: dict[Known, frozenset[str]] = {
    "author": frozenset(
        {"name", "author", "user", "username", "nick", "nom", "auteur", "autor", "nombre"}
        | {"usuario", "nome", "autore", "naam"}
    ),
    "text": frozenset(
        {"comment", "message", "text", "kommentar", "nachricht", "commentaire", "comentario"}
        | {"commento", "tekst"}
    ),
    "posted": frozenset(
        {"date", "timestamp", "datum", "fecha", "data", "horodatage", "zeitstempel", "posted"}
    ),
}
#: Words that say of a longer header that it counts or points at something.
_COUNTING = frozenset(
    {"id", "ids", "count", "counts", "number", "total", "url", "link", "likes", "likers", "anzahl"}
    | {"numero", "language", "type", "status", "reply", "replies", "file"}
)
_UNSURE = 1000


def meanings_of(name: str) -> dict[Known, int]:
    """What a name may mean, with the rank of each: the lower, the surer. Empty: it says nothing."""
    for each in (name, name.partition("(")[0]):  # "Date (UTC)", "Kommentar (Text)"
        found = _ranks().get(spelled(each).replace(" ", ""))
        if found:
            return found
    words = set(spelled(name).split())
    told = [meaning for meaning, telling in _TELLING.items() if telling & words]
    if len(told) != 1 or len(words) > 8 or _COUNTING & words:
        return {}
    return dict.fromkeys(told, _UNSURE)
