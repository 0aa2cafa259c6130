"""Setting a structure among ground, gravity and the rest of the car: what weighs, stands and may touch.

Masses of what a door carries and figures of wheels and blocks are from memory or assumed, said beside each.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from meshes.body import BodyStub
from meshes.box import Cut
from meshes.door import DoorMesh
from meshes.side import SideMesh, member_cuts
from sim.problems import PlanError
from sim.structure import Beam, Structure
from sim.surround import (
    BODY_ARM_M,
    GRAVITY_M_S2,
    Body,
    Carried,
    Check,
    Edges,
    Ground,
    Lying,
    Stand,
    Support,
    Surround,
    gravity,
)
from sim.whole_side import SIDE_RANGES

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

# what a door carries beside its sheets, from memory; with 15-17 kg of sheet 26-28 kg a front door
GLASS_KG = 3.5  # 0.35 m^2 of 4 mm glass at 2500 kg/m^3
REGULATOR_KG = 2.5  # rails, cable drum and motor
LOCK_KG = 1.2  # latch, rods, outer handle
TRIM_KG = 3.5  # lining, armrest, loudspeaker
SEALS_KG = 1.5  # seals and wiring, along the hem

FRONT_SHARE = 0.6  # of the weight on the front wheels: 55-65 % in cars driven at the front, from memory
WHEEL_N_PER_M = 22.0e3  # suspension 20-30 kN/m in series with a tyre of about 200, from memory
TYRE_ACROSS_N_PER_M = 1.0e5  # a braked tyre pushed sideways or along, from memory
TYRE_FRICTION_RATIO = 0.7  # rubber on asphalt, from memory
AXLES_M = (-0.60, 2.10)  # of the hinge edge, invented
TRACK_M = (0.15, 1.65)  # inboard of the door's lip, near and far wheel, invented
BLOCK_N_PER_M = 2.0e6  # a stack of timber on its bed, assumed
BLOCK_SHARE = 0.7  # of the weight, once the car has been let down on its blocks, assumed
BLOCK_FRICTION_RATIO = 0.4  # timber on steel and asphalt, from memory
BLOCKS_M = (0.10, 1.90)  # of the hinge edge, under the rockers, invented
BAR_N = 1.0e8  # E A of the bars that hold the body's nodes rigid: numerical

RIGID_FROM = 10
"""Parts 0 front door, 1 rear door, 2 pillar, 3 and 4 rail and rocker that give; rigid members from here."""
FRONT, REAR, PILLAR, RAIL, ROCKER = 0, 1, 2, 3, 4


def carried_by_door(
    mesh: DoorMesh, first: int = 0, *, glass: bool = True, trim: bool = True
) -> tuple[Carried, ...]:
    """Return what a door carries beside its metal, hung on its inner panel, latch patch and hem."""
    surface = mesh.surface

    def even(name: str, kg: float, nodes: Ints) -> Carried:
        return Carried(name, kg, nodes + first, np.full(len(nodes), 1.0 / len(nodes)))

    panel = surface.nodes_of(("inner_panel",))
    parts = [
        even("regulator", REGULATOR_KG, surface.nodes["inner_mid"]),
        even("lock", LOCK_KG, np.unique(surface.nodes["latch_plate"])),
        even("seals", SEALS_KG, mesh.hem_inner),
    ]
    if glass:
        parts.append(even("glass", GLASS_KG, panel))
    if trim:
        parts.append(even("trim", TRIM_KG, panel))
    return tuple(parts)


@dataclass(frozen=True)
class Rigid:
    """A member that stands still, a closed surface: points (k, 3) [m], triangles (m, 3) facing outwards."""

    points: Floats
    triangles: Ints


def rigid_of_body(body: BodyStub) -> dict[str, Rigid]:
    """Return pillars, rocker and rail round one door."""
    return {
        name: Rigid(surface.points, surface.triangles)
        for name, surface in body.surfaces.items()
        if name != "flange"
    }


def rigid_of_side(mesh: SideMesh) -> dict[str, Rigid]:
    """Return front and rear pillar, rocker and rail of a whole side, as plain as they can be told."""
    sign = mesh.front.outboard_sign
    return {name: _hull(axis, cuts, sign) for name, (axis, cuts) in member_cuts(mesh.shape).items()}


def _stands_still(mesh: SideMesh, first: Mapping[str, int]) -> dict[str, Rigid]:
    """Return the members of a side that stand still: a rail or rocker that is sheet is none of them."""
    members = rigid_of_side(mesh)
    gone = {name for word, name in (("rail", "roof_rail"), ("rocker", "rocker")) if word in first}
    return {name: one for name, one in members.items() if name not in gone}


def _hull(axis: int, cuts: Sequence[Cut], sign: float) -> Rigid:
    """Return the closed hull over rectangular sections along an axis."""
    others = [i for i in range(3) if i != axis]
    rings = []
    for cut in cuts:
        (a, b), (c, d) = cut.low, cut.high
        for u, v in ((a, b), (c, b), (c, d), (a, d)):
            point = np.empty(3)
            point[axis], point[others[0]], point[others[1]] = cut.along_m, u, v
            rings.append(point)
    points = np.array(rings)
    quads = [
        (4 * k + i, 4 * k + (i + 1) % 4, 4 * k + 4 + (i + 1) % 4, 4 * k + 4 + i)
        for k in range(len(cuts) - 1)
        for i in range(4)
    ]
    last = 4 * (len(cuts) - 1)
    quads += [(3, 2, 1, 0), (last, last + 1, last + 2, last + 3)]
    q = np.array(quads)
    triangles = np.concatenate([q[:, [0, 1, 2]], q[:, [0, 2, 3]]])
    points *= [1.0, sign, 1.0]
    a, b, c = (points[triangles[:, i]] for i in range(3))
    volume = float(np.einsum("ki,ki->", a, np.cross(b, c)))
    return Rigid(points, triangles if volume > 0.0 else triangles[:, ::-1])


def edge_nodes(mesh: DoorMesh) -> Ints:
    """Return the nodes of a door that may press on what is beside it: lip, shut face, inner bend.

    The lip is that of the inner structure: a skin that has come off there presses on nothing.  Along the
    hinge edge it is left out: real hinges turn about a line near or outboard of it, these half-way down the
    shut face, so that a lip would strike the pillar in front that in a car it clears.
    """
    last = len(mesh.wall) - 1
    start, end = mesh.edges["hinge_edge"]
    hinge = mesh.wall[[last // 2, last], start : end + 1]
    rest = mesh.wall[[0, last // 2, last], end + 1 :]
    out: Ints = np.unique(np.concatenate([hinge.ravel(), rest.ravel()]))
    return out


def _with_rigid(structure: Structure, members: Mapping[str, Rigid]) -> tuple[Structure, Ints, Ints]:
    """Return the structure with the members' points as nodes that stand still; their triangles and whose."""
    points, triangles, whose = [structure.points], [], []
    count = len(structure.points)
    for k, member in enumerate(members.values()):
        triangles.append(member.triangles + count)
        whose.append(np.full(len(member.triangles), RIGID_FROM + k))
        points.append(member.points)
        count += len(member.points)
    old = np.zeros(structure.points.shape, bool) if structure.fixed is None else structure.fixed
    fixed = np.concatenate([old, np.ones((count - len(old), 3), bool)])
    grown = replace(structure, points=np.concatenate(points), fixed=fixed)
    return grown, np.concatenate(triangles).astype(np.int64), np.concatenate(whose)


