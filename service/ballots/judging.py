"""Each number judged by the words beside it: a choice, something else, or not to be told."""

from __future__ import annotations

from service.ballots.beside import Beside, read_after, read_before
from service.ballots.mentions import Mention, Standing
from service.ballots.relations import told_from
from service.ballots.scanning import WORD
from service.ballots.scene import Scene

_TOLD_FROM = frozenset({"above", "below", "later", "earlier", "relative_before"})


def judge(scene: Scene, mention: Mention) -> None:
    """Set the mention's standing and the rule that decided."""
    before = read_before(scene, mention.first)
    after = read_after(scene, mention.after)
    if before.number and before.page is False and mention.shape == "ordinal word":
        before.number = False
    if "ordinal" in mention.shape:
        _judge_ordinal(scene, mention, before, after)
    else:
        _judge_number(scene, mention, before, after)


def _set(mention: Mention, standing: Standing, rule: str) -> None:
    mention.standing = standing
    mention.rule = rule


def _judge_number(scene: Scene, mention: Mention, before: Beside, after: Beside) -> None:
    value = mention.value if mention.value is not None else 0
    cued = before.page or (before.number and mention.shape != "word")
    if before.group == "not_before" or after.group == "not_after":
        _set(mention, Standing.STRUCK, "ruled out")
    elif after.group == "other_after" and not before.page:
        _set(mention, Standing.OTHER, "counts or measures something else")
    elif not before.page and (value > 999 or (1900 <= value < 2100)):
        _set(mention, Standing.OTHER, "too large for a page, a year or a count")
    elif before.group in _TOLD_FROM and not after.open:
        _set(mention, Standing.OTHER, "part of other talk")
    elif before.group in _TOLD_FROM:
        mention.maybe = told_from(scene.question.chart, value, before.group)
        _set(mention, Standing.PLACED, "told from another page")
    elif before.group == "roughly_before" or after.group == "roughly_after":
        mention.maybe = (value,)
        _set(mention, Standing.PLACED, "about there, not an exact page")
    elif before.group == "lucky_before" and not cued:
        mention.lucky = True
        _set(mention, Standing.BARE, "a favourite or lucky number")
    elif before.group == "choice_before":
        _judge_chosen(scene, mention, before, after)
    elif before.group == "other_before":
        _set(mention, Standing.OTHER, "belongs to the words before it")
    elif before.group in {"reported_before", "family_before"}:
        mention.reported = True
        mention.family = before.group == "family_before"
        _set(mention, Standing.ASKED, "somebody else's")
    elif cued:
        _judge_cued(scene, mention, before, after)
    elif before.group == "weak_before":
        _judge_weak_before(scene, mention, before, after)
    else:
        _judge_after(scene, mention, before, after)


def _judge_chosen(scene: Scene, mention: Mention, before: Beside, after: Beside) -> None:
    """After words of choice: chosen, unless what follows says it measures something."""
    tokens = scene.tokens
    value = mention.value or 0
    next_word = tokens[after.at].text if not after.open and after.at < len(tokens) else ""
    if after.group == "weak_after" and _is_fabric(scene, mention):
        _set(mention, Standing.OTHER, "fabric and thread")
    elif after.group == "weak_after" and value == 1 and mention.spelled:
        _set(mention, Standing.OTHER, "the word, not the number")
    elif mention.spelled and value == 1 and not before.page and after.open and (
        after.phrase >= 0 and after.group != "choice_after"
    ):
        _set(mention, Standing.OTHER, "the word, not the number")
    elif next_word and not before.page and (value != 1 and next_word.endswith("s")):
        _set(mention, Standing.UNSURE, "may count what follows")
    elif next_word and not before.page and mention.spelled and value < 11:
        _set(mention, Standing.OTHER, "counts what follows")
    elif next_word and not before.page:
        _set(mention, Standing.UNSURE, "may count what follows")
    else:
        _set(mention, Standing.CUED, "words of choice before it")
    mention.cued_by_page = before.page


def _is_fabric(scene: Scene, mention: Mention) -> bool:
    """ "2 over 1": so many threads of the fabric to a stitch."""
    after = mention.after
    tokens = scene.tokens
    return (
        after + 1 < len(tokens)
        and tokens[after].text == "over"
        and tokens[after + 1].text in {"1", "2", "3", "4", "one", "two"}
        and (mention.value or 9) <= 4
    )


def _judge_cued(scene: Scene, mention: Mention, before: Beside, after: Beside) -> None:
    """After "page" or "number": a choice, unless of the writer's own piece or a rank."""
    value = mention.value or 0
    mention.cued_by_page = before.page
    own = before.group == "weak_before"
    if before.page and (own or _is_own(scene, mention)):
        if after.group == "choice_after" and not _is_own(scene, mention):
            _set(mention, Standing.CUED, "a page word before it")
        elif _is_own(scene, mention) or _says_where_i_am(scene, before):
            _set(mention, Standing.OTHER, "a page of the writer's own piece")
        else:
            _set(mention, Standing.UNSURE, "a page, perhaps only talked about")
    elif not before.page and not after.open:
        standing = Standing.OTHER if value == 1 else Standing.UNSURE
        _set(mention, standing, "may be the number of something else")
    elif after.group in {"reported_after"}:
        mention.reported = True
        _set(mention, Standing.ASKED, "foretold or reported, perhaps not chosen")
    else:
        _set(mention, Standing.CUED, "a page or number word before it")


def _is_own(scene: Scene, mention: Mention) -> bool:
    """Whether "of my", "of mine", "of the chart I am doing" follows."""
    words = [token.text for token in scene.tokens[mention.after : mention.after + 3]]
    return words[:1] == ["of"] and len(words) > 1 and words[1] in {"my", "mine", "the", "our", "a"}


