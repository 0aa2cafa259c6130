"""The whole side ready to be pushed: a door model whose other door and pillar come along.

The front door's nodes come first and it stands at the origin, so whatever works on a door works here on the
front one. The rear door is a panel of its own; tips in the gaps beside the pillar stand on the pillar, which
gives.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from meshes.body import BodyStub, build_body
from meshes.bowed import bowed
from meshes.box import BoxMesh
from meshes.nearest import nearest_on_triangles
from meshes.occupant import Capsule, side_occupant
from meshes.part import MeshError, Surface
from meshes.rail import rail_of_side
from meshes.rocker import rocker_of_side
from meshes.side import MAX_SHEET_NODES, SideMesh, build_side
from meshes.side_shape import SIDES, SideShape
from sim.model import INNER_PARTS, DoorModel, Panel, Seat, with_rail
from sim.network import Network
from sim.pieces import TAKEN
from sim.pillar import PillarBuild
from sim.plan import Car
from sim.problems import PlanError
from sim.rail import Rail, steel, yields
from sim.rocker import Rocker
from sim.rocker import yields as rocker_yields
from sim.side_model import side_structure
from sim.standing import side_among
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

PILLAR_OVER_DOOR = 26.0 / 45.0  # spacing of the pillar's lattice over the doors'
COARSEST_PILLAR_M = 0.035  # a coarser one has too few rings to show a fold
FRONT, REAR, PILLAR = "front ", "rear ", "pillar "
SEAT_SAMPLES = 5
RIGID_NODES = 80  # room left for nodes of what stands still: members' corners, spots at the foot, the body

ON_PILLAR = {
    ("pillar_edge", "front"): ("front", "striker_patch", "outer"),
    ("pillar_side", "front"): ("front", "striker_patch"),
    ("pillar_outside", "front"): ("outer",),
    ("hinge_pillar", "rear"): ("rear", "lower_hinge_patch", "upper_hinge_patch"),
}
"""Seats that lie on the pillar between the doors, by name and door, and the walls that carry a tip there."""


@dataclass(frozen=True, eq=False)
class SideModel(DoorModel):
    """Both doors and the pillar between them.

    ``mesh`` and ``body`` are the front door's, ``structure`` the whole. Ties, beams and named nodes of the
    front door bear the names they have on a door alone; those of the others begin with "rear" or "pillar".

    side : the meshes;  first : where each part's nodes begin in the structure, by its word
    rear_body : the body round the rear door, in that door's own axes
    """

    side: SideMesh
    first: Mapping[str, int]
    rear_body: BodyStub

    @property
    def whole_count(self) -> int:
        """How many nodes the model has before any sheet has torn."""
        giving = sum(member.count for member in self.giving)
        return self.first["pillar"] + self.side.pillar.surface.node_count + giving + self.rigid_count

    @property
    def giving(self) -> tuple[Rail, ...]:
        """Rail and rocker where they give, in the order of their nodes."""
        return tuple(member for member in (self.rail, self.rocker) if member is not None)

    @property
    def rigid_count(self) -> int:
        """How many nodes stand for rocker, rail, spots and the car's body beside the sheets' own."""
        fixed, around = self.structure.fixed, self.structure.surround
        body = 0 if around is None or around.body is None else len(around.body.nodes)
        if fixed is None:
            return body
        aside = len(self.structure.names.get(TAKEN, ()))
        held = sum(int(fixed[member.nodes].all(axis=1).sum()) for member in self.giving)
        return body + int(fixed.all(axis=1).sum()) - aside - held

    @cached_property
    def surface(self) -> Surface:
        """Every sheet at rest with its parts named: the front door's plainly, the others with their word."""
        triangles, parts, names = [], [], list[str]()
        for word, mesh in (("", self.side.front), (REAR, self.side.rear), (PILLAR, self.side.pillar)):
            own = mesh.surface
            triangles.append(own.triangles + self.first[word.strip() or "front"])
            parts.append(own.triangle_part + len(names))
            names += [f"{word}{name}" for name in own.part_names]
        sheets = np.concatenate(triangles), np.concatenate(parts), tuple(names)
        out = Surface(self.start.points, *sheets)
        for member, word in ((self.rail, "rail"), (self.rocker, "rocker")):
            if member is not None:
                sheets = out.triangles, out.triangle_part, out.part_names
                out = with_rail(self.start.points, *sheets, member, word)
        return out

    @property
    def hem_length_m(self) -> float:
        """Length of both doors' hems [m]."""
        return float(self.side.front.hem_station_m[-1] + self.side.rear.hem_station_m[-1])

    @property
    def rigid(self) -> Mapping[str, Surface]:
        """Surfaces of the car's body that cannot yield, by name."""
        gone = [name for name, one in (("roof_rail", self.rail), ("rocker", self.rocker)) if one is not None]
        return {name: member.surface for name, member in self.side.members.items() if name not in gone}

    @property
    def inner_nodes(self) -> Ints:
        """Nodes of the metal that faces the occupant: both doors' inner sheets and frames, and the pillar."""
        rear, first = self.side.rear, self.first
        return np.concatenate([
            super().inner_nodes,
            self.panels()["rear"].nodes_of(INNER_PARTS),
            rear.surface.chains["frame"] + first["rear"],
            np.arange(self.side.pillar.surface.node_count) + first["pillar"],
        ])  # fmt: skip

    def panels(self) -> Mapping[str, Panel]:
        """Return its doors by name."""
        side = self.side
        rear = Panel(
            side.rear,
            self.rear_body,
            self.first["rear"],
            len(side.front.surface.triangles),
            side.shifts["rear"],
        )
        return {**super().panels(), "rear": rear}

    @property
    def pillar_triangles(self) -> Ints:
        """The pillar's triangles at rest, shape (m, 3)."""
        triangles: Ints = self.side.pillar.surface.triangles + self.first["pillar"]
        return triangles

    def yielding(self, seat: str, panel: str, point: Floats, tip_m: tuple[float, float]) -> Seat | None:
        """Return nodes and weights of a tip on pillar or rail where they give; None on what stands still."""
        if seat == "rocker" and self.rocker is not None:
            return self.rocker.seat(self.start.points, point, tip_m)
        walls = ON_PILLAR.get((seat, panel))
        if walls is None:
            return super().yielding(seat, panel, point, tip_m)
        surface = self.side.pillar.surface
        triangles = np.concatenate([surface.triangles_of(wall) for wall in walls]) + self.first["pillar"]
        share = (np.arange(SEAT_SAMPLES) + 0.5) / SEAT_SAMPLES - 0.5
        deep = 1 if seat != "pillar_outside" else 0
        spots = np.tile(np.asarray(point, dtype=float), (SEAT_SAMPLES, SEAT_SAMPLES, 1))
        spots[:, :, 2] += tip_m[0] * share[:, None]
        spots[:, :, deep] += tip_m[1] * share[None, :]
        wanted = spots.reshape(-1, 3)
        triangle, weights, _ = nearest_on_triangles(wanted, self.start.points, triangles)
        nodes, slot = np.unique(triangles[triangle], return_inverse=True)
        total = np.bincount(slot.ravel(), weights.ravel())
        kept = total > 1.0e-12
        return nodes[kept], total[kept] / total[kept].sum()


