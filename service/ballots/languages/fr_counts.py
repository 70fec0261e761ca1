"""French words that stand beside a number: what it counts, measures or names if it is no page."""

from __future__ import annotations

OTHER_BEFORE = """
tout | quoi de | rien de | à l'état | remis à | minutes | minute | 5 sur | 9 sur | 8 sur |
10 sur | 20 sur | c'est mon | c'est ma | c'est notre | je mets un | je donne un | donne un |
j'ai | j'ai déjà | j'ai eu | j'avais | j'aurai | j'aurais | tu as | il a | elle a | on a |
nous avons | vous avez | ils ont | elles ont | qui a | qui ont | a eu | avait | ayant |
vivement le | hâte d'être le | hâte d'être au | il avait | elle avait | n'ai que | n'a que |
âgé de | âgée de | âge de | à l'âge de | fêter mes | fêté mes | fête mes | mes | tes | ses | nos |
vos | leurs | ces | tous les | toutes les | chaque | depuis | pendant | durant | il y a | y a |
il y avait | y'a | ya | au bout de | d'ici | plus que | plus de | moins de | au moins | au plus |
à peine | pas moins de | jusqu'à | total de | sur un total de | presque | il reste | il me reste |
me reste | reste | il en reste | plus qu'à | encore | ça fait | cela fait | il fait | fait déjà |
année | l'année | l'an | années | en l'an | né en | née en | nés en | de l'année | en janvier |
janvier | février | mars | avril | mai | juin | juillet | août | septembre | octobre | novembre |
décembre | lundi | mardi | mercredi | jeudi | vendredi | samedi | dimanche | jour | jours |
semaine | semaines | mois | épisode | épisodes | ép | partie | chapitre | chapitres | saison |
tome | volume | vol | volet | vidéo | vidéos | vlog | live | niveau | étape | rang | tour |
étage | ligne | colonne | rangée | bus | tram | métro | route | nationale | sortie | quai |
train | porte | chambre | appartement | appart | immeuble | bâtiment | rue | avenue | boulevard |
habite au | j'habite au | vis au | taille | pointure | aiguille | aiguilles | aida | aïda |
toile | toile de | lin | lin de | lin en | étamine | aida de | aida en | toile en | toile aida |
toile aida de | fil | fils | coloris | couleur | couleurs | teinte | échevette |
référence | réf | ref | modèle | four | thermostat | degrés | température | moins | vent de |
rafales à | force | payé | paye | payer | coûte | coûté | vaut | valait | achète | acheté |
acheter | vendu | gagné | perdu | brodé | fini | terminé | vu | lu | regardé | bu | mangé |
attendu | dormi | compté | compte déjà | utilisé | utilise | j'utilise | commandé | reçu | fait |
passé | passer | mis | passe | pris | il m'a fallu | m'a fallu | il faut | faut | fallait |
merci pour | merci pour ces | merci pour les | bravo pour | bravo pour ces | pour ces | pour les |
pour mes | pour ses | durent | dure | duré | duraient | top | fois | multiplié par | divisé par |
égale | score de | noël | covid | version | chaîne | fréquence | option |
anniversaire le | anniversaire est le | rendez-vous le | retrouve le | retrouvons le | date du |
du | né le | née le | naissance le | le jour | en tant que numéro | fan numéro | fan n° |
je suis à la page | j'en suis à la page | suis à la page | en suis à la page | arrivée à la page |
arrivé à la page | j'arrive à la page | je brode la page | je termine la page | je finis la page |
ma page | coincée à la page | coincée page | je suis page | suis page | j'en suis page |
en suis au numéro | rendue à la page | de mes pages | les paquets de | paquet de | paquets de |
lot de | boîte de | groupe de | équipe de | famille de | à nous | à eux | y en a | il y en a |
sommes | on est | nous étions | étions | on était | étaient | seront | à partir de | dès |
recette pour | pour nous les | série de | grille de | une grille de | projet de | diagramme de |
ouvrage de
"""

