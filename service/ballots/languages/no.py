"""Norwegian (Bokmål, with some Nynorsk), read when a comment is plainly written in it."""

from __future__ import annotations

from service.ballots.language import Language, Phrase, phrases
from service.ballots.languages import no_composed, no_numbers
from service.ballots.languages.spelling import extended

_TYPED = str.maketrans({"ø": "oe", "å": "aa"})


def _norwegian(block: str) -> tuple[Phrase, ...]:
    """The phrases of a block, also with "oe" and "aa" for the letters of its own."""
    return phrases(block + "\n" + block.translate(_TYPED))


_PLAIN = Language(
    code="no",
    everyday=_norwegian(
        """
        å | ikkje | eg | ein | fikk | vær | gøy | rart | hyggelig | heilt | gå | broderi |
        brodert | takker | tusen | kjempefint | veldig | lykketallet | jeg | du | vi | i | han |
        hun | det | den | og | at | er | som | på | for | med | til | fra | ikke | så | av |
        mitt | min | mine | din | dit | deg | meg | oss | dere | har | hadde | kan | skal | vil |
        ville | må | blir | var | men | eller | om | også | bare | når | hvor | hva | hvorfor |
        hvordan | nå | her | der | takk | mange | hei | heisann | hilsen | hilsener | klem |
        klemmer | deilig | nydelig | flott | vakker | vakkert | skjønt | koselig | alle | altid |
        side | siden | sider | nummer | stemmer | stemme | stem | velger | velg | tar | starte |
        begynne | gjerne | kanskje | mye | bra | igjen | noe | noen | ingen | lykketall | år |
        siste | første | midten | hjørne | kjære | spennende | gleder | allerede | unntatt |
        tell | gjetter | ønsker | synes | en | et | vennligst | nei | ja | denne | gang | dag
        """
    ),
    numbers=no_numbers.numbers(),
    ordinals=no_numbers.ordinals(),
    untelling=phrases("to | fire | en | et | ti | ni | tre | sex"),
    page=_norwegian(
        """
        side | siden | sidetall | sidenummer | side nummer | side nr | s | s. | sd | blad |
        sidenr
        """
    ),
    number=phrases("nummer | nr | nr. | num | nummeret | tallet | no"),
    dotted=_norwegian(
        """
        side | januar | februar | mars | april | mai | juni | juli | august | september |
        oktober | november | desember | rad | kolonne | plass | episode | bursdag | etasje
        """
    ),
    fillers=_norwegian(
        """
        den | det | siden | nok | gjerne | bare | selvfølgelig | naturligvis | kanskje |
        helt sikkert | så | nå | i dag | igjen | altid | denne gang | vennligst | takk | faktisk |
        øh | hm | hmm | lille | gode | gamle | min | mitt | er | blir | da | jo | like | visst
        """
    ),
    choice_before=_norwegian(
        """
        fortsett med | videre med | jeg liker | liker | kan dere ta | kan dere lage | lage | lag |
        stemmer * på | stemmer * * på | stemmen min | stemmen min går til | jeg går for | går for |
        vi går for | stemmen går til | jeg ønsker meg | kan jeg be om | kan vi begynne med |
        vil gjerne ha | vil gjerne se | kunne tenke meg | har lyst på | favoritten min er |
        valget mitt er | forslag | foreslår | stemmer på | stemme på | stemmer for | stem på |
        stemme går til | min stemme | stemme | stemmer | stemte på | stem | min stemme er | velger |
        velg | valgte | vil velge | vil ha | ville velge | vil se | vil | tar | ta | jeg tar | går etter |
        går med | kjør med | satser på | gjetter på | gjetter | gjett | mitt gjett er | starte med |
        start med | start på | starte på | begynn med | begynne med | begynne på | starter med |
        begynn * med | start * med | må vi starte med | må vi få | må jeg få | må jeg be om | må vi |
        må jeg | kan vi starte med | kan vi ta | kan vi få | kan vi | kan du ta | kan jeg få | hva med |
        hva sier du til | hva sier i til | hvorfor ikke | for meg | for mitt vedkommende | jeg sier |
        sier | vil si | jeg tror på | tror på | tror | håper på | håper | holder på | krysser fingre for |
        heier på | favoritt | favoritt er | min favoritt | foretrekker | helst | heller | ønsker |
        ønsker meg | gi meg | gi oss | det blir | blir det | blir | la det bli | la oss ta | la oss |
        bytter til | endrer til | mente | jeg mente | mener | holder meg til | holder fast i | lener til |
        for | vennligst | takk | gjerne | mitt valg | mitt valg er | valg | valget faller på | det er |
        sett meg på | skriv meg på | team | hjertet sier | magefølelsen sier | neste side | skal være |
        prøv | så blir det
        """
    ),
    choice_after=_norwegian(
        """
        neste gang | som neste | er stemmen min | får stemmen min | blir bra | hadde vært fint |
        hadde vært gøy | er favoritten min | er valget mitt | takk | mange takk | takk takk | vennligst |
        gjerne | for meg | for mitt vedkommende | blir det | er min | er mitt valg | er min stemme |
        får min stemme | ville være | ville være fint | ville være nydelig | tar jeg | velger jeg |
        sier jeg | stemmer jeg på | først | til å starte med | til å begynne med | som start |
        selvfølgelig | naturligvis | helt sikkert | pls | plz | please | det blir | det er |
        kaller på meg | føles riktig | høres bra | ser bra ut | vil jeg ha | vil jeg se | er best |
        er min favoritt
        """
    ),
    other_before=_norwegian(
        """
        er nå | fyller | fylte | blir snart | er snart | jeg er | hun er | han er | vi er |
        siden jeg var | i over | i nesten | klokka | kl | kl. | ved | innen | etter | mot | del |
        episode | kapittel | sesong | video | nivå | plass | rad | rang | dag | uke | måned | år |
        time | minutt | størrelse | str | str. | nål | garn | farge | aida |
        symbol | tråd | kolonne | sting | buss | tog | spor | ferge | rom | etage | etasje | vei |
        gate | vers | salme | versjon | modell | kanal | temperatur | minus | grader |
        vindstyrke | i alt | til sammen | mer enn | mindre enn | minst | høyst | de siste |
        siste | hver | alle de | av de | av | har bare | har nå | kostet | kjøpte | sydde |
        broderte | drakk | spiste | ventet | januar | februar | mars | april | mai | juni | juli |
        august | september | oktober | november | desember | mandag | tirsdag | onsdag | torsdag |
        fredag | lørdag | søndag | topp | covid | karakter | alder | født | d. | den d. |
        rundt klokka
        """
    ),
    other_after=_norwegian(
        """
        åring | åringer | år | årig | årige | måned | måneder | uke | uker | dag | dager | døgn |
        time | timer | minutt | minutter | min | sekunder | gang | ganger | x | prosent | kroner |
        kr | øre | euro | grader | tråder | tråd | trådet | sting | korssting | kryss | farger |
        farge | garn | nøster | dukker | nåler | rammer | count | ct | cm | mm | m | meter | km |
        kg | kilo | gram | liter | sider | projekter | broderier | broderi | mønstre | rader |
        kolonner | barn | barnebarn | katt | katter | hund | hunder | hester | høner | får | kyr |
        unger | personer | mennesker | kvinner | menn | venner | seere | følgere | abonnenter |
        visninger | likes | kommentarer | stemmer | poeng | stjerner | kopp | kopper | kaffe |
        te | stykker | kaker | boller | egg | bøker | episode | deler | videoer | film | sanger |
        forsøk | sjanser | ting | ønsker | spørsmål | meldinger | ord | kasser | par | sokker |
        votter | vintre | somrer | netter | kvelder | om morgenen | om kvelden | om dagen |
        i uken | av oss | av dere | av dem | tusen | hundre | millioner | dusin | hender |
        fingre | øyne | lamper | perler | knapper | båter | øyer | januar | februar | mars |
        april | mai | juni | juli | august | september | oktober | november | desember | nye |
        andre | store | små | hele | forskjellige | sønner | døtre
        """
    ),
    weak_before=_norwegian(
        """
        i | på | med | har | hadde | har jeg | bare | nesten | allerede | over | under | ut av |
        fra | mine | sine | våre | plus | er på | er på side | er i gang med | ennå | hele | bra |
        knapt | sitter med
        """
    ),
    weak_after=_norwegian(
        """
        igjen | ferdig | ferdige | til | mer | mindre | over | stemme | poeng | har jeg |
        hadde jeg
        """
    ),
    neutral_before=_norwegian(
        """
        klarer ikke | klarer ikke velge | velge | takker | om ikke | hei | heisann | hallo | god |
        god morgen | morgen | kveld | takk | så | mye | mange | klem | klemmer | hilsen |
        hilsener | kjærlig | vennlig | ja | nei | jo | jeg | vi | men | og | eller | da | nå |
        i dag | uff | wow | åh | oh | ok | okay | gøy | flott | bra | nydelig | vakkert | skjønt |
        spennende | side | siden | nummer | det | den | er | blir | som | vanlig | altid | igjen |
        her | alle | sammen | derfor | selvfølgelig | naturligvis | sikkert | kanskje | øh | hm |
        hmm | for | i | på | x | xx | lol | haha | en | et | sier | sa | vent | vanskelig | lett |
        vennligst | gjerne | meg | deg | dere | lykke | hvis ikke | ikke velge
        """
    ),
    neutral_after=_norwegian(
        """
        for | fordi | derfor | og | men | eller | da | så | jeg | vi | du | i | det | den | er |
        var | blir | som | at | om | hvis | hvis ikke | ja | nei | takk | klem | klemmer |
        hilsen | hilsener | kjærlig | hei | mye | mange | bra | flott | vakkert | nydelig |
        i dag | nå | igjen | altid | denne | min | mitt | mine | på | med | fra | til | ser |
        føles | høres | ville | skulle | skal | vil | kan | har | x | xx | lol | haha | håper |
        lykke | også | bare | her | der | i stedet | først | kanskje | faktisk | ikke den |
        ikke side | helt | sagt | allerede | tatt | opptatt | neste
        """
    ),
    lucky_before=_norwegian(
        """
        lykketallet mitt er | lykketallet er | favorittallet mitt er | husnummeret mitt er |
        lykkenummeret mitt er | lykketall er | lykketall | lykkenummer er | lykkenummer |
        favorittall er | favorittall | favorittnummer er | favorittnummer | husnummer er |
        husnummer
        """
    ),
    not_before=_norwegian(
        """
        ikkje | ikke | aldri | alt unntatt | alle unntatt | hva som helst unntatt | unntatt |
        bortsett fra | i stedet for | heller enn | helst ikke | absolutt ikke | ikke på |
        ikke med | ingen | unngå | hopp over | ikke siden
        """
    ),
    not_after=_norwegian(
        """
        helst ikke | absolutt ikke | vennligst ikke | er utelukket | nei takk | vil jeg ikke ha
        """
    ),
    correction=_norwegian(
        """
        nei vent | nei forresten | nei nei | ups | oi | vent | jeg mente | mente | rettelse |
        ombestemt | ombestemmer | skiftet mening | skrev feil | feil | skrivefeil | unnskyld |
        for gøy | sagt for gøy | edit | endring | angrer | bytter til | endrer til | eller nei |
        nei jeg tar | nei heller
        """
    ),
    soft_correction=_norwegian("nei | forresten | heller | i stedet | faktisk | rettere sagt"),
    own_voice=phrases("jeg | men | vi"),
    if_words=phrases("hvis"),
    being=phrases("er"),
    either=_norwegian("eller | eller kanskje | enten | alternativt"),
    also=_norwegian("og | & | samt | plus | og også"),
    second=_norwegian(
        """
        om den er tatt | som reserve | i så fall | om ikke | ellers | subsidiært | andre valg |
        andrevalg | hvis ikke | reserve | deretter | hvis den er tatt
        """
    ),
    first_choice=_norwegian("første valg | førstevalg | førsteprioritet | første prioritet"),
    second_choice=_norwegian("andre valg | andrevalg | andre prioritet | reserve | som reserve"),
    condition=_norwegian(
        """
        om den er ledig | om den fortsatt | om ingen | dersom | hvis den er ledig |
        hvis den fortsatt | hvis ingen | hvis noen | hvis den er fri | hvis alle | forutsatt
        """
    ),
    reported_before=_norwegian(
        """
        alle | andre | mange | de fleste | folk | noen | ingen | siste gang | ville si |
        tenkte på | var like ved å | enig med | de andre
        """
    ),
    family_before=_norwegian(
        """
        mann | mannen | kone | kjæreste | sønn | datter | barn | barna | mor | far | søster |
        bror | mormor | farmor | morfar | farfar | ven | venninne | nabo | katt | katten | hund |
        hunden | kollega | sjef | svigermor | tante | fetter | barnebarn
        """
    ),
    reported_after=_norwegian(
        """
        ble | ble fin | ble så fin | var fin | vinner | leder | kommer til å vinne | er tatt |
        er opptatt | er allerede | sier min | ikke
        """
    ),
    asking=_norwegian(
        """
        er | har | var | hvorfor | hvem | hvilken | hvilke | når | hvordan | hva | finnes | skal |
        ble | kommer | hadde
        """
    ),
    suggesting=_norwegian(
        """
        må vi | må jeg | kan vi | kan jeg | kan du | hva med | hva sier | hvorfor ikke |
        vennligst | kanskje | skal vi | vil du
        """
    ),
    roughly_before=_norwegian(
        "rundt | cirka | ca | ca. | nær | i nærheten av | cirka ved | noe sånt som"
    ),
    roughly_after=_norwegian("cirka | eller deromkring | eller sånn | aktig"),
    between=_norwegian("mellom | et sted mellom | fra"),
    through=_norwegian("til"),
    saying=_norwegian("sier | sa | skriver | skrev | spør | roper"),
    relative_before=_norwegian("ved siden av | overfor | nærmest"),
    above=_norwegian("ovenfor | over"),
    below=_norwegian("nedenfor | under"),
    later=_norwegian("til høyre for | høyre for | siden etter | etter side"),
    earlier=_norwegian("til venstre for | venstre for | siden før"),
    withdrawn=_norwegian(
        """
        ikke tell | ikke regn med stemmen | ikke regn med min | stemmen min teller ikke |
        trekker stemmen | trekk stemmen | trekker tilbake | fjern stemmen | slett stemmen |
        ignorer stemmen | glem stemmen | ta bort stemmen | tell ikke min | tell ikke med min |
        fjern min stemme | slett min | trekker min stemme | tar min stemme | ignorer min |
        glem min | se bort fra min | min stemme teller ikke | stryk min
        """
    ),
    abstaining=_norwegian(
        """
        ingen stemme | stemmer ikke | avstår | kan ikke bestemme meg | vet ikke ennå |
        har ikke bestemt
        """
    ),
    pointing=_norwegian(
        """
        det samme som | alderen min | bursdagen min | husnummeret mitt | samme | samme som |
        det samme | som ovenfor | også meg | ditto | min bursdag | mitt husnummer | +1 |
        enig med
        """
    ),
    agreeing=_norwegian("ja | enig | samme | nettopp | også meg | ditto | +1"),
    kinds=_norwegian(
        """
        åttende side | åttende siden | partall | oddetall | primtall | øverste rad |
        nederste rad | venstre side | høyre side | kanten | øverste halvdel | nederste halvdel
        """
    ),
    first=_norwegian("første | aller første | først"),
    last=_norwegian("siste | aller siste"),
    corner=_norwegian("hjørne | hjørnet | hjørneside | hjørnesiden"),
    top=_norwegian("øverst | øverste | oppe | helt øverst"),
    bottom=_norwegian("nederst | nederste | nede | helt nederst"),
    left=_norwegian("venstre | til venstre | ytterst til venstre"),
    right=_norwegian("høyre | til høyre | ytterst til høyre"),
    middle=_norwegian("midten | midterste | i midten | midt i | centrum"),
    row=_norwegian("raden | rad"),
    column=_norwegian("kolonnen | kolonne"),
    told_from_last=_norwegian("nest siste | forrige siste"),
)

LANGUAGE = extended(_PLAIN, no_composed.GROUPS)
