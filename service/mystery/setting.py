"""A name in its surroundings: the words around a mention, as patterns read them."""

from __future__ import annotations

from dataclasses import dataclass

from service.mystery import cues
from service.mystery.clauses import Clause, Parsed, is_quoted
from service.mystery.compare import Mention
from service.mystery.concepts import is_common
from service.mystery.everyday import FIRST_NAMES
from service.mystery.names import ARTICLES, Word, forms_of
from service.mystery.talk import CHAT, OPENERS, SMALL_WORDS

#: A designer's name, and what continues a title behind a bracket, are no longer than this.
MOST_WORDS_OF_A_PERSON = 3

#: "by the one and only ..." and the like before a designer.
MOST_WORDS_OF_PRAISE = 4

_I = frozenset(("i", "im", "ive", "id", "ill"))
_SOMEBODY = frozenset(
    "somebody someone something whatshername whatsername whatshisname who or other".split()
)


@dataclass(frozen=True, slots=True)
class Setting:
    """A mention with the words around it.

    `before` and `after` are the words of its own clause, without an article and without
    designers named there; `end` is what that clause ends with. `earlier` are the clauses before
    it in its sentence, `just_before` the last two in whatever sentence; `following` is the clause
    behind it, `following_end` what that one ends with, `following_named` that it holds capitals.
    `addressed` says that somebody is addressed with @ before the name, `said_by` that a person's
    name and a colon stand before it.
    `named` says that the writing shows a name (capitals, quotation marks, a tag), `article` holds
    the article before it. `other_designer` says that "by" and a person's name follow, `signed`
    that a designer, the sealed one or another, stands in the clause, `struck` that
    the name is struck out, and `continued` that the writing goes on as one longer name.
    """

    mention: Mention
    before: str
    after: str
    end: str
    earlier: tuple[str, ...]
    just_before: tuple[str, ...]
    following: str
    following_end: str
    following_named: bool
    addressed: bool
    said_by: bool
    named: bool
    article: str
    other_designer: bool
    signed: bool
    struck: bool
    continued: bool

    @property
    def title(self) -> tuple[str, ...]:
        """The sealed name's words as compared."""
        return forms_of(self.mention.name.text)

    @property
    def in_lower_case(self) -> bool:
        """Whether a title is written like any words; a designer's name never is."""
        return not self.named and self.mention.name.of == "title"


def setting_of(parsed: Parsed, mention: Mention, beside: tuple[Mention, ...]) -> Setting:
    """The words around a mention, with the names `beside` it (designers) taken out."""
    at = next(i for i, c in enumerate(parsed.clauses) if c.first <= mention.first <= c.last)
    clause = parsed.clauses[at]
    masked = {i for d in beside for i in range(d.first, d.last + 1)}
    before = [i for i in range(clause.first, mention.first) if i not in masked]
    article = parsed.words[before[-1]].form if before else ""
    if article not in ARTICLES:
        article = ""
    after, other_designer = _without_designer(parsed, mention.last + 1, clause.last, masked)
    nexts = parsed.clauses[at + 1 : at + 2]
    subtitle = bool(nexts) and clause.end in ("(", ":") and _is_subtitle(parsed, nexts[0], masked)
    return Setting(
        mention=mention,
        before=parsed.join(before[:-1] if article else before),
        after=parsed.join(after),
        end=clause.end,
        earlier=tuple(parsed.forms(c) for c in parsed.clauses[max(0, at - 4) : at] if c.sentence == clause.sentence),
        just_before=tuple(parsed.forms(c) for c in parsed.clauses[max(0, at - 2) : at]),
        following=_following(parsed, at),
        following_end=nexts[0].end if nexts else "",
        following_named=bool(nexts) and _names_something(parsed, nexts[0]),
        addressed=any(word.handle for word in parsed.words[: mention.first]),
        said_by=at > 0 and _is_speaker(parsed, parsed.clauses[at - 1]),
        named=looks_named(parsed, mention),
        article=article,
        other_designer=other_designer,
        struck=parsed.text[: parsed.words[mention.first].start].count("~~") % 2 == 1,
        signed=other_designer or not masked.isdisjoint(range(clause.first, clause.last + 1)),
        continued=subtitle or bool(after and _is_capital(parsed.words[after[0]])),
    )  # fmt: skip


