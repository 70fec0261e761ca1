"""French words by which a page is chosen, ruled out, taken back, asked about or told of others."""

from __future__ import annotations

CHOICE_BEFORE = """
voulais écrire | voulais noter | ce qu'il y a sur | ce que cache | ce qui se cache sur |
qu'il y a derrière | avoir | fidèle à | fidèle au | toujours fidèle à | vote | votes | voté |
voter | votons | votez | je vote | vote pour | voté pour | voter pour | votons pour | vote sur |
vote va à | vote va pour | vote va sur | vote ira à | vote ira pour | vote ira sur | vote est |
vote c'est | vote sera | vote serait | vote se porte sur | vote pour moi | pr moi | à voté | a voté |
choix | choix est | choix c'est | choix sera | choix serait | choix se porte sur |
choix se portera sur | choix s'est porté sur | choix va à | choix va pour | choix va sur |
choisis | choisi | choisir | choisirais | choisirai | choisissez | choisissons | je choisis |
prends | prenons | prenez | prendrais | prendrai | prendre | propose | proposerais | proposerai |
proposition | suggère | suggérerais | suggestion | dis | dirais | dirai | disons | on dit |
je dis | veux | voudrais | voudrai | voulons | voudrions | veux voir | voudrais voir | aimerais |
aimerai | j'aimerais | j'aimerai | aimerais bien | j'aimerais bien | aimerais voir |
j'aimerais voir | bien voir | aimerions | j'aimerais bien voir | aimerais bien voir | voir |
souhaite | souhaiterais | souhaiterai | souhaite voir | préfère | préférerais | préférerai |
préférence pour | préférence va à | préférée est | préférée c'est | préféré est | opte pour |
opterais pour | opterai pour | j'opte pour | penche pour | pencherais pour | penche sur | tente |
tenterais | tenter | mise | mise sur | miserais sur | mets tout sur | mets une pièce sur |
pars sur | pars pour | pars avec | partirais sur | partirais pour | partons sur | partons pour |
part sur | part pour | partir sur | partir de | partez sur | pars de | go pour | vas-y pour |
va pour | vais pour | vais avec | irais pour | allons sur | allons-y pour | allez sur | va sur |
vais sur | go | reste sur | reste avec | reste à | reste fidèle à | maintiens | garde | je garde |
confirme | commence par | commencer par | commencez par | commençons par | commençais par |
commençait par | commence à | commencer à | commence avec | commence sur | commencer avec |
commencer sur | commencerais par | commencerai par | commencerions par | commençons avec |
commence la | débute par | débuter par | débutons par | démarre par | démarrer par | démarre sur |
démarre avec | démarrons par | attaque | attaque par | attaquer | attaquez | attaquons | entame |
entamer | fais | faire | faites | faisons | ferais | feras | on fait | on faisait | on prenait |
on commençait par | on brode | brode | brodez | brodons | broder | c'est | ce sera | ça sera |
ce serait | ça serait | sera | serait | que ce soit | que ce sera | pour moi | pour moi c'est |
pour moi ce sera | pour nous | pour moi ce serait | pour ma part | pour ma part c'est |
de mon côté | moi c'est | moi | moi je | nous | moi ce sera | moi ce serait | moi je dis |
moi je vote | quant à moi | ça va être | va être | mets | mettez | mets-moi | mettez-moi |
mettez-moi sur | mets-moi sur | note-moi | notez-moi | note | notez | notez-moi pour |
inscris-moi pour | compte-moi pour | comptez-moi pour | pourquoi pas | que diriez-vous de |
que dis-tu de | que dites-vous de | que penses-tu de | qu'en est-il de | que pensez-vous de |
pense à | je pense à | pense que c'est | j'hésite mais | mon coeur dit | coeur dit |
coup de coeur | coup de coeur pour | mon coeur va à | craque pour | craque sur | attirée par |
attiré par | team | équipe | je sens | je sens bien | sens bien | envie de | envie de voir |
bien envie de | j'ai envie de | donne | donnez | donnez-nous | donne-nous | donne ma voix à |
réponse | ma réponse | ma réponse est | change pour | changer pour | changez pour |
je change pour | modifie en | change en | passe à | passer à | je passe à | bascule sur |
voix pour | voix à | voix va à | voix va pour | sélectionne | sélection | désigne | élis |
verrais | verrais bien | je verrais bien | imagine | on veut | on voudrait | on aimerait |
on choisit | on vote | on part pour | on part sur | on propose | on dirait bien | besoin de |
me tente c'est | plaît c'est | tente bien c'est | me plaît | demande | réclame |
croise les doigts pour | doigts croisés pour | à fond pour | plaide pour | milite pour |
ravie avec | allez la | hop la | go la | zou la | intuition me dit | instinct me dit | intuition |
intuition dit | je voulais dire | voulais dire | voulais mettre | reviens à | retourne à |
jette mon dévolu sur | arrête sur
"""

