"""The nine rules of reading-guesses.md, case by case, on games that no corpus holds."""

from __future__ import annotations

import pytest

from service.mystery.answer import Answer, GuessRules, Wants
from service.mystery.guess import read_guess

FERRY = Answer("The Night Ferry", "Maud Ferrisk", ("Last Boat Over",))
LIST = GuessRules(FERRY)


def outcome(text: str, rules: GuessRules = LIST) -> str:
    return read_guess(text, rules).outcome


def game(title: str, *aliases: str, wants: Wants = "title", names: int = 1) -> GuessRules:
    return GuessRules(Answer(title, "Maud Ferrisk", aliases), wants, names)


@pytest.mark.parametrize(
    "text",
    [
        "night-ferry!!",
        "The Night Ferry",
        "NIGHTFERRY",
        "A Night Ferry",
        "night_ferry",
        "#NightFerry",
        "#thenightferry",
        "Night 🚢 Ferry",
        "the night ferryyyyy",
        "T H E   N I G H T   F E R R Y",
        "𝕋𝕙𝕖 ℕ𝕚𝕘𝕙𝕥 𝔽𝕖𝕣𝕣𝕪",
        "The Nîght Férry",
        "The Night\nFerry",
        '"The Night Ferry"',
    ],
)
def test_1_a_name_is_one_name_however_it_is_written(text: str) -> None:
    assert outcome(text) == "right"


@pytest.mark.parametrize(
    ("title", "text", "expected"),
    [
        ("Salt & Rope", "salt and rope", "right"),
        ("Salt and Rope", "Salt & Rope", "right"),
        ("Salt and Rope", "Salt n Rope", "look"),
        ("Salt and Rope", "Salt + Rope", "look"),
        ("Three Grey Herons", "3 Grey Herons", "look"),
        ("Gate 40 in Fog", "Gate Forty in Fog", "look"),
        ("Twenty-One Swans", "21 Swans", "look"),
        ("Die alte Mühle", "die alte muhle", "right"),
        ("Die alte Mühle", "die alte Muehle", "look"),
        ("Die alte Mühle", "alte Mühle", "look"),
        ("L'Heure des Oies", "Heure des Oies", "look"),
        ("Tollkeeper's Rest", "toll keepers rest", "right"),
        ("Łódź o świcie", "lodz o swicie", "right"),
        ("Søvnig Havn", "sovnig havn", "right"),
        ("Ночной паром", "ночной паром!", "right"),
    ],
)
def test_1_other_spellings_are_for_the_host(title: str, text: str, expected: str) -> None:
    assert outcome(text, game(title)) == expected


@pytest.mark.parametrize(
    ("title", "text", "expected"),
    [
        ("Harbour Lanterns", "Harbuor Lanterns", "right"),
        ("Harbour Lanterns", "Harbour Lantrns", "right"),
        ("Harbour Lanterns", "Harbourr Lanterns", "right"),
        ("Harbour Lanterns", "Harbour Lantefns", "right"),
        ("Harbour Lanterns", "Harbuor Lantrns", "look"),  # two slips
        ("Harbour Lanterns", "Harbour Lantern", "look"),  # another form
        ("The Old Harbour", "The Odl Harbour", "look"),  # a short word
        ("Lanterns", "Lantrens", "look"),  # one word
        ("Lamplighters", "Lamplihgters", "look"),  # one word, however long
        ("Old Mole", "Old Moole", "look"),  # fewer than ten letters
        ("Winter Quilts", "Winter Guilts", "look"),  # another word
        ("The Last Bridge", "The Last Bride", "look"),  # another word
        ("The Angle of Light", "The Angel of Light", "look"),  # another word by a swap
        ("Marion in the Orchard", "Marian in the Orchard", "look"),  # another name
        ("Doorstep Visitors", "Doorstop Visitors", "look"),  # another compound
        ("Gate 40 in Winter", "Gate 41 in Winter", "look"),  # another number
    ],
)
def test_2_one_slip_in_a_long_word_is_excused(title: str, text: str, expected: str) -> None:
    assert outcome(text, game(title)) == expected


