"""The pillar between the doors: a tapering closed box whose foot and head end in welded flanges.

At the foot the outer and the inner wall run on straight down, over the rocker's outer face and over the
flange that stands up in its middle; front and rear walls turn outward onto its top. At the head outer and
inner wall lap the roof rail and the other two turn outward under it: a T-joint. A plain foot has its flanges
round the section and one row of spots; real feet flare over 200 to 300 mm of rocker, with two rows of spots
(from memory).

Section sizes: lower 90-140 x 60-100 mm, upper 60-90 x 40-60 mm, from memory.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from meshes.box import (
    WALLS,
    Cut,
    Walls,
    box_walls,
    cut_rows,
    edge_chains,
    ring_sets,
    section,
)
from meshes.flanges import Reach, WeldPoints, make_flanges, weld_points
from meshes.part import FloatArray, Frozen, IntArray, MeshError, Surface, frozen_floats

PARTS = (
    *WALLS[2],
    "striker_patch",
    "lower_hinge_patch",
    "upper_hinge_patch",
    "foot_flange",
    "head_flange",
)
LEAST_ROWS = 8
"""Fewest rings over the pillar: fewer cannot show a fold beside straight metal."""
MAX_NODES = 4000

_RANGES: dict[str, tuple[float, float]] = {
    "foot_width_m": (0.09, 0.26),
    "foot_depth_m": (0.06, 0.14),
    "belt_width_m": (0.06, 0.22),
    "belt_depth_m": (0.045, 0.12),
    "head_width_m": (0.05, 0.15),
    "head_depth_m": (0.035, 0.09),
    "belt_height_m": (0.3, 1.2),
    "upper_height_m": (0.1, 0.9),
    "front_lean_m": (-0.2, 0.2),
    "upper_fore_m": (-0.3, 0.3),
    "upper_inboard_m": (-0.1, 0.4),
    "flange_m": (0.012, 0.06),
    "weld_pitch_m": (0.015, 0.12),
    "foot_flare_m": (0.0, 0.45),
    "foot_lap_m": (0.03, 0.12),
    "foot_rows": (1, 3),
    "striker_height_m": (0.05, 1.1),
    "striker_patch_m": (0.03, 0.3),
    "lower_hinge_height_m": (0.03, 1.1),
    "upper_hinge_height_m": (0.03, 1.1),
    "hinge_patch_m": (0.02, 0.3),
    "spacing_m": (0.008, 0.06),
}


@dataclass(frozen=True)
class PillarShape:
    """Dimensions of the pillar [m] in its own axes: the foot's outer front corner is the origin.

    Parameters
    ----------
    foot_width_m, foot_depth_m, belt_width_m, belt_depth_m, head_width_m, head_depth_m
        Section fore and aft and inboard, at the foot, at the belt and at the head. Foot 90-140 x 60-100 mm,
        head 60-90 x 40-60 mm, from memory; faces wider than 200 mm occur.
    belt_height_m, upper_height_m
        Foot to belt, belt to head.
    front_lean_m
        How far the front edge at the belt stands rearward of the foot's.
    upper_fore_m, upper_inboard_m
        How far the head stands forward and inboard of the belt.
    flange_m
        Width of the flanges at foot and head.
    weld_pitch_m
        Distance between spot welds: 30-60 mm, common practice, no source.
    foot_flare_m
        Length along the rocker that the foot's flanges reach over; 0 is a plain foot. 200-300 mm, from
        memory.
    foot_lap_m
        How far down the laps of a flared foot go over the rocker, assumed.
    foot_rows
        Rows of spots on the flanges of a flared foot: two, from memory.
    striker_height_m, striker_patch_m
        Middle and height of the stiffened patch of the front wall that carries the front door's striker.
    lower_hinge_height_m, upper_hinge_height_m, hinge_patch_m
        The same on the rear wall for the rear door's hinges.
    spacing_m
        Wanted distance between neighbouring nodes, in the mean over the pillar.
    """

    foot_width_m: float = 0.125
    foot_depth_m: float = 0.095
    belt_width_m: float = 0.085
    belt_depth_m: float = 0.070
    head_width_m: float = 0.075
    head_depth_m: float = 0.050
    belt_height_m: float = 0.666
    upper_height_m: float = 0.406
    front_lean_m: float = 0.020
    upper_fore_m: float = 0.063
    upper_inboard_m: float = 0.120
    flange_m: float = 0.028
    weld_pitch_m: float = 0.035
    foot_flare_m: float = 0.0
    foot_lap_m: float = 0.08
    foot_rows: int = 2
    striker_height_m: float = 0.366
    striker_patch_m: float = 0.12
    lower_hinge_height_m: float = 0.166
    upper_hinge_height_m: float = 0.506
    hinge_patch_m: float = 0.07
    spacing_m: float = 0.026

    def check(self) -> None:
        """Raise MeshError with parameter, allowed range and remedy if the pillar cannot be meshed."""
        for name, (low, high) in _RANGES.items():
            _require(name, getattr(self, name), low, high, "choose a value in that range")
        for upper, lower in (("belt", "foot"), ("head", "belt")):
            for side in ("width_m", "depth_m"):
                name, under = f"{upper}_{side}", f"{lower}_{side}"
                _require(
                    name,
                    getattr(self, name),
                    0.0,
                    getattr(self, under),
                    f"a pillar does not grow upwards: make it smaller or raise {under}",
                )
        self._check_heights()
        self._check_foot()
        if 2 * self.weld_pitch_m > self.head_width_m:
            raise MeshError(
                "weld_pitch_m",
                f"is {self.weld_pitch_m} m, a head {self.head_width_m} m wide then has fewer than two spots "
                "on a wall; use a smaller pitch",
            )
        _require(
            "spacing_m",
            self.spacing_m,
            0.0,
            0.5 * self.head_depth_m + 0.01,
            "a wall needs two columns of triangles: use a smaller spacing",
        )

    def _check_heights(self) -> None:
        for name, half in (
            ("striker_height_m", 0.5 * self.striker_patch_m),
            ("lower_hinge_height_m", 0.5 * self.hinge_patch_m),
            ("upper_hinge_height_m", 0.5 * self.hinge_patch_m),
        ):
            _require(
                name,
                getattr(self, name),
                half,
                self.belt_height_m - half,
                "keep the whole patch between foot and belt",
            )
        _require(
            "upper_hinge_height_m",
            self.upper_hinge_height_m,
            self.lower_hinge_height_m + self.hinge_patch_m,
            self.belt_height_m,
            "keep the hinge patches apart: raise this one or lower lower_hinge_height_m",
        )

    def _check_foot(self) -> None:
        if self.foot_rows != round(self.foot_rows):
            raise MeshError("foot_rows", f"is {self.foot_rows}; use 1, 2 or 3 rows of spots")
        if self.foot_flare_m:
            least = self.foot_width_m + 2.0 * self.flange_m
            remedy = "a flare reaches beyond the plain flanges: make it longer, or 0 for none"
            _require("foot_flare_m", self.foot_flare_m, least, _RANGES["foot_flare_m"][1], remedy)

    def flange_reach(self) -> dict[str, Reach]:
        """Return how far the flanges of foot and head go, and their rows of spots."""
        plain = Reach(self.flange_m, self.flange_m)
        wider = 0.5 * (self.foot_flare_m - self.foot_width_m)
        flared = Reach(self.foot_lap_m, wider, wider, self.foot_rows)
        return {"foot": flared if self.foot_flare_m else plain, "head": plain}

    @property
    def height_m(self) -> float:
        """Foot to head [m]."""
        return self.belt_height_m + self.upper_height_m

    def cuts(self) -> list[Cut]:
        """Return the sections at foot, belt and head."""
        fronts = (0.0, self.front_lean_m, self.front_lean_m - self.upper_fore_m)
        outers = (0.0, 0.0, -self.upper_inboard_m)
        widths = (self.foot_width_m, self.belt_width_m, self.head_width_m)
        depths = (self.foot_depth_m, self.belt_depth_m, self.head_depth_m)
        heights = (0.0, self.belt_height_m, self.height_m)
        rows = zip(heights, fronts, outers, widths, depths, strict=True)
        return [Cut(z, (x, y - depth), (x + width, y)) for z, x, y, width, depth in rows]

    def patches(self) -> dict[str, tuple[str, float, float]]:
        """Return each patch's wall, lower and upper end [m]."""
        half, leaf = 0.5 * self.striker_patch_m, 0.5 * self.hinge_patch_m
        return {
            "striker_patch": ("front", self.striker_height_m - half, self.striker_height_m + half),
            "lower_hinge_patch": ("rear", self.lower_hinge_height_m - leaf, self.lower_hinge_height_m + leaf),
            "upper_hinge_patch": ("rear", self.upper_hinge_height_m - leaf, self.upper_hinge_height_m + leaf),
        }


