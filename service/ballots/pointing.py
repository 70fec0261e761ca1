"""Votes said by pointing: "same as above", "I'm 47, so that's my vote", "the one with the owl"."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.elsewhere import RULED_OUT
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.reading import Evidence, Reading
from service.ballots.scanning import WORD
from service.ballots.scene import Scene

#: So many other words may stand beside words that point at a page; a longer phrase always does.
_SPARE, _SPARE_AT_START, _LONG = 3, 5, 4
#: A phrase of so few words may go on otherwise ("the same recipe").
_BARE = 2
#: The last words of "same as": what follows tells the same as what.
_LIKE = frozenset("as que wie als come como som jako jak kuin than".split())
#: Words that point back reach over so many words to the number that they are about.
_BACK_REACH = 14
#: A page told by what is on it is chosen in so few words, or in a sentence that chooses.
_DESCRIBED = 9
#: Of so few words more it is all that is said.
_NAMED_ALONE = 3
#: Without a word of any of these nothing is said by pointing.
POINTING = bits_of("pointing", "pointing_back", "own_facts", "described", "as_named")


def read_pointing(scene: Scene, mentions: list[Mention]) -> Reading | None:
    """The look that a comment gets which points at a page; None where it does not."""
    return (
        _pointing_back(scene, mentions)
        or _pointing(scene, mentions)
        or _own_fact(scene)
        or _as_named(scene)
        or read_described(scene)
    )


def look_at(scene: Scene, first: int, after: int, pages: tuple[int, ...], why: str) -> Reading:
    """A look with these pages, for what the tokens [first:after] say."""
    start, end = scene.span(first, after)
    evidence = (Evidence(start, end, scene.text[start:end], None, why),)
    return Reading("look", pages, None, why, evidence)


def _pointing(scene: Scene, mentions: list[Mention]) -> Reading | None:
    """As in "Same as above", "my age", "I turned 70, use that": said by pointing at something."""
    at = scene.find("pointing")
    while at >= 0:
        step = scene.begins("pointing", at)
        if _points(scene, at, step, mentions):
            pointed_at = tuple(one.value for one in mentions if one.value is not None)
            pages = scene.on_chart(pointed_at) if len(pointed_at) == 1 else ()
            return look_at(scene, at, at + step, pages, "points at something instead of a page")
        at = scene.find("pointing", at + 1)
    return None


def _points(scene: Scene, at: int, step: int, mentions: list[Mention]) -> bool:
    """Whether these words are what the clause says, not a part of other talk ("same recipe")."""
    tokens, end = scene.tokens, at + step
    known = scene.lexicon.plain_words
    if (
        step <= _BARE
        and tokens[end - 1].text not in _LIKE
        and end < len(tokens)
        and tokens[end].kind == WORD
        and not (tokens[end].text in known or scene.lexicon.after(tokens, end)[0])
    ):
        return False
    start, stop = scene.clause(at, end)
    is_told = any(scene.begins("being", place) for place in range(max(at - 2, start), at))
    if is_told and any(start <= one.first < at for one in mentions):
        return False  # "the 5th of May is my birthday"
    likened = any(token.text in _LIKE for token in tokens[at:end])
    begins = scene.sentence(at)[0] == at and step > 1 and likened
    led, chosen_by = scene.lexicon.before(tokens, at - 1) if at > start else ("", 0)
    # "I want what I voted for last time"
    wanted = led == "choice_before" and at - chosen_by - start <= 1
    others = (*tokens[at if wanted else start : at], *tokens[end:stop])
    spare = sum(token.kind == WORD and not (begins and token.text in known) for token in others)
    if step > _LONG or spare <= (_SPARE_AT_START if begins else _SPARE) or scene.word_count() <= 5:
        return True
    numbered = len(mentions) == 1 and mentions[0].first < at
    apart = numbered and mentions[0].after <= start
    chosen = at > 0 and scene.lexicon.before(tokens, at - 1)[0] in {"choice_before", "fillers"}
    own = at > 0 and scene.begins("own_voice", at - 1)
    return (apart and spare <= 4) or (numbered and (chosen or bool(own)) and end == stop)


def _pointing_back(scene: Scene, mentions: list[Mention]) -> Reading | None:
    """As in "I'm 47, so that's my vote", "my birthday's on the 16th, go with that"."""
    at = scene.find("pointing_back")
    while at >= 0:
        told = [
            one
            for one in mentions
            if (one.standing == stands.OTHER or one.rule == RULED_OUT)
            and one.value is not None
            and scene.on_chart((one.value,))
            and 0 <= at - one.after <= _BACK_REACH
        ]
        if told:
            pages = (told[-1].value or 0,)
            step = scene.begins("pointing_back", at)
            return look_at(scene, at, at + step, pages, "points at a number told before")
        at = scene.find("pointing_back", at + 1)
    return None


def _own_fact(scene: Scene) -> Reading | None:
    """As in "my mum's birthday": a number that is not told, and nothing else said."""
    at = scene.find("own_facts")
    if at < 0:
        return None
    end = at + scene.begins("own_facts", at)
    start, stop = scene.clause(at, end)
    tokens, lexicon = scene.tokens, scene.lexicon
    if any(scene.begins("it_is", place) for place in range(start, at)):
        return None  # "it's my mum's birthday"
    places = [
        place for place in (*range(start, at), *range(end, stop)) if scene.kinds[place] == WORD
    ]
    choosing = all(
        lexicon.before(tokens, place)[0] in _CHOOSING
        or lexicon.after(tokens, place)[0] in _CHOOSING
        for place in places
    )
    if not choosing:
        return None
    return look_at(scene, at, end, (), "points at something instead of a page")


_CHOOSING = frozenset({"choice_before", "choice_after", "fillers", "page", "number"})


def _as_named(scene: Scene) -> Reading | None:
    """As in "Comme Josette": nothing but a name behind the words."""
    step = scene.begins("as_named", 0)
    words = [at for at, kind in enumerate(scene.kinds) if kind == WORD]
    name = words[-1] if words else 0
    if not step or name < step or len(words) > step + 2 or words != list(range(len(words))):
        return None
    start, end = scene.span(name, name + 1)
    written = scene.text[start:end]
    if not written.istitle() or scene.tokens[name].text in scene.lexicon.plain_words:
        return None
    return look_at(scene, 0, name + 1, (), "points at something instead of a page")


def read_described(scene: Scene) -> Reading | None:
    """As in "The one with the owl please": a page told by what is on it."""
    at = scene.find("described")
    if at < 0:
        return None
    start, end = scene.sentence(at)
    step = scene.begins("described", at)
    chosen = scene.has("choice_before", start, at) or scene.has("choice_after", at + step, end)
    _, stop = scene.clause(at, at + step)
    brief = scene.word_count() <= _DESCRIBED + _NAMED_ALONE
    alone = at <= start + 1 and brief and stop - at <= step + _NAMED_ALONE
    if not (chosen or alone) or end - start > _DESCRIBED + step:
        return None
    return look_at(scene, at, at + step, (), "a page told by what is on it")
