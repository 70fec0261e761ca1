"""Turns of phrase with which a name is offered, and those of everyday talk (rules 5 and 8).

Words are written as they are compared. Cues end the words before a name, tails fill the words
after it in its clause.
"""

from __future__ import annotations

import re

from service.mystery.turns import one_of

_IT = (
    r"(?:it|this|that|these|he|she|they|the (?:piece|title|name|answer|pattern|design|chart|picture"
    r"|mystery(?: piece)?|whole thing))"
)
_ITS = r"(?:its|it is|thats|that is|this is|this ones?|it was|this one is|it)"
_SURELY = (
    r"(?: (?:definitely|probably|surely|really|maybe|perhaps|possibly|just|totally|obviously|clearly|actually"
    r"|most likely|likely|almost|certainly|still|simply|a|called|named|titled|by|one of|from|only|more like"
    r"|more of|got to be|has to be|must be|going to be|gonna be))*"
)
_END = r"(?: the| a| an)?$"

_ADVERBS = r"(?:definitely|probably|surely|really|maybe|perhaps|possibly|just|totally|obviously|clearly|actually|most likely|likely|almost certainly|certainly|still|simply|honestly|also|now|only|quite|strongly|rather)"
_WRITER = rf"(?:^|\b(?:i|id|ill|im|ive|we|wed|weve|were|me|gonna|going to|want to|like to|have to|had to|must|can|to|lets|and|so|would|do|am|hmm|yes|ok|oh|now|then|percent|\\d+) )(?:{_ADVERBS} )*"
_THINKS = one_of(
    r"""
    go|think|thinking|reckon|reckoning|guess|guessing|believe|believing|bet|betting|say|saying|wager|suspect|suggest
    offer|submit|call|calling|vote|declare|propose|throwing in|throw in|putting down|put me down for|put down
    putting|writing down|lock in|locking in|convinced|positive|certain|sure|dare say|daresay|venture|hazard|deduce|presume|conclude
    (?:going|go|went|plump|plumping|opt|opting|vote|voting) (?:with|for)|settl(?:e|ing) (?:on|for)|lean(?:ing)? towards?
    (?:bet|betting|put|putting|stake|staking|wager)(?: \w+){1,5} on(?: it being)?|stick(?:ing)? (?:with|to)|team
    recogni[sz]e (?:it|this)(?: as)?|knew(?: that)?|know(?: that)?|spy|see(?=(?: that)? (?:its|it is|this is))
    """
)
_GUESS = (
    r"(?:^|\b(?:my|the|a|final|wild|next|first|second|third|1st|2nd|3rd|best|only|todays|tonights|this|one|another|heres|here is|and|so|mystery|pieces|charts|patterns|designs) )"
    + one_of(
        r"""
        guess|guesses|answer|bet|vote|money|moneys|tip|hunch|theory|entry|shot|stab|thought|thoughts|attempt|try|pick
        choice|suggestion|verdict|title|name|solution|conclusion|name of (?:it|this|this one|this piece|the piece)
        title of (?:it|this|this one|this piece|the piece)|answer to this(?: one)?|guess at this(?: one)?
        """
    )
)

#: Enough whatever stands before it: the writer guesses.
STRONG_CUE = re.compile(
    rf"(?:{_WRITER}{_THINKS}(?: this time)?(?: that)?(?: {_ITS}| {_IT} (?:to be|is|must be|has to be))?"
    rf"|{_GUESS}(?: for (?:me|this|this one|today))?(?: would| will| could| might| has| have| to| must| still)*(?: is| be| are| remains| stays| goes| go| on| for| to| at)*(?: that)?(?: {_ITS})?"
    rf"|(?:^|\b{_IT} )(?:{_ADVERBS} )*(?:could|can|might|may|would|will|must|should|has|have|got|gotta|just has)(?: {_IT})?(?: {_ADVERBS})*(?: not)?(?: have| got)?(?: to)? (?:be|been)"
    rf"|\b(?:could|can|might|may|would|must|should|will|couldnt|cant|wouldnt|mightnt) {_IT}(?: {_ADVERBS})*(?: not)?(?: have)? (?:be|been)"
    rf"|\b(?:is|was|isnt|wasnt) {_IT}(?: not)?|\b(?:what|how) about"
    rf"|^(?:(?:hmm|oh|ooh|ok|so|well|and|yes|or|no|then|um|er|ah|right|actually|wait|just) )*{_ADVERBS}(?: {_ITS})?"
    rf"|\b(?:maybe|perhaps|possibly|probably|definitely|surely|certainly|obviously|clearly) (?:its|it is|this is|thats)){_SURELY}{_END}"
)
#: Enough where nothing but guess words stands before it.
WEAK_CUE = re.compile(
    rf"\b(?:{_ITS}|is|was|(?:looks|sounds|feels|seems|screams|shouts)(?: to me)?(?: like)?){_SURELY}{_END}"
)
#: Enough for a designer, whose name is no everyday word: "that is so ...", "typical ...".
DESIGNER_CUE = re.compile(
    rf"\b(?:so|such|typical|classic|pure|proper|very|total|obvious|vintage|screams|shouts|by|from|of|style){_END}"
)
DEFINITE_CUE = re.compile(
    rf"\b(?:its|it is|this is|thats|that is|it was|this must be){_SURELY}(?: the)?$"
)
#: Cues with which an everyday remark begins as well ("it's washing day again").
REMARK_CUE = re.compile(rf"^(?:\w+ )?(?:{_ITS}|is it|is this|is that|was it){_SURELY}(?: the| a)?$")

