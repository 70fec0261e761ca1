"""German votes told in a roundabout way, and talk that only sounds like a vote."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THAT = "das | die | diese | diese zahl | diese seite | die zahl | die da"
_FACT = """
geburtstag | alter | geburtsdatum | geburtsjahr | hausnummer | schuhgröße | glückszahl | hochzeitstag |
geburtsmonat | lieblingszahl
"""

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "voting": phrases("""
        meine stimme | stimme für | ich stimme | ich wähle | ich nehme | mein votum |
        meine wahl | ich votiere
        """),
    "rated": phrases("eine glatte | das ist eine | gebe eine | ist eine"),
    "finished": phrases("fertig | geschafft | erledigt | ist fertig"),
    "halving": phrases("hälfte von | die hälfte von"),
    "any_of": phrases("irgendwas | irgendetwas | alles | irgendeine"),
    "torn": phrases("""
        schwanke | hin und her | unentschlossen | kann mich nicht entscheiden | entscheiden |
        zögere | hänge
        """),
    "begun_after": phrases("""
        anfängst | anfangt | beginnst | startest | loslegst | anfangen würdest | anfangen |
        beginnen | starten | weitermachst
        """),
    "other_after": phrases("""
        grad hier | grad draußen | grad im schatten | grad heute | grad celsius | grad warm |
        grad und | grad im
        """)
    + phrases("am abend | am tag | pro abend | pro tag | in der woche"),
    "choice_after": phrases("""
        entschieden | beschlossen | das steht fest | anfängst | anfangt | beginnst |
        startest | loslegst | anfangen würdest
        """),
    "winning": phrases("gewinnt | siegt | hat gewonnen"),
    "wondering": phrases("ob | was ich | wie | wo | wann"),
    "again": phrases("schon wieder | wieder | nochmal | schon wieder die"),
    "named_before": phrases("""
        stimme | stimme der | stimme für der | einverstanden mit | einverstanden mit der |
        bin bei der | wäre bei der | schließe mich der | schließ mich der
        """),
    "answered": phrases("sonst | ansonsten")
    + phrases("""
        wenn ja | falls ja | wenn ja dann | falls ja dann | wenn nicht | falls nicht |
        in dem fall | in diesem fall | dann
        """),
    "today": phrases("heute | morgen"),
    "wishing": each_of(
        "wenn | falls", "ich | wir", "könnte | dürfte | mutig | eine stimme | wählen | nicht | noch"
    )
    + phrases(
        """
        ich wünschte | wünschte ich | wenn ich könnte | könnte ich nochmal | wäre ich | hätte ich eine stimme |
        schade um die | wenn ich nur | am liebsten hätte ich | hätte gern gehabt | gern gehabt | gerne gehabt
        """
    ),
    "turning": phrases("aber | egal | trotzdem | naja | na gut | stattdessen | jedenfalls"),
    "reported_before": phrases(
        "freundinnen | freunde | ihr habt | du hast gesagt | du hattest gesagt | ich glaube es war die | es war die | das war die"
    ),
    "reported_after": phrases(
        "gesagt aber | irgendwann mal | irgendwann | eines tages | ein andermal | gehabt"
    )
    + each_of("gesagt | genommen | gewählt", "aber | doch | wenn"),
    "it_is": phrases("es sind | es ist | es hat | wir haben | es waren | sind es"),
    "weather": phrases("hier | draußen | im schatten | grad | bei uns"),
    "other_before": phrases("jetzt bin ich bei | bin jetzt bei | nun bin ich bei")
    + phrases("""
        angefangen, jetzt | angefangen und jetzt | angefangen, heute | angefangen, nun |
        gelernt, jetzt | gelernt und jetzt
        """)
    + phrases("""
        seit ich | als ich | jetzt bin ich | nun bin ich | heute bin ich | bin ich |
        bin ich jetzt | damals war ich | da war ich | werde ich | war ich
        """)
    + phrases(
        """
        heute ist der | heute ist schon der | wir haben den | wir haben schon den | heute schon der |
        hier sind es | es sind hier | wir haben hier | bei uns sind es | hier hat es | es hat hier | bei uns hat es |
        wir haben schon | sitzung | therapie | chemo
        """
    ),
    "owning": phrases(
        "mein | meine | meinen | meinem | meiner | unser | unsere | unseren | sein | ihr | ihre"
    ),
    "own_piece": each_of(
        "von | an | bei | in", "meinem | meiner | meinen | unserem | unserer | dem * | der *"
    )
    + phrases("meines | meiner | von mir selbst | meines eigenen"),
    "whereabouts": phrases(
        "bin | noch | immer | gerade | sitze | hänge | stecke | endlich | schon | erst | jetzt | aktuell | arbeite | sticke | fertig"
    ),
    "being": phrases("sind | waren | wurde | werden | wird"),
    "choice_before": each_of(
        "mach | mache | macht | setz | setze | setzt | mal",
        "bitte | mal |",
        "ein | einen | mein | das",
        "kreuz | kreuzchen | haken | häkchen | punkt | stern | pin | name",
        "bei | an | auf | neben | hinter",
        "der | die | den |",
    )
    + each_of(
        "gehen | geht | springen | wechseln | weiter | auf",
        "wir | es | bitte |",
        "zur | zu | zur seite | auf die",
    )
    + phrases(
        "los | los die | auf geht's mit | auf geht's zur | komm | komm schon | her mit der | hopp | sehen | erst die | erst mal die | zuerst die"
    ),
    "second": phrases("sonst | ansonsten | falls die weg ist | falls weg"),
    "condition": phrases(
        "falls die weg ist | wenn die weg ist | falls die schon weg ist | wenn sie weg ist | falls sie weg ist | falls die vergeben ist | wenn schon vergeben"
    ),
    "replacing": phrases("ändern"),
    "concluding": phrases(
        "aber lieber | aber am liebsten | am liebsten | lieber | vorzugsweise | aber eher | besonders"
    ),
    "pointing_back": each_of(
        "das ist | also ist das | ist das | das wäre | da ist | hier ist",
        "meine | mein | die | das |",
        "stimme | wahl | zahl | seite | nummer | antwort | tipp",
    )
    + each_of(
        "nimm | nehmt | nehme | nehmen wir | dann | mach | macht | dann mach | wähl | wählt | also | ich nehme | ich wähle",
        _THAT,
    )
    + phrases(
        "die bitte | diese bitte | das bitte | die zahl bitte | schönes geschenk | als geschenk | wäre ein schönes geschenk | zum geburtstag | ein zeichen | passt doch | die dann | kleiner hinweis | hinweis | wink mit dem zaunpfahl"
    ),
    "own_facts": each_of(
        "mein | meine | unser | unsere | das | die | der | dem",
        _FACT,
        "von * | von * * | meiner * | meines * | meines mannes |",
    )
    + each_of(
        "anzahl | die anzahl | so viele", "* | der * | meiner *", "die ich habe | wie ich habe |"
    ),
    "as_named": phrases("wie | so wie | gleiche wie | dasselbe wie | same wie | wie die | wie der"),
    "described": each_of(
        "die | die seite | das feld | das stück | die da",
        "mit der | mit dem | mit den | wo die | wo der | wo das | wo man | auf der | mit so | neben der eule",
    ),
    "because": phrases("weil | da | denn | wegen"),
    "abstaining": phrases("entscheide du | entscheid du | du musst entscheiden")
    + phrases(
        "aber ich weiß nicht | aber weiß nicht | aber bin nicht sicher | aber ich bin nicht sicher | aber keine ahnung | bin noch unsicher | bin unsicher | ich schwanke noch | kann mich nicht entscheiden | weiß nicht recht | noch am überlegen | ich überlege noch"
    ),
    "asked_plainly": phrases(
        "bestimmt schon weg | sicher schon weg | wohl schon weg | bestimmt schon vergeben | ist wohl schon | sicher schon vergeben"
    ),
}
