"""Forms into what the API takes, so that both say the same sentence of the same mistake.

A form that cannot be used is shown again with what was typed and the sentence beside its field.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError
from starlette.datastructures import FormData

from service.api.problems import plain_sentence, status_of
from service.errors import AlreadyThere, BadInput, LoopstartError, NotFound, WrongState
from service.pages.forms import FIELD

Model = TypeVar("Model", bound=BaseModel)
#: Sentences by the field that they are about; "" is the form as a whole.
Faults = Mapping[str, str]

#: What a form may be refused for and shown again with; anything else is a page of its own.
REFUSED = (BadInput, WrongState, AlreadyThere, NotFound)


@dataclass(frozen=True, slots=True)
class Typed:
    """What was typed into a page's form of that name, and what is wrong with it, by field.

    `lists` are the fields of which several may be chosen.
    """

    form: str = ""
    values: Mapping[str, str] = field(default_factory=dict)
    lists: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    wrong: Faults = field(default_factory=dict)


#: Nothing was typed.
NOTHING = Typed()


def typed_in(form: FormData, name: str, faults: Faults) -> Typed:
    """What a refused form held."""
    return Typed(name, words_of(form), lists_of(form), faults)


def words_of(form: FormData) -> dict[str, str]:
    """Every field's words, the last where one was sent more than once; no file, no token."""
    return {
        name: value
        for name, value in form.multi_items()
        if isinstance(value, str) and name != FIELD
    }


def lists_of(form: FormData) -> dict[str, tuple[str, ...]]:
    """Every field with all the words that were sent for it."""
    found: dict[str, tuple[str, ...]] = {}
    for name, value in form.multi_items():
        if isinstance(value, str) and name != FIELD:
            found[name] = (*found.get(name, ()), value)
    return found


def said(words: Mapping[str, str], *names: str) -> dict[str, str]:
    """The fields that hold anything: one left empty says nothing, and the default holds."""
    return {name: words[name].strip() for name in names if words.get(name, "").strip()}


def lines_in(words: str) -> list[str]:
    """One thing a line; empty lines are none."""
    return [line.strip() for line in words.splitlines() if line.strip()]


def read_as(
    kind: type[Model], raw: Mapping[str, Any], fields: Mapping[str, str] | None = None
) -> tuple[Model | None, dict[str, str]]:
    """What the API would make of it; else a sentence for each field that is wrong.

    `fields` names the form's field where it is not called as in the API.
    """
    try:
        # A form has words alone, of which numbers and days are made here.
        return kind.model_validate(raw, strict=False), {}
    except ValidationError as error:
        faults: dict[str, str] = {}
        for one in error.errors():
            names = [str(step) for step in one["loc"]]
            name = next((step for step in reversed(names) if not step.isdecimal()), "")
            name = (fields or {}).get(name, name)
            faults.setdefault(name, as_sentence(plain_sentence(one)))
        return None, faults


def fault_of(
    error: LoopstartError, words: Mapping[str, str], places: Mapping[str, Sequence[str]]
) -> dict[str, str]:
    """The error's sentence beside the field it is about.

    `places` names fields by errors; a time that cannot be stands where it was typed.
    """
    told = as_sentence(str(error))
    text = getattr(error, "text", None)
    for name, value in words.items():
        if text is not None and value.strip() == text:
            return {name: told}
    named = places.get(type(error).__name__, ())
    return {named[0] if named else "": told}


def status_for(error: LoopstartError) -> int:
    """The status of a page that shows the form again."""
    return status_of(type(error))


def as_sentence(words: str) -> str:
    """The words with a capital and a full stop."""
    whole = words[:1].upper() + words[1:]
    return whole if whole.endswith((".", "!", "?")) else f"{whole}."
