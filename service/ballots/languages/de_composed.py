"""German phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THE = "die | der | den | dem | das | zur | auf die | für die |"
_GONE = """
weg | vergeben | dran | genommen | gesagt | genannt | gewählt | fertig | gestickt | belegt |
besetzt | da gewesen | raus | verplant | reserviert | gefallen | vergriffen
"""
_FREE = "frei | zu haben | da | übrig | verfügbar | offen | nicht weg | nicht vergeben | im rennen"
_ALREADY = "schon | bereits | längst | schon mal | denn schon | eigentlich schon | etwa schon"
_ME = "mich | uns | meine stimme | meinen namen | mein kreuz | mein kreuzchen"
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = (
    "über mir | vor mir | oben | da oben | obendrüber | drüber | oberhalb | weiter oben | zuvor"
)
_SAID = """
sagt | sagte | sagt hat | gesagt hat | meint | meinte | nimmt | genommen hat | wählt | gewählt hat |
geschrieben hat | schreibt | will | wollte | vorschlägt | tippt
"""
_WISH = "wunsch | lieblings | glücks | favoriten | traum | kuschel"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "saying": phrases("geschrieben | kommentiert | stand da | hat gemeint"),
    "printed": phrases("zeitschrift | zeitung | buch | roman | katalog | kochbuch | heft"),
    "everyday": phrases(
        """
        hätte | schreib | trag | setz | tausche | nächstes | stickt | stickst | nehmt | bloß |
        vergeben | irgendwann | zweifädig | eigentlich | drum | vllt | vlt | hab's | als | ersatz |
        sagt | sagte | meint | wahl | wollte | wollen | können | bräuchte | machen | machst | bleibe
        """
    ),
    "page": phrases(
        "siite | siita | siit | seitn | seitä | siitä | wunschseite | lieblingsseite | glücksseite | favoritenseite | traumseite | startseite ist | "
        "seitennr | seitennr. | wunschseite nr | wunschseite nummer"
    ),
    "number": phrases("wunschzahl | wunschnummer | seitenwunsch | stickseite nummer"),
    "choice_before": each_of(
        "trag | trage | tragt | schreib | schreibe | schreibt | setz | setze | setzt | notier | "
        "notiere | notiert | pack | mach",
        _ME,
        "bitte | mal | bitte mal | doch |",
        "für | auf | auf die liste für | auf liste für | bei | ein für | auf für | zu",
    )
    + each_of(
        "meine | unsere | die",
        "wahl | entscheidung | stimme",
        "fällt | fiel | geht | ging | wäre | ist",
        "auf | an | für |",
    )
    + each_of(
        "ich | wir",
        "würd | würde | hätt | hätte | würden | hätten",
        "ja | so | ja so | sehr | echt | mal |",
        "gern | gerne",
        "dass du | dass ihr | wenn du | mal |",
    )
    + each_of(
        "würd | tät | täte | würden",
        "ich | wir | da | mal |",
        "sagen | nehmen | wählen | meinen | mit | für | tippen auf | vorschlagen",
    )
    + each_of("mich | hab mich | habe mich | ich mich", "in", _THE)
    + each_of("verguckt | verliebt | verschossen | vernarrt", "in")
    + each_of(
        "ich | hab | habe | wir",
        "setz | setze | setzen | alles | mein geld | stimme",
        "auf | für | alles auf | mein geld auf | ganz auf",
    )
    + each_of(
        "erste | zweite | dritte | erster | zweiter | dritter | 1. | 2. | 3.",
        "wahl | wunsch | priorität | stimme",
        ": | = | ist | wäre |",
    )
    + each_of("erstens | zweitens | drittens | als erstes | als zweites | als drittes", ": |")
    + each_of(
        "ersatz | ersatzseite | ersatzweise | als ersatz | notfalls | zur not | alternative | "
        "alternativ | reserve | als reserve | ersatzwunsch | plan b | sonst",
        ": | = | wäre | ist | dann |",
    )
    + each_of(
        "machen | macht | nehmen | sticken | können | könnten | wollen | sollen",
        "wir | ihr",
        "heute | mal | bitte | dann | jetzt |",
    )
    + phrases(
        """
        hab gewählt | hab genommen | mein votum | mein votum ist | mein votum geht an | votum |
        hab mich entschieden für | entscheide mich für | zieht mich zur | mir wäre die |
        wunschkandidat | wunschkandidatin | mein wunschkandidat | mein herz schlägt für |
        herz schlägt für | schlägt für | daumen hoch für | plus eins für | +1 für | zum mitnehmen
        """
    ),
    "fillers": phrases("wahl | wahl : | wunsch : | priorität : | wahl ist | wahl wäre"),
    "first_choice": phrases("erstens | als erstes | erste wahl | 1. wahl | am liebsten"),
    "second_choice": phrases(
        "zweitens | als zweites | ersatz | ersatzweise | als ersatz | ersatzseite | alternative"
    ),
    "letting_choose": each_of(
        "habe | hab | haben | hat",
        "* * | * * *",
        "aussuchen lassen | wählen lassen | entscheiden lassen | ziehen lassen | tippen lassen",
    )
    + each_of("durfte | darf | durften", "aussuchen | wählen | entscheiden | ziehen | tippen"),
    "choice_after": each_of(
        "würde | würd | wäre | wär",
        "mich | mir | uns | was | doch | echt | total | ja |",
        "freuen | gefallen | passen | reizen | cool | klasse | spitze | genial | spannend | prima | "
        "nett | fein | interessant | perfekt | mega | ein traum",
    )
    + each_of("hab | habe | haben", "ich | wir", "gewählt | genommen | ausgesucht | getippt |")
    + phrases(
        """
        ein | auf | eintragen | aufschreiben | notieren | zum mitnehmen | zum mitnehmen bitte |
        neh | näh | neme | nämä | nämme | nähme | machst | machen könntest | nehmen könntest | stickst | drannimmst | dran nimmst | verguckt |
        verliebt | wär mein ding | ist mein ding | ausgesucht
        """
    ),
    "neutral_after": phrases("auch wenn | selbst wenn | obwohl")
    + phrases("wegen | wg | wg. | wgn")
    + each_of("gegen | in | auf | durch | zu | für | mit", "die | eine |", "#")
    + phrases("nicht # | nicht die # | nicht die | und nicht die | und nicht #"),
    "not_before": each_of("und nicht | aber nicht | nicht etwa | bitte nicht | und nie", _THE)
    + phrases(
        "alles andere als die | alles nur nicht | alles nur nicht die | bloß nicht die | bloss nicht"
    ),
    "reported_after": phrases(
        "hat schon jemand | hat jemand | schon jemand | hatte schon | hat die schon | hatte die schon | hatten wir schon"
    )
    + each_of(_ALREADY, _GONE)
    + each_of("noch | denn noch | überhaupt noch | immer noch", _FREE)
    + each_of("ist | war | wurde | hat | is", _ALREADY, _GONE)
    + each_of("ist | is | wäre", "noch | denn noch | immer noch", _FREE)
    + each_of(
        "schon | bereits", "gesagt | genannt | gewählt | genommen | gemacht | gestickt | dran"
    )
    + phrases("noch ? | zu | zustimme | ebenfalls zu | schon vergeben oder"),
    "asked_later": each_of(
        "ist | war | is | ist die | ist das | oder ist die | war die",
        _ALREADY + " | noch",
        _GONE + "|" + _FREE,
    ),
    "reported_before": phrases(
        "mir wurde | wurde mir | mir empfohlen | hat mir gesagt | sagten mir | man sagt"
    )
    + each_of(
        "stimme | schließe mich | schliesse mich | pflichte | gebe",
        "der | dem | den | voll der | auch der",
    )
    + each_of("einverstanden | einer meinung | d'accord | gleicher meinung", "mit |", "der | dem |")
    + each_of(
        "dame | frau | person | jene | derjenigen | vorrednerin | leute", "mit | die", "der | die |"
    )
    + each_of("wurde | wurden | hat jemand | hatte jemand", "die | denn die | schon die | etwa die")
    + phrases(
        "meinung wie die dame mit der | was ist mit allen | schon jemand die | hat jemand die"
    ),
    "pointing": phrases(
        "schließ mich * an | schließe mich * an | schliess mich * an | schliesse mich * an"
    )
    + each_of(
        "die seite | die nummer | die zahl | die",
        "mit | von | zu",
        "meiner hausnummer | meinem alter | meinem geburtstag | meinem geburtsjahr | meinem haus | meinem hochzeitstag",
    )
    + each_of(
        "wie | genau wie | so wie | gleiche wie | dasselbe wie | dieselbe wie | wie bei",
        _OTHERS,
        _ABOVE,
    )
    + each_of(
        "was | wie | die | das was | genau was",
        "* | die * | meine * | mein * | sie | er | die * *",
        _SAID,
    )
    + each_of(
        "genau wie | wie | so wie | bin wie",
        "meine | die | mein",
        "vorrednerin | vorredner | vorgängerin",
    )
    + each_of(
        "das gleiche | dasselbe | die gleiche | dieselbe | das selbe | die selbe | gleiche zahl | "
        "gleiche seite",
        "wie",
        "du | ihr | sie | die * | der * | meine * | mein * | *",
    )
    + each_of(
        "die zahl | die nummer | das datum | der tag | die seite | das alter | der geburtstag | "
        "die hausnummer | das geburtsjahr",
        "von | meines | meiner | vom | aus",
        "meinem * | meiner * | unserem * | unserer * | meinen * | mir | *",
    )
    + phrases(
        "mein alter | mein alter bitte | so alt wie ich | wie alt ich bin | mein jahrgang | mein geburtstag"
    ),
    "withdrawn": each_of(
        "vergiss | vergesst | ignorier | ignoriere | ignoriert | streich | streiche | streicht | "
        "lösch | lösche | löscht | zieh | ziehe | nehme | nehm",
        "bitte |",
        "meinen | meine | mein",
        "vorschlag | stimme | tipp | kommentar | wahl | zahl | vote | votum",
    )
    + phrases("meine stimme zurück | stimme wieder zurück | bin raus | zähl mich nicht mit"),
    "abstaining": phrases(
        """
        entscheide du | entscheide selbst | entscheid du | du entscheidest | ihr entscheidet |
        lass dich überraschen | lasse mich überraschen | lass mich überraschen | überrasch uns |
        mir egal | ist mir egal | völlig egal | egal welche seite |
        alle sind schön | such du eine aus | such dir eine aus | such dir was aus | wähl du | wählt ihr |
        nimm irgendeine | was du willst | wie du magst | wie du willst
        """
    ),
    "kinds": each_of(
        "in den | aus den | irgendwas in den | irgendwo in den",
        "20ern | 30ern | 40ern | 50ern | zwanzigern | dreißigern | vierzigern | fünfzigern | "
        "sechzigern | zehnern",
    )
    + each_of(
        "was | etwas | irgendwas | eine | irgendeine",
        "aus der | in der | von der | vom | am | im",
        "unteren | oberen | mittleren | linken | rechten | rand | mitte",
    ),
    "replacing": phrases(
        """
        tausche | tausch | tauscht | tauschen | tauscht bitte | ändere | ändert | änder | ändern |
        ersetze | ersetzt | ersetz | wechsle | wechsel | mach | mache | umtauschen | aendere | aendern
        """
    ),
    "replaced_by": each_of(
        "gegen | in | auf | durch | zu | für | mit | nach", "die | den | eine | der |"
    ),
    "roughly_before": each_of(
        "ungefähr | so | irgendwo | etwa | so ungefähr | in etwa",
        "bei | um | in der nähe von | in der nähe der | nahe | rund um | bei der | um die",
    )
    + phrases(
        "in der nähe der | in der nähe von | um die | so rund um | so gegen | ca | circa | etwa"
    ),
    "other_before": phrases(
        "wir sehen uns am | sehen uns am | treffen uns am | bis zum | sehen uns den"
    )
    + each_of(
        "er | fach | fädig | auf",
        "aida | leinen | stoff",
        "oder | und |",
    )
    + each_of("gewonnen | verloren | gespielt | unentschieden", "mit |", "# : | # zu |")
    + each_of("gelaufen | gefahren | gegangen | geradelt | marschiert", "sind | sind's |"),
    "other_after": each_of(
        "auf der | auf dem | auf meiner | im | in der",
        "platte | album | liste | rezept | tippschein | speisekarte",
    )
    + phrases(
        """
        er aida | er oder # | er leinen | er stoff | fädig | er stoff | zu # | rosen | blumen | tulpen |
        er bus | er tram | er linie | er pack | kilometern | angefangene | angefangenen | offene |
        offenen | fertige | fertigen | von 10 | von 5 | von 100 | aida | leinen | sticktwist |
        er garn | er zählstoff | zählstoff
        """
    ),
    "part_of": phrases(
        "von | vom | des | der | meines | meiner | von meinem | von meiner | im | in meinem"
    ),
    "whole_chart": each_of(
        "vom | des | von dem | im | auf dem",
        "muster | musters | plan | plans | raster | rasters | "
        "bild | bilds | bildes | motiv | motivs | ganzen | stickbild | stickplan | entwurf",
    )
    + phrases("der vorlage | der karte | von der vorlage | von der karte | in der vorlage"),
    "corner": phrases("eck | eckseite | eckerl"),
    "top": each_of("oben", "in der | im | in die | auf der | ganz |"),
    "bottom": each_of("unten", "in der | im | in die | auf der | ganz |"),
    "middle": phrases(
        "mittlere | mittleren | die mittlere | mittelseite | mitten drin | mittendrin"
    ),
    "last": phrases("allerletzte | allerletzten | letztmögliche"),
    "times": phrases("mal | x | multipliziert mit"),
    "minus": phrases("minus | weniger"),
    "plus": phrases("plus"),
}
