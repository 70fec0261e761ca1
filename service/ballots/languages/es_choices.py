"""Spanish words by which a page is chosen, ruled out, taken back, asked about or told of others."""

from __future__ import annotations

CHOICE_BEFORE = """
quise escribir | quería escribir | ver qué hay en | qué hay en | qué esconde | ver qué esconde |
hay detrás de | fiel a | fiel al | tener | voto | votos | vote | voten | votad | votamos | votar |
votando | votaría | votaré | votado | voté | he votado | voto por | voto a | voto para | voto en |
voto con | voto va para | voto va por | voto va a | voto es | voto es para | voto es por |
voto sería | voto sería para | voto será | voto al | voto x | voto pa | votaría por | votaré por |
votamos por | vote por | votar por | votado por | voto a favor de | mi voto | mi voto es | elijo |
elijo a | eligo | elegí | elegiría | elegiré | elegimos | elegir | elegido | escojo | escogí |
escogería | escogeré | escogemos | escoger | escogido | elección | elección es | elección sería |
opción | opción es | mi opción | quiero | quiero ver | yo quiero | quisiera | quisiera ver |
queremos | queremos ver | querría | querría ver | gustaría | me gustaría | gustaría ver |
me gustaría ver | gustaría que fuera | gusta | me gusta | gusta más | me gusta más |
más me gusta es | encantaría | encantaría ver | encanta | me encantaría | prefiero | preferiría |
preferimos | prefiero que sea | preferencia es | quedo con | me quedo con | quedaría con |
nos quedamos con | inclino por | inclino a | inclinaría por | decanto por | decantaría por |
decido por | decidido por | apuesto por | apuesto a | apuesto | apostaría por | apoyo | voy con |
voy por | voy a por | voy a | voy de | voy para | voy al | vamos con | vamos por | vamos a por |
vamos de | vamos a | vamos al | vayamos por | vayamos a | iría por | iría con | iría a por |
iría a | tira por | tiro por | tiraría por | tirad por | empieza por | empieza con | empieza en |
empieza desde | empiecen por | empiecen con | empezar por | empezar con | empezar en |
empezamos por | empezamos con | empecemos por | empecemos con | empezaría por | empezaría con |
empezad por | empezad con | empezáramos por | comienza por | comienza con | comienza en |
comiencen por | comiencen con | comenzar por | comenzar con | comencemos por | comencemos con |
comenzaría por | comenzaría con | comenzamos con | comenzamos por | arranca con | arranca por |
arranquemos con | arrancar con | arrancamos con | inicia con | iniciar con | inicien con |
iniciemos con | haz | hagan | haced | hacer | hagamos | hagas | haría | hiciéramos | borda |
borden | bordad | bordar | bordemos | bordáramos | bordaría | pon | poned | pongan | pongo |
ponme | ponme en | ponme con | ponedme | ponedme en | pónganme | pónganme en | apúntame |
apúntame a | apúntame en | apúntame con | apúntenme | apuntadme | apúntenme en | anótame |
anótame en | anótame con | anótame a | anótenme | anótenme en | apunta | anota |
cuenta conmigo para | digo | yo digo | diría | yo diría | diré | decimos | digamos | propongo |
propondría | sugiero | sugeriría | sugerencia | que sea | sea | sea la | seria | será | es |
para mí | para mi | para mí es | para mí que | pa mí | por mí | por mi parte | a mí | mí | yo |
nosotras | nosotros | la mía es | mía es | mía | creo que | creo que es | creo que sería | creo |
pienso que | pienso en | qué tal | qué tal si | y si | os parece | les parece | te parece |
parece bien | por qué no | venga | dale a | dale con | dadle a | ojalá | ojalá salga | ojalá sea |
ojalá gane | que salga | salga | que gane | tinca | late | me late | llama | me llama | atrae |
tira | me tira | apetece | me apetece | antoja | se me antoja | corazón dice | intuición dice |
intuición me dice | instinto dice | favorita es | favorito es | favorita | preferida es |
preferido es | cambio a | cambio por | cambio al | lo cambio a | lo cambio por |
cambio mi voto a | cambio mi voto por | cambiar a | cambiar por | cambiarlo a | me cambio a |
paso a | me paso a | mantengo | mantengo en | sigo con | sigo en | sigo por | necesito ver |
necesito | pido | pedimos | solicito | equipo | team | dame | danos | denos | respuesta |
respuesta es | tomo | tomaría | cojo | cogería | coge | coged | agarro | selecciono |
seleccionaría | selección | opto por | optaría por | optamos por | la juego con | juego por |
todo a | todo al | a ver | veamos | ver | quise decir | quería decir | quería poner |
quise poner | por | x | para | pa | me tiro a | lanzo con | dedos cruzados por |
cruzo los dedos por | fija | fijo | mejor | vuelvo a | doy mi voto a | doy mi voto al |
doy el voto a
"""