def stands_of(support: Support, mass_kg: float, sign: float, ground_z_m: float) -> tuple[Stand, ...]:
    """Return what the car stands on: its wheels, or wheels and blocks under the rockers."""
    low, high, _ = SIDE_RANGES["car_kg"]
    if not low <= mass_kg <= high:
        raise PlanError(
            "car.whole_side.car_kg", f"is {mass_kg}; use {low:.0f} to {high:.0f} kg (1200 to 1800 is usual)"
        )
    blocks = BLOCK_SHARE if support == "blocks" else 0.0
    weight = mass_kg * GRAVITY_M_S2
    out = []
    for axle, x, share in zip(("front", "rear"), AXLES_M, (FRONT_SHARE, 1.0 - FRONT_SHARE), strict=True):
        for word, y in zip(("near", "far"), TRACK_M, strict=True):
            carried = 0.5 * share * (1.0 - blocks) * weight
            place = np.array([x, -sign * y, ground_z_m])
            out.append(
                Stand(
                    f"{axle} {word} wheel",
                    place,
                    WHEEL_N_PER_M,
                    TYRE_ACROSS_N_PER_M,
                    carried,
                    TYRE_FRICTION_RATIO,
                )
            )
    if support == "blocks":
        near, far = TRACK_M
        # the blocks' shares leave the centre of mass where it is
        middle = FRONT_SHARE * AXLES_M[0] + (1.0 - FRONT_SHARE) * AXLES_M[1]
        back = float(np.clip((middle - BLOCKS_M[0]) / (BLOCKS_M[1] - BLOCKS_M[0]), 0.0, 1.0))
        for x, share in zip(BLOCKS_M, (1.0 - back, back), strict=True):
            for word, y in (("near", near), ("far", far)):
                out.append(
                    Stand(
                        f"{word} block at {x:.2f} m",
                        np.array([x, -sign * y, ground_z_m]),
                        BLOCK_N_PER_M,
                        BLOCK_N_PER_M,
                        0.5 * share * blocks * weight,
                        BLOCK_FRICTION_RATIO,
                    )
                )
    return tuple(out)


def _with_body(
    structure: Structure, mass_kg: float, stands: tuple[Stand, ...], origin: Floats
) -> tuple[Structure, Body]:
    """Return the structure with the body's four nodes, held rigid by six bars, and the body."""
    first = len(structure.points)
    arm = BODY_ARM_M * np.array([1.0, structure.outboard_sign, 1.0])
    arms = np.concatenate([np.zeros((1, 3)), np.diag(arm)])
    nodes = first + np.arange(4)
    fixed = np.zeros(structure.points.shape, bool) if structure.fixed is None else structure.fixed
    bars = tuple(
        Beam(f"body {i}{j}", nodes[[i, j]], BAR_N, 1.0, np.inf, "folding bar", nodes)
        for i in range(4)
        for j in range(i + 1, 4)
    )
    grown = replace(
        structure,
        points=np.concatenate([structure.points, origin + arms]),
        fixed=np.concatenate([fixed, np.zeros((4, 3), bool)]),
        beams=(*structure.beams, *bars),
    )
    return grown, Body(nodes, origin, arm, mass_kg, stands)


