"""Words that pages put around comments, by language: buttons, marks of authors, notices.

Common practice, no source. What is not listed is learned from its standing in every block, or
shown to the host.
"""

from __future__ import annotations

import re

#: Ends a comment: the button to answer it.
REPLY: dict[str, str] = {
    "cs": "odpovědět",
    "da": "svar, besvar",
    "de": "antworten, antwort",
    "en": "reply",
    "es": "responder",
    "fi": "vastaa",
    "fr": "répondre",
    "it": "rispondi",
    "ja": "返信, 返信する",
    "ko": "답글, 답글 달기",
    "nb": "svar",
    "nl": "beantwoorden, reageren, antwoorden",
    "pl": "odpowiedz",
    "pt": "responder",
    "ru": "ответить",
    "sv": "svara",
    "tr": "yanıtla",
    "uk": "відповісти",
    "zh": "回复, 回覆",
}

#: Stands right below a comment's words: translates them, or shows the rest of them.
BELOW_WORDS: dict[str, str] = {
    "da": "oversæt, vis mere, læs mere, vis mindre, se oversættelse",
    "de": (
        "übersetzen, übersetzung anzeigen, original anzeigen, mehr anzeigen, mehr lesen, mehr, "
        "weiterlesen, weniger anzeigen, weniger"
    ),
    "en": (
        "translate, translate to english, see translation, show translation, see original, "
        "show original, show more, read more, see more, more, show less, read less, see less, less"
    ),
    "es": "traducir, ver traducción, ver original, mostrar más, ver más, leer más, mostrar menos, ver menos",
    "fi": "käännä, näytä lisää, lue lisää, näytä vähemmän",
    "fr": (
        "traduire, voir la traduction, afficher la traduction, voir l'original, afficher plus, "
        "voir plus, lire la suite, lire plus, plus, afficher moins, voir moins, moins"
    ),
    "it": (
        "traduci, vedi traduzione, mostra traduzione, vedi originale, mostra altro, "
        "mostra di più, leggi tutto, leggi di più, altro, mostra meno"
    ),
    "ja": "翻訳, 翻訳する, 翻訳を表示, 原文を表示, もっと見る, 続きを読む, さらに表示, 一部を表示, 閉じる",
    "nb": "oversett, se oversettelse, vis mer, les mer, vis mindre",
    "nl": (
        "vertalen, vertaling weergeven, vertaling bekijken, meer weergeven, meer tonen, "
        "meer lezen, lees meer, minder weergeven, minder tonen"
    ),
    "pl": "przetłumacz, zobacz tłumaczenie, pokaż więcej, czytaj więcej, więcej, pokaż mniej",
    "pt": "traduzir, ver tradução, ver original, mostrar mais, ver mais, ler mais, mostrar menos, ver menos",
    "sv": "översätt, visa översättning, visa original, visa mer, läs mer, visa mindre",
}

#: Of these, what shows that words may still be hidden.
FOLDED = re.compile(
    r"(?:show|read|see) more|more|mehr(?: anzeigen| lesen)?|weiterlesen|(?:afficher|voir|lire) plus|"
    r"lire la suite|plus|(?:mostrar|ver|leer|ler) (?:más|mais)|mostra (?:altro|di più)|"
    r"leggi (?:tutto|di più)|altro|meer (?:weergeven|tonen|lezen)|lees meer|visa mer|läs mer|"
    r"pokaż więcej|czytaj więcej|więcej|もっと見る|続きを読む|さらに表示|vis mere?|læs mere|les mer|"
    r"näytä lisää|lue lisää"
)

#: Other buttons and lists around comments.
BUTTONS: dict[str, str] = {
    "da": "synes godt om, del, rapportér, rediger, slet, vis flere kommentarer",
    "de": (
        "gefällt mir, teilen, melden, bearbeiten, löschen, zitieren, "
        "mehr kommentare, mehr kommentare anzeigen, weitere kommentare anzeigen"
    ),
    "en": (
        "like, likes, liked, unlike, dislike, love, react, share, report, flag, quote, save, copy link, "
        "permalink, edit, delete, hide, follow, upvote, downvote, show more comments, options, "
        "view more comments, load more comments, load more, more comments, more replies, menu"
    ),
    "es": (
        "me gusta, no me gusta, compartir, denunciar, reportar, editar, eliminar, citar, "
        "mostrar más comentarios, ver más comentarios"
    ),
    "fi": "tykkää, jaa, ilmoita, muokkaa, poista, näytä lisää kommentteja",
    "fr": (
        "j'aime, je n'aime pas, partager, signaler, modifier, supprimer, citer, "
        "afficher plus de commentaires, voir plus de commentaires"
    ),
    "it": (
        "mi piace, non mi piace, condividi, segnala, modifica, elimina, cita, "
        "mostra altri commenti, visualizza altri commenti"
    ),
    "ja": "いいね, いいね!, 高評価, 低評価, 共有, シェア, 報告, 編集, 削除, コメントをもっと見る",
    "nb": "liker, lik, del, rapporter, rediger, slett, vis flere kommentarer",
    "nl": (
        "vind ik leuk, leuk, delen, rapporteren, melden, bewerken, verwijderen, citeren, "
        "meer reacties, meer reacties weergeven"
    ),
    "pl": "lubię to, udostępnij, zgłoś, edytuj, usuń, cytuj, pokaż więcej komentarzy",
    "pt": (
        "curtir, gosto, não gosto, partilhar, compartilhar, denunciar, editar, excluir, eliminar, "
        "citar, ver mais comentários, mostrar mais comentários"
    ),
    "sv": "gilla, dela, anmäl, rapportera, redigera, ta bort, citera, visa fler kommentarer",
}

