"""Turns of phrase that give a name to somebody else, or agree with somebody (rules 6 and 9).

Words are written as they are compared. BEFORE, AFTER and NEXT as in denials.py.
"""

from __future__ import annotations

import re

from service.mystery.denials import denies
from service.mystery.turns import anywhere, one_of

_CLAIMS = one_of(
    r"""
    said|says|sez|reckons|thinks|believes|guesses|guessed|suggests|suggested|swears|insists|insisted|claims|claimed
    wrote|writes|posted|commented|mentioned|bets|told|tells|wonders|convinced|predicts|shouted|shouts|whispered|yelled
    texted|asked|asks|wants|votes|goes for|went for
    """
)
_CLAIMS_ABROAD = one_of(
    r"""
    meint|meinte|glaubt|sagt|sagte|dit(?! is)|dice|dicen|dijo|cree|piensa|crede|zegt|zei|denkt|sager|siger|sier
    mowi|uwaza|mysli|diz|disse|dizem|acha|pense
    """
)
_POSSESSIVE = (
    r"(?!todays|tonights|lets|its|thats|whats|heres|this|was|is|as|weeks|years)\w+s"
    r" (?:guess|idea|theory|answer|vote|money|opinion|suggestion|hunch|bet|tip|shout|pick|choice|view)"
)

KIN = (
    r"(?:mum|mom|mam|mummy|mother|dad|father|parents|husband|hubby|wife|partner|other half|oh|dh|sister|brother|son|daughter"
    r"|kids?|child|children|niece|nephew|gran|nan|nana|granny|grandma|grandmother|grandad|granddad|grandfather|aunt|auntie"
    r"|uncle|cousin|friend|friends|neighbour|neighbor|colleague|boss|cat|dog|toddler|\d+yo|teenager|boyfriend|girlfriend|flatmate"
    r"|housemate|mil|sil|family|year old|yo|lad|bloke|fella|group|group chat|teacher|lodger|inlaws)"
)
#: A clause before a name that hands it to somebody of the writer's.
HANDED_ON = re.compile(
    rf"^(?:(?:from|for|and|so|now|says|via|courtesy of|on behalf of) )*(?:(?:my|our|the|her|his) )?(?:\w+ ){{0,2}}{KIN}(?: here| now)?$"
    rf"|\b(?:asked|asking|ask|typing for|posting for|writing for|behalf of|courtesy of|this is from|this ones from) (?:(?:my|our|the) )?(?:\w+ ){{0,2}}{KIN}\b"
    rf"|\b{KIN}s? (?:turn|go|guess|theory|idea|shout|vote|answer|suggestion)\b"
    rf"|\b{KIN} (?:has |had |have |is having |just )*(?:a go|a guess|a theory|a look|an idea|thoughts|shouted|yelled|chimed in|spotted it|got it|guessed)\b"
    r"|\b(?:me too|same here|likewise|snap|plus 1|agreed|i agree|totally agree|completely agree|so agree|me three|another (?:vote|one|guess|voice))$"
)

