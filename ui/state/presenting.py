"""What a class is led through, page by page: a lesson's steps, or a plan's own where no lesson is open.

A plan's pages are made from what is known of it: its start, a question before each push, its events, its end.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from sim.move_words import title_of
from sim.plan import Plan
from sim.units import Units, length_text
from ui.state.cards import place_of
from ui.state.questions import FIRST_WORDS, can_ask
from ui.state.wording import in_units, told

if TYPE_CHECKING:
    from sim.record import MoveRecord

LIMITS_NOTE = "Say first what this is: a teaching model, not a real car; local procedure comes first."
ASK_NOTE = "Key A opens the card. Let everyone choose and give a reason, count the hands, then lock it (L)."
RUN_NOTE = "Return runs it. Let them watch the metal first; words come after."
EVENT_NOTE = "Ask what was seen before it is said. W plays slower, Y plays it again and again."
END_NOTE = "Compare with what was foretold (R). Then: what would have to be different?"


@dataclass(frozen=True)
class Page:
    """One page.

    title : what it is, also for the class;  words : for the class;  notes : for the teacher alone
    moment : position of the moment it shows, None where it changes nothing
    move : index of the move it is about, -1 before the first
    tells : whether its title tells what happened: kept from the class until answers are open
    """

    title: str
    words: str = ""
    notes: str = ""
    moment: int | None = None
    move: int = -1
    tells: bool = False


def plan_pages(plan: Plan, records: Sequence[MoveRecord], units: Units, *, spoken: bool) -> tuple[Page, ...]:
    """Return the pages of a plan.

    Parameters
    ----------
    records : of its leading moves, as far as they may be seen
    spoken : whether what happened may be put into words
    """
    pages = [Page(plan.title or "The start", plan.words, LIMITS_NOTE, 0)]
    first = 1  # position of the move's first moment in the row of all moments
    for index, move in enumerate(plan.moves):
        head = f"Move {index + 1}: {title_of(move)}"
        if can_ask(move):
            words = f"What will happen? {title_of(move)}: {place_of(move, units)}"
            pages.append(Page(f"{head}. What will happen?", words, ASK_NOTE, first - 1, index))
        if index >= len(records):
            pages.append(Page(head, place_of(move, units), RUN_NOTE, None, index))
            break
        record = records[index]
        if spoken:
            pages += _event_pages(record, index, first, units)
        last = first + len(record.frames) - 1
        pages.append(_end_page(record, index, last, head, units, spoken=spoken))
        first = last + 1
    return tuple(pages)


def _event_pages(record: MoveRecord, index: int, first: int, units: Units) -> list[Page]:
    pages: list[Page] = []
    seen: set[str] = set()
    for place, frame in enumerate(record.frames):
        for event in frame.events:
            if event.kind in seen:
                continue
            seen.add(event.kind)
            words = FIRST_WORDS.get(event.kind, event.kind.capitalize())
            title = f"{words}, at {length_text(event.opening_m, units)}"
            pages.append(Page(title, "", EVENT_NOTE, first + place, index, tells=True))
    return pages


def _end_page(record: MoveRecord, index: int, last: int, head: str, units: Units, *, spoken: bool) -> Page:
    result = record.result
    if result is None or not spoken:
        return Page(f"{head}, its end", "", END_NOTE, last, index)
    words = in_units(told(result.sentence, result.plan_effect), units)
    return Page(f"{head}, its end", words, END_NOTE, last, index, tells=True)


def page_at(pages: Sequence[Page], position: int) -> int:
    """Return the page that a moment belongs to: the first of those that show the latest moment up to it."""
    moments = [page.moment for page in pages if page.moment is not None and page.moment <= position]
    latest = max(moments, default=None)
    return next((number for number, page in enumerate(pages) if page.moment == latest), 0)


Rect = tuple[int, int, int, int]
"""Left, top, width and height of a display."""


def displays(screens: Sequence[Rect], primary: int) -> tuple[int, int | None]:
    """Return which display the class looks at and which one the notes are on.

    With two or more, the teacher's own (the primary one) keeps the notes and the largest other one is for the
    class; with one, the class has it and the notes lie behind a key.
    """
    if len(screens) < 2:
        return 0, None
    others = [number for number in range(len(screens)) if number != primary]
    largest = max(others, key=lambda number: (screens[number][2] * screens[number][3], -number))
    return largest, primary
