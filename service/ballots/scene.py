"""A comment laid out for reading: its tokens, its sentences, whose words are whose."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from service.ballots.lexicon import GROUP_BITS, Lexicon
from service.ballots.normal import Plain
from service.ballots.reading import Question
from service.ballots.scanning import END, SOFT, WORD, Token, places_of

_NONE: frozenset[int] = frozenset()
#: Marks between clauses.
_PARTING = frozenset({END, "other", "emoticon"})


def signs_of(tokens: Sequence[Token], lexicon: Lexicon) -> tuple[list[int], int]:
    """For each token, and for all, the groups in which a phrase may begin with it, as bits."""
    signs: list[int] = []
    sign_of = lexicon.signs
    present = following = 0
    # From the end, since the word that follows tells whether a longer phrase may begin here.
    for token in reversed(tokens):
        told = sign_of[token.text]
        if told is None:
            following = sign = 0
        else:
            sign, first, second = told
            if first and following:
                sign |= first & following
            following = second
            if sign:
                present |= sign
        signs.append(sign)
    signs.reverse()
    return signs, present


@dataclass(slots=True)
class Scene:
    """One comment under reading."""

    text: str
    plain: Plain
    #: The plain text without the words of others, as long as it; its tokens.
    own: str
    tokens: list[Token]
    lexicon: Lexicon
    question: Question
    #: Tokens that stand in quotation marks, by index.
    quoted: frozenset[int] = _NONE
    #: What each token is, apart from the tokens: much is asked of all of them.
    kinds: list[str] = field(init=False)
    #: For each token, and for all of them, the groups in which a phrase may begin with it, as bits.
    signs: list[int] = field(init=False)
    present: int = field(init=False)
    #: How many pages the chart has.
    last_page: int = field(init=False)
    _places: list[int] = field(init=False)

    def __post_init__(self) -> None:
        self.kinds = [token.kind for token in self.tokens]
        self.signs, self.present = signs_of(self.tokens, self.lexicon)
        self.last_page = self.question.chart.page_count
        self._places = []

    def begins(self, group: str, at: int) -> int:
        """How many tokens from `at` on a phrase of the group has; 0 for none."""
        if at < len(self.signs) and self.signs[at] & GROUP_BITS[group]:
            return self.lexicon.group(group).after(self.tokens, at)
        return 0

    def find(self, group: str, start: int = 0, end: int | None = None) -> int:
        """The first token in [start:end] at which a phrase of the group begins; -1 for none."""
        bit = GROUP_BITS[group]
        if not self.present & bit:
            return -1
        stop = len(self.tokens) if end is None else end
        phrases = self.lexicon.group(group)
        for at in range(max(start, 0), stop):
            if self.signs[at] & bit and phrases.after(self.tokens, at):
                return at
        return -1

    def span(self, first: int, after: int) -> tuple[int, int]:
        """The span of the original text that the tokens [first:after] were read from."""
        places = self._places
        if not places:
            places = self._places = places_of(self.tokens, self.own)
        last = min(after, len(places)) - 1
        start, end = places[first], places[last] + self.tokens[last].size
        plain = self.plain
        if plain.starts is None and plain.uneven is None:
            return start, end  # plain and original run alike
        return plain.original(start, end)

    def sentence(self, at: int) -> tuple[int, int]:
        """The tokens [start:end] of the sentence around token `at`; `end` is its closing mark."""
        kinds = self.kinds
        if END not in kinds:
            return 0, max(len(kinds), at)
        start = at
        while start > 0 and kinds[start - 1] != END:
            start -= 1
        end = at
        while end < len(kinds) and not (kinds[end] == END and end > at):
            end += 1
        return start, end

    def clause(self, first: int, after: int) -> tuple[int, int]:
        """The tokens [start:end] around [first:after] up to the next mark of any kind."""
        kinds = self.kinds
        start = first
        while start > 0 and (kinds[start - 1] == WORD or self.joins(start - 1)):
            start -= 1
        end, stop = after, len(kinds)
        while end < stop and (kinds[end] == WORD or self.joins(end)):
            end += 1
        return start, end

    def joins(self, at: int) -> bool:
        """Whether this token stands inside a clause, not between two."""
        kind = self.kinds[at]
        if kind == WORD:
            return True
        if kind == SOFT:
            token = self.tokens[at]
            return token.text in {"#", ":", "=", "&", "/", "*"} or (
                token.text == "-" and token.glued
            )
        return kind not in _PARTING

    def is_question(self, at: int) -> bool:
        """Whether the sentence around token `at` ends in a question mark."""
        _, end = self.sentence(at)
        return end < len(self.tokens) and "?" in self.tokens[end].text

    def has(self, group: str, start: int, end: int) -> bool:
        """Whether a phrase of the group begins among the tokens [start:end]."""
        return self.find(group, start, end) >= 0

    def on_chart(self, pages: tuple[int, ...]) -> tuple[int, ...]:
        """Those of the pages that the chart has, each once, in the order given."""
        last = self.last_page
        if len(pages) == 1:
            return pages if 1 <= pages[0] <= last else ()
        return tuple(dict.fromkeys([page for page in pages if 1 <= page <= last]))

    def word_count(self) -> int:
        """How many words the comment has."""
        return self.kinds.count(WORD)
