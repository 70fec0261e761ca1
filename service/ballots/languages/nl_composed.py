"""Dutch phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = """
weg | bezet | gekozen | genomen | gezegd | gedaan | geborduurd | geweest | vergeven | af | aan de beurt |
vrij | beschikbaar | te krijgen | over | in de race | gereserveerd | geroepen | genoemd
"""
_ALREADY = (
    "al | nog | reeds | toevallig al | toch al | misschien al | zeker al | nog steeds | vast al"
)
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "hierboven | boven mij | boven me | hier boven | erboven | voor mij | hiervoor | daarboven"
_SAID = """
zei | zegt | koos | kiest | nam | neemt | stemde | stemt | schreef | wil | wilde | gezegd heeft |
gekozen heeft | heeft gezegd | voorstelt | voorstelde
"""
_RANKS = "eerste | tweede | derde | 1e | 2e | 3e"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "letting_choose": each_of(
        "liet | laat | heb | mocht", "* * | * * * | * |", "kiezen | beslissen"
    ),
    "everyday": phrases(
        """
        wilde | hetzelfde | dezelfde | ruil | vervang | verander | zet | schrijf | noteer | kom | blij | derde |
        tweede | mevrouw | dame | zullen | zou'n | kunnen | kunt | gekozen | gezegd | borduren | hoor | effe | ff
        """
    ),
    "choice_before": each_of(
        "zet | schrijf | noteer | teken | tel | plaats",
        "mij | me | ons | mijn stem | mijn naam",
        "maar | dan | even | alsjeblieft | aub |",
        "op | voor | bij | in voor | op voor | mee voor | onder",
    )
    + each_of(
        "mijn | onze | de",
        "keuze | keus | stem | voorkeur | gevoel",
        "valt | viel | gaat | ging | zou | is | blijft",
        "op | naar | uit naar | voor |",
    )
    + each_of(
        "ik | we",
        "zou | wil | zouden | had",
        "zo | heel | toch | ook |",
        "graag | dolgraag | liefst",
        "dat je | dat jullie | willen dat je | dat u | zien |",
    )
    + each_of(
        "ik ben | ben | ik heb | heb | helemaal",
        "verliefd op | weg van | gek op | een zwak voor | "
        "een voorkeur voor | voor | gevallen voor | gegaan voor",
    )
    + each_of("ik zet | zet | ik", "alles | mijn geld | al mijn geld", "in op | op", "de |")
    + each_of(
        "zullen we | kun je | kan je | kunnen we | wil je | kunt u | mogen we | ga je",
        "de | even | eens |",
    )
    + each_of(_RANKS, "keus | keuze | voorkeur | stem", ": | is | wordt |")
    + each_of("als", "reserve | tweede | eerste | alternatief | backup | tweede keus | derde")
    + phrases(
        """
        kom op | hup | ff | doe mij maar | geef mij maar | doe maar | liefst | het liefst | bij voorkeur | reserve |
        tweede | derde | mijn wens is | wens | mijn wens | wensbladzijde | mijn hart zegt | hart gaat uit naar |
        ik gok op | gok op | teken mij op voor | kruisje bij
        """
    ),
    "page": phrases(
        "wenspagina | wensbladzijde | lievelingspagina | favoriete pagina | geluksbladzijde"
    ),
    "choice_after": each_of(
        "zou | lijkt",
        "mij | me | wel | ook | heel | echt |",
        "blij maken | wat | leuk | mooi | fijn | geweldig | wel wat | top | super | gaaf",
    )
    + phrases(
        "doet | zou doen | nemen | borduurt | plz | alstublieft | zou me blij maken | lijkt me wel wat"
    ),
    "first_choice": phrases("liefst | het liefst | bij voorkeur | eerst | eerste"),
    "second_choice": phrases("tweede | reserve | als reserve | desnoods"),
    "second": phrases("derde | tweede | reserve"),
    "neutral_after": phrases("ook al | zelfs als")
    + each_of("voor | door | in | naar | met | tegen", "de | een |", "#")
    + phrases("niet # | niet de # | niet de | en niet | en niet de"),
    "not_before": each_of("en niet | maar niet | en nooit | in plaats van | ipv", "de | nummer |"),
    "reported_after": phrases(
        "heeft iemand | al iemand | iemand al | heeft al | heeft er al | had iemand"
    )
    + each_of("is | was | wordt | zou", _ALREADY, _GONE)
    + each_of(_ALREADY, _GONE),
    "asked_later": each_of("is | of is | was", "die | dat | deze | ie |", _ALREADY, _GONE),
    "reported_before": phrases(
        "zeiden tegen mij | zei tegen mij | tegen me gezegd | hebben gezegd | mij aangeraden | hoorde"
    )
    + each_of(
        "mevrouw | dame | vrouw | iemand | degene | mensen | die",
        "die",
        "zei | zegt | koos | stemde op | stemt op | wil | noemde |",
    )
    + each_of(
        "eens | akkoord | mee eens | het eens | aansluiten | aan", "met | bij", "de | nummer |"
    ),
    "pointing": each_of(
        "de pagina | die | het nummer",
        "met | van",
        "mijn huisnummer | mijn leeftijd | mijn verjaardag | mijn huis | mijn geboortejaar",
    )
    + each_of(
        "hetzelfde | dezelfde | zelfde | zelfde nummer | zelfde pagina",
        "als | van",
        _OTHERS,
        _ABOVE,
    )
    + each_of(
        "hetzelfde als | dezelfde als | zelfde als | net als | net zoals",
        "mijn * | de * | jij | jullie | u | *",
    )
    + each_of("wat | zoals | net als wat | die", "* | mijn * | de * | * *", _SAID)
    + each_of(
        "de dag | de leeftijd | de datum | het nummer | het huisnummer | de verjaardag | het jaar | de geboortedag",
        "van",
        "mijn * | onze * | mijn * *",
    )
    + phrases("mijn leeftijd | zo oud als ik ben | mijn geboortedag | mijn deurnummer"),
    "withdrawn": each_of(
        "laat | trek | haal | tel | neem | streep | schrap",
        "mijn",
        "stem | keuze | reactie | nummer",
        "maar vervallen | vervallen | terug | maar weg | weg | in | maar niet mee | niet mee | "
        "door | maar zitten | eruit | af | maar",
    ),
    "abstaining": phrases(
        """
        het maakt mij niet uit | maakt mij niet uit | maakt me niet uit | maakt niet uit | om het even |
        kies jij maar | kies maar | kiest u maar | jij mag kiezen | jij kiest | kies zelf maar | verras ons |
        verras me | elke pagina is goed | alles is goed | welke je wilt | wat jij wilt |
        die jij wilt | zeg het maar | mij een zorg
        """
    ),
    "kinds": each_of(
        "ergens in de | in de | iets in de | een in de",
        "twintig | dertig | veertig | vijftig | zestig | tientallen | twintigers | dertigers",
    )
    + each_of(
        "een | eentje | iets",
        "uit de | van de | aan de | in de",
        "onderste rij | bovenste rij | hoek | rand | linkerkant | rechterkant",
    ),
    "replacing": phrases(
        """
        ruil | ruilen | omruilen | vervang | vervangen | verander | veranderen | wijzig | wijzigen | wissel |
        wisselen | maak | zet | verwissel
        """
    ),
    "replaced_by": each_of("voor | om voor | door | in | naar | met | om in | tegen", "de | een |"),
    "correction": phrases("mij bedacht | me bedacht | bedacht me | van gedachten veranderd"),
    "roughly_before": each_of(
        "zo | ergens | ongeveer | zo'n beetje |",
        "rond de | in de buurt van | bij de | rondom | tegen de | vlakbij",
    ),
    "other_before": phrases("op huisnummer | nummer van de buren")
    + each_of("woon | wonen | woont", "op | in", "nummer | huisnummer | nr")
    + phrases("zie je de | zien we elkaar de | tot de | zie jullie de | vertrek de")
    + each_of("op | met", "aida | linnen | evenweave", "met |")
    + each_of("gewonnen | verloren | gespeeld", "met", "# - |")
    + each_of("gewandeld | gelopen | gefietst | gereden", "heb | wel |")
    + phrases("kamer | zaal | bed | bus | tram | lijn | geboren op | geboren op de | jarig op de"),
    "other_after": phrases(
        "count | ct | km gewandeld | stappen | draads | kruisjes per dag | - # gewonnen | - # verloren | of # count"
    ),
    "part_of": phrases("van mijn | van het | van de | uit mijn | uit het"),
    "whole_chart": each_of(
        "van het | van de | van heel het | op het | van jouw",
        "patroon | kaart | raster | schema | ontwerp | "
        "borduurwerk | geheel | werk | plaatje | motief",
    ),
    "last": phrases("allerlaatste | aller laatste"),
    "first": phrases("allereerste"),
    "top": phrases("bovenin | bovenste | helemaal bovenin"),
    "bottom": phrases("onderin | onderaan | onderste | helemaal onderin"),
    "left": phrases("linker | helemaal links"),
    "right": phrases("rechter | helemaal rechts"),
    "corner": phrases("bovenhoek | onderhoek | hoekje | hoekpagina | rechterhoek | linkerhoek"),
    "parted": phrases(
        "rechter hoek | linker hoek | rechter bovenhoek | linker bovenhoek | rechter onderhoek | linker onderhoek | "
        "boven hoek | onder hoek"
    ),
    "middle": phrases("middelste | de middelste | precies midden | middenin"),
    "times": phrases("keer | maal | x"),
    "minus": phrases("min"),
}
