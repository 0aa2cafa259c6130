"""The sentence after a hold: what was done to the door, what it did then, and what still holds it."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from sim import outcome
from sim.handling import Grasp, around, opened_rad
from sim.plan import Hold

if TYPE_CHECKING:
    from sim.course import UnderWay
    from sim.structure import Structure

Floats = NDArray[np.float64]

STALLED = "stalled"
TURNED_DEG = 2.0  # a door that has turned by less is told as it was, assumed
SANK_M = 0.005  # its latch end has gone up or down by less: as it was, assumed
DONE = {
    "swing": "The {name} was swung by hand",
    "strap": "The {name} is strapped where it is",
    "prop": "The {name} is propped up from the ground",
    "let go": "The {name} is let go",
}
PUSHED = "The {name} was pushed by hand"


def hold_sentence(run: UnderWay, grip: Grasp | None) -> str:
    """Return how the door stands, what holds it and what the ground carries.

    Parameters
    ----------
    run : the move under way, at its end;  grip : where the door was taken hold of; None where it never was
    """
    move: Hold = run.move
    name = f"{move.door} door"
    end = run.ends[1]
    stalled = any(event.kind == STALLED for event in run.events)
    parts = [PUSHED.format(name=name) if stalled else DONE[move.way].format(name=name)]
    if grip is not None:
        parts += _swung(run, grip) if move.way == "swing" else _went(run, grip)
    if stalled:
        parts.append(f"{move.hands_n:.0f} N of hands move it no further")
        if _latched(run):
            parts.append("its latch still holds it")
    for part, force in end.grounded_n.items():
        parts.append(f"the {part} stands on the ground with {force:.0f} N")
    parts += [outcome.rung_words(e.part, e.kind) for e in run.events if e.kind.endswith(" free")]
    if len(parts) == 1 and move.way != "strap":
        parts.append("it stays where it was")
    return f"{'; '.join(parts)}."


def _swung(run: UnderWay, grip: Grasp) -> list[str]:
    turn = math.degrees(opened_rad(grip, run.begin.state.points, run.ends[1].points))
    return [f"it has turned by {turn:.0f}\u00b0"]


def _went(run: UnderWay, grip: Grasp) -> list[str]:
    """Return what a door did that was strapped, propped or let go: swung out or back, sank or rose."""
    before, after = run.begin.state.points, run.ends[1].points
    structure = run.model.structure
    rest = structure.points
    more = math.degrees(opened_rad(grip, rest, after) - opened_rad(grip, rest, before))
    parts = []
    if abs(more) >= TURNED_DEG:
        way = f"it swung back by {-more:.0f}\u00b0"
        parts.append(f"it swung out by {more:.0f}\u00b0" if more > 0.0 else way)
    rise = _rise_m(structure, grip, before, after)
    if abs(rise) >= SANK_M:
        sank = f"its latch end sank by {-1e3 * rise:.0f} mm"
        parts.append(f"its latch end rose by {1e3 * rise:.0f} mm" if rise > 0.0 else sank)
    return parts


def _rise_m(structure: Structure, grip: Grasp, before: Floats, after: Floats) -> float:
    down = around(structure).gravity_m_s2
    return -float((grip.at(after) - grip.at(before)) @ down) / float(np.linalg.norm(down))


def _latched(run: UnderWay) -> bool:
    """Tell whether the latch of the door that is held still ties it."""
    state = run.ends[1].state
    name = "latch" if run.move.door == "front" else f"{run.move.door} latch"
    if state is None:
        return False
    ties = run.network.structure.ties
    return any(tie.name == name and bool(on) for tie, on in zip(ties, state.holding, strict=True))
