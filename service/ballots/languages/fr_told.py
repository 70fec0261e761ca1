"""French votes told in a roundabout way, and talk that only sounds like a vote."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THAT = "ça | cela | celle-là | celle là | ce chiffre | ce nombre | cette page"
_FACT = """
anniversaire | âge | date de naissance | année de naissance | numéro de maison | pointure |
numéro de rue | numéro porte-bonheur | chiffre fétiche | jour de naissance
"""

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "saying": phrases("avait écrit | a écrit | a mis | avait mis | a commenté"),
    "printed": phrases("magazine | journal | livre | bouquin | roman | catalogue | bd"),
    "voting": phrases("""
        vote | je vote | mon vote | mon choix | je choisis | votons | voter | je prends
        """),
    "rated": phrases("mets un | je mets un | c'est un | vaut un"),
    "finished": phrases("finie | fini | terminée | terminé | faite"),
    "halving": phrases("moitié de | la moitié de"),
    "any_of": phrases("tout ce qui est | n'importe quelle page | quelque chose"),
    "torn": phrases("""
        hésite | j'hésite | hesite | balance | partagée | partagé | indécise | choisir
        """),
    "other_after": each_of(
        "de l'album | du disque | de la liste | du livre | sur le disque | au loto | en tout | au total"
    )
    + phrases("par soir | par jour | par semaine | le soir"),
    "choice_after": phrases(
        "c'est décidé | c'est choisi | décidé | c'est tout vu | c'est mon choix"
    ),
    "winning": phrases("gagne | l'emporte | a gagné"),
    "wondering": phrases("si le | si la | si c'est | si je | quoi | comment"),
    "again": phrases("encore | encore une fois | toujours"),
    "named_before": phrases("encore la | encore le | encore une fois la")
    + phrases("d'accord avec | d'accord avec la | d'accord pour la | comme la"),
    "answered": phrases("si oui | dans ce cas | si c'est le cas | sinon | si non | alors"),
    "today": phrases("aujourd'hui | demain"),
    "wishing": each_of(
        "si",
        "je | j' | j'avais | j'étais | j'osais | on |",
        "pouvais | avais | étais | osais | pouvait | avait",
    )
    + phrases(
        """
        si j'étais | si j'avais | si j'osais | si j'avais pu | si seulement | j'aurais aimé | j'aurais voulu |
        j'aurais bien aimé | j'aurais bien voulu | j'aurais préféré | dommage pour
        """
    ),
    "turning": phrases("mais | bref | enfin | sinon | du coup | tant pis"),
    "reported_before": each_of(
        "a | ont | avait", "pris | choisi | voté | dit", "la | le | pour la |"
    )
    + each_of(
        "j'aurais | j'aurais bien | on aurait | j'ai failli | j'allais",
        "dit | choisi | pris | voté | voté pour | mis | dire | choisir | prendre | voter | voter pour",
    )
    + each_of(
        "amis | amies | copines | copains | filles | enfants | ils | elles | vous",
        "ont | avez",
        "dit | choisi | voté | pris",
    )
    + phrases("tu as dit | tu avais dit | vous aviez dit | je crois que c'était | c'était"),
    "reported_after": phrases("un jour | un de ces jours | une prochaine fois | plus tard")
    + each_of(
        "elle est | c'est | est-elle | elle a été | c'était",
        "prise | déjà prise | faite | déjà faite | libre",
    ),
    "asked_plainly": phrases(
        "sûrement déjà prise | sûrement prise | sans doute prise | déjà prise je pense | doit être prise | je crois qu'elle est prise | prise ou pas | prise ou non | libre ou pas | est prise ou"
    ),
    "sum_after": phrases("au carré | au cube"),
    "it_is": phrases("il fait | on a | il y a | c'est | on est à"),
    "weather": phrases("ici | dehors | à l'ombre | degrés | chez nous | chez moi"),
    "other_before": each_of(
        "j'ai | on a | elle a | j'avais",
        "commencé | débuté | fini | terminé",
        "par | à | avec | sur",
        "le | la |",
    )
    + phrases("j'en suis à la | maintenant je suis à la")
    + phrases("""
        j'en ai | maintenant j'en ai | j'en aurai | j'en avais | j'en ai maintenant
        """)
    + phrases(
        "on est le | on est déjà le | nous sommes le | aujourd'hui c'est le | c'est déjà le | il fait ici | il fait déjà | séance | on a ici | il fait encore"
    ),
    "owning": phrases("mon | ma | mes | notre | nos | son | sa | ses | leur"),
    "own_piece": each_of("du | de la | des", "mien | mienne | miens | miennes | nôtre")
    + each_of("de", "mon | ma | mes | notre | nos | son | sa"),
    "whereabouts": phrases(
        "suis | j'en | en | encore | toujours | actuellement | bloquée | bloqué | arrivée | arrivé | rendue | terminé | fini | finie | attaque"
    ),
    "being": phrases("ont | sont | avait | aura | va"),
    "choice_before": each_of(
        "mets | mettez | met | je mets | coche | cochez",
        "une | un | ma | mon",
        "croix | coche | point | pion | doigt | épingle | nom | étoile",
        "sur | à côté de | dans | à | devant",
        "la | le |",
    )
    + each_of(
        "on | tu | vous | nous |",
        "passe | passes | passez | passons | saute | va | allons | attaque",
        "à | sur | vers",
        "la | le |",
    )
    + phrases("allez | allez la | allez hop la | vas-y la | vas y la | en avant pour la | go la"),
    "concluding": phrases(
        "mais plutôt | mais de préférence | plutôt | de préférence | surtout | mais surtout | donc"
    ),
    "pointing_back": each_of(
        "voilà | c'est | ce sera | donc | alors | voici",
        "mon | ma",
        "vote | choix | numéro | page | chiffre | réponse",
    )
    + each_of(
        "prends | prenez | prenons | utilise | utilisez | va pour | on prend | je prends | fais | faites | vote pour | choisis",
        _THAT,
    )
    + phrases(
        "à vous de voir | à toi de voir | celle-là svp | beau cadeau | joli cadeau | comme cadeau | ce serait un cadeau | pour mon anniversaire | un signe | celle-là alors | ça tombe bien"
    ),
    "own_facts": each_of("mon | ma | l' | le | la |", _FACT)
    + each_of(
        "l'anniversaire | l'âge | la date de naissance | anniversaire | âge | le numéro",
        "de",
        "* | * * | * * *",
    )
    + each_of("le nombre de | nombre de", "* | * *", "que j'ai | chez moi"),
    "as_named": phrases("comme | pareil que | même que | la même que | comme ma copine | idem que"),
    "pointing": each_of(
        "la même | le même",
        "chose | page | réponse | numéro | que",
        "que | qu'",
        "* | la * | le * | ma * | mon * | moi",
    ),
    "described": each_of(
        "celle | la page | le carré | la case | le morceau | celui",
        "avec | où | qui a | du | de la | qui montre | près du | près de la | sous le | sous la | au-dessus du",
    ),
    "told_from_last": phrases("l'avant-dernière | l'avant dernière | avant-dernière page"),
    "because": phrases("parce que | parce qu' | car | pcq | vu que | puisque"),
    "asked_later": phrases(
        "c'est libre | c'est pris | elle est libre | elle est prise | c'est encore libre | c'est déjà pris | elle est dispo | c'est dispo"
    ),
    "abstaining": phrases("""
        à toi de trancher | à toi de décider | à toi de choisir | tranche pour nous |
        départage nous | départagez nous
        """)
    + phrases(
        "mais je ne sais pas | mais je sais pas | mais je sais pas trop | mais pas sûre | mais bon je sais pas | j'hésite | j'hésite encore | je ne sais pas encore | pas sûre | pas encore décidée | je n'arrive pas à choisir | n'arrive pas à me décider"
    ),
    "letting_choose": each_of(
        "laissé | laisse | fait",
        "choisir | décider | tirer",
        "ma | mon | le | la | mes | à ma | à mon |",
        "* |",
    ),
    "neutral_after": phrases("pis | pis bonne | pile | pile poil | tout rond | tout pile"),
}
