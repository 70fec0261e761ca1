"""Small questions about the words around a number, shared by the rules that judge it."""

from __future__ import annotations

import re

from service.ballots.beside import Beside
from service.ballots.lexicon import NUMBER, PLAIN, bits_of
from service.ballots.mention import Mention
from service.ballots.scanning import DIGITS, WORD
from service.ballots.scene import Scene

#: No saying begins so many words before its number.
_SAYING_REACH = 4
#: End like the things that are counted, and are none.
NO_THINGS = frozenset(
    "always thanks cheers perhaps sometimes besides unless maybes gets wins looks seems feels takes "
    "makes calls beckons goes comes needs wants says speaks deserves tempts shouts screams sings gives "
    "keeps sounds works rocks rules does jumps intrigues appeals pleases suits fits matches reminds "
    "starts begins stays remains hits sits lies hides shows leaps draws catches pulls whispers sticks "
    "pops waves winks means stands brings earns cries begs this has was is his us yes".split()
)
_MEASURE = re.compile(r"\d+(?:ft|h|hr|hrs|lb|lbs|st|m|in|min|mins)")
_SAYINGS = bits_of("sayings")
_PLACING = ("second", "corner", "top", "bottom", "left", "right", "first", "last")
_PLACES = bits_of(*_PLACING)
_KNOWN = NUMBER | PLAIN
#: Kinds of tokens that say nothing of a number in their clause.
_SILENT = frozenset({"soft", "quote", "other", "emoticon", DIGITS})


def word_at(scene: Scene, at: int) -> str:
    """The word at this place, "" where another kind of token or nothing stands."""
    if 0 <= at < len(scene.tokens) and scene.tokens[at].kind == WORD:
        return scene.tokens[at].text
    return ""


def is_number(scene: Scene, at: int) -> bool:
    """Whether a number stands at this place, in digits or as a word."""
    return scene.kinds[at] == DIGITS or bool(scene.signs[at] & NUMBER)


def telling_words(scene: Scene, start: int, end: int) -> list[int]:
    """The places of words among the tokens [start:end] that say something of their own."""
    known = scene.lexicon.plain_words
    return [
        at
        for at in range(start, end)
        if scene.kinds[at] == WORD
        and scene.tokens[at].text not in known
        and not scene.begins("page", at)
    ]


def is_fabric(scene: Scene, mention: Mention) -> bool:
    """As in "2 over 1": so many threads over so many of the fabric."""
    after = mention.after
    return (
        (mention.value or 9) <= 4
        and word_at(scene, after) == "over"
        and after + 1 < len(scene.tokens)
        and scene.tokens[after + 1].text in {"1", "2", "3", "4", "one", "two"}
    )


def is_a_smaller_unit(scene: Scene, mention: Mention) -> bool:
    """As in "4 foot 4", "5ft 1", "2 hours 30": what is left of a measure told in two units."""
    at, tokens = mention.first - 1, scene.tokens
    if not 0 < (mention.value or 60) < 60 or at < 0:
        return False
    if tokens[at].kind == "mixed":
        return bool(_MEASURE.fullmatch(tokens[at].text))
    unit = scene.begins("other_after", at) == 1 and at > 0 and not scene.begins("times", at)
    return unit and tokens[at - 1].kind == DIGITS and mention.shape == "digits"


def in_a_saying(scene: Scene, mention: Mention) -> bool:
    """Whether a saying covers it, as "three cheers for" or "last but not least" does."""
    first, signs = mention.first, scene.signs
    for at in range(max(first - _SAYING_REACH, 0), first + 1):
        if signs[at] & _SAYINGS and at + scene.begins("sayings", at) > first:
            return True
    return False


def is_in_brackets(scene: Scene, mention: Mention) -> bool:
    """As in "My mum (86)", "the kids (5 and 8)": nothing but numbers in brackets behind a word."""
    tokens = scene.tokens
    first, after = mention.first - 1, mention.after
    while first > 0 and _lists(scene, first):
        first -= 1
    while after < len(tokens) and _lists(scene, after):
        after += 1
    return (
        first >= 1
        and after < len(tokens)
        and tokens[first].text == "("
        and tokens[after].text == ")"
        and tokens[first - 1].kind == WORD
        and scene.lexicon.before(tokens, first - 1)[0]
        not in {"page", "number", "choice_before", "lucky_before"}
    )


def _lists(scene: Scene, at: int) -> bool:
    """Whether this token is a number, or parts two in a list."""
    return (
        scene.kinds[at] == DIGITS
        or scene.tokens[at].text in {",", "&", "/"}
        or (scene.begins("also", at) > 0)
    )