@pytest.mark.parametrize(
    ("text", "title_only", "both", "either"),
    [
        ("The Night Ferry", "right", "wrong", "right"),
        ("Maud Ferrisk", "wrong", "wrong", "right"),
        ("The Night Ferry by Maud Ferrisk", "right", "right", "right"),
        ("Maud Ferrisk, The Night Ferry", "right", "right", "right"),
        ("night ferry maud ferrisk", "right", "right", "right"),
        ("Maud Ferrisk's Night Ferry", "right", "right", "right"),
        ("The Night Ferry by Otto Brannick", "right", "look", "look"),
        ("The Night Ferry by Ferrisk", "right", "look", "look"),
        ("The Night Ferry by Maude Ferrisk", "right", "look", "look"),
        ("The Night Ferry by that lady with the geese", "look", "look", "look"),
        ("Ferrisk?", "wrong", "wrong", "look"),
        ("Grey Gulls by Maud Ferrisk", "wrong", "wrong", "look"),
        ("Grey Gulls by Otto Brannick", "wrong", "wrong", "wrong"),
        ("not Maud Ferrisk", "wrong", "wrong", "wrong"),
        ("Night Ferries by Maud Ferrisk", "look", "look", "look"),
    ],
)
def test_3_title_and_designer_weigh_as_the_game_asks(
    text: str, title_only: str, both: str, either: str
) -> None:
    read = {
        wants: outcome(text, GuessRules(FERRY, wants))
        for wants in ("title", "title and designer", "title or designer")
    }
    harmless = {"wrong", "none"}  # telling these two apart is another test's
    for wants, expected in zip(read, (title_only, both, either), strict=True):
        same = read[wants] == expected or {read[wants], expected} == harmless
        assert same, f"{wants}: {read[wants]}"


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Night Ferry over the Fjord", "look"),
        ("ferry?", "wrong"),
        ("the ferry", "wrong"),
        ("Vest?", "look"),
        ("something with vest fjord", "look"),
        ("The Evening Ferry over Vest Fjord", "look"),
        ("The Night Ferry over Vest Fjord Captain", "look"),
        ("Return of the Night Ferry over Vest Fjord", "look"),
        ("The Night Ferry over Vest Fjord and Other Tales", "look"),
        ("The Night Ferry over Vest Fjord (Winter)", "look"),
        ("The Herring Boat", "wrong"),
        ("NFOVF", "look"),
    ],
)
def test_4_a_part_of_the_title_is_looked_at(text: str, expected: str) -> None:
    assert outcome(text, game("The Night Ferry over Vest Fjord")) == expected


@pytest.mark.parametrize(
    "text",
    [
        "is it The Night Ferry?",
        "I think The Night Ferry",
        "my guess: the night ferry",
        "could this be the night ferry",
        "Isn't it The Night Ferry?",
        "The Night Ferry is my guess",
        "I'd put my good scissors on The Night Ferry",
        "so pretty!! I'm going with the night ferry :)",
        "page 4 please, and I reckon it's The Night Ferry",
        "Ich glaube, es ist The Night Ferry",
        "Je dirais The Night Ferry, bonne soirée",
        "Creo que es The Night Ferry",
        "Secondo me è The Night Ferry",
        "Acho que é The Night Ferry",
        "Myślę, że to The Night Ferry",
        "Jag gissar på The Night Ferry",
        "Szerintem The Night Ferry",
        "The Night Ferry だと思います",
        "The Night Ferry, which my gran had on her wall",
        "My gran had this on her wall. It's The Night Ferry.",
    ],
)
def test_5_guess_words_change_nothing(text: str) -> None:
    assert outcome(text) == "right"


@pytest.mark.parametrize(
    "text",
    [
        "not the Night Ferry, is it the Lighthouse?",
        "It can't be The Night Ferry",
        "no way it's The Night Ferry",
        "I don't think it's the night ferry",
        "anything but The Night Ferry",
        "neither the Lighthouse nor The Night Ferry",
        "Das ist nicht The Night Ferry",
        "Ce n'est pas The Night Ferry",
        "No es The Night Ferry",
    ],
)
def test_6_a_denied_name_is_wrong(text: str) -> None:
    assert outcome(text) == "wrong"


@pytest.mark.parametrize(
    "text",
    [
        "Someone said The Night Ferry",
        "I agree with Purlwise, The Night Ferry",
        "My mum says The Night Ferry",
        "My 6yo: The Night Ferry",
        "Asked the husband. The Night Ferry",
        "The Night Ferry, according to my sister",
        "Meine Schwester meint, The Night Ferry",
        "I'm with GrannyTangle",
        "GrannyTangle has it",
        "what GrannyTangle said",
        "I'd have said The Night Ferry until the sheep",
        "I thought it was The Night Ferry",
        "The Night Ferry? Surely not",
        "The Night Ferry... no wait",
        "It isn't The Night Ferry, is it?",
        "The Night Ferry isn't it",
        "If it's not The Night Ferry I'll eat my hat",
        "It can't not be The Night Ferry",
        "I hope it's The Night Ferry",
        "~~The Night Ferry~~",
        "The Night Ferry or something like that",
    ],
)
def test_6_hedged_or_told_of_others_is_for_the_host(text: str) -> None:
    assert outcome(text) == "look"


