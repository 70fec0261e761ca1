"""Finnish phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = "otettu | varattu | vapaa | vapaana | mennyt | valittu | tehty | sanottu | jäljellä | pistelty | käytetty"
_ALREADY = "jo | vielä | ehkä jo | enää"
_SAID = "sanoi | sanoo | valitsi | valitsee | otti | ottaa | äänesti | kirjoitti | haluaa | ehdotti"
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "yllä | ylhäällä | ylempänä | edellä | ennen minua | yläpuolella"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("kirja | kirjassa | lehti | lehdessä | romaani | romaanissa"),
    "turning": phrases("mutta"),
    "voting": phrases("äänestän | ääneni | valitsen"),
    "torn": phrases("epäröin | päättää"),
    "again": phrases("taas"),
    "named_before": phrases("samaa mieltä kuin"),
    "answered": phrases("muuten")
    + phrases("jos on | jos niin | siinä tapauksessa | jos ei | jos kyllä"),
    "today": phrases("tänään"),
    "everyday": phrases(
        "puolet | ikäni | laita | merkkaa | vaihda | mun | mulle | sijaan | kiitos | kävelin | voitettiin | pistelen | haluaisin"
    ),
    "choice_before": phrases("mutta minä | mutta mä | itse")
    + each_of(
        "laita | merkkaa | kirjaa | pistä | laske",
        "mut | mulle | minut | minulle | mun ääni | ääneni",
        "sivulle | numerolle | kohtaan |",
    )
    + each_of(
        "valintani | mun valinta | minun valintani | ääneni | mun ääni",
        "on | olisi | menee | lähtee | osuu | osuu sivulle",
    )
    + each_of(
        "haluaisin | haluan | tahtoisin | toivoisin | toivon",
        "niin | kovasti | todella |",
        "nähdä | että tekisit | sivun | numeron | valita |",
    )
    + each_of(
        "voisitko | voitko | voisitteko | voidaanko | voitaisiinko | otetaanko | tehdäänkö | otettaisko",
        "tehdä | ottaa | pistellä |",
        "sivun | numeron |",
    )
    + each_of(
        "ensisijaisesti | toissijaisesti | kolmanneksi | ensin | toiseksi | ykkösvalinta | kakkosvalinta | varalla | "
        "varavalinta | mieluiten | mieluummin",
        ": | on |",
    )
    + phrases(
        "panostan kaikki | veikkaan | uskon | rakastuin | tykästyin | mieluiten | mieluummin"
    ),
    "choice_after": each_of(
        "olisi | ois", "kiva | hieno | ihana | mahtava | jännä | paras | mukava"
    )
    + phrases(": lle | : een | : aan | : n | : ta | numerolle"),
    "first_choice": phrases(
        "eka vaihtoehto | ykkösvaihtoehto | eka valinta | ensisijaisesti | mieluiten | ykkösvalinta"
    ),
    "second_choice": phrases("toissijaisesti | varalla | kakkosvalinta | varavalinta"),
    "second": each_of(
        "ja jos | jos | mutta jos", "se on | on | se |", "varattu | otettu | mennyt", "niin |"
    )
    + phrases("toissijaisesti | varalla | kolmanneksi | kakkosvalinta"),
    "correction": phrases(
        "sijaan | sijasta | eiku | eikun | muutin mieleni | muutin mieltäni | tulinkin toisiin ajatuksiin"
    ),
    "neutral_after": phrases("en # | ei # | eikä # | sijaan # | numeroon #"),
    "not_before": phrases("en | eikä | ei | en sivua | muttei"),
    "reported_after": each_of("on | oli", _ALREADY + " |", _GONE) + each_of(_ALREADY, _GONE),
    "asked_later": each_of("onko se | onko | onkohan se", _ALREADY + " |", _GONE),
    "reported_before": phrases("minulle sanottiin | mulle sanottiin | suositeltiin")
    + each_of("rouva | henkilö | se | joku | nainen", "joka", "sanoi | sanoo | valitsi"),
    "pointing": each_of("sama | sama sivu | sama numero | samaa", "kuin", _OTHERS, _ABOVE + " |")
    + each_of("mitä | kuten | niin kuin | se minkä", "* | mun * | * *", _SAID)
    + phrases("ikäni | mun ikä | syntymäpäiväni | syntymävuoteni | hääpäivämme"),
    "withdrawn": each_of(
        "perun | poista | poistakaa | unohda | älä laske | älkää laskeko | peruutan | perukaa",
        "ääneni | mun ääni | valintani | kommenttini",
    ),
    "abstaining": phrases(
        "valitse sinä | sinä valitset | yllätä meidät | yllätä | ihan sama | en osaa päättää | en osaa valita"
    ),
    "kinds": phrases(
        "jokin kolmekymppinen | kolmekymppisistä | kaksikymppisistä | nelikymppisistä"
    ),
    "replacing": phrases("vaihda | vaihdan | vaihtakaa | muuta | muutan | korvaa | vaihdetaan"),
    "replaced_by": phrases("numeroon | sivuun | sivulla | : n tilalle | ja laita | tilalle"),
    "roughly_before": phrases("jossain | suunnilleen | siinä | jotain | likimain"),
    "roughly_after": phrases("paikkeilla | tienoilla | tienoissa | korvilla | nurkilla"),
    "other_before": phrases("nähdään | tavataan")
    + phrases(
        "voitettiin | hävittiin | voitti | kävelin | juoksin | pyöräilin | huone | bussi | linja | jakso | syntynyt | aida"
    ),
    "other_after": phrases("kun aloitin | kun opin | kun alotin")
    + phrases("kilometriä | askelta | euroa | ct | minuuttia | langalla"),
    "sum_before": phrases("puolet | puolet luvusta | kaksi kertaa | tupla"),
    "times": phrases("kertaa | x"),
    "plus": phrases("plus"),
    "minus": phrases("miinus"),
    "divided_by": phrases("jaettuna"),
    "concluding": phrases("joten | eli"),
    "middle": phrases("keskimmäinen | keskellä | keskikohta"),
}
