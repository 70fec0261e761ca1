"""Finnish, read when a comment is plainly written in it."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import fi_composed, fi_numbers
from service.ballots.languages.spelling import extended

_PLAIN = Language(
    code="fi",
    everyday=phrases(
        """
        väliltä | välillä | tykkään | seuraavaksi | nähdään | minä | mä | sinä | sä | hän | me | te | he |
        minun | mun | sinun | sun | minulle | mulle | teille | on | olen | oon | olet | oli | olisi |
        ovat | ei | en | ja | tai | mutta | että | kun | kuin | jos | niin | nyt | vain | vaan | myös |
        kiitos | kiitti | kiitokset | hei | moi | moikka | terveisiä | terveisin | hyvää | huomenta |
        iltaa | ihana | ihanaa | kaunis | kaunista | upea | hieno | kiva | sivu | sivun | sivulta |
        sivusta | sivua | sivulle | numero | ääni | äänestän | ääneni | valitsen | otan | aloita |
        aloitetaan | haluaisin | haluan | voisiko | voitaisiinko | saisiko | ehkä | varmaan | aina |
        tänään | taas | kaikki | kaikille | mikä | missä | miksi | miten | onko | tämä | se | ne | siis |
        eikun | olkaa | olkoon | vuotta | viimeinen | ensimmäinen | jännittävää | odotan | rakastan |
        onnennumeroni | varattu | laske | paitsi | saaristosta | jo | kuka | meillä | teidän | sitten
        """
    ),
    numbers=fi_numbers.numbers(),
    ordinals=fi_numbers.ordinals(),
    page=phrases(
        """
        sivu | sivun | sivua | sivulta | sivusta | sivulle | sivulla | sivuun | sivuksi |
        sivunumero | sivu numero | sivu nro | s. | siv
        """
    ),
    number=phrases("numero | nro | nro. | numeron | numeroa | numerosta | num | luku | numerolle"),
    dotted=phrases(
        """
        sivu | sivun | sivua | sivulta | sivusta | tammikuuta | helmikuuta | maaliskuuta |
        huhtikuuta | toukokuuta | kesäkuuta | heinäkuuta | elokuuta | syyskuuta | lokakuuta |
        marraskuuta | joulukuuta | rivi | sarake | kerros | jakso | sija
        """
    ),
    fillers=phrases(
        """
        se | tuo | tämä | sivu | ihan | vaikka | nyt | tänään | tällä kertaa | taas | ehkä |
        varmaan | kyllä | ehdottomasti | tietenkin | totta kai | kiitos | öö | hm | hmm | vain |
        vaan | jospa | siis | aina | vanha | ihana | kiva | olisi | on | jo
        """
    ),
    choice_before=phrases(
        """
        tykkään | pidän | seuraavaksi | äänestän | äänestän sivua | äänestämme | äänestin | ääneni |
        ääneni on | ääneni saa | ääneni menee | ääni | ääni sivulle | ääni menee | valitsen | valitsisin |
        valitsemme | valintani | valintani on | valinta | otan | ottaisin | otetaan | ota | haluan |
        haluaisin | haluaisin nähdä | haluamme | toivon | toivoisin | toivotaan | toiveeni on | toive |
        aloita | aloitetaan | aloittakaa | aloittaisin | voisiko aloittaa | voitaisiinko aloittaa |
        voitaisiinko ottaa | voisiko ottaa | saisiko | saisinko | voisiko | voisitko | voitko |
        voitaisiinko | voidaanko | entä | entäs | miten olisi | mitä jos | miksi ei | minulle | mulle |
        minun | meille | sanon | sanoisin | mä sanon | arvaan | arvaus | arvaukseni | veikkaan |
        veikkaus | luulen | ehdotan | ehdotus | suosikki | suosikkini on | suosikkini | mieluiten |
        mieluummin | se on | olkoon | olisi | tulkoon | pidän peukkuja | peukut | vaihdan | muutan |
        tarkoitin | tarkoitan | siis | laita minut | laitetaan | tehdään | tee | seuraava | sydän sanoo |
        pysyn | anna | antakaa | kiitos | kannatan | tiimi
        """
    ),
    choice_after=phrases(
        """
        kiitos | kiitti | kiitoksia | pliis | plis | please | pls | olisi | olisi kiva |
        olisi ihana | olisi hyvä | on minun | minulle | mulle | meille | on valintani | valitsen |
        otan | äänestän | sanon | sanoisin | haluaisin | haluan | saa ääneni | saa äänen | ensin |
        ensimmäiseksi | aluksi | tietenkin | totta kai | ehdottomasti | kutsuu | tuntuu hyvältä |
        kuulostaa hyvältä | näyttää hyvältä | on paras | on suosikkini | veikkaan | toivon |
        olkoon
        """
    ),
    other_before=phrases(
        """
        olen | olen jo | oon | hän on | olemme | täytän | täytin | täyttää | kohta | kello | klo |
        klo. | noin kello | jo | vuonna | vuodesta | yli | alle | melkein | osa | jakso |
        kappale | kausi | video | taso | sija | rivi | päivä | viikko | kuukausi | tunti |
        minuutti | koko | neula | lanka | väri | aida | symboli | sarake | pisto |
        bussi | juna | raide | lautta | huone | kerros | tie | katu | malli | versio | kanava |
        lämpötila | miinus | yhteensä | enintään | vähintään | viimeiset | joka | maanantaina |
        tiistaina | keskiviikkona | torstaina | perjantaina | lauantaina | sunnuntaina | maksoi |
        ostin | kirjoin | ompelin | join | söin | odotin | ikä | syntynyt | tammikuun |
        helmikuun
        """
    ),
    other_after=phrases(
        """
        väliltä | välillä | väliin | vuotta | vuotias | vuotiaana | vuoden | v | kuukautta | kk |
        viikkoa | viikon | vko | päivää | päivän | tuntia | tunnin | t | minuuttia | min | sekuntia |
        kertaa | x | prosenttia | euroa | e | asteessa | astetta | lankaa | langan | pistoa | ristiä |
        ristipistoa | väriä | vyyhtiä | neulaa | kehystä | count | ct | cm | mm | m | metriä | km |
        kiloa | kg | grammaa | litraa | sivua | työtä | projektia | keskeneräistä | riviä | lasta |
        lastenlasta | kissaa | koiraa | hevosta | kanaa | lammasta | lehmää | ihmistä | henkilöä |
        naista | ystävää | katsojaa | tilaajaa | katselukertaa | tykkäystä | kommenttia | ääntä |
        pistettä | tähteä | kuppia | kupillista | kahvia | teetä | pullaa | kakkua | munaa | kirjaa |
        jaksoa | osaa | videota | elokuvaa | laulua | yritystä | asiaa | kysymystä | viestiä | sanaa |
        laatikkoa | paria | sukkaa | talvea | kesää | yötä | iltaa | aamulla | illalla | tuhatta | sataa |
        miljoonaa | kättä | sormea | silmää | lamppua | helmeä | nappia | venettä | saarta | tammikuuta |
        helmikuuta | maaliskuuta | huhtikuuta | toukokuuta | kesäkuuta | heinäkuuta | elokuuta |
        syyskuuta | lokakuuta | marraskuuta | joulukuuta | uutta | muuta | isoa | pientä | eri
        """
    ),
    weak_before=phrases("""
        on | minulla on | mulla on | meillä on | oli | vielä | vasta | melkein | lähes | plus |
        nyt jo | tuli
        """),
    weak_after=phrases("jäljellä | valmiina | valmis | lisää | enemmän | vähemmän"),
    neutral_before=phrases(
        """
        hei | moi | moikka | terve | huomenta | iltaa | hyvää | kiitos | kiitti | terveisiä |
        terveisin | rakkaat | ihana | ihanaa | upea | kaunis | kaunista | hieno | kiva | jee |
        vau | no | niin | joo | kyllä | ei | ja | tai | mutta | nyt | siis | sivu | numero | se |
        on | olisi | tämä | ehkä | varmaan | tietenkin | aina | kuten | taas | tänään | x | xx |
        lol | haha | vaan | eikun | siksi | joten | minä | mä | me | öö | hmm | onnea | helppo |
        vaikea | sanoo | sanoi | valitsevat | valitsee | äänestävät
        """
    ),
    neutral_after=phrases(
        """
        koska | sillä | ja | tai | mutta | niin | jos | kun | se | on | oli | olisi | tuntuu |
        näyttää | kuulostaa | minä | mä | minun | mun | kiitos | hei | moi | terveisiä |
        terveisin | ihana | upea | kaunis | kiva | taas | tänään | nyt | aina | x | xx | lol |
        haha | toivon | onnea | myös | vain | vaan | ei | kyllä | joo | n | sta | stä | ta | tä |
        een | lle | lla | llä | ssa | ssä | ksi | a | seen | sen | tta | tietenkin | jo |
        varattu | otettu | sanottu | vai | ensin | tällä kertaa | rakkaat | paras
        """
    ),
    lucky_before=phrases(
        """
        onnennumeroni on | onnennumeroni | onnennumero on | onnennumero | onnenlukuni on |
        lempinumeroni on | lempinumeroni | lempilukuni on | talonnumeroni on | talon numero on |
        pelinumeroni on | suosikkinumeroni on
        """
    ),
    not_before=phrases(
        """
        ei | ei sivu | ei sivua | ei enää | ei mielellään | ei missään nimessä | en halua |
        en ota | älä ota | älkää ottako | paitsi | kaikki paitsi | mikä tahansa paitsi |
        muu kuin | mikä vain muu kuin | lukuun ottamatta | ei kuitenkaan
        """
    ),
    not_after=phrases(
        "ei käy | ei missään nimessä | ei kiitos | ei mielellään | sijaan | sijasta | paitsi"
    ),
    correction=phrases(
        """
        eikun | eiku | ei kun | ei vaan | ei siis | siis | korjaan | korjaus | muutan |
        muutin mieleni | muutin | oho | hups | anteeksi | tarkoitin | kirjoitusvirhe | virhe |
        väärin | vitsi | leikki leikkinä | edit | muokkaus | vaihdan | odota | odotas | ei ei
        """
    ),
    soft_correction=phrases("ei | mieluummin | sittenkin | sitten kuitenkin | sen sijaan"),
    own_voice=phrases("minä | mä | mutta | me | joten | siis"),
    if_words=phrases("jos | ellei"),
    being=phrases("on | oli"),
    either=phrases("tai | vai | taikka | joko | tai ehkä"),
    also=phrases("ja | sekä | & | plus | ja myös"),
    second=phrases("""
        muuten | toinen vaihtoehto | toisena | varalla | vara | jos ei | ellei | sitten |
        toissijaisesti | muussa tapauksessa
        """),
    first_choice=phrases("ensimmäinen valinta | ensisijainen | ensisijaisesti | ykkösvalinta"),
    second_choice=phrases(
        "toinen valinta | toissijainen | toissijaisesti | varavaihtoehto | kakkosvalinta | varalla"
    ),
    condition=phrases("""
        jos se on vapaa | jos vapaa | jos se on vielä | jos vielä | jos kukaan | jos joku |
        jos kaikki | jos ei ole
        """),
    reported_before=phrases("""
        kaikki | muut | monet | useimmat | joku | kukaan | viimeksi | viime kerralla | meinasin |
        melkein | samaa mieltä
        """),
    family_before=phrases(
        """
        mies | mieheni | aviomies | vaimo | vaimoni | poika | poikani | tytär | tyttäreni |
        tyttö | lapsi | lapset | äiti | isä | sisko | siskoni | veli | mummo | mummi | vaari |
        ukki | ystävä | ystäväni | naapuri | kissa | koira | työkaveri | pomo | anoppi | täti |
        lapsenlapsi
        """
    ),
    reported_after=phrases(
        "on upea | oli upea | oli ihana | on myös kiva | voittaa | johtaa | on varattu | on otettu | on jo | sanoo"
    ),
    asking=phrases("""
        onko | oliko | miksi | kuka | mikä | mitä | missä | milloin | miten | voiko | saako |
        joko | eikö | montako | kuinka
        """),
    suggesting=phrases("""
        voisiko | voitaisiinko | saisiko | saisinko | voisitko | entä | entäs | miten olisi |
        mitä jos | miksi ei | ehkä | voidaanko
        """),
    roughly_before=phrases("noin | suunnilleen | lähellä | siinä | jotain | lähes | tienoilla"),
    roughly_after=phrases(
        "tienoilla | paikkeilla | suunnilleen | tai jotain | seutuvilla | tai niillä main"
    ),
    between=phrases("välillä | väliltä | jotain väliltä"),
    through=phrases("viiva"),
    saying=phrases("sanoo | sanoi | kirjoittaa | kirjoitti | kysyy | huutaa"),
    relative_after=phrases(
        "vieressä | vieressä oleva | alapuolella | yläpuolella | jälkeen | ennen"
    ),
    withdrawn=phrases(
        """
        älä laske ääntäni | älkää laskeko ääntäni | älä laske minun | peru ääneni | perun ääneni |
        poista ääneni | poistakaa ääneni | unohda ääneni | vedän ääneni | otan ääneni takaisin |
        ääntäni ei | jättäkää ääneni
        """
    ),
    abstaining=phrases(
        "en äänestä | ei ääntä | en osaa päättää | en tiedä vielä | en ole päättänyt | tyhjä ääni"
    ),
    pointing=phrases("""
        sama | samaa | sama kuin | samoin | kuten yllä | minä myös | mä myös | ikäni |
        syntymäpäiväni | talonnumeroni | +1 | samaa mieltä
        """),
    agreeing=phrases("kyllä | joo | samaa mieltä | sama | samoin | juuri niin | +1"),
    kinds=phrases("""