def _says_where_i_am(scene: Scene, before: Beside) -> bool:
    words = {token.text for token in scene.tokens[max(before.at - 3, 0) : before.at + 1]}
    return bool(words & {"i'm", "im", "am", "still", "stuck", "currently", "halfway", "up", "got",
                         "we're", "finally", "was", "only", "already", "he's", "she's", "is"})  # fmt: skip


def _judge_weak_before(scene: Scene, mention: Mention, before: Beside, after: Beside) -> None:
    """After a bare preposition or "have": mostly something else, a choice if said so."""
    word = scene.tokens[before.phrase].text
    value = mention.value or 0
    if after.group == "choice_after":
        _set(mention, Standing.UNSURE, "may be a choice")
    elif not after.open or after.group == "weak_after" or mention.spelled and value < 11:
        _set(mention, Standing.OTHER, "counts or names something else")
    elif word == "at" and value <= 12:
        _set(mention, Standing.OTHER, "a time of day")
    else:
        _set(mention, Standing.UNSURE, "may belong to the words before it")


def _judge_after(scene: Scene, mention: Mention, before: Beside, after: Beside) -> None:
    """Nothing decides before it: what follows does, or it stands in the open."""
    if after.group == "weak_after":
        _judge_weak_after(scene, mention, before)
    elif after.group == "choice_after" and _fits_small(scene, mention, before):
        _set(mention, Standing.CUED, "words of choice after it")
    elif after.group == "reported_after":
        mention.reported = True
        _set(mention, Standing.ASKED, "foretold or reported, perhaps not chosen")
    elif before.open and after.open:
        _judge_open(scene, mention, before, after)
    elif before.open and _counts_things(scene, mention, after):
        _set(mention, Standing.OTHER, "counts what follows")
    elif mention.spelled and (mention.value or 0) < 11:
        _set(mention, Standing.OTHER, "a small number inside other talk")
    else:
        _set(mention, Standing.UNSURE, "beside words that say nothing the reader knows")


def _fits_small(scene: Scene, mention: Mention, before: Beside) -> bool:
    """A small number word in the middle of talk is no number even before "please"."""
    return before.open or not mention.spelled or (mention.value or 0) > 10


def _judge_weak_after(scene: Scene, mention: Mention, before: Beside) -> None:
    word = scene.tokens[mention.after].text
    spelled_small = mention.spelled and (mention.value or 0) < 11
    if spelled_small or _is_fabric(scene, mention):
        _set(mention, Standing.OTHER, "counts something else")
    elif word in {"page", "vote", "part", "point", "all", "to", "over"} and before.open:
        _set(mention, Standing.UNSURE, "may be a choice")
    else:
        _set(mention, Standing.OTHER, "counts something else")


def _counts_things(scene: Scene, mention: Mention, after: Beside) -> bool:
    """Whether the unknown word after it looks like the plural of a thing."""
    if after.at >= len(scene.tokens):
        return False
    word = scene.tokens[after.at].text
    return mention.value != 1 and len(word) > 3 and word.endswith("s") and not word.endswith("ss")


def _judge_open(scene: Scene, mention: Mention, before: Beside, after: Beside) -> None:
    alone = is_alone(scene, mention)
    small = mention.spelled and (mention.value or 0) < 11
    if alone:
        _set(mention, Standing.ALONE, "stands by itself")
    elif not small:
        _set(mention, Standing.BARE, "nothing says that it is something else")
    elif mention.value == 1:
        _set(mention, Standing.OTHER, "the word, not the number")
    elif before.at < 0 or scene.tokens[before.at].kind != WORD:
        _set(mention, Standing.BARE, "begins what is said")
    else:
        _set(mention, Standing.UNSURE, "a small number inside other talk")


def is_alone(scene: Scene, mention: Mention) -> bool:
    """Whether its clause holds nothing but it and words that say nothing of a number."""
    start, end = scene.clause(mention.first, mention.after)
    plain = scene.lexicon.plain_words
    for at in (*range(start, mention.first), *range(mention.after, end)):
        token = scene.tokens[at]
        if token.kind == WORD and token.text not in plain:
            return False
        if token.kind not in {WORD, "soft", "quote", "other", "emoticon"}:
            return False
    return True


def _judge_ordinal(scene: Scene, mention: Mention, before: Beside, after: Beside) -> None:
    value = mention.value or 0
    if before.group == "not_before":
        _set(mention, Standing.STRUCK, "ruled out")
    elif after.page or before.page:
        mention.cued_by_page = True
        mention.after = max(mention.after, after.at + 1) if after.page else mention.after
        own = before.group in {"weak_before", "other_before"} or _is_own(scene, mention)
        if own:
            _set(mention, Standing.OTHER, "a page of the writer's own piece")
        else:
            _set(mention, Standing.CUED, "an ordinal with a page word")
    elif mention.shape == "ordinal word":
        chosen = before.group == "choice_before" or after.group == "choice_after"
        placed = chosen or is_alone(scene, mention)
        if placed and value > 3:
            mention.maybe = (value,)
            _set(mention, Standing.ASKED, "an ordinal without a page word")
        else:
            _set(mention, Standing.OTHER, "an ordinal without a page word")
    elif before.group in {"weak_before", "other_before"} or not after.open:
        _set(mention, Standing.OTHER, "a date, a rank or a turn")
    elif value < 4 and not is_alone(scene, mention):
        _set(mention, Standing.OTHER, "a rank or a turn")
    else:
        _judge_number(scene, mention, before, after)
