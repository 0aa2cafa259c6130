"""Ready builds of the car, by name: whole sets of numbers to start from, and how they differ.

Builds, not makes: none stands for a real vehicle or a year.  Two of them show what has no numbers to stand
on; they say so in their name and wherever it is shown.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

import msgspec

from sim.plan import BeadGap, Car
from sim.problems import PlanError

ILLUSTRATIVE = "illustrative, assumed"
"""Stands in the name of a build whose numbers are there to show an idea and nothing else."""

SALOON = "low saloon"
SHAPES: Mapping[str, str] = MappingProxyType(
    {"tall car": "tall car", "long door": "car with a long front door"}
)
"""What a whole side is called in the name of a build, by its shape, where it is no low saloon."""

# alloy gauges: as stiff in bending as 0.7 and 0.8 mm of steel, t (E_steel / E_alloy)^(1/3); skins of 0.9 to
# 1.1 mm are usual (from memory)
ALLOY_SKIN_M, ALLOY_INNER_M = 0.0010, 0.00115
ROPED_PITCH_M = 0.2  # "roped with a few welds": common practice, no source for the pitch
LATCH_STATION_M = 2.0  # length along the hem level with the latch, about
WEDGED_N, JAMMED_N = 6.0e3, 12.0e3  # assumed: below and above what a pull on the handle overcomes
# cold: the adhesive's part of 60 J/m, about 28, falls to a quarter when the crack jumps (a factor of four is
# reported for one epoxy); the hem's fold stays; strength half as high again, assumed
COLD_SEAM = {"seam_energy_j_per_m": 39.0, "seam_strength_n_per_m": 7500.0}


def _build(name: str, words: str, **numbers: Any) -> tuple[str, Car]:
    return name, Car(name=f"{SALOON}, {words}", build=name, **numbers)


BUILDS: Mapping[str, Car] = MappingProxyType(
    dict((
        _build("bonded steel", "bonded steel door"),
        _build("welded steel", "welded steel door", seam="welded"),
        _build("mixed steel", "bonded steel door with a few welds", seam="mixed", weld_pitch_m=ROPED_PITCH_M),
        _build(
            "bonded alloy",
            "bonded alloy door",
            metal="alloy",
            skin_thickness_m=ALLOY_SKIN_M,
            inner_thickness_m=ALLOY_INNER_M,
        ),
        _build(
            "bead gap at the latch",
            "bonded steel door, bead missing at the latch",
            bead_gaps=(BeadGap(LATCH_STATION_M - 0.06, 0.12),),
        ),
        _build(
            "uneven bead",
            "bonded steel door, uneven bead",
            seam_variation_ratio=0.3,
            seam_correlation_m=0.1,
            seam_seed=1,
        ),
        _build("half latched", "bonded steel door, half latched", latch="half"),
        _build("latch held open", "bonded steel door, latch held open", latch="open"),
        _build(
            "wedged striker",
            "bonded steel door, striker wedged, the handle frees the pawl",
            latch="jammed",
            latch_wedge_n=WEDGED_N,
        ),
        _build(
            "jammed latch",
            "bonded steel door, latch jammed",
            latch="jammed",
            latch_wedge_n=JAMMED_N,
        ),
        _build("no bar", "bonded steel door without a bar", bar=False),
        _build(
            f"composite skin ({ILLUSTRATIVE})",
            f"composite skin ({ILLUSTRATIVE})",
            metal="composite",
            skin_thickness_m=0.0025,
        ),
        _build(
            f"cold brittle seam ({ILLUSTRATIVE})",
            f"cold brittle seam ({ILLUSTRATIVE})",
            **COLD_SEAM,
        ),
    ))
)  # fmt: skip
"""Name of a build and its car."""


def builds_named(name: str) -> Car:
    """Return a ready build.

    Raises
    ------
    PlanError
        When there is none of that name: with the list.
    """
    if name not in BUILDS:
        raise PlanError("car.build", f"is {name!r}, which is not a ready build; use one of: {listed()}")
    return BUILDS[name]


def listed() -> str:
    """Return the names of all builds in one line."""
    return ", ".join(f"'{name}'" for name in BUILDS)


def build_defaults(name: str) -> dict[str, Any]:
    """Return a build as plain values, the ground on which a plan file changes single fields."""
    raw: dict[str, Any] = msgspec.to_builtins(builds_named(name))
    return raw


def car_words(car: Car) -> str:
    """Return a car's name as it is shown: an illustrative build says so, whatever it was renamed to.

    A build's own name says of which shape the side is; a name of one's own stays.
    """
    name = car.name
    if car.extent == "side" and name.startswith(f"{SALOON},"):
        name = SHAPES.get(car.whole_side.shape, SALOON) + name.removeprefix(SALOON)
    if car.extent == "side" and car.whole_side.lies != "on its wheels":
        name = f"{name}, on its side, {car.whole_side.lies}"
    if ILLUSTRATIVE in car.build and ILLUSTRATIVE not in name:
        return f"{name} ({ILLUSTRATIVE})"
    return name


def labelled(car: Car, words: str) -> str:
    """Return words about a car; those about an illustrative build begin by saying so."""
    if ILLUSTRATIVE not in car.build:
        return words
    return f"{ILLUSTRATIVE[0].upper()}{ILLUSTRATIVE[1:]}: {words}" if words else f"({ILLUSTRATIVE})"


def car_notes(car: Car) -> tuple[str, ...]:
    """Return what must be said beside any result of a car, in sentences; empty for most."""
    if ILLUSTRATIVE not in car.build:
        return ()
    return (f"The build '{car.build}' shows an idea: its numbers are assumed, nothing stands behind them.",)
