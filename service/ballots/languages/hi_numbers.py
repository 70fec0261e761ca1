"""Hindi number words to a hundred, each a word of its own, and in Latin letters."""

from __future__ import annotations

import re

from service.ballots.languages.spelling import with_slips
from service.ballots.normal import plain_of

#: One line a decade, from nought; spellings of one number are joined by a stroke.
_COUNTING = """
शून्य एक दो तीन चार पाँच छह/छः/छे/छै/छ सात आठ नौ
दस ग्यारह बारह तेरह चौदह पंद्रह/पन्द्रह/पंदरह सोलह सत्रह/सतरह अठारह/अट्ठारह उन्नीस
बीस इक्कीस बाईस/बाइस तेईस/तेइस चौबीस पच्चीस/पचीस छब्बीस सत्ताईस/सत्ताइस अट्ठाईस/अट्ठाइस/अठाईस/अठाइस उनतीस/उन्तीस
तीस इकतीस/इकत्तीस बत्तीस तैंतीस/तेंतीस/तैतीस चौंतीस/चौतीस पैंतीस/पैतीस छत्तीस सैंतीस/सैतीस अड़तीस उनतालीस/उन्तालीस/उनचालीस
चालीस इकतालीस बयालीस/ब्यालीस तैंतालीस/तैतालीस/तिरतालीस चवालीस/चौवालीस/चौंवालीस/चव्वालीस पैंतालीस/पैतालीस छियालीस सैंतालीस/सैतालीस अड़तालीस उनचास
पचास इक्यावन/इक्कावन बावन तिरपन/तिरेपन चौवन/चव्वन पचपन छप्पन सत्तावन अट्ठावन/अठावन उनसठ
साठ इकसठ बासठ तिरसठ/तिरेसठ चौंसठ/चौसठ पैंसठ/पैसठ छियासठ सड़सठ अड़सठ उनहत्तर/उनहतर
सत्तर इकहत्तर बहत्तर तिहत्तर चौहत्तर पचहत्तर छिहत्तर सतहत्तर अठहत्तर उन्यासी/उनासी/उन्नासी
अस्सी इक्यासी बयासी तिरासी चौरासी पचासी छियासी सत्तासी अट्ठासी/अठासी नवासी
नब्बे इक्यानवे बानवे तिरानवे चौरानवे पचानवे/पंचानवे छियानवे सत्तानवे अट्ठानवे/अठानवे निन्यानवे
"""
_SLIPS = (("ँ", "ं"), ("़", ""), ("नवे", "नबे"), ("ालीस", "ालिस"), ("ीस", "िस"), ("पाँ", "पा"))
#: In Latin letters; a dash where the word says something else in other languages.
_LATIN = """
- - - - - paanch/panch - saat aath -
- gyarah/gyaarah/gyara barah/baarah/bara terah/tera chaudah/chauda/chodah pandrah/pandra/pandhrah solah/sola satrah/satra/sattrah atharah/attharah/athara unnis/unis
- ikkis bais/baais teis chaubis pachis/pachchis chhabbis sattais atthais/athais untis/unatis
- iktis/ikattis battis taintis/tentis chauntis/chautis paintis chhattis saintis adtis/artis untalis/unchalis
chalis iktalis bayalis/byalis taintalis/tentalis chawalis/chauvalis paintalis chhiyalis saintalis adtalis/artalis unchas
pachas/pachaas ikyavan/ikyaavan bavan/baavan tirpan chauvan/chavvan pachpan chhappan sattavan atthavan/athavan unsath
- iksath/iksat basath tirsath/tresath chaunsath/chausath painsath chhiyasath sadsath/sarsath adsath/arsath unhattar
sattar ikhattar bahattar tihattar chauhattar pachhattar chhihattar satattar/sathattar athattar unyasi/unasi
assi ikyasi bayasi tirasi chaurasi pachasi chhiyasi sattasi atthasi navasi
nabbe ikyanve banve tiranve chauranve pachanve/panchanve chhiyanve sattanve atthanve ninyanve
"""
_LATIN_SLIPS = (
    ("pach", "pacch"),
    ("chis", "chees"),
    ("kis", "kees"),
    ("ais", "aees"),
    ("ais", "ayis"),
    ("ikk", "ik"),
    ("tt", "thth"),
    ("aint", "ent"),
    ("bay", "by"),
    ("chh", "ch"),
    ("v", "w"),
    ("lis", "lees"),
    ("tis", "tees"),
    ("bis", "bees"),
    ("nis", "nees"),
)
_FEMININE_AND_OTHERS = ("वाँ", "वां", "वा", "वीं", "वी", "वें", "वे")
_FIRST_ORDINALS = {
    "पहला": 1, "पहली": 1, "पहले": 1, "प्रथम": 1, "दूसरा": 2, "दूसरी": 2, "दूसरे": 2, "तीसरा": 3,
    "तीसरी": 3, "तीसरे": 3, "चौथा": 4, "चौथी": 4, "चौथे": 4, "छठा": 6, "छठी": 6, "छठे": 6,
    "नवाँ": 9, "नवां": 9, "नवीं": 9, "pehla": 1, "pehli": 1, "doosra": 2, "dusra": 2, "dusri": 2,
    "teesra": 3, "tisra": 3, "chautha": 4, "chauthi": 4,
}  # fmt: skip


def _joined(words: str) -> str:
    """Levelled as a comment is and without spaces; the vowel signs, which are marks, stay."""
    return re.sub(r"[\s\-']", "", plain_of(words).text)


def _counted(table: str) -> dict[str, int]:
    return {
        _joined(word): value
        for value, words in enumerate(table.split())
        for word in words.split("/")
        if word != "-"
    }


def numbers() -> dict[str, int]:
    """Number words to 999 by their joined spelling, in both scripts."""
    small = with_slips(_counted(_COUNTING), [(_joined(a), _joined(b)) for a, b in _SLIPS])
    found = dict(small)
    hundred = _joined("सौ")
    for word, times in small.items():
        if 0 < times < 10:
            found[word + hundred] = 100 * times
            found |= {word + hundred + rest: 100 * times + n for rest, n in small.items() if n}
    found |= {hundred: 100} | {hundred + rest: 100 + n for rest, n in small.items() if n}
    return found | with_slips(_counted(_LATIN), _LATIN_SLIPS)


def ordinals() -> dict[str, int]:
    """Ordinals to 99th by their joined spelling."""
    found = {_joined(word): value for word, value in _FIRST_ORDINALS.items()}
    for word, value in _counted(_COUNTING).items():
        if value > 4:
            found |= {word + _joined(ending): value for ending in _FEMININE_AND_OTHERS}
    for word, value in _counted(_LATIN).items():
        found |= {
            word + ending: value for ending in ("wa", "va", "van", "wan", "vi", "wi", "we", "ve")
        }
    return found
