"""Italian words by which a page is chosen, ruled out, taken back, asked about or told of others."""

from __future__ import annotations

#: What stands between a verb of choice and the page.
LEADING_TO = "con | da | dal | dalla | per | di | su | sul | sulla | a | al | alla | x"
GOING = """
punto tutto | scommetto tutto | voto | il mio voto va | mio voto va | voto va | parti | partite |
partiamo | partire | partirei | partirò | inizia | iniziate | iniziamo | iniziare | inizierei |
iniziassimo | comincia | cominciate | cominciamo | cominciare | comincerei | cominciassimo |
vado | andiamo | andrei | andate | andare | vai | vada | va | si va | si parte | si inizia |
punto | punterei | puntiamo | resto | rimango | passo | passerei | cambio | segnami | segnatemi |
mettimi | mettetemi | butto | mi butto | scommetto | contatemi | concentriamoci | voto anch'io |
scelta cade | scelta va | mia scelta va | mia scelta cade | preferenza va | voto definitivo va |
cuore va | torno | ritorno | sposto il voto | cambio il voto | cambio voto
"""

CHOICE_BEFORE = """
cosa c'è nella | cosa c'è in | cosa nasconde | vedere cosa nasconde | cosa si nasconde nella |
c'è sotto la | fedele alla | fedele al | avere | voto | voti | vota | votate | votiamo | votare |
voterei | voterò | votato | ho votato | un voto per | voto per il | voto è | voto è per |
voto è il | mio voto | mio voto è | il mio voto | voto sarebbe | voto sarà | voto a favore di |
voto qui | scelgo | scelgo io | io scelgo | scelga | scegliamo | sceglierei | sceglierò |
scegliere | scelto | ho scelto | scelta | scelta è | mia scelta | mia scelta è | scelta sarebbe |
prendo | prenderei | prendiamo | prendere | dico | dico io | io dico | direi | direi che |
io direi | diciamo | dirò | vorrei | vorrei vedere | vorrei tanto | vorremmo | voglio |
voglio vedere | vogliamo | io voglio | piacerebbe | mi piacerebbe | piacerebbe vedere |
mi piacerebbe vedere | piace | mi piace | piace di più è | preferisco | preferirei | preferita è |
preferito è | preferita | preferenza è | opto per | opterei per | opterò per | opzione |
tifo per | tifo | faccio il tifo per | fate | fai | fare | facciamo | farei | faccia | facessimo |
fareste | ricama | ricamate | ricamiamo | ricamare | ricamerei | sia | che sia | sarebbe | sarà |
fosse | se fosse | per me | per me è | per me la | x me | secondo me | secondo me è | per noi |
a me | a me piace | io | noi | mia è | la mia è | mia | la mia | che ne dici di |
che ne dici della | che ne dici del | che ne dici dell | che ne dite di | che ne dite della |
che ne dite del | che ne pensi della | che ne pensi di | che ne pensate della |
che ne pensate di | perché non | dai | su dai | vai | spero | spero esca | spero vinca |
spero nella | spero sia | ispira | mi ispira | attira | mi attira | mi chiama | chiama | intriga |
mi intriga | mi sento | sento | mi sa | tenta | mi tenta | cuore dice | il cuore dice |
istinto dice | istinto mi dice | istinto | intuito dice | segna | segnate | metti | mettete |
conta per me | mantengo | confermo | propongo | proporrei | proposta | proposta è | suggerisco |
suggerirei | squadra | team | dammi | datemi | dateci | risposta | risposta è | azzardo |
azzarderei | provo | proverei | proviamo | tento | chiedo | chiederei | richiedo | vediamo |
vedere | seleziono | gioco | giocherei | volevo dire | intendevo | volevo scrivere | anch'io |
pure io | vinca | che vinca | esca | incrocio le dita per | dita incrociate per | per la |
per il | viva | evviva | vince per me | ora voto | cambio e voto | decido per | deciso per |
mi fermo su | mi fermo sulla | serve | mi serve | bisogno di | a pelle | di pancia |
senza dubbio | fissa | cuore alla
"""