@dataclass(frozen=True, eq=False)
class PillarMesh(Frozen):
    """The meshed pillar; ids are node ids of `surface`.

    Parameters
    ----------
    surface
        Walls, patches and flanges as parts; node sets "start_ring" (foot), "end_ring" (head), each patch, and
        each flange as "foot_outer", "head_rear" ...; chains for the long edges and the flanges' free edges.
    shape
        The dimensions it was built from.
    welds
        Spots of each flange, "foot_outer" ...
    cuts
        Rows of (along, low x, low y, high x, high y) [m] at foot, belt and head.
    """

    surface: Surface
    shape: PillarShape
    welds: Mapping[str, WeldPoints]
    cuts: FloatArray

    def __post_init__(self) -> None:
        """Freeze the cuts."""
        object.__setattr__(self, "cuts", frozen_floats(self.cuts, (None, 5), "cuts"))
        object.__setattr__(self, "welds", dict(self.welds))

    def section_at(self, height_m: float) -> tuple[float, float]:
        """Return width fore and aft and depth inboard [m] at a height above the foot."""
        u0, v0, u1, v1 = section(self.cuts, height_m)
        return u1 - u0, v1 - v0

    def mirrored(self) -> PillarMesh:
        """Return the left-hand pillar: the mirror image in y = 0, every name and order kept."""
        welds = {name: spots.mirrored() for name, spots in self.welds.items()}
        return PillarMesh(self.surface.mirrored(), self.shape, welds, self.cuts)

    @property
    def outboard_sign(self) -> float:
        """+1 on the right-hand side, -1 on the left."""
        outer = self.surface.points[self.surface.nodes_of(("outer",)), 1].mean()
        return (
            1.0
            if float(outer) > float(self.surface.points[self.surface.nodes_of(("inner",)), 1].mean())
            else -1.0
        )


