"""Phrases are found as a look at every one of them finds them."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as some

from service.ballots.matching import BEFORE, Phrases, longest, tree_of
from service.ballots.scanning import Token, scan

WORDS = some.sampled_from(["a", "b", "c", "!"])
PHRASES = some.lists(
    some.lists(some.sampled_from(["a", "b", "c", "*"]), min_size=1, max_size=4).map(tuple),
    max_size=12,
)
TOKENS = some.lists(WORDS, min_size=1, max_size=6).map(lambda words: scan(" ".join(words)))


def stands(phrase: tuple[str, ...], tokens: list[Token], start: int) -> bool:
    part = tokens[start : start + len(phrase)] if start >= 0 else []
    return len(part) == len(phrase) and all(
        token.text == word or (word == "*" and token.kind == "word")
        for word, token in zip(phrase, part, strict=True)
    )


@given(PHRASES, TOKENS, some.integers(0, 5))
def test_the_longest_phrase_is_found_on_either_side(
    phrases: list[tuple[str, ...]], tokens: list[Token], place: int
) -> None:
    at = place % len(tokens)
    known = Phrases(phrases)
    # A phrase is looked for by its word nearest the number, which is said in full.
    ahead = [len(one) for one in phrases if one[0] != "*" and stands(one, tokens, at)]
    behind = [
        len(one) for one in phrases if one[-1] != "*" and stands(one, tokens, at - len(one) + 1)
    ]
    assert known.after(tokens, at) == max(ahead, default=0)
    assert known.before(tokens, at) == max(behind, default=0)


@given(some.lists(some.tuples(PHRASES, some.sampled_from(BEFORE)), max_size=3), TOKENS)
def test_of_two_of_one_length_the_weightier_group_is_told(
    groups: list[tuple[list[tuple[str, ...]], str]], tokens: list[Token]
) -> None:
    told = [(phrase, group) for phrases, group in groups for phrase in phrases if phrase[0] != "*"]
    told.sort(key=lambda one: BEFORE.index(one[1]))
    standing = [
        (-len(phrase), BEFORE.index(group), group)
        for phrase, group in told
        if stands(phrase, tokens, 0)
    ]
    found = longest(tree_of(told), tokens, 0, 1)
    assert found == ((min(standing)[2], -min(standing)[0]) if standing else None)
