"""Phrases found in a comment's tokens, forwards or backwards from one of them.

Phrases are kept as trees, a word a branch: most words of most comments begin and end no phrase,
which one look tells, and of those that do the few words beside them tell which.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from service.ballots.scanning import DIGITS, WORD, Token

Phrase = tuple[str, ...]
#: What is told of a phrase, and how many tokens it has.
Found = tuple[str, int]
#: By the next word what is found there, or a smaller tree where longer phrases go on.
Tree = dict[str, Any]

#: What stands right before a number; of two phrases of one length the group named first decides.
BEFORE = (
    "not_before", "above", "below", "later", "earlier", "relative_before", "between",
    "tally_before", "sum_before", "roughly_before", "lucky_before", "choice_before", "other_before", "page", "number",
    "fillers", "weak_before", "named_before", "reported_before", "family_before", "neutral_before",
)  # fmt: skip
#: What stands right after one.
AFTER = (
    "other_after", "sum_after", "relative_after", "roughly_after", "not_after", "reported_after", "choice_after",
    "weak_after", "neutral_after",
)  # fmt: skip
_RANKS = {group: rank for groups in (BEFORE, AFTER) for rank, group in enumerate(groups)}

#: What a mark in a phrase stands for: any one word, any one number in digits.
WILD = {"*": WORD, "#": DIGITS}
_WILD_OF = {kind: mark for mark, kind in WILD.items()}
#: What a tree holds for the phrase that ends here; no token is empty.
_ENDS = ""


class _Wild(dict[str, Any]):
    """A tree in which any word, or any number in digits, may come next."""


def tree_of(phrases: Iterable[tuple[Phrase, str]]) -> Tree:
    """The tree of these phrases with what each tells; of two that are alike the first holds."""
    tree: Tree = {}
    known: dict[Found, Found] = {}  # one for all that tell the same
    for phrase, told in phrases:
        found = (told, len(phrase))
        node = tree
        for word in phrase[:-1]:
            below = node.get(word)
            if not isinstance(below, dict):
                below = node[word] = {} if below is None else {_ENDS: below}
            node = below
        last = node.get(phrase[-1])
        if isinstance(last, dict):
            last.setdefault(_ENDS, known.setdefault(found, found))
        elif last is None:
            node[phrase[-1]] = known.setdefault(found, found)
    _mark_wild(tree)
    return tree


def _mark_wild(tree: Tree) -> None:
    for word, below in tree.items():
        if isinstance(below, dict):
            _mark_wild(below)
            if not below.keys().isdisjoint(WILD):
                tree[word] = _Wild(below)


def longest(tree: Tree, tokens: Sequence[Token], at: int, step: int) -> Found | None:
    """The longest phrase from `at` on; `step` is -1 for a tree of phrases told backwards."""
    node = tree.get(tokens[at].text)
    if node is None or type(node) is tuple:
        return node
    found: Found | None = None
    end = len(tokens) if step > 0 else -1
    while type(node) is dict:
        found = node.get(_ENDS, found)
        at += step
        if at == end:
            return found
        node = node.get(tokens[at].text)
    if type(node) is _Wild:
        return _longest_of_several(node, tokens, at, step) or found
    return node or found


def _longest_of_several(
    node: Tree | Found, tokens: Sequence[Token], at: int, step: int
) -> Found | None:
    """The same where any word may stand in it; of two of one length the weightier group."""
    if not isinstance(node, dict):
        return node
    best: Found | None = node.get(_ENDS)
    at += step
    if not 0 <= at < len(tokens):
        return best
    token = tokens[at]
    for word in (token.text, _WILD_OF.get(token.kind)):
        if word in node:
            found = _longest_of_several(node[word], tokens, at, step)
            if found and (best is None or _order(found) < _order(best)):
                best = found
    return best


def _order(found: Found) -> tuple[int, int]:
    return -found[1], _RANKS.get(found[0], 0)


class Phrases:
    """A set of phrases that can be matched forwards or backwards from a place in the tokens."""

    __slots__ = ("_backwards", "_forwards", "_known", "firsts")

    def __init__(self, phrases: Iterable[Phrase]) -> None:
        self._known = frozenset(phrases)
        self.firsts = frozenset(phrase[0] for phrase in self._known)
        # Most groups are asked for in one direction: each tree is made when it is first asked.
        self._forwards: Tree = {}
        self._backwards: Tree = {}

    def after(self, tokens: Sequence[Token], at: int) -> int:
        """How many tokens from `at` on the longest matching phrase has; 0 for none."""
        if at >= len(tokens):
            return 0
        if not self._forwards:
            self._forwards = tree_of((phrase, "") for phrase in self._known)
        found = longest(self._forwards, tokens, at, 1)
        return found[1] if found else 0

    def before(self, tokens: Sequence[Token], at: int) -> int:
        """How many tokens up to and with `at` the longest matching phrase has; 0 for none."""
        if at < 0:
            return 0
        if not self._backwards:
            self._backwards = tree_of((phrase[::-1], "") for phrase in self._known)
        found = longest(self._backwards, tokens, at, -1)
        return found[1] if found else 0
