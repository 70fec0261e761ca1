"""Italian words that stand beside a number: what it counts, measures or names if it is no page."""

from __future__ import annotations

OTHER_BEFORE = """
minuto | minuti | do un | vi do un | ti do un | è il mio | è la mia | 5 su | 9 su | 8 su | 10 su |
che sia il | che arrivi il | appuntamento al | appuntamento il | ho | ho già | io ho | ha |
hanno | hai | abbiamo | avete | avevo | aveva | avevano | avrò | avuto | compio | compie |
compirò | ho compiuto | compiuto | compiuti | compleanno è il | compleanno il | è il compleanno |
età di | di anni | da | da ben | da oltre | da quasi | da circa | fino a | fino alle | dopo |
per ben | ogni | i miei | le mie | i tuoi | i suoi | le sue | miei | mie | tuoi | tue | suoi |
sue | nostri | nostre | vostri | vostre | questi | queste | quei | quelle | questi primi |
tutti e | tutte e | noi | voi | loro | in | eravamo in | siamo in | siamo | saremo | erano |
più di | meno di | oltre | almeno | al massimo | minimo | massimo | totale di | un totale di |
restano | rimangono | mancano | manca | mi mancano | anno | gli anni | negli anni | l'anno |
nell'anno | nel | dal | del | nata nel | nato nel | nata il | nato il | classe | gennaio |
febbraio | marzo | aprile | maggio | giugno | luglio | agosto | settembre | ottobre | novembre |
dicembre | lunedì | martedì | mercoledì | giovedì | venerdì | sabato | domenica | giorno |
il giorno | giorni | settimana | mese | ore | ora | alle | alle ore | dalle | verso le | sono le |
erano le | le ore | episodio | puntata | puntate | parte | capitolo | stagione | volume | libro |
video | vlog | livello | passo | tappa | giro | piano | riga | fila | colonna | autobus | bus |
tram | metro | linea | treno | binario | uscita | statale | via | viale | strada | civico |
al civico | abito al | abito in via | porta | camera | stanza | casa | interno | palazzo |
taglia | numero di scarpe | ago | aghi | ago numero | tela | tela aida | aida | tela da |
aida da | lino | lino da | emiane | etamine | filo | fili | colore | colori |
matassa | codice | riferimento | modello | gradi | forno a | temperatura | vento a | raffiche a |
forza | pagato | pagata | pago | costa | costano | costato | vale | comprato | venduto | vinto |
perso | fatto | fatti | fatte | finito | ricamato | ho visto | visto | visti | letto | bevuto |
mangiato | aspettato | dormito | contato | uso | usato | utilizzo | grazie per i | grazie per le |
grazie per questi | grazie per queste | complimenti per i | complimenti per le | per questi |
per queste | top | moltiplicato per | diviso per | punteggio | covid | natale | versione |
canale | ci sono | c'erano | ci vogliono | ci ho messo | ci ho messo ben |
mi ci vogliono | durano | dura | durata | passano | passati | passate | sono passati |
iscritta numero | fan numero | numero di | sono a pagina | sono alla pagina | sto a pagina |
sto alla pagina | io sono a pagina | arrivata a pagina | arrivato a pagina |
arrivata alla pagina | sono ferma a pagina | ferma a pagina | ferma alla pagina | mia pagina |
finito la pagina | sto ricamando la pagina | sto finendo la pagina | ricetta per | gruppo di |
pacco da | scatola da | confezione da | paio di | squadra di | famiglia di | schema di |
schema da | oggi è il | domani è il | oggi è | ci vediamo il | ci vediamo alle
"""

