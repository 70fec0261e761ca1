"""Turns of phrase as patterns, tried on words as they are compared, joined by single spaces."""

from __future__ import annotations

import re


def one_of(lines: str) -> str:
    """A pattern for any of the turns of phrase in `lines`; a line may hold several, parted by |."""
    return "(?:" + "|".join(line.strip() for line in lines.strip().splitlines()) + ")"


def anywhere(lines: str) -> re.Pattern[str]:
    """Any of these turns of phrase as whole words, anywhere."""
    return re.compile(rf"\b{one_of(lines)}\b")


def opening(lines: str) -> re.Pattern[str]:
    """Any of these turns of phrase as the first words."""
    return re.compile(rf"^{one_of(lines)}\b")


def whole(lines: str) -> re.Pattern[str]:
    """Any of these turns of phrase and nothing else."""
    return re.compile(rf"^{one_of(lines)}$")
