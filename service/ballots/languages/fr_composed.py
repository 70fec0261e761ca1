"""French phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THE = "la | le | l | cette | celle | ma | mon | sa | pour la | sur la | à la | de la |"
_CHOSEN = "pris | prise | choisi | choisie | demandé | demandée | réservé | réservée | voté | votée"
_STITCHED = "fait | faite | brodé | brodée | sorti | sortie | passé | passée | dévoilé | dévoilée"
_FREE = "dispo | disponible | libre | partie | parti | prenable | en jeu | à prendre | là"
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = """
du dessus | au-dessus | au dessus | juste au-dessus | juste au dessus | plus haut | ci-dessus |
avant moi | d'avant | précédente | précédent | qui précède
"""
_SAID = (
    "dit | a dit | a choisi | a voté | a pris | a mis | disait | propose | choisit | prend | vote"
)
_MINE = "ma * | mon * | notre * | mes * | nos * | la * de ma * | ma * *"
_RANKS = "premier | 1er | deuxième | 2e | 2eme | second | troisième | 3e | 3eme"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "not_after": phrases(
        "y en a pas | il y en a pas | il n'y en a pas | y'en a pas | n'existe pas | existe pas"
    ),
    "everyday": phrases("jsp | pcq | psk | pck | parceque | jsuis | chuis | jdis | jveux | stpp"),
    "neutral_before": phrases("jsp | chuis | jsuis | ptet | ptetre | carrement | franchement"),
    "neutral_after": each_of("à | en | par | contre | pour | avec", "la | le |", "#")
    + phrases(
        """
        jsp | pcq | pcque | psk | pck | parceque | pourquoi | yes | youpi | nickel | hihihi |
        aucune idée | allez savoir | mon âge | d'office | direct
        """
    ),
    "choice_before": each_of(
        "je me laisse | me laisse | on se laisse | me suis laissée",
        "tenter | séduire | porter",
        "par | vers",
    )
    + each_of(
        "j'ai | j'ai comme | gros | un petit |",
        "un faible | coup de coeur | un coup de coeur | un penchant | une petite préférence",
        "pour | sur",
    )
    + each_of(
        "tu nous | vous nous | on | nous | tu me | tu peux | vous pouvez | pouvez-vous | peux-tu",
        "attaque | attaques | attaquez | fais | faites | faire | brode | brodes | brodez | broder | "
        "dévoile | dévoiles | montre | montres | montrer | mettre",
    )
    + each_of(
        "mets | mettez | note | notez | inscris | inscrivez | compte | comptez | place | placez",
        "moi | nous | ma voix | mon vote | mon nom |",
        "pour | sur | dans | en | au",
    )
    + each_of(
        "mon | notre | le",
        "choix | vote | coup de coeur | préféré",
        "se portera | se porte | se portait | s'arrête | s'est arrêté | tombe | irait | ira | va | "
        "reste | serait",
        "sur | pour | à |",
    )
    + each_of(
        "ça serait | ce serait | serait",
        "cool | chouette | top | bien | super | génial | sympa",
        "d'avoir | de voir | de faire | que ce soit | si c'était",
    )
    + each_of(f"{_RANKS}", "choix | voeu | vote", ": | = | est | c'est | la |")
    + each_of("en", f"{_RANKS}")
    + each_of("je mettrais | je mettrai | je placerais | je jouerais | je voterais", "bien |")
    + phrases(
        """
        c | moi c | pr moi c | pr moi | g choisi | g pris | jvote | jchoisis | jprends | jdis |
        jveux | j'vote | j'dis | j'choisis | ma préférence serait | de préférence | mon voeu |
        mon souhait | mon souhait serait | ma favorite | ma favorite est | ma préférée
        """
    ),
    "choice_after": each_of(
        "me | m'",
        "ferait | feraient | fait | ferais",
        "plaisir | très plaisir | trop plaisir | envie | trop envie | rêver",
    )
    + each_of(
        "serait | ce serait | ça serait", "cool | canon | trop bien | une bonne idée | un bon choix"
    )
    + phrases(
        "pr moi | pr nous | pour bibi | stpp | siouplait | sivouplait | sil te plait merci | "
        "de préférence | si tu veux bien | si vous voulez bien"
    ),
    "not_before": each_of("et non | et pas | et non pas | non pas | mais pas | plutôt que", _THE),
    "reported_before": phrases(
        "on m'a dit | m'a dit | m'ont dit | on me dit | on m'a conseillé | m'a conseillé | j'ai entendu"
    )
    + each_of(
        "quelqu'un a | personne n'a | on a | qui a | a | as | avez | n'a | ont | l'ont | a-t-elle",
        "déjà | encore | pas encore | jamais | deja",
        "pris | choisi | fait | brodé | demandé | réservé | eu | donné | mis | proposé",
        "la | le | pour la | sur la",
    )
    + each_of(
        "d'accord | daccord | du même avis | de l'avis | du même avis que",
        "avec | de | pour",
        "la | le | celle qui dit | ceux qui disent | la * qui dit |",
    )
    + each_of(
        "celle | celui | dame | personne | copine | ceux | madame | fille",
        "qui",
        "a dit | dit | ont dit | disent | a choisi | a pris | a voté | vote",
    ),
    "reported_after": each_of(
        "est | c'est | a | elle est | serait | est-elle | était",
        "déjà | encore | toujours | deja",
        f"{_CHOSEN} | {_STITCHED} | {_FREE} | été",
    )
    + each_of(
        "pas encore | toujours pas | déjà | encore | deja", f"{_CHOSEN} | {_STITCHED} | {_FREE}"
    ),
    "asked_later": each_of(
        "c'est | est-elle | elle est | est | ou c'est | ou elle est",
        "déjà | encore | toujours | deja",
        f"{_CHOSEN} | {_STITCHED} | {_FREE}",
    ),
    "pointing": each_of(
        "la page | celle | le numéro",
        "avec | de | du | qui porte",
        "mon numéro de maison | ma maison | mon numéro | mon âge | mon anniversaire | mon adresse",
    )
    + each_of(
        "même | la même | le même | pareil | pareille | idem | comme", "que |", _OTHERS, _ABOVE
    )
    + each_of(
        "ce qu'elle | ce qu'il | ce qu'elles | comme elle | celle qu'elle | ce que tu | comme il",
        "a | ont | as | vient de |",
        "dit | dire | choisi | pris | mis | voté | dis",
    )
    + each_of(
        "ce que | comme | celle que | pareil que | même que", "* | la * | ma * | mon * | * *", _SAID
    )
    + each_of(
        "l'âge | l'anniversaire | l'anniv | la date de naissance | le jour de naissance | "
        "le numéro de maison | la taille | l'année de naissance",
        "de",
        _MINE,
    )
    + phrases(
        """
        mon âge | mon jour d'anniversaire | le jour de mon anniversaire | le jour de mon anniv |
        le numéro de ma rue | mon numéro de rue | ma date d'anniversaire | celle du dessus |
        celle d'au dessus | la réponse du dessus | la page de mon anniversaire
        """
    ),
    "withdrawn": each_of(
        "retire | retirez | annule | annulez | supprime | supprimez | enlève | enlevez | oublie | "
        "oubliez | efface | effacez | ignore | ignorez",
        "ma | mon | le | mon dernier | mon premier",
        "vote | voix | participation | choix | commentaire | message | bulletin",
    ),
    "abstaining": each_of(
        "je te laisse | je vous laisse | on te laisse | à toi de | à vous de | c'est toi qui",
        "choisir | décider | voir | choisis | décides | le choix",
    )
    + phrases(
        """
        peu importe | peu importe laquelle | toutes me vont | surprends-nous |
        surprends nous | surprenez-nous | ton choix sera le mien |
        celle que tu veux | celle que vous voulez | comme tu veux | comme vous voulez
        """
    ),
    "kinds": each_of(
        "dans les | vers les | plutôt dans les | une page dans les",
        "vingtaines | trentaines | quarantaines | cinquantaines | soixantaines | dizaines",
    )
    + each_of(
        "une page | une | n'importe quelle page | n'importe laquelle | quelque chose",
        "du | au | dans le | vers le | côté",
        "bas | haut | milieu | bord | centre | fond",
    ),
    "replacing": phrases(
        """
        échangez | échangeons | remplaçons | troque | troquer | troquez | bascule | transforme |
        transformer | transformez | modifie | modifier | modifiez | changeons | switch | mettre
        """
    ),
    "replaced_by": each_of("à | en | par | contre | pour | avec", "la | le | une | un |"),
    "roughly_before": each_of(
        "aux alentours | dans les environs | aux environs | quelque part autour | autour | près | "
        "pas loin | à proximité",
        "de | de la | du",
    )
    + phrases("dans les eaux de | vers la | vers le | plus ou moins la | à peu près la"),
    "other_before": phrases(
        "on se voit le | on se retrouve le | on se voit | rendez-vous le | rdv le | à bientôt le | vivement le | on part le | je pars le | salon le"
    )
    + each_of(
        "année de naissance | date de naissance | année | anniversaire | anniv | anniversaire tombe",
        "c'est | est | c'est le | est le | en | le",
    )
    + each_of(
        "sur de la | sur | en | sur du | avec du | de la |",
        "l'aida | d'aida | l'aïda | aida | lin | toile | l'étamine",
        "en | de |",
    )
    + each_of("gagné | perdu | gagne | perd | match nul | mené | menait", "# à | # a |")
    + each_of("gagné | perdu | gagne | perd | mené", "# |", "- | à | a")
    + phrases(
        """
        chambre | salle | box | lit | ligne | bus | tram | quai | voie | porte | hall | place n° |
        fait mes | marché | parcouru | couru | roulé | fait à pied
        """
    ),
    "other_after": phrases(
        """
        bornes | kil | kils | pas | brins de | fils de | ct | counts | à la maison | à zéro |
        partout | étages | rues | pages à broder | pages à faire | pages encore | heures de route
        """
    ),
    "part_of": phrases("de | du | des | d' | de mon | de ma | de la"),
    "whole_chart": phrases(
        "de l'ensemble | de la toile | du plan | du tableau | de la carte entière | de ta grille | "
        "de votre grille | de ce modèle | de ce motif | du schéma"
    ),
    "last": phrases("ultime | toute dernière | la der | der"),
    "sum_before": phrases("la moitié | moitié | double | le triple de | triple de"),
    "times": phrases("x | foi | multiplié par"),
    "plus": phrases("ajouté à"),
    "minus": phrases("ôté de"),
}