OTHER_AFTER = """
su 5 | su 10 | e lode | anni | anno | annetti | mesi | mese | settimana | settimane | giorno |
giorni | ora | ore | orette | minuto | minuti | min | secondo | secondi | secoli | notte | notti |
sera | sere | serata | serate | mattina | mattine | mattinate | pomeriggi | weekend | inverni |
inverno | estati | estate | primavere | autunni | volta | volte | gatto | gatti | gatta | gatte |
gattini | cane | cani | cagnolini | figlio | figli | figlia | figlie | bambini | bimbi | bimbe |
nipote | nipoti | nipotini | fratelli | sorelle | amiche | amici | persone | persona | donne |
uomini | iscritti | crocette | crocetta | croci | punti | punto | capi | capo | filo | fili |
colore | colori | tonalità | sfumature | matassa | matasse | matassine | bobine | aghi | ago |
progetto | progetti | lavori | lavoro | lavoretti | ricami | quadri | schemi | pagine | fogli |
tele | telai | telaio | video | puntate | episodi | capitoli | parti | righe | file | colonne |
quadretti | quadratini | cm | mm | m | km | metro | metri | chilometri | centimetri | pollici |
kg | chilo | chili | grammi | g | etti | litro | litri | ml | gradi | grado | nodi | euro |
eurini | dollari | centesimi | lire | per cento | percento | visualizzazioni | commenti | voti |
like | mi piace | stelle | tazza | tazze | caffè | tè | tisane | biscotti | torta | torte |
bicchiere | bicchieri | candeline | candele | uova | pecore | galline | cavalli | mucche |
uccelli | barche | libro | libri | romanzi | film | canzoni | cose | motivi | ragioni |
tentativi | possibilità | posti | stanze | case | piani | scalini | mila | mille | milioni |
milione | centinaia | decine | dozzine | di noi | di voi | di loro | di questi | di queste |
dei miei | delle mie | gennaio | febbraio | marzo | aprile | maggio | giugno | luglio | agosto |
settembre | ottobre | novembre | dicembre | di mattina | di sera | di notte | del mattino |
del pomeriggio | di pomeriggio | al giorno | a settimana | alla settimana | al mese | all'anno |
prime | primi | ultime | ultimi | sacchetti | scatole | pacchi | paia | gomitoli | maglioni |
sciarpe | calzini | lampade | lampadine | watt | volt | ospiti | regali | lettere | parole |
messaggi | mani | dita | occhi | vite | mariti | paesi | tappe | giri | turni | count | ct | bei |
belle | bellissimi | bellissime | lunghe | lunghi | lunghissimi | piccoli | piccole | grandi |
nuovi | nuove | altri | altre | mesetti | orologi | barattoli | cuscini | tovaglie | calorie |
invitati | compleanni | punti croce | ricamatrici
"""

WEAK_BEFORE = """
di | a | con | che | tu | come | quanto | sei | i | gli | un | una | su | tra | fra | alla |
dalla | della | sulla | nella | due | altri | altre | e mezzo | pure
"""

WEAK_AFTER = """
di | dei | delle | del | della | e mezzo | e mezza | più | meno | pagine
"""

NEUTRAL_BEFORE = """
ops | oops | scusa | scusate | scusami | correzione | errore | aspetta | ciao | ciaoo |
buongiorno | buonasera | buondì | salve | buon | buona | giorno | sera | serata | giornata |
pomeriggio | tutti | tutte | tutto | a tutti | a tutte | ragazze | ragazzi | care | cara |
amiche | amici | saluti | saluto | abbraccio | un abbraccio | baci | bacio | bacioni | oh | ah |
eh | uh | wow | mamma mia | bene | allora | dunque | quindi | e | ed | o | ma | perché | sì | si |
no | ok | okay | dai | su | forza | grazie | mille | grazie mille | bello | bella | bellissimo |
bellissima | bellissimi | meraviglia | meraviglioso | meravigliosa | stupendo | stupenda |
splendido | splendida | spettacolo | incanto | fantastico | fantastica | super | la | il | lo |
le | l | dell | all | dall | nell | sull | ai | al | mi | ti | ci | vi | se | se non | se no |
questa | questo | quella | quello | è | oggi | adesso | ora | qui | qua | finalmente | hmm | mmm |
ehm | pagina | numero | caso | a caso | dubbio | dubbi | sicuro | certo | ovvio | anche | sempre |
ancora | curiosità | curiosa | voglia | attesa | emozione | gioia | fortuna | pazienza | favore |
please | cuore | lavoro | video | istinto | pancia | haha | ahah | ahaha | ahahah | xd | mia |
mio | magari | forse | facile | difficile | sinceramente | personalmente | per | x | isola |
mare | faro | prossima | così | insomma | comunque | decisamente | scelta difficile
"""

NEUTRAL_AFTER = """
fossi | fosse | perché | xché | xke | perche | poiché | dato | visto | come | ma | e | ed | o |
oppure | con | senza | per | che | chi | è | sarà | sarebbe | quando | dove | se | sì | si | io |
tu | mi | ti | ci | vi | ne | le | gli | l | nel | nella | in | al | alla | no * | ciao | saluti |
un saluto | un bacio | baci | bacio | bacioni | abbraccio | un abbraccio | buona | buon |
buongiorno | buonasera | buona giornata | buona serata | buon lavoro | bello | bella |
bellissima | speriamo | spero | credo | penso | sento | sembra | pare | ha | ho | suona | dice |
anche | già | ora | adesso | oggi | qui | qua | poi | dopo | prima | allora | quindi | tutto |
tutti | tutte | ragazze | amiche | cara | care | ahah | ahaha | ahahah | haha | hihi | xd | xx |
dai | forza | vai | va | ok | okay | certo | sicuramente | magari | forse | soprattutto |
inoltre | da | dal | dalla | mentre | domani | punto | voglio | sono | mi incuriosisce | non |
non vedo | eh | vero | quella | questa | questo | c'era | c'è | era | numero | pagina | quasi |
ogni | tra | fra | secondo | viva | grazie | complimenti | auguri | evviva | finalmente |
nasconde
"""
