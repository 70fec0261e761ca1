"""Czech phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = """
zabraná | zabrané | obsazená | obsazené | volná | volné | vybraná | vzatá | hotová | vyšitá | pryč |
k dispozici | zadaná | řečená | vyšívaná
"""
_ALREADY = "už | ještě | náhodou už | stále | pořád"
_SAID = "řekla | řekl | říká | vybrala | vybral | píše | napsala | vzala | hlasuje | chce | navrhla"
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "výše | nahoře | nade mnou | přede mnou | nad tím"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("knize | knížce | kniha | časopise | časopis | román | románu | novinách"),
    "turning": phrases("ale | přesto"),
    "voting": phrases("hlasuji | můj hlas | volím"),
    "torn": phrases("váhám | nevím | vybrat"),
    "own_piece": phrases("mého | svého | své | mojí"),
    "counting_pages": phrases("strany | stran | stránky | stránek"),
    "again": phrases("zase | zas | znovu"),
    "named_before": phrases("souhlasím s | souhlasim s | souhlas s"),
    "answered": phrases("jinak")
    + phrases("""
        pokud ano | jestli ano | když ano | v tom případě | pokud ne | jestli ne | tak
        """),
    "today": phrases("dnes"),
    "everyday": phrases(
        "souhlasím | prostřední | polovina | krát | vyhráli | jsme | napiš | zapiš | zapište | vyměň | měním | místo | radši | mou | můj | ušla | vyhráli | vyšíváš | kanavě | můžeš | ruším"
    ),
    "choice_before": each_of(
        "bych | by jsem",
        "dala | dal | vzala | vzal | brala | bral | volila | volil | zvolila | zvolil | chtěla | chtěl | vybrala | vybral | zkusila",
        "třeba | radši |",
    )
    + phrases("""
        šla do | šel do | jdu do | jdeme do | jde se do | bych šla do | bych šel do | dávám |
        dám | dala bych | dal bych | beru | bereme | brala bych | bral bych | vezmu |
        vzala bych | za mě
        """)
    + phrases("ale já | a já | já zase | já ale | sama")
    + each_of(
        "napiš | zapiš | zapište | napište | připiš | počítej",
        "mě | mně | nás | můj hlas",
        "na | k | pro | ke",
    )
    + each_of(
        "moje volba | můj hlas | volba | hlas | můj tip",
        "je | padá na | padla na | jde pro | jde | bude | patří | jde na",
        "straně | stranu | číslu |",
    )
    + each_of(
        "moc | tak | strašně | hrozně |",
        "ráda bych | rád bych | bych chtěla | bych ráda | chtěla bych",
        "viděla | viděl | vidět | aby to byla | abys udělala | poprosila o |",
    )
    + each_of(
        "mám slabost pro | zamilovala jsem se do | jsem pro | sázím vše na | sázím všechno na | sázím na",
        "stranu | číslo |",
    )
    + each_of(
        "můžeš | mohla bys | můžete | co takhle | mohly bychom",
        "udělat | vyšít | začít | vzít |",
        "stranu | číslo |",
    )
    + each_of(
        "první volba | druhá volba | třetí volba | první | druhá | třetí | náhradní | náhradník | jako náhradu | nejradši | "
        "nejraději | popřípadě",
        ": | je |",
    )
    + phrases("nejradši | nejraději | radši | raději | nejdřív"),
    "choice_after": each_of(
        "by byla | by bylo | bude", "super | krásná | skvělá | hezká | fajn | nejlepší"
    ),
    "first_choice": phrases("nejradši | nejraději | první | nejdřív"),
    "second_choice": phrases("náhradní | druhá | jako náhradu | popřípadě"),
    "second": each_of(
        "a když | když | a jestli | jestli | pokud | a pokud",
        "je | bude | by byla |",
        "obsazená | zabraná | hotová | už zabraná | už obsazená",
        "tak |",
    )
    + phrases("náhradní | druhá | třetí | potom | jinak"),
    "neutral_before": phrases("# za | # na"),
    "neutral_after": phrases("ne # | a ne # | za # | na # | místo # | tak #"),
    "not_before": each_of(
        "a ne | ale ne | místo | jen ne | hlavně ne | kromě", "strany | stranu | čísla |"
    ),
    "reported_after": phrases("už někdo | někdo už | někdo vybral | už nekdo")
    + each_of("je | byla", _ALREADY + " |", _GONE)
    + each_of(_ALREADY, _GONE),
    "asked_later": each_of("je | není | nebo je", _ALREADY + " |", _GONE)
    + each_of(_ALREADY, _GONE),
    "reported_before": each_of(
        "ona | on | oni | manžel | manželka | dcera | syn | máma | vnučka | muž",
        "chce | volí | vybírá | říká | hlasuje pro",
    )
    + phrases("řekli mi | doporučili mi | chtěla jsem nejdřív")
    + each_of("paní | kamarádka | osoba | ta", "co | která", "řekla | říká | vybrala")
    + each_of("souhlasím", "s |", "tou | stranou |"),
    "pointing": each_of(
        "totéž | to samé | stejně | stejná | stejné číslo | stejnou",
        "co | jako",
        _OTHERS,
        _ABOVE + " |",
    )
    + each_of("jak | to co | jako | ta co", "* | moje * | paní * | * *", _SAID)
    + phrases("stejně jako * | můj věk | moje narozeniny | kolik mi je | rok narození | jako výše"),
    "withdrawn": each_of(
        "ruším | zrušte | smaž | smažte | škrtni | škrtněte | beru zpět | stahuji | nepočítejte | ignorujte | vymaž",
        "svůj | můj |",
        "hlas | výběr | komentář",
    ),
    "abstaining": phrases(
        "vyber ty | ty vyber | překvap nás | překvap mě | je mi to jedno | nemůžu se rozhodnout | neumím si vybrat"
    ),
    "kinds": each_of(
        "nějaká | něco | někde", "dvacítka | třicítka | čtyřicítka | kolem třicítky | z třicítek"
    ),
    "replacing": phrases(
        "vyměň | vyměňte | vyměním | měním | změň | změňte | změnit | vyměnit | přepiš | zaměň"
    ),
    "replaced_by": phrases("za | na | za stranu | na stranu"),
    "correction": phrases("rozmyslela jsem si to | rozmyslel jsem si to | změnila jsem názor"),
    "roughly_before": phrases(
        "tak nějak | tak okolo | okolo | někde kolem | zhruba | přibližně | tak kolem"
    ),
    "other_before": phrases("teď jsem na | dokončila jsem")
    + phrases("vidíme se | sejdeme se | odjíždím | na shledanou")
    + each_of("na", "kanavě | aidě | plátně | látce | lnu")
    + each_of("vyhráli | prohráli | vyhráli jsme | prohráli jsme", "# : | # |")
    + phrases(
        "ušla jsem | ušel jsem | ušla jsem dnes | autobus | tramvaj | pokoj | díl | narozená"
    ),
    "other_after": phrases(": # | kilometrů | kilometry | kroků | ct | nitkami"),
    "sum_before": phrases("polovina z | půlka z | polovina | dvojnásobek | třetina z | čtvrtina z"),
    "times": phrases("krát | x"),
    "plus": phrases("plus"),
    "minus": phrases("mínus"),
    "divided_by": phrases("děleno"),
    "concluding": phrases("takže | tak"),
    "if_words": phrases("když | jestli"),
    "middle": phrases("prostřední | ta prostřední | prostředek"),
    "own_voice": phrases("ale já | a já"),
}
