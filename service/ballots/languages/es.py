"""Spanish, as viewers write it under a video, in Spain and the Americas."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import es_choices, es_composed, es_counts, es_numbers, es_told
from service.ballots.languages.spelling import extended, one_after_another

_PLAIN = Language(
    code="es",
    plural_s=True,
    everyday=phrases(
        """
        yo | el | la | los | las | es | y | que | de | del | al | por | para | con | sin | mi |
        mis | tu | te | me | se | lo | le | nos | os | muy | más | pero | porque | sí | si | no |
        hola | gracias | favor | porfa | porfi | plis | saludos | besos | buenas | buenos | días |
        tardes | quiero | quisiera | voto | voy | vamos | elijo | prefiero | creo | gusta |
        gustaría | encanta | está | estoy | esta | este | eso | bonito | bonita | hermoso |
        hermosa | precioso | preciosa | todo | todos | todas | cuando | como | qué | cuál | ya |
        también | ahora | hoy | siempre | hay | tengo | tiene | desde | sea | digo | diría |
        mejor | menos | cualquiera | alguien | arriba | abajo | esquina | derecha | izquierda |
        última | medio | marido | suerte | vale | pues | ay | ojalá | mucho | muchas | mil |
        abrazo | guapa | lindo | linda | chicas | años | año | ha | han | he | una | un | quién |
        empieza | empezar | otra | entre | luego | así | voten | mundo | llevo | jaja | jajaja |
        veo | o | número | les | esa | ese | eres | soy | hace | parece | cada | nada | algo |
        aquí | allí | solo | dios | ni | lado | tan | tanto | poco | otro | otras | otros | unos |
        unas | su | sus | nuestro | nuestra | vuestra | donde | cuanto | quien | cual | porqué |
        aunque | hasta | después | antes | mientras | durante | contra | según | era | eran |
        fue | ser | estar | están | estaba | son | somos | había | hemos | tener | tenía | hacer |
        haces | dice | decir | puede | puedo | quiere | veces | vez | semana | noche | noches |
        mañana | gente | cosa | cosas | trabajo | nunca | nadie | ninguna | alguna | mejores |
        mío | mía | ella | ellos | ustedes | vosotras | amiga | señora | bien | oye | venga |
        anda | ves | mira | sorpresa | ganas | verdad | aún | todavía | bordar | bordando | hilo |
        página | va | van | eh | vi | video | vídeo | quería | amigas | tarde | par | segundo |
        doy | ti | ganar | salga
        """
    ),
    numbers=es_numbers.numbers(),
    ordinals=es_numbers.ordinals(),
    ordinal_endings=frozenset({"o", "a", "er"}),
    page=phrases(
        "página | páginas | pag | pág | págs | p | pg | hoja | página número | pag num | página nro"
    ),
    number=phrases("número | num | nro | nro. | núm | núm. | no. | n.o. | n. | números | numerito"),
    fillers=phrases(
        """
        la | el | las | los | lo | mi | esa | ese | esta | este | pues | bueno | definitivamente |
        claramente | seguro | quizá | quizás | tal vez | a lo mejor | por favor | porfa |
        sin duda | siempre | también | solo | sólo | simplemente | directamente | otra vez |
        de nuevo | hoy | ahora | esta vez | preciosa | bonita | linda | bella | famosa | sí | ya |
        entonces | mejor | n | sin pensarlo | sin dudarlo | personalmente | obviamente |
        evidentemente | sinceramente | al | porfi | eh | mmm | finalmente | al final | voto |
        si no | primero | para empezar | nuevamente | querida | buena | gran
        """
    ),
    choice_before=phrases(es_choices.CHOICE_BEFORE),
    choice_after=phrases(es_choices.CHOICE_AFTER),
    other_before=phrases(es_counts.OTHER_BEFORE),
    other_after=phrases(es_counts.OTHER_AFTER),
    weak_before=phrases(es_counts.WEAK_BEFORE),
    weak_after=phrases(es_counts.WEAK_AFTER),
    neutral_before=phrases(es_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(es_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        número de la suerte | número de la suerte es | número de suerte | número de suerte es |
        de la suerte es | de la suerte siempre ha sido | número favorito | número favorito es |
        número preferido | número preferido es | número fetiche | número fetiche es | número es |
        numerito de la suerte es | mi número | mi numerito es | favorito es el | dorsal |
        de la suerte | número de la buena suerte | número mágico | número mágico es
        """
    ),
    not_before=phrases(es_choices.NOT_BEFORE),
    not_after=phrases(es_choices.NOT_AFTER),
    correction=phrases(es_choices.CORRECTION),
    soft_correction=phrases(
        """
        mejor | no , | no . | ... no | .. no | … no | no no | perdón | bueno | en realidad |
        al final | finalmente | digo | más bien | venga | ahora sí | vale | ahora | esta vez |
        hoy
        """
    ),
    own_voice=phrases("yo | pero | nosotros | voto | prefiero | así que"),
    if_words=phrases("si"),
    being=phrases("es | era | cae"),
    either=phrases(
        "o | u | o bien | o si no | o quizás | o quizá | o tal vez | o sino | o incluso | ya sea"
    ),
    also=phrases("y | e | & | más | y también | así como | y luego | y quizás | junto con | y la"),
    first_choice=phrases(
        """
        primera opción | 1a opción | primera elección | primera opción es | opción principal |
        como primera opción | en primer lugar | primera preferencia | de primeras | como primera
        """
    ),
    second_choice=phrases(
        """
        segunda opción | 2a opción | segunda elección | segunda opción es | como segunda opción |
        de segunda | segunda | en segundo lugar | segunda preferencia | de reserva | plan b |
        como alternativa | como segunda | de repuesto
        """
    )
    + phrases(es_choices.TAKEN),
    second=phrases(
        """
        si no | sino | y si no | o si no | en su defecto | segunda opción | segunda |
        en segundo lugar | luego | después | como alternativa | alternativamente | de reserva |
        plan b | seguida de | seguido de | en caso contrario | en último caso | y después |
        y luego
        """
    )
    + one_after_another(es_choices.TAKEN_AFTER, es_choices.TAKEN),
    condition=phrases(es_choices.CONDITION),
    depends=phrases(
        """
        depende | según lo que | según cuál | según si | la que tenga | a menos que | salvo que |
        siempre que | siempre y cuando | solo si
        """
    ),
    ranked=phrases(
        "en ese orden | en este orden | por orden | por orden de preferencia | orden de preferencia"
    ),
    tally_before=phrases("votos para | votos por | votos a | votos al | personas por"),
    topics=phrases(
        """
        talla | aguja | agujas | hilo | hilos | hebra | hebras | tela | lino | aida |
        color | colores | hora | horas | precio | cuesta | minutos | grados | puntadas | puntos |
        madejas | bastidor | lámpara | lupa | tren | autobús | barco | episodio | temporada |
        capítulo | canción | película | receta | cm | mm | vatios | edad | años | tiempo
        """
    ),
    ages=phrases(
        """
        mi edad | año en que nací | año de mi nacimiento | año que nací | día que nací |
        día en que nací | fecha de nacimiento | mi cumpleaños | mi cumple | nací el | nací en |
        los años que tengo | los que cumplo
        """
    ),
    reported_before=phrases(es_choices.REPORTED_BEFORE),
    family_before=phrases(es_choices.FAMILY_BEFORE),
    reported_after=phrases(es_choices.REPORTED_AFTER),
    saying=phrases(
        """
        dice | dijo | decía | dicen | ha dicho | grita | gritó | pregunta | preguntó | escribe |
        escribió | repite
        """
    ),
    asking=phrases(es_choices.ASKING),
    suggesting=phrases(es_choices.SUGGESTING),
    # Number words that are words elsewhere: once and quince (en), dos and tres (fr), siete (it),
    # doce (pt).
    doubtful=phrases("dos | tres | siete | once | doce | quince"),
    roughly_before=phrases(
        """
        por ahí por | por ahí | por allá por | sobre la | alrededor de | aproximadamente |
        más o menos | cerca de | casi | como | hacia | por ahí de | en torno a | rondando |
        alrededor del | cercana a | próxima a | por la zona de | a eso de | tirando a | unas |
        como por | sobre el
        """
    ),
    roughly_after=phrases(
        """
        más o menos | aproximadamente | o así | o por ahí | o algo así | y pico | o cerca |
        o alrededor | aprox | o la de al lado
        """
    ),
    between=phrases("entre | de entre | en algún punto entre"),
    through=phrases("a | al | hasta | hasta la | hasta el"),
    question_before=phrases(
        "de | de las | entre | hasta | son | las | todas las | solo hay | hay | hasta la"
    ),
    goes_on=phrases("es | también | sería | parece | era | está bien también"),
    relative_before=phrases(
        """
        al lado de | lado de | junto a | pegada a | enfrente de | frente a | vecina de |
        contigua a | que toca | colindante con
        """
    ),
    relative_after=phrases(
        """
        empezando por el final | desde el final | desde arriba | desde abajo |
        contando desde el final
        """
    ),
    above=phrases("encima de | arriba de | sobre | justo encima de | por encima de"),
    below=phrases("debajo de | abajo de | bajo | justo debajo de | por debajo de"),
    later=phrases(
        """
        a la derecha de | derecha de | después de | tras | la siguiente a | siguiente a |
        que sigue a
        """
    ),
    earlier=phrases(
        "a la izquierda de | izquierda de | antes de | la anterior a | anterior a | previa a"
    ),
    withdrawn=phrases(es_choices.WITHDRAWN) + one_after_another(es_choices.WITHDRAWN, "voto"),
    abstaining=phrases(es_choices.ABSTAINING),
    pointing=phrases(es_choices.POINTING),
    agreeing=phrases(
        """
        de acuerdo | yo también | igual | lo mismo | sí | exacto | exactamente | totalmente | +1 |
        ídem | eso | apoyo | me sumo | opino igual | la misma | claro | estoy contigo |
        iba a decir | coincido
        """
    ),
    kinds=phrases(es_choices.KINDS),
    first=phrases("primera | primero | primer | 1a | 1o | primerísima"),
    last=phrases("última | último | ultimísima | final"),
    corner=phrases("esquina | esquinas | esquinita | rincón | rincon | canto"),
    top=phrases(
        "arriba | superior | de arriba | arriba del todo | parte de arriba | alta | hasta arriba"
    ),
    bottom=phrases(
        "abajo | inferior | de abajo | abajo del todo | parte de abajo | baja | hasta abajo"
    ),
    left=phrases("izquierda | izquierdo | de la izquierda | a la izquierda | izda | izq"),
    right=phrases("derecha | derecho | de la derecha | a la derecha | dcha | dch"),
    middle=phrases(
        """
        medio | del medio | de en medio | en medio | en el medio | en el mismo medio |
        de enmedio | centro | del centro | en el centro | central | justo en el centro |
        mero centro | en el mero medio | justo en medio
        """
    ),
    row=phrases("fila | hilera | renglón"),
    column=phrases("columna"),
    times=phrases("por | veces | multiplicado por"),
    plus=phrases("más"),
    minus=phrases("menos"),
    divided_by=phrases("dividido por | dividido entre | entre"),
    sum_before=phrases(
        """
        la mitad de | mitad de | el doble de | doble de | un tercio de | un cuarto de |
        la raíz de
        """
    ),
    part_of=phrases("de | del"),
    whole_chart=phrases(
        """
        del patrón | del gráfico | del esquema | del mapa | de la carta | de todo |
        del diseño | de la cuadrícula
        """
    ),
    replacing=phrases(
        """
        cambia | cambiar | cambio | cambie | cambiad | pasa | reemplaza | sustituye
        """
    ),
    replaced_by=phrases("por | a | al"),
    concluding=phrases("así que | entonces | por tanto"),
    asked_later=phrases(
        """
        está cogido | está cogida | está libre | ya está cogido | ya lo han dicho |
        sigue libre
        """
    ),
    told_from_last=phrases(
        """
        penúltima | antepenúltima | la penúltima | segunda por el final |
        segunda empezando por el final | antes de la última
        """
    ),
)

LANGUAGE = extended(extended(_PLAIN, es_composed.GROUPS), es_told.GROUPS)