CHOICE_AFTER = """
s'il vous plaît | s'il te plaît | s'il vous plaît merci | sil vous plaît | sil te plaît | svp |
stp | svpp | steuplaît | siouplaît | s'il-vous-plaît | s'il-te-plaît | si possible | pour moi |
pour moi merci | pour nous | pour ma part | pour mon vote | de ma part | de mon côté | merci |
merci d'avance | merci beaucoup | merci à vous | merci à toi | sans hésiter | sans hésitation |
évidemment | bien sûr | bien entendu | c'est mon choix | est mon choix | mon choix | mon vote |
est mon vote | c'est mon vote | me plaît | me plaît bien | me plairait | me plairait bien |
me tente | me tente bien | me tenterait | me parle | m'attire | m'inspire | m'inspire bien |
m'appelle | me fait envie | me fait de l'oeil | me dit bien | me va | me va bien | serait bien |
serait top | serait chouette | serait sympa | serait super | serait parfait | serait parfaite |
serait génial | serait idéale | serait bien pour commencer | ce serait bien | ce serait top |
ce serait super | ça serait bien | ça me va | ira très bien | fera l'affaire | a ma préférence |
a mon vote | a ma voix | aura ma voix | aura mon vote | remporte mon vote | pour commencer |
pour débuter | pour démarrer | pour cette semaine | pour cette fois | pour la suite |
pour la prochaine | pour la première page | comme première page | comme prochaine page |
en premier | d'abord | est la bonne | c'est la bonne | je vote | je dis | je choisis | je prends |
je pense | je crois | je dirais | je propose | je préfère | sera mon choix | sera parfaite |
sera très bien | obligé | à fond | please | pliz | sans aucun doute | sans réfléchir | direct |
forever | volontiers | de préférence | absolument | a l'air bien | a l'air sympa |
a l'air intéressante | non ? | hein ?
"""

NOT_BEFORE = """
ne | pas | pas du tout | surtout pas | pas pour | non pas | mais pas | et pas | jamais |
plus jamais | sauf | tout sauf | toutes sauf | tous sauf | n'importe laquelle sauf |
n'importe quoi sauf | hormis | excepté | mis à part | à part | à l'exception de | tout mais pas |
toutes mais pas | ni | sans | plutôt que | au lieu de | à la place de | autre que |
autre chose que | évite | évitez | évitons | éviter | pas envie de | pas question de |
hors de question de | contre | non à | je déteste | déteste | ne commence pas par |
ne commencez pas par | pas commencer par | pas par | pas avec | pas sur | laissez tomber |
oubliez | oublie
"""

NOT_AFTER = """
non | non merci | surtout pas | jamais | jamais de la vie | sûrement pas | certainement pas |
est exclue | hors de question | me fait peur | porte malheur | pas question | non plus |
ne me plaît pas | ne me tente pas | ne me dit rien | pas trop | ça porte malheur | c'est non |
me déplaît | ne l'écoutez pas | ne l'écoute pas | ne l'écoutons pas | n'importe quoi
"""

CORRECTION = """
mais bon | mais tant pis | tant pis | euh non | ah non | oh non | heu non | non pardon | non non |
non attends | non attendez | attends | attendez | oups | ouups | zut | mince | pardon |
je voulais dire | voulais dire | je voulais mettre | je voulais écrire | je veux dire | erreur |
je rectifie | rectification | je corrige | correction | edit | édit | modification | je change |
je change d'avis | changement d'avis | j'ai changé d'avis | changé d'avis | finalement je |
finalement la | finalement non | non finalement | en fait non | en fait je | en fait la |
ou plutôt | enfin non | enfin plutôt | je me suis trompée | je me suis trompé | me suis trompée |
trompée | trompé | faute de frappe | je me corrige | au temps pour moi | autant pour moi |
je plaisante | je rigole | je blague | c'est une blague | c'est pour rire | lol non | mdr non |
haha non | nan | non mais | réflexion faite | tout compte fait | à la réflexion |
après réflexion | toutes réflexions faites | remplacez par | changez en | mal tapé | gros doigts |
mon doigt a glissé | n'existe pas | il n'y a pas de | y'a pas de | bon d'accord | bon ok
"""

#: Said of a page that another stands in for: "la 22 si elle est prise".
TAKEN = """
si elle est prise | si elle est déjà prise | si elle est déjà brodée | si elle est déjà faite |
si elle est déjà choisie | si elle est occupée | si elle n'est pas libre |
si elle n'est plus libre | si elle n'est pas dispo | si elle n'est plus dispo |
si elle n'est pas disponible | si elle n'est plus disponible | si elle a déjà été |
si déjà prise | si déjà pris | si prise | si pris | si c'est pris | si c'est déjà pris |
si pas libre | si pas dispo | si pas disponible | si pas possible | si ce n'est pas possible |
si celle-là est prise | si celle-ci est prise | si la première est prise |
si jamais elle est prise | au cas où elle serait prise | au cas où elle est prise |
si quelqu'un l'a déjà | si quelqu'un l'a prise
"""
TAKEN_AFTER = "et | ou | mais | puis | , | . | ; | - | ( | et sinon | ou alors"