#: Somebody else names it, or the writer agrees with somebody.
OTHERS = anywhere(
    rf"""
    {_CLAIMS}|{_CLAIMS_ABROAD}|{_POSSESSIVE}
    saying|commenting|guessing that|according|heard|i hear|rumou?r|apparently
    agree|agrees|agreed|agreeing|ditto|seconding|second that|i second|majority|copying|copied|copy|stealing|nicked|pinched
    joining|same as|bandwagon|with you|im with|i am with|like \w+ says?|on behalf
    (?!(?:i|we|and|then|but|so|honestly|probably|definitely|maybe)\b)\w+ would (?:say|guess|reckon|bet|go (?:for|with))
    (?:your|her|his|their) (?:guess|idea|answer|theory|suggestion)
    (?!(?:i|im|we|were|still|and|so|now|me|also|definitely|am|just|be|then|but|ok|well|probably|maybe)\b)\w+ (?:is |are )?going (?:for|with)
    (?!(?:lets|its|this|was|as|thats|yes|his|is|does|always|perhaps|thanks|guess|obvious|us)\b)(?:they|people|\w+s) (?:all |both )?(?:think|reckon|say|believe|guess|suggest)
    (?!(?:thats|its|whats|alls|lets|theres|heres)\b)\w+s (?:so |absolutely |totally )?right
    segun|selon|laut|volgens (?!mij)|another (?:vote|one|guess|voice) for|count me in|yes to|me too
    """
)
#: Others are spoken of, which everyday talk does as well.
OTHERS_PERHAPS = anywhere(
    r"""
    everyones?|everybodys?|someones?|somebodys?|others|people|several of|few of|most of|lots of|half of|you all
    chat|consensus|majority|crowd|also|too|as well
    """
)
#: The same, of the writer's own saying: taken out before others are looked for.
OWN_CLAIM = anywhere(
    r"""
    i(?:m| am| was|ve| have)? (?:\w+ )?(?:convinced|saying|suggested|mentioned)|im saying|i (?:asked|guessed|swear)|let me (?:tell|say)
    (?:my|for|in my) (?:own )?(?:guess|opinion|money|vote|answer|theory|hunch|bet|tip|idea)
    (?:hi|hello|hey|morning|evening|afternoon) (?:everyone|everybody|people|all)|everyone hi
    (?:sorry|apologies|not sure|dont know|no idea|unsure) (?:if|whether) (?:\w+ )*(?:said|guessed|mentioned|repeated|suggested|named)(?: it| this| already)*
    secondo me|segun yo|selon moi|(?:ich|je) (?:denke|glaube|pense)|moi je pense|eu acho
    """
)
#: A clause that ends so gives what follows its pause to somebody else.
OTHERS_BEFORE_STOP = re.compile(
    rf"\b(?:says|said|reckons|thinks|guesses|guessed|suggests|suggested|{_POSSESSIVE}|(?:your|her|his|their) (?:guess|idea|theory|answer)|insists|swears|told me|tells me|convinced me|persuaded me|won me over|talked me (?:into it|round)|{_CLAIMS_ABROAD}"
    r"|(?:did|does|do|would) (?:\w+ ){1,5}say|asked (?:her|him|them|my \w+)|according to (?:\w+ ?){1,3}|said it(?: first)?|convinced|same|youre right|you are right|youve got it|you got it)(?: is| was)?$"
    r"|^(?:just )?(?:like|as with) \w+$|\b(?:majority|crowd|consensus)$"
    r"|\b(?:is|are|was|were|seems?) (?:\w+ )?(?:certain|sure|convinced|positive|adamant|agreed)$"
    r"|(?!\bi )\b\w+ (?:said|got|guessed|named|had) (?:it|that|this)\b.*\b(?:first|already|before|yes)\b"
    r"|^(?:i |yes |totally |also )*(?:agree|agreed|ditto|seconded|same)\b"
)
OTHERS_AFTER = re.compile(
    "^"
    + one_of(
        r"""
        (?:so |as |is what |was what |like |just like )?(?!i )(?:(?:my|our|the|his|her|their) )?(?:\w+ ){0,2}(?:says|said|reckons|thinks|suggested|suggests|guessed|swears|insists)(?: so| it| first| that| too)*$
        as (?:my|our|the|his|her) (?:\w+ ){1,2}would say|according to|was (?:my|our|the|his|her|their|some|a) (?!guess|first|answer|only)
        (?:said|says|reckons|thinks) (?:my|our|the|his|her|a|\w+$)
        (?:my|our|her|his|their) \w+s (?:guess|idea|theory|suggestion|answer|words|hunch)|not (?:my|mine)
        (?:like|as) (?:everyone|everybody|the others|others|someone|somebody|the rest|above|below)|same as
        i (?:say|think|guess|thought) (?:that|so|the same|it) (?:too|as well)
        is (?:everyones|everybodys|someones|her|his|their|(?:my|our) \w+s) (?:guess|idea|theory|suggestion|answer|hunch|favourite)|(?:has|was) (?:been )?(?:said|taken|guessed|mentioned|already)
        """
    )
)

_SOMEBODY = (
    r"(?!else|nobody|anyone|anybody|it|this|that|what|which|everything|something|nothing|one|who|page|colou?rs?"
    r"|timing|video|she|he|all|and|you|we|i|so)\w+"
)
_AT_THE_END = r"(?: (?:i think|in the (?:very |first |last |top )*comments?|in comment|for sure|surely|already|above|below|right|there|haha|lol|i reckon|imo)\b|$)"

