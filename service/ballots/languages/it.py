"""Italian, as viewers write it under a video."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import it_choices, it_composed, it_counts, it_numbers, it_told
from service.ballots.languages.spelling import extended, one_after_another

_PLAIN = Language(
    code="it",
    everyday=phrases(
        """
        io | il | lo | gli | la | le | di | che | e | ho | hai | ha | è | sono | per | con | non |
        mi | ti | ci | vi | si | se | una | un | del | della | dei | delle | al | alla | nel |
        nella | dalla | sulla | questo | questa | quella | quello | mio | mia | tuo | tua | più |
        ma | anche | come | quando | perché | grazie | ciao | buongiorno | buonasera | bello |
        bella | bellissimo | bellissima | voto | vorrei | scelgo | direi | credo | penso | piace |
        piacerebbe | tutti | tutte | sempre | ancora | già | poi | oppure | anzi | oggi | brava |
        complimenti | favore | abbraccio | saluti | baci | dai | allora | marito | angolo | alto |
        basso | destra | sinistra | ultima | centro | qualcuno | anni | meglio | tranne | scegli |
        fare | cosa | così | sì | molto | tanto | stesso | sopra | sotto | accanto | circa |
        ogni | senza | voi | altrimenti | dicono | vogliono | facciamo | andiamo | iniziamo |
        partiamo | ragazze | dire | volevo | mille | sia | stavolta | migliore | bravissima |
        mitica | lavoro | meraviglia | settimana | prossima | video | quale | nessuno | niente |
        vedere | presto | o | numero | mezzo | no | tu | me | te | dal | nei | agli | bel | cara |
        carissime | tutto | proprio | c'è | cos'è | né | quanto | quanta | tanta | poco | altro |
        altra | altre | suo | sua | nostro | nostra | vostra | loro | dove | chi | cui | fino |
        dopo | mentre | durante | contro | era | erano | stata | stato | essere | fa | fanno |
        dice | dico | può | posso | vuole | voglio | vedo | volta | volte | sera | notte |
        domani | gente | cose | amiche | amica | mai | nessuna | qualche | alcuni | migliori |
        lei | lui | essa | bene | bravi | brave | beh | eh | mamma | prego | aspetto | curiosa |
        ricamo | ricamare | filo | dell' | all' | un' | l'ho | m'ha | dall'inizio | d'accordo |
        anch'io | com'è | quest'anno | va | qui | pagina | su | belle | grande | solo | vai |
        ora | da | ai | do | quelle | ben | andrei | vabbè | vincerà
        """
    ),
    numbers=it_numbers.numbers(),
    ordinals=it_numbers.ordinals(),
    ordinal_endings=frozenset({"o", "a"}),
    page=phrases(
        """
        pagina | pagine | pag | pagg | pg | p | paginetta | pagina numero | pag num | pagina nr |
        foglio
        """
    ),
    number=phrases("numero | num | nr | nr. | no. | n. | numeri | numerino"),
    fillers=phrases(
        """
        la | il | lo | le | l | mia | mio | questa | quella | proprio | decisamente |
        assolutamente | sicuramente | sicuro | ovviamente | certamente | forse | magari |
        per favore | senza dubbio | sempre | anche | solo | soltanto | semplicemente |
        direttamente | di nuovo | ancora | oggi | ora | adesso | stavolta | bella | bellissima |
        bel | famosa | sì | allora | quindi | meglio | n | personalmente | sinceramente |
        comunque | alla fine | se non | se no | prima | invece | ehm | mmm | piccola | grande |
        cara | buona | subito | volentieri | un bel | una bella | bellissimo | numero
        """
    ),
    choice_before=phrases(it_choices.CHOICE_BEFORE)
    + phrases(it_choices.GOING)
    + one_after_another(it_choices.GOING, it_choices.LEADING_TO),
    choice_after=phrases(it_choices.CHOICE_AFTER),
    other_before=phrases(it_counts.OTHER_BEFORE),
    other_after=phrases(it_counts.OTHER_AFTER),
    weak_before=phrases(it_counts.WEAK_BEFORE),
    weak_after=phrases(it_counts.WEAK_AFTER),
    neutral_before=phrases(it_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(it_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        numero fortunato | numero fortunato è | numero fortunato è il | numero preferito |
        numero preferito è | mio numero | mio numero è | portafortuna | portafortuna è |
        numero portafortuna | numero portafortuna è | numero del cuore | numero del cuore è |
        numero porta fortuna | numero porta fortuna è | numero di maglia |
        fortunato è sempre stato
        """
    ),
    not_before=phrases(it_choices.NOT_BEFORE),
    not_after=phrases(it_choices.NOT_AFTER),
    correction=phrases(it_choices.CORRECTION),
    soft_correction=phrases(
        """
        meglio | invece | piuttosto | no , | no . | ... no | .. no | in realtà | alla fine | ok |
        facciamo | va bene | ora | adesso | stavolta | oggi
        """
    ),
    own_voice=phrases("io | ma | noi | voto | però | quindi"),
    if_words=phrases("se"),
    being=phrases("è | era | cade"),
    either=phrases(
        "o | oppure | o magari | o forse | ovvero | o anche | o altrimenti | oppure anche | sia"
    ),
    also=phrases("e | ed | & | più | e anche | e poi | e magari | e la | nonché | insieme alla"),
    first_choice=phrases(
        """
        prima scelta | 1a scelta | prima scelta è | come prima scelta | prima opzione |
        come prima | prima | in primis | scelta principale | al primo posto | per prima |
        di preferenza
        """
    ),
    second_choice=phrases(
        """
        seconda scelta | 2a scelta | seconda scelta è | come seconda scelta | seconda opzione |
        come seconda | seconda | al secondo posto | di riserva | come riserva | piano b |
        in alternativa | come alternativa | per seconda
        """
    )
    + phrases(it_choices.TAKEN),
    second=phrases(
        """
        altrimenti | sennò | senno | se no | in alternativa | alternativa | poi | e poi | dopo |
        seconda scelta | seconda | in seconda battuta | di riserva | piano b | al limite |
        eventualmente | diversamente | in caso contrario | seguita da | seguita dalla |
        in subordine | o in alternativa | al secondo posto | come seconda | o al limite
        """
    )
    + one_after_another(it_choices.TAKEN_AFTER, it_choices.TAKEN),
    condition=phrases(it_choices.CONDITION),
    depends=phrases(
        """
        dipende | a seconda | quella che ha | a meno che | a patto che | a condizione che |
        sempre che | purché | solo se
        """
    ),
    ranked=phrases(
        "in quest'ordine | in questo ordine | nell'ordine | in ordine | in ordine di preferenza"
    ),
    tally_before=phrases("voti per | voti alla | voti a | persone per | voti al"),
    topics=phrases(
        """
        taglia | ago | aghi | filo | fili | capi | tela | lino | aida | colore | colori |
        ora | ore | prezzo | costa | minuti | gradi | crocette | punti | matasse | telaio |
        lampada | lente | treno | autobus | traghetto | puntata | stagione | capitolo | canzone |
        film | ricetta | cm | mm | watt | età | anni | tempo
        """
    ),
    ages=phrases(
        """
        mia età | anno di nascita | anno della mia nascita | data di nascita |
        giorno della mia nascita | mio compleanno | sono nata nel | sono nato nel |
        gli anni che ho | gli anni che compio | miei anni
        """
    ),
    reported_before=phrases(it_choices.REPORTED_BEFORE),
    family_before=phrases(it_choices.FAMILY_BEFORE),
    reported_after=phrases(it_choices.REPORTED_AFTER),
    saying=phrases(
        """
        dice | disse | ha detto | diceva | dicono | urla | grida | chiede | scrive | risponde |
        ripete | vuole
        """
    ),
    asking=phrases(it_choices.ASKING),
    suggesting=phrases(it_choices.SUGGESTING),
    # Number words that are words elsewhere: due (en), sei (de, pt, and Italian "are"), otto (a name
    # in German); lotto is the game, also l'otto.
    doubtful=phrases("due | sei | otto | lotto"),
    roughly_before=phrases(
        """
        circa | all'incirca | intorno alla | intorno al | intorno a | attorno alla | attorno a |
        più o meno | verso la | verso il | vicino alla | vicino a | dalle parti della |
        dalle parti di | nei pressi della | sulla zona della | quasi | zona
        """
    ),
    roughly_after=phrases(
        """
        circa | all'incirca | più o meno | o giù di lì | o lì vicino | o lì intorno |
        o quella vicino | o simili | o dintorni
        """
    ),
    between=phrases("tra | fra | compresa tra | compreso tra | qualcosa tra"),
    through=phrases("a | al | fino a | fino alla"),
    question_before=phrases(
        "su | di | delle | tra | fino a | sono | le | tutte le | tutte e | solo"
    ),
    goes_on=phrases("è bella | è carina | anche | sarebbe | sembra | era | non è male"),
    relative_before=phrases(
        """
        accanto a | accanto alla | accanto all | di fianco a | di fianco alla | a fianco della |
        attaccata alla | di fronte alla | vicina alla | confinante con | che tocca |
        adiacente alla | affianco alla
        """
    ),
    relative_after=phrases(
        "dalla fine | partendo dalla fine | dall'alto | dal basso | contando dalla fine"
    ),
    above=phrases(
        "sopra | sopra a | sopra alla | al di sopra della | appena sopra | proprio sopra"
    ),
    below=phrases(
        "sotto | sotto a | sotto alla | al di sotto della | appena sotto | proprio sotto"
    ),
    later=phrases(
        """
        destra della | destra di | a destra della | a destra di | dopo la | successiva alla |
        che segue | subito dopo | seguente alla
        """
    ),
    earlier=phrases(
        """
        sinistra della | sinistra di | a sinistra della | a sinistra di | prima della | prima di |
        precedente alla | che precede
        """
    ),
    withdrawn=phrases(it_choices.WITHDRAWN) + one_after_another(it_choices.WITHDRAWN, "voto"),
    abstaining=phrases(it_choices.ABSTAINING),
    pointing=phrases(it_choices.POINTING),
    agreeing=phrases(
        """
        d'accordo | anch'io | anche io | concordo | idem | sì | esatto | esattamente | quoto |
        +1 | stessa cosa | la stessa | pure io | mi associo | condivido | approvo |
        stavo per dire | certo
        """
    ),
    kinds=phrases(it_choices.KINDS),
    first=phrases("prima | primo | primissima | 1a | 1o"),
    last=phrases("ultima | l'ultima | ultimo | l'ultimo | ultimissima | finale"),
    corner=phrases(
        """
        angolo | l'angolo | angoli | angolino | spigolo | nell'angolo | all'angolo | dell'angolo |
        dall'angolo
        """
    ),
    top=phrases("alto | in alto | superiore | in cima | sopra | lassù | tutto in alto"),
    bottom=phrases("basso | in basso | inferiore | in fondo | sotto | laggiù | tutto in basso"),
    left=phrases("sinistra | sinistro | a sinistra | di sinistra | sx"),
    right=phrases("destra | destro | a destra | di destra | dx"),
    middle=phrases(
        """
        centro | al centro | del centro | nel centro | in centro | centrale | mezzo | in mezzo |
        nel mezzo | di mezzo | esattamente al centro | proprio al centro | proprio in mezzo
        """
    ),
    row=phrases("riga | fila"),
    column=phrases("colonna"),
    times=phrases("per | volte | moltiplicato per"),
    plus=phrases("più"),
    minus=phrases("meno"),
    divided_by=phrases("diviso"),
    sum_before=phrases(
        """
        la metà di | metà di | il doppio di | doppio di | un terzo di | un quarto di |
        radice di
        """
    ),
    part_of=phrases("di | del | della | dello | dell'"),
    whole_chart=phrases(
        """
        dello schema | del disegno | della mappa | della griglia | di tutto | del ricamo |
        del lavoro
        """
    ),
    replacing=phrases("cambia | cambio | cambiare | scambia | scambio | sostituisci | passo"),
    replaced_by=phrases("con | in | a | al | per"),
    concluding=phrases("quindi | allora | dunque"),
    asked_later=phrases(
        """
        è preso | è presa | è già preso | è libero | è ancora libero | è ancora libera
        """
    ),
    told_from_last=phrases(
        "penultima | la penultima | terzultima | penultimo | seconda dalla fine | prima dell'ultima"
    ),
)

LANGUAGE = extended(extended(_PLAIN, it_composed.GROUPS), it_told.GROUPS)
