"""What does not fit in a record: the field, and a sentence."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True)
class Trouble:
    """`field` is the path of the field, as in `result.steps[0].rule`; `why` a sentence."""

    field: str
    why: str

    def __str__(self) -> str:
        return f"{self.field}: {self.why}"


def differences(made: Any, told: Any, path: str) -> Iterator[Trouble]:
    """The fields in which what was counted anew and what the record tells are not the same."""
    if isinstance(made, dict) and isinstance(told, dict):
        for name in sorted({*made, *told}):
            inner = f"{path}.{name}"
            if name not in told:
                yield Trouble(
                    inner, f"it is missing, but counting anew gives {_short(made[name])}."
                )
            elif name not in made:
                yield Trouble(inner, "counting anew gives no such thing.")
            else:
                yield from differences(made[name], told[name], inner)
    elif _objects(made) and _objects(told) and len(made) == len(told):
        for place, part in enumerate(made):
            yield from differences(part, told[place], f"{path}[{place}]")
    elif made != told:
        yield Trouble(path, f"it says {_short(told)}, but counting anew gives {_short(made)}.")


def _objects(value: Any) -> bool:
    return isinstance(value, list) and any(isinstance(part, dict) for part in value)


def _short(value: Any) -> str:
    words = repr(value)
    return words if len(words) < 120 else f"{words[:117]}..."
