"""The side and the person inside as a form shows them: grouped, in the reader's units, only what applies.

A field is named as a plan file names it: of the car, or below ``whole_side``. Ranges are the plan file's.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

import msgspec

from sim.carcheck import RANGES, THINNEST_RAIL_M, check_car
from sim.cut_plan import PillarCut
from sim.plan import Car, CutSpread, Hold, Latch, Move, PillarSpot, Squeeze, Strip, Support
from sim.problems import PlanError
from sim.units import Units, length_text
from sim.whole_side import SIDE_RANGES, THINNEST_ROCKER_M, WholeSide
from ui.state.car_fields import COUNT, LENGTH, Choice, Number, one_line

MPA, KILOGRAM, DEGREE = "MPa", "kg", "\u00b0"
SCALES = {MPA: 1.0e-6, DEGREE: math.degrees(1.0)}
"""What a number is shown in over what it is in SI, where that is no length and no force."""


@dataclass(frozen=True)
class SideNumber(Number):
    """A number of the side.

    usual : what is usual, with a gap for each of ``at`` [SI], which stand there in the reader's units
    """

    usual: str = ""
    at: tuple[float, ...] = ()

    @property
    def span(self) -> tuple[float, float]:
        """Lowest and highest value, as in a plan file [SI]."""
        return (RANGES if self.name in RANGES else SIDE_RANGES)[self.name][:2]

    def shown(self, value: float, units: Units) -> float:
        """Return a value as the reader sees it."""
        return value * SCALES[self.kind] if self.kind in SCALES else super().shown(value, units)

    def written(self, value: float, units: Units) -> str:
        """Return a value as it is written, without its unit."""
        decimals, _ = self.look(units)
        text = f"{self.shown(value, units):.{decimals}f}"
        return text.rstrip("0").rstrip(".") if "." in text else text

    def usual_words(self, units: Units) -> str:
        """Return what is usual in the reader's units."""
        return self.usual.format(*(self.written(value, units) for value in self.at))


def _length(
    name: str, words: str, usual: str, *at: float, decimals: int = 0, step: float = 10.0
) -> SideNumber:
    return SideNumber(name, words, LENGTH, decimals, step, usual, at)


def _sheet(name: str, words: str, usual: str, *at: float) -> SideNumber:
    return _length(name, words, usual, *at, decimals=2, step=0.1)


def _yield(name: str, words: str) -> SideNumber:
    return SideNumber(name, words, MPA, 0, 50.0, "{} is mild, {} press-hardened", (350.0e6, 1.0e9))


def _angle(name: str, words: str, usual: str, *at: float) -> SideNumber:
    return SideNumber(name, words, DEGREE, 0, 5.0, usual, tuple(math.radians(value) for value in at))


def _yes(name: str, words: str, yes: str, no: str) -> Choice:
    return Choice(name, words, ((True, yes), (False, no)))


Field = Choice | SideNumber

LATCHED = (("full", "fully latched"), ("half", "half latched"), ("open", "held open"))
SIZES = (
    ("female_p5", "woman, 5th"),
    ("female_p50", "woman, 50th"),
    ("female_p95", "woman, 95th"),
    ("male_p5", "man, 5th"),
    ("male_p50", "man, 50th"),
    ("male_p95", "man, 95th"),
)
"""Sizes of the survey named in `meshes.occupant`."""

