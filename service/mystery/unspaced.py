"""Turns of phrase around a name in scripts that put no spaces between words.

Their words come letter by letter, so that the patterns are tried on the letters run together.
"""

from __future__ import annotations

import re

_BEFORE = re.compile(
    r"^(?:これは|これ|たぶん|多分|きっと|もしかして|もしかしたら|答えは|正解は|私は|私の予想は|予想は|ひょっとして|タイトルは|この作品は|絶対|やっぱり"
    r"|我猜是?|应该是|應該是|是不是|我觉得是?|我覺得是?|会不会是|會不會是|可能是|也许是|也許是|答案是|是|这是|這是|一定是)+$"
)
_AFTER = re.compile(
    r"^(?:だと(?:思|おも)(?:う|います|いました)|だ|です|かな|かも(?:しれません|しれない)?|ですか|ですね|ですよね|でしょう|でしょうか|だろう|だよ|だね"
    r"|に(?:一票|します|違いない)|で(?:お願いします|す)|か|ね|よ|吧|吗|嗎|呢|是吗|对吗|對嗎)*$"
)
_DENIED_BEFORE = re.compile(r"(?:不是|不会是|不會是|不可能是)$")
_DENIED_AFTER = re.compile(
    r"^(?:では|じゃ|とは)(?:ない|なさそう|ありません|違|ちが|思えな|思いませ)|^は(?:違|ちが)|^不是"
)


def is_unspaced(text: str) -> bool:
    """Whether `text` (forms joined by spaces) is of such a script; empty text is."""
    return all(ord(char) >= 0x3041 for char in text if not char.isspace())


def leads_to_a_name(before: str) -> bool:
    """Whether the letters before a name only offer it."""
    return bool(before) and bool(_BEFORE.match(before.replace(" ", "")))


def follows_a_name(after: str) -> bool:
    """Whether the letters after a name only offer it."""
    return bool(after) and bool(_AFTER.match(after.replace(" ", "")))


def denies(before: str, after: str) -> bool:
    """Whether the letters around a name deny it."""
    left, right = before.replace(" ", ""), after.replace(" ", "")
    return bool(_DENIED_BEFORE.search(left) or _DENIED_AFTER.match(right))
