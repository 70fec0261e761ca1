"""A comment laid out for reading: its tokens, its sentences, whose words are whose."""

from __future__ import annotations

from dataclasses import dataclass, field

from service.ballots.lexicon import Lexicon
from service.ballots.normal import Plain
from service.ballots.reading import Question
from service.ballots.scanning import END, SOFT, WORD, Token


@dataclass(slots=True)
class Scene:
    """One comment under reading."""

    text: str
    plain: Plain
    tokens: list[Token]
    lexicon: Lexicon
    question: Question
    #: Tokens that stand in quotation marks, by index.
    quoted: frozenset[int] = field(default_factory=frozenset)

    def sentence(self, at: int) -> tuple[int, int]:
        """The tokens [start:end] of the sentence around token `at`; `end` is its closing mark."""
        tokens = self.tokens
        start = at
        while start > 0 and tokens[start - 1].kind != END:
            start -= 1
        end = at
        while end < len(tokens) and not (tokens[end].kind == END and end > at):
            end += 1
        return start, end

    def clause(self, first: int, after: int) -> tuple[int, int]:
        """The tokens [start:end] around [first:after] up to the next mark of any kind."""
        tokens = self.tokens
        start = first
        while start > 0 and self._joins(start - 1):
            start -= 1
        end = after
        while end < len(tokens) and self._joins(end):
            end += 1
        return start, end

    def _joins(self, at: int) -> bool:
        token = self.tokens[at]
        if token.kind == SOFT:
            return token.text in {"#", ":", "=", "&", "/", "*"} or (
                token.text == "-" and token.glued
            )
        return token.kind not in {END, "other", "emoticon"}

    def is_question(self, at: int) -> bool:
        """Whether the sentence around token `at` ends in a question mark."""
        _, end = self.sentence(at)
        return end < len(self.tokens) and "?" in self.tokens[end].text

    def has(self, group: str, start: int, end: int) -> bool:
        """Whether a phrase of the group begins among the tokens [start:end]."""
        return self.lexicon.group(group).anywhere(self.tokens, max(start, 0), end) >= 0

    def word_count(self) -> int:
        """How many words the comment has."""
        return sum(token.kind == WORD for token in self.tokens)