OTHER_AFTER = """
sur 5 | sur 10 | sur 20 | sur 100 | an | ans | année | années | mois | semaine | semaines | jour |
jours | journée | journées | heure | heures | h | heures du | minute | minutes | min | mn | mns |
seconde | secondes | sec | siècle | siècles | décennies | nuit | nuits | soir | soirs | soirée |
soirées | matin | matins | après-midi | week-end | week-ends | hiver | hivers | été | étés |
printemps | janvier | février | mars | avril | mai | juin | juillet | août | septembre | octobre |
novembre | décembre | fois | fois par | chat | chats | chien | chiens | enfant | enfants |
petits-enfants | fille | filles | garçon | garçons | bébés | frère | frères | soeur | soeurs |
amies | copines | personne | personnes | gens | femmes | hommes | abonnés | abonnées | membres |
brodeuses | croix | points | point | pts | brin | brins | fil | fils | couleur | couleurs |
nuances | teintes | coloris | échevette | échevettes | bobines | bobinettes | cartonnettes |
aiguille | aiguilles | encours | en-cours | en cours | projet | projets | ouvrage | ouvrages |
grille | grilles | pages | page du livre | toile | toiles | cadres | tambours | tambour | vidéo |
vidéos | épisode | épisodes | chapitre | chapitres | parties | lignes | rangs | rangées |
colonnes | carrés | cases | cm | mm | m | km | mètre | mètres | kilomètre | kilomètres |
centimètres | pouces | kg | kilo | kilos | gramme | grammes | g | litre | litres | ml | degré |
degrés | noeuds | euro | euros | balles | sous | francs | dollar | dollars | centimes |
pour cent | pourcent | vues | commentaires | votes | voix | likes | j'aime | étoiles |
pouces bleus | tasse | tasses | café | cafés | thé | thés | gâteaux | gâteau | biscuits | verre |
verres | bougies | oeufs | tartines | crêpes | moutons | poules | chevaux | vaches | oiseaux |
bateaux | livres | romans | films | chansons | choses | trucs | raisons | essais | tentatives |
chances | places | pièces | maisons | étages | marches | mille | million | millions | milliers |
cents | centaines | dizaines | douzaines | d'entre nous | d'entre vous | d'entre elles | de mes |
de ces | de nos | de vos | de ses | par jour | par semaine | par mois | par an | du mat |
du matin | du soir | de l'après-midi | premières | premiers | premières pages | dernières |
derniers | autres | sacs | paquets | boîtes | paires | pelotes | pulls | écharpes | chaussettes |
ampoules | lampes | lumens | watts | volts | invités | cadeaux | cartes | lettres | mots |
messages | onglets | mains | doigts | yeux | vies | maris | pays | étapes | tours | rounds | ct |
count
"""

WEAK_BEFORE = """
en | dans | avec | à | de | d' | par | chez | que | les | est | a | ai | ont | deux | plus |
comme | sous | et demi | entre
"""

WEAK_AFTER = """
de | fois plus | et demi | et demie | plus | moins | heures | dans | pages | petites | petits |
belles | beaux | bonnes | grandes | grands | longues | longs | jolies | nouvelles | nouveaux |
sur
"""

NEUTRAL_BEFORE = """
oups | ouups | zut | mince | pardon | désolée | désolé | erreur | correction | attends | bonjour |
bonsoir | salut | coucou | hello | hey | kikou | re | bon | bonne | alors | donc | et | mais |
car | parce | ben | bah | eh bien | ah | oh | oui | non | ouais | ok | okay | allez | hop | zou |
voilà | voici | merci | bravo | magnifique | superbe | splendide | sublime | magique | génial |
géniale | super | top | waouh | wow | wouah | trop | beau | belle | joli | jolie | bises |
bisous | bisou | amitiés | toutes | tous | tout | monde | filles | la fille | mesdames | copines |
amies | les amis | famille | matin | soir | journée | soirée | semaine | dimanche | week-end |
pour | au | aux | des | un | une | ce | ces | cette | celle | celui | qui | il | elle | on |
c'est | est | sera | moi | toi | nous | vous | perso | personnellement | ici | là | maintenant |
aujourd'hui | enfin | bref | hum | euh | hmm | mmm | je | j' | suite | vidéo | page | numéro |
chiffre | tenter | sûr | sûre | certaine | hésiter | hésitation | réfléchir | réflexion | faute |
sais pas | idée | hasard | par hasard | au hasard | au pif | instinct | évidemment | forcément |
toujours | encore | aussi | comme | surprise | impatience | hâte | suspense | patience | courage |
bientôt | à bientôt | svp | stp | plaît | please | s'il | te | le | la | les | l | n | du |
d'accord | mon | ma | ton | ta | votre | notre | coeur | chouette | sympa | bizarre | facile |
simple | possible | peut-être | xx | lol | mdr
"""

NEUTRAL_AFTER = """
car | parce | parce que | parce qu'elle | puisque | comme | mais | et | ou | avec | sans | pour |
elle | il | est | c'est | ça | cela | qui | que | qu'elle | quand | où | si | je | j'ai | j'aime |
j'adore | j'espère | j'attends | j'hésite | tu | vous | on | nous | ils | elles | mon | ma | mes |
ton | ta | votre | vos | le | la | les | l | un | une | des | du | à | au | aux | dans | en |
par | me | te | se | bonne | bon | belle | beau | bonjour | bonsoir | coucou | salut | bise |
bises | bisous | bisou | bravo | hâte | vivement | a | sera | serait | semble | paraît |
toujours | encore | aussi | bien | très | trop | vraiment | absolument | voilà | oui | ouais |
ici | là | puis | ensuite | alors | donc | enfin | même | tout | tous | toutes | chez | depuis |
vers | bref | magnifique | superbe | super | génial | courage | continue | continuez | vive |
amitiés | à bientôt | bientôt | bonne journée | bonne soirée | bon courage | bonne continuation |
bon week-end | gros bisous | lol | mdr | ptdr | haha | hihi | héhé | xx | xxx | ne | n'est |
s'il | peut-être | et voilà | et hop | histoire | na | tiens | hein | quoi | svp merci | sinon |
plutôt | surtout | point | final | barre | les filles | mesdames | ce | cette | celle | ceux |
avant | après | pendant | jamais | rien | plus | moi | toi | lui | leur | qu'on | qu'il |
d'accord | allez | go | hop | please | merci | parole | promis | numéro | page | chiffre | porte |
fait | fera | va | irait | doit | cache | ressemble | m'a | m'appelle
"""
