"""Spanish votes told in a roundabout way, and talk that only sounds like a vote."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THAT = "ese | esa | eso | ese número | esa página | esa misma | ese mismo"
_FACT = """
cumpleaños | cumple | edad | fecha de nacimiento | año de nacimiento | número de casa | número de pie |
número de la suerte | aniversario | talla de zapato
"""

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "saying": phrases("puso | ponía | había puesto | ha puesto | comentó | soltó | puse que"),
    "own_voice": phrases("quiero | elijo | prefiero | escojo"),
    "printed": phrases("revista | periódico | libro | novela | catálogo"),
    "voting": phrases("voto | mi voto | elijo | escojo | votar | me quedo con"),
    "rated": phrases("le pongo un | es un | te pongo un"),
    "finished": phrases("terminada | hecha | lista | acabada"),
    "halving": phrases("mitad de | la mitad de"),
    "any_of": phrases("cualquiera | algo | cualquier página"),
    "torn": phrases("dudo | indecisa | indeciso | dudando | decidirme | duda"),
    "other_after": each_of(
        "del | de la | de mi | en la | en el",
        "disco | álbum | lista | equipo | camiseta | libro | revista | quiniela | lotería",
    )
    + phrases("al día | por noche | por la noche"),
    "choice_after": each_of(
        "es",
        "mi | nuestro",
        "número de la suerte | numero de la suerte | número favorito | favorito",
    )
    + phrases("decidido | está decidido | es lo que hay"),
    "winning": phrases("gana | ganó"),
    "wondering": phrases("si el | si la | si es | qué hacer | cómo"),
    "again": phrases("otra vez | de nuevo"),
    "named_before": phrases("""
        de acuerdo con | de acuerdo con la | de acuerdo con el | coincido con |
        coincido con la
        """),
    "answered": phrases("""
        si es así | en ese caso | si ya está | si sí | si no | entonces | en tal caso
        """),
    "today": phrases("hoy | mañana"),
    "wishing": each_of(
        "si", "yo | me |", "pudiera | pudiese | fuera | fuese | tuviera | tuviese | dejaran"
    )
    + phrases(
        """
        ojalá pudiera | ojalá hubiera | me hubiera gustado | me habría gustado | hubiera querido | habría querido |
        hubiera preferido | lástima de la | qué pena la
        """
    ),
    "turning": phrases("pero | bueno | en fin | igual | da igual | de todas formas"),
    "reported_before": each_of(
        "yo habría | habría | yo hubiera | hubiera | casi",
        "dicho | elegido | votado | votado por | cogido | escogido | puesto | pedido | digo | voto",
        "el | la |",
    )
    + each_of(
        "amigas | amigos | hijas | niñas | ellos | ellas | ustedes | todas | todos",
        "dijeron | han dicho | votaron | eligieron | quieren",
    )
    + phrases("dijiste | habías dicho | creo que era el | creo que era la | era la | era el"),
    "reported_after": phrases(
        "algún día | un día de estos | más adelante | otro día | la próxima vez"
    )
    + each_of(
        "ya está | está | ya fue | ya salió | ya", "hecha | cogida | ocupada | pillada | tomada"
    ),
    "sum_after": phrases("al cuadrado | al cubo"),
    "it_is": phrases("hace | estamos a | está a | son | es | hay"),
    "weather": phrases("aquí | acá | afuera | fuera | a la sombra | grados | en casa"),
    "other_before": each_of(
        "empecé | comencé | he empezado | he comenzado | terminé",
        "por | con | en | desde",
        "la | el |",
    )
    + phrases("ahora voy por la | ya voy por la | ahora estoy en la")
    + phrases(
        "estamos a | estamos como a | hoy es | hoy ya es | hoy es día | ya es | ya es día | hoy estamos a | estamos ya a | aquí hace | acá hace | aquí estamos a | acá estamos a | estamos ya a | sesión | sesión de quimio | hace ya"
    ),
    "owning": phrases("mi | mis | nuestro | nuestra | nuestros | su | sus"),
    "own_piece": each_of("del | de la | de lo", "mío | mía | míos | nuestro | nuestra")
    + each_of("de", "mi | mis | nuestro | nuestra | su"),
    "whereabouts": phrases(
        "voy | estoy | sigo | ando | todavía | aún | apenas | ya | terminé | acabé | llegué | vamos | atascada | terminada"
    ),
    "being": phrases("tienen | tiene | son | cumple | cumplen | tenían"),
    "choice_before": each_of(
        "pon | ponme | poned | ponga | pongan | marca | marcad | pongo",
        "una | un | mi",
        "cruz | equis | marca | punto | estrella | palomita | voto | nombre | ficha | x",
        "en | al lado de | junto a | sobre",
        "el | la |",
    )
    + each_of(
        "pasamos | pasemos | vamos | vámonos | saltamos | saltemos | seguimos | pasa | salta",
        "a | con | por",
        "la | el |",
    )
    + phrases(
        "vamos | venga | venga la | vamos la | dale | dale a la | ánimo con la | arriba la | hala"
    ),
    "correction": phrases("me equivoqué es | me equivoqué | me he equivocado"),
    "neutral_after": phrases("aunque | aun si | incluso si")
    + phrases(
        "no ? | no ?? | no lo sé | no sé | no so | no me | no te | no se | no está | no es | no è | no e | no la has | no l'hai | no estaba"
    )
    + each_of("no | y no | que no", "el | la |", "#"),
    "concluding": phrases(
        "pero mejor | pero prefiero | preferiblemente | de preferencia | sobre todo | pero sobre todo | mejor"
    ),
    "pointing_back": each_of(
        "ese es | esa es | ahí está | ahí va | este es | ese será | así que ese es | he ahí",
        "mi | el | la",
        "voto | número | página | elección | respuesta",
    )
    + each_of(
        "usa | usad | usen | coge | toma | pon | haz | elige | vota | pues | así que | con | escoge | quiero | voto por",
        _THAT,
    )
    + phrases(
        "esa porfa | esa por favor | ese porfa | ese por favor | bonito regalo | buen regalo | de regalo | como regalo | por mi cumple | por mi cumpleaños | es una señal | será una señal | ahí lo dejo | lo dejo caer"
    ),
    "own_facts": each_of("mi | el | la | nuestro |", _FACT)
    + each_of(
        "el cumpleaños | el cumple | la edad | el número de casa | cumpleaños | edad",
        "de",
        "mi * | * | la * | mis *",
    )
    + each_of(
        "el número de | los | las | tantos | tantas",
        "* | * *",
        "que tengo | que tenemos | como tengo",
    ),
    "as_named": phrases("como | igual que | lo mismo que | la misma que | mismo que"),
    "pointing": each_of(
        "como | igual que | lo mismo que | la misma que",
        "la | el",
        "señora | señor | chica | chico | persona | compañera | comentario",
        "de arriba | de antes | anterior | de abajo | que",
    ),
    "described": each_of(
        "la | la página | el cuadro | el trozo | la parte | esa",
        "del | de la | de las | de los | con las | con los | donde | que tiene | que lleva | con el | con la | en la que sale | donde sale | donde está",
    ),
    "because": phrases("porque | pq | xq | ya que"),
    "asking": phrases("alguien | alguno | alguna | quién"),
    "abstaining": phrases("decide tú | tú decides | desempata | tú dirás")
    + phrases(
        "pero no sé | pero no lo sé | pero no estoy segura | pero ni idea | no me decido | no sé aún | todavía dudo | estoy dudando | no estoy segura | no lo tengo claro | aún no sé | la que tú quieras | lo que quieras"
    ),
    "asked_plainly": phrases(
        "seguro que ya | seguramente ya | supongo que ya | ya estará | seguro ya la"
    ),
    "not_after": phrases(
        "no | no la veo | no que | no q | no porque | no pq | no xq | no ya que | nunca | ni de broma"
    ),
    "letting_choose": each_of(
        "dejé | he dejado | deje | dejamos",
        "elegir | escoger | que eligiera | que escogiera",
        "a mi | a la | al | a mis |",
        "* |",
    ),
}