#: The writer adopts a guess that somebody else made, without naming it.
AGREES = re.compile(
    one_of(
        rf"""
        \bagree(?:s|d|ing)? with (?!you (?:on|about|that)|everyone (?:on|about|that)|that\b|this\b|it\b)(?:\w+ ?){{1,3}}$
        \bagree(?:d)? with (?:\w+ ){{0,2}}(?:guess|answer|comment|above|below)
        ^(?:i )?(?:ditto|seconded|i second (?:that|this)|second(?:ing)? (?:that|this|\w+)$|same guess|same answer|same as (?:above|below|\w+$))
        \bwhat(?:ever)? (?!you|i|a|the|is|are|it|we)\w+ (?:said|says|guessed)\b|\bsame (?:guess|answer|idea) (?:as|for|here)\b
        \b(?:with|like) (?!you|it|that|this|me)\w+ on this(?: one)?\b
        \b{_SOMEBODY} (?:has|has already|s |s already|already)? ?(?:got it(?: right| in one)?|has it|nailed it|cracked it|solved it|guessed it|named it|has the answer|got there first|beat me to it|is right|was right|is correct|is spot on|is onto (?:it|something)|is on to (?:it|something)|must be right|got it right){_AT_THE_END}
        \b(?:she|he|someone|somebody|they|you|youve|theyve|shes|hes|one of you) (?:has |have |already |s |ve |definitely |clearly )*(?:has it|got it|nailed it|cracked it|guessed it|solved it|guessed (?:it )?right|got it right|named it|said it already|beat me to it){_AT_THE_END}
        \b(?:took|stole|stolen|taken|beaten to|pinched) my (?:guess|answer)
        \bmy (?:guess|answer) (?:is|has been|was|s) (?:already )?(?:taken|gone|above|below|there|up there|been said)
        \b(?!thats|its|whats|looks|seems|sounds|feels|colou?rs|alls|theres|lets)\w+s (?:absolutely |quite |totally )?(?:right|correct|spot on)$
        \bplus 1 (?:to|for|on)\b|\b(?:with|like|love|loving|liking|same as|second|to|for) (?:\w+ )?{_POSSESSIVE}\b|{_POSSESSIVE} (?:is|sounds|looks|must be|has to be) (?:right|good|the one|it|correct|spot on)
        \b(?:its|it has|thats|already) (?:already )?been (?:guessed|said|named|got)\b|\b(?:already|been) (?:been )?(?:guessed|named) (?:it|already|above|below)\b
        \b(?!i|you|we|they|who|nobody)\w+ knows (?:it|the answer|what it is|this one)\b|\bcopying (?!it|this|the)\w+\b|\bim with (?!you|it|this|that|my|the)\w+(?: here)?$
        """
    )
)
#: Said to somebody addressed, it agrees with what they named.
SAYS_YES = re.compile(
    r"^(?:oh |ooh |omg )?(?:yes|yep|yeah|yup|exactly|agreed?|same|definitely|absolutely|totally|correct|right)\b"
)
#: What is said to a quoted guess that the writer shares.
APPROVES = re.compile(
    r"\b"
    + one_of(
        r"""
        yes|yep|yeah|yup|agree|agreed|same|mine too|me too|exactly|definitely|absolutely|totally|thats it|thats the one
        this is it|got it|correct|ditto|spot on|bingo|has it|it is|must be|i think so|think so too|think youre right
        youre right|you got it|seconded|snap|sure is|nailed it|my guess too|i was going to say|plus 1
        oui|ja genau|genau|stimmt|si|claro|exactement|esatto|dokladnie|precies
        """
    )
    + r"\b|^(?:\w+ ){0,2}this$|\btoo$"
)
#: Earlier tries that the writer tells of: they name nothing now.
PAST_TRY = anywhere(
    r"""
    (?:id|i would|i could|i wouldve|wed|we would) have (?:sworn|said|guessed|bet|put)
    (?:i|we) (?:\w+ )?(?:said|thought|guessed|was|were|had)|(?:thought|said) it was|at first|used to think
    (?:last|first|old|previous|earlier) (?:guess|guesses|try|attempt|go|idea|thought) (?:was|were|\w+ing)?|last (?:week|time|month|year)
    """
)
HINTS_AT_A_DESIGNER = anywhere(
    r"""
    (?:lady|woman|guy|chap|bloke|girl|person|designer|artist) (?:who|with|that|from|whose)
    whats(?:her|his|their)name|what(?:s| is) (?:her|his) name|somebody|someone|name escapes
    forget (?:her|his|the|who)|cant remember (?:her|his|the|who)|cant think (?:who|of)
    same (?:designer|one|lady|woman)|by the|by that|by one of
    """
)
#: Opens the words after a name: also said in everyday talk.
ALSO_AFTER = re.compile(r"^(?:too|as well|also)$")


def agrees(text: str) -> bool:
    """Whether a clause takes over somebody else's guess without naming it."""
    return bool(AGREES.search(text)) and not denies(text)
