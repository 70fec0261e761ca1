"""Polish, read when a comment is plainly written in it."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import pl_composed, pl_numbers
from service.ballots.languages.spelling import extended

_PLAIN = Language(
    code="pl",
    everyday=phrases(
        """
        między | pomiędzy | wezmę | podoba | widzimy | zapomnijcie | zmieniam | bardzo | same | sami |
        ja | ty | on | ona | ono | oni | wy | mnie | mi | mną | ciebie | cię | ci | nas | nam | was |
        wam | mój | moja | moje | moim | mojego | mojej | twój | twoja | twoje | nasz | nasza | jest |
        są | był | była | było | jestem | mam | masz | ma | mamy | nie | tak | i | oraz | albo | lub |
        czy | ale | że | żeby | jak | co | kto | gdzie | kiedy | dlaczego | bo | więc | to | ten | ta |
        te | tym | tego | tej | się | już | jeszcze | tylko | też | na | od | po | przez | dla | przy |
        pod | nad | proszę | poproszę | dziękuję | dzięki | pozdrawiam | pozdrowienia | cześć | hej |
        witam | dzień | dobry | wieczór | miłego | piękna | piękne | piękny | pięknie | cudowna |
        cudowne | cudownie | śliczne | wspaniałe | super | strona | stronę | strony | stronie | numer |
        numerek | głosuję | głos | głosu | wybieram | biorę | wybór | może | chcę | chciałabym |
        chciałbym | zacznij | zacznijcie | zacznijmy | dziś | dzisiaj | zawsze | znowu | teraz | wszyscy |
        wszystko | wszystkie | ostatnia | pierwsza | szczęśliwa | liczba | lat | haftuję | kocham |
        czekam | środku | róg | rogu | buziaki | oprócz | liczcie | według | stawiam
        """
    ),
    numbers=pl_numbers.numbers(),
    ordinals=pl_numbers.ordinals(),
    page=phrases(
        """
        strona | stronę | strony | stronie | stroną | str | str. | s. | numer strony |
        strona numer | strona nr | kartka | kartkę
        """
    ),
    number=phrases("numer | nr | nr. | numerek | numeru | cyfra | liczba | liczbę | num"),
    dotted=phrases(
        """
        strona | stronę | strony | stycznia | lutego | marca | kwietnia | maja | czerwca | lipca |
        sierpnia | września | października | listopada | grudnia | rząd | kolumna | urodziny |
        piętro | miejsce | odcinek
        """
    ),
    fillers=phrases(
        """
        to | ta | tą | tę | ten | może | chyba | oczywiście | koniecznie | zdecydowanie |
        po prostu | dziś | dzisiaj | tym razem | teraz | proszę | poproszę | znowu | zawsze |
        jednak | też | tylko | więc | jest | będzie | byłaby | moja | mój | moje | stara | dobra |
        piękna | eee | hm | hmm | no | już | jeszcze
        """
    ),
    choice_before=phrases(
        """
        podoba mi się | wezmę | najbardziej podoba mi się | teraz | głosuję na | głosuje na | głosuję za |
        głosuje za | głosuję | głosuje | głos na | mój głos | mój głos na | głos | mój głos to |
        oddaję głos na | mój głos idzie na | głosujemy na | zagłosuję na | głosowałam na | głosowałem na |
        wybieram | wybieramy | wybrałam | wybrałem | mój wybór | mój wybór to | wybór | biorę | weźmy |
        poproszę | poprosimy | proszę o | prosze o | proszę | chcę | chce | chciałabym | chciałbym |
        chcemy | wolę | wolałabym | wolałbym | stawiam na | stawiamy na | obstawiam | typuję | mój typ |
        mój typ to | typ | zgaduję | zacznij od | zacznijcie od | zacznijmy od | zaczynamy od |
        zacząć od | zacznij * od | zaczęłabym od | zaczynaj od | może | a może | może być | niech będzie |
        niech to będzie | co powiesz na | co powiecie na | czemu nie | dlaczego nie |
        czy możemy zacząć od | czy może być | czy mogę prosić | mogę prosić | mogę prosić o | dla mnie |
        jak dla mnie | ode mnie | mówię | powiem | powiedziałabym | powiedziałbym | jestem za |
        jestem za tym by | idę na | idziemy w | moja propozycja | moja propozycja to | proponuję |
        propozycja | faworyt | mój faworyt to | moja faworytka to | najchętniej | wolałabym jednak |
        trzymam kciuki za | kciuki za | liczę na | zmieniam na | zmiana na | miało być | chodziło mi o |
        miałam na myśli | miałem na myśli | zostaję przy | daj | dajcie | dajmy | następna | drużyna |
        serce mówi | przeczucie mówi | zrób | zróbcie | zróbmy | wyszyj | wyszyjcie | wyszyjmy | raczej |
        według mnie | moim zdaniem | jednak
        """
    ),
    choice_after=phrases(
        """
        bardzo proszę | ta | proszę | poproszę | prosze | poprosze | pls | please | plis | byłaby super |
        byłoby super | dla mnie | ode mnie | wybieram | biorę | głosuję | mówię | stawiam | typuję |
        chcę | najpierw | na początek | na start | oczywiście | zdecydowanie | koniecznie | to mój wybór |
        to mój głos | to mój typ | ma mój głos | dostaje mój głos | niech będzie | wygląda dobrze |
        brzmi dobrze | woła mnie | przemawia do mnie | jest najlepsza | to jest to | ka | kę | ke | tka |
        tkę | tke | mka | mkę | mke | ga | me
        """
    ),
    other_before=phrases(
        """
        mam już | mam tylko | mam | mamy | kończę | skończyłam | skończyłem | skończę | miała |
        miał | ma już | jestem po | wiek | o godzinie | godzina | godz | godz. | koło godziny |
        od | od ponad | od prawie | od około | około godziny | do | przed | za | co | rok | roku |
        w roku | rocznik | odcinek | część | rozdział | sezon | film | filmik | poziom | miejsce |
        rząd | dzień | tydzień | miesiąc | rozmiar | igła | nitka | mulina | kolor |
        aida | kanwa | symbol | kolumna | autobus | pociąg | tor | peron |
        prom | pokój | piętro | ulica | dom | psalm | wersja | model | kanał | temperatura |
        minus | razem | w sumie | ponad | prawie | niecałe | najwyżej | co najmniej | ostatnie |
        przez ostatnie | następne | każde | wszystkie | kupiłam | kupiłem | kosztowało |
        wyhaftowałam | wyszyłam | wypiłam | zjadłam | czekałam | zostało | zostało mi | brakuje |
        w poniedziałek | w piątek | top | covid | ocena | urodziłam się | urodzona | z
        """
    ),
    other_after=phrases(
        """
        lat | lata | rok | roku | latka | letnia | letni | miesiąc | miesiące | miesięcy |
        tydzień | tygodnie | tygodni | dzień | dni | dniach | godzina | godziny | godzin | godz |
        minuta | minuty | minut | min | sekund | raz | razy | x | procent | zł | złotych | złote |
        euro | groszy | stopni | stopnie | nitka | nitki | nitek | krzyżyk | krzyżyki |
        krzyżyków | ściegów | kolor | kolory | kolorów | motek | motki | motków | igły | igieł |
        tamborki | count | ct | cm | mm | m | metr | metry | metrów | km | kg | kilo | g | litr |
        litry | stron | kartek | projekt | projekty | projektów | haft | hafty | haftów | prac |
        prace | wzór | wzory | wzorów | rzędów | dzieci | dziecko | wnuków | wnuczek | kot |
        koty | kotów | pies | psy | psów | koni | kur | kury | owiec | krów | osób | osoby |
        ludzi | kobiet | przyjaciółek | widzów | subskrybentów | wyświetleń | lajków |
        komentarzy | komentarze | głosów | głosy | punktów | punkty | gwiazdek | kubek | kubki |
        kubków | filiżanki | filiżanek | kawa | kawy | kaw | herbaty | herbat | ciastek | ciasta |
        jajek | jajka | książek | książki | odcinków | odcinki | części | filmów | filmy |
        piosenek | prób | rzeczy | pytań | pytania | maili | słów | pudełek | par | pary |
        skarpet | zim | zimy | nocy | wieczorów | rano | wieczorem | tysięcy | tysiące | milion |
        rąk | palców | oczu | lamp | koralików | guzików | łodzi | wysp | stycznia | lutego |
        marca | kwietnia | maja | czerwca | lipca | sierpnia | września | października |
        listopada | grudnia | nowe | nowych | inne | innych | różnych | małe | duże
        """
    ),
    weak_before=phrases(
        """
        w | na | z | ze | przy | po | mam jeszcze | jeszcze | już | tylko | prawie | nad | pod |
        moje | moich | nasze | plus | jestem na | jestem na stronie | siedzę nad | haftuję |
        całe | dopiero | o
        """
    ),
    weak_after=phrases("gotowe | gotowa | zostało | więcej | mniej | głos | punkt | już mam"),
    neutral_before=phrases(
        """
        hej | cześć | witam | witajcie | dzień | dobry | wieczór | dziękuję | dzięki |
        pozdrawiam | pozdrowienia | serdecznie | kochane | kochani | piękna | piękne | cudowna |
        cudowne | śliczne | super | tak | nie | no | i | a | ale | albo | lub | więc | bo | o |
        oh | ojej | wow | ach | ok | okej | dziś | dzisiaj | tym razem | teraz | strona | numer |
        to | jest | będzie | jak | zawsze | znowu | chyba | może | oczywiście | zdecydowanie |
        po prostu | x | xx | lol | haha | hihi | trudny | łatwy | powodzenia | dlatego | tylko |
        lecz | mówi | mówią | powiedział | wybierają | głosują | wszystkie | dziewczyny | panie |
        jeśli nie | nie wiem | czekam | hmm
        """
    ),
    neutral_after=phrases(
        """
        bo | ponieważ | gdyż | i | a | ale | albo | lub | więc | to | jest | była | byłaby |
        będzie | wygląda | brzmi | ja | my | mój | moja | moje | proszę | dziękuję | dzięki |
        pozdrawiam | pozdrowienia | serdecznie | hej | cześć | dziś | dzisiaj | teraz |
        tym razem | zawsze | znowu | x | xx | lol | haha | mam | jak | też | także | tylko |
        oczywiście | chyba | może | najpierw | już | zajęta | wzięta | zajęte | wolna | na | w |
        z | od | dla | super | piękna | kochane | kochani | powodzenia | trzymam | kciuki |
        jeśli nie | nie ta | tak | nie wiem | czekam | dlatego | ma | miała | zamiast | według |
        wybrana | wybrane
        """
    ),
    lucky_before=phrases(
        """
        szczęśliwa liczba to | szczęśliwa liczba | szczęśliwy numer to | szczęśliwy numer |
        szczęśliwa cyfra to | ulubiona liczba to | ulubiona liczba | ulubiony numer to |
        ulubiony numer | ulubiona cyfra to | numer domu to | numer domu | numer na koszulce
        """
    ),
    not_before=phrases(
        """
        nie | byle nie | tylko nie | nigdy | wszystko oprócz | wszystko poza | każda oprócz |
        oprócz | poza | prócz | z wyjątkiem | zamiast | bez | żadna | pomiń | omijaj |
        raczej nie | na pewno nie | proszę nie | nie chcę | nie na | nie od | byle tylko nie
        """
    ),
    not_after=phrases(
        "raczej nie | na pewno nie | proszę nie | odpada | nie wchodzi w grę | dziękuję nie"
    ),
    correction=phrases(
        """
        nie czekaj | nie czekajcie | czekaj | czekajcie | oj nie | ojej nie | ups | oops |
        miałam na myśli | miałem na myśli | chodziło mi o | chodziło o | miało być | poprawka |
        poprawiam | zmieniam | zmieniłam zdanie | zmieniłem zdanie | zmiana | pomyłka |
        pomyliłam | pomyliłem | literówka | przepraszam | żart | żartuję | żartowałam | edit |
        edycja | jednak nie | nie jednak | a jednak | wróć | znaczy | to znaczy | nie nie
        """
    ),
    soft_correction=phrases("jednak | raczej | lepiej | nie | sorki | wolę jednak"),
    own_voice=phrases("ja | ale | więc"),
    if_words=phrases("jeśli"),
    being=phrases("jest"),
    either=phrases("albo | lub | czy | bądź | ewentualnie | albo może"),
    also=phrases("i | a | oraz | & | plus | a także | i jeszcze"),
    second=phrases(
        """
        drugi wybór | drugi wybór to | w drugiej kolejności | jeśli nie | jak nie | jeśli zajęta |
        jeśli jest zajęta | a jak zajęta | rezerwowa | rezerwowo | ewentualnie | w ostateczności |
        potem | następnie | inaczej | w innym razie
        """
    ),
    first_choice=phrases("pierwszy wybór | pierwszy wybór to | w pierwszej kolejności"),
    second_choice=phrases(
        "drugi wybór | drugi wybór to | w drugiej kolejności | rezerwowa | rezerwowo | ewentualnie"
    ),
    condition=phrases(
        """
        jeśli wolna | jeśli jest wolna | jeśli jeszcze | jak wolna | o ile | jeśli nikt |
        jeśli ktoś | chyba że | jeśli wszyscy | pod warunkiem
        """
    ),
    reported_before=phrases(
        """
        wszyscy | inni | wiele osób | większość | ktoś | nikt | ostatnio | ostatnim razem |
        poprzednio | prawie wybrałam | myślałam o | myślałem o | zgadzam się z | widzę że |
        każdy
        """
    ),
    family_before=phrases(
        """
        mąż | mężem | żona | partner | syn | syna | córka | córki | dziecko | dzieci | mama |
        tata | siostra | brat | babcia | dziadek | wnuczka | wnuk | przyjaciółka | koleżanka |
        kolega | sąsiadka | kot | pies | szef | teściowa | ciocia
        """
    ),
    reported_after=phrases(
        "wyszła pięknie | wyszła | była piękna | też ładna | wygrywa | wygra | prowadzi | jest zajęta | jest już zajęta | już była | mówi mój | nie"
    ),
    asking=phrases("""
        czy | jest | są | była | dlaczego | czemu | kto | która | które | który | kiedy | gdzie |
        jak | ile | co | ma | a czy | została
        """),
    suggesting=phrases("""
        a może | może | co powiesz | co powiecie | czemu nie | dlaczego nie | czy możemy |
        czy mogę | mogę prosić | czy może być | proszę
        """),
    roughly_before=phrases("""
        około | ok. | ok | mniej więcej | gdzieś koło | gdzieś około | koło | w okolicach |
        blisko | jakieś | okolice
        """),
    roughly_after=phrases("mniej więcej | albo coś koło tego | coś koło tego | z hakiem"),
    between=phrases("między | pomiędzy | gdzieś między | od"),
    through=phrases("do"),
    saying=phrases("mówi | powiedział | powiedziała | pisze | napisał | pyta | krzyczy"),
    relative_before=phrases("obok | koło strony | naprzeciwko | przy stronie"),
    above=phrases("nad | powyżej | ponad stroną"),
    below=phrases("pod | poniżej"),
    later=phrases("na prawo od | po prawej od | strona po | zaraz po"),
    earlier=phrases("na lewo od | po lewej od | strona przed | tuż przed"),
    withdrawn=phrases(
        """
        zapomnijcie o moim głosie | zapomnij o moim głosie | zapomnijcie mój głos |
        nie liczcie mojego głosu | nie licz mojego głosu | nie liczcie mojego | wycofuję mój głos |
        wycofuję swój głos | wycofuję głos | cofam mój głos | cofam głos | usuń mój głos |
        usuńcie mój głos | zignorujcie mój głos | zignoruj mój | mój głos się nie liczy | anuluję |
        proszę nie liczyć mojego | skreślcie mój głos
        """
    ),
    abstaining=phrases("""
        nie głosuję | wstrzymuję się | bez głosu | nie umiem wybrać | nie potrafię wybrać |
        jeszcze nie wiem | nie mogę się zdecydować
        """),
    pointing=phrases("""
        to samo | ta sama | tak samo | jak wyżej | ja też | j.w. | jw | mój wiek | moje urodziny |
        numer mojego domu | +1 | zgadzam się
        """),
    agreeing=phrases("tak | zgadzam się | zgoda | dokładnie | ja też | to samo | popieram | +1"),
    kinds=phrases(
        """
        parzysta | nieparzysta | liczba pierwsza | górny rząd | dolny rząd | lewa strona |
        prawa strona | lewej strony | prawej strony | z lewej strony | z prawej strony | krawędź |
        brzeg | górna połowa | dolna połowa | gdzieś na środku | gdzieś na górze |
        gdzieś na dole
        """
    ),
    first=phrases("pierwsza | pierwszą | pierwszej | pierwsza z brzegu | sam początek"),
    last=phrases("ostatnia | ostatnią | ostatniej"),
    corner=phrases("róg | rogu | rogi | rożek | narożnik | narożna | narożniku"),
    top=phrases("górny | górna | górną | górnym | górnej | na górze | u góry | góra | górę | góry"),
    bottom=phrases("dolny | dolna | dolną | dolnym | dolnej | na dole | u dołu | dół | dołu"),
    left=phrases("lewy | lewa | lewą | lewym | lewej | po lewej | z lewej | w lewo"),
    right=phrases("prawy | prawa | prawą | prawym | prawej | po prawej | z prawej | w prawo"),
    middle=phrases("""
        środek | na środku | środku | środkowa | środkową | w środku | pośrodku | w samym środku |
        na samym środku
        """),
    row=phrases("rząd | rzędzie"),
    column=phrases("kolumna | kolumnie"),
    told_from_last=phrases("przedostatnia | przedostatnią | druga od końca"),
)

LANGUAGE = extended(_PLAIN, pl_composed.GROUPS)
