"""Frames: a converged point of a move read out as what pictures, curves and words need."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from meshes.occupant import clearance
from sim import ladder, torn
from sim.bond import END, LENGTH
from sim.creases import belt_nodes, upper_nodes
from sim.engaged import Engaged
from sim.folded import fold_work
from sim.grips import FORCE as GRIP
from sim.grounding import body_rise_m, grounded_n
from sim.increment import Point
from sim.model import DoorModel
from sim.network import Evaluation, Network
from sim.path import NO_PATH, load_path
from sim.pillar import WELD_KIND
from sim.push import Push
from sim.record import Clearance, Event, Frame, SeatNow
from sim.room import clearance_by_part, exit_width_m
from sim.rubbing import FORCE
from sim.side import SideModel

Floats = NDArray[np.float64]

LATCHES = ("latch", "rear latch")
HEM_KINDS = ("seam", "weld")
"""Kinds of bond along a hem; the pillar's spots are counted apart."""


def seam_mask(network: Network) -> NDArray[np.bool_]:
    """Return which bonds are the seam (bead points or welds), shape (bonds,)."""
    bonds = network.structure.bonds
    mask = np.zeros(len(bonds.law), dtype=bool)
    for kind in HEM_KINDS:
        mask |= bonds.of(kind)
    return mask


def seam_share_m(model: DoorModel) -> Floats:
    """Return the length of hem each seam bond stands for, shape (bonds,), 0 for other bonds [m].

    Where there is a bead it speaks for the whole hem; its spots then stand for no length of their own.
    """
    bonds = model.structure.bonds
    mask = seam_mask(model.network)
    welds = bonds.of("weld")
    share = np.where(mask, bonds.law[:, LENGTH], 0.0)
    if bonds.of("seam").any():
        share[welds] = 0.0
    elif welds.any():
        share[welds] = model.hem_length_m / int(welds.sum())
    return share


