"""Norwegian phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = """
tatt | opptatt | ledig | valgt | sagt | laget | brodert | ferdig | fri | borte | igjen | nevnt | tilgjengelig | vekk
"""
_ALREADY = "allerede | fortsatt | fremdeles | ennå | enda | kanskje allerede"
_SAID = "sa | sier | valgte | velger | tok | tar | stemte på | skrev | vil ha | synes"
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "over | over meg | ovenfor | rett over | før meg | her oppe | ovenfor meg"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("boka | boken | bladet | kokebok | kokeboka | romanen | avisen"),
    "turning": phrases("men"),
    "voting": phrases("stemmer | min stemme | stemmen min | velger"),
    "torn": phrases("vakler | tvil | velge"),
    "own_piece": phrases("på min | på mitt | av min | av mitt | i min | i mitt"),
    "again": phrases("igjen"),
    "named_before": phrases("enig i | enig med"),
    "answered": phrases("hvis ja | i så fall | hvis så | hvis ikke | ellers"),
    "today": phrases("i dag | idag"),
    "everyday": phrases("stemmen | min | går | stemme | stemmer")
    + phrases(
        "mamma | pappa | skrev | satt | oppe | kl | ferdig | herlig | jeg | har | mens | også | bare | dere | deg | meg | ganske | kjempefin | nydelig | alderen | halvparten | opptatt | tatt | ledig | ganger | dama | kroner | samme | som | min | sett | skriv | bytt | endrer | heller | enn | beklager | ombestemte | gikk | vant | broderer | alt | mitt"
    ),
    "neutral_before": phrases("# mot | # til | # med"),
    "choice_before": each_of("lander | landet | havner | ender | endte", "på", "side | nummer |")
    + phrases("stemmen min går til | stemmen går til | min stemme går til")
    + phrases("det får bli | får bli | men jeg | men jeg vil | selv")
    + each_of(
        "skriv | sett | noter | tell",
        "meg | oss | stemmen min | navnet mitt",
        "opp på | på | opp til | for | ned for |",
    )
    + each_of(
        "valget mitt | mitt valg | valget | stemmen min | min stemme | tipset mitt | favoritten",
        "blir | er | faller på | går til | ville vært | må bli",
    )
    + each_of(
        "jeg vil | jeg ville | vi vil | vil | kunne",
        "så | veldig | virkelig |",
        "gjerne | helst |",
        "se | ha | ta | velge | hatt | sett",
    )
    + each_of("jeg er | er | jeg", "svak for | forelska i | forelsket i | hekta på | falt for")
    + each_of("har | jeg har", "sansen for | en svakhet for")
    + each_of("jeg satser | satser | satser alt | jeg satser alt | setter alt", "på")
    + each_of(
        "kan du | kan dere | kan vi | skal vi | kunne du", "lage | ta | sy | brodere | vise |"
    )
    + each_of(
        "førstevalg | andrevalg | tredjevalg | første valg | andre valg | tredje valg | reserve | som reserve",
        ": | er |",
    )
    + phrases("helst | heller | tredje | endrer til | ønskeside"),
    "choice_after": phrases("vær så snill | ver så snill | vær snill | er du snill")
    + each_of(
        "hadde vært | ville vært | ville være",
        "gøy | fint | kult | koselig | spennende | topp | supert",
    )
    + phrases("tusen takk | hvis det går"),
    "first_choice": phrases("helst | førstevalg"),
    "second_choice": phrases("reserve | andrevalg | som reserve"),
    "second": phrases("tredje | tredjevalg | reserve | og ellers | andrevalg"),
    "neutral_after": phrases("ikke # | ikke side | enn # | til # | med # | ut med #"),
    "not_before": each_of(
        "alt annet | hva som helst annet | alle andre | heller | ikke noe annet", "enn", "side |"
    )
    + each_of("og ikke | men ikke | i stedet for | istedenfor | enn | snarere enn", "side | den |"),
    "reported_after": phrases("er det noen | har noen | er det allerede | har allerede")
    + phrases("tatt | opptatt | ledig")
    + each_of("er | var | ble", _ALREADY + " |", _GONE)
    + each_of(_ALREADY, _GONE),
    "asked_later": each_of("er den | er det | eller er den | er", _ALREADY + " |", _GONE),
    "reported_before": phrases("tenkte først | tenkte først på | ville først ha | først tenkte jeg")
    + phrases("de sa til meg | noen sa til meg | ville hatt | ble anbefalt")
    + each_of(
        "dama | damen | personen | den | hun | noen | de", "som", "sa | sier | har sagt | valgte"
    )
    + each_of("enig | jeg er enig", "i | med", "den | side |"),
    "pointing": phrases("enig med * | enig med | samd med *")
    + each_of("det samme | samme | samme side | samme nummer", "som", _OTHERS, _ABOVE + " |")
    + each_of("som | slik | det | hva | den som", "* | min * | dama * | * *", _SAID)
    + phrases(
        "samme som over | alderen min | min alder | bursdagen min | fødselsdagen min | fødselsåret mitt | bryllupsdagen vår"
    ),
    "withdrawn": each_of(
        "stryk | slett | fjern | ignorer | glem | trekk | tell ikke | trekker | jeg trekker",
        "stemmen min | min stemme | valget mitt | kommentaren min | nummeret mitt",
    ),
    "abstaining": phrases(
        "velg du | du velger | overrask oss | overrask meg | samme for meg | det samme for meg | kan ikke velge | "
        "klarer ikke å velge | klarer ikke å bestemme"
    ),
    "kinds": each_of(
        "en i | i | noe i | på",
        "tjueårene | tretti årene | trettitallet | førtitallet | tjuetallet | femtitallet",
    ),
    "replacing": phrases("bytt | bytt ut | bytte | endre | endrer | bytter | skift | erstatt"),
    "replaced_by": phrases("til | med | ut med | mot | for"),
    "correction": phrases("ombestemte meg | har ombestemt meg | angrer | angret | angra"),
    "roughly_before": phrases(
        "sånn cirka | sånn ca | rundt omkring | et sted rundt | i nærheten av | rundt side"
    ),
    "other_before": phrases("nå er jeg på | er nå på | er ferdig med")
    + phrases("""
        da jeg var | siden jeg var | er jeg | nå er jeg | no er eg | var jeg | blir jeg |
        ble jeg | fyller jeg | fylte jeg
        """)
    + phrases(
        "til kl | kl | klokka | har selv | jeg har selv | har jo | har bare | vi ses den | ses den | treffes den | reiser den"
    )
    + each_of("vant | tapte | spilte", "med |")
    + each_of("på", "aida | lin | stoff | lerret")
    + phrases("gikk | løp | syklet | rom | buss | trikk | linje | født den | episode"),
    "other_after": phrases("kilometer | skritt | kroner | kr | kr. | minutters | ct"),
    "sum_before": phrases(
        "halvparten av | det halve av | det dobbelte av | dobbelt | en tredjedel av"
    ),
    "times": phrases("ganger | gange | x"),
    "plus": phrases("pluss"),
    "minus": phrases("minus"),
    "divided_by": phrases("delt på | dividert med"),
    "part_of": phrases("av | i | på"),
    "whole_chart": each_of(
        "av | i | på", "mønsteret | diagrammet | kartet | skjemaet | hele mønsteret | rutenettet"
    ),
    "concluding": phrases("altså | så"),
    "last": phrases("aller siste | allersiste"),
}
