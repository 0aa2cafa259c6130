"""A ram made ready: its numbers, where its head and foot stand, what friction holds there.

Every place inside the car is assumed within remembered ranges of small saloons and counted from the doors'
outer face and the doors' lowest point.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from meshes.nearest import nearest_on_triangles
from meshes.occupant import Capsule, clearance
from meshes.pillar import PillarMesh
from sim import materials
from sim.base import Wall
from sim.head import Plate
from sim.plan import BaseSpot, PillarSpot, Press, Ram, Surface
from sim.problems import PlanError
from sim.ranges import Range, check_ranges

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

# force across over force pressed with at which a head slides, from memory: about .15 on paint, wet, or
# rubber, .3 smooth on bare or grooved on painted steel, .6 grooved on bare steel.  Points that have lost
# their bite are as grooved ones.
FRICTION: dict[str, float] = {
    "flat on rubber": 0.15,
    "flat on painted": 0.15,
    "flat on bare": 0.3,
    "waffle on rubber": 0.15,
    "waffle on painted": 0.3,
    "waffle on bare": 0.6,
    "pointed on rubber": 0.6,
    "pointed on painted": 0.6,
    "pointed on bare": 0.6,
}
FOOT_FRICTION = 0.6  # a foot plate is grooved and stands on scraped metal: from memory
POINTS, POINT_M = 4, 0.008  # points of a pointed head, width of one where it stands in the sheet, assumed
OFF_SPOT_M = 0.02  # a place further than this from the sheet is not on it

# far rocker's and far pillar's inner walls and the tunnel's upper edge on the near side: inboard of the
# doors' outer face, height, width of wall between its bends; assumed
BASES: dict[str, tuple[float, float, float]] = {
    "far_rocker": (1.50, -0.07, 0.130),
    "far_pillar": (1.52, 0.40, 0.110),
    "tunnel_edge": (0.65, 0.10, 0.100),
}
TUNNEL_SLOPE = 1.0  # the edge's two faces share the foot evenly: its normal leans by 45 degrees

RAM_RANGES: dict[str, Range] = {
    "head_m": (0.02, 0.2, "50 to 75 mm is usual"),
    "plate_m": (0.02, 0.4, "a head's size, or a plate of 0.1 to 0.3 m that spreads the load"),
    "hinge_m": (0.0, 0.1, "10 to 30 mm, assumed"),
    "closed_m": (0.2, 1.5, "0.3 to 0.7 m is usual"),
    "piece_m": (0.0, 1.0, "0 is none"),
}
FOOT_RANGES: dict[str, Range] = {
    "rearward_m": (-1.0, 1.0, "0 is straight across from the head"),
    "raised_m": (-0.3, 1.0, "0 is its usual height"),
    "inboard_m": (0.0, 2.0, "0 is its usual place"),
    "wall_m": (0.0005, 0.006, "1.0 to 2.0 mm is usual"),
    "rib_m": (0.0, 0.006, "0 is none, 1.0 to 1.5 mm usual"),
}
HEAD_RANGES: dict[str, Range] = {
    "height_m": (0.0, 1.6, "from the pillar's foot to its head"),
    "off_m": (-0.2, 0.2, "0 is the wall's middle"),
}
RAM_RADIUS_M = 0.04  # half a ram's thickness, from memory: 70 to 100 mm
LINE_POINTS = 61
LONGEST_M = 1.0  # of one press


@dataclass(frozen=True)
class Spot:
    """A place on the metal.

    rows : shape (m,), where the triangles an end there may touch stand in the structure
    triangles : shape (m, 3), these triangles, as torn and cut so far
    nodes, shares : shape (3,), the metal under its middle;  word : the part
    """

    rows: Ints
    triangles: Ints
    nodes: Ints
    shares: Floats
    word: str

    def middle(self, points: Floats) -> Floats:
        """Return where its middle is now, shape (3,) [m]."""
        place: Floats = self.shares @ points[self.nodes]
        return place


@dataclass(frozen=True)
class Stand:
    """A base on the rigid car: its place (3,) [m], the wall that dents, its normal (3,) towards the ram.

    floored : whether a floor under it carries what the foot presses down with
    """

    place: Floats
    wall: Wall
    normal: Floats
    floored: bool
    word: str


@dataclass(frozen=True)
class ReadyRam:
    """A press made ready on the metal as it is.

    head : where the head is set;  foot : the base, or a place on the metal
    friction, foot_friction : force across over force pressed with at which each slides
    """

    move: Press
    head: Spot
    foot: Stand | Spot
    friction: float
    foot_friction: float = FOOT_FRICTION

    @property
    def plate(self) -> Plate:
        """The head as a plate; points do not let it roll."""
        ram = self.move.ram
        return Plate(0.5 * ram.head_m, 0.0 if ram.head == "pointed" else ram.hinge_m)

    def length_left_m(self, apart_m: float) -> float:
        """Return how much further the ram can be driven out between ends so far apart [m]."""
        ram = self.move.ram
        return ram.closed_m + ram.piece_m + sum(ram.stage_m) - apart_m


def friction_of(head: str, surface: Surface) -> float:
    """Return force across over force pressed with at which a kind of head slides on a surface."""
    return FRICTION[f"{head} on {surface}"]


def stage_of(ram: Ram, out_m: float) -> int:
    """Return which stage moves when the ram is driven out by ``out_m``, from 0."""
    ends = np.cumsum(ram.stage_m)
    return min(int(np.searchsorted(ends, out_m + 1.0e-9, side="right")), len(ends) - 1)


def force_limit_n(ram: Ram, out_m: float) -> float:
    """Return the most the ram can push with when driven out by ``out_m`` [N]; it drops with every stage."""
    return float(ram.stage_n[stage_of(ram, out_m)])


def check_ram(ram: Ram) -> None:
    """Raise PlanError naming the field and the remedy for a number out of range."""
    check_ranges(RAM_RANGES, ram, "ram")
    if len(ram.stage_m) != len(ram.stage_n) or not ram.stage_m:
        raise PlanError("ram.stage_n", "needs as many forces as ram.stage_m has strokes, at least one")
    if not all(math.isfinite(x) and 0.01 <= x <= 1.0 for x in ram.stage_m):
        raise PlanError("ram.stage_m", f"is {list(ram.stage_m)}; use 0.01 to 1 m for each stage")
    if not all(math.isfinite(x) and 1.0e3 <= x <= 1.0e6 for x in ram.stage_n):
        raise PlanError("ram.stage_n", f"is {list(ram.stage_n)}; use 1e3 to 1e6 N for each stage")


def pillar_middle(pillar: PillarMesh, place: PillarSpot, path: str) -> tuple[float, float]:
    """Return how far aft and up a place on a pillar lies in its own axes [m]; PlanError off the wall."""
    check_ranges(HEAD_RANGES, place, path)
    cuts = pillar.cuts
    if not cuts[0, 0] <= place.height_m <= cuts[-1, 0]:
        raise PlanError(
            f"{path}.height_m", f"is {place.height_m} m: the pillar is {cuts[-1, 0]:.3g} m high; use less"
        )
    low, high = (float(np.interp(place.height_m, cuts[:, 0], cuts[:, k])) for k in (1, 3))
    if abs(place.off_m) > 0.5 * (high - low):
        raise PlanError(
            f"{path}.off_m",
            f"is {place.off_m} m: the wall is {high - low:.3f} m wide there; use half of that at most",
        )
    return 0.5 * (low + high) + place.off_m, place.height_m


def on_pillar(pillar: PillarMesh, rows: Ints, triangles: Ints, place: PillarSpot) -> Spot:
    """Return a place on a pillar's inner wall; PlanError off it.

    Parameters
    ----------
    rows : shape (m,), where the pillar's triangles stand in the structure
    triangles : shape (k, 3), the structure's, as torn and cut so far
    """
    aft, up = pillar_middle(pillar, place, "head")
    # where the wall stands at that height and width, however far inboard: sought in its own plane
    surface, flat = pillar.surface, np.array([1.0, 0.0, 1.0])
    inner = np.flatnonzero(surface.triangle_part == surface.part_index("inner"))
    target = np.array([[aft, 0.0, up]])
    row, shares, _ = nearest_on_triangles(target, surface.points * flat, surface.triangles[inner])
    return Spot(rows, triangles[rows], triangles[rows[inner[int(row[0])]]], shares[0], "pillar")


def on_sheet(
    points: Floats, sheet: Ints, rows: Ints, triangles: Ints, target: Floats, word: str
) -> Spot:  # fmt: skip
    """Return the place on a sheet nearest to a point (3,) [m].

    Parameters
    ----------
    points, sheet : of the part at rest, shape (n, 3) [m] and (m, 3)
    rows, triangles : as `on_pillar`

    Raises
    ------
    PlanError
        When the point lies off the sheet.
    """
    row, shares, distance = nearest_on_triangles(target[None], points, sheet)
    if float(distance[0]) > OFF_SPOT_M:
        raise PlanError("head", f"lies {1e3 * float(distance[0]):.0f} mm off the {word}: it is in the air")
    return Spot(rows, triangles[rows], triangles[rows[int(row[0])]], shares[0], word)


def room_m(ends: Floats, occupant: tuple[Capsule, ...]) -> tuple[float, str]:
    """Return the least distance from a ram between two ends (2, 3) to the occupant [m], and to which part."""
    share = np.linspace(0.0, 1.0, LINE_POINTS)[:, None]
    gap = clearance(ends[1] + share * (ends[0] - ends[1]), occupant)
    _, part = np.unravel_index(int(gap.argmin()), gap.shape)
    return float(gap.min()) - RAM_RADIUS_M, occupant[int(part)].name


def base_stand(foot: BaseSpot, ram: Ram, head: Floats, sign: float) -> Stand:
    """Return a base for a ram whose head stands at a place (3,) [m]; ``sign`` +1 where outboard is +y."""
    check_ranges(FOOT_RANGES, foot, "foot")
    inboard, height, width = BASES[foot.base]
    inboard = foot.inboard_m if foot.inboard_m > 0.0 else inboard
    place = np.array([head[0] + foot.rearward_m, -sign * inboard, height + foot.raised_m])
    edge = foot.base == "tunnel_edge"
    # the other face of an edge stands behind the foot edge-on
    rib = max(foot.rib_m, foot.wall_m) if edge else foot.rib_m
    wall = Wall(foot.wall_m, width, materials.PATCH_STEEL, ram.plate_m, ram.plate_m, rib)
    normal = np.array([0.0, sign, TUNNEL_SLOPE if edge else 0.0])
    floored = foot.base == "far_rocker" and foot.raised_m <= 0.5 * ram.plate_m
    return Stand(place, wall, normal / np.linalg.norm(normal), floored, foot.base.replace("_", " "))