class FrameMaker:
    """Turns converged points into frames."""

    def __init__(self, model: DoorModel, network: Network, move_index: int) -> None:
        self.model, self.network, self.move_index = model, network, move_index
        self.seam = seam_mask(network)
        self.share = seam_share_m(model)
        self.near = model.inner_nodes
        self.names = model.structure.names
        self.whole = model.whole_count
        self.upper = {sheet: upper_nodes(model, sheet) for sheet in ("skin", "inner")}
        self.belt = belt_nodes(model)
        self.spots = network.structure.bonds.of(WELD_KIND)

    def frame(
        self,
        point: Point,
        push: Push | Engaged | None,
        increment: int,
        events: tuple[Event, ...],
        cut_m: float = 0.0,
        seat: SeatNow | None = None,
    ) -> Frame:
        """Return the frame of a converged point; ``cut_m`` is what the tips have sheared through."""
        ev, state, model = point.evaluation, point.state, self.model
        bonds = model.structure.bonds
        damage = np.clip(state.worst[self.seam] / bonds.law[self.seam, END], 0.0, 1.0)
        parted = float(self.share[self.network.parted(state)].sum())
        ties = model.structure.ties
        ratio = ladder.tie_ratios(self.network, state, ev)
        latch = max((float(ratio[i]) for i, t in enumerate(ties) if t.name in LATCHES), default=0.0)
        reactions: dict[str, tuple[float, float, float]] = {
            t.name: _triple(-ev.tie_force[i]) for i, t in enumerate(ties)
        }
        sliders = zip(model.structure.sliders, ev.read.get(FORCE, ()), strict=False)
        reactions |= {s.name: _triple(-force) for s, force in sliders}
        reactions["rim"] = (0.0, float(ev.rim_push.sum()) * model.outboard_sign, 0.0)
        tips = _contacts(self.network, push, point)
        path = NO_PATH if push is None else load_path(self.network, ev, _line(push, seat)).strongest()
        return Frame(
            move_index=self.move_index,
            increment=increment,
            opening_m=point.travel_m,
            force_n=float(np.max(point.force_n, initial=0.0)),
            points=state.points,
            seam_damage=damage,
            load=sheet_load(self.network, ev),
            ledger_j=point.ledger.as_dict(),
            ladder=ladder.rungs(
                model, self.network, state, ev, push if isinstance(push, Push) else None, point.travel_m
            ),
            clearance=self.clearance(state.points),
            parted_length_m=parted,
            torn_length_m=cut_m + torn.torn_m(self.network, state),
            latch_demand_ratio=latch,
            skin_mid_outboard_m=model.outboard(state.points, self.names["skin_mid"]),
            inner_mid_outboard_m=model.outboard(state.points, self.names["inner_mid"]),
            upper_skin_outboard_m=model.outboard(state.points, self.upper["skin"]),
            upper_inner_outboard_m=model.outboard(state.points, self.upper["inner"]),
            belt_skin_outboard_m=model.outboard(state.points, self.belt),
            drive_points=tips[0],
            drive_forces=tips[1],
            reactions=reactions,
            iterations=point.iterations,
            events=events,
            state=state,
            path_pairs=path.pairs,
            path_flow_n=path.flow_n,
            seat=seat,
            triangles=self.network.structure.triangles if len(state.points) > self.whole else None,
            sharp_edge_count=torn.sharp_edge_count(self.network, state),
            barrier=None if push is None or isinstance(push, Push) else push.barrier,
            grounded_n=grounded_n(model, state),
            body_rise_m=body_rise_m(model.structure, state.points),
            spots_gone=int((self.spots & self.network.parted(state)).sum()),
            fold_j_per_m2=fold_work(self.network, state.hardening),
            **self._room(state.points),
        )

    def _room(self, points: Floats) -> dict[str, Any]:
        """Return what only a whole side is asked: clearance to each body part, and the exit width."""
        model = self.model
        if not isinstance(model, SideModel):
            return {}
        triangles = self.network.structure.triangles
        return {
            "part_clearance_m": clearance_by_part(model, points, triangles),
            "exit_width_m": exit_width_m(model, points, triangles),
        }

    def clearance(self, points: Floats) -> Clearance:
        """Return the least distance from the inner structure's nodes to the occupant."""
        gap = clearance(points[self.near], self.model.occupant)
        node, part = np.unravel_index(int(gap.argmin()), gap.shape)
        metal = points[self.near[node]]
        capsule = self.model.occupant[part]
        axis = capsule.end - capsule.start
        along = float(np.clip((metal - capsule.start) @ axis / max(float(axis @ axis), 1.0e-12), 0.0, 1.0))
        core = capsule.start + along * axis
        away = metal - core
        surface = core + away / max(float(np.linalg.norm(away)), 1.0e-12) * capsule.radius_m
        return Clearance(float(gap[node, part]), _triple(metal), _triple(surface), capsule.name)


def _triple(v: Floats) -> tuple[float, float, float]:
    return float(v[0]), float(v[1]), float(v[2])


def _contacts(network: Network, push: Push | Engaged | None, point: Point) -> tuple[Floats, Floats]:
    if push is not None and not isinstance(push, Push):
        return push.contacts(network, point)
    return _pad_points(push, point.state.points), _pad_forces(push, point)


def _pad_points(push: Push | None, points: Floats) -> Floats:
    if push is None:
        return np.zeros((0, 3))
    return np.stack([pad.point(points) for pad in push.pads])


def _line(push: Push | Engaged, seat: SeatNow | None) -> Floats:
    return push.direction if seat is None else seat.line


def _pad_forces(push: Push | None, point: Point) -> Floats:
    if push is None:
        return np.zeros((0, 3))
    if GRIP in point.evaluation.read:
        return point.evaluation.read[GRIP].copy()
    force_n = point.force_n
    signs = np.array([1.0, -1.0])[: len(push.pads), None]
    forces: Floats = signs * float(np.max(force_n, initial=0.0)) * push.direction
    return forces


def sheet_load(network: Network, ev: Evaluation) -> Floats:
    """Return the membrane force of every triangle over its yield force, shape (m,), for colouring."""
    length = np.sqrt(network.rest.rest_length2)
    force = np.abs(ev.springs[:, :3]) / length
    limit = network.metal[:, 2] * network.thickness * length.mean(axis=1)
    load: Floats = force.max(axis=1) / limit
    return load
