"""The plan in words: one card a move, with what became of it."""

from __future__ import annotations

import math
from dataclasses import dataclass

from sim.crush import SHAPE_WORDS
from sim.plan import BeltPoint, Crush, EdgePoint, Move, Spread, Squeeze
from sim.units import Units, length_text
from ui.state.session import Session
from ui.state.solve_queue import Job
from ui.state.timeline import opening_of
from ui.state.wording import EFFECT_WORDS, in_units, told

EDGE_WORDS = {"latch_edge": "latch edge", "hinge_edge": "hinge edge", "sill_edge": "sill edge"}
LIP_WORDS = {"outer": "outer lip", "inner": "inner lip", "both": "both lips"}


@dataclass(frozen=True)
class Card:
    """One move in words.

    Parameters
    ----------
    title : what is done and where
    place : the numbers of it
    outcome : what the metal did and what came of it; empty before it was run
    effect : what that means for the plan, one or two words
    selected : whether the next push is this move
    """

    title: str
    place: str
    outcome: str
    effect: str
    selected: bool


def title_of(move: Move) -> str:
    """Return what a move does and where, in a few words."""
    if isinstance(move, Squeeze):
        return "Squeeze across the panel"
    if isinstance(move, Crush):
        return f"Crush by a {SHAPE_WORDS[move.shape]}"
    if isinstance(move, Spread):
        if isinstance(move.door, BeltPoint):
            return "Spread at the belt"
        return f"Spread at the {EDGE_WORDS[move.door.edge]}"
    return "Let the tool off"


def tilt_words(tilt_rad: float) -> str:
    """Return a tilt in degrees and in words."""
    degrees = round(math.degrees(tilt_rad))
    if degrees == 0:
        return "0\u00b0, straight along"
    return f"{abs(degrees)}\u00b0 {'outward' if degrees > 0 else 'inward'}"


def place_of(move: Move, units: Units) -> str:
    """Return the numbers of a move in one line."""
    if isinstance(move, Squeeze):
        along, up = length_text(move.along_m, units), length_text(move.height_m, units)
        return f"{along} from the hinge edge, {up} up; closes {length_text(opening_of(move), units)}"
    if isinstance(move, Crush):
        size, along, up = (length_text(v, units) for v in (move.size_m, move.along_m, move.height_m))
        goes = length_text(move.travel_m, units)
        return f"{size} wide, {along} from the hinge edge, lower end {up} up; goes in {goes}"
    if not isinstance(move, Spread):
        return "The metal springs back to what is left of its shape"
    if isinstance(move.door, EdgePoint):
        way = "along" if move.door.edge == "sill_edge" else "up"
        along = length_text(move.door.along_m, units)
        where = f"{length_text(move.door.depth_m, units)} deep, {along} {way}"
    else:
        where = f"{LIP_WORDS[move.door.lip]}, {length_text(move.door.along_m, units)} along"
    return f"{where}, tilt {tilt_words(move.tilt_rad)}; opens {length_text(opening_of(move), units)}"


def cards(session: Session) -> tuple[Card, ...]:
    """Return the cards of the plan shown."""
    units = session.view.options.units
    found = []
    for index, move in enumerate(session.plan.moves):
        record = session.record(index)
        result = record.result if record is not None else None
        if result is not None:
            whole = told(result.sentence, result.plan_effect)
            outcome = whole.partition(". ")[0].rstrip(".") + "."
            effect = EFFECT_WORDS.get(result.plan_effect, result.plan_effect)
        else:
            outcome, effect = _on_the_way(session, index), ""
        chosen = index == session.selection.now.move
        found.append(Card(title_of(move), place_of(move, units), in_units(outcome, units), effect, chosen))
    return tuple(found)


def _on_the_way(session: Session, index: int) -> str:
    """Return what is said of a move without a result; empty where it has not begun."""
    request = session.queue.current
    if request is not None and request.job is not Job.PREPARE:
        return "Under way" if index == max(session.solved_count, request.first) else ""
    return "Stopped on the way: no result" if session.timeline.frames_of(index) else ""
