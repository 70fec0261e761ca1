"""French, as viewers write it under a video, in Europe, Canada and Africa."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import fr_choices, fr_composed, fr_counts, fr_numbers, fr_told
from service.ballots.languages.spelling import extended, one_after_another

_PLAIN = Language(
    code="fr",
    plural_s=True,
    everyday=phrases(
        """
        je | j'ai | j'aime | j'adore | j'aimerais | j'espère | j'hésite | c'est | c'était | moi |
        toi | tu | vous | nous | ils | elle | elles | mon | ma | ton | ta | tes | votre | vos |
        notre | nos | le | la | les | des | du | au | aux | et | ou | où | mais | donc | car |
        pour | avec | sans | dans | sur | chez | est | sont | suis | sera | serait | était | ai |
        vais | va | ça | ce | cet | cette | ces | qui | quoi | quel | quelle | quelqu'un | bien |
        trop | plus | pas | ne | n'est | qu'elle | s'il | plaît | svp | stp | merci | bonjour |
        bonsoir | salut | coucou | bravo | belle | beau | jolie | voir | hâte | choisis | choix |
        aussi | encore | toujours | alors | voilà | oui | bisous | bises | tout | tous | toutes |
        faire | fait | d'accord | puis | parce | sinon | plutôt | celle | celui | dirais |
        prends | vote | déjà | sauf | peut | chiffre | numéro | entre | vers | haut | bas | coin |
        droite | gauche | dernière | première | milieu | mari | personne | monde | pareil | de |
        que | me | te | se | un | une | j'en | qu'il | l'autre | être | sous | rien | jamais |
        on | si | non | euh | ni | par | comme | même | moins | peu | assez | leur | leurs | lui |
        eux | chaque | autre | autres | d'un | d'une | l'on | j'y | qu'on | après | avant |
        depuis | pendant | jusqu'à | fois | jour | semaine | ans | an | petit | petite | grand |
        grande | mieux | voudrais | veux | veut | peux | faut | dire | dit | fais | prendre |
        allez | sommes | avait | avez | avons | ont | été | vraiment | plusieurs | ici |
        maintenant | demain | ceux | aucune | commence | commencer | finalement | choisir | page |
        numéros | euros | faisait | ferait | pense | crois | propose | préfère | chose | l'a |
        m'a | t'a | n'a | ben | ouais | seule | seul | courage | patience | ouvrage | brode |
        broder | vidéo | sais | trouve | aucun | autant
        """
    ),
    numbers=fr_numbers.numbers(),
    ordinals=fr_numbers.ordinals(),
    ordinal_endings=frozenset({"e", "eme", "ieme", "er", "re", "nd", "de"}),
    homophones={"de": 2, "set": 7, "cet": 7, "cette": 7, "sait": 7, "sais": 6, "oui": 8, "uite": 8},
    page=phrases("page | pages | p | pp | pg | pag | page numéro | page num | page nr | page no"),
    number=phrases("numéro | num | nr | no. | n. | numéros | nombre | chiffre"),
    fillers=phrases(
        """
        la | le | les | l | n | ma | mon | celle | vraiment | bien | plutôt | donc | alors |
        peut-être | sûrement | certainement | absolument | simplement | simple | juste | aussi |
        également | toujours | encore | svp | stp | s'il vous plaît | s'il te plaît | petite |
        petit | jolie | joli | belle | beau | bonne | bon | fameuse | définitivement | carrément |
        évidemment | obligatoirement | forcément | clairement | franchement | direct |
        directement | cette fois | du coup | euh | hum | allez | sans hésiter | sans hésitation |
        personnellement | perso | maintenant | aujourd'hui | quand même | ici | finalement |
        de nouveau | tout simplement | bien sûr | d'abord | oui | une | un | votre | ta | notre |
        cette | logiquement | volontiers | éventuellement | en premier | pour commencer
        """
    ),
    choice_before=phrases(fr_choices.CHOICE_BEFORE),
    choice_after=phrases(fr_choices.CHOICE_AFTER),
    other_before=phrases(fr_counts.OTHER_BEFORE),
    other_after=phrases(fr_counts.OTHER_AFTER),
    weak_before=phrases(fr_counts.WEAK_BEFORE),
    weak_after=phrases(fr_counts.WEAK_AFTER),
    neutral_before=phrases(fr_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(fr_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        porte-bonheur | porte bonheur | porte-bonheur est | porte-bonheur c'est |
        porte bonheur c'est | porte bonheur est | chiffre préféré | chiffre préféré est |
        chiffre préféré c'est | numéro préféré | numéro préféré est | numéro fétiche |
        numéro préféré c'est | nombre préféré | nombre préféré est | nombre préféré c'est |
        chiffre fétiche | chiffre est | chiffre fétiche est | chiffre fétiche c'est |
        chiffre chance | chiffre de chance | numéro de chance | nombre fétiche | chiffre favori |
        chiffre favori est | chiffre c'est | numéro de maillot | mon dossard |
        porte-bonheur a toujours été
        """
    ),
    not_before=phrases(fr_choices.NOT_BEFORE),
    not_after=phrases(fr_choices.NOT_AFTER),
    correction=phrases(fr_choices.CORRECTION),
    soft_correction=phrases(
        """
        plutôt | finalement | en fait | enfin | non | nan | pardon | désolée | désolé | bon |
        allez | disons | mieux | va pour | cette fois | maintenant | cette semaine
        """
    ),
    first_choice=phrases(
        """
        premier choix | 1er choix | choix numéro 1 | choix n° 1 | premier choix est | en premier |
        en premier choix | choix principal | de préférence | en priorité | comme premier choix |
        mon premier voeu
        """
    ),
    second_choice=phrases(
        """
        deuxième choix | second choix | 2e choix | 2eme choix | 2nd choix | en deuxième |
        en second | en deuxième choix | en second choix | en secours | en remplacement | plan b |
        à défaut | comme second choix | deuxième voeu | en réserve
        """
    )
    + phrases(fr_choices.TAKEN),
    own_voice=phrases("je | j'ai | moi | mais | nous | on | donc"),
    if_words=phrases("si | sauf si"),
    being=phrases("est | était | tombe"),
    either=phrases(
        "ou | ou bien | ou alors | ou peut-être | ou encore | soit | ou soit | ou même | voire"
    ),
    also=phrases("et | & | plus | ainsi que | et aussi | et puis | et peut-être | et la | puis"),
    second=phrases(
        """
        sinon | ou sinon | et sinon | à défaut | ou à défaut | en second | en deuxième |
        deuxième choix | second choix | 2e choix | 2eme choix | 2nd choix | puis | ensuite |
        autrement | plan b | en secours | suivie de | suivi de | et après | ou alors | si jamais |
        au pire | à la rigueur | en dernier recours | en deuxième position | en deuxième lieu
        """
    )
    + one_after_another(fr_choices.TAKEN_AFTER, fr_choices.TAKEN),
    condition=phrases(fr_choices.CONDITION),
    depends=phrases(
        """
        ça dépend | cela dépend | selon ce que | selon si | suivant ce que | celle qui |
        à condition | à moins | sauf si | seulement si
        """
    ),
    ranked=phrases("dans cet ordre | dans l'ordre | par ordre de préférence | ordre de préférence"),
    tally_before=phrases("votes pour | voix pour | personnes pour | votes sur | voix sur"),
    topics=phrases(
        """
        taille | aiguille | aiguilles | fil | fils | brin | brins | toile | lin | aida |
        couleur | couleurs | heure | heures | temps | prix | coûte | minutes | degrés | points |
        échevettes | tambour | lampe | loupe | train | bus | ferry | épisode | saison | chapitre |
        chanson | film | recette | score | cm | mm | watts | volts | âge | ans
        """
    ),
    ages=phrases(
        """
        mon âge | c'est mon âge | année de ma naissance | année de naissance | date de naissance |
        jour de ma naissance | ma naissance | mon anniversaire | mon anniv | l'âge que j'ai
        """
    ),
    reported_before=phrases(fr_choices.REPORTED_BEFORE),
    family_before=phrases(fr_choices.FAMILY_BEFORE),
    reported_after=phrases(fr_choices.REPORTED_AFTER),
    saying=phrases(
        """
        dit | disait | dis | disent | a dit | crie | demande | écrit | répond | répète | affirme |
        propose | veut | hurle
        """
    ),
    asking=phrases(fr_choices.ASKING),
    suggesting=phrases(fr_choices.SUGGESTING),
    # Numbers that are words elsewhere: six, seize, cent (en), onze (nl); un is an article.
    doubtful=phrases("six | neuf | onze | seize | cent | un | une"),
    roughly_before=phrases(
        """
        environ | vers | autour de | aux alentours de | alentours de | à peu près | dans les |
        près de | pas loin de | proche de | du côté de | à proximité de | quelque part vers |
        plus ou moins | aux environs de | pas trop loin de | genre
        """
    ),
    roughly_after=phrases(
        """
        environ | ou par là | par là | à peu près | plus ou moins | ou dans le coin |
        ou dans ces eaux-là | ou une voisine | ou à côté | ou pas loin | ou autour |
        ou quelque chose comme ça
        """
    ),
    between=phrases("entre | quelque part entre | allant de"),
    through=phrases("à | jusqu'à"),
    question_before=phrases(
        "sur | parmi | jusqu'à | de | des | les | sont | que | toutes les | tous les"
    ),
    goes_on=phrases("est | aussi | serait | semble | était | a l'air | me plaît aussi"),
    relative_before=phrases(
        """
        à côté de | à coté de | voisine de | juste à côté de | collée à | en face de |
        qui touche | adjacente à | en diagonale de
        """
    ),
    relative_after=phrases(
        "en partant de la fin | en partant du haut | en partant du bas | à partir de la fin"
    ),
    above=phrases("au-dessus de | au dessus de | dessus de | juste au-dessus de | par-dessus"),
    below=phrases(
        """
        en dessous de | en-dessous de | au-dessous de | au dessous de | dessous de | sous |
        juste sous
        """
    ),
    later=phrases(
        """
        à droite de | droite de | d'après | page d'après | après | juste après | celle après |
        suivant | qui suit
        """
    ),
    earlier=phrases(
        """
        à gauche de | gauche de | d'avant | page d'avant | avant | juste avant | celle avant |
        qui précède
        """
    ),
    withdrawn=phrases(fr_choices.WITHDRAWN) + one_after_another(fr_choices.WITHDRAWN, "vote"),
    abstaining=phrases(fr_choices.ABSTAINING),
    pointing=phrases(fr_choices.POINTING),
    agreeing=phrases(
        """
        d'accord | moi aussi | pareil | oui | tout à fait | exactement | +1 | idem | je plussoie |
        comme toi | je suis | je confirme | bonne idée | la même | même chose | carrément |
        j'allais dire
        """
    ),
    kinds=phrases(fr_choices.KINDS),
    first=phrases("première | premier | 1ere | 1er | 1re | toute première | preums | prems"),
    last=phrases("dernière | dernier | toute dernière"),
    corner=phrases("coin | coins | angle | angles"),
    top=phrases("haut | en haut | tout en haut | du haut | d'en haut | supérieur | supérieure"),
    bottom=phrases("bas | en bas | tout en bas | du bas | d'en bas | inférieur | inférieure"),
    left=phrases("gauche | à gauche | de gauche | tout à gauche"),
    right=phrases("droite | droit | à droite | de droite | tout à droite"),
    middle=phrases(
        """
        milieu | du milieu | au milieu | en plein milieu | plein milieu | pile au milieu |
        centre | du centre | au centre | en plein centre | plein centre | pile au centre |
        centrale | central | au coeur
        """
    ),
    row=phrases("rangée | ligne | rang"),
    column=phrases("colonne"),
    times=phrases("fois | multiplié par"),
    plus=phrases("plus"),
    minus=phrases("moins"),
    divided_by=phrases("divisé par"),
    sum_before=phrases(
        """
        la moitié de | moitié de | le double de | double de | le tiers de | le quart de |
        la racine de
        """
    ),
    part_of=phrases("de | du | des | d'"),
    whole_chart=phrases(
        """
        de la grille | du diagramme | de la carte | du modèle | du motif | de l'ouvrage |
        de tout | de la broderie
        """
    ),
    replacing=phrases(
        """
        changer | change | changé | changez | échanger | échange | passe | passer |
        remplacer | remplace | remplacez
        """
    ),
    replaced_by=phrases("à | en | par | contre | pour"),
    concluding=phrases("donc | alors"),
    asked_later=phrases(
        """
        est pris | c'est pris | est déjà pris | c'est déjà pris | est-ce pris |
        est encore libre | c'est encore libre
        """
    ),
    told_from_last=phrases(
        """
        avant-dernière | avant dernière | avant-dernier | avant dernier | pénultième |
        deuxième en partant de la fin | troisième en partant de la fin | antépénultième
        """
    ),
)

LANGUAGE = extended(extended(_PLAIN, fr_composed.GROUPS), fr_told.GROUPS)
