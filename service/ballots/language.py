"""What the reader needs to know of a language: its words, grouped by what they tell of a number.

A language is one data file beside the others in `languages/`. Its phrases are written as people
write them, one a line or parted by `|`; accents and case may stand or fall.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, fields

from service.ballots.normal import plain_of
from service.ballots.scanning import scan

Phrase = tuple[str, ...]


def phrases(block: str) -> tuple[Phrase, ...]:
    """The phrases of a block, parted by `|` or line ends, each as its plain tokens."""
    parts = (part.strip() for line in block.splitlines() for part in line.split("|"))
    return tuple(tuple(token.text for token in scan(plain_of(part).text)) for part in parts if part)


def each_of(*blocks: str) -> tuple[Phrase, ...]:
    """Every phrase made of one of each block's, in this order; an empty one may be left out."""
    found: list[Phrase] = [()]
    for block in blocks:
        parts = phrases(block) + (((),) if block.strip().endswith("|") else ())
        found = [one + part for one in found for part in parts]
    return tuple(dict.fromkeys(one for one in found if one))


@dataclass(frozen=True, slots=True)
class Language:
    """One language's words.

    `n` stands for the number that a phrase stands beside. In a phrase, but not first in it, `*`
    stands for any one word and `#` for any other number in digits.

    Fields ending in `_before` hold phrases that end right before n, `_after` those that begin
    right after it. What a field decides is said with it.
    """

    code: str
    #: Words that tell the language: articles, pronouns, everyday verbs, greetings.
    everyday: tuple[Phrase, ...]
    #: Number words, joined without spaces, hyphens or accents, by value; and ordinals.
    numbers: Mapping[str, int]
    ordinals: Mapping[str, int] = field(default_factory=dict)
    #: Things are many with an -s, as in "red balloons".
    plural_s: bool = False
    #: Endings that make digits an ordinal: "42nd".
    ordinal_endings: frozenset[str] = frozenset()
    #: Words that voice typing writes for a small number ("forty to"), with its value.
    homophones: Mapping[str, int] = field(default_factory=dict)
    #: behind these a digit is written for a word: "thx 4 the", "2 watch".
    sounded_after: tuple[Phrase, ...] = ()
    #: behind a 2 that is written for "too": "2 cute"; words written with a digit: "gr8".
    sounded_too: tuple[Phrase, ...] = ()
    digit_words: tuple[Phrase, ...] = ()
    #: before a 2 that is written for "too" and ends what is said: "me 2", "me two!!".
    sounded_before: tuple[Phrase, ...] = ()
    #: "page", and words for a number of one ("no.", "number"), which cue a page.
    page: tuple[Phrase, ...] = ()
    number: tuple[Phrase, ...] = ()
    #: Words that may stand between a cue and n without changing it ("the", "definitely").
    fillers: tuple[Phrase, ...] = ()
    #: n is chosen.
    choice_before: tuple[Phrase, ...] = ()
    choice_after: tuple[Phrase, ...] = ()
    #: the same behind a preposition: "dass du mit 20 anfängst".
    begun_after: tuple[Phrase, ...] = ()
    #: words that speak of voting or choosing and hardly of anything else here.
    voting: tuple[Phrase, ...] = ()
    #: between minutes and an hour: "20 to 8", "10 past 7".
    minutes_to: tuple[Phrase, ...] = ()
    #: sayings that hold a number or a place which is none: "three cheers for", "last but not least".
    sayings: tuple[Phrase, ...] = ()
    #: n is something else: ages, times, sizes, counts.
    other_before: tuple[Phrase, ...] = ()
    other_after: tuple[Phrase, ...] = ()
    #: what a number behind a colon is: "age: 56".
    labels: tuple[Phrase, ...] = ()
    age_labels: tuple[Phrase, ...] = ()
    #: n is a day of a month: "12 May", "the 12th of May".
    months: tuple[Phrase, ...] = ()
    doubtful_months: tuple[Phrase, ...] = ()
    of_month: tuple[Phrase, ...] = ()
    #: n is something else where nothing says that it is chosen.
    weak_before: tuple[Phrase, ...] = ()
    weak_after: tuple[Phrase, ...] = ()
    #: n stands in the open: the words beside it say nothing of it.
    neutral_before: tuple[Phrase, ...] = ()
    neutral_after: tuple[Phrase, ...] = ()
    #: n is a favourite, offered when nothing else is.
    lucky_before: tuple[Phrase, ...] = ()
    #: n is ruled out.
    not_before: tuple[Phrase, ...] = ()
    not_after: tuple[Phrase, ...] = ()
    #: what came before is taken back, what follows stands.
    correction: tuple[Phrase, ...] = ()
    #: the same, but only right before n: elsewhere these are everyday words.
    soft_correction: tuple[Phrase, ...] = ()
    #: n and another page stand side by side, or the second stands in for the first.
    either: tuple[Phrase, ...] = ()
    also: tuple[Phrase, ...] = ()
    second: tuple[Phrase, ...] = ()
    first_choice: tuple[Phrase, ...] = ()
    third_choice: tuple[Phrase, ...] = ()
    second_choice: tuple[Phrase, ...] = ()
    stopgap: tuple[Phrase, ...] = ()
    #: n only if others have done something, or something unknown holds.
    condition: tuple[Phrase, ...] = ()
    depends: tuple[Phrase, ...] = ()
    #: the pages stand in the writer's order.
    ranked: tuple[Phrase, ...] = ()
    #: n is a page that others' votes are counted for.
    tally_before: tuple[Phrase, ...] = ()
    #: talk of numbers that are no pages: questions about them are no questions about a page.
    topics: tuple[Phrase, ...] = ()
    #: n is an age or a birthday, told instead of a page.
    ages: tuple[Phrase, ...] = ()
    #: n is an age that is reached, where no more is said: "27 today!"
    today: tuple[Phrase, ...] = ()
    #: n is wished for and not chosen: "if i had a vote", "i wish i could"; what ends such talk: "but".
    wishing: tuple[Phrase, ...] = ()
    turning: tuple[Phrase, ...] = ()
    #: "it's": before n a choice, or the weather; words that tell the weather: "outside", "degrees".
    it_is: tuple[Phrase, ...] = ()
    weather: tuple[Phrase, ...] = ()
    #: n is somebody else's: the crowd's, an earlier round's; of a family member it may be meant.
    reported_before: tuple[Phrase, ...] = ()
    family_before: tuple[Phrase, ...] = ()
    #: n is named without being chosen: agreed with, supposed ("agree with", "if you did").
    named_before: tuple[Phrase, ...] = ()
    #: the choice is left to somebody whose word then counts: "i let my daughter pick".
    letting_choose: tuple[Phrase, ...] = ()
    #: right behind what somebody else chose, it is the writer's choice as well: "and so do i".
    chosen_too: tuple[Phrase, ...] = ()
    reported_after: tuple[Phrase, ...] = ()
    #: a question about n, unless it suggests n.
    asking: tuple[Phrase, ...] = ()
    suggesting: tuple[Phrase, ...] = ()
    #: number words that are ordinary words elsewhere: one alone does not say which is meant.
    doubtful: tuple[Phrase, ...] = ()
    #: number words that are other languages' words, or names: they tell no language by themselves.
    untelling: tuple[Phrase, ...] = ()
    #: before a number to ten that may be a mark: "that's a 10 from me".
    rated: tuple[Phrase, ...] = ()
    #: n is part of a sum.
    sum_before: tuple[Phrase, ...] = ()
    sum_after: tuple[Phrase, ...] = ()
    #: of those: what makes half of n, twice n, its root, its square.
    halving: tuple[Phrase, ...] = ()
    doubling: tuple[Phrase, ...] = ()
    rooting: tuple[Phrase, ...] = ()
    squaring: tuple[Phrase, ...] = ()
    #: what joins two numbers into a sum ("7 times 8"); in the last the second comes first.
    times: tuple[Phrase, ...] = ()
    plus: tuple[Phrase, ...] = ()
    minus: tuple[Phrase, ...] = ()
    divided_by: tuple[Phrase, ...] = ()
    less_than: tuple[Phrase, ...] = ()
    #: one page is put in another's stead: "swap my 35 for 53"; the words between the two.
    replacing: tuple[Phrase, ...] = ()
    replaced_by: tuple[Phrase, ...] = ()
    #: what the writer comes to after all: "12 is nice, 14 too, so 14".
    concluding: tuple[Phrase, ...] = ()
    #: behind what spoke for one of several pages: "my heart says 12, my head 21. Heart wins".
    winning: tuple[Phrase, ...] = ()
    #: a question about a page that was named before: "13, or is that gone?".
    asked_later: tuple[Phrase, ...] = ()
    #: the writer likes another page as much: "I voted 20 but I like 30 just as much".
    equally: tuple[Phrase, ...] = ()
    #: behind a page named before, it is the one after all: "33 or 44, but 44 is the one I want".
    preferred_after: tuple[Phrase, ...] = ()
    #: the same without a "but": "my heart says 10, my head 18. 10 it is".
    settled_after: tuple[Phrase, ...] = ()
    #: begin a sentence behind the page that they choose: "Sweet sixteen! That's the page I'd do".
    affirming: tuple[Phrase, ...] = ()
    #: a comment with them has two choosers: "twenty - one please me, the other my mum".
    splitting: tuple[Phrase, ...] = ()
    #: sayings that hold a number and may yet be votes: "give me five".
    maybe_sayings: tuple[Phrase, ...] = ()
    #: right behind n it is as many thousands or millions.
    huge: tuple[Phrase, ...] = ()
    #: right behind tens, some page above them: "fifty something"; n is to be read backwards.
    vague_after: tuple[Phrase, ...] = ()
    reversed_after: tuple[Phrase, ...] = ()
    #: right before n the writer has had enough of it; what others do with n then.
    grumbling: tuple[Phrase, ...] = ()
    popular_after: tuple[Phrase, ...] = ()
    #: said of what others choose again and again: "17 again. Shocking".
    mocking: tuple[Phrase, ...] = ()
    scoffing: tuple[Phrase, ...] = ()
    #: between a count and what it should have been: "37 stitches where there should be 36".
    expected: tuple[Phrase, ...] = ()
    #: everybody, who may be told with a number: "everybody and their 3 aunts picks page 7".
    crowds: tuple[Phrase, ...] = ()
    #: what somebody does who was told of with a number: "my husband of 30 years wants page 51".
    others_choose: tuple[Phrase, ...] = ()
    #: numbers that the writer has, told of behind a mark: "my jersey number, it was 23".
    own_numbers: tuple[Phrase, ...] = ()
    #: before n, and those who chose it behind n: "i'm with the 37 people".
    siding: tuple[Phrase, ...] = ()
    sided_with: tuple[Phrase, ...] = ()
    #: what has pages of its own: "magazine"; pages beside it may be of that.
    printed: tuple[Phrase, ...] = ()
    #: right behind n, and a question mark: "39 again??"
    again: tuple[Phrase, ...] = ()
    #: the same where people leave the question mark out: "what's on 32 anyone know".
    asked_plainly: tuple[Phrase, ...] = ()
    #: n is near the page, not the page.
    roughly_before: tuple[Phrase, ...] = ()
    roughly_after: tuple[Phrase, ...] = ()
    between: tuple[Phrase, ...] = ()
    #: before a "between" that bounds no range: "torn between 11 and 22".
    torn: tuple[Phrase, ...] = ()
    through: tuple[Phrase, ...] = ()
    #: before a place that something reaches to: "read until the last page".
    up_to: tuple[Phrase, ...] = ()
    #: n is the number of pages, said back.
    question_before: tuple[Phrase, ...] = ()
    #: right behind the chart's own number of pages they count them: "63 страницы".
    counting_pages: tuple[Phrase, ...] = ()
    #: more is said of n than a choice needs.
    goes_on: tuple[Phrase, ...] = ()
    #: the writer begins to speak of an own choice; words that make a condition; "is".
    own_voice: tuple[Phrase, ...] = ()
    if_words: tuple[Phrase, ...] = ()
    #: right before n, behind a question: n hangs on the answer ("Is 12 gone? If so 15").
    answered: tuple[Phrase, ...] = ()
    being: tuple[Phrase, ...] = ()
    #: somebody speaks: quoted words beside it are theirs.
    saying: tuple[Phrase, ...] = ()
    #: the page is told from n.
    relative_before: tuple[Phrase, ...] = ()
    relative_after: tuple[Phrase, ...] = ()
    #: before those: any page on that side ("anything above 62").
    any_of: tuple[Phrase, ...] = ()
    above: tuple[Phrase, ...] = ()
    below: tuple[Phrase, ...] = ()
    later: tuple[Phrase, ...] = ()
    earlier: tuple[Phrase, ...] = ()
    #: the whole comment: taken back, no vote at all, said by pointing.
    withdrawn: tuple[Phrase, ...] = ()
    abstaining: tuple[Phrase, ...] = ()
    #: right behind it, what cannot be decided is no page: "can't decide whether it's navy".
    wondering: tuple[Phrase, ...] = ()
    pointing: tuple[Phrase, ...] = ()
    agreeing: tuple[Phrase, ...] = ()
    #: a number told before as something else is meant after all: "i'm 47, so that's my vote".
    pointing_back: tuple[Phrase, ...] = ()
    #: a number that is not told, where nothing else is said: "my mum's birthday".
    own_facts: tuple[Phrase, ...] = ()
    #: the same as somebody, where only a name follows: "comme", "wie".
    as_named: tuple[Phrase, ...] = ()
    #: a page told by what is on it: "the one with the owl".
    described: tuple[Phrase, ...] = ()
    kinds: tuple[Phrase, ...] = ()
    #: places
    first: tuple[Phrase, ...] = ()
    last: tuple[Phrase, ...] = ()
    corner: tuple[Phrase, ...] = ()
    top: tuple[Phrase, ...] = ()
    bottom: tuple[Phrase, ...] = ()
    left: tuple[Phrase, ...] = ()
    right: tuple[Phrase, ...] = ()
    middle: tuple[Phrase, ...] = ()
    row: tuple[Phrase, ...] = ()
    column: tuple[Phrase, ...] = ()
    told_from_last: tuple[Phrase, ...] = ()
    #: whose: "my", "our", "her"; a page so told behind it is of the writer's own piece: "of mine".
    owning: tuple[Phrase, ...] = ()
    own_piece: tuple[Phrase, ...] = ()
    #: single words by which the writer says how far she is: "still", "stuck", "i'm".
    whereabouts: tuple[Phrase, ...] = ()
    #: right behind a page that is done: "page 5 done".
    finished: tuple[Phrase, ...] = ()
    #: what may stand between a number and the things it counts: "12 lovely skeins".
    describing: tuple[Phrase, ...] = ()
    #: between two lengths: "24 by 18"; before the reason for a choice: "8 because there are 8 of us".
    sized_by: tuple[Phrase, ...] = ()
    because: tuple[Phrase, ...] = ()
    #: right before n they tell the time, or compare: "at", "than".
    clock_before: tuple[Phrase, ...] = ()
    comparing: tuple[Phrase, ...] = ()
    #: "of": behind a place it tells of what; the second if that is the chart.
    part_of: tuple[Phrase, ...] = ()
    whole_chart: tuple[Phrase, ...] = ()
    #: words that show the full stop of "n." to be an ordinal's: page words, months ("12. Seite").
    dotted: tuple[Phrase, ...] = ()
    #: words that the language writes as one and that are read apart ("links boven": linksboven).
    parted: tuple[Phrase, ...] = ()

    @classmethod
    def phrase_groups(cls) -> tuple[str, ...]:
        """The names of all groups of phrases."""
        return tuple(field.name for field in fields(cls) if field.type == "tuple[Phrase, ...]")
