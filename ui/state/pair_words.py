"""Two plans side by side in words, ready to be shown."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sim.outcome import live_words
from sim.plan import Plan
from sim.units import NO_BREAK, Units, force_text, length_text
from ui.state.beside import Beside
from ui.state.contrast import ContrastRow, contrast
from ui.state.locks import SHUT
from ui.state.wording import in_units, told

if TYPE_CHECKING:
    from sim.record import Frame, MoveRecord

NOT_RUN = "Not run yet."


@dataclass(frozen=True)
class PairWords:
    """What stands beside the two views.

    refused : why they cannot stand side by side;  can_put_on : whether the other's moves fit on this car
    start : from which start both begin;  heading, rows, in_words : what differs
    names, sentences : of both, the left one first;  can_run : whether something is to be worked out
    """

    refused: str = ""
    can_put_on: bool = False
    start: str = ""
    heading: str = ""
    rows: tuple[ContrastRow, ...] = ()
    in_words: str = ""
    names: tuple[str, str] = ("", "")
    sentences: tuple[str, str] = ("", "")
    can_run: bool = False


def heading_words(rows: tuple[ContrastRow, ...]) -> str:
    """Return the heading of the list of what differs."""
    count = sum(row.felt for row in rows)
    if count == 1:
        return "One thing differs"
    return f"{count} things differ" if count else "Nothing differs that the metal feels"


def pair_words(
    first: Plan,
    beside: Beside,
    records: tuple[tuple[MoveRecord, ...], ...],
    shared: int,
    units: Units,
    shut: bool,
) -> PairWords:
    """Return what stands beside two plans that were let side by side.

    Parameters
    ----------
    first : the plan on the left;  beside : the other one and the clock
    records : of both plans;  shared : how many leading moves they have in common
    shut : whether what happened is kept shut
    """
    second = beside.plan
    assert second is not None
    all_rows = contrast(first, second, units).rows
    rows = tuple(row for row in all_rows if row.felt)
    in_words = ", ".join(row.words.lower() for row in all_rows if not row.felt)
    whole = (len(records[0]) == len(first.moves), len(records[1]) == len(second.moves))
    after = f"after move {shared}" if shared else "the untouched door"
    names = twin_names(first, rows) if beside.is_twin else names_of(first, second)
    start = f"Both begin from the same metal: {after}, {beside.sha256[:8]}."
    if beside.is_twin:
        start = f"Each begins from its own metal: {beside.sha256[:8]} left, {beside.other_sha256[:8]} right."
    sentences = tuple(_sentence(beside, side, records[side], units, shut) for side in (0, 1))
    return PairWords(
        start=start,
        heading=heading_words(rows),
        rows=rows,
        in_words=f"In words alone: {in_words}." if in_words else "",
        names=names,
        sentences=(sentences[0], sentences[1]),
        can_run=not all(whole),
    )


def twin_names(first: Plan, rows: tuple[ContrastRow, ...]) -> tuple[str, str]:
    """Return what a plan and its twin are called: the twin by what was changed on it."""
    changed = "; ".join(f"{row.words} {row.second}" for row in rows)
    return first.title or "a plan without a title", f"Twin: {changed}"


def names_of(first: Plan, second: Plan) -> tuple[str, str]:
    """Return what both plans are called; of two of one title the left one is the one that was changed."""
    left, right = (plan.title or "a plan without a title" for plan in (first, second))
    return (f"Changed from: {left}" if left == right and first != second else left), right


def caption(
    name: str, frame: Frame | None, units: Units, *, held: bool, shut: bool, rests: bool = False
) -> str:
    """Return the words above one of the views: what it is of, and where the tips of a tool at work are."""
    if frame is None:
        return name
    words = name if rests else f"{name}\n{length_text(frame.opening_m, units)}"
    if not (shut or rests):
        words += f"{NO_BREAK}{NO_BREAK}{force_text(frame.force_n, units)}"
    return f"{words}, its last moment" if held else words


def _sentence(beside: Beside, side: int, records: tuple[MoveRecord, ...], units: Units, shut: bool) -> str:
    frame, move = beside.frame(side), beside.move(side)
    if not records:
        return NOT_RUN
    if shut:
        return SHUT
    if frame is None or move < 0:
        return "At the start."
    record = records[move]
    if frame is record.frames[-1] and record.result is not None:
        return in_units(told(record.result.sentence, record.result.plan_effect), units)
    at = next(index for index, item in enumerate(record.frames) if item is frame)
    words = live_words(frame, record.frames[: at + 1])
    return in_units(words[0].upper() + words[1:] + ".", units)