CHOICE_AFTER = """
per favore | x favore | perfavore | per piacere | per cortesia | pf | plis | please | grazie |
grazie mille | grazie tante | grazie a tutte | grz | ti prego | vi prego | dai | per me | x me |
per me grazie | per noi | secondo me | a mio parere | per iniziare | per cominciare |
per partire | per questa volta | stavolta | per questa settimana | per la prossima |
per la prossima volta | come prima pagina | come prossima pagina | è la mia scelta | è la mia |
la mia scelta | è il mio voto | il mio voto | mio voto | è la mia preferita | la mia preferita |
mi piace | mi piace di più | mi piace molto | mi piacerebbe | mi ispira | mi ispira di più |
mi ispira molto | mi attira | mi chiama | mi convince | mi tenta | mi intriga | mi sembra bella |
mi sembra perfetta | mi va | mi va bene | sarebbe bella | sarebbe perfetta | sarebbe l'ideale |
sarebbe bello | sarebbe fantastica | sarebbe carina | andrebbe bene | va bene | va benissimo |
tutta la vita | senza dubbio | senza dubbi | senza ombra di dubbio | senza pensarci | sicuro |
sicura | sicuramente | certo | ovviamente | assolutamente | decisamente | per prima | subito |
direi | direi io | dico | dico io | io dico | voto | voto io | scelgo | scelgo io | vorrei |
se possibile | se si può | se puoi | se potete | se non disturbo | ha il mio voto |
prende il mio voto | avrà il mio voto | no ? | vero ? | e basta | fisso | anche per me |
qualsiasi | va bene qualsiasi | per ora
"""

NOT_BEFORE = """
non | ma non | e non | no a | no al | no alla | no per | mai | mai più | tranne | tutte tranne |
tutto tranne | tutti tranne | eccetto | salvo | meno | tutte meno | tutto meno | esclusa |
escluso | escludendo | eccezione della | eccezione di | a parte | fuorché | ne | nemmeno |
neanche | neppure | senza | invece di | invece della | invece del | al posto di | al posto della |
al posto del | anziché | piuttosto che | diversa da | diversa dalla | evita | evitate | evitiamo |
eviterei | che non sia | non sia | purché non sia | basta che non sia | contro | odio | detesto |
scarto | non * con | non * per | non * da | non * dalla | non * su | non * sulla | non mi piace |
non voglio | niente
"""

NOT_AFTER = """
no , | no ! | no . | no grazie | no per favore | no per carità | no vi prego | no ti prego |
per carità | proprio no | assolutamente no | nemmeno per sogno | neanche morta |
neanche per sogno | mai | mai e poi mai | neanche | nemmeno | è esclusa | è fuori discussione |
porta sfortuna | porta male | porta iella | mi fa paura | non mi piace | non mi convince |
non mi ispira | non la voglio | no davvero | non ascoltatelo | non ascoltarlo |
non dategli retta | non ascoltateli
"""

CORRECTION = """
ma vabbè | vabbè | ma pazienza | ma va bene | anzi | anzi no | no anzi | no aspetta |
no aspettate | aspetta | aspettate | no scusa | no scusate | scusa | scusate | scusami | ops |
oops | opss | volevo dire | volevo scrivere | volevo mettere | intendevo | intendevo dire |
voglio dire | mi correggo | correggo | correzione | errata corrige | rettifico | rettifica |
errore | ho sbagliato | sbagliato | sbagliata | mi sono sbagliata | mi sono sbagliato | cambio |
cambio idea | ho cambiato idea | cambiato idea | ripensandoci | pensandoci bene |
pensandoci meglio | ci ho ripensato | ripensato | ripenso | scherzo | scherzavo | sto scherzando |
stavo scherzando | no no | ah no | eh no | oh no | uh no | modifico | modifica | edit | o meglio |
meglio ancora | non esiste | non c'è la | non c'è una | correttore | t9 | dito scivolato |
mi è scivolato | errore di battitura | refuso | invece no | facciamo invece | ahah no | ahaha no |
haha no | nah | mi ritratto
"""

