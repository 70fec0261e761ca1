"""Czech, read when a comment is plainly written in it; much of it is Slovak too."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import cs_composed, cs_numbers
from service.ballots.languages.spelling import extended

_PLAIN = Language(
    code="cs",
    everyday=phrases(
        """
        mezi | líbí | uvidíme | zapomeňte | května | vezmu | já | ty | on | ona | my | vy | oni | mě |
        mně | mi | mnou | tě | ti | nás | nám | vás | vám | můj | moje | mého | mému | tvoje | váš |
        vaše | naše | je | jsou | jsem | jsi | jsme | byl | byla | bylo | mám | máš | má | máme | ne |
        ano | jo | a | i | nebo | ale | že | aby | jak | co | kdo | kde | kdy | proč | protože | takže |
        to | ten | ta | tu | tím | toho | se | si | už | ještě | jen | jenom | taky | také | moc | hodně |
        na | od | po | pro | při | pod | nad | z | ze | prosím | děkuju | děkuji | díky | zdravím |
        pozdrav | ahoj | čau | dobrý | den | večer | krásný | krásné | krásná | nádhera | nádherné |
        úžasné | super | strana | stranu | strany | stránka | stránku | stránky | stránkou | straně |
        číslo | hlasuju | hlasuji | hlas | hlasu | vybírám | beru | volím | možná | chci | chtěla |
        chtěl | bych | začni | začněte | začít | dnes | dneska | vždycky | zase | teď | všichni |
        všechno | poslední | první | šťastné | let | vyšívám | těším | uprostřed | roh | rohu | vpravo |
        vlevo | nahoře | dole | kromě | nepočítejte | vlastně | raději | radši | hor | vzor | práce
        """
    ),
    numbers=cs_numbers.numbers(),
    ordinals=cs_numbers.ordinals(),
    untelling=phrases("pet | sto"),
    page=phrases(
        """
        strana | stranu | strany | straně | stranou | stránka | stránku | stránky | stránce |
        stránkou | str | str. | s. | list | číslo strany | strana číslo | strana č
        """
    ),
    number=phrases("číslo | č. | č | cislo | čísle | čísla | číslem | nr | num"),
    dotted=phrases(
        """
        strana | stranu | stránka | stránku | strany | stránky | ledna | února | března | dubna |
        května | června | července | srpna | září | října | listopadu | prosince | řada |
        sloupec | narozeniny | patro | díl | místo
        """
    ),
    fillers=phrases(
        """
        to | ta | tu | ten | možná | asi | samozřejmě | určitě | rozhodně | prostě | dnes |
        dneska | tentokrát | teď | prosím | zase | vždycky | taky | jen | tak | takže | je |
        bude | byla by | moje | můj | stará | dobrá | krásná | ehm | hm | hmm | no | už | třeba |
        jednoznačně
        """
    ),
    choice_before=phrases(
        """
        líbí se mi | nejvíc se mi líbí | teď | hlasuju pro | hlasuji pro | hlasuju za | hlasuji za |
        hlasuju na | hlasuju | hlasuji | hlas pro | můj hlas | můj hlas pro | hlas | můj hlas má |
        můj hlas dostává | můj hlas jde | dávám hlas | hlasujeme pro | hlasovala pro | hlasoval pro |
        vybírám | vybírám si | vyberu | vybrala jsem | vybral jsem | volím | volíme | moje volba |
        moje volba je | volba | beru | vezmu | vezměte | chci | chceme | chtěla bych | chtěl bych |
        ráda bych | rád bych | přála bych si | přál bych si | přeju si | prosím | prosila bych |
        poprosím | sázím na | tipuju | tipuji | tip | můj tip | můj tip je | hádám | začni | začni od |
        začněte | začněte od | začít | začněme | začala bych | začal bych | co takhle | co třeba |
        co říkáš na | co říkáte na | proč ne | můžeme začít | mohla bych | mohl bych | mohli bychom |
        můžu poprosit | pro mě | za mě | ode mě | říkám | řekla bych | řekl bych | jsem pro | jdu do |
        jdu na | navrhuju | navrhuji | návrh | favorit | můj favorit je | nejradši | nejraději | radši |
        raději | držím palce | držím palce pro | doufám v | měním na | změna na | mělo být |
        myslela jsem | myslel jsem | zůstávám u | dej | dejte | dejme | další | tým | srdce říká |
        pocit říká | udělej | udělejte | pro | vlastně | spíš | spíše
        """
    ),
    choice_after=phrases(
        """
        prosím | prosim | poprosím | pls | please | by byla super | by byla pěkná |
        by bylo super | pro mě | za mě | ode mě | vybírám | beru | volím | hlasuju | hlasuji |
        říkám | tipuju | chci | nejdřív | na začátek | pro začátek | samozřejmě | určitě |
        rozhodně | je moje volba | má můj hlas | dostává můj hlas | vypadá dobře | zní dobře |
        volá mě | láká mě | je nejlepší | ku | ka
        """
    ),
    other_before=phrases(
        """
        je mi | bude mi | bylo mi | mám už | mám jen | je jí | je mu | věk | v | ve | kolem |
        asi v | od roku | rok | roku | v roce | ročník | díl | část | kapitola | série | video |
        úroveň | místo | řada | den | týden | měsíc | velikost | jehla | nit | bavlnka | barva |
        aida | kanava | symbol | sloupec | autobus | vlak | kolej | nástupiště |
        trajekt | pokoj | patro | ulice | dům | žalm | verze | model | kanál | teplota | minus |
        dohromady | celkem | víc než | více než | méně než | skoro | nejmíň | nejvíc |
        posledních | poslední | příští | každé | koupila jsem | koupil jsem | stálo |
        vyšila jsem | vypila jsem | snědla jsem | čekala jsem | zbývá | zbývá mi | chybí |
        v pondělí | top | covid | známka | narozená | před | do | za | už
        """
    ),
    other_after=phrases(
        """
        let | roky | rok | roků | letá | letý | měsíc | měsíce | měsíců | týden | týdny | týdnů |
        den | dny | dní | dnů | hodina | hodiny | hodin | hod | minuta | minuty | minut | min |
        sekund | krát | x | procent | korun | kč | euro | eur | stupňů | nit | nitě | nití |
        křížek | křížky | křížků | stehů | barva | barvy | barev | přadýnko | přadýnka | přaden |
        jehly | jehel | rámy | count | ct | cm | mm | m | metr | metry | metrů | km | kg | kilo |
        g | litr | litry | stran | stránek | projekt | projekty | projektů | výšivky | výšivek |
        vzory | vzorů | řad | dětí | děti | vnoučat | vnoučata | kočka | kočky | koček | pes |
        psi | psů | koně | slepic | slepice | ovcí | ovce | krav | lidí | osob | žen | kamarádek |
        diváků | odběratelů | zhlédnutí | lajků | komentářů | hlasů | hlasy | bodů | body |
        hvězdiček | hrnek | hrnky | hrnků | šálek | šálky | šálků | káva | kávy | káv | kafe |
        čaje | čajů | sušenek | vajec | vajíčka | knih | knihy | dílů | díly | videí | videa |
        filmů | písniček | pokusů | věcí | věci | otázek | otázky | mailů | slov | krabic | párů |
        ponožek | zim | zimy | nocí | večerů | ráno | večer | tisíc | tisíce | milion | rukou |
        prstů | očí | lamp | korálků | lodí | ostrovů | ledna | února | března | dubna | května |
        června | července | srpna | září | října | listopadu | prosince | nové | nových | jiné |
        jiných | různých | malé | velké
        """
    ),
    weak_before=phrases("""
        na | z | ze | u | při | po | mám ještě | ještě | jenom | skoro | nad | pod | moje | naše |
        plus | jsem na | sedím u | celé | vyšívám | s
        """),
    weak_after=phrases("hotovo | hotové | zbývá | víc | míň | hlas | bod | už mám"),
    neutral_before=phrases(
        """
        ahoj | čau | zdravím | dobrý | den | večer | děkuju | děkuji | díky | moc | krásné |
        krásný | krásná | nádhera | super | ano | ne | jo | no | a | ale | nebo | tak | takže |
        protože | ó | jé | wow | ach | ok | dnes | dneska | tentokrát | teď | strana | stránka |
        číslo | to | je | bude | jako | vždycky | zase | asi | možná | samozřejmě | určitě |
        prostě | x | xx | lol | haha | těžké | lehké | proto | říká | říkají | chtějí | chce |
        vybírají | všechno | holky | dámy | milé | jestli ne | nevím | hmm | vlastně | nýbrž |
        ani
        """
    ),
    neutral_after=phrases(
        """
        protože | a | ale | nebo | tak | takže | to | je | byla | bude | by | vypadá | zní | já |
        my | můj | moje | prosím | děkuju | děkuji | díky | zdravím | ahoj | dnes | dneska | teď |
        tentokrát | vždycky | zase | x | xx | lol | haha | mám | jak | taky | také | jen |
        samozřejmě | asi | možná | nejdřív | už | zabraná | obsazená | vybraná | volná | na | v |
        z | od | pro | super | krásná | držím | palce | jestli ne | ne ta | ano | nevím | těším |
        proto | má | místo | milé
        """
    ),
    lucky_before=phrases(
        """
        šťastné číslo je | šťastné číslo | oblíbené číslo je | oblíbené číslo |
        nejoblíbenější číslo je | číslo domu je | číslo domu | číslo na dresu
        """
    ),
    not_before=phrases(
        """
        ne | jen ne | hlavně ne | nikdy | všechno kromě | všechny kromě | cokoliv kromě | kromě |
        mimo | s výjimkou | místo | bez | žádná | vynech | radši ne | raději ne | určitě ne |
        prosím ne | nechci | ne na | ne od
        """
    ),
    not_after=phrases(
        "radši ne | raději ne | určitě ne | prosím ne | nepřipadá v úvahu | děkuju ne"
    ),
    correction=phrases(
        """
        ne počkej | ne počkejte | počkej | počkejte | ajaj | jejda | jé ne | ups | oops |
        myslela jsem | myslel jsem | mělo být | oprava | opravuju | opravuji | měním |
        rozmyslela jsem | rozmyslel jsem | rozmyslela jsem si | změna | chyba | spletla jsem |
        spletl jsem | překlep | pardon | omlouvám se | vtip | dělám si legraci | edit | úprava |
        vlastně ne | ne vlastně | ne ne | teda
        """
    ),
    soft_correction=phrases("vlastně | radši | raději | spíš | spíše | ne | jednak"),
    own_voice=phrases("já | ale | my | takže"),
    if_words=phrases("když | jestli | pokud"),
    being=phrases("je | byla"),
    either=phrases("nebo | anebo | či | případně | nebo třeba"),
    also=phrases("a | i | & | plus | a taky | a také"),
    second=phrases(
        """
        druhá volba | druhá volba je | jako druhá | jako náhrada | náhradní | když ne |
        jestli ne | pokud ne | když je zabraná | pokud je zabraná | jinak | potom | pak |
        případně | v nejhorším
        """
    ),
    first_choice=phrases("první volba | první volba je"),
    second_choice=phrases("druhá volba | druhá volba je | jako náhrada | náhradní | případně"),
    condition=phrases("""
        jestli je volná | pokud je volná | když je volná | pokud ještě | jestli ještě |
        jestli nikdo | pokud nikdo | ledaže | pokud někdo | když všichni
        """),
    reported_before=phrases("""
        všichni | ostatní | hodně lidí | většina | někdo | nikdo | minule | posledně | málem |
        skoro jsem | souhlasím s | vidím že | každý
        """),
    family_before=phrases(
        """
        manžel | muž | manželka | partner | přítel | syn | dcera | dcerka | dítě | děti | máma |
        táta | sestra | bratr | babička | děda | vnučka | vnuk | kamarádka | kolegyně | sousedka |
        kočka | pes | šéf | tchyně | teta
        """
    ),
    reported_after=phrases(
        "je krásná | byla krásná | se povedla | je taky pěkná | vyhrává | vyhraje | vede | je zabraná | je už zabraná | už byla | říká můj | ne"
    ),
    asking=phrases(
        "je | jsou | byla | proč | kdo | která | které | kdy | kde | jak | kolik | co | má | není | bude"
    ),
    suggesting=phrases("""
        co takhle | co třeba | co říkáš | co říkáte | proč ne | můžeme | můžu | mohla bych |
        mohl bych | mohli bychom | možná | prosím
        """),
    roughly_before=phrases(
        "okolo | kolem | zhruba | přibližně | asi tak | někde kolem | někde okolo | blízko | poblíž"
    ),
    roughly_after=phrases("zhruba | nebo tak nějak | plus minus | nebo kolem"),
    between=phrases("mezi | někde mezi | od"),
    through=phrases("do | až"),
    saying=phrases("říká | řekl | řekla | píše | napsal | ptá | volá"),
    relative_before=phrases("vedle | naproti | hned vedle"),
    above=phrases("nad"),
    below=phrases("pod"),
    later=phrases("napravo od | vpravo od | strana po | hned po"),
    earlier=phrases("nalevo od | vlevo od | strana před | hned před"),
    withdrawn=phrases(
        """
        zapomeňte na můj hlas | zapomeň na můj hlas | zapomeňte můj hlas | nepočítejte můj |
        nepočítej můj | nepočítejte mi | beru svůj hlas zpět | beru zpět | stahuju svůj | stahuji svůj |
        zrušte můj | zruš můj | smažte můj | ignorujte můj | můj hlas nepočítejte | můj hlas se nepočítá |
        vymažte můj
        """
    ),
    abstaining=phrases("""
        nehlasuju | nehlasuji | zdržuji se | zdržuju se | bez hlasu | neumím vybrat |
        ještě nevím | nemůžu se rozhodnout
        """),
    pointing=phrases("""
        to samé | totéž | stejná | stejná jako | jak výše | já taky | viz výše | můj věk |
        moje narozeniny | číslo mého domu | +1 | souhlasím
        """),
    agreeing=phrases("ano | jo | souhlasím | souhlas | přesně | já taky | totéž | +1"),
    kinds=phrases("""
        sudá | lichá | prvočíslo | horní řada | dolní řada | levá strana | pravá strana | okraj |
        kraj | horní polovina | dolní polovina | někde uprostřed | někde nahoře | někde dole
        """),
    first=phrases("první | úplně první"),
    last=phrases("poslední | úplně poslední"),
    corner=phrases("roh | rohu | rohy | růžek | rohová | rohovou"),
    top=phrases("horní | nahoře | úplně nahoře | nejhořejší"),
    bottom=phrases("dolní | dole | spodní | úplně dole | nejspodnější"),
    left=phrases("levý | levá | levém | levé | levou | vlevo | nalevo"),
    right=phrases("pravý | pravá | pravém | pravé | pravou | vpravo | napravo"),
    middle=phrases("uprostřed | prostřední | střed | středu | prostředek | ve středu | prostředku"),
    row=phrases("řada | řadě | řádek"),
    column=phrases("sloupec | sloupci"),
    told_from_last=phrases("předposlední | druhá od konce"),
)

LANGUAGE = extended(_PLAIN, cs_composed.GROUPS)