GROUPS: tuple[tuple[str, tuple[Field, ...]], ...] = (
    ("How much of the car", (
        Choice("extent", "Worked out", (("door", "front door alone"), ("side", "whole side"))),
        Choice("side", "Side of the car", (("right", "right"), ("left", "left"))),
        Choice("shape", "Car", (("low car", "low car"), ("tall car", "tall car"),
                                ("long door", "long front door"))),
        _length("lattice_spacing_m", "Triangles of the metal", "{} is quick, {} finer and slower",
                0.06, 0.045, step=5.0),
    )),
    ("The person inside", (
        Choice("occupant", "Size, percentile", SIZES),
        Choice("occupant_seat", "Sits", (("front", "in front"), ("rear", "in the rear"))),
        _angle("occupant_lean_rad", "Trunk leans back", "0 is upright, {} usual", 25.0),
        _angle("occupant_inboard_rad", "Trunk leans away from the door", "0 is upright"),
        _length("occupant_gap_m", "Hip to inner panel", "{} to {} beside a sound door", 0.08, 0.15),
    )),
    ("Pillar between the doors", (
        _sheet("pillar_pressed_m", "Outer part", "{} to {} have been published", 0.00135, 0.0027),
        _yield("pillar_pressed_yield_pa", "Yield stress, outer part"),
        _sheet("pillar_closing_m", "Inner wall", "{} to {} is usual", 0.001, 0.0015),
        _yield("pillar_closing_yield_pa", "Yield stress, inner wall"),
        _length("pillar_bow_m", "Inner wall bowed by", "0 is flat, {} to {} a pressed wall", 0.01, 0.02,
                decimals=1, step=1.0),
        _length("soft_foot_m", "Softer foot, up to", "0 is one grade, {} to {} a softer foot", 0.2, 0.4),
        _yield("soft_foot_yield_pa", "Yield stress, softer foot"),
        _length("spot_pitch_m", "Spots apart, foot and head", "{} to {} is usual", 0.03, 0.06, step=5.0),
        _sheet("spot_sheet_m", "Thinnest sheet under a spot", "{} to {} is usual", 0.001, 0.0015),
        _yes("head_held", "Head at the roof rail", "still welded", "torn off"),
    )),
    ("Pillar's foot and rocker", (
        _length("foot_flare_m", "Foot flares over", "0 is no flare, {} to {} is usual", 0.2, 0.3),
        _length("foot_lap_m", "Foot laps over the rocker by", "{} to {}, assumed", 0.06, 0.1, step=5.0),
        SideNumber("foot_rows", "Rows of spots on the flare", COUNT, 0, 1.0, "two rows are usual"),
        _sheet("foot_stiffener_m", "Stiffener in the foot", "0 is none, {} to {} a usual one", 0.001, 0.002),
        _length("foot_stiffener_reach_m", "Stiffener reaches up", "{} to {}, assumed", 0.05, 0.15),
        _sheet("rocker_wall_m", "Rocker's wall", "0 stands still, {} to {} a usual one", 0.001, 0.002),
        _yield("rocker_yield_pa", "Yield stress, rocker"),
        _yes("rocker_bulkheads", "Bulkheads under the pillar", "in the rocker", "none"),
    )),
    ("Roof rail", (
        _sheet("rail_wall_m", "Wall of the rail", "0 stands still, {} to {} a usual one", 0.001, 0.002),
        _yield("rail_yield_pa", "Yield stress, rail"),
        Choice("rail_held", "Rail held", (("both", "front and rear"), ("front", "in front alone"),
                                     ("rear", "in the rear alone"))),
    )),
    ("Rear door, and what is left on", (
        Choice("rear_latch", "Rear latch", LATCHED),
        _yes("trim", "Trim", "still on", "off"),
        _yes("seals", "Seals", "still on", "off"),
        _yes("glass", "Panes", "still in", "out"),
    )),
    ("How the car stands", (
        Choice("lies", "Lies", (("on its wheels", "on its wheels"),
                                ("this side up", "this side up"),
                                ("this side down", "this side down"))),
        Choice("stands_on", "Stands on", (("wheels", "its wheels"), ("blocks", "blocks too"))),
        SideNumber("car_kg", "The car weighs", KILOGRAM, 0, 50.0, "{} to {} is usual", (1200.0, 1800.0)),
    )),
)  # fmt: skip
"""Headings and their fields, in their order."""

SIDE_FIELDS: tuple[Field, ...] = tuple(field for _, fields in GROUPS for field in fields)
BY_NAME = {field.name: field for field in SIDE_FIELDS}

ROOMY_M = 0.06
"""Triangles with which rail, rocker and flare all find room among the nodes that can be worked out."""

OF_ONE_DOOR = frozenset({"extent", "side", "lattice_spacing_m", "rail_wall_m", "rail_yield_pa", "rail_held"})
"""What matters where the front door alone is worked out."""
HANGS_ON: dict[str, tuple[str, ...]] = {
    "soft_foot_m": ("soft_foot_yield_pa",),
    "foot_flare_m": ("foot_lap_m", "foot_rows"),
    "foot_stiffener_m": ("foot_stiffener_reach_m",),
    "rocker_wall_m": ("rocker_yield_pa", "rocker_bulkheads"),
    "rail_wall_m": ("rail_yield_pa", "rail_held"),
}
"""Numbers that are nothing at zero, and what matters only where they are not."""
_ASKED_OF = {below: above for above, fields in HANGS_ON.items() for below in fields}
LAID_OUT_BY = frozenset({
    "extent", "shape", "lattice_spacing_m", "spot_pitch_m", "pillar_bow_m", "foot_flare_m", "foot_lap_m",
    "foot_rows", "rocker_wall_m", "rocker_bulkheads", "rail_wall_m", "hem_width_m", "shut_face_depth_m",
})  # fmt: skip
"""Fields that lay out the metal: whether it fits is tried before the car is taken."""

_METRES = re.compile(r"(\d+(?:\.\d+)?)[ \u00a0]m\b")

ONE_DOOR = (
    "Only the front door gives here; pillars, rocker and rear door stand still, and a man of middling size "
    "sits in front. The whole side gives all of them, and takes minutes where a door takes seconds."
)
SURVEY = (
    "Sizes are percentiles of a published survey of soldiers (ANSUR II): a real patient may be larger. "
    "Room is a distance to metal; nothing here says anything of injury."
)


def value_of(car: Car, name: str) -> Any:
    """Return a field's value, of the car or of its whole side."""
    return getattr(car if name in Car.__struct_fields__ else car.whole_side, name)


