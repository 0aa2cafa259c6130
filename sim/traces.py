"""Traces: a solved plan as its events and a few curves, small enough to keep by the hundred and ask later.

A trace is read from records alone.  Its curves go by the frames of a move, rounded to six digits, which is
far finer than anything that is asked of them.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

import msgspec

from sim.plan import Plan
from sim.record import Event, Frame, MoveRecord

DIGITS = 6

Reading = Callable[[Frame], float | None]


def _ram(name: str) -> Reading:
    return lambda frame: None if frame.ram is None else float(getattr(frame.ram, name))


CURVES: Mapping[str, Reading] = {
    "opening_m": lambda frame: frame.opening_m,
    "force_n": lambda frame: frame.force_n,
    "clearance_m": lambda frame: frame.clearance.distance_m,
    "latch_demand_ratio": lambda frame: frame.latch_demand_ratio,
    "parted_length_m": lambda frame: frame.parted_length_m,
    "torn_length_m": lambda frame: frame.torn_length_m,
    "sharp_edge_count": lambda frame: float(frame.sharp_edge_count),
    "skin_mid_outboard_m": lambda frame: frame.skin_mid_outboard_m,
    "inner_mid_outboard_m": lambda frame: frame.inner_mid_outboard_m,
    "upper_skin_outboard_m": lambda frame: frame.upper_skin_outboard_m,
    "upper_inner_outboard_m": lambda frame: frame.upper_inner_outboard_m,
    "belt_skin_outboard_m": lambda frame: frame.belt_skin_outboard_m,
    "exit_width_m": lambda frame: frame.exit_width_m,
    "spots_gone": lambda frame: float(frame.spots_gone),
    "ram_angle_rad": _ram("angle_rad"),
    "ram_margin_rad": _ram("margin_rad"),
    "ram_sink_m": _ram("sink_m"),
    "ram_slid_m": _ram("slid_m"),
}
"""What is kept of every frame, by name; a curve that a move does not have is left out."""
CLEARANCE = "clearance_{}_m"
"""Name of the curve of the clearance to one part of the body, on a whole side."""
BODY_PARTS = ("head", "trunk", "hip", "thigh", "lower leg")


def clearance_curve(part: str) -> str:
    """Return the name of the curve of the clearance to one part of the body."""
    return CLEARANCE.format(part.replace(" ", "_"))


class MoveTrace(msgspec.Struct, frozen=True):
    """One move of a run.

    move : its type's tag;  seats, metal, effect : in words, as in the result
    curves : by name of `CURVES`, a value a frame, all equally long
    ledger_j : the move's own books by line;  failed_count : increments that did not converge
    cut : what a cut did, as numbers: open (1 or 0), left_m, cut_m, room_m
    """

    move: str
    seats: tuple[str, ...] = ()
    events: tuple[Event, ...] = ()
    metal: tuple[str, ...] = ()
    effect: str = ""
    curves: dict[str, tuple[float, ...]] = {}
    ledger_j: dict[str, float] = {}
    failed_count: int = 0
    cut: dict[str, float] = {}


class RunTrace(msgspec.Struct, frozen=True):
    """One run: what was drawn, by path in the plan, and what became of it.

    moves : empty for a run that could not be made;  why : the reason, in a sentence
    """

    index: int
    values: dict[str, float]
    moves: tuple[MoveTrace, ...] = ()
    why: str = ""


def _rounded(value: float) -> float:
    return float(f"{value:.{DIGITS}g}")


def _curves(frames: Sequence[Frame]) -> dict[str, tuple[float, ...]]:
    readings: dict[str, list[float | None]] = {
        name: [read(frame) for frame in frames] for name, read in CURVES.items()
    }
    for part in frames[-1].part_clearance_m:
        readings[clearance_curve(part)] = [frame.part_clearance_m.get(part) for frame in frames]
    out = {}
    for name, values in readings.items():
        known = [value for value in values if value is not None]
        if not known:
            continue
        last, whole = known[0], []
        for value in values:  # a ram that hangs loose is told nothing of: it stays as it was
            last = last if value is None else value
            whole.append(_rounded(last))
        out[name] = tuple(whole)
    return out


def _move(plan: Plan, index: int, record: MoveRecord) -> MoveTrace:
    result = record.result
    assert result is not None
    cut = result.cut
    return MoveTrace(
        move=str(plan.moves[index].__struct_config__.tag),
        seats=result.seats,
        events=result.events,
        metal=result.metal,
        effect=result.plan_effect,
        curves=_curves(record.frames),
        ledger_j={name: _rounded(value) for name, value in result.ledger_j.items()},
        failed_count=result.solver.failed_count,
        cut={}
        if cut is None
        else {"open": float(cut.open), "left_m": cut.left_m, "cut_m": cut.cut_m, "room_m": cut.room_m},
    )


def traced(
    plan: Plan, records: Sequence[MoveRecord], index: int = 0, values: Mapping[str, float] | None = None
) -> RunTrace:
    """Return a solved plan as a trace."""
    moves = tuple(_move(plan, k, record) for k, record in enumerate(records))
    return RunTrace(index, dict(values or {}), moves)
