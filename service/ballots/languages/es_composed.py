"""Spanish phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THE = "la | el | lo | al | a la | por la | por el | en la |"
_TAKEN = """
cogida | pillada | tomada | ocupada | elegida | pedida | reservada | hecha | bordada | dicha |
escogida | libre | disponible | votada | repetida | apartada | agarrada | terminada
"""
_TOOK = """
salió | fue | hicieron | hiciste | eligieron | pidieron | dijeron | votaron | bordaron | han dicho |
han pedido | han elegido | han hecho | ha salido | ha sido | cogieron | tomaron | escogieron
"""
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "de arriba | arriba | anterior | de antes | aquí arriba | de más arriba | de aquí arriba"
_SAID = """
dice | dijo | diga | ha dicho | eligió | elija | votó | vote | puso | pidió | escogió | quiere |
quiera | prefiera | decida | comentó
"""
_MINE = "mi * | mis * | nuestro * | nuestra * | mi * *"
_RANKS = "primera | segunda | tercera | 1a | 2a | 3a | 1ra | 2da | 3ra"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "everyday": phrases(
        """
        segunda | tercera | cambio | cambien | elegí | votó | dijo | pedido | santo | señora | comadre |
        chiquis | órale | ahorita | híjole | vos | che | bordas | bordan | querés | podés | dale | tía | uf | coincido
        """
    ),
    "choice_before": each_of(
        "ponme | apúntame | anótame | pónganme | apuntadme | anótenme | ponedme | márcame | méteme | "
        "apúntenme",
        "a mí | mi voto | de favor | por favor |",
        "en | con | a | para | por | de |",
    )
    + each_of(
        "mi | nuestro | nuestra | el | la",
        "elección | voto | opción | favorita | preferida | apuesta | decisión | página",
        "sería | es | será | va a ser | va para | va por | recae en | cae en | se va a | va a | sigue siendo",
    )
    + each_of(
        "me | nos",
        "encantaría | gustaría | haría ilusión | haría feliz | apetece | apetecería",
        "que hicieras | que hicieran | que fuera | que saliera | que bordaras | que ganara | ver | mucho |",
    )
    + each_of(
        "tengo | siento |",
        "debilidad por | un flechazo con | corazonada con | un presentimiento con",
    )
    + each_of(
        "me enamoré | me he enamorado | enamorada | prendada | me prendé | me inclino | me muero | voto",
        "de | por",
        "la | el |",
    )
    + each_of("yo le | le | yo", "voy a | apuesto a | voto a | entro a | pongo a | echo a")
    + each_of("estoy | estamos | soy | me quedo", "por | con | a favor de | de parte de")
    + each_of(
        "hacemos | haces | puedes hacer | podrías hacer | pueden hacer | bordamos | empezamos | "
        "podemos hacer | nos haces | me haces",
        "con | por | ya |",
    )
    + each_of(_RANKS, "opción | elección | preferencia | voto", ": | es | sería | la |")
    + each_of(
        "de | como",
        "reserva | suplente | repuesto | segunda | primera | segunda opción | alternativa",
    )
    + phrases(
        """
        preferiblemente | preferentemente | a poder ser | de preferencia | prefiero mil veces | todo a |
        ojalá fuera | ojalá toque | que toque | que nos toque | mi voto para | x mí | x mi | por mi |
        le voy a | le voy al | le apuesto al | le apuesto a | segunda | tercera | yo quiero ver |
        manda | mándate | échale a | échate | aviéntate | rífate | va mi voto a | va mi voto por
        """
    ),
    "fillers": each_of(
        "si",
        "ya |",
        "está | esta | sigue | estuviera",
        "cogida | tomada | ocupada | hecha | pillada | elegida | libre | disponible",
        "la | el",
    ),
    "choice_after": each_of(
        "estaría | sería | me haría | me da | me hace",
        "ilusión | bien | feliz | genial | chida | "
        "padrísimo | preciosa | estupenda | fenomenal | linda",
    )
    + phrases(
        "x fa | xfis | porfaplis | porfitas | por fi | si no es molestia | me tiene enamorada"
    ),
    "first_choice": phrases(
        "primera | preferiblemente | a poder ser | primero | primera preferencia"
    ),
    "second_choice": phrases(
        "segunda | de suplente | de reserva | como suplente | de repuesto | como segunda | suplente"
    ),
    "second": phrases("segunda | de suplente | de repuesto | suplente | tercera | y si no"),
    "neutral_after": each_of("por | a | con | en", "la | el |", "#")
    + phrases("digo # | digo la # | digo el #"),
    "not_before": each_of("y no | que no | pero no | mejor que | antes que", _THE),
    "reported_before": each_of(
        "ella | él | ellos | ellas",
        "quiere | quieren | pide | prefiere | elige | dice | dicen",
        "la | el | ver la |",
    )
    + phrases("me dijeron | me han dicho | me dijo | me recomendaron | me aconsejaron | oí que")
    + each_of(
        "está | esta | sigue | queda",
        "libre la | cogida la | ocupada la | tomada la | hecha la | "
        "disponible la | pillada la | elegida la",
    )
    + each_of(
        "ya | aún | todavía", "está | esta | sigue", f"{_TAKEN}", "la | el | el número | la página"
    )
    + each_of(
        "coincido | concuerdo | de acuerdo | acuerdo", "con", "la | el | lo de la | la de la |"
    )
    + each_of(
        "señora | la | chica | persona | gente | compañera | amiga | los | las",
        "que",
        "dijo | dice | ha dicho | dijeron | votó | puso | pidió | eligió",
        "la | el |",
    )
    + each_of(
        "alguien ha | alguien | alguien ya | han | ya han",
        "pedido | dicho | elegido | cogido | votado",
        "la | ya la | el",
    ),
    "reported_after": phrases(
        "ya la eligió | ya la ha | ya lo ha | ya alguien | alguien ya | ya lo eligió | ya la cogió | ya la pidió | ya la tiene"
    )
    + each_of("ya | aún | todavía | está | sigue | ya está | aún está", _TAKEN)
    + each_of("ya | ya la | ya lo | la | aún no | todavía no", _TOOK),
    "asked_later": each_of("está | esta | ya está | sigue | aún está | o ya está | o está", _TAKEN)
    + each_of(
        "ya | o ya", "la han cogido | la han dicho | salió | fue | la hicieron | la eligieron"
    ),
    "pointing": each_of(
        "la página | la | el número | la del",
        "con el número de | de | con | del | con la",
        "mi casa | mi edad | mi cumpleaños | mi portal | mi cumple | mi año | mi calle",
    )
    + each_of(
        "lo mismo | la misma | el mismo | igual | lo mismito | la misma página | el mismo número",
        "que",
        _OTHERS,
        _ABOVE,
    )
    + each_of(
        "lo que | la que | como | el que | lo mismo que | la misma que | igual que",
        "* | mi * | la * | mi * * | la * *",
        _SAID,
    )
    + each_of("lo que | la que | como | el que", _SAID, "mi | mi amiga | mi amigo | la | el |", "*")
    + each_of(
        "el día | la edad | la fecha | el número | el cumpleaños | el mes | el cumple | el año",
        "de | del",
        _MINE + " | cumpleaños | cumple | santo de *",
    )
    + phrases("mi edad | mi año de nacimiento | el número de mi puerta | mi portal | mi dorsal"),
    "withdrawn": each_of(
        "quito | quita | quiten | quitad | saco | saquen | borro | tacho | tachen | elimino | no tomen en "
        "cuenta | no toméis en cuenta | no consideren | no cuenten | no valoren | descarto",
        "mi",
        "voto | comentario | participación | elección | número | opción | mensaje",
    ),
    "abstaining": each_of(
        "la que | lo que | el que | cualquiera que",
        "tú | vos | usted | ustedes | vosotras | te | os | les |",
        "quieras | quiera | quieran | queráis | elijas | elijan | prefieras | guste | apetezca | toque",
    )
    + phrases(
        """
        me da igual | me da lo mismo | cualquiera está bien | cualquiera me vale |
        sorpréndenos | sorpréndeme | sorpréndannos | tú eliges | tú decides | tú mandas |
        elige tú misma | elígela tú | elegid vosotros | no sé cuál elegir | no me decido | todas son bonitas
        """
    ),
    "kinds": phrases("la última de todas | el último de todos")
    + each_of(
        "de los | de las | una de las | alguna de las | entre las | en los | por los | algo de los",
        "veinte | treinta | cuarenta | cincuenta | sesenta | veintes | treintas | cuarentas",
        "y tantos | y pico |",
    )
    + each_of(
        "una | alguna | cualquiera | algo",
        "de las | de los | de la | del",
        "esquinas | bordes | "
        "fila de abajo | fila de arriba | lado derecho | lado izquierdo | parte baja | parte alta",
    ),
    "replacing": phrases(
        """
        cambien | cambiad | cambia | cámbiame | cámbienme | sustituye | sustituyan | sustituir |
        sustituyo | reemplaza | reemplacen | modifica | modifiquen | cambiar | intercambio | truequen |
        cambiame | pasa | pasen
        """
    ),
    "replaced_by": each_of("por | a | con | para | en", "el | la | un | una |"),
    "correction": phrases(
        "me arrepentí | me arrepiento | me desdigo | me corrijo | perdón digo | digo # | digo la # | digo el #"
    ),
    "soft_correction": phrases("digo | mejor dicho | más bien"),
    "roughly_before": each_of(
        "más o menos | por ahí | alrededor | cerca | por los alrededores | aproximadamente | "
        "a la altura | por la zona | entorno | en torno",
        "por la | por el | por | de la | del | de | a la | en la | sobre la | la |",
    ),
    "other_before": phrases(
        "nos vemos el | nos vemos el día | quedamos el | es el día | hasta el día | viajo el | el próximo"
    )
    + each_of("en | sobre | con | tela", "aida | lino | panamá | etamina | tela", "de |")
    + each_of(
        "ganamos | perdimos | ganaron | perdieron | empatamos | empataron | ganó | quedamos",
        "# a | # - |",
    )
    + each_of("caminé | corrí | anduve | caminado | recorrí | pedaleé", "como | unos | casi |")
    + each_of(
        "habitación | cuarto | sala | cama | box | puerta | portal | número de calle", "número |"
    )
    + phrases(
        "autobús | camión | colectivo | guagua | bus | línea | ruta | nací un | nací el | cumplo el"
    ),
    "other_after": phrases(
        "a # | a cero | cuadras | km caminando | hebras de | cts | ct | puntadas al día"
    ),
    "part_of": phrases("de mi | de tu | de este | de esta | del libro"),
    "whole_chart": each_of(
        "del | de la | de todo el | de toda la | de este | de tu",
        "gráfico | patrón | esquema | diagrama | "
        "cuadro | mapa | labor | diseño | dibujo | tela | plantilla | cuadrícula",
    )
    + phrases("de todas | de todo"),
    "last": phrases("última de todas | última del todo | ultimísima"),
    "middle": each_of(
        "justo | justito | mero | exactamente | todo |", "en el | al", "medio | centro | mitad"
    )
    + phrases("la del medio | la del centro | mero centro | del mero centro"),
    "top": phrases("arriba del todo | arriba de todo | hasta arriba"),
    "bottom": phrases("abajo del todo | abajo de todo | hasta abajo"),
    "times": phrases("por | x | multiplicado por"),
}
