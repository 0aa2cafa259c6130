"""The side as one structure: front door, rear door and the pillar between them.

The front latch holds the striker on the pillar, the rear hinges hang on its rear wall, and where the doors'
inner bends rested on a rigid rim they rest on the pillar. All else is as it is for one door: the front
hinges, the rear latch and the other pillars stand still, and rocker and rail where a car gives them no wall.
The ties' own offset between door and pillar (some 20 mm across the gap) does not turn with the pillar.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TypeVar

import msgspec
import numpy as np
from numpy.typing import NDArray

from meshes.box import BoxMesh
from meshes.door import DoorMesh
from meshes.nearest import nearest_on_triangles
from meshes.pillar import PillarMesh
from meshes.side import SideMesh
from sim.bond import touch_law
from sim.door_structure import door_structure
from sim.joined import Part, first_nodes, joined
from sim.pillar import PillarBuild, pillar_structure
from sim.plan import Car
from sim.rail import head_on_rail, rail_structure
from sim.rocker import foot_on_rocker, rocker_structure
from sim.structure import Bonds, Slider, Structure, Tie

Held = TypeVar("Held", Tie, Slider)
Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

SEAT_HALF_M = 0.03  # half the side of a striker's or hinge leaf's foot on the pillar, assumed
SEAT_SPOTS = 5
REST_KIND = "pillar rest"

ON_PILLAR = {
    "front latch": "striker_patch",
    "front wedged striker": "striker_patch",
    "rear upper hinge": "upper_hinge_patch",
    "rear lower hinge": "lower_hinge_patch",
}
"""Ties and sliders that hang on the pillar, and the patch that carries them."""


@dataclass(frozen=True)
class SideStructure:
    """The structure, and where each part's nodes begin in it."""

    structure: Structure
    first: dict[str, int]


def side_structure(
    car: Car,
    mesh: SideMesh,
    build: PillarBuild | None = None,
    rail: BoxMesh | None = None,
    rocker: BoxMesh | None = None,
) -> SideStructure:
    """Return both doors and the pillar as one structure; gaps in the bead are the front door's alone.

    ``rail`` and ``rocker`` are those that give: the pillar's head and foot then hang on them, else on what
    stands still.
    """
    plain = rear_car(car)
    build = PillarBuild() if build is None else build
    on_rail = rail is not None and "head" in build.held
    on_rocker = rocker is not None and "foot" in build.held
    gone = ("head",) * on_rail + ("foot",) * on_rocker
    still = replace(build, held=tuple(end for end in build.held if end not in gone)) if gone else build
    parts = [
        Part("front", door_structure(car, mesh.front), mesh.shifts["front"]),
        Part("rear", door_structure(plain, mesh.rear), mesh.shifts["rear"]),
        Part("pillar", pillar_structure(mesh.pillar, still), mesh.shifts["pillar"]),
    ]
    if rail is not None:
        parts.append(Part("rail", rail_structure(car, rail, mesh.front.outboard_sign), np.zeros(3)))
    if rocker is not None:
        parts.append(Part("rocker", rocker_structure(car, rocker, mesh.front.outboard_sign), np.zeros(3)))
    first = first_nodes(parts)
    whole = joined(parts)
    ties = tuple(_hung(tie, whole, mesh.pillar, first["pillar"]) for tie in whole.ties)
    sliders = tuple(_hung(one, whole, mesh.pillar, first["pillar"]) for one in whole.sliders)
    beside = [
        first["front"] + _beside(mesh.front, "latch_edge"),
        first["rear"] + _beside(mesh.rear, "hinge_edge"),
    ]
    rests = [
        _rests(whole, nodes, mesh.pillar, walls, first["pillar"])
        for nodes, walls in zip(beside, (("front", "striker_patch"), REAR_WALL), strict=True)
    ]
    if on_rail:
        assert rail is not None
        ends = (mesh.pillar, first["pillar"]), (rail, first["rail"])
        rests.append(head_on_rail(whole.points, *ends, build))
    if on_rocker:
        assert rocker is not None
        ends = (mesh.pillar, first["pillar"]), (rocker, first["rocker"])
        rests.append(foot_on_rocker(whole.points, *ends, build))
    keep = ~np.isin(whole.rim, np.concatenate(beside))
    structure = replace(
        whole,
        ties=ties,
        sliders=sliders,
        bonds=Bonds.join([whole.bonds, *rests]),
        rim=whole.rim[keep],
        rim_y_m=whole.rim_y_m[keep],
    )
    return SideStructure(structure, first)