def rules_out_the_next(scene: Scene, at: int) -> bool:
    """As in "25 pas la 52": the words here rule the number behind them out, not the one before."""
    step = scene.lexicon.group("not_before").after(scene.tokens, at)
    beyond = at + step
    while step and (step := scene.begins("fillers", beyond) or scene.begins("page", beyond)):
        beyond += step
    return beyond > at and scene.kinds[beyond : beyond + 1] == [DIGITS]


def is_of_own_piece(scene: Scene, mention: Mention) -> bool:
    """Whether "of my", "of mine", "of the chart I am doing" follows."""
    at = mention.after
    own = scene.begins("own_piece", at)
    if own:  # "page 1 of the 63" is the chart's
        return [token.text for token in scene.tokens[at + own : at + own + 1]] != [
            str(scene.last_page)
        ]
    step = scene.begins("part_of", at)
    behind = scene.tokens[at + step : at + step + 1]
    # "Page 4 of 20" is of another chart.
    other = step and behind and behind[0].kind == DIGITS
    return bool(other) and behind[0].text != str(scene.last_page)


def is_of_ones_own(scene: Scene, mention: Mention) -> bool:
    """As in "of my own chart", "of mine": a piece that is said to be the writer's."""
    own = scene.begins("own_piece", mention.after)
    behind = mention.after + own - 1
    return own > 0 and (scene.begins("owning", behind) > 0 or word_at(scene, behind) == "mine")


def says_where_the_writer_is(scene: Scene, before: Beside) -> bool:
    """As in "I'm on page 11", "still at number 9"."""
    start, _ = scene.sentence(max(before.at, 0))
    asks = scene.begins("asking", start) > 0  # "who knows what is on page 21"
    return not asks and scene.has("whereabouts", before.at - 3, before.at + 1)


def counts_what_follows(scene: Scene, after: Beside) -> bool:
    """Whether the words after a number end in a thing it may count ("99 red balloons")."""
    at = after.at if not after.clear else after.phrase
    for step in range(3):
        word = word_at(scene, at + step)
        if not word:
            return False
        group, _ = scene.lexicon.after(scene.tokens, at + step)
        if not step and scene.begins("being", at):
            return False  # "20 and 30 are gorgeous colours"
        if group == "other_after":
            return True
        known = group not in {"", "weak_after"} and not scene.begins("describing", at + step)
        if known:
            return False
        many = scene.lexicon.plural_s and word.endswith("s")
        if many and word not in NO_THINGS and len(word) > 3 and not word.endswith("ss"):
            return True
    return False


def is_a_date(scene: Scene, mention: Mention) -> bool:
    """As in "the 12th of May", "12 May 2026"; "42 may be nice" tells none."""
    if not 1 <= (mention.value or 0) <= 31:
        return False
    at = mention.after
    linked = scene.begins("of_month", at)
    at += linked
    if not scene.begins("months", at):
        return False
    if linked or not scene.begins("doubtful_months", at):
        return True
    # "May" and "March" are other words too, where more words follow.
    return at + 1 >= len(scene.tokens) or scene.tokens[at + 1].kind != WORD


def is_a_makers_code(scene: Scene, mention: Mention) -> bool:
    """As in "XYZ 310": capitals right before the number in a comment that does not shout."""
    at = mention.first - 1
    if not word_at(scene, at) or scene.lexicon.before(scene.tokens, at)[0]:
        return False
    start, end = scene.span(at, at + 1)
    written = scene.text[start:end]
    return 2 <= len(written) <= 5 and written.isupper() and not scene.text.isupper()


def is_alone(scene: Scene, mention: Mention) -> bool:
    """Whether its clause holds nothing but numbers and words that say nothing of a number."""
    signs, kinds = scene.signs, scene.kinds
    at = mention.first - 1
    while at >= 0 and (kinds[at] == WORD or scene.joins(at)):
        if not (signs[at] & _KNOWN and kinds[at] == WORD) and _tells(scene, at, mention):
            return False
        at -= 1
    at, stop = mention.after, len(kinds)
    while at < stop and (kinds[at] == WORD or scene.joins(at)):
        if not (signs[at] & _KNOWN and kinds[at] == WORD) and _tells(scene, at, mention):
            return False
        at += 1
    return True


def _tells(scene: Scene, at: int, mention: Mention) -> bool:
    """Whether a token that is no number and no plain word says something of the mention."""
    if scene.kinds[at] != WORD:
        return scene.kinds[at] not in _SILENT
    # Of several places in one clause each is as good as alone.
    place = mention.shape == "place" and scene.signs[at] & _PLACES
    return not (place and any(scene.begins(group, at) for group in _PLACING))
