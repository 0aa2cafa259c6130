"""The car's fields as a form shows them: plain word, unit, range, and what a change of one brings with it.

A number's range and the word on what is usual come from the check that a plan file meets.
"""

from __future__ import annotations

from dataclasses import dataclass

import msgspec

from sim.builds import BUILDS, car_notes
from sim.carcheck import LEAST_GAP_M, RANGES, check_car, hem_length_m
from sim.plan import BeadGap, Car
from sim.problems import PlanError
from sim.twins import WORDS, felt
from sim.units import Units, force, length

LENGTH, FORCE, COUNT = "length", "force", "count"
"""Kinds of number in the reader's units, and whole ones; any other kind is a unit as it stands."""

GAP_START, GAP_LENGTH = "gap_start_m", "gap_length_m"
"""The first gap of the bead, as two numbers; a length of zero is no gap."""

FIRST_GAP = BeadGap(1.94, 0.0)
"""Where a gap begins when its length is given first: at the latch."""

WEDGE_N = 12.0e3
"""What wedges the striker when a latch is first said to be jammed."""


@dataclass(frozen=True)
class Choice:
    """A field with a few words to choose from: (value, words) in order."""

    name: str
    words: str
    options: tuple[tuple[object, str], ...]


@dataclass(frozen=True)
class Number:
    """A field that is a number.

    kind : LENGTH, FORCE, COUNT or the unit it is written in;  decimals, step : as shown in metric units
    """

    name: str
    words: str
    kind: str
    decimals: int
    step: float

    def unit(self, units: Units) -> str:
        """Return the unit as shown."""
        if self.kind == LENGTH:
            return length(0.0, units)[1]
        if self.kind == FORCE:
            return force(0.0, units)[1]
        return "" if self.kind == COUNT else self.kind

    def shown(self, value: float, units: Units) -> float:
        """Return a value as the reader sees it."""
        if self.kind == LENGTH:
            return length(value, units)[0]
        return force(value, units)[0] if self.kind == FORCE else value

    def meant(self, shown: float, units: Units) -> float:
        """Return the SI value of what the reader wrote, to seven digits of it."""
        value = shown / self.shown(1.0, units)
        return float(f"{value:.7g}")

    def look(self, units: Units) -> tuple[int, float]:
        """Return decimals and step in the reader's units."""
        if units is Units.METRIC or self.kind not in (LENGTH, FORCE):
            return self.decimals, self.step
        size = self.step * self.shown(1.0, units) / self.shown(1.0, Units.METRIC)
        return (self.decimals + 2, float(f"{size:.1g}")) if self.kind == LENGTH else (0, float(f"{size:.1g}"))


BUILD = Choice("build", "Ready build", (("", "none"), *((name, name) for name in BUILDS)))
FIELDS: tuple[Choice | Number, ...] = (
    Choice(
        "seam",
        "Seam",
        (
            ("bonded", "bonded bead"),
            ("welded", "spot welded"),
            ("mixed", "a bead and spots"),
        ),
    ),
    Number("seam_energy_j_per_m", "Seam's energy", "J/m", 0, 5.0),
    Number("seam_strength_n_per_m", "Seam's strength", "N/m", 0, 500.0),
    Number("seam_variation_ratio", "Unevenness", "of the mean", 2, 0.05),
    Number("seam_correlation_m", "changes over", LENGTH, 0, 10.0),
    Number("seam_seed", "which hem", COUNT, 0, 1.0),
    Number(GAP_LENGTH, "Gap in the bead", LENGTH, 0, 10.0),
    Number(GAP_START, "begins at", LENGTH, 0, 10.0),
    Number("weld_pitch_m", "Spots apart", LENGTH, 0, 5.0),
    Number("weld_peel_n", "Spot in peel", FORCE, 1, 0.1),
    Number("weld_shear_n", "Spot in shear", FORCE, 1, 0.1),
    Number("weld_energy_j", "Spot's energy", "J", 1, 0.5),
    Choice("metal", "Metal", (("steel", "steel"), ("alloy", "aluminium alloy"))),
    Number("skin_thickness_m", "Skin", LENGTH, 2, 0.05),
    Number("inner_thickness_m", "Inner panel", LENGTH, 2, 0.05),
    Number("hem_width_m", "Width of the hem", LENGTH, 1, 1.0),
    Number("shut_face_depth_m", "Depth of the shut face", LENGTH, 0, 5.0),
    Choice(
        "latch",
        "Latch",
        (
            ("full", "fully latched"),
            ("half", "half latched"),
            ("open", "held open"),
            ("jammed", "jammed"),
        ),
    ),
    Number("latch_wedge_n", "Striker wedged", FORCE, 1, 1.0),
    Number("handle_n", "Pull on handle", FORCE, 2, 0.05),
    Number("latch_strength_ratio", "Latch's strength", "\u00d7 the rule", 2, 0.25),
    Number("hinge_strength_ratio", "Hinges' strength", "\u00d7 the rule", 2, 0.25),
    Number("hinge_depth_m", "Hinges' axis, from the lip in", LENGTH, 0, 5.0),
    Number("fitting_give_m", "Latch and hinges bend", LENGTH, 0, 1.0),
    Choice("bar", "Bar", ((True, "in the door"), (False, "none"))),
    Number("bar_foot_strength_n", "Bar's feet hold", FORCE, 1, 1.0),
)
"""The form's fields in their order; those of the side and the person are in `ui.state.side_fields`."""

