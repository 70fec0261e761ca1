"""Danish phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = """
taget | optaget | ledig | valgt | sagt | lavet | broderet | færdig | fri | væk | tilbage | nævnt | tilgængelig
"""
_ALREADY = "allerede | stadig | endnu | måske allerede | nu"
_SAID = "sagde | siger | valgte | vælger | tog | tager | stemte på | skrev | vil have | synes"
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "ovenfor | over mig | ovenover | herover | lige ovenfor | før mig | ovenfor mig"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("bogen | bladet | kogebog | kogebogen | romanen | avisen | bog"),
    "turning": phrases("men"),
    "voting": phrases("stemmer | min stemme | vælger"),
    "torn": phrases("vakler | tvivl | vælge"),
    "own_piece": phrases("på min | på mit | af min | af mit | i min | i mit"),
    "again": phrases("igen"),
    "named_before": phrases("enig i | enig med"),
    "answered": phrases("hvis ja | i så fald | hvis så | hvis ikke | ellers"),
    "today": phrases("i dag | idag"),
    "everyday": phrases("stemme | stemmer")
    + phrases(
        "mor | skrev | sad | oppe | kl | færdig | færdigt | dejlig | flot | hvor | jeg | har | mens | også | bare | mig | dig | ufærdige | liggende | alder | halvdelen | optaget | taget | ledig | kroner | samme | som | sæt | skriv | byt | ændrer | hellere | undskyld | fortrød | gik | vandt | broderer | alt"
    ),
    "neutral_before": phrases("# mod | # til | # med"),
    "choice_before": each_of("lander | landede | ender | endte", "på", "side | nummer |")
    + phrases("det må blive | må blive | men jeg | men jeg vil | selv")
    + each_of(
        "skriv | sæt | noter | tæl | stil",
        "mig | os | min stemme | mit navn",
        "op til | på | op på | for | til | ned for |",
    )
    + each_of(
        "mit valg | valget | min stemme | stemmen | mit bud | favoritten",
        "bliver | er | falder på | går til | ville være",
    )
    + each_of(
        "jeg ville | jeg vil | vi vil | ville | vil",
        "så | meget | rigtig | virkelig |",
        "gerne | helst |",
        "se | have | tage | vælge | have lov at se",
    )
    + each_of("jeg er | er | jeg", "vild med | forelsket i | svag for | faldet for")
    + each_of("har | jeg har", "en svaghed for | en forkærlighed for")
    + each_of("jeg satser | satser | jeg satser alt | satser alt | sætter alt", "på")
    + each_of(
        "kan du | kan I | kan vi | skal vi | ku vi | kunne du",
        "lave | tage | sy | brodere | vise |",
    )
    + each_of(
        "førstevalg | andetvalg | tredjevalg | første valg | andet valg | tredje valg | reserve | som reserve",
        ": | er |",
    )
    + phrases("helst | hellere | tredje | i første omgang | ændrer til | ønskeside"),
    "choice_after": each_of(
        "ville være | var | kunne være",
        "skønt | sjovt | fint | dejligt | spændende | hyggeligt | super",
    )
    + phrases("mange tak | hvis det kan lade sig gøre"),
    "first_choice": phrases("helst | førstevalg"),
    "second_choice": phrases("reserve | andetvalg | som reserve"),
    "second": phrases("tredje | tredjevalg | reserve | og ellers | andetvalg"),
    "neutral_after": phrases("ikke # | ikke side | end # | til # | med # | ud med #"),
    "not_before": each_of(
        "alt andet | hvad som helst andet | alle andre | hellere | ikke andet", "end", "side |"
    )
    + each_of("og ikke | men ikke | i stedet for | end | snarere end", "side | den |"),
    "reported_after": phrases(
        "er der nogen | er det nogen | har nogen | er der allerede | har allerede"
    )
    + phrases("taget | optaget | ledig | ledigt")
    + each_of("er | var | blev", _ALREADY + " |", _GONE)
    + each_of(_ALREADY, _GONE),
    "asked_later": each_of("er den | er det | eller er den | er", _ALREADY + " |", _GONE),
    "reported_before": phrases("tænkte først | tænkte først på | ville først have")
    + phrases("de sagde til mig | nogen sagde til mig | ville have haft | blev anbefalet")
    + each_of(
        "damen | kvinden | personen | den | hende | nogen | dem",
        "der | som",
        "sagde | siger | har sagt | valgte",
    )
    + each_of("enig | jeg er enig", "i | med", "den | side |"),
    "pointing": phrases("enig med * | enig med")
    + each_of("det samme | samme | samme side | samme nummer", "som", _OTHERS, _ABOVE + " |")
    + each_of("som | ligesom | det | hvad | den som", "* | min * | damen * | * *", _SAID)
    + phrases("min alder | min fødselsdag | mit fødselsår | vores bryllupsdag | min mands alder"),
    "withdrawn": each_of(
        "slet | fjern | ignorer | glem | træk | tæl ikke | trækker | stryg | jeg trækker",
        "min stemme | mit valg | min kommentar | mit nummer",
        "tilbage | med |",
    ),
    "abstaining": phrases(
        "vælg du | vælg du bare | du vælger | overrask os | overrask mig | lige meget | kan ikke vælge"
    ),
    "kinds": each_of(
        "en i | i | noget i", "tyverne | trediverne | fyrrerne | halvtredserne | tresserne"
    ),
    "replacing": phrases(
        "byt | byt ud | bytte | ændr | ændrer | skift | skifter | erstat | udskift"
    ),
    "replaced_by": phrases("til | med | ud med | mod | for"),
    "correction": phrases("fortrød | jeg fortrød | fortryder | har fortrudt | ombestemte mig"),
    "soft_correction": phrases("nej vent | hov | øh"),
    "roughly_before": phrases(
        "sådan cirka | sådan ca | et sted omkring | omkring side | i nærheten af | deromkring"
    ),
    "other_before": phrases("nu er jeg på | er nu på | er færdig med")
    + phrases("""
        da jeg var | siden jeg var | er jeg | nu er jeg | var jeg | bliver jeg | blev jeg |
        fylder jeg | fyldte jeg
        """)
    + phrases(
        "til kl | kl | klokken | har selv | jeg har selv | har jo | har kun | vi ses den | ses den | mødes den | rejser den"
    )
    + each_of("vandt | tabte | spillede", "med |")
    + each_of("på", "aida | hør | stof | lærred")
    + phrases("gik | løb | cyklede | værelse | stue | bus | linje | født den | afsnit"),
    "other_after": phrases("kilometer | skridt | kroner | kr | kr. | minutters | ct"),
    "sum_before": phrases(
        "halvdelen af | det halve af | det dobbelte af | dobbelt | en tredjedel af"
    ),
    "times": phrases("gange | x"),
    "plus": phrases("plus"),
    "minus": phrases("minus"),
    "divided_by": phrases("delt med | divideret med"),
    "part_of": phrases("af | i | på"),
    "whole_chart": each_of(
        "af | i | på", "mønstret | diagrammet | kortet | skemaet | hele mønstret | gitteret"
    ),
    "concluding": phrases("altså | så"),
    "last": phrases("allersidste | aller sidste"),
}