väliltä | välillä | parillinen | pariton | alkuluku | ylin rivi | alin rivi | ylärivi | alarivi |
vasen reuna | oikea reuna | reuna | reunasivu | yläpuoli | alapuoli
        """),
    first=phrases("ensimmäinen | eka | ensimmäisen | ensimmäisestä | ihan ensimmäinen | ekana"),
    last=phrases("viimeinen | vika | viimeisen | viimeisestä | ihan viimeinen"),
    corner=phrases(
        "kulma | kulmassa | kulmaan | kulmasta | kulmasivu | nurkka | nurkassa | nurkkaan | nurkasta"
    ),
    top=phrases("ylä | ylin | ylhäällä | ylhäältä | ylimpänä | ylös | ylempi"),
    bottom=phrases("ala | alin | alhaalla | alhaalta | alimpana | alas | alempi"),
    left=phrases(
        "vasen | vasemmalla | vasemmassa | vasemmasta | vasemman | vasemmalta | vasempaan"
    ),
    right=phrases("oikea | oikealla | oikeassa | oikeasta | oikean | oikealta | oikeaan"),
    middle=phrases(
        "keskimmäinen | keskellä | keskeltä | keskusta | keskisivu | keskimmäisen | ihan keskellä"
    ),
    row=phrases("rivi | rivin"),
    column=phrases("sarake | sarakkeen"),
    told_from_last=phrases("toiseksi viimeinen | viimeistä edellinen | vikaa edellinen"),
    parted=phrases(
        """
        ylä kulma | ala kulma | ylä kulmassa | ala kulmassa | ylä kulmaan | ala kulmaan |
        ylä kulmasta | ala kulmasta | ylä nurkka | ala nurkka | ylä nurkassa | ala nurkassa |
        ylä nurkkaan | ala nurkkaan | ylä nurkasta | ala nurkasta
        """
    ),
)

LANGUAGE = extended(_PLAIN, fi_composed.GROUPS)
