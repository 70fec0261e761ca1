"""What is said alike in all languages, a class at a time: agreement, grumbles, huge numbers."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases
from service.ballots.languages import alike_conditions, alike_places

Blocks = Mapping[str, str | tuple[str, ...]]

#: Words that make a number one of thousands or more: "page one million", "Seite drei Millionen".
_HUGE: Blocks = {
    "en": "million | millions | billion | trillion | zillion | gazillion | bazillion",
    "de": "million | millionen | milliarde | milliarden",
    "fr": "million | millions | milliard | milliards",
    "es": "millón | millones | mil",
    "it": "milione | milioni | miliardo | miliardi | mila",
    "pt": "milhão | milhões | mil | bilhão",
    "nl": "miljoen | miljard | duizend",
    "sv": "miljon | miljoner | tusen",
    "da": "million | millioner | tusind",
    "no": "million | millioner | tusen",
    "pl": "milion | miliony | milionów | tysiące | tysięcy",
    "cs": "milion | miliony | milionů | tisíce | tisíc",
    "ru": "миллион | миллиона | миллионов | тысяч | тысячи",
    "uk": "мільйон | мільйони | мільйонів | тисяч | тисячі",
    "tr": "milyon | milyar",
    "el": "εκατομμύριο | εκατομμύρια | χιλιάδες",
    "fi": "miljoona | miljoonaa | tuhatta",
}
#: Some page above these tens: "fifty something", "cuarenta y pico".
_VAGUE: Blocks = {
    "en": "something | somethings | odd | something or other | sumthing | sumfin | sth",
    "de": "und ein paar | und ein paar zerquetschte | irgendwas | plus x",
    "fr": "et quelques | et des poussières | et quelque",
    "es": "y pico | y tantos | y tantas | y algo",
    "it": "e qualcosa | e rotti | e passa",
    "pt": "e tal | e tantos | e tantas | e picos | e poucos | e alguma coisa",
    "nl": "en nog wat | en een beetje | zoveel | en nog iets",
    "sv": "och något | någonting | nånting",
    "da": "og noget | og et eller andet",
    "no": "og noe | ett eller annet",
    "pl": "któraś | któryś | parę | ileś | kilka | z hakiem",
    "cs": "něco | a něco | s něčím",
    "ru": "с чем то | с чем - то | с лишним | с хвостиком | какая то | какая - то",
    "uk": "з чимось | з хвостиком | якась | з лишком",
    "tr": "küsur | küsür",
    "el": "και κάτι",
    "fi": "jotain | ja jotain | ja risat",
}
#: "page 16 but backwards".
_REVERSED: Blocks = {
    "en": "backwards | backward | reversed | in reverse | back to front | the other way round | "
    "the other way around | upside down | mirrored | the wrong way round | "
    "swap the digits | with the digits swapped | digits swapped | the digits swapped | swapped",
    "de": "rückwärts | andersrum | andersherum | umgekehrt | verkehrt herum | verkehrtrum | "
    "auf dem kopf | spiegelverkehrt",
    "fr": "à l'envers | inversé | inversée | à rebours",
    "es": "al revés | del revés | invertido | invertida",
    "it": "al contrario | alla rovescia | a rovescio | rovesciato | capovolto | capovolta",
    "pt": "ao contrário | de trás para a frente | de trás pra frente | invertido | invertida",
    "nl": "achterstevoren | omgekeerd | andersom | ondersteboven | achteruit",
    "sv": "baklänges | bakvänt | upp och ner | omvänt",
    "da": "baglæns | bagvendt | omvendt | på hovedet",
    "no": "baklengs | bakvendt | omvendt | opp ned",
    "pl": "wspak | od tyłu | na odwrót | odwrotnie | do góry nogami",
    "cs": "pozpátku | obráceně | naopak | vzhůru nohama",
    "ru": "наоборот | задом наперёд | задом наперед | вверх ногами",
    "uk": "навпаки | задом наперед | догори дриґом",
    "tr": "tersten | tersi | ters çevrilmiş",
    "el": "ανάποδα | αντίστροφα",
    "fi": "takaperin | väärinpäin | ylösalaisin | toisin päin",
}
#: "... but I like 30 just as much".
_EQUALLY: Blocks = {
    "en": "just as much | just as well | equally | as much | just as good | just as nice | "
    "just as lovely | just as happy with | as happy with | as good | just as * | every bit as * | every bit as much | exactly as much",
    "de": "genauso gut | genauso gern | genauso sehr | ebenso gut | ebenso gern | ebenso | "
    "gleich gut | genauso schön | genauso",
    "fr": "autant | tout autant | aussi bien | tout aussi bien | tout aussi belle | tout aussi jolie",
    "es": "igual de bien | igualmente | tanto como | lo mismo | igual de bonita | igual de bonito",
    "it": "altrettanto | allo stesso modo | ugualmente | altrettanto bene | tanto quanto",
    "pt": "igualmente | da mesma forma | tanto quanto | na mesma medida",
    "nl": "net zo goed | evenveel | even graag | net zo graag | even mooi | net zo mooi | evengoed",
    "sv": "lika mycket | lika bra | lika gärna | lika fin",
    "da": "lige så meget | lige så godt | lige så gerne | lige så fin",
    "no": "like mye | like bra | like gjerne | like fin | akkurat like godt",
    "pl": "tak samo | równie | równie mocno",
    "cs": "stejně tak | úplně stejně | stejně moc",
    "ru": "не меньше | так же сильно | точно так же | ничуть не меньше",
    "uk": "не менше | так само | так само сильно",
    "tr": "bir o kadar | aynı derecede | onun kadar",
    "el": "το ίδιο | εξίσου",
    "fi": "yhtä paljon | ihan yhtä | yhtä hyvä | yhtä kiva",
}
#: "so tired of 13", each before the number.
_GRUMBLING: Blocks = {
    "en": "tired of | sick of | bored of | bored with | fed up with | fed up of | had enough of | weary of | "
    "tired of seeing | sick of seeing | fed up of seeing | bored of seeing | sick to death of | done with",
    "de": "genug von der | genug von | die nase voll von der | nase voll von | satt die | leid die",
    "fr": "marre de la | marre du | marre de | ras le bol de la | ras - le - bol de la | assez de la",
    "es": "harta de la | harto de la | harta del | harto del | cansada de la | cansada del | hartas del",
    "it": "stufa della | stufo della | stufa del | stanca della | stanca del | basta con la | basta con il",
    "pt": "farta da | farto da | cansada da | cansada do | farta do | cheia da",
    "nl": "zat van | genoeg van | moe van | beu van | klaar met",
    "sv": "trött på | less på | utled på",
    "da": "træt af | led og ked af",
    "no": "lei av | trøtt av | drittlei av",
}
#: Agreement with another comment: how it is said, with whom, where.
_AGREEING: Blocks = {
    "it": (
        "concordo con | d'accordo con | sono d'accordo con | la penso come | quoto",
        "il | la | lo | chi | quella | quello | le | l' |",
        (
            "commento | signora | signore | ragazza | persona | tizia | ha scritto | ha detto | utente | "
            "amica"
        ),
    ),
    "fr": (
        "d'accord avec | suis d'accord avec | je rejoins | je plussoie",
        "le | la | celle | celui | ce que | les |",
        (
            "commentaire | commentaires | dame | personne | fille | qui a dit | d'avant | précédente | "
            "du dessus | d'au - dessus"
        ),
    ),
    "de": (
        "stimme | bin ganz bei | bin bei | schließe mich | ich stimme",
        "dem | der | den |",
        "kommentar | dame | vorrednerin | vorredner | vorschreiberin | person | frau",
    ),
    "es": (
        "de acuerdo con | estoy de acuerdo con | coincido con | opino como",
        "el | la | lo | los |",
        "comentario | señora | chica | persona | que dijo | de arriba | que dice | anterior",
    ),
    "pt": (
        "concordo com | de acordo com | estou com",
        "o | a | quem |",
        "comentário | senhora | moça | pessoa | menina | de cima | disse | anterior",
    ),
    "nl": (
        "eens met | ben het eens met | sluit me aan bij",
        "de | het | wat |",
        "reactie | vorige | comment | mevrouw | dame | persoon | bovenstaande | opmerking",
    ),
    "sv": (
        "håller med | jag håller med",
        "den |",
        "kommentaren | föregående | damen | personen | henne | honom | ovanstående",
    ),
    "da": (
        "enig med | enig i",
        "den |",
        "kommentaren | damen | personen | hende | ham | ovenstående",
    ),
    "no": (
        "enig med | enig i",
        "den |",
        "kommentaren | damen | personen | henne | ham | ovenstående",
    ),
    "pl": (
        "zgadzam się z",
        "tym |",
        "komentarzem | panią | poprzednim | powyższym | przedmówczynią",
    ),
    "cs": ("souhlasím s", "tím |", "komentářem | paní | předchozím | názorem | tou"),
    "ru": (
        "согласна с | согласен с | поддерживаю",
        "тем |",
        "комментарием | комментарий | дамой | предыдущим | девушкой | автором",
    ),
    "uk": (
        "погоджуюся з | погоджуюсь з | згодна з | згоден з",
        "тим |",
        "коментарем | пані | попереднім",
    ),
    "el": (
        "συμφωνώ με",
        "το | την | τον |",
        "σχόλιο | κυρία | από πάνω | προηγούμενο | προηγούμενη",
    ),
    "fi": (
        "samaa mieltä | olen samaa mieltä",
        "kuin |",
        "yllä | edellinen | edellisen | yläpuolella | ylemmän | kommentin",
    ),
    "tr": ("yukarıdaki | üstteki | önceki", "yoruma | hanıma", "katılıyorum"),
}
_CLASSES: Mapping[str, Blocks] = {
    "huge": _HUGE,
    "vague_after": _VAGUE,
    "reversed_after": _REVERSED,
    "equally": _EQUALLY,
    "grumbling": _GRUMBLING,
    "pointing": _AGREEING,
    **alike_conditions.CLASSES,
    **alike_places.CLASSES,
}


def _told(block: str | tuple[str, ...]) -> tuple[Phrase, ...]:
    return phrases(block) if isinstance(block, str) else each_of(*block)


def _groups() -> dict[str, dict[str, tuple[Phrase, ...]]]:
    found: dict[str, dict[str, tuple[Phrase, ...]]] = defaultdict(dict)
    for group, blocks in _CLASSES.items():
        for code, block in blocks.items():
            found[code][group] = _told(block)
    return dict(found)


#: By the language's code, what it has of each class.
GROUPS = _groups()
