"""Swedish, read when a comment is plainly written in it."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import sv_composed, sv_numbers
from service.ballots.languages.spelling import extended

_PLAIN = Language(
    code="sv",
    everyday=phrases(
        """
        jag | du | vi | ni | han | hon | det | den | och | att | är | som | på | för | med |
        till | från | inte | ej | så | mitt | min | mina | din | ditt | dig | mig | oss | er |
        har | hade | kan | ska | vill | skulle | måste | blir | var | men | eller | om | också |
        bara | när | hur | vad | varför | nu | idag | här | där | tack | tackar | snälla | hej |
        hejsan | hälsningar | kram | kramar | roligt | fint | vacker | vackert | underbart |
        härligt | mysigt | alla | alltid | sida | sidan | sidorna | nummer | röstar | röst |
        rösta | väljer | välj | tar | börja | gärna | kanske | jättefint | mycket | bra | igen |
        brygga | något | någon | ingen | lyckotal | år | sista | första | mitten | hörnet | kära |
        spännande | längtar | redan | utom | räkna | gissar | önskar | tycker | en | ett
        """
    ),
    numbers=sv_numbers.numbers(),
    ordinals=sv_numbers.ordinals(),
    ordinal_endings=frozenset({"a", "e"}),
    untelling=phrases("sex"),
    page=phrases(
        """
        sida | sidan | sid | sid. | s | s. | sidnr | sidnummer | sida nummer | sida nr |
        sidonummer | pg | blad
        """
    ),
    number=phrases("nummer | nr | nr. | num | numret | siffran | no"),
    fillers=phrases(
        """
        den | det | sidan | nog | gärna | bara | så klart | såklart | självklart | kanske |
        absolut | då | nu | idag | igen | alltid | denna gång | den här gången | tack | snälla |
        faktiskt | helt klart | eh | hm | hmm | lilla | fina | gamla | min | mitt | är | blir |
        förstås | väl | ju
        """
    ),
    choice_before=phrases(
        """
        fortsätt med | fortsätter med | vidare med | rösten går till | rösten | jag gillar | gillar |
        kan du göra | göra | kan ni göra | kan ni ta | gör | röstar * på | röstar * * på | går * för |
        röstar på | rösta på | röstar för | röst på | röst går till | min röst | röst | röstar |
        röstade på | min röst är | väljer | välj | valde | vill välja | vill ha | vill gärna ha |
        skulle vilja ha | skulle vilja se | vill se | vill | tar | ta | jag tar | kör på | kör med |
        vi kör | gå på | går på | gå för | satsar på | gissar på | gissar | gissning | börja med |
        börja på | börjar med | starta med | starta på | börja * med | kan vi börja med | kan vi ta |
        kan du ta | får jag | får vi | kan jag få | kan jag | hur vore det med | vad sägs om |
        vad tycker du om | varför inte | för min del | för mig | jag säger | säger | skulle säga |
        jag tror på | tror | hoppas på | hoppas | håller på | håller tummarna för | hejar på | favorit |
        favorit är | min favorit | föredrar | helst | hellre | önskar | önskar mig | ge mig | ge oss |
        det blir | blir det | blir | låt det bli | byter till | ändrar till | ändra till | menade |
        jag menade | menar | stannar på | håller fast vid | lutar åt | för | snälla | tack | gärna |
        kanske | mitt val | mitt val är | val | valet faller på | det är | sätt mig på | team |
        hjärtat säger | magkänslan säger | jag vill | prova | nästa sida | ska bli | vore
        """
    ),
    choice_after=phrases(
        """
        nästa | nästa gång | härnäst | tack | tackar | tack tack | snälla | gärna | för mig |
        för min del | blir bra | blir det | är min | är mitt val | är min röst | får min röst |
        vore fint | vore kul | vore roligt | skulle vara | tar jag | väljer jag | säger jag |
        röstar jag på | först | att börja med | till att börja med | som start | såklart | så klart |
        självklart | absolut | helt klart | pls | plz | please | det blir | det är | ropar på mig |
        känns rätt | känns bra | låter bra | ser bra ut | vill jag ha | vill jag se | är bäst |
        är min favorit
        """
    ),
    other_before=phrases(
        """
        är nu | fyller | fyllde | blir snart | är snart | jag är | hon är | han är | vi är |
        sedan | i över | i nästan | om | klockan | kl | kl. | vid | före | efter | mot | del |
        avsnitt | kapitel | säsong | video | nivå | plats | rad | rang | dag | vecka | månad |
        timme | minut | storlek | strl | nål | garn | färg | aida | symbol | tråd |
        kolumn | stygn | buss | tåg | spår | färja | rum | våning | väg | gata | vers | psalm |
        version | modell | kanal | temperatur | minus | grader | vindstyrka | totalt |
        sammanlagt | mer än | mindre än | minst | högst | de senaste | senaste | varje | var |
        alla | av de | av | har bara | har nu | kostade | köpte | sydde | broderade | drack | åt |
        väntade | januari | februari | mars | april | maj | juni | juli | augusti | september |
        oktober | november | december | måndag | tisdag | onsdag | torsdag | fredag | lördag |
        söndag | topp | covid | betyg | ålder | född | gånger | ungefär klockan
        """
    ),
    other_after=phrases(
        """
        år | åring | åringar | månad | månader | vecka | veckor | dag | dagar | dygn | timme |
        timmar | minut | minuter | min | sekunder | gång | gånger | x | procent | kronor | kr |
        spänn | öre | euro | grader | trådar | tråd | trådigt | stygn | korsstygn | kryss |
        färger | färg | garn | nystan | docka | dockor | nålar | ramar | count | ct | cm | mm |
        m | meter | km | mil | kg | kilo | gram | liter | sidor | projekt | broderier | broderi |
        mönster | rader | kolumner | barn | barnbarn | katt | katter | hund | hundar | hästar |
        höns | kor | ungar | personer | människor | kvinnor | vänner | tittare | prenumeranter |
        visningar | likes | kommentarer | röster | poäng | stjärnor | kopp | koppar | kaffe | te |
        bitar | kakor | bullar | ägg | böcker | avsnitt | delar | videor | filmer | låtar |
        försök | chanser | saker | önskningar | frågor | mejl | ord | lådor | par | strumpor |
        vantar | vintrar | somrar | nätter | kvällar | på morgonen | på kvällen | om dagen |
        i veckan | av oss | av er | av dem | tusen | hundra | miljoner | dussin | händer |
        fingrar | ögon | lampor | pärlor | knappar | båtar | öar | januari | februari | mars |
        april | maj | juni | juli | augusti | september | oktober | november | december | nya |
        andra | stora | små | hela | olika
        """
    ),
    weak_before=phrases(
        """
        till | i | på | med | har | hade | har jag | bara | nästan | redan | över | under | ur |
        från | mina | sina | våra | plus | är på | är på sidan | håller på med | ännu | hela |
        drygt | knappt | sitter med
        """
    ),
    weak_after=phrases(
        """
        kvar | klar | klara | färdig | till | mer | mindre | över | röst | poäng | har jag |
        hade jag
        """
    ),
    neutral_before=phrases(
        """
        utan | inte | hej | hejsan | hallå | god | morgon | kväll | tack | så | mycket | kram |
        kramar | hälsningar | ja | nej | jo | jag | vi | men | och | eller | då | nu | idag | oj |
        wow | åh | oh | ok | okej | kul | roligt | fint | bra | underbart | vackert | härligt |
        spännande | sida | sidan | nummer | det | den | är | blir | som | vanligt | alltid |
        igen | här | alla | allihop | därför | så klart | såklart | självklart | definitivt |
        absolut | kanske | eh | hm | hmm | för | i | på | x | xx | lol | haha | en | ett | säger |
        sa | förresten | nja | tveka | tvekar | lätt | svårt | enkelt | snälla | gärna | mig |
        dig | er | lycka | om inte
        """
    ),
    neutral_after=phrases(
        """
        för | eftersom | därför | och | men | eller | då | så | jag | vi | du | ni | det | den |
        är | var | blir | som | att | om | om inte | ja | nej | tack | snälla | kram | kramar |
        hälsningar | hej | mycket | bra | fint | vackert | roligt | kul | idag | nu | igen |
        alltid | denna | den här | min | mitt | mina | i | på | med | från | till | ser | känns |
        låter | vore | skulle | ska | vill | kan | har | x | xx | lol | haha | hoppas | lycka |
        även | också | bara | här | där | istället | i stället | först | kanske | faktiskt |
        inte den | inte sidan | absolut | självklart | sagt | redan | upptagen | tagen | nästa
        """
    ),
    lucky_before=phrases(
        """
        lyckotal är | lyckotal | lyckonummer är | lyckonummer | turnummer är | turnummer |
        favoritnummer är | favoritnummer | favoritsiffra är | favoritsiffra | favorittal är |
        husnummer är | husnummer | tursiffra är
        """
    ),
    not_before=phrases(
        """
        inte | ej | aldrig | allt utom | alla utom | vad som helst utom | utom | förutom |
        istället för | i stället för | hellre än | absolut inte | snälla inte | inte på |
        inte med | ingen | undvik | hoppa över | inte sidan
        """
    ),
    not_after=phrases(
        "snälla inte | absolut inte | går bort | vill jag inte ha | nej tack | är uteslutet"
    ),
    correction=phrases(
        """
        nej vänta | nej förresten | nä förresten | nej nej | oj nej | oj | hoppsan | ojsan |
        vänta | jag menade | menade | menar | rättelse | ändrar mig | ändrat mig | jag ändrar |
        skrev fel | felskrivet | fel | ursäkta | skojar | skämt | edit | ändring | ångrar mig |
        byter till | ändrar till | eller nej | nej jag tar
        """
    ),
    soft_correction=phrases("nej | förresten | hellre | istället | faktiskt | eller rättare sagt"),
    own_voice=phrases("jag | men | vi"),
    if_words=phrases("om"),
    being=phrases("är"),
    either=phrases("eller | eller kanske | antingen | alternativt"),
    also=phrases("och | & | samt | plus | och även"),
    second=phrases(
        """
        annars | i andra hand | andrahandsval | andra val | om inte | reserv | som reserv |
        sedan | därefter | sen | om den är tagen
        """
    ),
    first_choice=phrases("i första hand | förstahandsval | första val"),
    second_choice=phrases("i andra hand | andrahandsval | andra val | reserv | som reserv"),
    condition=phrases(
        """
        om den är ledig | om den fortfarande | om ingen | om någon | om det går | om den finns |
        om alla | förutsatt
        """
    ),
    reported_before=phrases(
        """
        alla | andra | många | de flesta | folk | någon | ingen | förra gången | tänkte säga |
        tänkte på | var nära att | håller med | de andra
        """
    ),
    family_before=phrases(
        """
        min man | mannen | maken | fru | sambo | son | dotter | barn | barnen | mamma | pappa |
        syster | bror | mormor | farmor | morfar | farfar | vän | väninna | kompis | granne |
        katt | katten | hund | hunden | kollega | chef | svärmor | moster | faster | barnbarn
        """
    ),
    reported_after=phrases(
        """
        blev | blev fin | blev jättefin | blev så fin | var fin | var jättefin | vinner | leder |
        kommer att vinna | är upptagen | är tagen | är redan | säger min | inte
        """
    ),
    asking=phrases(
        """
        är | har | var | varför | vem | vilken | vilka | när | hur | vad | finns | ska | blev |
        kommer | hade
        """
    ),
    suggesting=phrases(
        """
        kan vi | kan jag | kan du | får jag | får vi | hur vore | vad sägs | varför inte |
        snälla | kanske | ska vi | vill du
        """
    ),
    roughly_before=phrases(
        "runt | omkring | ungefär | cirka | ca | ca. | nära | i närheten av | typ"
    ),
    roughly_after=phrases("ungefär | eller så | nånting | typ"),
    between=phrases("mellan | någonstans mellan | från"),
    through=phrases("till"),
    saying=phrases("säger | sa | sade | skriver | skrev | frågar | ropar"),
    relative_before=phrases("bredvid | intill | mitt emot | närmast"),
    above=phrases("ovanför | över"),
    below=phrases("nedanför | under"),
    later=phrases("till höger om | höger om | sidan efter | efter sidan"),
    earlier=phrases("till vänster om | vänster om | sidan före"),
    withdrawn=phrases(
        """
        räkna inte min | räkna inte med min | ta bort min röst | stryk min | drar tillbaka min |
        tar tillbaka min | ignorera min | glöm min | bortse från min | min röst räknas inte |
        radera min
        """
    ),
    abstaining=phrases(
        """
        ingen röst | röstar inte | avstår | kan inte bestämma | vet inte än | har inte bestämt
        """
    ),
    pointing=phrases(
        """
        samma | samma som | detsamma | som ovan | jag också | dito | min ålder | min födelsedag |
        mitt husnummer | +1 | håller med
        """
    ),
    agreeing=phrases("ja | håller med | samma | precis | jag också | instämmer | dito | +1"),
    kinds=phrases(
        """
        jämn sida | jämnt nummer | udda sida | udda nummer | primtal | översta raden |
        nedersta raden | vänstra sidan | högra sidan | kanten | övre halvan | nedre halvan
        """
    ),
    first=phrases("första | allra första | först"),
    last=phrases("sista | allra sista | sista sidan av alla"),
    corner=phrases("hörn | hörnet | hörnan | hörnsida | hörnsidan"),
    top=phrases("övre | överst | översta | uppe | upptill | högst upp | längst upp"),
    bottom=phrases("nedre | nederst | nedersta | nere | nedtill | längst ner | längst ned"),
    left=phrases("vänster | vänstra | till vänster | längst till vänster"),
    right=phrases("höger | högra | till höger | längst till höger"),
    middle=phrases("mitten | mittersta | mittsidan | i mitten | mitt i | centrum"),
    row=phrases("raden | rad"),
    column=phrases("kolumnen | kolumn"),
    told_from_last=phrases("näst sista | näst sist | den näst sista"),
)

LANGUAGE = extended(_PLAIN, sv_composed.GROUPS)
