"""Comments as Italian-speaking viewers write them, and what a fair reader hears in them."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

CASES = {
    "an article before the page": ("Voto la 34 🧵", "counts 34"),
    "a page word": ("pagina 27 per favore", "counts 27"),
    "page, shortened": ("pag. 6 grazie", "counts 6"),
    "a number in words": ("Io scelgo la ventitré, un abbraccio", "counts 23"),
    "only a number in words": ("cinquantotto!!", "counts 58"),
    "words apart": ("quaranta due x favore", "counts 42"),
    "a vowel that should have gone": ("trentauno, grazie mille", "counts 31"),
    "an article cut short, in digits": ("Per me l'11", "counts 11"),
    "an article cut short, in words": ("direi l'undici", "counts 11"),
    "an article cut short, a small word": ("Voto per l'otto!", "counts 8"),
    "a number word": ("il numero 33 per me, complimenti", "counts 33"),
    "the little circle of numero": ("N° 12 grazie!", "counts 12"),
    "off the chart in words": ("la ottantacinque", "none off-chart"),
    "off the chart in digits": ("Io vorrei la 99", "none off-chart"),
    "accents left out": ("la piu bella per me e la 26", "counts 26"),
    "a wish": ("mi piacerebbe la 5 🥰", "counts 5"),
    "going for": ("Dai, andiamo con la 60", "counts 60"),
    "start from": ("parti dalla 9", "counts 9"),
    "a question of suggesting": ("E se facessimo la 18?", "counts 18"),
    "what do you say": ("che ne dici della 3?", "counts 3"),
    "capitals": ("CIAO A TUTTE, LA 45 PER ME", "counts 45"),
    "a vote inside admiration": (
        "Che pazienza, guardarvi è una meraviglia… la mia scelta è la 47, a presto",
        "counts 47",
    ),
    "a vote beside an age": ("Ho 71 anni e non mi annoio mai. La 20, grazie", "counts 20"),
    "a vote with a plain reason": ("La 29 perché mi ispira", "counts 29"),
    "a greeting": ("Buongiorno! 31", "counts 31"),
    "two pages": ("La 12 o la 13, non so decidere", "look 12 13"),
    "two pages joined": ("la 6 e la 8 per favore", "look 6 8"),
    "a second if the first is taken": ("la 21, oppure la 22 se è già presa", "counts 21"),
    "a stand-in told first": ("la 22 se è già presa la 21", "counts 21"),
    "praise with a number word in it": ("Sei la migliore! Sei bravissima", "none no-page"),
    "more praise with a number word in it": ("Che brava che sei", "none no-page"),
    "a first and a second choice": ("prima scelta 24, seconda 25", "counts 24"),
    "if not": ("La 16, altrimenti la 18", "counts 16"),
    "a correction": ("La 14… anzi no, la 15", "counts 15"),
    "what was meant": ("volevo dire 51, non 15", "counts 51"),
    "a changed mind": ("37. Ho cambiato idea: la 38", "counts 38"),
    "ruled out": ("Non la 13, vi prego", "none no-page"),
    "all but one": ("Tutte tranne la 44", "none no-page"),
    "one ruled out, another chosen": ("non la 40, meglio la 31", "counts 31"),
    "taken back": ("Annullate il mio voto, ho sbagliato video", "none withdrawn"),
    "no vote at all": ("Stavolta non voto, guardo e basta", "none no-page"),
    "left to the host": ("Scegli tu, mi fido!", "none no-page"),
    "years and cats": ("Ricamo da 20 anni e ho 3 gatti", "none no-page"),
    "fabric": ("È tela aida 55 o lino 12 fili? Bellissimo", "none no-page"),
    "a date": ("Il 4 maggio è il mio compleanno, che regalo", "none no-page"),
    "minutes": ("Guardo questi video per 45 minuti ogni sera", "none no-page"),
    "a page of the own piece": ("Io sono a pagina 12 del mio schema, forza", "none no-page"),
    "a time": ("ci vediamo alle 8 di sera", "none no-page"),
    "no number at all": ("Bellissimo lavoro, saluti dal faro", "none no-page"),
    "is it taken": ("La 42 è già presa?", "look 42"),
    "has anyone": ("qualcuno ha già detto 28?", "look 28"),
    "everybody": ("Tutti vogliono la 32", "look 32"),
    "the writer's own vote after family": ("Mio marito vuole la 16. Io voto la 18", "counts 18"),
    "the last page": ("L'ultima pagina, così finiamo prima 😄", "counts 63"),
    "the first page": ("prima pagina per favore", "counts 1"),
    "a corner": ("in alto a destra", "counts 9"),
    "a corner page": ("l'angolo in basso a sinistra", "counts 55"),
    "the middle": ("quella al centro", "counts 32"),
    "any corner": ("un angolo qualsiasi", "look 1 9 55 63"),
    "first to comment": ("Prima!", "look 1"),
    "a lucky number": ("Il mio numero fortunato è il 7", "counts 7"),
    "a range": ("tra 41 e 43", "look 42"),
    "about": ("circa la 40", "look 40"),
    "a kind": ("una pagina pari", "look"),
    "pointing": ("come sopra", "look"),
    "beside a page": ("quella accanto alla 1", "look 2 10"),
    "a page told by its right": ("quella a destra della 12", "look 13"),
    "a full coordinate": ("terza riga, quarta colonna", "look 22"),
    "taken back, with a reason": ("Dimenticate il mio voto, la 12 è già fatta", "none withdrawn"),
    "may we have": ("Possiamo avere la 45?", "counts 45"),
    "ruled out, then chosen": ("Né la 3 né la 4, la 5", "counts 5"),
    "the slip told after the page": ("ops 21 e non 12", "counts 21"),
    "a wish given up": ("volevo la 12 ma vabbè, la 14", "counts 14"),
    "if not, in two words": ("La 16, se no la 18", "counts 16"),
    "marks out of ten": ("Ti do un 10", "none no-page"),
    "a birthday and its page": ("per i miei 42 anni: la 42", "counts 42"),
}


@pytest.mark.parametrize(("text", "expected"), CASES.values(), ids=CASES)
def test_an_italian_comment_is_read_as_a_fair_reader_would(text: str, expected: str) -> None:
    assert heard(text) == expected


@pytest.mark.parametrize(("word", "page"), [("due", 2), ("sei", 6), ("otto", 8)])
def test_a_bare_word_that_may_be_no_number_is_looked_at(word: str, page: int) -> None:
    assert heard(word) == f"look {page}"
    assert heard(f"la {word}, per favore") == f"counts {page}"


@pytest.mark.parametrize(
    ("text", "expected"),
    [("la 12 e la 40", "counts 12 40"), ("12, 13 o 14", "look 12 13 14")],
    ids=["as many as allowed", "more than allowed"],
)
def test_two_pages_may_be_chosen_where_the_round_says_so(text: str, expected: str) -> None:
    assert heard(text, choices=2) == expected


def test_a_plainly_italian_comment_is_read_in_a_round_without_italian() -> None:
    assert heard("Ciao, io voto per la trentadue", languages=("en",)) == "counts 32"
