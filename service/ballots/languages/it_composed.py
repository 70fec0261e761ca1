"""Italian phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THE = "la | il | lo | l | alla | al | per la | sulla |"
_TAKEN = """
presa | occupata | scelta | fatta | libera | disponibile | ricamata | uscita | detta | votata |
prenotata | chiesta | assegnata | finita | prendibile
"""
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "sopra | qui sopra | di sopra | qua sopra | prima | prima di me | sopra di me | precedente"
_SAID = """
dice | ha detto | ha scelto | ha votato | ha preso | ha messo | vota | sceglie | vuole | propone |
preferisce | ha scritto | prende
"""
_MINE = "mio * | mia * | mie * | miei * | nostro * | nostra * | mio * *"
_RANKS = "prima | seconda | terza | 1a | 2a | 3a | primo | secondo | terzo"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "everyday": phrases(
        """
        concordo | avete | fatto | scelto | seconda | terza | cambiate | sostituite | mettimi | segnami |
        onomastico | ragazze | vincere | ormai | magari | insomma | abbiamo | stessa | signora | avessi
        """
    ),
    "choice_before": each_of(
        "mettimi | segnami | scrivimi | mettetemi | segnatemi | iscrivimi | contami | aggiungimi",
        "il voto | pure | anche | per favore |",
        "per | su | sulla | sul | alla | al | a | con | nella | in |",
    )
    + each_of(
        "la mia | il mio | la nostra | la",
        "scelta | preferenza | voto | preferita | opzione",
        "ricade | cade | va | andrebbe | sarebbe | è | resta | rimane | sarà",
        "su | sulla | sul | alla | a | per la | la |",
    )
    + each_of(
        "mi | ci",
        "piacerebbe | farebbe piacere | farebbe felice | piacerebbe tanto | incuriosisce",
        "che facessi | che facessimo | che uscisse | vedere | se facessi | che fosse | tanto |",
    )
    + each_of(
        "ho | sento |",
        "un debole per | una cotta per | un feeling con | una predilezione per",
        "la | il |",
    )
    + each_of(
        "innamorata | innamorato | mi sono innamorata | attratta | incuriosita | affezionata | colpita | "
        "mi affido | sto | io sto | sono | io sono | siamo",
        "della | del | dalla | dal | alla | al | con la | con il | con | per la | per il | per",
    )
    + each_of(
        "facciamo | fai | puoi fare | potresti fare | potete fare | ricami | ricamiamo | ci fai",
        "anche | ora | subito |",
    )
    + each_of(_RANKS, "scelta | opzione | preferenza", ": | è | sarebbe | la |")
    + each_of(
        "di | come | per",
        "riserva | ripiego | scorta | seconda | prima | seconda scelta | alternativa",
    )
    + phrases(
        """
        preferibilmente | possibilmente | di preferenza | magari fosse | speriamo nella | spero nella |
        punto sulla | punto sul | tutto sulla | tutto sul | tutto su | dita incrociate per la | seconda |
        terza | forza | viva la | alé | il mio cuore va alla | buttiamoci sulla | butto lì
        """
    ),
    "fillers": each_of(
        "se",
        "è | fosse | sia",
        "già |",
        "presa | occupata | libera | scelta | fatta | disponibile",
        "la | il",
    ),
    "choice_after": phrases(
        """
        xfavore | xfav | x fav | perfav | pls | mi farebbe felice | mi farebbe piacere | mi piacerebbe tanto |
        ci sta | spacca | sarebbe top | sarebbe il top | sarebbe fantastico | sarebbe stupenda | se ti va
        """
    ),
    "first_choice": phrases("preferibilmente | possibilmente | come primo | primo"),
    "second_choice": phrases("di riserva | di ripiego | di scorta | riserva | come ripiego"),
    "second": phrases("riserva | di ripiego | di scorta | e se no | terza"),
    "neutral_after": each_of("con | in | per", "la | il |", "#") + phrases("alla # | al # | col #"),
    "not_before": each_of("e non | ma non | piuttosto che | anziché | meglio della", _THE)
    + each_of("non | mai", "la | il | per la"),
    "reported_before": phrases("d'accordissimo con * | d'accordissimo con")
    + phrases("mi hanno detto | mi ha detto | mi dicono | mi hanno consigliato | ho sentito")
    + each_of(
        "è | sarebbe | risulta",
        "già | ancora |",
        "libera | presa | occupata | disponibile | scelta | fatta",
        "la | il | la pagina",
    )
    + each_of("concordo | d'accordo | accordo", "con", "la | il | chi dice | chi ha detto |")
    + each_of(
        "signora | quella | ragazza | chi | quelli | amica | persona",
        "che |",
        "ha detto | dice | ha scelto | ha votato | dicono",
        "la | il |",
    )
    + each_of(
        "avete | hai | ha | hanno | abbiamo | ha qualcuno",
        "già | mai | ancora",
        "fatto | scelto | preso | ricamato | detto | votato",
        "la | il",
    ),
    "reported_after": each_of(
        "è | era | sarà | c'è", "già | ancora | stata | già stata | stata già | sempre |", _TAKEN
    )
    + each_of("già | ancora", _TAKEN)
    + phrases(
        "c'è ancora | c'è già | l'avete già | l'hanno già | l'ha già | è andata | è già andata | ancora c'è"
    ),
    "asked_later": each_of(
        "è | o è | era | sarà | c'è", "già | ancora | stata | già stata |", _TAKEN
    ),
    "pointing": each_of(
        "la pagina | quella | il numero",
        "del | della | con il | con la | col | di",
        "mio civico | mia età | mio compleanno | mia casa | numero di casa mia | mio anno",
    )
    + each_of(
        "la stessa | lo stesso | stessa pagina | stesso numero | uguale | idem | come",
        "di | della | del | dell | a | alla |",
        _OTHERS,
        _ABOVE,
    )
    + each_of(
        "come | quello che | quella che | ciò che | la stessa che | lo stesso che",
        "* | la * | mia * | mio * | il mio * | la mia * | * *",
        _SAID,
    )
    + each_of(
        "quello che | quella che | come | ciò che",
        _SAID,
        "mia | mio | la mia | il mio | la | il |",
        "*",
    )
    + each_of(
        "il giorno | l'età | la data | il numero | il compleanno | il mese | l'anno",
        "del | della | di",
        _MINE + "| * | nascita",
    )
    + phrases(
        "la mia età | i miei anni | il mio numero di casa | il mio civico | il giorno in cui sono nata"
    ),
    "withdrawn": each_of(
        "ritiro | togli | togliete | annulla | annullate | cancella | cancellate | ignora | ignorate | "
        "elimina | eliminate | non contate | non considerate | dimenticate",
        "il mio | il | la mia | il mio primo",
        "voto | commento | preferenza | messaggio | scelta | numero",
    ),
    "abstaining": phrases(
        """
        per me è uguale | è uguale | per me è lo stesso | qualsiasi va bene | una vale l'altra |
        sorprendici | sorprendimi | sorprendeteci | scegli tu | scegliete voi | decidi tu |
        quella che vuoi | quella che volete | quello che vuoi | fai tu | fate voi | come vuoi | a tuo gusto |
        tutte belle | non so decidere | non riesco a decidere | non so quale scegliere
        """
    ),
    "kinds": each_of(
        "una | sulla | verso la | nella | intorno alla | una qualsiasi della",
        "ventina | trentina | quarantina | cinquantina | sessantina",
    )
    + each_of(
        "dalle parti | una | qualcuna | una qualsiasi",
        "del | della | nel | sul",
        "bordo | riga in basso | "
        "riga in alto | fila in basso | fila in alto | lato destro | lato sinistro",
    ),
    "replacing": phrases(
        """
        cambiate | cambia | cambiare | cambiatemi | cambiami | sostituite | sostituisci | sostituire |
        sostituisco | modifico | modificate | modifica | scambio | scambia | scambiate | rimpiazza
        """
    ),
    "replaced_by": each_of("con | in | a | per | alla", "la | il | una | un |")
    + phrases("col | al | alla | nella | nel"),
    "roughly_before": each_of(
        "più o meno | intorno | attorno | dalle parti | vicino | nei dintorni | nei pressi | all'incirca | circa",
        "sulla | alla | al | della | del | la | il | a |",
    )
    + phrases("verso la | verso il | sulla trentina"),
    "other_before": phrases(
        "ci vediamo il | ci troviamo il | appuntamento il | parto il | il prossimo"
    )
    + each_of("su | tela | con | in", "aida | lino | tela | emiane", "da | di |")
    + each_of("vinto | perso | pareggiato | vinciamo | vince | perde", "# a | # - |")
    + each_of("camminato | corso | percorso | pedalato | fatto", "ben | circa | quasi | per")
    + each_of("nata | nato", "il | il giorno | nel")
    + phrases(
        """
        stanza | camera | letto | reparto | autobus | l'autobus | bus | pullman | treno | corriera |
        puntata | episodio | ore
        """
    ),
    "other_after": phrases(
        "a # | a zero | passi | fermate | capi di | fili di | ct | chilometri a piedi"
    ),
    "part_of": phrases("del mio | della mia | del libro | di questo"),
    "whole_chart": each_of(
        "dello | della | del | di tutto lo | di tutto il | di questo | del tuo",
        "schema | griglia | ricamo | "
        "mappa | quadro | disegno | lavoro | tabella | progetto | modello",
    ),
    "last": phrases("ultimissima | l'ultimissima | l'ultima | ultima di tutte"),
    "top": phrases("in alto tutto | tutto in alto | in altissimo | in cima | superiore"),
    "bottom": phrases("in basso tutto | tutto in basso | in fondo | inferiore"),
    "left": phrases("sinistro | tutta a sinistra | tutto a sinistra"),
    "right": phrases("destro | tutta a destra | tutto a destra"),
    "middle": phrases(
        "quella nel mezzo | nel mezzo | in mezzo | proprio al centro | quella centrale | centralissima"
    ),
    "times": phrases("per | x | moltiplicato per"),
    "divided_by": phrases("diviso per"),
}
