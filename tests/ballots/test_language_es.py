"""Comments as Spanish-speaking viewers write them, and what a fair reader hears in them."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

CASES = {
    "an article before the page": ("Yo voto por la 34 🙌", "counts 34"),
    "a page word": ("página 27 porfa", "counts 27"),
    "a number in words": ("La veintitrés para mí, un saludo", "counts 23"),
    "tens and ones in words": ("cincuenta y ocho!!", "counts 58"),
    "accents left out": ("veintidos por favor guapa", "counts 22"),
    "a slip in the spelling": ("treinta i uno, gracias", "counts 31"),
    "a feminine number": ("elijo la cuarenta y una", "counts 41"),
    "off the chart in words": ("la ochenta y cinco, ¿existe?", "none off-chart"),
    "off the chart in digits": ("Pues yo quiero la 99", "none off-chart"),
    "number and circle": ("Nº 12, mil gracias por compartir", "counts 12"),
    "glued number and circle": ("voto nº45", "counts 45"),
    "a number word": ("mi voto es para el número 40", "counts 40"),
    "let it be": ("Que sea la 5", "counts 5"),
    "I stay with": ("Me quedo con la 60 😍", "counts 60"),
    "start with": ("empieza por la 9 anda", "counts 9"),
    "a question of suggesting": ("¿Y si empezamos por la 18?", "counts 18"),
    "how about": ("Qué tal la 3?", "counts 3"),
    "capitals without accents": ("HOLA CHICAS LA 26 POR FAVOR", "counts 26"),
    "a vote inside admiration": (
        "Ay qué cosa más bonita, estoy enganchada. Yo diría la 47, a ver si hay suerte",
        "counts 47",
    ),
    "a vote beside an age": ("Tengo 71 años y nunca me aburro. La 20, gracias", "counts 20"),
    "a vote with a plain reason": ("La 29 porque tiene buena pinta", "counts 29"),
    "a bare number with a greeting": ("Buenos días, 31", "counts 31"),
    "two pages": ("La 12 o la 13, no me decido", "look 12 13"),
    "two pages joined": ("La 6 y la 8 por favor", "look 6 8"),
    "a second if the first is taken": ("la 21 y si ya está cogida la 22", "counts 21"),
    "a stand-in told first": ("la 22 si está cogida la 21", "counts 21"),
    "a first and a second choice": ("primera opción 24, segunda 25", "counts 24"),
    "failing that": ("La 16, y en su defecto la 18", "counts 16"),
    "a correction": ("La 14… ay no, perdón, la 15", "counts 15"),
    "what was meant": ("quise decir 51, no 15", "counts 51"),
    "a changed mind": ("37. Mejor no, cambio a la 38", "counts 38"),
    "ruled out": ("la 13 no, por dios", "none no-page"),
    "ruled out first": ("No la 13, que trae mala suerte", "none no-page"),
    "all but one": ("Cualquiera menos la 44", "none no-page"),
    "one ruled out, another chosen": ("la 40 no, mejor la 31", "counts 31"),
    "taken back": ("Quiten mi voto por favor, me equivoqué", "none withdrawn"),
    "no vote at all": ("Esta vez no voto, solo vengo a mirar", "none no-page"),
    "left to the host": ("La que tú quieras, sorpréndenos", "none no-page"),
    "years and dogs": ("Llevo 20 años bordando y tengo 2 perros", "none no-page"),
    "fabric": ("¿Es aida de 14 o lino de 28 hilos?", "none no-page"),
    "a date": ("El 5 de mayo es mi cumple, qué ilusión", "none no-page"),
    "minutes and views": ("Qué cortos se me hacen 45 minutos", "none no-page"),
    "a page of the own piece": ("Yo voy por la página 12 de mi cuadro, ánimo", "none no-page"),
    "a time": ("nos vemos a las 8 de la tarde", "none no-page"),
    "no number at all": ("Precioso, enhorabuena desde la isla", "none no-page"),
    "is it taken": ("¿Está cogida la 42?", "look 42"),
    "has anyone": ("alguien ha dicho ya la 28?", "look 28"),
    "everybody": ("Todo el mundo pide la 32", "look 32"),
    "the writer's own vote after family": ("Mi marido pide la 16. Yo voto 18", "counts 18"),
    "the last page": ("La última página, a ver qué esconde", "counts 63"),
    "the first page": ("la primera página por favor", "counts 1"),
    "a corner": ("arriba a la derecha", "counts 9"),
    "a corner page": ("la esquina inferior izquierda porfi", "counts 55"),
    "the middle": ("la del medio", "counts 32"),
    "any corner": ("cualquier esquina me vale", "look 1 9 55 63"),
    "first to comment": ("¡Primera!", "look 1"),
    "a lucky number": ("Mi número de la suerte es el 7", "counts 7"),
    "a range": ("entre 41 y 43", "look 42"),
    "about": ("por la 40 más o menos", "look 40"),
    "a kind": ("una página par", "look"),
    "pointing": ("lo mismo que arriba", "look"),
    "beside a page": ("la de al lado de la 1", "look 2 10"),
    "a page told by its right": ("la de la derecha de la 12", "look 13"),
    "a full coordinate": ("tercera fila, cuarta columna", "look 22"),
    "taken back, with a reason": ("Olviden mi voto, la 12 ya está hecha", "none withdrawn"),
    "may we have": ("¿Podemos tener la 45?", "counts 45"),
    "ruled out, then chosen": ("Ni la 3 ni la 4, la 5", "counts 5"),
    "the slip told after the page": ("ups 21 y no 12", "counts 21"),
    "the auxiliary have": ("He votado siempre la 9 y no cambio", "counts 9"),
    "if not": ("La 16, si no la 18", "counts 16"),
    "marks out of ten": ("Te doy un 10", "none no-page"),
    "a birthday and its page": ("por mis 42 años: la 42", "counts 42"),
}


@pytest.mark.parametrize(("text", "expected"), CASES.values(), ids=CASES)
def test_a_spanish_comment_is_read_as_a_fair_reader_would(text: str, expected: str) -> None:
    assert heard(text) == expected


@pytest.mark.parametrize(
    ("word", "page"),
    [("dos", 2), ("tres", 3), ("once", 11), ("doce", 12), ("quince", 15), ("siete", 7)],
)
def test_a_bare_word_that_may_be_no_number_is_looked_at(word: str, page: int) -> None:
    assert heard(word) == f"look {page}"
    assert heard(f"la {word}, por favor") == f"counts {page}"


@pytest.mark.parametrize(
    ("text", "expected"),
    [("la 12 y la 40", "counts 12 40"), ("12, 13 o 14", "look 12 13 14")],
    ids=["as many as allowed", "more than allowed"],
)
def test_two_pages_may_be_chosen_where_the_round_says_so(text: str, expected: str) -> None:
    assert heard(text, choices=2) == expected


def test_a_plainly_spanish_comment_is_read_in_a_round_without_spanish() -> None:
    assert heard("Hola, yo quiero la treinta y dos", languages=("en",)) == "counts 32"
