"""Dutch votes told in a roundabout way, and talk that only sounds like a vote."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THAT = "die | dat | deze | die maar | dat maar | dat getal | dat nummer | die bladzijde"
_FACT = """
verjaardag | leeftijd | geboortedatum | geboortejaar | huisnummer | schoenmaat | geluksgetal | trouwdag |
geluksnummer | geboortedag
"""

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "saying": phrases("appte | geschreven | stuurde | reageerde"),
    "printed": phrases("tijdschrift | krant | boek | roman | catalogus"),
    "voting": phrases("ik stem | mijn stem | ik kies | stemmen op | mijn keuze"),
    "rated": phrases("geef een | geef ik een | is een | een dikke"),
    "finished": phrases("klaar | af | gedaan | is af | is klaar"),
    "halving": phrases("helft van | de helft van"),
    "any_of": phrases("iets | alles"),
    "torn": phrases("twijfel | twijfelen | kiezen | verdeeld"),
    "begun_after": phrases("""
        begint | start | zou beginnen | mag beginnen | gaat beginnen | beginnen |
        zou starten | starten
        """),
    "other_after": phrases("van de plaat | van het album | op de lijst | in totaal | in de loterij")
    + phrases("per avond | op een avond | per dag"),
    "second": phrases("""
        als die weg is | als die al weg is | als die bezet is | als die al bezet is |
        als die al gekozen is | als die er niet meer is
        """),
    "choice_after": phrases("""
        besloten | staat vast | begint | start | zou beginnen | mag beginnen | gaat beginnen
        """),
    "winning": phrases("wint | heeft gewonnen"),
    "wondering": phrases("of het | of die | of dat | of ik | wat ik | hoe"),
    "again": phrases("weer | alweer | nog een keer"),
    "named_before": phrases("eens met | mee eens met | het eens met"),
    "answered": phrases("anders")
    + phrases("""
        zo ja | zo ja dan | in dat geval | als dat zo is | zo niet | zo niet dan | dan |
        indien ja
        """),
    "today": phrases("vandaag | morgen"),
    "wishing": each_of(
        "als | indien", "ik | we", "kon | mocht | durfde | dapper | was | een stem | moedig"
    )
    + phrases(
        """
        ik wou dat | kon ik maar | had ik maar | ik had graag | had graag | ik zou willen dat | jammer van de |
        was ik maar
        """
    ),
    "turning": phrases("maar | nou ja | ach | toch | dan maar | in ieder geval"),
    "reported_before": phrases("""
        eerst dacht ik | eerst wilde ik | dacht ik eerst | eerst dacht ik aan | dacht ik aan |
        wilde ik eerst
        """)
    + each_of(
        "vriendinnen | vrienden | dochters | jullie | ze | zij | kinderen",
        "zeiden | zeggen | kozen | hebben | stemden",
        "gezegd | gekozen |",
    )
    + phrases(
        "je zei | jij zei | ik dacht dat het | volgens mij was het | het was de | ik had bijna"
    ),
    "reported_after": phrases("ooit | ooit eens | een andere keer | volgende keer | op een dag")
    + each_of("gezegd | gekozen | gestemd | genomen", "maar | als"),
    "it_is": phrases("het is | is het | het was | het zijn"),
    "weather": phrases("hier | buiten | graden | in de schaduw | bij ons | in huis"),
    "other_before": each_of("ik | ik ben | ben", "begon | begonnen", "met | bij | op", "de |")
    + phrases("nu ben ik op | nu zit ik op | ben nu op")
    + phrases("begonnen, nu | begonnen en nu | geleerd, nu | geleerd en nu")
    + each_of(
        "dochter | zoon | kleindochter | kleinzoon | kleinkind | nichtje | neefje | nicht | neef | kind | meisje | jongen | man | vrouw | moeder | oma | opa | zus | broer",
        "van",
    )
    + phrases("""
        sinds ik | toen ik | nu ben ik | ben ik | ben ik nu | was ik | word ik | werd ik |
        toen was ik
        """)
    + phrases(
        "het is alweer de | het is al de | vandaag is het de | het is vandaag de | alweer de | wordt vandaag | wordt morgen | werd gisteren | wordt zaterdag | wordt binnenkort | het is hier | hier is het | bij ons is het | het was hier | sessie | kuur | het is hier al"
    ),
    "owning": phrases("mijn | m'n | mn | onze | ons | haar | zijn | hun"),
    "own_piece": phrases("van mijn | van mijn werk | van mezelf")
    + each_of("van", "mijn | m'n | mn | onze | ons | de mijne | het mijne | mezelf | mij"),
    "whereabouts": phrases(
        "ben | zit | nog | net | eindelijk | bezig | al | pas | nu | klaar | vast | steeds | borduur | werk"
    ),
    "being": phrases("zijn | waren | werd | worden | wordt"),
    "choice_before": each_of(
        "niet | geen", "# | de #", ", | . | hoor . | hoor , | maar |", "wel", "de |"
    )
    + each_of(
        "zet | doe | plaats | teken",
        "maar | een | mijn | maar een | even een",
        "kruisje | kruis | vinkje | streepje | naam | punt | stip | ster",
        "bij | naast | op | achter | aan",
        "de | het | nummer |",
    )
    + each_of("gaan | ga | spring | door", "we | je | je eens |", "naar | naar de | voor de")
    + phrases("kom op | kom op de | hup | hup de | zet hem op | toe maar | vooruit | vooruit de"),
    "later": phrases("rechts van | rechts van de | rechts naast | die na de"),
    "earlier": phrases("links van | links van de | links naast | die voor de"),
    "condition": phrases(
        "als die al weg is | als die weg is | als die er niet meer is | als die al is geweest | als hij al weg is"
    ),
    "concluding": phrases(
        "maar liefst | bij voorkeur | liefst | maar liever | vooral | het liefst | maar vooral"
    ),
    "pointing_back": each_of(
        "dat is | dus dat is | is dat | dat wordt | dit is | daar is",
        "mijn | m'n | de",
        "stem | keuze | nummer | bladzijde | pagina | getal | antwoord",
    )
    + each_of(
        "neem | pak | doe | gebruik | kies | dus | stem | dan | ik neem | ik kies | maak", _THAT
    )
    + phrases(
        "die graag | die maar | deze graag | mooi cadeau | leuk cadeau | als cadeau | voor mijn verjaardag | een teken | toeval | hint | ik zeg niks"
    ),
    "own_facts": each_of(
        "mijn | m'n | de | het | onze |", _FACT, "van * | van mijn * | van m'n * | van de * |"
    )
    + each_of("het aantal | aantal | zoveel", "* | * *", "dat ik heb | die ik heb | als ik heb"),
    "as_named": phrases("zoals | net als | zelfde als | hetzelfde als | als"),
    "described": each_of(
        "die | de bladzijde | de pagina | het vakje | het stukje",
        "met de | met het | waar de | waar het | waarop | met die | met dat | onder de boom",
    ),
    "withdrawn": each_of(
        "vergeet | negeer", "maar | maar even |", "wat ik", "zei | schreef | riep | heb gezegd"
    ),
    "middle": phrases(
        "precies het midden | het midden | exact het midden | het exacte midden | midden"
    ),
    "because": phrases("want | omdat | vanwege"),
    "abstaining": phrases("beslis jij | jij mag beslissen | hak jij de knoop door")
    + phrases(
        "maar ik weet het niet | maar weet niet | maar ik weet niet | maar niet zeker | ik twijfel | twijfel nog | weet het nog niet | kan niet kiezen | nog niet zeker | ik denk nog na"
    ),
    "asked_plainly": phrases(
        "is vast al | vast al gekozen | vast al weg | zal wel al | is zeker al"
    ),
}
