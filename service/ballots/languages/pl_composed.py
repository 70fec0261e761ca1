"""Polish phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = """
zajęta | zajęte | zajęty | wolna | wolne | wolny | wybrana | wybrane | wzięta | zrobiona | wyhaftowana |
dostępna | oddana | zaklepana | była | było | poszła | poszło | padła | padło | powiedziana
"""
_ALREADY = "już | jeszcze | może już | nadal | wciąż"
_SAID = "powiedziała | powiedział | mówi | wybrała | wybrał | pisze | napisała | wzięła | głosuje | chce | zaproponowała"
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "wyżej | powyżej | nade mną | u góry | przede mną | ponad mną"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("książka | książce | książki | gazecie | gazeta | powieść | powieści"),
    "turning": phrases("ale | jednak"),
    "voting": phrases("głosuję | mój głos | wybieram"),
    "torn": phrases("waham | wybrać"),
    "own_piece": phrases("mojego | swojego | mojej | swojej"),
    "counting_pages": phrases("strony | stron"),
    "again": phrases("znowu | znów"),
    "named_before": phrases("zgadzam się z | zgadzam się na"),
    "answered": phrases("inaczej | w przeciwnym razie")
    + phrases("jeśli tak | jeśli tak to | w takim razie | jeśli nie | jeśli nie to"),
    "today": phrases("dziś | dzisiaj"),
    "everyday": phrases(
        "zł | dopiero | zaczynam | przygodę | krzyżykami | krzyżykowy | haftować | zapłaciłam | wzór | dole | górze | lewej | prawej | połowa | wygraliśmy | czterdziesta | zapisz | dopisz | zamień | zmieniam | byłaby | haftuję | haftujesz | kanwie | przeszłam | najpierw | możesz | stawiam"
    ),
    "choice_before": phrases("ale ja | a ja | ja zaś | ja natomiast | sama")
    + each_of(
        "zapisz | dopisz | wpisz | zapiszcie | dopiszcie | wpiszcie | policz",
        "mnie | mój głos | nas",
        "na | do | przy | pod | za",
    )
    + each_of(
        "mój wybór | mój głos | głos | wybór | moja propozycja | mój typ",
        "to | pada na | padł na | idzie na | będzie | wędruje na | leci na",
        "stronę | numer |",
    )
    + each_of(
        "bardzo | tak bardzo | strasznie |",
        "chciałabym | chciałbym | chcę | marzę by | wolałabym",
        "zobaczyć | żebyś zrobiła | żeby to była | żeby była | wybrać | poprosić o | o |",
    )
    + each_of(
        "mam słabość do | zakochałam się w | podoba mi się | jestem za | stawiam wszystko na | stawiam na | obstawiam",
        "stronie | stroną | numerem |",
    )
    + each_of(
        "czy możesz | możesz | czy mogłabyś | mogłabyś | może",
        "zrobić | wyhaftować | zacząć od | wziąć",
        "stronę | numer |",
    )
    + each_of(
        "pierwszy wybór | drugi wybór | trzeci wybór | drugi | trzeci | pierwszy | w rezerwie | rezerwa | rezerwowo | "
        "ewentualnie | najpierw | w drugiej kolejności",
        ": | to |",
    )
    + phrases("zamiast tego | najchętniej | najpierw | wolę | wolę jednak | biorę | to może"),
    "choice_after": each_of(
        "byłaby | byłoby | będzie",
        "super | fajna | piękna | świetna | idealna | fajnie | cudownie | ok",
    )
    + phrases("jeśli można | jeśli się da"),
    "first_choice": phrases("najpierw | najchętniej | pierwszy | po pierwsze"),
    "second_choice": phrases("rezerwa | w rezerwie | drugi | druga | po drugie"),
    "second": each_of(
        "a jak | jak | a jeśli | jeśli | a gdy | gdyby",
        "jest | będzie | była |",
        "zajęta | zajęte | wzięta | niedostępna | zrobiona",
        "to |",
    )
    + phrases("w rezerwie | drugi | trzeci | potem | a potem | w drugiej"),
    "stopgap": phrases("inaczej | w przeciwnym razie | jeśli nie"),
    "neutral_after": phrases("nie # | a nie # | na # | zamiast # | to # | do #"),
    "not_before": each_of(
        "a nie | ale nie | zamiast | tylko nie | byle nie | oprócz | poza",
        "stronę | strony | numer |",
    )
    + phrases("wszystko byle nie | wszystko tylko nie"),
    "reported_after": phrases(
        "już ktoś | ktoś już | ktoś wybrał | ktoś wziął | ktoś wybrała | ktoś wzięła | ktoś mówił"
    )
    + each_of("jest | czy jest | była", _ALREADY + " |", _GONE)
    + each_of(_ALREADY, _GONE),
    "asked_later": each_of("jest | czy jest | albo | a może", _ALREADY + " |", _GONE)
    + each_of(_ALREADY, _GONE),
    "reported_before": each_of(
        "ona | on | oni | mąż | żona | córka | syn | mama | wnuczka",
        "chce | woli | wybiera | mówi | głosuje na",
    )
    + phrases("powiedzieli mi | powiedziano mi | polecono mi | chciałam najpierw")
    + each_of("pani | koleżanka | osoba | ta", "co | która", "powiedziała | mówi | wybrała")
    + each_of("zgadzam się | zgoda | popieram", "z | na |", "tą | stroną |"),
    "suggesting": phrases(
        "czy możesz | czy mogłabyś | czy można | możesz | mogłabyś | czy mogę | czy możemy"
    ),
    "pointing": each_of(
        "to samo | ta sama | tak samo | tę samą | taka sama | tak",
        "co | jak",
        _OTHERS,
        _ABOVE + " |",
    )
    + each_of(
        "to co | jak | tak jak | ta co | tak samo jak",
        "* | moja * | pani * | * *",
        _SAID + " | " + _ABOVE,
    )
    + phrases(
        "tak jak * | to co powyżej | to co wyżej | mój wiek | moje urodziny | ile mam lat | rok urodzenia | data urodzin"
    ),
    "withdrawn": each_of(
        "wycofuję | wycofaj | usuń | skreśl | anuluj | anuluję | nie licz | nie liczcie | zignoruj | cofam | usuńcie",
        "mój | swój |",
        "głos | wybór | głosu | komentarz",
    ),
    "abstaining": phrases(
        "wybierz ty | ty wybierz | ty wybieraj | zaskocz nas | zaskocz mnie | obojętnie | obojętnie która | "
        "wszystko jedno | nie mogę się zdecydować | nie umiem wybrać"
    ),
    "kinds": each_of(
        "jakaś | gdzieś w | coś z | w okolicach",
        "dwudziestka | trzydziestka | czterdziestka | pięćdziesiątka | "
        "dwudziestych | trzydziestych | czterdziestych | trzydziestki",
    ),
    "replacing": phrases(
        "zamień | zamieniam | zamieńcie | zmień | zmieniam | zmieńcie | zmienić | zamienić | podmień | przenieś"
    ),
    "replaced_by": phrases("na | na stronę | za | w"),
    "correction": phrases("zmieniłam zdanie | rozmyśliłam się | przemyślałam | po namyśle"),
    "roughly_before": phrases(
        "gdzieś koło | gdzieś około | w okolicach | mniej więcej | tak około | koło | okolice"
    ),
    "other_before": phrases("teraz jestem na | skończyłam")
    + phrases("widzimy się | do zobaczenia | spotykamy się | wyjeżdżam | jadę")
    + each_of("na", "kanwie | aidzie | lnie | płótnie | materiale")
    + each_of("wygraliśmy | przegraliśmy | wygrali | remis", "# : | # |")
    + phrases(
        "przeszłam | przebiegłam | przejechałam | urodzona | urodziłam się | autobus | tramwaj | sala | pokój | odcinek"
    ),
    "other_after": phrases(": # | do # | kilometrów | kilometry | kroków | ct | nitkami | nitkach"),
    "sum_before": phrases(
        "połowa z | połowa | połowę z | podwojone | dwa razy | jedna trzecia z | jedna czwarta z"
    ),
    "times": phrases("razy | x"),
    "plus": phrases("plus | dodać"),
    "minus": phrases("minus | odjąć"),
    "divided_by": phrases("podzielić na | dzielone przez | podzielone przez"),
    "part_of": phrases("z | w | na"),
    "whole_chart": phrases(
        "wzoru | schematu | całego wzoru | na schemacie | ze wzoru | na wzorze | mapy | w schemacie"
    ),
    "concluding": phrases("więc | czyli"),
    "if_words": phrases("jak | gdy | gdyby"),
    "left": phrases("z lewej | po lewej | lewej | lewy | lewym | lewa"),
    "right": phrases("z prawej | po prawej | prawej | prawy | prawym | prawa"),
    "own_voice": phrases("ale ja | a ja"),
}