def _ground(lying: Lying, sign: float, ground_z_m: float, outermost_m: float) -> Ground:
    if lying == "on its wheels":
        return Ground(np.array([0.0, 0.0, 1.0]), ground_z_m)
    if lying == "this side down":
        return Ground(np.array([0.0, -sign, 0.0]), -outermost_m)
    far = TRACK_M[1] + TRACK_M[0]
    return Ground(np.array([0.0, sign, 0.0]), -far)


def door_among(
    structure: Structure,
    mesh: DoorMesh,
    body: BodyStub,
    *,
    ground_z_m: float | None = None,
    lying: Lying = "on its wheels",
    edges: bool = True,
    weight: bool = True,
    loads: Sequence[Carried] | None = None,
) -> Structure:
    """Return one door's structure among the rigid body round it, under weight and over the ground.

    Parameters
    ----------
    ground_z_m : height of the ground; None is no ground
    edges : whether its edges press on the members beside them
    weight : whether anything weighs
    loads : what it carries; None is `carried_by_door`
    """
    sign = structure.outboard_sign
    touching = None
    if edges:
        structure, rigid, whose = _with_rigid(structure, rigid_of_body(body))
        nodes = edge_nodes(mesh)
        none = np.zeros(0, np.int64)
        touching = Edges(nodes, np.full(len(nodes), FRONT), none, none, rigid, whose)
    outermost = float((sign * structure.points[mesh.surface.nodes_of(("outer_skin",)), 1]).max())
    around = Surround(
        gravity(lying, sign) if weight else np.zeros(3),
        tuple(carried_by_door(mesh) if loads is None else loads),
        None if ground_z_m is None else _ground(lying, sign, ground_z_m, outermost),
        edges=touching,
    )
    return replace(structure, surround=around)


def side_among(
    structure: Structure,
    first: Mapping[str, int],
    mesh: SideMesh,
    *,
    lying: Lying = "on its wheels",
    support: Support = "wheels",
    car_kg: float = 1400.0,
    glass: bool = True,
    trim: bool = True,
) -> Structure:
    """Return a side's structure under weight, over the ground, with all edges, the car on its stands.

    Lying on a side the car's body stands still.
    """
    sign = structure.outboard_sign
    structure, rigid, whose = _with_rigid(structure, _stands_still(mesh, first))
    doors = (("front", mesh.front, FRONT), ("rear", mesh.rear, REAR))
    nodes = [edge_nodes(door) + first[word] for word, door, _ in doors]
    node_part = np.concatenate([np.full(len(n), part) for n, (_, _, part) in zip(nodes, doors, strict=True)])
    row_part = _row_parts(structure, first)
    edges = Edges(np.concatenate(nodes), node_part, np.arange(len(row_part)), row_part, rigid, whose)
    loads = [
        one for word, door, _ in doors for one in carried_by_door(door, first[word], glass=glass, trim=trim)
    ]
    body = None
    if lying == "on its wheels":
        z = mesh.shape.ground_z_m
        middle = np.array([float(np.mean(AXLES_M)), -sign * float(np.mean(TRACK_M)), z])
        structure, body = _with_body(structure, car_kg, stands_of(support, car_kg, sign, z), middle)
    outermost = float((sign * structure.points[np.unique(structure.triangles), 1]).max())
    ground = _ground(lying, sign, mesh.shape.ground_z_m, outermost)
    checks = tuple(
        _check(door, first[word], "" if word == "front" else f"{word} ") for word, door, _ in doors
    )
    around = Surround(gravity(lying, sign), tuple(loads), ground, body, checks=checks, edges=edges)
    return replace(structure, surround=around)


def _check(mesh: DoorMesh, first: int, word: str) -> Check:
    """Return a door's check, felt at its latch end."""
    nodes = np.unique(mesh.surface.nodes["latch_plate"]) + first
    hinges = f"{word}lower hinge", f"{word}upper hinge"
    return Check(nodes, np.full(len(nodes), 1.0 / len(nodes)), hinges)


def _row_parts(structure: Structure, first: Mapping[str, int]) -> Ints:
    """Return whose each triangle is, by where its nodes begin, shape (m,)."""
    parts = {"front": FRONT, "rear": REAR, "pillar": PILLAR, "rail": RAIL, "rocker": ROCKER}
    starts = sorted((first[word], part) for word, part in parts.items() if word in first)
    slot = np.searchsorted([start for start, _ in starts], structure.triangles[:, 0], side="right") - 1
    out: Ints = np.array([part for _, part in starts], dtype=np.int64)[slot]
    return out
