"""Turns of phrase around a title: what a fair reader takes each for.

Every phrase is read with the title in capitals and, where the second column says so, in lower
case, since many viewers write without capitals.
"""

from __future__ import annotations

import pytest

from service.mystery.answer import Answer, GuessRules
from service.mystery.guess import read_guess

RULES = GuessRules(Answer("The Night Ferry", "Maud Ferrisk", ("Last Boat Over",)))

RIGHT = (
    "{}. Nailed it",
    "{} - that's the one my mum had",
    "{} is the name you're after",
    "{}: am I warm?",
    "{}!! I win!!",
    "{} without a shadow of doubt",
    "{} at a guess",
    "{} (just a guess)",
    "{} [guess]",
    "guess: {}",
    "This week's guess: {}",
    "still guessing {}",
    "I change my mind: {}",
    "scrap my last guess, {}",
    "EDIT: {}",
    "total stab in the dark but {}",
    "put me down for {}",
    "it just has to be {}",
    "there's only one thing it can be: {}",
    "it's {}, right?",
    "it's {} isn't it",
    "it's {}, not Grey Gulls",
    "not Grey Gulls but {}",
    "no, {}!",
    "no way! {}!",
    "if I had to guess {}",
    "gun to my head, {}",
    "sticking with {}",
    "{}/Grey Gulls",
    "@GrannyTangle no, {}",
    "My friend has this kit. It's {}",
    "I knew it was {}",
    "sorry if this has been said, {}",
    "I haven't read the other comments. {}",
    "you're all wrong, it's {}",
    "everybody says Grey Gulls but it's {}",
    "Hi Bea, I think it's {}, love Jo from Leeds",
    "I'm always wrong but {}",
    "I never guess but {}",
    "I can't be sure but {}",
    "can't sleep so here's my guess {}",
    "No idea. {}?",
    "isn't it called {}?",
    "{} it is",
    "{} I believe",
    "1. {}",
    "** {} **",
    "<b>{}</b>",
    "{} 🤔",
)
LOOK = (
    "{} (my husband's idea)",
    "{}, as my mum would say",
    "+1 for {}",
    "anyone else thinking {}?",
    "I can't see anything but {}",
    "reminds me so much of {}",
    "same style as {}",
    "it's the sequel to {}",
    "it's {} or similar",
    "it's {}! No wait",
    "it's {}... or is it",
    "it's not {}... or is it",
    "it may or may not be {}",
    "can't be {} can it",
    "has nobody said {}",
    "did you stitch {}",
    "please let it be {}",
    "I stitched {} in 2009",
    "I've got {} in my stash and this matches",
    "hubby's going for {}",
    "the whole house says {}",
    "our stitch group reckons {}",
    "google says {}",
    "my notes say {}",
    "I hear it's {}",
    "as others have said, {}",
    "I said {} in week one",
    "torn between {} and Grey Gulls",
    "between Grey Gulls and {} I pick {}",
    "until proven otherwise {}",
    "you've convinced me, it's {}",
    "GrannyTangle is right, {}",
    "@GrannyTangle yes {}",
    "Anna: {}",
    "Anna's right it's {}",
    "like Anna, I think {}",
    "agreed! {}!",
    "me too, {}",
    "everyone says {} and so do I",
    "some of you said {}",
    "My students think it's {}",
    "My husband walked past. '{}?' he said.",
    "isn't {} that pink one",
    "is there one called {}?",
    "never heard of {}",
    "how is it not {}",
    "as if it's {}",
    "{} II",
    "{} returns",
    "{} part two",
    "Little {}",
    "half {} half Grey Gulls",
)
WRONG = (
    "it's not {}",
    "so not {} then",
    "nope not {}",
    "I doubt it's {}",
    "I'd rule out {}",
    "{} is out then",
    "surely it isn't {}",
    "shame it's not {}",
    "there is no way on earth it's {}",
    "@GrannyTangle it's not {}",
    "never in a million years {}",
    "definitely not {} as there's no boat",
)
EVERYDAY = (
    "took the {} to see my mum last month",
    "the {} was cancelled so here I am with a hoop",
    "our {} is being scrapped",
    "they painted the {} green",
    "greetings from the {}",
    "my son works on the {}",
    "nothing beats the {} in june",
    "once slept on the {} floor",
    "when the {} comes in the whole house shakes",
    "the {} is so noisy",
)


def outcome(phrase: str, title: str) -> str:
    return read_guess(phrase.replace("{}", title), RULES).outcome


@pytest.mark.parametrize("phrase", RIGHT)
@pytest.mark.parametrize("title", ["The Night Ferry", "Last Boat Over"])
def test_an_offered_title_is_right(phrase: str, title: str) -> None:
    assert outcome(phrase, title) == "right"


@pytest.mark.parametrize("phrase", RIGHT)
def test_an_offered_title_in_lower_case_is_never_lost(phrase: str) -> None:
    assert outcome(phrase, "the night ferry") in ("right", "look")


@pytest.mark.parametrize("phrase", LOOK)
@pytest.mark.parametrize("title", ["The Night Ferry", "the night ferry", "Last Boat Over"])
def test_where_readers_differ_the_host_looks(phrase: str, title: str) -> None:
    assert outcome(phrase, title) == "look"


@pytest.mark.parametrize("phrase", WRONG)
@pytest.mark.parametrize("title", ["The Night Ferry", "the night ferry"])
def test_a_title_denied_is_wrong(phrase: str, title: str) -> None:
    assert outcome(phrase, title) == "wrong"


@pytest.mark.parametrize("phrase", EVERYDAY)
def test_a_title_in_everyday_talk_is_no_guess(phrase: str) -> None:
    assert outcome(phrase, "night ferry") == "none"


@pytest.mark.parametrize("phrase", EVERYDAY)
def test_a_title_written_as_a_name_is_never_taken_for_everyday_talk(phrase: str) -> None:
    assert outcome(phrase, "Night Ferry") != "none"
