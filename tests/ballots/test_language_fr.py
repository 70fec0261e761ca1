"""Comments as French-speaking viewers write them, and what a fair reader hears in them."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

CASES = {
    "an article before the page": ("La 42 s'il vous plaît", "counts 42"),
    "a page word": ("je vote pour la page 17 😊", "counts 17"),
    "a number in words": ("vingt-sept pour moi, bises de la côte", "counts 27"),
    "words without hyphens, off the chart": ("Coucou, soixante douze svp", "none off-chart"),
    "the feminine one at the end": ("quarante et une svp", "counts 41"),
    "only a number in words": ("cinquante-huit !!", "counts 58"),
    "a number word before it": ("Je choisis la numéro 33, merci pour tes vidéos", "counts 33"),
    "the little circle of numéro": ("n°29", "counts 29"),
    "the little circle, apart": ("N° 30 pour moi svp", "counts 30"),
    "an informal please": ("le 8 stp", "counts 8"),
    "a cue apart from the number": ("Bonsoir les filles, ce sera la 5 pour moi", "counts 5"),
    "a modest wish": ("J'aimerais bien voir la 23 si possible ☺️", "counts 23"),
    "a wish in words": ("Je dirais la trente-six", "counts 36"),
    "accents left out": ("je prefere la 9, a bientot", "counts 9"),
    "all in capitals": ("LA 26 POUR MOI MERCI", "counts 26"),
    "let us go": ("Allez, on part sur la 11 !", "counts 11"),
    "and if we did": ("Et si on faisait la 50 ?", "counts 50"),
    "why not": ("Pourquoi pas la 3 ?", "counts 3"),
    "a vote inside admiration": (
        "Quelle patience, c'est splendide… je propose la 47, hâte de voir la suite",
        "counts 47",
    ),
    "a vote after talk of years": ("J'ai 62 ans et c'est mon premier vote : la 19", "counts 19"),
    "a Swiss number": ("La nonante-deux pour moi", "none off-chart"),
    "a Roman numeral": ("Page XII svp", "counts 12"),
    "two pages": ("La 12 ou la 13, j'hésite", "look 12 13"),
    "either or": ("soit la 7 soit la 9", "look 7 9"),
    "two pages joined": ("12 et 40 svp", "look 12 40"),
    "a second if the first is taken": ("la 21, ou la 22 si elle est déjà prise", "counts 21"),
    "a first and a second choice": ("1er choix la 24, 2e choix la 25", "counts 24"),
    "if not": ("La 16, sinon la 18", "counts 16"),
    "a correction": ("La 14… euh non, la 15 !", "counts 15"),
    "what was meant": ("je voulais dire 51, pas 15", "counts 51"),
    "a second thought": ("37. Ah non finalement je prends la 38", "counts 38"),
    "ruled out": ("Surtout pas la 13", "none no-page"),
    "two ruled out": ("ni la 12 ni la 13 par pitié", "none no-page"),
    "all but one": ("Tout sauf la 44", "none no-page"),
    "one ruled out, another chosen": ("pas la 40, plutôt la 31", "counts 31"),
    "taken back": ("Annulez mon vote svp, je me suis trompée de vidéo", "none withdrawn"),
    "no vote at all": ("Je n'arrive pas à choisir, je ne vote pas", "none no-page"),
    "left to the host": ("Comme tu veux, surprends-nous !", "none no-page"),
    "years and cats": ("Je brode depuis 30 ans et j'ai 4 chats qui m'aident", "none no-page"),
    "fabric": ("C'est de l'aida 14 ou du lin 28 fils ? Belle vidéo", "none no-page"),
    "a date": ("On se retrouve le 4 mai, j'ai hâte", "none no-page"),
    "a house and hours": (
        "J'ai brodé 3 heures ce soir, 250 croix, je suis claquée",
        "none no-page",
    ),
    "a page of the own piece": ("J'en suis à la page 12 de ma grille, courage", "none no-page"),
    "thanks for many videos": ("Merci pour ces 5 belles vidéos", "none no-page"),
    "a time": ("Vivement dimanche 20h30", "none no-page"),
    "no number at all": ("Trop beau, bravo et bonne semaine à tous", "none no-page"),
    "is it taken": ("Est-ce que la 42 est déjà prise ?", "look 42"),
    "has anyone": ("Quelqu'un a déjà dit 28 ?", "look 28"),
    "everybody": ("Tout le monde veut la 32 !", "look 32"),
    "a husband overruled": ("mon mari dit 16 mais moi je vote 18", "counts 18"),
    "the last page": ("la dernière page, histoire de commencer par la fin 😄", "counts 63"),
    "the first page": ("première page svp", "counts 1"),
    "a corner": ("en haut à droite svp", "counts 9"),
    "a corner page": ("le coin en bas à gauche", "counts 55"),
    "a corner by one word": ("page du coin supérieur gauche", "counts 1"),
    "the middle": ("pile au centre !", "counts 32"),
    "any corner": ("un coin, peu importe lequel", "look 1 9 55 63"),
    "first to comment": ("Première !", "look 1"),
    "a lucky number": ("Mon chiffre porte-bonheur c'est le 7", "counts 7"),
    "a range": ("entre 41 et 43", "look 42"),
    "about": ("vers la 40, par là", "look 40"),
    "a kind": ("N'importe quelle page paire", "look"),
    "pointing": ("Pareil qu'au-dessus", "look"),
    "under a page": ("celle juste en dessous de la 12", "look 21"),
    "a page that follows another": ("la page d'après la 20", "look 21"),
    "a full coordinate": ("troisième rangée, quatrième colonne", "look 22"),
    "taken back, with a reason": ("Oubliez mon vote, la 12 était déjà faite", "none withdrawn"),
    "may we have": ("Peut-on avoir la 45 ?", "counts 45"),
    "ruled out, then chosen": ("Ni la 3 ni la 4, la 5", "counts 5"),
    "the slip told after the page": ("oups 21 et pas 12", "counts 21"),
    "nine that is new": ("Quoi de neuf ? Tout neuf ce tambour ?", "none no-page"),
    "marks out of five": ("5 sur 5, comme toujours", "none no-page"),
    "a day longed for": ("J'attends la suite, vivement le 15 !", "none no-page"),
    "a birthday and its page": ("pour mes 42 ans : la 42", "counts 42"),
}


@pytest.mark.parametrize(("text", "expected"), CASES.values(), ids=CASES)
def test_a_french_comment_is_read_as_a_fair_reader_would(text: str, expected: str) -> None:
    assert heard(text) == expected


@pytest.mark.parametrize(
    ("word", "page"),
    [("six", 6), ("neuf", 9), ("onze", 11), ("seize", 16)],
)
def test_a_bare_word_that_may_be_no_number_is_looked_at(word: str, page: int) -> None:
    assert heard(word) == f"look {page}"
    assert heard(f"{word} s'il vous plaît") == f"counts {page}"


@pytest.mark.parametrize(
    ("text", "expected"),
    [("la 12 et la 40", "counts 12 40"), ("12, 13 ou 14", "look 12 13 14")],
    ids=["as many as allowed", "more than allowed"],
)
def test_two_pages_may_be_chosen_where_the_round_says_so(text: str, expected: str) -> None:
    assert heard(text, choices=2) == expected


def test_a_plainly_french_comment_is_read_in_a_round_without_french() -> None:
    assert heard("Bonjour, je vote pour la trente-deux", languages=("en",)) == "counts 32"