#: Said of a page that another stands in for: "la 22 se è già presa".
TAKEN = """
se è presa | se è già presa | se già presa | se presa | se è occupata | se occupata |
se è già stata presa | se è stata già presa | se è già stata scelta | se è stata già scelta |
se è già stata fatta | se è già fatta | se già fatta | se già scelta | se non è libera |
se non è più libera | se non è disponibile | se non è più disponibile | se non si può |
se non fosse possibile | se non è possibile | se quella è già presa | se quella è presa |
se fosse già presa | se fosse presa | se fosse occupata | nel caso fosse presa |
nel caso fosse già presa | nel caso sia già presa | caso mai fosse presa | se qualcuno l'ha già |
se l'hanno già | se la prima è presa | se non va bene | qualora fosse presa
"""
TAKEN_AFTER = "e | o | ma | oppure | poi | e poi | , | . | ; | - | ("

CONDITION = """
se è libera | se è ancora libera | se è ancora | se libera | se ancora libera | se disponibile |
se è disponibile | se ancora disponibile | se non è presa | se non è già presa | se non è già |
se non è stata | se non è ancora | se non l'ha | se non l'hanno | se nessuno | se nessun |
se qualcuno | se tutti | se tutte | se vince | se sta vincendo | sempre che | a meno che |
a patto che | a condizione che | purché | solo se | soltanto se | finché nessuno | se mio marito |
se mia sorella | se mia | se la maggioranza | se gli altri | se le altre | se è quella |
se quella
"""

REPORTED_BEFORE = """
tutti dicono | tutte dicono | tutti vogliono | tutte vogliono | tutti votano | tutte votano |
tutti scelgono | tutte scelgono | tutti chiedono | tutti prendono | tutti a | tutti per |
tutti con | la gente | gente | molti | molte | tanti | tante | la maggior parte | maggior parte |
maggioranza | gli altri | le altre | alcuni | alcune | qualcuno | nessuno | volete tutti |
volete tutte | vedo che | vedo tanti | vedo tante | vedo molti | vedo molte | stavo per dire |
stavo per votare | stavo per scegliere | stavo per | avevo detto | avevo votato | avevo scelto |
avrei detto | avrei votato | la volta scorsa | volta scorsa | l'altra volta | settimana scorsa |
scorso giro | ultimo giro | vincerà | scommetto che | scommetto vince | pensavo a | pensavo alla |
pensavo | ero tentata | tentata dalla | ero indecisa | indecisa con | i commenti | nei commenti |
in testa | dicono | vogliono | loro dicono | pronostico | prevedo
"""

FAMILY_BEFORE = """
marito | moglie | compagno | compagna | fidanzato | fidanzata | figlio | figlia | figli | bimbo |
bimba | piccolo | piccola | mamma | madre | papà | padre | babbo | sorella | fratello | amica |
amico | vicina | vicino di casa | nonna | nonno | nipote | nipotina | nipotino | collega | capo |
gatto | gatta | cane | cagnolina | zia | zio | cugina | cugino | suocera | suocero | cognata |
cognato | ragazzo | pappagallo | lui dice | lei dice | lui vuole | lei vuole | lui direbbe |
coinquilina
"""

REPORTED_AFTER = """
no | vince | vincerà | ha vinto | sta vincendo | è in testa | è avanti | è già presa | è presa |
è già stata presa | è stata già presa | è già stata scelta | è già stata fatta | è già fatta |
era già fatta | è già uscita | è occupata | è popolare | va forte | va per la maggiore |
dice mio | dice mia | dice il mio | dice lui | dicono | dicono tutti | dicono tutte |
vogliono tutti | vuole mio | vuole mia | per mio marito | secondo mio | secondo mia |
sta andando forte | esce sempre | ha già vinto
"""

ASKING = """
qualcuno | qualcuna | chi | perché | quando | quanto | quanti | quante | quanta | come |
come mai | dove | cosa | che | quale | quali | è già | è stata | è libera | è ancora | è presa |
è occupata | era | sono | c'è | c'è qualcuno | ci sono | hanno | ha | avete | abbiamo | nessuno |
già | si può | si sa | sapete se | sai se | esiste | ma è | ma qualcuno | ancora | avevate
"""