_TAIL = one_of(
    r"""
    (?:i|we|id|ill|im) (?:do |would |really |still )?(?:think|thinking|guess|guessing|guessed|reckon|presume|wager|deduce|say|bet|believe|suppose|know|hope|am sure|feel)(?: so)?
    (?:is|was|would be|will be|has to be|must be|gets|as|s|thats|its) (?:still )?(?:mine|my(?: (?:first|final|second|only|best|own))* (?:guess|answer|bet|vote|money|thought|pick|choice|shot|offer|entry|hunch|try))
    my (?:first |final |second |only |best |one )*(?:guess|answer|bet|vote|pick|choice|shot|offer|entry|hunch|try)
    for (?:me|sure|certain|definite|the win|real|my guess|what its worth|now)|maybe|perhaps|possibly|probably|surely|definitely|certainly|methinks|mayhaps|is the one
    absolutely|totally|obviously|clearly|hopefully|please|pls|plz|thanks(?: so much| a lot)?|thank you(?: so much| very much)?|ta|cheers
    lol|haha|ha|hehe|x+|xo+|yes|no|right|eh|huh|innit|hey|yeah|isnt it|is it|is this|or not|hm+|really|indeed|of course|then|though|tho|tbh|imo|imho
    (?:a |one )?(?:100|hundred) ?(?:percent|per cent)?|final answer|final|hands down|without (?:a )?(?:shadow of (?:a )?)?doubt|no doubt|btw|at a (?:guess|push|pinch|stab)|for the prize|with \d+ (?:percent )?(?:certainty|confidence)|anyone|anybody|by any chance|perchance|by chance
    it is|it must be|it has to be|has to be|must be|have to be|could it be|it could be|all the way|all day long|any day|every time
    to me|to my mind|in my (?:humble )?(?:opinion|book)|if (?:you ask me|im not mistaken|i had to guess|memory serves)
    is what (?:im|i am|ill be|id be|we are|were) (?:putting(?: down)?|writing(?: down)?|saying|guessing|betting(?: on)?|going (?:with|for)|sticking with|settling (?:on|for)|voting(?: for)?|calling it)
    is (?:what i (?:think|say|see|reckon)|(?:the|its) (?:title|name|answer))(?: of (?:it|this)(?: one)?| (?:youre|you are|were) after| you want)?|called|wild guess|just a guess|as ever|sorry
    i am (?:sure|certain|positive)(?: of it)?|im (?:sure|certain|positive)(?: of it)?|going by the \w+|judging by the \w+
    oder|nicht wahr|denke ich|glaube ich|wurde ich sagen|ist|ist es|sei|ware|sein|heisst es|heissen|je crois|je pense|non|verdad|creo|vero|credo|certo|penso
    toch|he|hoor|denk ik|czy|prawda|ne|acho|tror jag|tror jeg|nog|bitte|danke|merci|gracias|grazie|obrigada|obrigado
    """
)
#: Words that may follow an offered name in the same breath and change nothing.
TAIL = re.compile(rf"^(?:{_TAIL}(?: |$))*$")
#: Such words, then a word or two more ("please Bob").
TAIL_AND_VOCATIVE = re.compile(
    rf"^(?:{_TAIL} )*(?:please|pls|thanks|thank you|cheers|ta|final answer|haha|lol) \w+(?: \w+)?$"
)
#: Such words, then the beginning of a new statement.
TAIL_AND_MORE = re.compile(
    rf"^(?:{_TAIL} )+(?:though|although|but|because|cos|coz|cuz|since|as|so|and|even if|from the|judging|going by)\b"
)

EVERYDAY_BEFORE = re.compile(
    r"\b(?:on|from|at|to|by|off|aboard|for|during|after|before|in|of|with|about|near|past|into|through|along"
    r"|till|until|every|another)(?: the| a| an| my| our| your| that| this)?$"
)
EVERYDAY_AFTER = re.compile(
    r"\b(?:here|today|tomorrow|tonight|yesterday|home|work|every|always|my|our|us|weeks?|months?|mornings?"
    r"|evenings?|oclock|again|all (?:night|day|week|morning|evening|summer|winter|year|weekend)|last night|at night|years?|twice|times|lately|nowadays|these days|round here|down the road|next door|was|were|had|goes"
    r"|leaves|comes|runs|used)\b"
)
#: Days and weeks, and how often: the telling of a habit.
DAYS = re.compile(
    r"\b(?:here|today|tomorrow|tonight|yesterday|every|always|weeks?|months?|years?|mornings?|evenings?|twice|times|oclock|lately|nowadays)\b"
)
#: Opens talk of where the writer knows the piece from.
KNOWN_FROM = re.compile(
    r"^(?:which|from|out of|in my|as|that i|thats|i)\b.*\b(?:kit|kits|chart|pattern|booklet|magazine|book|stash|series|drawer|stitched|made|did|mine|mums?|grans?|nans?|it|this)\b"
)
#: Opens the words behind a designer whose work the piece is said to be.
DESIGNED_IT = re.compile(
    r"^(?:designed|drew|charted|created|made) (?:it|this|this one|this piece|the piece|that)(?:$| (?:but|and|though|although|only|so|because|however)\b)"
)
DESIGNER_AFTER = re.compile(
    r"^(?:by|from|of|designed|designer|made|drawn|charted|created|von|de|par|di|av|af|door|od|przez)$"
)


def is_tail(after: str) -> bool:
    """Whether the words behind a name are only a tail, or one and the start of a statement."""
    return any(tail.match(after) for tail in (TAIL, TAIL_AND_MORE, TAIL_AND_VOCATIVE))