def _without_designer(
    parsed: Parsed, first: int, last: int, masked: set[int]
) -> tuple[list[int], bool]:
    """The words behind a name without "by" and a designer, and whether it is another designer."""
    after = list(range(first, last + 1))
    other = False
    if after and cues.DESIGNER_AFTER.match(parsed.words[first].form):
        by = 2 if [word.form for word in parsed.words[first + 1 : first + 2]] == ["by"] else 1
        person = _person_length(parsed, first + by, last)
        # "by the wonderful ..."
        sealed = next((i for i in after[by : by + MOST_WORDS_OF_PRAISE + 1] if i in masked), None)
        if sealed is not None:
            after = [i for i in after if i >= sealed]
        elif person:
            other = True
            after = [i for i in after[by + person :] if parsed.words[i].form not in _SOMEBODY]
    return [i for i in after if i not in masked], other


def _person_length(parsed: Parsed, first: int, last: int) -> int:
    """How many words from `first` on look like a person's name, such as a designer's."""
    words: list[Word] = []
    for word in parsed.words[first : min(last + 1, first + MOST_WORDS_OF_A_PERSON)]:
        if word.form in SMALL_WORDS or (is_common(word.form) and not word.capital):
            break
        words.append(word)
    called = bool(words) and words[0].form in FIRST_NAMES
    return len(words) if called or not all(is_common(word.form) for word in words) else 0


def _following(parsed: Parsed, at: int) -> str:
    """The clause behind the one at `at`, with a "but" that follows in its sentence."""
    clauses = parsed.clauses[at + 1 : at + 3]
    texts = [("or " if c.alternative else "") + parsed.forms(c) for c in clauses]
    turns = len(clauses) == 2 and clauses[0].sentence == clauses[1].sentence
    return " ".join(texts) if turns and texts[1].startswith("but ") else "".join(texts[:1])


def _is_speaker(parsed: Parsed, clause: Clause) -> bool:
    """Whether a clause is a person's name and a colon ("Anna: ...")."""
    words = parsed.words[clause.first : clause.last + 1]
    form = words[0].form
    person = form in FIRST_NAMES or not (is_common(form) or form in CHAT or form in OPENERS)
    return clause.end == ":" and len(words) == 1 and words[0].capital and person


def _names_something(parsed: Parsed, clause: Clause) -> bool:
    return any(map(_is_capital, parsed.words[clause.first + 1 : clause.last + 1]))


def _is_capital(word: Word) -> bool:
    return word.capital and not word.shout and word.form not in _I


def _is_subtitle(parsed: Parsed, clause: Clause, designers: set[int]) -> bool:
    """Whether what follows a colon or a bracket continues the name ("(Spring)")."""
    words = parsed.words[clause.first : clause.last + 1]
    short = len(words) <= MOST_WORDS_OF_A_PERSON
    designer = not designers.isdisjoint(range(clause.first, clause.last + 1))
    chat = any(w.form in CHAT or w.form in OPENERS for w in words)
    person = _person_length(parsed, clause.first, clause.last) == len(words)
    return short and not (designer or chat or person) and any(w.capital for w in words)


def looks_named(parsed: Parsed, mention: Mention) -> bool:
    """Whether the writing itself shows a name: quotation marks, a tag, capitals."""
    words = parsed.words[mention.first : mention.last + 1]
    start, end = parsed.span(mention.first, mention.last)
    written = parsed.text[start:end]
    if is_quoted(parsed.text, start, end) or parsed.text[max(0, start - 1) : start] == "#":
        return True
    run_together = len(words) == 1 and any(char.isupper() for char in written[1:])
    if run_together and not words[0].shout:
        return True
    others = parsed.others(mention)
    if all(w.shout for w in words):
        return any(not w.shout and not w.form.isdigit() for w in others)
    plain = [w for w in others if w.form.isalpha() and w.form != "i"]
    if len(plain) > 2 and all(w.capital for w in plain):
        return False
    return _has_capitals(parsed, mention, written)


def _has_capitals(parsed: Parsed, mention: Mention, written: str) -> bool:
    """Whether a mention's capitals are those of a name, not those of a sentence."""
    words = parsed.words[mention.first : mention.last + 1]
    telling = [w for w in words if w.form not in SMALL_WORDS and not w.form.isdigit()]
    capitals = sum(w.capital for w in telling)
    if len(telling) > 1 and capitals == len(telling):
        return True
    if written == mention.name.text and any(w.capital for w in words[1:]):
        return True
    opens = any(clause.first == mention.first for clause in parsed.clauses)
    goes_on = any(map(_is_capital, parsed.words[mention.last + 1 : mention.last + 4]))
    return len(telling) == 1 and capitals == 1 and (goes_on or not opens)