SUGGESTING = """
che ne dici | che ne dite | che ne pensi | che ne pensate | e se | perché non | posso | possiamo |
potrei | potremmo | potresti | potreste | puoi | potete | si può | si potrebbe | ti va | vi va |
vi andrebbe | sono in tempo | faccio in tempo | sono ancora in tempo | troppo tardi |
sarebbe possibile | è possibile | vuoi | volete | vorresti | per favore | voto | scelgo |
facciamo | magari | va bene | direi | forse | iniziamo | partiamo | andiamo | ci sta |
come la vedi | come la vedete
"""

WITHDRAWN = """
annulla il mio | annullate il mio | annullare il mio | annullo il mio | annulla la mia |
annullate la mia | cancella il mio | cancellate il mio | cancellare il mio | cancello il mio |
cancellate la mia | ritiro il mio | ritira il mio | ritirate il mio | ritirare il mio |
ritiro il voto | ritiro la mia | togli il mio | togliete il mio | togliere il mio | tolgo il mio |
elimina il mio | eliminate il mio | ignora il mio | ignorate il mio | ignorate la mia |
dimentica il mio | dimenticate il mio | non contare il mio | non contate il mio |
non conteggiate il mio | non considerate il mio | non considerare il mio |
non tenete conto del mio | non tenere conto del mio | non contatemi | non contarmi |
il mio voto non conta | il mio voto non vale | non calcolate il mio | lasciate perdere il mio |
lascia perdere il mio | alla fine non voto | non voto più | scartate il mio | scarta il mio |
mi ritiro | voto nullo | toglietemi | rimangio il voto
"""

ABSTAINING = """
non voto | stavolta non voto | non voterò | non vorrei votare | niente voto | nessun voto |
senza voto | mi astengo | astensione | astenuta | passo il turno | salto il turno | non scelgo |
non so quale | non so ancora | non lo so ancora | nessuna preferenza | non ho preferenze |
mi è indifferente | per me è indifferente | non partecipo | scegliete voi | decidete voi |
lascio scegliere | lascio decidere | mi fido di te | mi fido di voi | indecisa ancora |
ancora indecisa | ci devo pensare | devo pensarci | ci penso ancora
"""

POINTING = """
voto come * | voto come * * | voto come la mia * | voto come il mio * | come sopra | idem |
uguale | lo stesso di * | lo stesso numero | la stessa | stessa pagina | stesso numero |
stesso voto | stessa cosa | come lei | come lui | come voi | come te | come la volta scorsa |
come l'altra volta | anch'io | anche io | pure io | mi accodo | mi associo | mi unisco | quoto |
ditto | +1 | la mia età | i miei anni | il mio compleanno | la mia data di nascita |
il mio mese di nascita | il giorno del mio compleanno | il mio anno di nascita |
il mio numero civico | il mio numero fortunato | il mio numero di scarpe |
il nostro anniversario | quello che dice * | quello che ha detto * | come dice * |
come ha detto * | quella di * | copio
"""

KINDS = """
pagina pari | pagine pari | pagina dispari | pagine dispari | numero pari | numero dispari |
numeri pari | numeri dispari | numero primo | una pari | una dispari | multiplo di |
divisibile per | due cifre | una cifra | pagina del bordo | sul bordo | del bordo | un bordo |
bordo esterno | cornice | ventine | trentina | ventina | quarantina | cinquantina | sessantina |
decina | numero alto | numero basso | metà superiore | metà inferiore | metà sinistra |
metà destra | riga in alto | riga in basso | riga centrale | fila in alto | fila in basso |
fila centrale | fila di mezzo | prima fila | ultima fila | prima riga | ultima riga |
colonna di sinistra | colonna di destra | colonna centrale | prima colonna | ultima colonna |
lato sinistro | lato destro | a sinistra | a destra | verso l'alto | verso il basso |
verso il centro | verso il mezzo | verso la fine | verso l'inizio | vicino al centro |
vicino al bordo | da qualche parte in alto | da qualche parte in basso |
da qualche parte al centro | qualcosa in alto | qualcosa in basso | qualcosa al centro |
una in alto | una in basso
"""