#: Marks beside an author's name.
BADGES: dict[str, str] = {
    "de": "gastgeber, gastgeberin, autor, autorin, moderator, moderatorin, mitglied, ersteller",
    "en": (
        "host, author, creator, op, original poster, owner, moderator, mod, admin, staff, team, "
        "member, subscriber, supporter, patron, top fan, verified, pro, guest, new"
    ),
    "es": "anfitrión, anfitriona, autor, autora, creador, creadora, moderador, moderadora, miembro",
    "fr": "hôte, hôtesse, auteur, autrice, créateur, créatrice, modérateur, modératrice, membre",
    "it": "ospite, autore, autrice, creatore, creatrice, moderatore, moderatrice, membro",
    "ja": "ホスト, 主催者, 投稿者, 作成者, メンバー, モデレーター",
    "nl": "gastheer, gastvrouw, auteur, maker, beheerder, moderator, lid",
    "pl": "gospodarz, gospodyni, autor, autorka, twórca, moderator",
    "pt": "anfitrião, anfitriã, autor, autora, criador, criadora, moderador, moderadora, membro",
    "sv": "värd, författare, skapare, moderator, medlem",
}

#: Said of a comment whose words were changed.
EDITED: dict[str, str] = {
    "cs": "upraveno",
    "da": "redigeret",
    "de": "bearbeitet, geändert",
    "en": "edited, modified, updated",
    "es": "editado, editada, modificado",
    "fi": "muokattu",
    "fr": "modifié, modifiée, édité",
    "it": "modificato, modificata",
    "ja": "編集済み, 編集済",
    "ko": "수정됨, 수정",
    "nb": "redigert",
    "nl": "bewerkt, aangepast",
    "pl": "edytowano, edytowany, zmodyfikowano",
    "pt": "editado, editada, modificado",
    "ru": "изменено, ред., отредактировано",
    "sv": "redigerad, redigerat, ändrad",
    "tr": "düzenlendi",
    "uk": "змінено, відредаговано",
    "zh": "已编辑, 已編輯",
}


def words_of(table: dict[str, str]) -> frozenset[str]:
    """All words of a table, whatever the language."""
    return frozenset(word.strip() for words in table.values() for word in words.split(","))


_ANSWERS = (
    r"repl(?:y|ies)|antwort(?:en)?|réponses?|respuestas?|rispost[ae]|respostas?|reacties?|"
    r"antwoord(?:en)?|svar|odpowied(?:ź|zi)|vastaus(?:ta)?|odpověd[ií]|ответ(?:а|ов|ы)?|відповід[іь]|"
    r"답글|yanıt"
)
_MANY_ANSWERS = r"replies|antworten|réponses|respuestas|risposte|respostas|reacties|odpowiedzi"
_AROUND_ANSWERS = (
    r"view|show|hide|see|load|all|more|previous|the|from|anzeigen|ausblenden|weitere|alle|zeigen|"
    r"voir|afficher|masquer|les|la|des?|toutes|autres|ver|mostrar|ocultar|las|más|todas|otras|"
    r"visualizza|mostra|nascondi|altr[ae]|tutte|le|esconder|mais|outras|as|bekijk|toon|tonen|verberg|"
    r"verbergen|meer|weergeven|visa|dölj|fler|alla|pokaż|ukryj|więcej|vis|skjul|flere|näytä|piilota|"
    r"показать|скрыть|ещё|\d+"
)
#: "18 replies", "Hide replies", "3 Antworten anzeigen", "返信 3 件".
ABOUT_REPLIES = re.compile(
    rf"(?:(?:{_AROUND_ANSWERS}) ){{1,4}}(?:{_ANSWERS})(?: (?:{_AROUND_ANSWERS}))?"
    rf"|(?:{_MANY_ANSWERS}) (?:(?:{_AROUND_ANSWERS}) ?){{1,3}}|(?:{_ANSWERS}) ?\(\d+\)"
    r"|返信 ?\d+ ?件|\d+ ?件の返信(?:を(?:表示|非表示))?|返信を(?:表示|非表示)"
)

#: A line above a comment that stands out of its order.
PINNED = re.compile(
    r"(?:pinned|featured|kept on top|angepinnt|angeheftet|épinglé|fijado|destacado|fissato|"
    r"in evidenza|fixado|afixado|vastgemaakt|vastgezet|fäst|przypięt[ye]|固定)\b.{0,60}|固定.{0,30}"
)

#: What is left of a comment that was taken away.
REMOVED = re.compile(
    r"\[?(?:this |the )?(?:comment|message|reply) (?:was |has been |is )?"
    r"(?:removed|deleted|hidden|unavailable)\b.{0,60}"
    r"|\[(?:removed|deleted|gelöscht|supprimé|eliminado|eliminato|excluído|verwijderd)\]"
    r"|(?:dieser |der )?(?:kommentar|beitrag) (?:wurde|ist) (?:\w+ )?(?:gelöscht|entfernt)\b.{0,60}"
    r"|(?:ce |le )?(?:commentaire|message) (?:a été|est) (?:supprimé|retiré|masqué)\b.{0,60}"
    r"|(?:este |el |o )?(?:comentario|comentário|mensaje) (?:fue|ha sido|foi) "
    r"(?:eliminado|borrado|removido|excluído|apagado)\b.{0,60}"
    r"|(?:questo |il )?(?:commento|messaggio) è stato (?:eliminato|rimosso)\b.{0,60}"
    r"|(?:deze |de )?(?:reactie|opmerking) (?:is|werd) (?:\w+ )?verwijderd\b.{0,60}"
    r"|(?:den här )?kommentaren har tagits bort\b.{0,60}"
    r"|(?:ten )?komentarz został usunięty\b.{0,60}|このコメントは削除されました.{0,20}"
)
