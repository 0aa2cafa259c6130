"""A lesson in the language spoken: its English text by text, where a translation holds all of one.

A lesson's file has one language. What a translation holds are the texts of the ready lessons as they stand in
their files, figures still named (`{lip.parted}`); a lesson of one's own keeps its words.
"""

from __future__ import annotations

from collections.abc import Iterator

import msgspec

from ui.state.lesson import (
    FIGURE,
    Claim,
    Debrief,
    Expected,
    Lesson,
    LessonPlan,
    Objective,
    Question,
    Skill,
    Standard,
)
from ui.state.lesson import Choice as Answer
from ui.state.lesson import Step as LessonStep
from ui.state.tongue import ENGLISH, own, spoken, whole

TEXTS: dict[type[msgspec.Struct], tuple[str, ...]] = {
    Lesson: ("title", "words", "materials", "references", "limits"),
    Objective: ("audience", "behaviour", "condition", "degree"),
    Standard: ("words", "checked"),
    LessonPlan: ("words",),
    LessonStep: ("title", "words", "notes"),
    Answer: ("words",),
    Question: ("ask", "hint", "why"),
    Expected: ("words",),
    Claim: ("words", "source"),
    Skill: ("does", "looked_for"),
    Debrief: ("questions", "points"),
}
"""Which fields of a lesson are words for readers; all others are names, numbers and places."""


def in_tongue(lesson: Lesson) -> Lesson:
    """Return a lesson in the language spoken; one that is not in English stays as it is."""
    if spoken() == ENGLISH or not lesson.language.startswith(ENGLISH):
        return lesson
    return msgspec.convert(_told(lesson), Lesson, from_attributes=True)


def texts(lesson: Lesson) -> Iterator[str]:
    """Yield every text of a lesson that readers see, figures still named."""
    yield from _texts(lesson)


def _told(value: object, *, words: bool = False) -> object:
    if isinstance(value, msgspec.Struct):
        shown = TEXTS[type(value)]
        return {name: _told(getattr(value, name), words=name in shown) for name in value.__struct_fields__}
    if isinstance(value, tuple):
        return [_told(item, words=words) for item in value]
    if not words or not isinstance(value, str):
        return value
    return whole(value) if any(map(str.isalpha, FIGURE.sub("", value))) else own(value)


def _texts(value: object, *, words: bool = False) -> Iterator[str]:
    if isinstance(value, msgspec.Struct):
        shown = TEXTS[type(value)]
        for name in value.__struct_fields__:
            yield from _texts(getattr(value, name), words=name in shown)
    elif isinstance(value, tuple):
        for item in value:
            yield from _texts(item, words=words)
    elif words and isinstance(value, str) and value.strip():
        yield value