def side_shape(car: Car) -> SideShape:
    """Return the side's dimensions for a car."""
    shape, whole = SIDES[car.whole_side.shape], car.whole_side
    spacing = car.lattice_spacing_m
    door = {
        "hem_width_m": car.hem_width_m,
        "shut_face_depth_m": car.shut_face_depth_m,
        "spacing_m": spacing,
    }
    return replace(
        shape,
        front=replace(shape.front, **door),
        rear=replace(shape.rear, **door),
        pillar=replace(
            shape.pillar,
            spacing_m=min(PILLAR_OVER_DOOR * spacing, COARSEST_PILLAR_M),
            weld_pitch_m=whole.spot_pitch_m,
            foot_flare_m=whole.foot_flare_m,
            foot_lap_m=whole.foot_lap_m,
            foot_rows=whole.foot_rows,
        ),
    )


def pillar_build(car: Car) -> PillarBuild:
    """Return what the pillar is made of."""
    whole = car.whole_side
    return PillarBuild(
        pressed=steel(whole.pillar_pressed_yield_pa),
        closing=steel(whole.pillar_closing_yield_pa),
        pressed_m=whole.pillar_pressed_m,
        closing_m=whole.pillar_closing_m,
        soft=steel(whole.soft_foot_yield_pa),
        soft_m=whole.soft_foot_m,
        stiffener_m=whole.foot_stiffener_m,
        stiffener_reach_m=whole.foot_stiffener_reach_m,
        thin_m=whole.spot_sheet_m,
        held=("foot", "head") if whole.head_held else ("foot",),
    )


def as_front(structure: Structure) -> Structure:
    """Return the structure with the front door's parts under the names they have on a door alone."""

    def plain(name: str) -> str:
        return name.removeprefix(FRONT)

    names = {**structure.names, **{plain(name): ids for name, ids in structure.names.items()}}
    return replace(
        structure,
        beams=tuple(replace(beam, name=plain(beam.name)) for beam in structure.beams),
        ties=tuple(replace(tie, name=plain(tie.name)) for tie in structure.ties),
        sliders=tuple(replace(one, name=plain(one.name)) for one in structure.sliders),
        names=names,
    )