def build_pillar(shape: PillarShape | None = None) -> PillarMesh:
    """Return the mesh of a right-hand pillar; raises MeshError as `PillarShape.check` does."""
    shape = PillarShape() if shape is None else shape
    shape.check()
    cuts = cut_rows(shape.cuts())
    patches = shape.patches()
    stops = sorted(place for _, *ends in patches.values() for place in ends)
    made = box_walls(cuts, 2, shape.spacing_m, stops)
    if len(made.levels) - 1 < LEAST_ROWS:
        raise MeshError("spacing_m", f"{shape.spacing_m} m gives too few rows; use a smaller spacing")
    reach = shape.flange_reach()
    flanges = make_flanges(made, reach, shape.spacing_m)
    points = np.concatenate((made.points, *(item.points for item in flanges.values())))
    if len(points) > MAX_NODES:
        raise MeshError(
            "spacing_m",
            f"{shape.spacing_m} m gives {len(points)} nodes, {MAX_NODES} are allowed; use a larger spacing",
        )
    triangles = np.concatenate((made.triangles, *(item.triangles for item in flanges.values())))
    part = [_wall_parts(made, patches)]
    part += [
        np.full(len(item.triangles), PARTS.index(f"{name[:4]}_flange")) for name, item in flanges.items()
    ]
    sets = {**ring_sets(made), **_patch_sets(made, patches)}
    sets.update({name: np.unique(item.triangles) for name, item in flanges.items()})
    chains = {**edge_chains(made, 2), **{f"{name}_edge": item.edge for name, item in flanges.items()}}
    surface = Surface(points, triangles, np.concatenate(part), PARTS, sets, chains)
    welds = {
        name: weld_points(surface.points, item, shape.weld_pitch_m, reach[name[:4]].spot_rows)
        for name, item in flanges.items()
    }
    return PillarMesh(surface, shape, welds, cuts)


def _wall_parts(made: Walls, patches: Mapping[str, tuple[str, float, float]]) -> IntArray:
    """Return the part of each wall triangle: its wall, or a patch on it."""
    part = made.wall.copy()
    middle = 0.5 * (made.levels[made.strip] + made.levels[made.strip + 1])
    for name, (wall, low, high) in patches.items():
        part[(made.wall == WALLS[2].index(wall)) & (middle > low) & (middle < high)] = PARTS.index(name)
    return part


def _patch_sets(made: Walls, patches: Mapping[str, tuple[str, float, float]]) -> dict[str, IntArray]:
    sets = {}
    for name, (wall, low, high) in patches.items():
        inside = np.flatnonzero((made.levels >= low - 1e-9) & (made.levels <= high + 1e-9))
        rows = made.rows[WALLS[2].index(wall)]
        sets[name] = np.unique(np.concatenate([rows[level] for level in inside]))
    return sets


def _require(name: str, value: float, low: float, high: float, remedy: str) -> None:
    """Raise MeshError unless low <= value <= high."""
    unit = " m" if name.endswith("_m") else ""
    if not (math.isfinite(value) and low - 1e-12 <= value <= high + 1e-12):
        raise MeshError(name, f"is {value}{unit}, allowed are {low:.4g} to {high:.4g}{unit}; {remedy}")
