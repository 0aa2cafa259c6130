"""What the window says of an outcome map: the page's words, one cell, the whole in words."""

from __future__ import annotations

from dataclasses import dataclass

from sim.map_words import (
    caption,
    cell_words,
    change_words,
    described,
    difference_sentence,
    sentence,
)
from sim.outcome_map import Ask, MapDifference, OutcomeMap
from sim.results import LIMITS_LINE
from sim.units import Units
from ui.state.chances import ChanceProgress, progress_words
from ui.state.maps import Maps, differs_in

NO_SPREAD = "A map is made of a spread: select one, or add one to the plan."
NOTHING = "Compare with another door or tool\u2026"
POINT = "Point at a place, on the chart or on the door; a click sets the tips there."


@dataclass(frozen=True)
class MapWords:
    """What the page says.

    sentence : the map, or what changes between two
    cell, cell_pointed : the cell under the cursor, and whether there is one
    foot : what was pushed and how, and the limits
    note : why there is no chart, how far it is, or which half of a place is which
    told : the whole map in words, for screen readers
    can_make, busy, there : whether a map can be made, is being made, is shown
    others, chosen : what it can be compared with, the first of them nothing
    """

    sentence: str = ""
    cell: str = ""
    cell_pointed: bool = False
    foot: str = ""
    note: str = ""
    told: str = ""
    can_make: bool = False
    busy: bool = False
    there: bool = False
    others: tuple[str, ...] = ()
    chosen: int = 0


def refused(why: str) -> str:
    """Return why no map can be asked for, for the reader."""
    return NO_SPREAD if "spread" in why else f"{why[:1].upper()}{why[1:]}."


def note(maps: Maps, ask: Ask) -> str:
    """Return what stands in the place of a map that is not there: how far it is, or what it would take."""
    if maps.busy:
        step = maps.progress
        if step is None:
            return "Getting ready \u2026"
        far = ChanceProgress(step.number, step.done, step.total, step.seconds_left)
        return f"Pushing at every place: {progress_words(far)}. The window goes on meanwhile."
    if maps.trouble is not None:
        return maps.trouble.sentence
    return (
        f"Not made yet for this car, tool and tilt: {len(ask.grid.cells)} places, each pushed by itself on "
        "two lattices. It takes some minutes, can be stopped, and goes on later from where it was."
    )


def told(
    maps: Maps, ask: Ask, outcome: OutcomeMap, apart: MapDifference | None, other: str, cursor: int | None,
    units: Units,
) -> MapWords:  # fmt: skip
    """Return the page's words on a map that is there.

    Parameters
    ----------
    other : key of the map to compare with, or "";  apart : what changes on it;  cursor : the cell pointed at
    """
    halves = "" if apart is None else halves_told(apart)
    others = maps.others(ask)
    keys = [one.key for one in others]
    return MapWords(
        sentence=sentence(outcome) if apart is None else difference_sentence(apart),
        cell=POINT if cursor is None else cell_told(outcome, apart, cursor, units),
        cell_pointed=cursor is not None,
        foot=f"{halves} {caption(outcome, units)} {LIMITS_LINE}.".lstrip(),
        note=halves,
        told=f"{caption(outcome, units)} {' '.join(described(outcome, units))}",
        busy=maps.busy,
        there=True,
        others=(NOTHING, *(differs_in(outcome, one) for one in others)),
        chosen=keys.index(other) + 1 if other in keys else 0,
    )


def halves_told(apart: MapDifference) -> str:
    """Return which half of a place that changes is which door or tool."""
    one, two = differs_in(apart.after, apart.before), differs_in(apart.before, apart.after)
    same_car = one.partition(", ")[0] == two.partition(", ")[0]
    one, two = (name.partition(", ")[2] if same_car and ", " in name else name for name in (one, two))
    return f"Left half of a place: {one}. Right half: {two}."


def cell_told(outcome: OutcomeMap, apart: MapDifference | None, cell: int, units: Units) -> str:
    """Return what a cell says, on the other map too where there is one."""
    words = cell_words(outcome.told[cell], units)
    if apart is None:
        return words
    other = cell_words(apart.after.told[cell], units).partition(": ")[2]
    changed = any(change.index == cell for change in apart.changes)
    return f"{words} {'On the other' if changed else 'The same on the other'}: {other}"


def text(outcome: OutcomeMap, apart: MapDifference | None, units: Units) -> str:
    """Return the whole map in words, line by line, with the line on the limits."""
    lines = [sentence(outcome), caption(outcome, units), *described(outcome, units)]
    if apart is not None:
        lines += ["", difference_sentence(apart), caption(apart.after, units)]
        lines += [change_words(change, units) for change in apart.changes]
    return "\n".join((*lines, "", LIMITS_LINE))