CONDITION = """
si elle est libre | si elle est encore | si elle est dispo | si elle est disponible |
si elle est toujours | si elle n'est pas prise | si elle n'est pas déjà | si personne |
si tout le monde | si c'est encore | si c'est libre | si c'est dispo | si ce n'est pas déjà |
si ce n'est pas pris | si c'est pas pris | si c'est pas déjà | si pas déjà | si pas prise |
si libre | si dispo | si encore libre | si encore dispo | si disponible | si toujours libre |
si les autres | si la majorité | si elle gagne | si quelqu'un | sauf si | à moins que |
à moins qu'elle | seulement si | uniquement si | à condition que | pourvu que |
tant que personne | si mon mari | si ma soeur | si celle-là | si celle-ci | si c'est celle |
si elle contient | du moment que
"""

REPORTED_BEFORE = """
tout le monde dit | tout le monde veut | tout le monde vote | tout le monde choisit |
tout le monde prend | tout le monde préfère | tout le monde a | tout le monde va |
tout le monde est | tout le monde semble | tout le monde parle | tout le monde demande |
tout le monde aime | les gens | beaucoup de | beaucoup disent | beaucoup veulent | beaucoup ont |
la plupart | la majorité | majorité | les autres | certains | certaines | quelqu'un |
personne n'a | personne ne | personne | vous voulez toutes | vous voulez tous |
vous dites toutes | vous dites tous | vous votez toutes | vous votez tous | vous choisissez tous |
vous choisissez toutes | ils veulent | elles veulent | ils disent | elles disent | on dirait que |
je vois que | je vois beaucoup | je vois plein | plein de | j'allais dire | j'allais voter |
j'allais choisir | j'avais dit | j'ai failli | failli | j'hésitais | je pensais à | je pensais |
j'avais pensé | j'avais choisi | j'avais voté | j'aurais dit | j'aurais bien dit |
j'aurais bien pris | j'aurais pris | j'aurais choisi | j'aurais bien choisi | la dernière fois |
la fois dernière | dernière fois | semaine dernière | dernier tour | au dernier vote | va gagner |
je parie | parie que | pronostic | les commentaires | tant de | si nombreux | en tête |
les filles veulent | vous êtes nombreuses | vous êtes nombreux | ils ont | tentée par |
tenté par
"""

FAMILY_BEFORE = """
mari | époux | homme | chéri | chérie | femme | épouse | copain | copine | conjoint | conjointe |
compagnon | compagne | fils | fille | enfants | enfant | petite-fille | petit-fils | maman |
mère | papa | père | soeur | frère | amie | ami | voisine | voisin | mamie | papi | papy |
grand-mère | grand-père | collègue | patron | patronne | chat | chatte | chien | tante | tata |
oncle | tonton | cousine | cousin | nièce | neveu | belle-mère | belle-soeur | colocataire |
bébé | loulou | puce | petite dernière | aînée | aîné | cadette | cadet | perroquet | il dit |
elle dit | il veut | elle veut | il préfère | elle préfère | ados | ado
"""

REPORTED_AFTER = """
gagne | va gagner | va l'emporter | l'emporte | a gagné | gagnera | est en tête | mène |
est déjà prise | est prise | est déjà faite | était déjà faite | était déjà prise |
est déjà pris | est déjà brodée | est populaire | a la cote | fait l'unanimité | dit mon |
dit ma | dit-il | dit-elle | disent | sort souvent | revient souvent | a été choisie |
a déjà été | est très demandée | pour mon mari | selon mon | selon ma | d'après mon |
était en tête | semble gagner | c'est déjà pris | a déjà été choisie | a déjà été prise
"""

ASKING = """
est-ce que | est-ce qu'on | est-ce qu'il | est-ce qu'elle | est-ce | quelqu'un | qui | pourquoi |
quand | combien | comment | a-t-on | a-t-elle | as-tu | avez-vous | avons-nous | y a-t-il |
y a t-il | est-elle | est-il | sont | est | quelle | quelles | quel | quels | qu'est-ce | qu'en |
personne | on a | a-t-il | était-ce | faut-il | peut-on | aviez-vous | c'est | il y a | ya | y a |
dis-moi | dites | vous avez | tu as | déjà
"""

