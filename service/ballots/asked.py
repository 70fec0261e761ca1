"""Whether a number is asked about: in a question, before one, or hanging on its answer."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.scanning import DIGITS, SOFT, WORD
from service.ballots.scene import Scene
from service.ballots.stands import Standing

#: So many strands or needles are used at most.
_FEW = 6
ASKED_ABOUT = "asked about, not chosen"
#: Words of which one must stand where a number is asked about.
ASKING = bits_of("asking")
LATER = bits_of("asked_later", "asked_plainly", "again")
ANSWERED = bits_of("answered")


def lower(mention: Mention, standing: Standing, rule: str) -> None:
    """Give the mention this standing, for this reason."""
    mention.standing, mention.rule = standing, rule


def read_question(scene: Scene, mention: Mention, start: int, end: int) -> bool:
    """Lower a mention that is asked about; whether it is."""
    if _asks_on(scene, mention, start):
        lower(mention, stands.OTHER, "asked about something else")
    elif _answers(scene, mention, start):
        lower(mention, stands.ASKED, "may answer a question about something else")
    elif _is_asked(scene, mention, start):
        plainly = scene.has("asked_plainly", start, mention.first)
        other = scene.has("topics", start, end) and not (plainly or mention.cued_by_page)
        lower(mention, stands.OTHER if other else stands.ASKED, ASKED_ABOUT)
    else:
        return False
    return True


def is_asked_later(scene: Scene, mentions: list[Mention], at: int) -> bool:
    """As in "27, is that gone?": a question behind it asks about the last page named."""
    behind = mentions[at].after
    if _is_met_again(scene, mentions[at]):
        return True
    following = mentions[at + 1].first if at + 1 < len(mentions) else len(scene.tokens)
    if scene.has("asked_plainly", behind, following):
        return True
    asked = scene.find("asked_later", behind, following)
    if asked < 0 or not scene.is_question(asked):
        return False
    return not scene.has("if_words", behind, asked)  # "22 if 21 is taken"


def _is_met_again(scene: Scene, mention: Mention) -> bool:
    """As in "39 again??", "schon wieder die 39?": asked with nothing else, and not chosen."""
    if not scene.is_question(mention.first):
        return False
    start, end = scene.sentence(mention.first)
    step = scene.begins("again", mention.after)
    if step:
        groups = ("choice_before", "suggesting")
        chosen = any(scene.has(group, start, mention.first) for group in groups)
        return end == mention.after + step and not chosen
    at = mention.first - 1
    while at > start and scene.lexicon.before(scene.tokens, at)[0] == "fillers":
        if scene.lexicon.group("again").before(scene.tokens, at):
            break
        at -= 1
    step = scene.lexicon.group("again").before(scene.tokens, at)
    return step > 0 and at - step + 1 <= start + 1 and end == mention.after


def opening_of(scene: Scene, mention: Mention) -> int:
    """Where its sentence begins, without an "and" or a "but"."""
    start, _ = scene.sentence(mention.first)
    return start + (scene.begins("also", start) or scene.begins("turning", start))


def is_asked_of(scene: Scene, mention: Mention) -> bool:
    """As in "is 38 done already?": a question whose first words stand right before it."""
    start = opening_of(scene, mention)
    plainly = start < mention.first and start + scene.begins("asking", start) == mention.first
    return plainly and scene.is_question(mention.first)


def hangs_on_an_answer(scene: Scene, mentions: list[Mention], at: int) -> bool:
    """As in "Is 12 gone? If so 15": what is asked before decides."""
    told = next((one for one in reversed(mentions[:at]) if one.standing >= stands.ASKED), None)
    if told is None or told.standing != stands.ASKED or not scene.on_chart((told.value or 0,)):
        return False
    near = mentions[at].first - 1
    while near > 0 and (
        scene.kinds[near] == SOFT
        or (
            scene.lexicon.before(scene.tokens, near)[0] in {"fillers", "page", "choice_before"}
            and not scene.lexicon.group("answered").before(scene.tokens, near)
        )
    ):
        near -= 1
    return scene.lexicon.group("answered").before(scene.tokens, near) > 0 and (
        told.depends or scene.is_question(told.first)
    )


def _is_asked(scene: Scene, mention: Mention, start: int) -> bool:
    """Whether its sentence asks about it ("is 42 taken?") rather than proposes it."""
    if mention.lucky:
        return False
    tokens = scene.tokens
    head = start
    while head < mention.first and tokens[head].kind not in {WORD, DIGITS}:
        head += 1
    if tokens[head].kind == DIGITS and head < mention.first:
        return False  # "5 is my third, 15 my second" asks nothing
    if tokens[head].text == "why" and not scene.has("suggesting", start, mention.first):
        return True  # "why are we all on 33"
    if scene.begins("asked_plainly", head):  # "is it page 3 that's got the castle on it"
        return not scene.has("suggesting", start, mention.first)
    asking = scene.lexicon.group("asking")
    clause_start, _ = scene.clause(mention.first, mention.after)
    openings = {head, head + 1, clause_start}
    if not any(asking.after(tokens, place) for place in openings if place < mention.first):
        # "How many pages has it? 63?" guesses at the number of pages.
        all_pages = mention.value == scene.last_page and start > 0
        return all_pages and scene.is_question(mention.first) and scene.has("asking", 0, start)
    if scene.has("suggesting", start, mention.first):
        return False
    if scene.is_question(mention.first):
        return True
    return mention.standing < stands.CUED and tokens[head].text in {
        "has", "is", "hasn't", "isn't", "anyone", "why",
    }  # fmt: skip


def _answers(scene: Scene, mention: Mention, start: int) -> bool:
    """As in "How many strands do you use? I always use 2": so few are hardly the page."""
    few = 0 < (mention.value or 0) <= _FEW and not mention.cued_by_page
    if not (few and start and "?" in scene.tokens[start - 1].text):
        return False
    asked, _ = scene.sentence(start - 1)
    _, end = scene.sentence(mention.first)
    about = scene.has("topics", asked, start) and scene.has("asking", asked, start)
    return about and not scene.has("voting", start, end)


def _asks_on(scene: Scene, mention: Mention, start: int) -> bool:
    """As in "What count is this? 18 or 25?": a question goes on with nothing but numbers."""
    if mention.standing >= stands.CUED or not start or not scene.is_question(mention.first):
        return False
    words = [token for token in scene.tokens[start : mention.first] if token.kind == WORD]
    asked, _ = scene.sentence(start - 1)
    return (
        all(scene.lexicon.group("either").firsts & {token.text} for token in words)
        and scene.has("topics", asked, start)
        and scene.has("asking", asked, start)
    )
