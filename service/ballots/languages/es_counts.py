"""Spanish words that stand beside a number: what it counts, measures or names if it is no page."""

from __future__ import annotations

OTHER_BEFORE = """
minuto | minutos | doy un | os doy un | un | 5 de | 9 de | 8 de | 10 de | es mi | es mi vídeo |
tengo | tengo ya | yo tengo | tiene | tienen | tienes | tenemos | tenía | tenían | tuve | tuvo |
con mis | cumplo | cumplí | cumple | cumplió | cumplen | cumpleaños es | cumple es |
cumpleaños el | cumpleaños es el | edad de | hace | hace ya | hace unos | desde hace | desde |
desde los | desde el | hasta | hasta los | hasta las | llevo | llevo ya | lleva | llevamos |
llevaba | a los | con los | mis | tus | sus | nuestros | nuestras | vuestros | vuestras | estos |
estas | esos | esas | unos | unas | cada | todos los | todas las | más de | menos de | al menos |
por lo menos | como mínimo | como máximo | total de | quedan | me quedan | queda | faltan |
me faltan | falta | solo quedan | van | van ya | año | los años | el año | en el año | del año |
nací en | nacida en | nacido en | nací el | en enero | enero | febrero | marzo | abril | mayo |
junio | julio | agosto | septiembre | setiembre | octubre | noviembre | diciembre | lunes |
martes | miércoles | jueves | viernes | sábado | domingo | día | el día | días | semana | mes |
hora | horas | episodio | capítulo | parte | temporada | tomo | volumen | vídeo | video | nivel |
paso | etapa | vuelta | piso | planta | línea | fila | columna | autobús | bus | metro | tren |
ruta | calle | carretera | puerta | habitación | casa | portal | edificio | avenida | vivo en el |
vivimos en el | talla | número de pie | aguja | agujas | aida | aída | aida de | aida del | tela |
tela de | lino | lino de | panamá | etamina | etamín | hilo | hilos | color |
colores | madeja | referencia | ref | tono | modelo | grados | temperatura | viento de |
rachas de | fuerza | pagué | pago | cuesta | costó | vale | valen | compré | vendí | gané |
perdí | hice | hecho | hago | terminé | terminado | acabé | bordé | bordado | he visto | visto |
vi | leí | leído | bebí | comí | esperé | dormí | conté | uso | usé | utilizo | gracias por los |
gracias por estos | gracias por las | gracias por esas | gracias por estas | felicidades por los |
felicidades por las | por estos | por estas | por los | top | multiplicado por | dividido por |
puntuación | covid | navidad | versión | canal | sale el | nos vemos el |
nos vemos a las | a las | sobre las | son las | eran las | hoy es | mañana es | somos | son |
éramos | eran | serán | seremos | hay | había | habrá | hubo | suscriptora número |
seguidora número | de los | de las | entre los | durante | tras | pasaron | pasan | dura | duran |
duró | cuenta | tardé | tardo | tardaste | me llevó | estoy en la página | estoy por la página |
voy por la página | voy en la página | ando por la página | mi página | estoy en la |
voy ya por la página | acabando la página | terminando la página | acabo la página |
en mi página | bordando la página | receta para | grupo de | paquete de | caja de | lote de |
par de | equipo de | familia de | gráfico de
"""

OTHER_AFTER = """
de 5 | de 10 | sobre 10 | sobre 5 | años | año | añitos | meses | mes | semana | semanas | día |
días | hora | horas | h | hrs | minuto | minutos | min | segundo | segundos | siglos | noche |
noches | tarde | tardes | mañanas | finde | fines de semana | invierno | inviernos | verano |
veranos | primaveras | vez | veces | gato | gatos | gata | gatas | perro | perros | perritos |
hijo | hijos | hija | hijas | niños | niñas | nieto | nietos | nieta | nietas | hermano |
hermanos | hermanas | amigas | personas | gente | mujeres | suscriptores | puntada | puntadas |
punto | puntos | cruces | hebra | hebras | hilo | hilos | cabo | cabos | color | colores | tonos |
madeja | madejas | bobina | bobinas | aguja | agujas | proyecto | proyectos | labor | labores |
cuadro | cuadros | gráficos | patrones | páginas | hojas | tela | telas | bastidor | bastidores |
vídeo | videos | vídeos | video | episodio | episodios | capítulo | capítulos | partes | filas |
columnas | líneas | cuadritos | cuadrados | cm | mm | m | km | metro | metros | kilómetro |
kilómetros | centímetros | pulgadas | kg | kilo | kilos | gramos | g | litro | litros | ml |
grado | grados | nudos | euro | euros | eurillos | pesos | soles | dólares | dólar | céntimos |
por ciento | porciento | visitas | vistas | comentarios | votos | likes | estrellas | taza |
tazas | café | cafés | té | tés | mates | galletas | pastel | vaso | vasos | velas | huevos |
ovejas | gallinas | caballos | vacas | pájaros | barcos | libro | libros | novelas | películas |
canciones | cosas | razones | intentos | oportunidades | sitios | habitaciones | casas | pisos |
escalones | mil | millón | millones | cientos | docenas | de nosotras | de nosotros | de ellas |
de ellos | de mis | de estas | de estos | de mayo | de enero | de febrero | de marzo | de abril |
de junio | de julio | de agosto | de septiembre | de setiembre | de octubre | de noviembre |
de diciembre | de la mañana | de la tarde | de la noche | de la madrugada | del mediodía |
al día | a la semana | al mes | al año | por día | por semana | primeras | primeros | últimas |
últimos | bolsas | cajas | paquetes | pares | ovillos | bufandas | calcetines | lámparas |
bombillas | vatios | voltios | invitados | regalos | cartas | letras | palabras | mensajes |
manos | dedos | ojos | vidas | maridos | países | etapas | vueltas | rondas | count | ct
"""

