"""Comments as Portuguese-speaking viewers write them, here and overseas, and how they are read."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

CASES = {
    "an article before the page": ("Eu voto na 34 🙌", "counts 34"),
    "a page word": ("página 27 pfv", "counts 27"),
    "a number in words": ("Voto na vinte e três, um beijinho", "counts 23"),
    "tens and ones in words": ("cinquenta e oito!!", "counts 58"),
    "ones in the feminine": ("a quarenta e duas, por favor", "counts 42"),
    "sixteen in Portugal": ("A dezasseis, se faz favor", "counts 16"),
    "sixteen in Brazil": ("dezesseis por favor", "counts 16"),
    "fourteen, the other spelling": ("Quero a quatorze", "counts 14"),
    "off the chart in words": ("a oitenta e cinco", "none off-chart"),
    "off the chart in digits": ("eu quero a 99", "none off-chart"),
    "number and circle": ("nº 12, obrigada!", "counts 12"),
    "a number word": ("meu voto vai para o número 40", "counts 40"),
    "the masculine article": ("O 26 pra mim", "counts 26"),
    "in the masculine": ("voto no 33", "counts 33"),
    "let it be": ("Que seja a 5", "counts 5"),
    "I choose": ("escolho a 60 ❤️", "counts 60"),
    "start with": ("começa pela 9 vai", "counts 9"),
    "a question of suggesting": ("E se fosse a 18?", "counts 18"),
    "how about": ("Que tal a 3?", "counts 3"),
    "capitals without accents": ("BOM DIA MENINAS PAGINA 45 POR FAVOR", "counts 45"),
    "a vote inside admiration": (
        "Que trabalho lindo, fico hipnotizada. Acho que vou de 47, boa semana a todas",
        "counts 47",
    ),
    "a vote beside an age": ("Tenho 71 anos e nunca me canso. A 20, obrigada", "counts 20"),
    "a vote with a plain reason": ("A 29 porque parece bonita", "counts 29"),
    "a bare number with a greeting": ("Boa tarde, 31", "counts 31"),
    "two pages": ("A 12 ou a 13, não consigo decidir", "look 12 13"),
    "two pages joined": ("a 6 e a 8 por favor", "look 6 8"),
    "a second if the first is taken": ("a 21, ou a 22 se já tiver sido escolhida", "counts 21"),
    "a stand-in told first": ("a 22 se já tiver sido escolhida a 21", "counts 21"),
    "a first and a second choice": ("primeira opção 24, segunda 25", "counts 24"),
    "if not": ("A 16, senão a 18", "counts 16"),
    "a correction": ("14… ai não, desculpa, 15", "counts 15"),
    "what was meant": ("quis dizer 51, não 15", "counts 51"),
    "a changed mind": ("37. Mudei de ideia, a 38", "counts 38"),
    "ruled out": ("A 13 não, pelo amor", "none no-page"),
    "ruled out first": ("menos a 13", "none no-page"),
    "all but one": ("Qualquer uma exceto a 44", "none no-page"),
    "one ruled out, another chosen": ("não a 40, prefiro a 31", "counts 31"),
    "taken back": ("Anula o meu voto por favor, enganei-me no vídeo", "none withdrawn"),
    "no vote at all": ("Desta vez não voto, só vim espreitar", "none no-page"),
    "left to the host": ("A que você quiser, surpreenda a gente", "none no-page"),
    "years and dogs": ("Bordo há 20 anos e tenho 2 cachorros", "none no-page"),
    "fabric": ("É etamine de 14 ou linho de 28 fios?", "none no-page"),
    "a date": ("Dia 5 de maio é meu aniversário, que presente", "none no-page"),
    "minutes": ("Nem vi passar 45 minutos de vídeo", "none no-page"),
    "a page of the own piece": ("Estou na página 12 do meu gráfico, força", "none no-page"),
    "a time": ("até amanhã às 8 da noite", "none no-page"),
    "no number at all": ("Que capricho, parabéns e saudações da ilha", "none no-page"),
    "is it taken": ("A 42 já foi escolhida?", "look 42"),
    "has anyone": ("alguém já disse 28?", "look 28"),
    "everybody": ("Todo mundo quer a 32", "look 32"),
    "the writer's own vote after family": ("Meu marido quer a 16. Eu voto na 18", "counts 18"),
    "the last page": ("A última página, para variar", "counts 63"),
    "the first page": ("primeira página por favor", "counts 1"),
    "a corner": ("em cima à direita", "counts 9"),
    "a corner page": ("o canto inferior esquerdo", "counts 55"),
    "the middle": ("a página do meio", "counts 32"),
    "any corner": ("qualquer canto serve", "look 1 9 55 63"),
    "first to comment": ("Primeira!", "look 1"),
    "a lucky number": ("Meu número da sorte é o 7", "counts 7"),
    "a range": ("entre 41 e 43", "look 42"),
    "about": ("por volta da 40", "look 40"),
    "a kind": ("uma página par", "look"),
    "pointing": ("igual à de cima", "look"),
    "beside a page": ("a que fica ao lado da 1", "look 2 10"),
    "a page told by its right": ("a que está à direita da 12", "look 13"),
    "a full coordinate": ("terceira fileira, quarta coluna", "look 22"),
    "taken back, with a reason": ("Esqueçam o meu voto, a 12 já está feita", "none withdrawn"),
    "may we have": ("Podemos ter a 45?", "counts 45"),
    "ruled out, then chosen": ("Nem a 3 nem a 4, a 5", "counts 5"),
    "the slip told after the page": ("ops 21 e não 12", "counts 21"),
    "a wish given up": ("queria a 12 mas enfim, a 14", "counts 14"),
    "if not, in two words": ("A 16, se não a 18", "counts 16"),
    "marks out of ten": ("Dou nota 10", "none no-page"),
    "a birthday and its page": ("pelos meus 42 anos: a 42", "counts 42"),
}


@pytest.mark.parametrize(("text", "expected"), CASES.values(), ids=CASES)
def test_a_portuguese_comment_is_read_as_a_fair_reader_would(text: str, expected: str) -> None:
    assert heard(text) == expected


@pytest.mark.parametrize(("word", "page"), [("três", 3), ("sete", 7), ("onze", 11), ("doze", 12)])
def test_a_bare_word_that_may_be_no_number_is_looked_at(word: str, page: int) -> None:
    assert heard(word) == f"look {page}"
    assert heard(f"a {word}, por favor") == f"counts {page}"


@pytest.mark.parametrize(
    ("text", "expected"),
    [("a 12 e a 40", "counts 12 40"), ("12, 13 ou 14", "look 12 13 14")],
    ids=["as many as allowed", "more than allowed"],
)
def test_two_pages_may_be_chosen_where_the_round_says_so(text: str, expected: str) -> None:
    assert heard(text, choices=2) == expected


def test_a_plainly_portuguese_comment_is_read_in_a_round_without_portuguese() -> None:
    assert heard("Olá, eu voto na trinta e duas", languages=("en",)) == "counts 32"