@pytest.mark.parametrize(
    ("text", "names", "expected"),
    [
        ("Grey Gulls? Or The Night Ferry?", 1, "look"),
        ("Grey Gulls? Or The Night Ferry?", 2, "right"),
        ("The Night Ferry or Grey Gulls", 1, "right"),
        ("Grey Gulls, Wet Ropes, The Night Ferry", 2, "look"),
        ("Grey Gulls, Wet Ropes, The Night Ferry", 3, "right"),
        ("lighthouse, no, the night ferry", 1, "look"),
        ("The Lighthouse? Too few stairs. The Night Ferry.", 1, "look"),
        ("Not the Lighthouse. The Night Ferry!", 1, "right"),
        ("Night ferry, night ferry, night ferry!!!", 1, "right"),
        ("Last week I said it was a bus. Now? The Night Ferry", 1, "right"),
    ],
)
def test_7_names_are_read_in_order(text: str, names: int, expected: str) -> None:
    assert outcome(text, GuessRules(FERRY, names_per_comment=names)) == expected


@pytest.mark.parametrize(
    "text",
    [
        "I take the night ferry to work",
        "we are on the night ferry right now",
        "my night ferry was late",
        "the last boat over leaves at nine here",
        "we always miss the last boat over",
    ],
)
def test_8_everyday_words_are_no_name(text: str) -> None:
    assert outcome(text) == "none"


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("I like The Night Ferry", "look"),
        ("our pub is called The Night Ferry", "look"),
        ("my next project will be The Night Ferry", "look"),
        ("What's The Night Ferry?", "look"),
        ("Is there one called The Night Ferry?", "look"),
        ("Have you stitched The Night Ferry", "look"),
        ("a night ferry?", "look"),
    ],
)
def test_8_where_it_is_not_plain_the_host_looks(text: str, expected: str) -> None:
    assert outcome(text) == expected


@pytest.mark.parametrize(
    ("title", "text", "expected"),
    [
        ("Washing Day Again", "washing day again", "right"),
        ("Washing Day Again", "ugh washing day again", "look"),
        ("Washing Day Again", "it's washing day again", "look"),
        ("Washing Day Again", "it's Washing Day Again!!", "right"),
        ("Nearly Home", "nearly home now, will watch later tonight", "none"),
        ("Nearly Home", "nearly home!", "look"),
        ("Lantern", "the lantern is so pretty", "none"),
        ("Lantern", "Lantern", "right"),
        ("Lantern", "is it lantern?", "right"),
        ("Crumbs", "Crumbs!", "look"),
    ],
)
def test_8_titles_that_people_say_all_day(title: str, text: str, expected: str) -> None:
    assert outcome(text, game(title)) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("> The Night Ferry", "none"),
        ("> The Night Ferry\nwho said that?", "none"),
        ("> The Night Ferry\nno, there is no ferry in it", "none"),
        ("> The Night Ferry\nyes, this", "look"),
        ("> The Night Ferry\n👍", "look"),
        ("> Grey Gulls\nNope! The Night Ferry", "right"),
        ("> Grey Gulls\nyes, this", "none"),
        ("&gt; The Night Ferry\nhm", "none"),
    ],
)
def test_9_a_quoted_line_is_anothers(text: str, expected: str) -> None:
    assert outcome(text) == expected


@pytest.mark.parametrize(
    "text",
    ["", "   ", "🎉", "page 12 please", "I love this so much", "how many colours is that", "12"],
)
def test_chat_and_votes_offer_no_name(text: str) -> None:
    assert outcome(text) == "none"


@pytest.mark.parametrize(
    "text", ["Lighthouse", "The Lighthouse?", "maybe Grey Gulls", "is it a cow"]
)
def test_another_name_is_wrong(text: str) -> None:
    assert outcome(text) == "wrong"


def test_a_designer_with_initials_and_a_title_of_a_script_without_spaces() -> None:
    rules = GuessRules(Answer("月夜の渡し舟", "M. Ferrisk"), "title or designer")
    assert outcome("月夜の渡し舟ですか", rules) == "right"
    assert outcome("これは月夜の渡し舟ではない", rules) == "wrong"
    assert outcome("月夜", rules) == "look"
    assert outcome("m ferrisk", rules) == "right"