WEAK_BEFORE = """
en | de | del | con | a | que | los | una | sobre | entre | desde la | hasta la | como | dos |
otros | otras | y media | ha
"""

WEAK_AFTER = """
de | del | y medio | y media | más | menos | páginas | pequeñas | pequeños | bonitas | bonitos |
grandes | largas | largos | nuevas | nuevos | hermosos | hermosas | preciosos | preciosas |
otras | otros
"""

NEUTRAL_BEFORE = """
ups | uups | perdón | perdona | corrección | error | disculpa | disculpen | hola | holaa | holi |
buenas | buenos | buenos días | buenas tardes | buenas noches | días | tardes | noches | saludos |
saludo | abrazo | abrazos | besos | beso | besitos | ay | oh | uy | uf | guau | wow | bueno |
pues | entonces | y | e | pero | porque | así que | sí | si | si no | no sé | ok | okey | vale |
venga | dale | vamos | listo | gracias | muchas gracias | mil gracias | bonito | bonita |
precioso | preciosa | hermoso | hermosa | lindo | linda | espectacular | increíble | maravilla |
maravilloso | maravillosa | genial | guapa | guapas | chicas | chica | amiga | amigas | amigos |
todas | todos | todo | gente | familia | mundo | país | costa | isla | mañana | tarde | noche |
fin | semana | finde | domingo | lo | le | la | las | el | al | he | me | te | se | nos | os |
esta | este | esa | ese | es | está | qué | que | yo | tú | aquí | acá | allá | ahí | ahora |
hoy | por fin | total | ya | ya está | hmm | mmm | eh | emm | página | número | azar | al azar |
dudar | dudarlo | pensarlo | duda | seguro | claro | obvio | también | siempre | otra vez |
curiosidad | ganas | suspense | emoción | nervios | ilusión | suerte | paciencia | favor |
please | corazón | trabajo | labor | video | vídeo | intuición | instinto | jaja | jajaja | xd |
mi | tu | su | cualquiera | quizá | quizás | tal vez | fácil | difícil | simple | personalmente |
sinceramente | evidentemente | feliz
"""

NEUTRAL_AFTER = """
porque | pq | xq | pues | ya que | como | pero | y | o | u | con | sin | para | por | es | está |
que | qué | cuando | donde | si | sí | yo | tú | me | te | se | nos | os | le | lo | la | las |
el | los | un | una | mi | mis | tu | tus | su | sus | al | en | no * | hola | saludos | saludo |
un saludo | besos | beso | besitos | un beso | abrazo | abrazos | un abrazo | gracias | feliz |
buen | buena | buenas | buenos | bonito | bonita | lindo | linda | precioso | preciosa | ánimo |
suerte | a ver | ojalá | espero | creo | siento | tiene | parece | pinta | suena | dice | será |
sería | siempre | también | ya | ahora | hoy | aquí | acá | ahí | luego | después | antes |
entonces | así | muy | tan | más | mucho | todo | todos | todas | guapa | guapas | chicas |
amiga | amigas | jaja | jajaja | jeje | jejeje | xd | xx | venga | vamos | dale | va | vale | ok |
claro | seguro | quizás | quizá | tal vez | sobre todo | además | desde | hasta | mientras |
mañana | punto | final | tengo | quiero | estoy | soy | me encanta | encanta | qué ganas |
con ganas | nada más | eh | verdad | esta | este | esa | ese | eso | había | hay | ha | he | fue |
era | son | página | número | casi | toda | cada | entre | según | bordadoras | señora | besotes
"""