def with_value(car: Car, name: str, value: object) -> Car:
    """Return the car with one field changed, unchecked."""
    if name in Car.__struct_fields__:
        return msgspec.structs.replace(car, **{name: value})
    side: WholeSide = msgspec.structs.replace(car.whole_side, **{name: value})
    return msgspec.structs.replace(car, whole_side=side)


def applies(car: Car, name: str) -> bool:
    """Tell whether a field matters on this car."""
    if car.extent == "door" and name not in OF_ONE_DOOR:
        return False
    above = _ASKED_OF.get(name)
    return above is None or float(value_of(car, above)) > 0.0


def changed(car: Car, name: str, value: object, units: Units) -> Car:
    """Return the car with one field of the side changed, and what has to go with it.

    Raises
    ------
    PlanError
        In a sentence in the reader's units, with the remedy, when the car would make no sense.
    """
    field = BY_NAME[name]
    if isinstance(field, SideNumber):
        assert isinstance(value, float | int)
        _check_number(field, float(value), units)
    other = with_value(car, name, value)
    if other.rail_wall_m == 0.0 and other.rail_held != "both":
        other = msgspec.structs.replace(other, rail_held="both")
    check_car(other)
    check_fit(other, name, units)
    return other


def _check_number(field: SideNumber, value: float, units: Units) -> None:
    low, high = field.span
    unit = field.unit(units)
    said = f"{field.written(value, units)} {unit}".rstrip()
    if not (math.isfinite(value) and low <= value <= high):
        span = hint(field, units)
        words = f"{said} is too little; use {span}" if value < low else f"{said} is too much; use {span}"
        raise PlanError(field.name, words)
    least = {"rocker_wall_m": THINNEST_ROCKER_M, "rail_wall_m": THINNEST_RAIL_M}.get(field.name, 0.0)
    if 0.0 < value < least:
        thin = f"{field.written(least, units)} {unit}"
        words = f"{said} is too thin to be worked out; use 0, where it stands still, or {thin} and more"
        raise PlanError(field.name, words)


def check_fit(car: Car, name: str, units: Units) -> None:
    """Try whether a whole side can be laid out with one field changed, about half a second.

    Raises
    ------
    PlanError
        In a sentence in the reader's units, where it cannot.
    """
    if car.extent == "door" or name not in LAID_OUT_BY:
        return
    # Imported here: the mechanics take their time to load, and the window shows before.
    from sim.side import side_meshes

    try:
        side_meshes(car)
    except PlanError as problem:
        if "lattice_spacing_m" not in str(problem):
            raise
        triangles = BY_NAME["lattice_spacing_m"]
        assert isinstance(triangles, SideNumber)
        least = f"{triangles.written(ROOMY_M, units)} {triangles.unit(units)}"
        words = f"So much metal that gives takes too many triangles; first make them {least} or larger, above"
        raise PlanError("lattice_spacing_m", words) from problem


def hint(field: SideNumber, units: Units) -> str:
    """Return the allowed range and what is usual, in the reader's units."""
    low, high = (field.written(end, units) for end in field.span)
    usual = field.usual_words(units)
    span = f"{low} to {high} {field.unit(units)}".rstrip()
    return f"{span}: {usual}" if usual else span


def trouble_words(problem: PlanError, units: Units) -> str:
    """Return what is wrong with what was written, and the remedy, as it stands below the field."""
    if problem.field in BY_NAME:
        return f"{problem.message}."
    field = BY_NAME.get(problem.field.rpartition(".")[2])
    words = one_line(problem) if field is None else f"{field.words} {problem.message}."
    return _METRES.sub(lambda found: length_text(float(found[1]), units), words)


def needs_side(move: Move) -> bool:
    """Tell whether a move needs the whole side: what it is about is not there on a door alone."""
    if isinstance(move, CutSpread | Hold | Strip | Support):
        return True
    if isinstance(move, Latch):
        return move.door == "rear"
    if isinstance(move, Squeeze) and move.panel == "rear":
        return True
    places = [getattr(move, name) for name in move.__struct_fields__]
    return any(
        isinstance(place, PillarSpot | PillarCut)
        or getattr(place, "panel", "front") == "rear"
        or getattr(place, "seat", "") == "ground"
        for place in places
    )


def left_out(car: Car, moves: Iterable[Move]) -> str:
    """Return which moves of a plan cannot be made on this car, in a sentence; "" where all can."""
    if car.extent == "side":
        return ""
    found = [str(k) for k, move in enumerate(moves, 1) if needs_side(move)]
    if not found:
        return ""
    which = ", ".join(found)
    if len(found) == 1:
        return f"Move {which} needs the whole side: take that again, or take the move out of the plan."
    return f"Moves {which} need the whole side: take that again, or take the moves out of the plan."


def change_words(name: str) -> str:
    """Return the label of a change for the list of steps."""
    return f"Changed: {BY_NAME[name].words.lower()}"
