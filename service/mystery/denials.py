"""Turns of phrase that deny a name, doubt it or take it back (rule 6).

Words are written as they are compared: "isnt", "nao". BEFORE patterns are searched in the words
before a name, AFTER patterns open the words after it in its clause, NEXT patterns the clause that
follows.
"""

from __future__ import annotations

import re

from service.mystery.turns import anywhere, opening, whole

#: Negative words that deny nothing: taken out before denials are looked for.
DENIES_NOTHING = anywhere(
    r"""
    not (?:quite |entirely |totally |completely |really |100 |percent |so |very |too |at all )*(?:sure|certain|positive)(?= (?:but|though|yet|maybe|perhaps)|$)
    (?:cant|cannot|couldnt|dont|didnt|not) (?:\w+ ){0,2}(?:anything|anyone|nothing)(?: else| other)? (?:but|than|except)
    not (?:a|the foggiest) (?:clue|idea|scooby)|not a clue
    no (?:idea|clue|contest|mistak\w+|hesitation|need|more guess\w*|peeking|cheating|hard feelings|two ways|less|guessing|takers|doubt|question|lie|spoilers?|pressure|offence|joke|kidding|one(?: else)?|wonder|problem|rush|hurry)
    (?:without|beyond) (?:a |any )?(?:shadow of a )?doubt|not (?:gonna|going to) lie|not to (?:brag|boast|show off|worry)
    why not|warum nicht|pourquoi pas|por que no|perche no|waarom niet|hvorfor ikke|varfor inte|if not|not only|not bad|not just|not least|not yet|not long|not much|last but not least
    (?:dont|do not|didnt|couldnt|cant|cannot) (?:know|remember|recall|wait|resist|help|stop|unsee|see|think of (?:a|the|any)\w*|care|mind|get over|quite|sleep|decide|want|spoil)
    (?:couldnt|cant|cannot) tell|never (?:mind|guess(?:ed)?|commented?|get|got|win|won|been|done|played|do)
    (?:cant|cannot|couldnt|could not|can not) (?:possibly )?be (?:anything|any) (?:but|else|other)(?: than)?|nothing (?:but|else)|no other
    (?:cant|cannot) (?:be|go) wrong|(?:hard|difficult|impossible) not to|(?:cant|cannot|can) not be
    (?:is|could|might|may|can|was|would) (?:it|this|that) not(?: be)?
    im not usually|i never usually|not usually|not normally
    (?:isnt|wasnt|couldnt|cant|wouldnt|mightnt|arent|aint) (?:it|this|that|these)(?: be)?
    """
)

#: The writer turns a question round: "isn't it ...".
ASKS_IN_THE_NEGATIVE = re.compile(
    r"^(?:\w+ ){0,2}?(?:isnt|wasnt|couldnt|cant|wouldnt|mightnt|arent|aint|is|could|might|was|would|can)"
    r" (?:it|this|that|these)(?: not)?(?: be)?(?: called| the| a| by)*$"
)

DENIED_BEFORE = anywhere(
    r"""
    isnt|aint|wasnt|arent|not|never(?: in a million years| ever)?|cant be|cannot be|cant possibly be|cannot|can not|cant have been
    couldnt be|couldnt|cant|wont|wouldnt|hardly|nor|neither|unlikely
    (?:no|zero|not a|little|slim|fat) chance(?: that)?|no way(?: (?:on (?:gods |this )?(?:green )?earth|in (?:hell|the world)|ever|that|at all|in a million years))*
    doubt|doubtful|rule out|ruled out|ruling out|rules out|crossed off|crossing off|(?:anything|anyone|anybody|everything|everyone|all) but|rather than
    instead of|nowhere near|far from|dont|doesnt|didnt
    nicht|kein|keine|weder|non|pas|nao|nunca|nie|inte|inga|ikke|ikkje|hverken|niet|geen|nem|nije|neni|nejde
    nu e|nu este|nu cred|ei ole|ei se|en usko|no es|no creo|no puede|no sera|no parece
    не|ни|це не|δεν
    """
)
DENIED_AFTER = re.compile(
    opening(
        r"""
        isnt|is not|is (?:clearly |definitely |obviously |surely )?(?:not|out|wrong|off|ruled|impossible)
        wasnt|was not|cant|cannot|can not|couldnt|could not|doesnt|does not|didnt|wouldnt|would not|wont
        would be wrong|(?:can|could|should) be (?:crossed|ruled|struck|discounted)|its not|it isnt|it is not|it cant|nope|not|no way
        nein|nicht|ist es nicht|ist das nicht|kann es nicht|no es|no puede|non e|nao e|no lo
        """
    ).pattern
    + r"|\beither$"
)
#: A next clause that begins so may refuse the name: the host looks.
DENIED_NEXT = re.compile(
    r"^(?:but |well |and |hmm |er |oh |actually )*"
    + opening(
        r"""
        no|nope|nah|not|never|cant be|cannot be|couldnt be|can not be|cant have
        it cant|it cannot|it couldnt|it isnt|it is not|its not|that cant|that isnt|thats not|this isnt|isnt
        wrong|impossible|ruled out|doesnt (?:fit|match|work)|does not fit
        or (?:is|isnt|was|could|might) (?:it|this|that)|or not|or am i\b(?! (?:right|wrong|mad|way|dreaming|being|just|imagining|off|completely|totally|too))|surely not|as if|my foot|in your dreams|dream on|doubtful|(?:i )?doubt(?: it| that)?(?! it| that| but)|unlikely|hardly|i think not|too (?:early|soon|obvious|easy|simple|modern|dark|bright|small|big)
    or maybe not|maybe not|perhaps not|probably not|then again|is that really|pull the other|i dont think so|no chance|not a chance
    right up|until|till|except|unless|if only|before i|before you|then i
    scratch|strike|wait|jk|just kidding|on second|changed my|never ?mind|nvm|actually|edit|sorry|or not
        is (?:that|this|it) (?:the|its|a|really the) (?:name|title)|take that back|i take|forget (?:it|that)|nein|non
        """
    ).pattern.removeprefix("^")
)
TAG = whole(
    r"""
    (?:is|isnt|can|cant|could|couldnt|was|wasnt|would|wouldnt|does|doesnt|has|hasnt|surely|must|mustnt)(?: (?:it|not|that|this|he|she|they|you|there))?
    right|no|yes|eh|surely|or not|huh|innit|am i right|n est ce pas|nest ce pas|oder|nicht|nicht wahr|verdad|vero|ne|non|no
    """
)