CHOICE_AFTER = """
por favor | porfa | porfi | porfis | porfa plis | porfavor | por fa | please | plis | pliss |
plisss | pls | x favor | xfa | xfavor | pofavor | gracias | gracias guapa | muchas gracias |
mil gracias | gracias por favor | para mí | para mi | pa mí | para nosotras | por mi parte |
para empezar | para comenzar | para arrancar | para esta semana | para la próxima |
para la primera | es mi voto | mi voto | es mi elección | mi elección | es mi favorita |
mi favorita | es la mía | es la buena | me gusta | me gusta más | me gusta mucho | me gustaría |
me encanta | me encantaría | me llama | me llama mucho | me tinca | me late | me atrae |
me apetece | me parece bien | me parece | me va bien | sería ideal | sería genial |
sería lo mejor | sería bonita | sería perfecta | estaría bien | estaría genial | estaría bueno |
estaría chulo | estaría padre | va a ser | sin duda | sin dudas | sin dudarlo | sin pensarlo |
seguro | segurísimo | segura | obvio | claro | por supuesto | primero | la primera | de una |
a tope | digo yo | digo | yo digo | diría yo | diría | voto | voto yo | elijo | quiero |
quiero yo | prefiero | si es posible | si puede ser | si se puede | si puedes |
si no es molestia | si no es mucho pedir | tiene mi voto | se lleva mi voto | tendrá mi voto |
que más me gusta | la que más me gusta | será | de cabeza | de corazón | fijo | dale |
tiene buena pinta | tiene muy buena pinta | pinta bien | suena bien | no ? | no? | verdad ? |
y listo | y punto | anda | andale | ándale | me vale | me sirve | me da igual | nomás | nada más |
pues
"""

NOT_BEFORE = """
no | no a | no al | no por | no con | no quiero | no me gusta | y no | pero no | que no |
que no sea | no sea | nunca | jamás | todo menos | todas menos | cualquiera menos |
cualquier cosa menos | menos | todas excepto | excepto | salvo | excepción de | nada de | ni |
sin | en vez de | en lugar de | antes que | evita | evitad | evitemos | eviten | odio | detesto |
contra | en contra de | no * por | no * con | no * en | no elijas | no hagas | no escojas |
no hagan | descarto | paso de | distinta de | otra que no sea | diferente a
"""

NOT_AFTER = """
no , | no ! | no . | no gracias | no por favor | no porfa | no por dios | no por nada | no vale |
ni hablar | ni loca | ni loco | ni de broma | ni en broma | ni de coña | jamás | nunca | tampoco |
está descartada | queda descartada | da mala suerte | trae mala suerte | me da miedo |
no me gusta | no me gusta nada | no me llama | no quiero | ni se te ocurra | no le hagan caso |
no le hagáis caso | no le hagas caso
"""

CORRECTION = """
quise escribir | quería escribir | pero bueno | pero en fin | ay no | uy no | ah no | no no |
no espera | no esperen | espera | espera no | esperad | esperen | perdón | perdona | perdonad |
ups | uups | upss | quise decir | quería decir | quise poner | quería poner | quiero decir |
digo no | me equivoqué | equivoqué | me he equivocado | equivocado | error | corrijo |
corrección | rectifico | rectificación | edito | edit | edición | modifico | cambio | cambié |
cambié de opinión | cambio de opinión | he cambiado | cambiado de opinión | cambio de idea |
cambié de idea | mejor no | mejor dicho | o mejor | o mejor dicho | es broma | era broma | broma |
bromeo | mentira | jaja no | jajaja no | xd no | pensándolo bien | pensándolo mejor |
lo pensé mejor | lo he pensado mejor | ahora que lo pienso | me retracto | se me fue el dedo |
dedo gordo | dedazo | el corrector | no existe | no hay página | miento | olvida eso | olvídenlo |
o sea no | nah
"""

