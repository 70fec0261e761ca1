"""Places on the chart as all languages tell them: ends in every case, pages told from a place."""

from __future__ import annotations

from collections.abc import Mapping

#: First and last, as the cases and the words cut short before them have it.
_FIRST: Mapping[str, str] = {
    "it": "dalla prima | alla prima | sulla prima",
    "fi": "ensimmäiseltä | ensimmäisellä | ensimmäiseen | ensimmäiselle | ensimmäisessä | ensimmäistä | "
    "ekalta | ekasta | ekalla | ekaan | ekalle | ekan | ihan ensimmäiseltä | ihan ensimmäisestä | "
    "aivan ensimmäinen | aivan ensimmäiseltä | aivan ensimmäisestä",
    "pl": "pierwszą | pierwszej | pierwszym | samej pierwszej | sama pierwsza",
    "cs": "prvé | úplně prvé | prvou | nejprvnější",
    "ru": "первой | самой первой | первым",
    "uk": "найпершої | найпершій | самої першої",
    "tr": "ilk ilk | en ilk | birincisi",
    "de": "allererste | allerersten | allererster | aller ersten | aller erste",
    "el": "πρώτης | στην πρώτη | από την πρώτη",
}
_LAST: Mapping[str, str] = {
    "it": "dall'ultima | all'ultima | sull'ultima | "
    "dall'ultimissima | l'ultimissima | dall'ultimo | all'ultimo | sull'ultimo",
    "fi": "viimeiseltä | viimeisellä | viimeiseen | viimeiselle | viimeisessä | viimeistä | vikalta | "
    "vikasta | vikalla | vikaan | vikalle | vikan | ihan viimeiseltä | ihan viimeisestä | "
    "aivan viimeinen | aivan viimeiseltä | aivan viimeisestä",
    "pl": "samej ostatniej | sama ostatnia | ostatnim",
    "cs": "posledního | poslednou | nejposlednější",
    "uk": "самої останньої | найостаннішої",
    "de": "aller letzten | allerletzter",
    "el": "τελευταίας | στην τελευταία | από την τελευταία",
    "nl": "allerlaatst",
}
_PAGES: Mapping[str, str] = {
    "fi": "sivulta | sivulle | sivusta | sivuun | sivua | sivun",
    "tr": "sayfadan | sayfayla | sayfaya | sayfayı | sayfasından | sayfasıyla",
}
#: Words of choice right before a place: "begynn på siste side".
_BEGIN: Mapping[str, str] = {
    "nl": "begin bij | begin vanaf | start vanaf | start bij | beginnen bij | begin op",
    "da": "begynd fra | begynd på | begynd med | start fra | start på | start med",
    "no": "begynn fra | begynn på | begynn med | start fra | start på | start med",
    "sv": "börja från | börja på | börja med | starta från | starta på | starta med",
    "es": "empieza desde | comienza desde | empezar desde | empieza en | arranca desde | partir desde",
    "pt": "começa desde | comece desde | começa na | comece na | começar na",
    "it": "parti dalla | parti da | comincia dalla | comincia da | inizia dalla | inizia da | parti | "
    "comincia | inizia",
    "fr": "commence par | commence à | commence depuis | pars de | démarre à | démarre par",
    "fi": "aloita | aloittakaa | aloitetaan | aloittaisin",
    "tr": "başla",
}
#: A page told from a place or a page, where the words between run together: "à gauche du centre".
_EARLIER: Mapping[str, str] = {
    "en": "left of | just left of | immediately left of | to the immediate left of",
    "fr": "à gauche du | juste à gauche du | gauche du",
    "es": "a la izquierda del | izquierda del | justo a la izquierda del",
    "it": "a sinistra del | sinistra del | subito a sinistra del",
    "pt": "à esquerda do | esquerda do | logo à esquerda do",
    "de": "links vom | links neben der",
}
_LATER: Mapping[str, str] = {
    "en": "right of | just right of | immediately right of",
    "fr": "à droite du | juste à droite du | droite du",
    "es": "a la derecha del | derecha del | justo a la derecha del",
    "it": "a destra del | destra del | subito a destra del",
    "pt": "à direita do | direita do | logo à direita do",
    "de": "rechts vom | rechts neben der",
}
_ABOVE: Mapping[str, str] = {
    "fr": "au - dessus du | au dessus du | juste au - dessus du",
    "es": "encima del | arriba del",
    "it": "sopra il | sopra al",
    "pt": "acima do | em cima do",
}
_BELOW: Mapping[str, str] = {
    "fr": "en dessous du | sous le | juste sous le | au - dessous du",
    "es": "debajo del | abajo del",
    "it": "sotto il | sotto al",
    "pt": "abaixo do | debaixo do",
}
#: Before a place that something reaches to: "bis zur letzten Seite gelesen".
_UP_TO: Mapping[str, str] = {
    "en": "until | till | up to | right up to | all the way to | through to",
    "de": "bis | bis zu | bis zur | bis zum",
    "fr": "jusqu'à | jusqu'à la | jusqu'au",
    "es": "hasta | hasta la | hasta el",
    "it": "fino | fino a | fino alla | fino al | sino | sono all'ultima | ero all'ultima | "
    "arrivata all'ultima | arrivato all'ultima | siamo all'ultima | eravamo all'ultima",
    "pt": "até | até à | até a | até ao",
    "nl": "tot | tot de | tot aan | tot aan de",
    "sv": "ända till | fram till",
    "da": "helt til | indtil",
    "no": "helt til | fram til",
    "pl": "aż do | do samej",
    "cs": "až do",
    "ru": "до | до самой",
    "uk": "до | до самої",
    "el": "μέχρι | μέχρι την | ως την",
}
CLASSES: Mapping[str, Mapping[str, str]] = {
    "first": _FIRST,
    "last": _LAST,
    "page": _PAGES,
    "choice_before": _BEGIN,
    "earlier": _EARLIER,
    "later": _LATER,
    "above": _ABOVE,
    "below": _BELOW,
    "up_to": _UP_TO,
}
