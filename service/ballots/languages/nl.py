"""Dutch, as viewers in the Netherlands and Flanders write it under a video."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import nl_choices, nl_composed, nl_counts, nl_numbers, nl_told
from service.ballots.languages.spelling import extended

#: "6 keer 7" is a sum on both sides of the word.
_TIMES = tuple(f"{word} {number}" for word in ("keer", "maal") for number in range(2, 21))
_TIMES_BEFORE = tuple(f"{number} {word}" for word in ("keer", "maal") for number in range(2, 21))


_PLAIN = Language(
    code="nl",
    plural_s=True,
    everyday=phrases(
        """
        lijkt | spannend | nogmaals | helemaal | waarom | worden | geef | zeg | denk | vorige | laatste |
        eerste | jarig | weet | nooit | zoals | net | borduren | kijk | nu | mogen | iemand | niemand |
        jullie | de | het | een | en | of | maar | ik | jij | je | u | hij | zij | ze | wij | we | mij |
        me | jou | ons | mijn | jouw | onze | dit | dat | die | deze | is | zijn | was | ben | bent |
        heb | hebt | heeft | hebben | had | niet | geen | ja | nee | toch | ook | nog | al | heel | zo |
        hoe | wat | wie | waar | als | omdat | want | met | voor | van | naar | bij | op | uit | aan |
        over | onder | boven | tussen | om | te | er | hier | daar | graag | alsjeblieft | alstublieft |
        aub | dank | bedankt | dankjewel | dankje | hallo | hoi | goedemorgen | groetjes | groeten |
        groet | liefs | lieve | leuk | mooi | prachtig | geweldig | gewoon | natuurlijk | vandaag |
        altijd | weer | pagina | bladzijde | nummer | stem | kies | neem | doe | ga | wil | zou | mag |
        kan | moet | wordt | dan | keer | mooie | veel | allemaal | iedereen | links | rechts | midden |
        terug | zelfde | verras | borduur | keus | keuze | zie | maak | jaar | vind | hoop | misschien |
        eigenlijk | linksboven | rechtsboven | linksonder | rechtsonder | anders | liever | zeker | echt |
        goed | goede | fijne
        """
    ),
    numbers=nl_numbers.numbers(),
    ordinals=nl_numbers.ordinals(),
    ordinal_endings=frozenset({"e", "de", "ste"}),
    page=phrases(
        """
        pagina | pag | pag. | bladzijde | bladzij | blz | blz. | bl | bladz | blad |
        paginanummer | pagina nummer | pagina nr | vel | vakje | vak | p | pg | bladzijdenummer |
        blz nr | hoekpagina
        """
    ),
    number=phrases("nummer | nr | nr. | nummertje | getal | num | no | cijfer | nummero"),
    fillers=phrases(
        """
        nogmaals | nog een keer | weer | de | het | een | die | dat | mijn | maar | dan | dan maar |
        toch | toch maar | eens | even | gewoon | lekker | graag | alsjeblieft | aub | svp | natuurlijk |
        zeker | absoluut | misschien | wel | ook | nu | vandaag | deze keer | dit keer | eigenlijk |
        eerst | als eerste | als volgende | heel graag | eh | euh | hm | hmm | goede | oude | lieve |
        mooie | leuke | dus | ja | nou | pagina's | gerust | liefst | het liefst | is | zou | getal |
        hoor | zeg maar | altijd | er
        """
    ),
    choice_before=phrases(nl_choices.CHOICE_BEFORE),
    choice_after=phrases(nl_choices.CHOICE_AFTER),
    other_before=phrases(nl_counts.OTHER_BEFORE),
    other_after=phrases(nl_counts.OTHER_AFTER),
    weak_before=phrases(nl_counts.WEAK_BEFORE),
    weak_after=phrases(nl_counts.WEAK_AFTER),
    neutral_before=phrases(nl_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(nl_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        geluksgetal is | geluksgetal | geluksgetal was | geluksnummer is | geluksnummer |
        lievelingsgetal is | lievelingsgetal | lievelingsnummer is | lievelingsnummer |
        favoriete getal is | favoriete getal | favoriete nummer is | favoriete nummer |
        huisnummer is | huisnummer | rugnummer | rugnummer was | mijn getal is | mijn nummer is
        """
    ),
    not_before=phrases(nl_choices.NOT_BEFORE),
    not_after=phrases(nl_choices.NOT_AFTER),
    correction=phrases(nl_choices.CORRECTION),
    soft_correction=phrases(
        "liever | nee | eigenlijk | beter | sorry | wacht | dan maar | nu | oke dan | excuses | pardon"
    ),
    own_voice=phrases("ik | maar | wij | we | dus"),
    if_words=phrases("als | tenzij | indien"),
    being=phrases("is | was | valt"),
    sum_before=phrases(
        """
        helft van | de helft van | dubbele van | het dubbele van | een kwart van |
        een derde van | tweemaal | driemaal | wortel van | de wortel van | veelvoud van |
        een veelvoud van | deelbaar door | som van
        """
    )
    + phrases("|".join(_TIMES_BEFORE)),
    sum_after=phrases(
        """
        keer twee | keer drie | keer 2 | keer 3 | maal twee | maal drie | gedeeld door |
        plus een | plus twee | plus | min een | min twee | in het kwadraat | kwadraat |
        verdubbeld | gehalveerd
        """
    )
    + phrases("|".join(_TIMES)),
    either=phrases("of | of misschien | of anders | of toch | ofwel | hetzij | dan wel | en of"),
    also=phrases("en | & | plus | en ook | en dan | alsook | en misschien | evenals"),
    second=phrases(nl_choices.SECOND),
    first_choice=phrases(
        "eerste keus | eerste keuze | 1e keus | 1e keuze | eerste keus is | eerste keuze is | als eerste keus | hoofdkeus | liefst"
    ),
    second_choice=phrases(
        """
        tweede keus | tweede keuze | 2e keus | 2e keuze | tweede keus is | tweede keuze is |
        als tweede | als tweede keus | reserve | als reserve | plan b | desnoods |
        als alternatief | als backup
        """
    ),
    ranked=phrases(
        "in die volgorde | in deze volgorde | op volgorde | in volgorde van voorkeur | volgorde van voorkeur"
    ),
    condition=phrases(nl_choices.CONDITION),
    depends=phrases(
        "tenzij | hangt ervan af | ligt eraan | afhankelijk van | welke ook | welke dan ook | mits"
    ),
    tally_before=phrases("stemmen voor | stemmen op | mensen voor | keer voor | zeiden"),
    topics=phrases(
        """
        naald | naalden | garen | draad | draden | draadjes | stof | linnen | aida | ct | count |
        kleur | kleuren | frame | lamp | loep | bril | bus | trein | boot | veerboot |
        minuten | uren | uur | prijs | euro | kost | graden | steken | strengen | cm | mm |
        meter | aflevering | seizoen | hoofdstuk | liedje | film | boek | recept
        """
    ),
    ages=phrases(
        """
        mijn leeftijd | mijn geboortejaar | geboren ben | ben geboren | ik geboren |
        mijn verjaardag | hoe oud ik ben | zo oud ben ik | oud ben | geboren werd | jarig ben |
        ben ik jarig
        """
    ),
    reported_before=phrases(nl_choices.REPORTED_BEFORE),
    family_before=phrases(nl_choices.FAMILY_BEFORE),
    reported_after=phrases(nl_choices.REPORTED_AFTER),
    asking=phrases(nl_choices.ASKING),
    suggesting=phrases(nl_choices.SUGGESTING),
    roughly_before=phrases(
        """
        rond de | ergens rond | ergens rond de | rondom | ongeveer | zo'n | circa | ca | ca. |
        om en nabij | in de buurt van | dichtbij | dicht bij | vlak bij | vlakbij | ergens bij |
        omstreeks | richting | net voor | net na | grofweg | iets van | iets rond
        """
    ),
    roughly_after=phrases(
        "of zo | ongeveer | zoiets | of daaromtrent | of in de buurt | plusminus | of daar in de buurt | ish"
    ),
    between=phrases("tussen | tussen de | ergens tussen | iets tussen"),
    through=phrases("tot | t/m | tot en met | tm"),
    question_before=phrases(
        "van | van de | alle | uit | tot | allemaal | maar | gaat tot | zijn | totaal"
    ),
    goes_on=phrases("is ook | zou ook | lijkt ook | was | ook"),
    saying=phrases(
        "zegt | zei | zeggen | riep | roept | vraagt | vroeg | schrijft | schreef | meldt | vindt | antwoordt"
    ),
    relative_before=phrases(
        "naast | direct naast | vlak naast | tegenover | schuin naast | grenzend aan | diagonaal van"
    ),
    relative_after=phrases(
        "van boven | van onder | van onderen | van links | van rechts | vanaf links | vanaf rechts | van het eind | vanaf het eind"
    ),
    above=phrases("boven | direct boven | vlak boven | net boven | een boven"),
    below=phrases("onder | direct onder | vlak onder | net onder | een onder"),
    later=phrases(
        "rechts van | rechts naast | die na | die na de | pagina na | direct na | net na de | eentje na"
    ),
    earlier=phrases(
        "links van | links naast | die voor | die voor de | pagina voor | direct voor | eentje voor"
    ),
    doubtful=phrases("elf | tien"),
    withdrawn=phrases(nl_choices.WITHDRAWN),
    abstaining=phrases(nl_choices.ABSTAINING),
    pointing=phrases(nl_choices.POINTING),
    agreeing=phrases(
        """
        ja | precies | inderdaad | mee eens | helemaal mee eens | eens | idem | ik ook | zelfde |
        hetzelfde | same | sluit me aan | sluit mij aan | +1 | deze ook | goede keuze |
        daar ben ik voor
        """
    ),
    kinds=phrases(nl_choices.KINDS),
    first=phrases("eerste | allereerste | 1e | 1ste | aller eerste"),
    last=phrases("laatste | allerlaatste | aller laatste"),
    corner=phrases("hoek | hoeken | hoekje | hoekpagina | hoekstuk | hoekblad"),
    top=phrases("boven | bovenste | bovenaan | bovenin | helemaal boven | uiterst boven"),
    bottom=phrases("onder | onderste | onderaan | onderin | beneden | helemaal onder"),
    left=phrases("links | linker | linkse | helemaal links | uiterst links"),
    right=phrases("rechts | rechter | rechtse | helemaal rechts | uiterst rechts"),
    middle=phrases(
        "midden | precies in het midden | midden in | middelste | in het midden | het midden | centrum | middenin | precies midden | middenste"
    ),
    row=phrases("rij"),
    column=phrases("kolom"),
    times=phrases("keer | maal"),
    plus=phrases("plus"),
    minus=phrases("min"),
    divided_by=phrases("gedeeld door"),
    part_of=phrases("van"),
    whole_chart=phrases(
        """
        van het patroon | van de kaart | van het geheel | van alles | van het werk |
        van het raster | van de plattegrond
        """
    ),
    replacing=phrases("verander | wijzig | wissel | ruil | vervang | maak | zet"),
    replaced_by=phrases("in | naar | voor | door | tegen | om"),
    concluding=phrases("dus | daarom"),
    asked_later=phrases("is die weg | is die al weg | is die nog vrij | al bezet | nog vrij"),
    told_from_last=phrases(
        "voorlaatste | een na laatste | op een na laatste | tweede van achteren | op twee na laatste"
    ),
    parted=phrases(
        """
        links boven | rechts boven | links onder | rechts onder | linker boven | linker onder |
        rechter boven | rechter onder | linker boven hoek | rechter boven hoek |
        linker onder hoek | rechter onder hoek | boven hoek | onder hoek | linker hoek |
        rechter hoek | links bovenaan | rechts bovenaan | links onderaan | rechts onderaan |
        links bovenin | rechts bovenin | links onderin | rechts onderin | midden pagina
        """
    ),
)

LANGUAGE = extended(extended(_PLAIN, nl_composed.GROUPS), nl_told.GROUPS)
