"""German, as viewers write it under a video."""

from __future__ import annotations

from service.ballots.language import Language, Phrase, phrases
from service.ballots.languages import de_choices, de_composed, de_counts, de_numbers, de_told
from service.ballots.languages.spelling import extended

_WRITTEN_OUT = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})


#: "6 mal 7" is a sum on both sides of the word.
_TIMES = tuple(f"mal {number}" for number in range(2, 21))
_TIMES_BEFORE = tuple(f"{number} mal" for number in range(2, 21))


def _german(block: str) -> tuple[Phrase, ...]:
    """The phrases of a block, with umlauts and with "ae", "oe", "ue" for them."""
    return phrases(block + "\n" + block.translate(_WRITTEN_OUT))


_PLAIN = Language(
    code="de",
    everyday=_german(
        """
        glaube | glaub | denke | finde | find | letzte | erste | nächste | jemand | niemand |
        warum | welche | euer | eure | schwierig | weg | fertig | bisschen | wir | unser | unsere |
        letztes | gleich | in | griass | grüezi | servus | ned | hätt | nimm | irgendwas | irgendeine |
        mitenand | jede | jeder | jeden | der | die | das | den | dem | ein | eine | einen | und | oder |
        aber | ich | du | ihr | sie | es | mich | mir | dich | dir | uns | euch | mein | meine | meinen |
        dein | deine | ist | sind | war | bin | bist | habe | hab | hast | hat | haben | nicht | kein |
        keine | ja | nein | doch | auch | noch | nur | schon | sehr | so | wie | was | wer | wo | wenn |
        weil | dass | denn | mit | für | von | vom | zu | zum | zur | bei | auf | aus | nach | über |
        unter | im | am | an | um | bitte | danke | vielen | dank | hallo | moin | guten | liebe |
        lieben | grüße | grüsse | gruß | lg | gern | gerne | heute | immer | wieder | einfach |
        natürlich | klar | toll | schön | wunderschön | super | seite | nummer | stimme | nehme | nehm |
        wähle | möchte | würde | wäre | hätte | kann | will | dann | mal | ganz | alle | diese | dieser |
        dieses | diesmal | freue | mach | weiter | spannend | wird | seit | viel | viele | mag | oben |
        unten | links | rechts | zurück | zwischen | mitte | sonst | lieber | überrasch
        """
    ),
    numbers=de_numbers.numbers(),
    ordinals=de_numbers.ordinals(),
    page=_german(
        """
        seite | seiten | seitenzahl | seitennummer | seite nummer | seite nr | s | blatt | feld |
        stickseite | pg | musterseite | seitchen
        """
    ),
    number=_german("nummer | nr | nr. | num | no | zahl | numero | nummero | nummerchen"),
    dotted=_german(
        """
        seite | blatt | feld | reihe | zeile | spalte | januar | jänner | februar | märz | april |
        mai | juni | juli | august | september | oktober | november | dezember | jan | feb | apr |
        aug | sept | okt | nov | dez | geburtstag | hochzeitstag | stock | etage | platz | video |
        folge | projekt | versuch | klasse | runde | advent | stelle | wahl | tasse | enkel |
        enkelkind | kind | staffel | stich
        """
    ),
    fillers=_german(
        """
        nochmal | noch mal | noch einmal | erneut | d | de | die | der | den | dem | das | eine | ein |
        einer | meine | gute | alte | liebe | doch | mal | bitte | bitte bitte | gerne | gern | einfach |
        ganz klar | ganz | klar | natürlich | unbedingt | definitiv | eindeutig | wohl | vielleicht |
        also | dann | mal wieder | wieder | heute | diesmal | dieses mal | auch | jetzt | nun | ja |
        eher | lieber | äh | ähm | hm | hmm | auf jeden fall | nämlich | schöne | tolle | ruhig |
        erstmal | erst mal | zuerst | als erstes | als nächstes | als nächste | sehr | es mit | es | ist |
        wäre | zahl | glückszahl
        """
    ),
    choice_before=_german(de_choices.CHOICE_BEFORE),
    choice_after=_german(de_choices.CHOICE_AFTER),
    other_before=_german(de_counts.OTHER_BEFORE),
    other_after=_german(de_counts.OTHER_AFTER),
    weak_before=_german(de_counts.WEAK_BEFORE),
    weak_after=_german(de_counts.WEAK_AFTER),
    neutral_before=_german(de_counts.NEUTRAL_BEFORE),
    neutral_after=_german(de_counts.NEUTRAL_AFTER),
    lucky_before=_german(
        """
        glückszahl ist | glückszahl | glückszahl war | glücksnummer | glücksnummer ist |
        lieblingszahl | lieblingszahl ist | lieblingsnummer | lieblingsnummer ist | hausnummer |
        hausnummer ist | startnummer | rückennummer | rückennummer war | trikotnummer |
        meine zahl ist | meine nummer ist | meine nummer war | immer schon | zahl war immer
        """
    ),
    not_before=_german(de_choices.NOT_BEFORE),
    not_after=_german(de_choices.NOT_AFTER),
    correction=_german(de_choices.CORRECTION),
    soft_correction=_german(
        """
        lieber | nein | ne | besser | stattdessen | eher | sorry | entschuldigung | jetzt |
        nun doch | na gut
        """
    ),
    relative_after=_german(
        """
        von oben | von unten | von links | von rechts | von hinten | von vorne | vom ende |
        vom anfang | von der mitte
        """
    ),
    tally_before=_german("stimmen für | stimmen auf | leute für | mal die | für die | sagten"),
    topics=_german(
        """
        nadel | nadeln | garn | garne | faden | fäden | stoff | leinen | aida | fädig | ct |
        count | farbe | farben | rahmen | lampe | lupe | brille | bus | bahn | zug | fähre |
        boot | minuten | stunden | preis | euro | kosten | grad | stiche | stichen | docken | cm |
        mm | meter | folge | staffel | kapitel | lied | film | buch | rezept | uhr
        """
    ),
    ages=_german(
        """
        mein alter | mein geburtsjahr | meinem geburtsjahr | mein geburtstag | meinem geburtstag |
        bin ich geboren | ich geboren | geboren bin | geboren wurde | wie ich alt bin |
        so alt bin ich | alt bin | mein jahrgang
        """
    ),
    depends=_german(
        """
        je nachdem | kommt drauf an | kommt darauf an | es sei denn | vorausgesetzt | sofern |
        welche auch immer
        """
    ),
    ranked=_german(
        """
        in der reihenfolge | in dieser reihenfolge | der reihe nach | nach priorität |
        in genau der reihenfolge
        """
    ),
    first_choice=_german(
        """
        erste wahl | erstwahl | 1. wahl | erste wahl ist | 1. wahl ist | als erste wahl |
        favorit | hauptstimme | am liebsten
        """
    ),
    second_choice=_german(
        """
        zweite wahl | zweitwahl | 2. wahl | zweite wahl ist | 2. wahl ist | als zweite wahl |
        als ersatz | ersatz | ersatzweise | als zweites | plan b | notfalls | zur not |
        alternativ | als alternative | als reserve
        """
    ),
    through=_german("bis | bis zur"),
    question_before=_german(
        "von | von den | von insgesamt | alle | insgesamt | bis | sind | nur | geht bis"
    ),
    goes_on=_german("ist auch | wäre auch | sieht auch | klingt auch | war | auch"),
    saying=_german(
        """
        sagt | sagte | sagen | meint | meinte | ruft | rief | schreit | fragt | fragte |
        schreibt | schrieb | erzählt | antwortet
        """
    ),
    own_voice=_german("ich | aber | wir | mir | uns | doch | also | und ich | und wir | i"),
    if_words=_german("wenn | falls | sofern"),
    being=_german("ist | war | fällt"),
    sum_before=_german(
        """
        hälfte von | die hälfte von | doppelt | das doppelte von | ein viertel von |
        ein drittel von | zweimal | dreimal | wurzel aus | quadratwurzel aus | vielfaches von |
        ein vielfaches von | teilbar durch | summe aus
        """
    )
    + phrases("|".join(_TIMES_BEFORE)),
    sum_after=_german(
        """
        mal zwei | mal drei | mal 2 | mal 3 | geteilt durch | plus eins | plus zwei | plus |
        minus eins | minus zwei | minus | im quadrat | zum quadrat | hoch zwei | verdoppelt |
        halbiert
        """
    )
    + phrases("|".join(_TIMES)),
    either=_german(
        "oder | oder vielleicht | oder auch | oder eben | bzw | bzw. | wahlweise | entweder | notfalls auch"
    ),
    also=_german("und | & | sowie | und auch | und dann | plus | und vielleicht | und die | samt"),
    second=_german(de_choices.SECOND),
    condition=_german(de_choices.CONDITION),
    reported_before=_german(de_choices.REPORTED_BEFORE),
    family_before=_german(de_choices.FAMILY_BEFORE),
    reported_after=_german(de_choices.REPORTED_AFTER),
    asking=_german(de_choices.ASKING),
    suggesting=_german(de_choices.SUGGESTING),
    roughly_before=_german(
        """
        um die | so um die | irgendwo um | irgendwo bei | irgendwo um die | irgendwas um |
        irgendwas um die | ungefähr | circa | ca | ca. | zirka | etwa | in etwa |
        in der nähe von | in der nähe der | nahe | nahe bei | rund um | rund | so ungefähr |
        knapp vor | knapp nach | kurz vor der | kurz nach der | richtung | irgendwo nach |
        irgendwo vor | in richtung | grob
        """
    ),
    roughly_after=_german(
        """
        rum | herum | drumherum | drumrum | oder so | oder in der nähe | plus minus | plusminus |
        ungefähr | in etwa | circa
        """
    ),
    between=_german("zwischen | irgendwo zwischen | was zwischen | etwas zwischen | zwischen der"),
    relative_before=_german(
        "neben | direkt neben | gegenüber | gegenüber von | schräg neben | diagonal zu | angrenzend an"
    ),
    above=_german(
        "über | oberhalb | oberhalb von | direkt über | eins über | genau über | eine über"
    ),
    below=_german(
        "unter | unterhalb | unterhalb von | direkt unter | eins unter | genau unter | eine unter"
    ),
    later=_german(
        """
        rechts neben | rechts von | rechts daneben | die nach | seite nach | direkt nach |
        eins nach | eine nach | gleich nach
        """
    ),
    earlier=_german(
        "links neben | links von | die vor | seite vor | direkt vor | eins vor | eine vor | gleich vor"
    ),
    doubtful=phrases("elf"),
    withdrawn=_german(de_choices.WITHDRAWN),
    abstaining=_german(de_choices.ABSTAINING),
    pointing=_german(de_choices.POINTING),
    agreeing=_german(
        """
        ja | genau | stimmt | dito | ditto | same | finde ich auch | ich auch | dafür |
        bin dabei | bin dafür | seh ich auch so | sehe ich auch so | schließe mich an |
        schließ mich an | einverstanden | gleiche | unterschreibe ich | auch meine | +1
        """
    ),
    kinds=_german(de_choices.KINDS),
    first=_german(
        "erste | ersten | erster | erstes | allererste | allerersten | aller erste | 1. | erste hier"
    ),
    last=_german("letzte | letzten | letzter | allerletzte | allerletzten | aller letzte"),
    corner=_german(
        "irgendeine ecke | irgendeine der ecken | irgendeine eckseite | eine der ecken | eine der vier ecken | eine ecke | egal welche ecke | ecke | ecken | eckseite | eckchen | eckfeld | eckteil"
    ),
    top=_german("oben | obere | oberen | oberer | oberste | obersten | ganz oben | obre"),
    bottom=_german(
        "unten | untere | unteren | unterer | unterste | untersten | ganz unten | untre"
    ),
    left=_german("links | linke | linken | linker | ganz links | linkes"),
    right=_german("rechts | rechte | rechten | rechter | ganz rechts | rechtes"),
    middle=_german(
        "mitte | in die mitte | genau die mitte | in der mitte | genau in die mitte | genau in der mitte | mittlere | mittleren | mittelste | zentrum | mittig | genau mitte | mittendrin | mitten drin"
    ),
    row=_german("reihe | zeile"),
    column=_german("spalte"),
    times=_german("mal"),
    plus=_german("plus"),
    minus=_german("minus"),
    divided_by=_german("geteilt durch"),
    part_of=_german("von | vom | der | des"),
    whole_chart=_german(
        """
        der vorlage | des musters | des plans | von allem | der karte | der übersicht |
        vom muster | vom plan | des rasters
        """
    ),
    replacing=_german(
        """
        ändere | ändern | geändert | tausche | tauschen | tausch | wechsle | wechsel |
        ersetze | mach | mache
        """
    ),
    replaced_by=_german("zu | gegen | auf | in | durch | mit"),
    concluding=_german("also | darum | deshalb"),
    asked_later=_german(
        """
        ist die weg | ist die schon weg | ist die noch frei | ist sie noch frei |
        schon vergeben | ist das schon weg | noch zu haben
        """
    ),
    told_from_last=_german(
        "vorletzte | vorletzten | zweitletzte | drittletzte | letzte minus | vorvorletzte"
    ),
)

LANGUAGE = extended(extended(_PLAIN, de_composed.GROUPS), de_told.GROUPS)
