"""What begins with "if" in all languages: conditions on how others choose, and ways to ask."""

from __future__ import annotations

from collections.abc import Mapping

Blocks = Mapping[str, tuple[str, ...]]

#: Only if others have not chosen it too often.
_IF_FEW: Blocks = {
    "en": (
        "if | unless | provided | as long as | so long as | only if | assuming",
        (
            "not too many | not many | not so many | not everyone | not everybody | not everyone's | "
            "not all of you | too many | few | fewer | less | very few | hardly anyone | hardly anybody | "
            "not loads of | not a lot of | most people | most of you | only a few | many | the others | "
            "other people | you lot | it isn't too popular | it's not too popular | it isn't popular | "
            "it's not popular | it's unpopular | it isn't too crowded | it isn't too common | "
            "there are | there aren't | there isn't | there have been | there were | "
            "it's not too obvious | it isn't too obvious | it loses | that loses"
        ),
    ),
    "de": (
        "wenn | falls | sofern",
        "nicht zu viele | nicht so viele | wenige | nicht alle | zu viele",
    ),
    "fr": (
        "si | à condition que | sauf si",
        "pas trop de | pas trop de monde | peu de | trop de | pas tout le monde",
    ),
    "es": (
        "si | siempre que",
        (
            "no la ha elegido | no lo ha elegido | no la han elegido | no hay demasiados | pocos | "
            "no la eligió | no muchos | no todos | pocas personas"
        ),
    ),
    "it": (
        "se | purché",
        "non l'hanno | non troppi | pochi | non tutti | non la scelgono | in pochi",
    ),
    "pt": ("se", "não muita gente | poucos | pouca gente | não muitos | nem todos | ninguém mais"),
    "nl": ("als | mits | tenzij", "niet te veel | niet veel | weinig | niet iedereen | te veel"),
    "sv": ("om", "inte för många | inte alla | få"),
    "da": ("hvis", "ikke for mange | ikke alle | få"),
    "no": ("hvis", "ikke for mange | ikke alle | få"),
    "pl": ("jeśli | jeżeli", "nie za dużo | niewiele | mało | nie wszyscy"),
    "cs": ("jestli | pokud", "není moc | málo | ne všichni"),
    "ru": ("если", "не слишком много | мало кто | не все"),
    "uk": ("якщо", "не забагато | мало хто | не всі"),
}
#: An "if" that asks and sets no condition: "page 7 if you like".
_IF_YOU_LIKE: Blocks = {
    "de": (
        "wenn | falls",
        (
            "du magst | ich darf | es geht | das geht | du willst | ihr mögt | es recht ist | möglich | "
            "ich wählen darf | ihr wollt | ich bitten darf | es nicht zu spät ist | man darf | es passt"
        ),
    ),
    "fr": (
        "si",
        (
            "tu veux | vous voulez | possible | je peux | c'est possible | ça te va | ça vous va | "
            "tu veux bien | vous voulez bien | j'ose | ça ne te dérange pas | il est encore temps"
        ),
    ),
    "es": (
        "si",
        (
            "puede ser | es posible | no es molestia | te parece | se puede | quieres | no te importa | "
            "me permites | puedo | todavía se puede"
        ),
    ),
    "it": (
        "se",
        "ti va | vi va | possibile | puoi | posso | vuoi | si può | non ti dispiace | è possibile",
    ),
    "pt": (
        "se",
        "faz favor | puder ser | possível | puder | quiser | quiseres | não te importas | der",
    ),
    "nl": (
        "als",
        (
            "het mag | het kan | je wilt | ik mag | dat mag | dat kan | mogelijk | je het niet erg vindt | "
            "jullie willen | je het niet erg | het nog kan"
        ),
    ),
    "sv": ("om", "jag får | du vill | det går | ni vill | möjligt | det är okej | jag får önska"),
    "da": ("hvis", "du vil | jeg må | det er muligt | i vil | muligt | det er okay | man må"),
    "no": ("hvis | om", "du vil | jeg får | jeg kan | det er mulig | dere vil | mulig | det går"),
    "pl": ("jeśli | jeżeli", "można | mogę | chcesz | to możliwe | się da"),
    "cs": ("jestli | pokud", "můžu | chceš | to jde | mohu | je to možné"),
    "ru": ("если", "можно | хотите | хочешь | не сложно | не трудно"),
    "uk": ("якщо", "можна | хочете | хочеш | не складно | не важко"),
    "fi": ("jos", "saa | sopii | voi | voisi | haluat | haluatte | mahdollista | käy"),
    "el": ("αν", "γίνεται | μπορείς | θέλεις | θέλετε | γίνεται ακόμα"),
}
CLASSES: Mapping[str, Blocks] = {"condition": _IF_FEW, "fillers": _IF_YOU_LIKE}