#: Said of a page that another stands in for: "la 22 si ya está cogida".
TAKEN = """
si está cogida | si ya está cogida | si está pillada | si ya está pillada | si está tomada |
si ya está tomada | si está ocupada | si ya está ocupada | si ya está hecha | si está hecha |
si ya está elegida | si ya está | si ya la han | si la han cogido | si ya salió | si ya fue |
si ya ha salido | si ya ha sido | si no está libre | si no está disponible | si no puede ser |
si no se puede | si esa ya | si ésa ya | si esa no | si ésa no | si esa está | si ésta ya |
si ya alguien | si alguien ya | por si ya está | por si está | en caso de que ya |
si no es posible | si no queda
"""
TAKEN_AFTER = "y | o | u | pero | , | . | ; | - | ( | luego | y luego"

CONDITION = """
si está libre | si sigue libre | si aún está | si todavía está | si está disponible |
si sigue disponible | si no está cogida | si no está pillada | si no está tomada |
si no está ocupada | si no está elegida | si no está hecha | si no está ya | si no la han |
si no la ha | si no ha salido | si no se ha | si nadie | si alguien | si todo el mundo |
si todos | si todas | si queda libre | si gana | si va ganando | si mi | si los demás |
si la mayoría | si es la que | si esa | si ésa | a menos que | salvo que | siempre que |
siempre y cuando | con tal de que | solo si | sólo si | únicamente si | mientras nadie | depende
"""

REPORTED_BEFORE = """
todo el mundo | todos dicen | todas dicen | todos quieren | todas quieren | todos piden |
todas piden | todos votan | todas votan | todos van | todas van | todos eligen | todas eligen |
la gente | gente | muchos | muchas | muchas piden | la mayoría | mayoría | los demás | las demás |
algunos | algunas | alguien | nadie | vosotras queréis | ustedes quieren | queréis todas |
parece que | veo que | veo mucho | veo muchos | veo muchas | veo mucha | tantos | tantas |
iba a decir | iba a votar | iba a elegir | iba a poner | había dicho | había votado |
había elegido | habría dicho | casi digo | casi voto | casi elijo | estuve a punto | dudaba |
pensaba en | pensé en | pensaba | estaba pensando | la última vez | última vez | la vez pasada |
semana pasada | ronda pasada | ronda anterior | va a ganar | ganará | seguro que gana |
seguro gana | los comentarios | comentarios | en cabeza | va ganando | dicen | ellos | ellas |
pronóstico | tentada por | tentada de
"""

FAMILY_BEFORE = """
marido | esposo | esposa | mujer | novio | novia | pareja | hijo | hija | hijos | niño | niña |
peque | madre | mamá | mami | padre | papá | hermana | hermano | amiga | amigo | vecina | vecino |
abuela | abuelo | yaya | nieta | nieto | nietos | compañera | compañero | jefe | jefa | gato |
gata | perro | perra | tía | tío | prima | primo | sobrina | sobrino | suegra | suegro | cuñada |
cuñado | bebé | mayor | pequeña | pequeño | loro | comadre | él dice | ella dice | él quiere |
ella quiere
"""

REPORTED_AFTER = """
no | gana | va a ganar | ganará | va ganando | ganó | ha ganado | va en cabeza | va primera |
está cogida | ya está cogida | está pillada | ya está pillada | está tomada | ya está tomada |
está ocupada | ya está | ya salió | ya ha salido | ya fue | es popular | es muy popular | arrasa |
sale mucho | se repite mucho | dice mi | dijo mi | dicen | dicen todos | dicen todas | quiere mi |
según mi | fue elegida | ya la han | ya ha sido | es la que va ganando | parece que gana |
para mi marido
"""

ASKING = """
alguien | quién | quien | por qué | porqué | cuándo | cuánto | cuántos | cuántas |
cuántas personas | cómo | dónde | qué | cuál | cuáles | hay | ha | han | está | esta | están |
es | son | se puede | se ha | ya | ya salió | ya está | nadie | era | fue | sigue | queda |
existe | sabéis si | saben si | sabe si | habéis | hemos | tiene | sabes si | y | todavía | aún
"""

