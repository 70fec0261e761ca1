"""Danish, read when a comment is plainly written in it."""

from __future__ import annotations

from service.ballots.language import Language, Phrase, phrases
from service.ballots.languages import da_composed, da_numbers
from service.ballots.languages.spelling import extended

_TYPED = str.maketrans({"ø": "oe", "å": "aa"})


def _danish(block: str) -> tuple[Phrase, ...]:
    """The phrases of a block, also with "oe" and "aa" for the letters of its own."""
    return phrases(block + "\n" + block.translate(_TYPED))


_PLAIN = Language(
    code="da",
    everyday=_danish(
        """
        jeg | du | vi | i | han | hun | det | den | og | at | er | som | på | for | med | til |
        fra | ikke | så | af | mit | min | mine | din | dit | dig | mig | os | jer | har | havde |
        kan | skal | vil | ville | må | bliver | var | men | eller | om | også | bare | kun |
        når | hvor | hvad | hvorfor | hvordan | nu | her | der | tak | mange | hej | hejsa |
        hilsen | hilsner | knus | kram | dejlig | dejligt | flot | smuk | smukt | skønt |
        hyggeligt | alle | altid | side | siden | sider | nummer | stemmer | stemme | stem |
        vælger | vælg | tager | starte | begynde | gerne | måske | meget | godt | igen | noget |
        nogen | ingen | lykketal | år | sidste | første | midten | hjørne | kære | spændende |
        glæder | allerede | undtagen | tæl | gætter | ønsker | synes | en | et | venligst | nej |
        ja | denne | gang | dag
        """
    ),
    numbers=da_numbers.numbers(),
    ordinals=da_numbers.ordinals(),
    untelling=phrases("to | fire | en | et | ti | ni | tre | firs | tres | sex"),
    page=_danish(
        """
        side | siden | sidetal | sidenummer | side nummer | side nr | s | s. | sd | blad |
        sidenr
        """
    ),
    number=phrases("nummer | nr | nr. | num | nummeret | tallet | no"),
    dotted=_danish(
        """
        side | januar | februar | marts | april | maj | juni | juli | august | september |
        oktober | november | december | række | kolonne | plads | afsnit | fødselsdag | sal
        """
    ),
    fillers=_danish(
        """
        den | det | siden | nok | gerne | bare | selvfølgelig | naturligvis | måske |
        helt sikkert | så | nu | i dag | igen | altid | denne gang | venligst | tak | faktisk |
        øh | hm | hmm | lille | gode | gamle | min | mit | er | bliver | da | jo | lige | vist
        """
    ),
    choice_before=_danish(
        """
        fortsæt med | videre med | stemmen går til | stemmen | kan i lave | kan du lave | lave |
        kan godt lide | kan lide | lav | stemmer * på | stemmer * * på | stemmer på | stemme på |
        stemmer for | stem på | stemme går til | min stemme | stemme | stemmer | stemte på | stem |
        min stemme er | vælger | vælg | valgte | vil vælge | vil have | vil gerne have | vil gerne se |
        ville vælge | vil se | vil | tager | tag | jeg tager | tage | går efter | går med | kør med |
        satser på | gætter på | gætter | gæt | mit gæt er | starte med | start med | start på |
        starte på | begynd med | begynde med | begynde på | starter med | begynd * med | start * med |
        må vi starte med | må vi få | må jeg få | må jeg bede om | må vi | må jeg | kan vi starte med |
        kan vi tage | kan vi få | kan vi | kan du tage | kan jeg få | hvad med | hvad siger du til |
        hvad siger i til | hvorfor ikke | for mig | for mit vedkommende | jeg siger | siger | vil sige |
        jeg tror på | tror på | tror | håber på | håber | holder på | krydser fingre for | hepper på |
        favorit | favorit er | min favorit | foretrækker | helst | hellere | ønsker | ønsker mig |
        giv mig | giv os | det bliver | bliver det | bliver | lad det blive | lad os tage | lad os |
        skifter til | ændrer til | mente | jeg mente | mener | bliver ved | holder fast i | hælder til |
        for | venligst | tak | gerne | mit valg | mit valg er | valg | valget falder på | det er |
        sæt mig på | skriv mig på | team | hjertet siger | mavefornemmelsen siger | næste side |
        skal være | prøv | så bliver det
        """
    ),
    choice_after=_danish(
        """
        næste gang | som den næste | tak | mange tak | tak tak | venligst | gerne | for mig |
        for mit vedkommende | bliver det | er min | er mit valg | er min stemme | får min stemme |
        ville være | ville være fint | ville være dejligt | tager jeg | vælger jeg | siger jeg |
        stemmer jeg på | først | til at starte med | til at begynde med | som start | selvfølgelig |
        naturligvis | helt sikkert | pls | plz | please | det bliver | det er | kalder på mig |
        føles rigtigt | lyder godt | ser godt ud | vil jeg have | vil jeg se | er bedst | er min favorit
        """
    ),
    other_before=_danish(
        """
        er nu | fylder | fyldte | bliver snart | er snart | jeg er | hun er | han er | vi er |
        siden jeg var | i over | i næsten | klokken | kl | kl. | ved | inden | efter | mod | del |
        afsnit | kapitel | sæson | video | niveau | plads | række | rang | dag | uge | måned |
        år | time | minut | størrelse | str | str. | nål | garn | farve | aida |
        symbol | tråd | kolonne | sting | bus | tog | spor | færge | værelse | etage | sal | vej |
        gade | vers | salme | version | model | kanal | temperatur | minus | grader | vindstyrke |
        i alt | tilsammen | mere end | mindre end | mindst | højst | de sidste | seneste | hver |
        alle de | af de | af | har kun | har nu | kostede | købte | syede | broderede | drak |
        spiste | ventede | januar | februar | marts | april | maj | juni | juli | august |
        september | oktober | november | december | mandag | tirsdag | onsdag | torsdag | fredag |
        lørdag | søndag | top | covid | karakter | alder | født | d. | den d. | omkring klokken
        """
    ),
    other_after=_danish(
        """
        år | årig | årige | måned | måneder | uge | uger | dag | dage | døgn | time | timer |
        minut | minutter | min | sekunder | gang | gange | x | procent | kroner | kr | øre |
        euro | grader | tråde | tråd | trådet | sting | korssting | kryds | farver | farve |
        garn | fed | dukker | nåle | rammer | count | ct | cm | mm | m | meter | km | kg | kilo |
        gram | liter | sider | projekter | broderier | broderi | mønstre | rækker | kolonner |
        børn | børnebørn | kat | katte | hund | hunde | heste | høns | får | køer | unger |
        personer | mennesker | kvinder | mænd | venner | seere | følgere | abonnenter |
        visninger | likes | kommentarer | stemmer | point | stjerner | kop | kopper | kaffe | te |
        stykker | kager | boller | æg | bøger | afsnit | dele | videoer | film | sange | forsøg |
        chancer | ting | ønsker | spørgsmål | mails | ord | kasser | par | sokker | vanter |
        vintre | somre | nætter | aftener | om morgenen | om aftenen | om dagen | om ugen |
        af os | af jer | af dem | tusind | hundrede | millioner | dusin | hænder | fingre | øjne |
        lamper | perler | knapper | både | øer | januar | februar | marts | april | maj | juni |
        juli | august | september | oktober | november | december | nye | andre | store | små |
        hele | forskellige | sønner | døtre
        """
    ),
    weak_before=_danish(
        """
        i | på | med | har | havde | har jeg | kun | næsten | allerede | over | under | ud af |
        fra | mine | sine | vores | plus | er på | er på side | er i gang med | endnu | hele |
        godt | knap | sidder med
        """
    ),
    weak_after=_danish(
        """
        tilbage | færdig | færdige | til | mere | mindre | over | stemme | point | har jeg |
        havde jeg
        """
    ),
    neutral_before=_danish(
        """
        hej | hejsa | hallo | god | godmorgen | morgen | aften | tak | så | meget | mange | knus |
        kram | hilsen | hilsner | kærlig | venlig | ja | nej | jo | jeg | vi | men | og | eller |
        da | nu | i dag | uh | wow | åh | oh | ok | okay | sjovt | flot | godt | dejligt | smukt |
        skønt | spændende | side | siden | nummer | det | den | er | bliver | som | sædvanlig |
        altid | igen | her | alle | sammen | derfor | selvfølgelig | naturligvis | sikkert |
        måske | øh | hm | hmm | for | i | på | x | xx | lol | haha | en | et | siger | sagde |
        vent | svært | let | venligst | gerne | mig | dig | jer | held | hvis ikke | vælge |
        ikke vælge
        """
    ),
    neutral_after=_danish(
        """
        for | fordi | derfor | og | men | eller | da | så | jeg | vi | du | i | det | den | er |
        var | bliver | som | at | om | hvis | hvis ikke | ja | nej | tak | knus | kram | hilsen |
        hilsner | kærlig | hej | meget | mange | godt | flot | smukt | dejligt | i dag | nu |
        igen | altid | denne | min | mit | mine | på | med | fra | til | ser | føles | lyder |
        ville | skulle | skal | vil | kan | har | x | xx | lol | haha | håber | held | også |
        bare | her | der | i stedet | først | måske | faktisk | ikke den | ikke side | helt |
        sagt | allerede | taget | optaget | næste
        """
    ),
    lucky_before=_danish(
        """
        lykketal er | lykketal | lykketallet er | lykkenummer er | lykkenummer | yndlingstal er |
        yndlingstal | yndlingsnummer er | yndlingsnummer | husnummer er | husnummer |
        favorittal er
        """
    ),
    not_before=_danish(
        """
        ikke | aldrig | alt undtagen | alle undtagen | alt andet end | undtagen | bortset fra |
        i stedet for | hellere end | helst ikke | absolut ikke | ikke på | ikke med | ingen |
        undgå | spring over | ikke siden
        """
    ),
    not_after=_danish(
        """
        helst ikke | absolut ikke | venligst ikke | er udelukket | nej tak | vil jeg ikke have
        """
    ),
    correction=_danish(
        """
        nej vent | nej forresten | nej nej | ups | hov | vent | jeg mente | mente | rettelse |
        ombestemt | ombestemmer | skiftet mening | skrev forkert | forkert | slåfejl | undskyld |
        for sjov | sagt for sjov | edit | ændring | fortryder | skifter til | ændrer til |
        eller nej | nej jeg tager | nej hellere
        """
    ),
    soft_correction=_danish("nej | forresten | hellere | i stedet | faktisk | rettere sagt"),
    own_voice=phrases("jeg | men | vi"),
    if_words=phrases("hvis"),
    being=phrases("er"),
    either=_danish("eller | eller måske | enten | alternativt"),
    also=_danish("og | & | samt | plus | og også"),
    second=_danish(
        """
        ellers | subsidiært | andet valg | andetvalg | hvis ikke | reserve | som reserve |
        derefter | dernæst | hvis den er taget
        """
    ),
    first_choice=_danish("første valg | førstevalg | førsteprioritet | første prioritet"),
    second_choice=_danish("andet valg | andetvalg | anden prioritet | reserve | som reserve"),
    condition=_danish(
        """
        hvis den er ledig | hvis den stadig | hvis ingen | hvis nogen | hvis den er fri |
        hvis alle | forudsat
        """
    ),
    reported_before=_danish(
        """
        alle | andre | mange | de fleste | folk | nogen | ingen | sidste gang | ville sige |
        tænkte på | var lige ved at | enig med | de andre
        """
    ),
    family_before=_danish(
        """
        mand | manden | kone | kæreste | søn | datter | barn | børnene | mor | far | søster |
        bror | mormor | farmor | morfar | farfar | ven | veninde | nabo | kat | katten | hund |
        hunden | kollega | chef | svigermor | moster | faster | barnebarn
        """
    ),
    reported_after=_danish(
        """
        blev | blev flot | blev så flot | var flot | vinder | fører | kommer til at vinde | er taget |
        er optaget | er allerede | siger min | ikke
        """
    ),
    asking=_danish(
        """
        er | har | var | hvorfor | hvem | hvilken | hvilke | hvornår | hvordan | hvad | findes |
        skal | blev | kommer | havde
        """
    ),
    suggesting=_danish(
        """
        må vi | må jeg | kan vi | kan jeg | kan du | hvad med | hvad siger | hvorfor ikke |
        venligst | måske | skal vi | vil du
        """
    ),
    roughly_before=_danish(
        "omkring | cirka | ca | ca. | nær | i nærheten af | cirka ved | sådan noget som"
    ),
    roughly_after=_danish("cirka | eller deromkring | eller sådan | agtig"),
    between=_danish("mellem | et sted mellem | fra"),
    through=_danish("til"),
    saying=_danish("siger | sagde | skriver | skrev | spørger | råber"),
    relative_before=_danish("ved siden af | over for | tættest på"),
    above=_danish("ovenover | oven over | over"),
    below=_danish("nedenunder | neden under | under"),
    later=_danish("til højre for | højre for | siden efter | efter side"),
    earlier=_danish("til venstre for | venstre for | siden før"),
    withdrawn=_danish(
        """
        tæl ikke min | tæl ikke med min | fjern min stemme | slet min | trækker min stemme |
        tager min stemme | ignorer min | glem min | se bort fra min | min stemme tæller ikke |
        stryg min
        """
    ),
    abstaining=_danish(
        """
        ingen stemme | stemmer ikke | undlader | kan ikke bestemme | ved ikke endnu |
        har ikke bestemt
        """
    ),
    pointing=_danish(
        """
        samme | samme som | det samme | som ovenfor | også mig | ditto | min alder |
        min fødselsdag | mit husnummer | +1 | enig med
        """
    ),
    agreeing=_danish("ja | enig | samme | præcis | også mig | ditto | +1"),
    kinds=_danish(
        """
        lige side | lige tal | ulige side | ulige tal | primtal | øverste række | nederste række |
        venstre side | højre side | kanten | øverste halvdel | nederste halvdel
        """
    ),
    first=_danish("første | allerførste | først"),
    last=_danish("sidste | allersidste"),
    corner=_danish("hjørne | hjørnet | hjørneside | hjørnesiden"),
    top=_danish("øverst | øverste | oppe | foroven | helt øverst"),
    bottom=_danish("nederst | nederste | nede | forneden | helt nederst"),
    left=_danish("venstre | til venstre | yderst til venstre"),
    right=_danish("højre | til højre | yderst til højre"),
    middle=_danish("midten | midterste | i midten | midt i | centrum"),
    row=_danish("rækken | række"),
    column=_danish("kolonnen | kolonne"),
    told_from_last=_danish("næstsidste | næst sidste | forrige sidste"),
)

LANGUAGE = extended(_PLAIN, da_composed.GROUPS)
