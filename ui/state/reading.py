"""What the reading shows at one moment, put together from frame and result; no rule of mechanics here."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from sim.outcome import limit
from sim.units import Units
from ui.state.room_now import RoomNow, room_now
from ui.state.timeline import Timeline
from ui.state.wording import event_words, in_units, told

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.plan import Car
    from sim.record import Clearance, Frame, MoveResult, Rung

RUNGS_SHOWN = 6
STILL_M = 1e-6
"""Tips that went less have not been opened [m]."""
LEAST_J = 0.5
"""Less is written as nothing."""

WORK = "work of the tips"
"""The ledger's line for what was put in; the other lines say where it went."""

LEDGER_WORDS = {
    "stored": "springs back when let off",
    "weight": "lifting what has weight",
    "folding skin": "folding the outer skin",
    "folding inner": "folding the inner panel",
    "folding bar": "folding the bar",
    "folding pillar": "folding the pillar",
    "folding rail": "folding the roof rail",
    "folding rocker": "folding the rocker",
    "seam peel": "peeling the seam",
    "seam slip": "shearing the seam",
    "pads": "pads and seals",
    "tear": "tearing the sheet",
    "cut": "cutting",
    "latch and hinges": "latch and hinges",
    "bar feet": "the bar's feet",
    "friction": "friction",
    "base": "denting what the ram stands on",
    "viscous": "slow flow (model)",
    "drop": "dropped",
    "released in a jump": "let go in a jump",
    "gap": "not accounted for",
}
ON_A_SIDE = {"seam peel": "peeling seam and spots", "seam slip": "shearing seam and spots"}
"""The same where a pillar's spots are in those lines too."""

FORCES = {"body": "Force of the body", "ram": "Force of the ram", "tips": "Force of the tips"}
"""Heading over the force, by what gives it."""


@dataclass(frozen=True)
class Share:
    """One line of the ledger: where work went."""

    words: str
    energy_j: float


@dataclass(frozen=True)
class Reading:
    """One moment in words and numbers.

    Parameters
    ----------
    sentence : the one sentence (empty before anything was pushed)
    rungs : the parts nearest to giving, the nearest first
    shares : where the work of this move went, the largest first; what is too little for a line is left out
    work_j : what the tool has put in since the move began
    sprung_j : what the metal has given back since then besides: springing back, sinking
    opening_m, force_n : of this moment
    curve : (opening, force) of the move's moments, () where no tool pushes or opens; cursor its index there
    pressed : whether a body is pressed in: the opening is its travel then
    ram : whether a ram pushes in this move: the opening is how far it is out
    shut : whether ladder, work and force are kept shut
    clearance : nearest metal to the occupant, and by how much it changed since the start
    sharp_edges : raw edges that tears and blades have left so far
    cautions : restraint parts still hidden that blades have met so far, in this move and those before
    room : room by body part and exit width at all moments; None where nobody sits there, or it is kept shut
    """

    sentence: str = ""
    rungs: tuple[Rung, ...] = ()
    shares: tuple[Share, ...] = ()
    work_j: float = 0.0
    sprung_j: float = 0.0
    opening_m: float = 0.0
    force_n: float = 0.0
    curve: tuple[tuple[float, float], ...] = ()
    marks: tuple[tuple[float, float, str], ...] = ()
    cursor: int = 0
    clearance: Clearance | None = None
    clearance_change_m: float = 0.0
    pressed: bool = False
    ram: bool = False
    shut: bool = False
    sharp_edges: int = 0
    cautions: tuple[str, ...] = ()
    room: RoomNow | None = None

    @property
    def kind(self) -> str:
        """What gives the force: a key of `FORCES`."""
        return "body" if self.pressed else "ram" if self.ram else "tips"

    @property
    def spent_j(self) -> float:
        """What went somewhere in this move: the tool's work and what the metal gave back [J]."""
        return max(self.work_j, 0.0) + self.sprung_j