SUGGESTING = """
qué tal | y si | por qué no | puedo | podemos | podría | podríamos | podrías | podríais |
podrían | puedes | podéis | pueden | se podría | se puede empezar | os parece | les parece |
te parece | llego tarde | es tarde | demasiado tarde | sería posible | es posible | será posible |
quieres | queréis | quieren | querrías | porfa | por favor | quizás | quizá | voto | elijo |
puede ser | podría ser | qué opinas de | qué opináis de | qué dicen de | qué te parece | vale |
me dejas | empezamos | hacemos | vamos | y la | qué me dices de
"""

WITHDRAWN = """
quiten mi | quitad mi | quita mi | quitar mi | anula mi | anulad mi | anulen mi | anular mi |
anulo mi | cancela mi | cancelen mi | cancelad mi | cancelo mi | cancelar mi | retiro mi |
retira mi | retiren mi | retirad mi | retirar mi | borra mi | borren mi | borrad mi | elimina mi |
eliminen mi | eliminad mi | ignora mi | ignoren mi | ignorad mi | olvida mi | olviden mi |
olvidad mi | no cuentes mi | no cuenten mi | no contéis mi | no me cuentes | no me cuenten |
no me contéis | no tengas en cuenta mi | no tengan en cuenta mi | no tengáis en cuenta mi |
no valgan mi | mi voto no cuenta | que no cuente mi | descarten mi | descarta mi | descartad mi |
mi voto queda anulado | al final no voto | finalmente no voto | ya no voto | retiro lo dicho |
saquen mi | saca mi | sacad mi | me retiro | voto nulo | desisto de mi
"""

ABSTAINING = """
no voto | esta vez no voto | no votaré | no voy a votar | sin voto | me abstengo | abstención |
paso de votar | paso palabra | no elijo | no sé cuál | no sé aún | no lo sé aún | todavía no sé |
aún no sé | sin preferencia | no tengo preferencia | me es indiferente | no participo |
que elijan otras | que decidan otras | elige tú | elijan ustedes | elegid vosotras | decide tú |
lo dejo en tus manos | lo dejo en vuestras manos | confío en ti | estoy indecisa | indecisa aún |
lo pienso aún
"""

POINTING = """
voto igual que * | voto igual que * * | voto como * | voto como * * | lo mismo | lo mismo que |
la misma | la misma que | igual que | ídem | idem | como arriba | como la de arriba |
la misma página | el mismo número | mismo voto | el mismo voto | yo también | yo tampoco | ditto |
+1 | mi edad | mi cumpleaños | mi cumple | mi fecha de nacimiento | el día de mi cumple |
el día de mi cumpleaños | el mes de mi cumple | el número de mi casa | mi número de la suerte |
mi talla de zapato | mi número de pie | mi aniversario | lo que dice * | lo que dijo * |
lo que ha dicho * | como * dice | secundo | me sumo | me uno | copio | la que dice * |
la que dijo *
"""

KINDS = """
página par | páginas pares | página impar | páginas impares | número par | número impar |
números pares | números impares | número primo | una par | una impar | múltiplo de |
divisible por | divisible entre | dos cifras | una cifra | página del borde | páginas del borde |
en el borde | del borde | un borde | una orilla | la orilla | veintes | treintas | cuarentas |
cincuentas | treintena | veintena | cuarentena | cincuentena | decena | número alto |
número bajo | mitad de arriba | mitad de abajo | mitad superior | mitad inferior |
mitad izquierda | mitad derecha | fila de arriba | fila de abajo | fila del medio |
fila superior | fila inferior | primera fila | última fila | columna de la izquierda |
columna de la derecha | columna del medio | columna central | primera columna | última columna |
lado izquierdo | lado derecho | a la izquierda | a la derecha | hacia arriba | hacia abajo |
hacia el centro | por arriba | por abajo | por el medio | por el centro | por la derecha |
por la izquierda | cerca del centro | cerca del borde | cerca del final | cerca del principio |
alguna de arriba | alguna de abajo | alguna del medio | alguna del centro | una de arriba |
una de abajo | una del medio
"""