#: Said once, wished, or said under a condition: readers may differ.
TAKEN_BACK_BEFORE = anywhere(
    r"""
    (?:would|d|id|wouldve|could|couldve) have (?:said|guessed|sworn|bet)|wouldve (?:said|guessed)
    (?:was|were) (?:\w+ )?(?:going|about|gonna|tempted|ready|leaning|hoping|thinking|sure|certain|convinced|positive)
    nearly|almost(?! certain)|thought|used to|at first|originally|initially|had (?:it|this|that) down|guess was
    until|wish|wishing|hope|hopes|hoped|hoping|love (?:it|this|that) to be|like (?:it|this|that) to be|want (?:it|this|that) to be
    if|unless|whether|pretend|imagine|part of me|half of me|torn|toss up
    remind\w*|similar|same|compared|prefer|better|worse|instead|said|earlier|yesterday|last (?:week|time|month|year)
    told|why|how(?! about)|ages ago|sick of|tired of|anyone|anybody|nobody|no one|has any|did any
    refus\w*|reluctant|struggl\w*|hard to|surprised|shocked|scept\w*|skept\w*|dubious|unsure|not convinced|cant believe|dont believe
    wenn|falls|dachte|hatte|sil
    """
)
CONDITION_THAT_IS_NONE = anywhere(
    r"""
    if i (?:had|have|was|were) (?:to|forced to)(?: \w+)?(?: a)?(?: guess)?|if (?:i may|i might|im allowed|you ask me|anything|nothing else|forced|nobody else|no one else)
    if im (?:not )?(?:right|wrong|mistaken)|if im reading (?:it|this) right|unless im (?:wrong|mistaken|mad|very much mistaken)
    if memory serves(?: me)?(?: right| well)?|if i remember (?:right(?:ly)?|correctly|well)
    (?:hope|hoping) im (?:right|not wrong|not too late)|(?:my|first) (?:\w+ )?thoughts? (?:is|are|goes)|thought of
    """
)
HEDGED_AFTER = opening(
    r"""
    until|till|right up|if|unless|was my (?:first|second|old|original|last)|except|only|maybe not|perhaps not
    or (?:something|similar|some|one of|thereabouts|whatever|along|the like|near)|ish|like
    but (?!(?:i|im|ill|ive)\b|what do\b|who\b|dont\b|not sure\b|could\b|probably\b|maybe\b|thats\b|its just\b|only\b|hey\b|honestly\b|really\b|thank\b|page\b|love\b|just\b)\w+
    """
)
#: Doubts that are no denials.
DOUBTS = anywhere("(?:may|might|perhaps|maybe|possibly|probably|could) not|mightnt")
#: A wish beside a denial: no denial, and no offer.
WISHES = anywhere(
    "please tell me|tell me|hope|hoping|wish|wishing|pray|praying|please (?:dont|let|not|no)|oh no|if|unless|dont (?:say|tell)"
)
#: A short next clause that holds one of these, whatever else.
REFUSES = re.compile(
    r"^(?:it|its|that|thats|this|i|or|surely|probably|maybe|but|definitely|clearly|well|hmm)\b"
    r".*\b(?:not|never|nope|wrong|isnt|cant|cannot|doesnt|dont|wasnt|unlikely|impossible|nowhere)\b"
)
UNSURE_NAME_NEXT = opening(
    r"""
    or (?:something|somesuch|some such|similar|thereabouts|whatever|words to that|along those|one of those|not)
    """
)


def denies(text: str) -> bool:
    """Whether a clause refuses what it names."""
    return bool(DENIED_BEFORE.search(DENIES_NOTHING.sub("", text)))