def rear_car(car: Car) -> Car:
    """Return the car as its rear door sees it: the bead whole, the latch its own and never wedged."""
    return msgspec.structs.replace(car, bead_gaps=(), latch=car.whole_side.rear_latch, latch_wedge_n=0.0)


REAR_WALL = ("rear", "lower_hinge_patch", "upper_hinge_patch")


def _hung(held: Held, whole: Structure, pillar: PillarMesh, first: int) -> Held:
    """Return a tie or slider with its far end on the pillar, where it belongs there; else as it is.

    Its weights then sum to zero: what it pulls on the door it pulls back on the pillar.
    """
    if held.name not in ON_PILLAR:
        return held
    place = held.weights @ whole.points[held.nodes]
    nodes, weights = pillar_seat(pillar, whole.points, first, ON_PILLAR[held.name], place)
    return replace(
        held,
        nodes=np.concatenate([held.nodes, nodes]),
        weights=np.concatenate([held.weights, -weights]),
    )


def pillar_seat(
    pillar: PillarMesh, points: Floats, first: int, patch: str, place: Floats
) -> tuple[Ints, Floats]:
    """Return nodes and weights (sum 1) of a rigid foot on a patch of the pillar, beside a place [m]."""
    spots = SEAT_HALF_M * ((np.arange(SEAT_SPOTS) + 0.5) / SEAT_SPOTS * 2.0 - 1.0)
    wanted = place + np.array([[0.0, inboard, up] for up in spots for inboard in spots])
    triangles = pillar.surface.triangles_of(patch) + first
    triangle, weights, _ = nearest_on_triangles(wanted, points, triangles)
    nodes, slot = np.unique(triangles[triangle], return_inverse=True)
    total = np.bincount(slot.ravel(), weights.ravel())
    kept = total > 1e-12
    return nodes[kept], total[kept] / total[kept].sum()


def _beside(door: DoorMesh, edge: str) -> Ints:
    """Return the nodes of the inner bend along an upright edge, without the sill's corner."""
    start, end = door.edges[edge]
    first, last = (start, end) if edge == "hinge_edge" else (start + 1, end + 1)
    nodes: Ints = door.wall[-1, first:last]
    return nodes


def _rests(whole: Structure, nodes: Ints, pillar: PillarMesh, walls: Sequence[str], first: int) -> Bonds:
    """Return what keeps a door's inner bend from going further inboard than the pillar beside it does."""
    triangles = np.concatenate([pillar.surface.triangles_of(wall) for wall in walls]) + first
    triangle, weights, _ = nearest_on_triangles(whole.points[nodes], whole.points, triangles)
    corners = triangles[triangle]
    count, origin = len(nodes), first + pillar.surface.node_count
    coefficients = np.zeros((count, 3, 6))
    coefficients[:, 0, 0], coefficients[:, 0, 1:4] = 1.0, -weights
    coefficients[:, 1, 4], coefficients[:, 1, 5] = -whole.outboard_sign, whole.outboard_sign
    apart = whole.points[nodes] - np.einsum("kc,kci->ki", weights, whole.points[corners])
    laws = np.tile(touch_law(pressure=whole.rim_stiffness_n_per_m, offset_m=0.0), (count, 1))
    laws[:, 6] = whole.outboard_sign * apart[:, 1]
    across = np.hypot(apart[:, 0], apart[:, 2])
    return Bonds(
        np.column_stack([nodes, corners, np.full(count, origin), np.full(count, origin + 2)]).astype(
            np.int64
        ),
        coefficients,
        np.zeros(count, bool),
        laws,
        np.zeros(count, np.int64),
        (REST_KIND,),
        np.full(count, np.nan),
        across + whole.rim_width_m,
    )
