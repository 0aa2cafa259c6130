"""An outcome map in words: one sentence, what was pushed and how, and a description line by line."""

from __future__ import annotations

import itertools
import math
from collections.abc import Mapping

from sim.builds import car_words, labelled
from sim.likely import NOT_SETTLED
from sim.map_cell import CANNOT
from sim.map_grid import Grid
from sim.outcome_map import Change, MapDifference, OutcomeMap, Told
from sim.plan import Edge
from sim.units import Units, length_text

EDGE_WORDS: Mapping[Edge, str] = {
    "latch_edge": "latch edge",
    "hinge_edge": "hinge edge",
    "sill_edge": "sill edge",
}
CLAUSES: Mapping[str, str] = {
    "seam parting": "the seam parts first",
    "weld broken": "a weld breaks first",
    "latch free": "the latch lets go first",
    "striker out": "the striker slides out of the fork first",
    "hinge free": "a hinge lets go first",
    "bar foot free": "a foot of the bar lets go first",
    "skin tearing": "a sheet tears first",
    "tip shearing through": "the tip cuts through the sheet first",
    "tip off": "the tip comes off before anything gives",
    "stalled": "the tool stalls",
    "tip slipping": "the tip slips and nothing gives",
    "bending": "metal bends and nothing gives",
    "holding": "nothing gives",
    "folding out": "the metal folds out and nothing gives",
    "folding in": "the metal folds in and nothing gives",
    CANNOT: "the tips cannot stand",
    NOT_SETTLED: "it is not settled what gives first",
}
"""What a word of the map says, in a clause."""


def clause(word: str) -> str:
    """Return what a word says."""
    return CLAUSES.get(word, word)


def depth_words(grid: Grid, column: int, outcome: OutcomeMap | None = None) -> str:
    """Return the seat of a column of cells in words, as most of its runs name it."""
    if outcome is None:
        return ""
    seats = [outcome.told[grid.index(edge, row, column)].first.seat for edge, row in _rows(grid)]
    named = [seat for seat in seats if seat]
    return max(named, key=named.count) if named else ""


def _rows(grid: Grid) -> list[tuple[Edge, int]]:
    return list(itertools.product(grid.edges, range(len(grid.along_m))))


def sentence(outcome: OutcomeMap) -> str:
    """Return the whole map in one sentence."""
    counts = outcome.counts
    parts = [f"{clause(word)} at {count}" for word, count in counts.items() if word != NOT_SETTLED]
    total, loose = len(outcome.told), counts.get(NOT_SETTLED, 0)
    what = ", ".join(parts) if parts else "none is settled"
    rest = f"; {loose} {'is' if loose == 1 else 'are'} not settled" if loose and parts else ""
    return labelled(outcome.ask.plan.car, f"Of {total} places along the door's edges {what}{rest}.")


def caption(outcome: OutcomeMap, units: Units = Units.METRIC) -> str:
    """Return what was pushed and how."""
    ask = outcome.ask
    tool, first = ask.move.tool, ask.spacings_m[0]
    tips = f"{length_text(tool.tip_width_m, units)} wide, {length_text(tool.tip_depth_m, units)} deep"
    before = len(ask.plan.moves) - 1
    earlier = f" after {before} earlier {'move' if before == 1 else 'moves'}" if before else ""
    earlier += " on a wrecked car" if ask.plan.wreck or ask.plan.start else ""
    far, tilt = length_text(ask.move.opening_m, units), math.degrees(ask.move.tilt_rad)
    car = car_words(ask.plan.car)
    return (
        f"{car[:1].upper()}{car[1:]}{earlier}. {tool.name[0].upper()}{tool.name[1:]}, tips {tips}, "
        f"pushing {tilt:.0f} degrees outboard, the other tip straight across the gap. "
        f"Each place is pushed by itself until something gives, {far} at most, "
        f"on lattices of {length_text(first, units)} and {length_text(ask.spacings_m[1], units)}."
    )


def cell_words(told: Told, units: Units = Units.METRIC) -> str:
    """Return one cell in words: where, and what a push there comes to."""
    cell, first = told.cell, told.first
    seat = first.seat or f"{length_text(cell.depth_m, units)} in"
    edge = EDGE_WORDS[cell.edge].capitalize()
    place = f"{edge}, {length_text(cell.along_m, units)} above the sill, {seat}"
    if not told.settled:
        return f"{place}: not settled. {told.why}"
    words = clause(told.word)
    if first.gave:
        words += f", at {length_text(first.opening_m, units)}"
    return f"{place}: {words}."


def cell_brief(told: Told, units: Units = Units.METRIC) -> str:
    """Return one cell in a few words: where, and its word."""
    edge = EDGE_WORDS[told.cell.edge].capitalize()
    up, into = length_text(told.cell.along_m, units), length_text(told.cell.depth_m, units)
    return f"{edge}, {up} up, {into} in: {told.word}"


def described(outcome: OutcomeMap, units: Units = Units.METRIC) -> tuple[str, ...]:
    """Return the map line by line: each edge and depth from the sill up, places alike run together."""
    grid = outcome.ask.grid
    lines = []
    for edge, column in itertools.product(grid.edges, range(len(grid.depth_m))):
        words = [outcome.told[grid.index(edge, row, column)].word for row in range(len(grid.along_m))]
        seat = depth_words(grid, column, outcome) or "lip"
        depth = length_text(grid.depth_m[column], units)
        lines.append(f"{EDGE_WORDS[edge].capitalize()}, {seat} ({depth} in): {_runs(grid, words, units)}.")
    return tuple(lines)


def _runs(grid: Grid, words: list[str], units: Units) -> str:
    """Return words from the sill up, equal neighbours as one stretch."""
    out, row = [], 0
    for word, group in itertools.groupby(words):
        count = len(list(group))
        low, high = row * grid.tall_m, (row + count) * grid.tall_m
        out.append(f"{word} from {length_text(low, units)} to {length_text(high, units)}")
        row += count
    if len(out) == 1:
        return f"{words[0]} all along"
    return "; ".join(out)


def difference_sentence(apart: MapDifference) -> str:
    """Return the difference of two maps in one sentence."""
    total, count = len(apart.before.told), len(apart.changes)
    if not count:
        return f"All {total} places come out the same on both."
    lead = f"{count} of {total} places come out otherwise, {total - count} the same"
    kinds: dict[tuple[str, str], int] = {}
    for change in apart.changes:
        pair = (change.before, change.after)
        if NOT_SETTLED not in pair:
            kinds[pair] = kinds.get(pair, 0) + 1
    loose = count - sum(kinds.values())
    if not kinds:
        open_words = "one of the two is not settled, so nowhere does one outcome become another"
        return f"{lead}: at each of them {open_words}."
    order = sorted(kinds.items(), key=lambda item: (-item[1], item[0]))
    told = [f"{before} becomes {after} at {number}" for (before, after), number in order]
    if loose:
        told.append(f"at {loose} one of the two is not settled")
    return f"{lead}: {'; '.join(told)}."


def change_words(change: Change, units: Units = Units.METRIC) -> str:
    """Return one changed cell in words."""
    cell = change.cell
    place = f"{EDGE_WORDS[cell.edge].capitalize()}, {length_text(cell.along_m, units)} above the sill"
    return f"{place}, {length_text(cell.depth_m, units)} in: {change.before} becomes {change.after}."
