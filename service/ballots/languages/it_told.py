"""Italian votes told in a roundabout way, and talk that only sounds like a vote."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THAT = "quello | quella | questo | questa | quel numero | quella pagina | quello lì"
_FACT = """
compleanno | età | data di nascita | anno di nascita | numero civico | numero di scarpe | numero fortunato |
anniversario | numero di casa
"""

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "saying": phrases(
        "aveva scritto | ha scritto | hanno scritto | ha commentato | aveva messo | ha messo"
    ),
    "own_voice": phrases("voglio | vorrei | scelgo | preferisco | e voglio"),
    "printed": phrases("rivista | giornale | libro | romanzo | catalogo"),
    "letting_choose": each_of(
        "lasciato | fatto", "scegliere | decidere", "a mia | a mio | al | alla | mia |", "* |"
    ),
    "voting": phrases("voto | il mio voto | scelgo | votare | la mia scelta"),
    "rated": phrases("do un | è un | merita un"),
    "finished": phrases("finita | fatta | completata"),
    "halving": phrases("metà di | la metà di"),
    "any_of": phrases("qualsiasi | qualcosa | qualunque"),
    "torn": phrases("indecisa | indeciso | dubbio | combattuta | scegliere"),
    "other_after": phrases(
        "del disco | dell'album | della lista | in tutto | in totale | alla tombola | al lotto"
    )
    + phrases("al giorno | a sera | la sera"),
    "choice_after": phrases("deciso | è deciso | ho deciso"),
    "winning": phrases("vince | ha vinto"),
    "wondering": phrases("se il | se la | se è | cosa | come"),
    "again": phrases("ancora | di nuovo | un'altra volta"),
    "named_before": phrases("""
        d'accordo con | concordo con | concordo con la | concordo con il | d'accordo con la |
        d'accordo con il
        """),
    "answered": phrases("altrimenti | sennò")
    + phrases("se sì | in tal caso | in quel caso | se è così | se no | allora"),
    "today": phrases("oggi | domani"),
    "wishing": each_of("se", "solo | io |", "potessi | fossi | avessi | osassi")
    + phrases(
        """
        mi sarebbe piaciuta | mi sarebbe piaciuto | avrei voluto | avrei preferito | magari potessi | vorrei poter |
        peccato per la
        """
    ),
    "turning": phrases("ma | però | vabbè | comunque | pazienza | allora"),
    "reported_before": each_of(
        "avrei | io avrei | avremmo | stavo per | quasi",
        "detto | scelto | votato | votato per | preso | messo | chiesto | dire | votare | scegliere",
        "la | il |",
    )
    + each_of(
        "amiche | amici | figlie | loro | tutti | tutte | voi",
        "hanno | avete",
        "detto | scelto | votato | preso",
    )
    + phrases("avevi detto | hai detto | credo fosse la | credo fosse il | era la | era il"),
    "reported_after": phrases(
        "un giorno | prima o poi | una di queste volte | la prossima volta | più avanti"
    )
    + each_of("è | è già | è stata | già", "fatta | presa | andata | occupata"),
    "sum_after": phrases("al quadrato | al cubo"),
    "it_is": phrases("ci sono | fa | fanno | sono | è | siamo a"),
    "weather": phrases("qui | fuori | all'ombra | gradi | in casa"),
    "other_before": each_of(
        "ho | avevo | abbiamo",
        "iniziato | cominciato | finito",
        "da | dal | dalla | con la | con il | da in | a",
    )
    + phrases("ora sono alla | adesso sono alla | ora sono a | sono arrivata alla")
    + phrases(
        "oggi è il | oggi è già il | siamo al | siamo già al | oggi ne abbiamo | qui fa | qui fanno | qui ci sono | qui siamo a | da noi fa | da noi ci sono | seduta | ciclo"
    ),
    "owning": phrases("mio | mia | miei | mie | nostro | nostra | suo | sua"),
    "own_piece": each_of("del | della | dei | delle", "mio | mia | miei | mie | nostro | nostra"),
    "whereabouts": phrases(
        "sono | ancora | ferma | fermo | arrivata | arrivato | sto | ora | adesso | già | appena | finita | finito | bloccata | siamo"
    ),
    "being": phrases("hanno | ha | sono | compie | compiono | avevano"),
    "choice_before": each_of(
        "metti | mettimi | mettete | segna | segnami | metto",
        "una | un | il | la | una bella",
        "crocetta | croce | puntino | stella | spunta | x | segno | nome | bandierina",
        "su | sulla | sul | vicino alla | accanto alla | alla | per la",
    )
    + each_of(
        "passiamo | andiamo | saltiamo | vai | passa | salta | andate",
        "a | alla | al | sulla | con la",
    )
    + phrases("dai | dai la | forza | forza la | vai | vai con la | avanti con la | su la"),
    "concluding": phrases(
        "ma meglio | ma preferibilmente | preferibilmente | ma preferisco | soprattutto | di preferenza | ma soprattutto | meglio"
    ),
    "pointing_back": each_of(
        "ecco | è | quindi ecco | sarà | questo è | quello è | eccolo",
        "il mio | la mia | il | la",
        "voto | numero | pagina | scelta | risposta",
    )
    + each_of(
        "usa | usate | prendi | prendete | facciamo | fai | scegli | vota | allora | quindi | metti | voto per | voglio",
        _THAT,
    )
    + phrases(
        "quella per favore | quello per favore | quella grazie | bel regalo | come regalo | per il mio compleanno | è un segno | sarà un segno | ve lo dico | faccio così | un bel regalo"
    ),
    "own_facts": each_of("il mio | la mia | mio | mia | il | l' | l'", _FACT)
    + each_of(
        "il compleanno | l'età | il numero civico | compleanno | età",
        "di | del | della",
        "* | mia * | mio * | mie *",
    )
    + each_of("il numero di | quanti | quante", "* | * *", "che ho | ho"),
    "as_named": phrases("come | uguale a | stessa di | lo stesso di | idem come"),
    "described": each_of(
        "quella | la pagina | il pezzo | il quadratino | quello",
        "con il | con la | con i | con l' | dove c'è | dove sta | che ha | del | della | col",
    ),
    "because": phrases("perché | perche | xké | xche | siccome | dato che"),
    "abstaining": phrases("decidi tu | scegli tu | fai tu da giudice")
    + phrases(
        "ma non so | ma non lo so | ma non sono sicura | ma boh | non so decidere | non so decidermi | sono indecisa | sono indeciso | non sono sicura | ci penso ancora | non riesco a decidere | sto ancora pensando"
    ),
    "asked_plainly": phrases(
        "sarà già | sicuramente già | immagino sia già | credo sia già | ormai sarà"
    ),
    "not_after": each_of("porta | mi porta", "sfiga | male | iella | sfortuna | jella")
    + phrases("no"),
    "neutral_after": phrases("anche se")
    + phrases(
        "no ? | no ?? | no lo sé | no sé | no so | no me | no te | no se | no está | no es | no è | no e | no la has | no l'hai | no estaba"
    ),
}