@dataclass(frozen=True)
class SideMeshes:
    """The metal of a right-hand side as it is laid out, and who sits in it; None for what stands still."""

    side: SideMesh
    occupant: tuple[Capsule, ...]
    rail: BoxMesh | None
    rocker: BoxMesh | None


def side_meshes(car: Car) -> SideMeshes:
    """Return the metal of a car's whole side laid out, the right-hand one whichever the car's is.

    Raises
    ------
    PlanError
        When it cannot be meshed: names the field and the remedy.
    """
    shape, whole = side_shape(car), car.whole_side
    try:
        mesh = build_side(shape)
        mesh = replace(mesh, pillar=bowed(mesh.pillar, whole.pillar_bow_m))
        occupant = side_occupant(
            shape,
            seat=whole.occupant_seat,
            size=whole.occupant,
            lean_rad=whole.occupant_lean_rad,
            hip_gap_m=whole.occupant_gap_m,
            inboard_rad=whole.occupant_inboard_rad,
        )
        spots = sum(len(item.points) for item in mesh.pillar.welds.values())
        # a plain foot's and head's spots are in the room left; a flare has more
        more = spots if whole.foot_flare_m and not rocker_yields(car) else 0
        left = MAX_SHEET_NODES - mesh.sheet_node_count - RIGID_NODES - more
        rocker_mesh = (
            rocker_of_side(shape, left, bulkheads=whole.rocker_bulkheads) if rocker_yields(car) else None
        )
        left -= 0 if rocker_mesh is None else rocker_mesh.surface.node_count
        rail_mesh = rail_of_side(shape, left) if yields(car) else None
    except MeshError as error:
        raise PlanError(*_in_plan_words(error)) from error
    return SideMeshes(mesh, occupant, rail_mesh, rocker_mesh)


def build_side_model(car: Car) -> SideModel:
    """Return the model of a car's whole side; raises PlanError as `side_meshes` does."""
    shape, whole = side_shape(car), car.whole_side
    laid_out = side_meshes(car)
    mesh, occupant = laid_out.side, laid_out.occupant
    rail_mesh, rocker_mesh = laid_out.rail, laid_out.rocker
    body, rear_body = build_body(shape.front, shape.body), build_body(shape.rear, shape.body)
    if car.side == "left":
        mesh, body, rear_body = mesh.mirrored(), body.mirrored(), rear_body.mirrored()
        occupant = tuple(part.mirrored() for part in occupant)
        rail_mesh = None if rail_mesh is None else rail_mesh.mirrored()
        rocker_mesh = None if rocker_mesh is None else rocker_mesh.mirrored()
    made = side_structure(car, mesh, pillar_build(car), rail_mesh, rocker_mesh)
    structure = side_among(
        as_front(made.structure),
        made.first,
        mesh,
        lying=whole.lies,
        support=whole.stands_on,
        car_kg=whole.car_kg,
        glass=whole.glass,
        trim=whole.trim,
    )
    network = Network(structure)
    start = network.initial_state()
    parts = (mesh.front, mesh.rear, mesh.pillar)
    before = sum(len(part.surface.triangles) for part in parts)
    rail = None if rail_mesh is None else Rail(rail_mesh, made.first["rail"], before)
    before += 0 if rail is None else len(rail.triangles)
    rocker = None if rocker_mesh is None else Rocker(rocker_mesh, made.first["rocker"], before)
    parts_of_it = car, mesh.front, structure, body, occupant, network, start
    return SideModel(*parts_of_it, mesh, made.first, rear_body, rail=rail, rocker=rocker)


def _in_plan_words(error: MeshError) -> tuple[str, str]:
    """Return field and message of a side that cannot be meshed, as a plan calls them."""
    name = error.parameter.rpartition(".")[2]
    if name == "spacing_m":
        return (
            "car.lattice_spacing_m",
            "does not suit a whole side; use 0.045 to 0.09 m, or 0.05 or more where rail and rocker give",
        )
    if name == "rocker":
        return "car.whole_side.rocker_wall_m", "leaves it no nodes; use a larger car.lattice_spacing_m"
    fields = {"weld_pitch_m": "whole_side.spot_pitch_m", "hem_width_m": "hem_width_m"}
    fields |= {name: f"whole_side.{name}" for name in ("foot_flare_m", "foot_lap_m", "foot_rows")}
    return f"car.{fields.get(name, name)}", f"does not fit this side: {error.parameter} {error.message}"
