"""Swedish phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = """
tagen | upptagen | tagna | ledig | kvar | vald | sagd | gjord | broderad | klar | borta | bokad |
använd | fri | tillgänglig | nämnd
"""
_ALREADY = "redan | fortfarande | ännu | kanske redan | nu"
_SAID = "sa | säger | sade | valde | väljer | tog | tar | röstade på | skrev | vill ha | tycker"
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "ovan | ovanför | ovanför mig | här ovanför | över mig | innan | före mig | här uppe"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("boken | tidningen | romanen | kokboken | kokbok | bok | tidning"),
    "turning": phrases("men"),
    "voting": phrases("röstar | min röst | väljer"),
    "torn": phrases("velar | tvekar | väljer"),
    "own_piece": phrases("på min | på mitt | av min | av mitt | i min | i mitt"),
    "again": phrases("igen"),
    "named_before": phrases("håller med om | instämmer med | håller med"),
    "answered": phrases("om så | i så fall | om ja | annars | om inte"),
    "today": phrases("idag | i dag"),
    "everyday": phrases(
        "mamma | pappa | skrev | satt | uppe | kl | färdig | härlig | jag | har | också | bara | mig | dig | jättefin | vilken | ålder | hälften | upptagen | tagen | ledig | tio | två | gånger | samma | kronor | sätt | skriv | byt | ändrar | hellre | än | förlåt | ångrade | gick | vann | broderar"
    ),
    "neutral_before": phrases("# mot | # till | # med"),
    "choice_before": each_of("landar | landade | slutar | hamnar", "på", "sida | nummer |")
    + phrases("det får bli | får bli | men det får bli | men jag | men jag vill | jag då | själv")
    + each_of(
        "skriv | sätt | anteckna | räkna | boka | ställ",
        "upp | in |",
        "mig | oss | min röst | mitt namn",
        "på | för | in på | som |",
    )
    + each_of(
        "mitt val | valet | min röst | rösten | mitt tips | favoriten",
        "blir | är | faller på | går till | hamnar på | vore",
    )
    + each_of(
        "jag skulle | vi skulle | skulle | jag vill | vill",
        "så | jätte | väldigt | verkligen |",
        "gärna | helst |",
        "vilja se | vilja ha | se | ha | ta | välja",
    )
    + each_of(
        "jag är | är | jag", "svag för | förtjust i | kär i | inne på | faller för | fallit för"
    )
    + each_of(
        "satsar | satsar allt | jag satsar | jag satsar allt | lägger allt | sätter allt | chansar",
        "på",
    )
    + each_of(
        "kan du | kan ni | kan vi | ska vi | skulle du kunna",
        "göra | ta | köra | brodera | visa | sy |",
    )
    + each_of(
        "förstahandsval | andrahandsval | tredjehandsval | första val | andra val | tredje val | reserv | "
        "som reserv | i första hand | i andra hand | i tredje hand",
        ": | är |",
    )
    + phrases(
        "helst | hellre | i första hand | i andra hand | tredje | ändrar till | önskesida | önskesidan"
    ),
    "choice_after": phrases("an")
    + each_of(
        "vore | skulle vara | hade varit",
        "kul | roligt | fint | toppen | härligt | mysigt | spännande",
    )
    + phrases("tack snälla | om det går | om jag får välja"),
    "first_choice": phrases("helst | i första hand | förstahandsval"),
    "second_choice": phrases("reserv | i andra hand | andrahandsval"),
    "second": phrases("tredje | tredjehandsval | i tredje hand | reserv | och annars"),
    "neutral_after": phrases("inte # | inte sidan | än # | mot # | till # | med #"),
    "not_before": each_of(
        "och inte | men inte | istället för | i stället för | än | snarare än", "sidan | den |"
    ),
    "reported_after": phrases("har någon | har nån | någon redan | har redan | har ngn")
    + phrases("tagen | upptagen | ledig | bokad")
    + each_of("är | var | blev", _ALREADY + " |", _GONE)
    + each_of(_ALREADY, _GONE),
    "asked_later": each_of("är den | är det | eller är den | är", _ALREADY + " |", _GONE),
    "reported_before": phrases("tänkte först | tänkte först på | ville först ha")
    + each_of(
        "hon | han | de | mannen | dottern | sonen | mamma | pappa",
        "vill ha | vill se | vill | säger | väljer | röstar på | gillar",
    )
    + phrases("de sa till mig | någon sa till mig | ville ha | ville ta | blev rekommenderad")
    + each_of(
        "damen | tjejen | personen | den | hon | någon | de", "som", "sa | säger | sade | valde"
    )
    + each_of("håller med | instämmer | överens", "om | i | med", "den | sidan |"),
    "pointing": each_of(
        "samma | samma sida | samma nummer | samma som", "som", _OTHERS, _ABOVE + " |"
    )
    + each_of("som | det | vad | den som", "* | min * | damen * | * *", _SAID)
    + phrases(
        "min ålder | min födelsedag | min mans ålder | mitt födelseår | vår bröllopsdag | så gammal jag är"
    ),
    "withdrawn": each_of(
        "stryk | ta bort | räkna inte | ignorera | radera | drar tillbaka | tar tillbaka | återkallar",
        "min röst | mitt val | min kommentar | mitt nummer",
    ),
    "abstaining": phrases(
        "välj du | du väljer | överraska oss | överraska mig | spelar ingen roll | kan inte välja"
    ),
    "kinds": each_of(
        "någon i | i | något i | på",
        "tjugotalet | trettiotalet | fyrtiotalet | femtiotalet | sextiotalet",
    ),
    "replacing": phrases("byt | byta | ändra | ändrar | byter | ersätt | växla | bytt"),
    "replaced_by": phrases("mot | till | med | mot sida | för"),
    "correction": phrases("ångrade mig | ångrat mig | ändrade mig"),
    "roughly_before": phrases(
        "kring | någonstans kring | någonstans runt | i närheten | sådär | omkring sida | runt sida"
    ),
    "other_before": phrases("nu är jag på | är nu på | är klar med")
    + phrases("""
        när jag var | sen jag var | sedan jag var | är jag | nu är jag | var jag | blir jag |
        blev jag | fyller jag | fyllde jag
        """)
    + phrases(
        "till kl | kl | klockan | har själv | jag har själv | har ju | har bara | vi ses den | ses den | träffas den | åker den"
    )
    + each_of("vann | förlorade | spelade | ledde", "med |")
    + each_of("på", "aida | linne | väv | tyg")
    + phrases("gick | sprang | cyklade | rum | buss | sal | född den | avsnitt"),
    "other_after": phrases("kilometer | steg | kronor | kronor per | minuters | timmars | ct"),
    "sum_before": phrases(
        "hälften av | halva | dubbla | dubbelt | en tredjedel av | en fjärdedel av"
    ),
    "times": phrases("gånger | x"),
    "plus": phrases("plus"),
    "minus": phrases("minus"),
    "divided_by": phrases("delat med | delat på"),
    "part_of": phrases("av | i | på"),
    "whole_chart": each_of(
        "av | i | på",
        "mönstret | rutnätet | kartan | diagrammet | tavlan | schemat | hela mönstret",
    ),
    "concluding": phrases("alltså | så"),
    "last": phrases("allra sista | absolut sista"),
}