def read(
    timeline: Timeline,
    result: MoveResult | None,
    live_words: str,
    start: Frame | None,
    units: Units = Units.METRIC,
    car: Car | None = None,
    model: DoorModel | None = None,
) -> Reading:
    """Return the reading of the moment shown.

    Parameters
    ----------
    timeline : the moments
    result : the result of the move, if the moment is its last
    live_words : the clause for a moment on the way
    start : the untouched start, to say what changed
    units : what the sentence is written in
    car : whose room is told, None for no room;  model : the same car's, to tell what stands in the way out
    """
    frame = timeline.frame
    if frame is None:
        return Reading()
    frames = timeline.frames_of(timeline.move) if timeline.move != -1 else ()
    curve = () if at_rest(frames) else tuple((item.opening_m, item.force_n) for item in frames)
    marks = tuple(
        (event.opening_m, event.force_n, event_words(event)) for item in frames for event in item.events
    )
    cursor = next((i for i, item in enumerate(frames) if item is frame), 0)
    books = books_of(frame, frames[0] if frames else frame)
    change = frame.clearance.distance_m - start.clearance.distance_m if start is not None else 0.0
    return Reading(
        sentence=in_units(
            told(result.sentence, result.plan_effect) if result is not None else live_words, units
        ),
        rungs=nearest_rungs(frame.ladder),
        shares=shares_of(books, side=bool(frame.part_clearance_m)),
        work_j=books.get(WORK, 0.0),
        sprung_j=sprung_j(books),
        opening_m=frame.opening_m,
        force_n=frame.force_n,
        curve=curve,
        marks=marks,
        cursor=cursor,
        clearance=frame.clearance,
        clearance_change_m=change,
        pressed=frame.barrier is not None,
        ram=any(item.ram is not None for item in frames),
        sharp_edges=frame.sharp_edge_count,
        cautions=cautions_met(timeline),
        room=None if car is None else room_now(timeline, car, model),
    )


def at_rest(frames: Sequence[Frame]) -> bool:
    """Tell whether no tool pushes or opens at any moment of a move: what it stands at is left from before."""
    return all(
        frame.force_n == 0.0 and abs(frame.opening_m - frames[0].opening_m) < STILL_M for frame in frames
    )


def edges_words(count: int) -> str:
    """Return how many sharp edges there are in words, "" where there is none."""
    return f"Sharp edges: {count}" if count else ""


def cautions_met(timeline: Timeline) -> tuple[str, ...]:
    """Return what blades have met behind trim up to the moment shown, each once, in its order."""
    met: dict[str, None] = {}
    for move in range(timeline.move + 1):
        for frame in timeline.frames_of(move):
            met.update(dict.fromkeys(event.part for event in frame.events if event.kind == "caution"))
            if frame is timeline.frame:
                break
    return tuple(met)


def left_behind(reading: Reading) -> str:
    """Return sharp edges and cautions so far, a line each; "" where there is none of either."""
    met = f"Cautions so far: {', '.join(reading.cautions)}" if reading.cautions else ""
    return "\n".join(part for part in (edges_words(reading.sharp_edges), met) if part)


def nearest_rungs(ladder: tuple[Rung, ...]) -> tuple[Rung, ...]:
    """Return the rungs nearest to happening, the nearest first, at most `RUNGS_SHOWN`."""
    ordered = sorted(ladder, key=lambda rung: (-rung.demand_ratio, rung.part))
    return tuple(ordered[:RUNGS_SHOWN])


def books_of(frame: Frame, first: Frame) -> dict[str, float]:
    """Return the books of a move so far: what has been entered since its first moment [J]."""
    return {name: value - first.ledger_j.get(name, 0.0) for name, value in frame.ledger_j.items()}


def sprung_j(books: Mapping[str, float]) -> float:
    """Return what the metal has given back, by springing back or by its weight [J]."""
    return sum(max(-books.get(name, 0.0), 0.0) for name in ("stored", "weight"))


def shares_of(books: Mapping[str, float], *, side: bool = False) -> tuple[Share, ...]:
    """Return the lines above one per cent of what went anywhere, none below half a joule, largest first."""
    words = LEDGER_WORDS | ON_A_SIDE if side else LEDGER_WORDS
    lines = {name: value for name, value in books.items() if name != WORK}
    least = max(0.01 * sum(value for value in lines.values() if value > 0.0), LEAST_J)
    kept = sorted(((v, n) for n, v in lines.items() if v > least), reverse=True)
    return tuple(Share(words.get(name, name), value) for value, name in kept)


def clearance_told(frame: Frame, start: Frame | None) -> Clearance | None:
    """Return the clearance where it has changed by as much as a sentence would tell, else None."""
    if start is None or not math.isfinite(frame.clearance.distance_m):
        return None
    change = frame.clearance.distance_m - start.clearance.distance_m
    return frame.clearance if abs(change) >= limit("clearance_m") else None