SUGGESTING = """
que diriez-vous | que dirais-tu | que dis-tu | que dites-vous | et si | pourquoi pas | peut-on |
pourrait-on | pourrions-nous | pourrais-tu | pourriez-vous | peux-tu | pouvez-vous |
est-ce qu'on peut | est-ce que je peux | est-ce que tu peux | on peut | est-ce qu'on pourrait |
est-ce que vous pouvez | est-ce que c'est possible | puis-je | puis je | pourrais-je | svp | stp |
s'il | qu'en pensez | qu'en penses | qu'en dites | qu'en dis | ça vous dit | ça te dit | je peux |
j'ai le droit | trop tard | est-il trop tard | est-ce trop tard | serait-il possible |
est-il possible | veux-tu | voulez-vous | c'est possible | je vote | je choisis | je dirais |
peut-être | accepteriez-vous | ce serait | ça serait | on ferait | on fait | on part
"""

WITHDRAWN = """
annule mon | annulez mon | annuler mon | annule ma | annulez ma | annulez mon vote | j'annule |
oublie mon | oubliez mon | oublie ma | oubliez ma | retire mon | retirez mon | retirer mon |
retirez ma | retire ma | supprime mon | supprimez mon | supprimez ma | ignore mon | ignorez mon |
ignorez ma | ignore ma | enlève mon | enlevez mon | enlevez-moi | efface mon | effacez mon |
reprends mon vote | reprends ma voix | ne compte pas mon | ne comptez pas mon |
ne comptez pas ma | ne compte pas ma | comptez pas mon | compte pas mon | ne me comptez pas |
ne me compte pas | ne tenez pas compte de mon | ne tenez pas compte de ma | tenez pas compte de |
ne prenez pas en compte | ne prends pas en compte | laissez tomber mon | laisse tomber mon |
mon vote ne compte pas | mon vote est annulé | finalement je ne vote pas |
finalement je ne vote plus | je ne vote plus | je retire | je me retire | vote nul |
en fait je ne vote pas | biffez mon | rayez mon
"""

ABSTAINING = """
je ne vote pas | je vote pas | ne voterai pas | pas de vote pour moi | pas de vote | aucun vote |
je m'abstiens | abstention | je passe mon tour | passe mon tour | sans vote | je ne choisis pas |
je choisis pas | je ne participe pas | sans opinion | aucune préférence | pas de préférence |
je laisse les autres | je vous laisse choisir | je te laisse choisir | je vous fais confiance |
je te fais confiance | je ne sais pas encore | je sais pas encore | pas encore décidé |
pas encore décidée | je réfléchis encore | je n'ai pas d'avis | choisissez pour moi |
choisis pour moi | ça m'est égal | peu m'importe
"""

POINTING = """
vote comme * | vote comme * * | vote pareil que * | vote pareil que * * | je vote comme * * |
je vote pareil que * * | pareil | pareil que | pareille | idem | comme au-dessus |
comme ci-dessus | comme au dessus | qu'au-dessus | que ci-dessus | même chose | même chose que |
même page | même page que | même numéro | même choix | même vote | même avis | la même |
la même que | comme elle | comme lui | comme vous | comme toi | comme d'habitude |
comme la dernière fois | moi aussi | ditto | +1 | mon âge | mon anniversaire |
ma date de naissance | mon jour de naissance | mon mois de naissance | mon année de naissance |
ma pointure | le numéro de ma maison | mon numéro de maison | mon numéro de rue |
mon département | mon code postal | mon chiffre porte-bonheur | ma date de mariage |
ce que dit * | ce qu'a dit * | je suis l'avis de * | je copie | celle d'au-dessus | je plussoie
"""

KINDS = """
page paire | pages paires | page impaire | pages impaires | numéro pair | numéro impair |
nombre pair | nombre impair | chiffre pair | chiffre impair | nombre premier | une paire |
une impaire | multiple de | divisible par | deux chiffres | un seul chiffre | page du bord |
pages du bord | sur le bord | au bord | un bord | bordure | page du tour | le contour |
trentaine | vingtaine | quarantaine | cinquantaine | soixantaine | dizaine | grand nombre |
petit nombre | grand numéro | petit numéro | moitié haute | moitié basse | moitié gauche |
moitié droite | moitié supérieure | moitié inférieure | rangée du haut | rangée du bas |
rangée du milieu | première rangée | dernière rangée | ligne du haut | ligne du bas |
ligne du milieu | première ligne | dernière ligne | colonne de gauche | colonne de droite |
colonne du milieu | première colonne | dernière colonne | côté gauche | côté droit | à gauche |
à droite | sur la gauche | sur la droite | vers le haut | vers le bas | vers le milieu |
vers le centre | vers la fin | vers le début | plutôt en haut | plutôt en bas | plutôt au milieu |
quelque part en haut | quelque part en bas | quelque part au milieu | près du centre |
près du bord | plutôt à gauche | plutôt à droite
"""
