"""What a block of a pasted page says: the words, apart from counts and buttons below them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from service.comments import page_words
from service.comments.page_blocks import Block
from service.comments.page_lines import Line
from service.comments.relative_times import plain

#: A line that ends this share of the blocks, and no fewer than three, is a button of the page.
_COMMON = 0.5


@dataclass(slots=True)
class Body:
    """A comment's words, line by line, and what was taken for something else.

    `count` is a number below the words that was taken for a count of likes, `sure` whether it
    can be nothing else. `left_over` stands below the button to answer and belongs to no comment.
    """

    words: list[str] = field(default_factory=list)
    count: Line | None = None
    sure: bool = False
    edited: bool = False
    folded: bool = False
    removed: list[Line] = field(default_factory=list)
    left_over: list[Line] = field(default_factory=list)
    #: Buttons between the words and the button to answer.
    buttons: list[Line] = field(default_factory=list)

    @property
    def text(self) -> str:
        """The words as one text."""
        return "\n".join(self.words).strip()

    @property
    def may_want_the_count(self) -> bool:
        """Whether the number below may be the writer's: it is not sure, and no digit is above it.

        Where the words are numbers alone, one more of them may be a choice too.
        """
        if self.count is None or self.sure:
            return False
        return self.is_of_numbers or not any(sign.isdigit() for sign in self.text)

    @property
    def is_of_numbers(self) -> bool:
        """Whether the words are numbers alone and the number below is not surely a count."""
        text = self.text
        told = any(sign.isdigit() for sign in text) and not any(sign.isalpha() for sign in text)
        return told and self.count is not None and not self.sure


def shows_counts(bodies: Sequence[Body]) -> bool:
    """Whether a page shows that a number below the words counts likes.

    One that can be nothing else shows it, such as 1.2K, or numbers below a third of all words, and
    no fewer than three, that no writer needs. Numbers in doubt do not speak for themselves.
    """
    if any(body.count is not None and body.sure for body in bodies):
        return True
    undoubted = [body for body in bodies if not body.may_want_the_count]
    counted = sum(1 for body in undoubted if body.count is not None)
    if counted >= 3 and 3 * counted >= len(undoubted):
        return True
    # Below all words, those included that need none: then the page shows it, also where it is 0.
    return counted > 0 and len(bodies) >= 3 and all(body.count is not None for body in bodies)


def learned_buttons(blocks: Iterable[Block]) -> frozenset[str]:
    """Lines in words this service does not know that stand below the words in most blocks.

    Only words without digits, never the first line below the time: that is what people wrote.
    """
    below: Counter[str] = Counter()
    first: set[str] = set()
    size = 0
    for block in blocks:
        size += 1
        filled = [line for line in block.body if line.kind != "blank"]
        first.update(plain(line.text) for line in filled[:1])
        below.update(
            {
                plain(line.text)
                for line in filled[1:]
                if line.kind == "words" and not any(sign.isdigit() for sign in line.text)
            }
        )
    return frozenset(
        words
        for words, seen in below.items()
        if seen >= 3 and seen >= _COMMON * size and words not in first
    )


def body_of(block: Block, learned: frozenset[str]) -> Body:
    """What a block says. Nothing is lost: each line is words, or is among what was taken out."""
    lines = [_as_learned(line, learned) for line in block.body]
    body = Body()
    while lines and lines[0].kind in {"blank", "edited"}:
        body.edited = body.edited or lines[0].kind == "edited"
        lines.pop(0)
    lines = _below_the_button(lines, body)
    kept = _without_what_stands_below(lines, body)
    if not any(line.kind != "blank" for line in kept):
        kept = _only_a_number(lines, body)
    body.words = [line.text for line in kept]
    return body


def _as_learned(line: Line, learned: frozenset[str]) -> Line:
    if line.kind == "words" and plain(line.text) in learned:
        return Line(line.number, line.text, "button")
    return line


def _below_the_button(lines: Sequence[Line], body: Body) -> list[Line]:
    """The lines above the last button to answer; those below it are no words of this comment."""
    last = max((place for place, line in enumerate(lines) if line.kind == "reply"), default=None)
    if last is None:
        return list(lines)
    for line in lines[last + 1 :]:
        if line.kind == "removed":
            body.removed.append(line)
        elif line.kind in {"words", "time", "edited"}:
            body.left_over.append(line)
    return list(lines[:last])


def _without_what_stands_below(lines: Sequence[Line], body: Body) -> list[Line]:
    kept = list(lines)
    while kept:
        line = kept[-1]
        if line.kind == "below":
            body.sure = body.sure or body.count is not None  # no words stand below this button
            body.folded = body.folded or bool(page_words.FOLDED.fullmatch(plain(line.text)))
            body.buttons.append(kept.pop())
        elif line.kind == "blank":
            kept.pop()
        elif line.kind in {"button", "reply"}:
            body.sure = body.sure or body.count is not None
            body.buttons.append(kept.pop())
        elif line.kind == "removed" and len(kept) > 1:
            body.removed.append(kept.pop())
        elif line.kind == "count" and body.count is None and not _words_ended(body):
            body.count = kept.pop()
            body.sure = body.count.sure
        else:
            break
    return kept


def _words_ended(body: Body) -> bool:
    """Whether a button that stands right below the words was passed already."""
    return any(line.kind == "below" for line in body.buttons)


def _only_a_number(lines: Sequence[Line], body: Body) -> list[Line]:
    """A comment that is nothing but a number: the number is what its writer said."""
    filled = [line for line in lines if line.kind != "blank"]
    if body.count is None or filled[0] is not body.count:
        return []
    kept, body.count, body.sure = [body.count], None, False
    return kept