BUILDS_LEAVE = (
    "lattice_spacing_m",
    "side",
    "extent",
    "whole_side",
    "rail_wall_m",
    "rail_yield_pa",
    "rail_held",
)
"""What a ready build of a door says nothing of: it stays as it was."""

SEAM_BEAD = ("seam_energy_j_per_m", "seam_strength_n_per_m", GAP_START, GAP_LENGTH)
SEAM_SPOTS = ("weld_pitch_m", "weld_peel_n", "weld_shear_n", "weld_energy_j")
COMPOSITE = ("composite", "composite skin (illustrative, assumed)")
"""Shown as a metal only while the car's build is the one that has it."""


def value_of(car: Car, name: str) -> float | str | bool:
    """Return a field's value; the gap's two numbers are the first gap's."""
    gap = car.bead_gaps[0] if car.bead_gaps else FIRST_GAP
    if name == GAP_START:
        return gap.start_m
    if name == GAP_LENGTH:
        return gap.length_m
    value: float | str | bool = getattr(car, name)
    return value


def applies(car: Car, name: str) -> bool:
    """Tell whether a field matters on this car: spots on a bonded seam do not."""
    if name == GAP_START and not car.bead_gaps:
        return False
    if name in SEAM_BEAD:
        return car.seam != "welded"
    if name in SEAM_SPOTS:
        return car.seam != "bonded"
    if name in ("seam_correlation_m", "seam_seed"):
        return car.seam_variation_ratio > 0.0
    if name == "bar_foot_strength_n":
        return car.bar
    return car.latch == "jammed" if name == "handle_n" else True


def span(name: str) -> tuple[float, float]:
    """Return the lowest and highest value of a number."""
    if name == GAP_START:
        return 0.0, hem_length_m() - LEAST_GAP_M
    if name == GAP_LENGTH:
        return 0.0, hem_length_m()
    return (0.0, 2.0**31 - 1.0) if name == "seam_seed" else RANGES[name][:2]


def hint(number: Number, units: Units) -> str:
    """Return the allowed range and what is usual, in the reader's units."""
    low, high = (number.shown(end, units) for end in span(number.name))
    usual = f" ({RANGES[number.name][2]})" if number.name in RANGES else ""
    if number.name == GAP_START:
        usual = " (along the hem: down the hinge edge, along the sill, up the latch edge)"
    if number.name == GAP_LENGTH:
        usual = " (0 is no gap)"
    return f"{number.words}: {low:.6g} to {high:.6g} {number.unit(units)}{usual}"


def changed(car: Car, name: str, value: object) -> Car:
    """Return the car with one field changed, and what has to go with it.

    Raises
    ------
    PlanError
        In a sentence for the reader, when the car would make no sense.
    """
    if name == "build" and value:
        kept = {field: getattr(car, field) for field in BUILDS_LEAVE}
        other = msgspec.structs.replace(BUILDS[str(value)], **kept)
    elif name in (GAP_START, GAP_LENGTH):
        assert isinstance(value, float | int)
        other = _with_gap(car, name, float(value))
    else:
        other = msgspec.structs.replace(car, **{name: value})
    if name == "seam" and value == "welded":
        other = msgspec.structs.replace(other, bead_gaps=())
    if other.latch == "jammed" and name == "latch" and other.latch_wedge_n == 0.0:
        other = msgspec.structs.replace(other, latch_wedge_n=WEDGE_N)
    check_car(other)
    return other


def _with_gap(car: Car, name: str, value: float) -> Car:
    """Return the car with its first gap moved, made longer or shorter, or closed; the others stay."""
    first = car.bead_gaps[0] if car.bead_gaps else FIRST_GAP
    start, size = (value, first.length_m) if name == GAP_START else (first.start_m, value)
    if size < LEAST_GAP_M:
        return msgspec.structs.replace(car, bead_gaps=car.bead_gaps[1:])
    gap = BeadGap(start, min(size, hem_length_m() - start))
    return msgspec.structs.replace(car, bead_gaps=(gap, *car.bead_gaps[1:]))


def note_on(car: Car) -> str:
    """Return what is said below the build: that it is illustrative, how it was changed, gaps not shown."""
    words = list(car_notes(car))
    if car.build:
        apart = felt(BUILDS[car.build], car)
        if apart:
            words.append("Changed since: " + ", ".join(d.words for d in apart) + ".")
    if len(car.bead_gaps) > 1:
        words.append(f"The bead has {len(car.bead_gaps)} gaps; the first is shown here.")
    return " ".join(words)


def change_words(name: str) -> str:
    """Return the label of a change for the list of steps."""
    return _CHANGES.get(name) or f"Changed: {WORDS.get(name, name)}"


def one_line(problem: PlanError) -> str:
    """Return a refusal as one sentence with a full stop."""
    line = " ".join(str(problem).split())
    return line if line.endswith(".") else f"{line}."


_CHANGES = {
    "build": "Took a ready build",
    "seam": "Changed the seam",
    "metal": "Changed the metal",
    "skin_thickness_m": "Changed the skin's thickness",
    GAP_START: "Moved the bead's gap",
    GAP_LENGTH: "Changed the bead's gap",
}
