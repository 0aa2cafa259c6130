"""The network: a structure compiled for fast evaluation of energy, forces and stiffness.

The potential at a tip position is elastic + newly dissipated + viscous; its minimum is the equilibrium of
the increment.  Everything is evaluated on one fixed block pattern, so CHOLMOD analyses it once.
"""

from __future__ import annotations

import hashlib
import time
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim import kernels
from sim.beam import bend_curvature, bend_forces, bend_stiffness, bend_vectors, link_forces, link_stiffness
from sim.bond import END, LENGTH, OFFSET, RHO, bond_forces, bond_response, bond_stiffness, scatter_dense
from sim.factor import Factor, make_factor
from sim.pattern import Pattern, build_pattern
from sim.sheet import hinge_angle, rest_sheet
from sim.structure import Structure
from sim.yielding import LAYER_COUNT, layer_rule

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True)
class State:
    """Everything the metal remembers between increments.

    points : shape (n, 3) [m];  plastic : (m, 7, 3);  hardening : (m, 7)
    turn : (bends, 2) [rad];  worst : (bonds,) [m];  touching : (bonds,)
    holding : (ties,);  on_rim : (rim nodes,)
    angle : (hinges,) [rad], counted on past half a turn
    """

    points: Floats
    plastic: Floats
    hardening: Floats
    turn: Floats
    worst: Floats
    touching: Bools
    holding: Bools
    on_rim: Bools
    angle: Floats

    def sha256(self) -> str:
        """Return the hash of the whole state, as hexadecimal digits."""
        digest = hashlib.sha256()
        for part in (self.points, self.plastic, self.hardening, self.turn, self.worst):
            digest.update(np.ascontiguousarray(part + 0.0).tobytes())
        for flag in (self.touching, self.holding, self.on_rim):
            digest.update(np.ascontiguousarray(flag).tobytes())
        return digest.hexdigest()


@dataclass(frozen=True)
class Drive:
    """A tool contact: weighted means of nodes pushed along one line to a given travel.

    The force is stiffness * (travel - n.(sum(weights * x) - start)), never a pull when ``pushes_only``.

    nodes : shape (k,);  weights : shape (k,);  direction : unit vector (3,)
    start : n.sum(weights * x) at the beginning of the move [m]
    """

    nodes: Ints
    weights: Floats
    direction: Floats
    start: float
    stiffness_n_per_m: float = 2.0e7
    pushes_only: bool = True

    def travel(self, points: Floats) -> float:
        """Return how far the contact has moved along the line [m]."""
        return float(self.direction @ (self.weights @ points[self.nodes])) - self.start


@dataclass(frozen=True)
class Load:
    """What acts during one increment.

    travel_m : one prescribed travel per drive;  dead_n : shape (n, 3) fixed forces [N]
    viscous_n_per_m : force per node and metre moved in the increment;  origin : (n, 3) points it starts from
    """

    travel_m: tuple[float, ...] = ()
    dead_n: Floats | None = None
    viscous_n_per_m: float = 0.0
    origin: Floats | None = None


class Evaluation:
    """Energies and forces at one set of points (filled by `Network.evaluate`)."""

    def __init__(self, network: Network) -> None:
        s = network.structure
        m, bonds = len(s.triangles), len(s.bonds.law)
        hinges, bends, links = len(network.rest.hinges), len(network.bends), len(network.links)
        self.points = np.zeros_like(s.points)
        self.forces = np.zeros_like(s.points)
        self.angle, self.gradient = np.zeros(hinges), np.zeros((hinges, 4, 3))
        self.moments = np.zeros(hinges)
        self.springs, self.flowing = np.zeros((m, 6)), np.zeros(m, bool)
        self.plastic, self.hardening = np.zeros((m, LAYER_COUNT, 3)), np.zeros((m, LAYER_COUNT))
        self.triangle_stored, self.triangle_folding = np.zeros(m), np.zeros(m)
        self.worst, self.opening, self.normal_force = np.zeros(bonds), np.zeros(bonds), np.zeros(bonds)
        self.active = np.zeros(bonds, bool)
        self.bond_stored, self.bond_parted = np.zeros(bonds), np.zeros(bonds)
        self.link_stored, self.tension = np.zeros(links), np.zeros(links)
        self.turn, self.moment = np.zeros((bends, 2)), np.zeros((bends, 2))
        self.bend_stored, self.bend_folding = np.zeros(bends), np.zeros(bends)
        self.tie_force = np.zeros((len(s.ties), 3))
        self.tie_stored = np.zeros(len(s.ties))
        self.rim_push = np.zeros(len(s.rim))
        self.rim_stored = 0.0
        self.drive_force = np.zeros(len(network.drives))
        self.drive_stored = 0.0
        self.viscous_energy = 0.0
        self.dead_energy = 0.0

    @property
    def stored_j(self) -> float:
        """Elastic energy of everything, tool arms included [J]."""
        return float(
            self.triangle_stored.sum()
            + self.bond_stored.sum()
            + self.link_stored.sum()
            + self.bend_stored.sum()
            + self.tie_stored.sum()
            + self.rim_stored
            + self.drive_stored
        )

    @property
    def newly_dissipated_j(self) -> float:
        """Folding since the last commit plus all energy spent on bonds so far [J]."""
        return float(self.triangle_folding.sum() + self.bend_folding.sum() + self.bond_parted.sum())

    @property
    def potential_j(self) -> float:
        """What equilibrium makes least [J]."""
        return self.stored_j + self.newly_dissipated_j + self.viscous_energy + self.dead_energy


class _Room:
    """Working room for the element stiffness of one assembly, so that none is allocated in the loop."""

    def __init__(self, triangles: int, hinges: int, bonds: int, links: int, bends: int) -> None:
        self.triangles, self.moments = np.zeros((triangles, 6, 6)), np.zeros(hinges)
        self.bonds = np.zeros((bonds, 18, 18))
        self.links, self.every_link = np.zeros((links, 6, 6)), np.ones(links, bool)
        self.bends, self.every_bend = np.zeros((bends, 12, 12)), np.ones(bends, bool)


REFERENCE_M = 0.2  # a bend's reference node lies about this far beside its chain


def _reference(points: Floats, used: Ints, bend: Ints) -> int:
    """Return the node a bend's directions are read against: beside the chain, about 0.2 m off; -1 if none."""
    a, b, _ = points[bend]
    along = (b - a) / np.linalg.norm(b - a)
    away = points[used] - b
    length = away @ along
    reach = np.linalg.norm(away - length[:, None] * along, axis=1)
    cost = np.abs(reach - REFERENCE_M) + np.abs(length)
    cost[(reach < 0.02) | (reach < 0.5 * np.abs(length)) | np.isin(used, bend)] = np.inf
    best = int(np.argmin(np.round(cost, 9))) if len(cost) else 0
    return int(used[best]) if len(cost) and np.isfinite(cost[best]) else -1


class Network:
    """A compiled structure with its tool contacts."""

    def __init__(self, structure: Structure, drives: Sequence[Drive] = ()) -> None:
        self.structure = structure
        self.drives = tuple(drives)
        sections = structure.sections
        pick = structure.triangle_section
        metal = np.array(
            [
                [s.metal.young_pa, s.metal.poisson_ratio, s.metal.yield_pa, s.metal.hardening_pa]
                for s in sections
            ]
        ).reshape(-1, 4)
        self.metal = metal[pick]
        self.thickness = np.array([s.thickness_m for s in sections])[pick]
        self.form_ratio = np.array([s.form_ratio for s in sections])[pick]
        self.heights, self.weights = layer_rule()
        self.rest = rest_sheet(structure.points, structure.triangles, self.metal[:, 1])
        r = self.rest
        self._sections = (
            r.rest_angle,
            r.rest_length2,
            r.to_strain,
            r.to_curvature,
            r.area,
            self.thickness,
            self.form_ratio,
            self.metal,
            self.heights,
            self.weights,
        )
        self.elastic = self._elastic()
        self._compile_beams()
        self._room = _Room(
            len(structure.triangles),
            len(r.hinges),
            len(structure.bonds.law),
            len(self.links),
            len(self.bends),
        )
        self._compile()

    def _elastic(self) -> Floats:
        """Return the six springs' stiffness while nothing flows, shape (m, 6, 6)."""
        m = len(self.structure.triangles)
        out = np.zeros((m, 6, 6))
        kernels.triangle_stiffness(
            self.structure.points,
            self.structure.triangles,
            self.rest.triangle_hinges,
            self.rest.rest_angle,
            *self._sections,
            np.zeros((m, LAYER_COUNT, 3)),
            np.zeros((m, LAYER_COUNT)),
            np.ones(m, bool),
            out,
        )
        return out

    def _compile_beams(self) -> None:
        links, length, axial, bends, bending, limit, rest = [], [], [], [], [], [], []
        self.link_beam: list[int] = []
        self.bend_beam: list[int] = []
        s = self.structure
        x = s.points
        used = np.unique(np.concatenate([s.triangles.ravel(), *[b.nodes for b in s.beams]]))
        v, kappa = np.zeros(9), np.zeros(2)
        for index, beam in enumerate(s.beams):
            n = beam.nodes
            sizes = np.linalg.norm(np.diff(x[n], axis=0), axis=1)
            for i in range(len(n) - 1):
                links.append((n[i], n[i + 1]))
                length.append(sizes[i])
                axial.append(beam.axial_n)
                self.link_beam.append(index)
            for i in range(1, len(n) - 1):
                bends.append((n[i - 1], n[i], n[i + 1], _reference(x, used, n[i - 1 : i + 2])))
                bending.append(beam.bending_n_m2 / (0.5 * (sizes[i - 1] + sizes[i])))
                limit.append(beam.plastic_moment_n_m)
                bend_vectors(x, np.array(bends[-1], dtype=np.int64), v)
                bend_curvature(v, kappa)
                rest.append(kappa.copy())
                self.bend_beam.append(index)
        self.links = np.array(links, dtype=np.int64).reshape(-1, 2)
        self.link_length, self.link_axial = np.array(length, float), np.array(axial, float)
        self.bends = np.array(bends, dtype=np.int64).reshape(-1, 4)
        self.bend_stiffness, self.bend_limit = np.array(bending, float), np.array(limit, float)
        self.bend_rest = np.array(rest, float).reshape(-1, 2)

    def _compile(self) -> None:
        s = self.structure
        ties = [(t.nodes, t.weights) for t in s.ties] + [(d.nodes, d.weights) for d in self.drives]
        self.tie_rest = np.array([t.weights @ s.points[t.nodes] for t in s.ties]).reshape(-1, 3)
        groups = [self.rest.patch, self.rest.hinges, s.bonds.nodes, self.links, self.bends]
        fixed = np.zeros(s.points.shape, dtype=bool) if s.fixed is None else s.fixed
        self.pattern: Pattern = build_pattern(len(s.points), groups, [t[0] for t in ties], fixed)
        self.free = ~fixed
        p = self.pattern
        self.factor: Factor = make_factor(p.rows, p.columns, 3 * len(s.points))
        self.values = np.zeros((p.block_count, 3, 3))
        self.assemble_seconds = 0.0

    def with_drives(self, drives: Sequence[Drive]) -> Network:
        """Return this network with other tool contacts (a new pattern, the same rest data)."""
        other = object.__new__(Network)
        other.__dict__.update(self.__dict__)
        other.drives = tuple(drives)
        other._compile()
        return other

    def initial_state(self) -> State:
        """Return the state at rest."""
        s = self.structure
        m = len(s.triangles)
        return State(
            s.points.copy(),
            np.zeros((m, LAYER_COUNT, 3)),
            np.zeros((m, LAYER_COUNT)),
            np.zeros((len(self.bends), 2)),
            np.zeros(len(s.bonds.law)),
            np.ones(len(s.bonds.law), bool),
            np.ones(len(s.ties), bool),
            np.ones(len(s.rim), bool),
            self.rest.rest_angle.copy(),
        )

    def taken_over(self, state: State, former: Network) -> State:
        """Return a state of a network with other hinges as this one's: angles found again by edge."""
        edges = zip(former.rest.hinges.tolist(), state.angle.tolist(), strict=True)
        old = {(hinge[0], hinge[1]): angle for hinge, angle in edges}
        now = hinge_angle(state.points, self.rest.hinges)
        kept = [old.get((h[0], h[1]), now[k]) for k, h in enumerate(self.rest.hinges.tolist())]
        return replace(state, angle=np.array(kept, dtype=float))

    def evaluate(
        self, points: Floats, state: State, load: Load, *, out: Evaluation | None = None
    ) -> Evaluation:
        """Return energies and forces (energy gradient, (n, 3) [N]) at ``points``, in ``out`` if given."""
        start = time.perf_counter()
        s, r = self.structure, self.rest
        ev = Evaluation(self) if out is None else out
        ev.points[:] = points
        ev.forces[:] = 0.0
        kernels.hinge_angles(ev.points, r.hinges, ev.angle, ev.gradient)
        # an angle is known but for whole turns: it stays the one next to the committed angle
        ev.angle += 2.0 * np.pi * np.rint((state.angle - ev.angle) / (2.0 * np.pi))
        kernels.triangle_forces(
            ev.points,
            s.triangles,
            r.triangle_hinges,
            ev.angle,
            *self._sections,
            self.elastic,
            state.plastic,
            state.hardening,
            ev.plastic,
            ev.hardening,
            ev.springs,
            ev.flowing,
            ev.triangle_stored,
            ev.triangle_folding,
        )
        kernels.gather_triangle_forces(
            ev.points,
            s.triangles,
            r.triangle_hinges,
            r.hinges,
            ev.gradient,
            r.rest_length2,
            ev.springs,
            ev.forces,
            ev.moments,
        )
        b = s.bonds
        bond_forces(
            ev.points,
            b.nodes,
            b.coefficients,
            b.plane,
            b.law,
            state.worst,
            state.touching,
            ev.active,
            ev.worst,
            ev.opening,
            ev.normal_force,
            ev.bond_stored,
            ev.bond_parted,
            ev.forces,
        )
        link_forces(
            ev.points, self.links, self.link_length, self.link_axial, ev.link_stored, ev.tension, ev.forces
        )
        bend_forces(
            ev.points,
            self.bends,
            self.bend_rest,
            self.bend_stiffness,
            self.bend_limit,
            state.turn,
            ev.turn,
            ev.moment,
            ev.bend_stored,
            ev.bend_folding,
            ev.forces,
        )
        self._springs(ev.points, state, load, ev)
        self.assemble_seconds += time.perf_counter() - start
        return ev

    def _springs(self, points: Floats, state: State, load: Load, ev: Evaluation) -> None:
        """Add ties, rim, drives, dead loads and the viscous term."""
        s = self.structure
        for i, tie in enumerate(s.ties):
            if not state.holding[i]:
                ev.tie_force[i] = 0.0
                ev.tie_stored[i] = 0.0
                continue
            pull = tie.weights @ points[tie.nodes] - self.tie_rest[i]
            ev.tie_force[i] = tie.stiffness_n_per_m * pull
            ev.tie_stored[i] = 0.5 * tie.stiffness_n_per_m * float(pull @ pull)
            ev.forces[tie.nodes] += tie.weights[:, None] * ev.tie_force[i]
        depth = np.where(state.on_rim, np.minimum(s.outboard_sign * (points[s.rim, 1] - s.rim_y_m), 0.0), 0.0)
        ev.rim_push = -s.rim_stiffness_n_per_m * depth
        ev.rim_stored = 0.5 * s.rim_stiffness_n_per_m * float(depth @ depth)
        np.add.at(ev.forces[:, 1], s.rim, -s.outboard_sign * ev.rim_push)
        ev.drive_stored = 0.0
        for i, drive in enumerate(self.drives):
            gap = load.travel_m[i] - drive.travel(points)
            if drive.pushes_only and gap < 0.0:
                gap = 0.0
            ev.drive_force[i] = drive.stiffness_n_per_m * gap
            ev.drive_stored += 0.5 * drive.stiffness_n_per_m * gap * gap
            ev.forces[drive.nodes] -= drive.weights[:, None] * ev.drive_force[i] * drive.direction
        ev.dead_energy = 0.0
        if load.dead_n is not None:
            ev.forces -= load.dead_n
            ev.dead_energy = -float(np.sum(load.dead_n * (points - s.points)))
        ev.viscous_energy = 0.0
        if load.viscous_n_per_m > 0.0 and load.origin is not None:
            moved = points - load.origin
            ev.forces += load.viscous_n_per_m * moved
            ev.viscous_energy = 0.5 * load.viscous_n_per_m * float(np.sum(moved * moved))

    def residual(self, ev: Evaluation) -> Floats:
        """Return the unbalanced force on free directions, shape (n, 3) [N]."""
        out: Floats = np.where(self.free, ev.forces, 0.0)
        return out

    def stiffness_values(
        self,
        ev: Evaluation,
        state: State,
        load: Load,
        springs_guess: Floats,
        *,
        positive: bool = False,
        shift: float = 0.0,
    ) -> Floats:
        """Return the tangent's lower-triangle values in pattern order [N/m].

        ``springs_guess`` drives the geometric part; ``positive`` leaves its compressive and hinge parts out
        and takes softening bonds by their secant.
        """
        start = time.perf_counter()
        s, r, p = self.structure, self.rest, self.pattern
        v, room = self.values, self._room
        v[:] = 0.0
        kernels.triangle_stiffness(
            ev.points,
            s.triangles,
            r.triangle_hinges,
            ev.angle,
            *self._sections,
            state.plastic,
            state.hardening,
            ev.flowing,
            room.triangles,
        )
        kernels.assemble_triangles(
            ev.points,
            s.triangles,
            r.triangle_hinges,
            r.hinges,
            ev.gradient,
            r.rest_length2,
            springs_guess,
            self.elastic,
            ev.flowing,
            room.triangles,
            r.patch,
            p.blocks[0],
            0.0 if positive else -np.inf,
            v,
        )
        if not positive:
            kernels.hinge_moments(r.triangle_hinges, springs_guess, room.moments)
            kernels.assemble_hinges(ev.points, r.hinges, room.moments, p.blocks[1], v)
        b = s.bonds
        bond_stiffness(
            ev.points,
            b.nodes,
            b.coefficients,
            b.plane,
            b.law,
            state.worst,
            state.touching,
            not positive,
            ev.active,
            room.bonds,
        )
        scatter_dense(b.nodes, p.blocks[2], ev.active, room.bonds, v)
        link_stiffness(
            ev.points, self.links, self.link_length, self.link_axial, ev.tension, positive, room.links
        )
        scatter_dense(self.links, p.blocks[3], room.every_link, room.links, v)
        bend_stiffness(
            ev.points,
            self.bends,
            self.bend_rest,
            self.bend_stiffness,
            self.bend_limit,
            state.turn,
            room.bends,
        )
        scatter_dense(self.bends, p.blocks[4], room.every_bend, room.bends, v)
        self._spring_stiffness(state, ev, load, shift)
        values: Floats = v.ravel()[p.gather]
        values[p.blank] = 0.0
        values[p.unit] = self.fixed_scale
        self.assemble_seconds += time.perf_counter() - start
        return values

    fixed_scale = 1.0e6  # [N/m], diagonal of held directions: any positive number of the matrix's size

    def _spring_stiffness(self, state: State, ev: Evaluation, load: Load, shift: float) -> None:
        s, v, p = self.structure, self.values, self.pattern
        eye = np.eye(3)
        for i, tie in enumerate(s.ties):
            if state.holding[i]:
                p.add_outer(v, i, tie.weights, tie.stiffness_n_per_m * eye)
        for i, drive in enumerate(self.drives):
            if ev.drive_force[i] > 0.0 or not drive.pushes_only:
                k = drive.stiffness_n_per_m * np.outer(drive.direction, drive.direction)
                p.add_outer(v, len(s.ties) + i, drive.weights, k)
        pressed = s.rim[ev.rim_push > 0.0]
        v[p.diagonal[pressed], 1, 1] += s.rim_stiffness_n_per_m
        extra = shift + (load.viscous_n_per_m if load.origin is not None else 0.0)
        if extra > 0.0:
            for i in range(3):
                v[p.diagonal, i, i] += extra

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state after an increment has converged: plastic set, damage and contact flags kept."""
        s = self.structure
        y = ev.points[s.rim, 1]
        slid = np.hypot(ev.points[s.rim, 0] - s.points[s.rim, 0], ev.points[s.rim, 2] - s.points[s.rim, 2])
        # a contact re-closes only from zero gap: off once slid off, on again only where it does not press
        on_rim = np.where(
            state.on_rim,
            slid < s.rim_width_m,
            (slid < 0.8 * s.rim_width_m) & (s.outboard_sign * (y - s.rim_y_m) >= 0.0),
        )
        r = np.einsum("ks,ksi->ki", s.bonds.coefficients[:, 0], ev.points[s.bonds.nodes])
        slip = np.sqrt(np.maximum(np.einsum("ki,ki->k", r, r) - ev.opening**2, 0.0))
        gap = ev.opening - s.bonds.law[:, OFFSET]
        near = slip < s.bonds.reach
        touching = np.where(
            state.touching, near | (gap > 0.0) & near, (slip < 0.8 * s.bonds.reach) & (gap >= 0.0)
        )
        return State(
            ev.points.copy(),
            ev.plastic.copy(),
            ev.hardening.copy(),
            ev.turn.copy(),
            ev.worst.copy(),
            touching,
            state.holding.copy(),
            on_rim,
            ev.angle.copy(),
        )

    def parted(self, state: State) -> Bools:
        """Return which bonds have nothing left, shape (bonds,)."""
        gone: Bools = state.worst >= self.structure.bonds.law[:, END]
        return gone

    def bond_spent(self, state: State) -> Floats:
        """Return the energy spent on each bond so far, shape (bonds,) [J]."""
        law = self.structure.bonds.law
        out = np.array(
            [
                bond_response(0.0, float(w), row)[1] * row[LENGTH]
                for w, row in zip(state.worst, law, strict=True)
            ]
        )
        return out.reshape(-1)

    def bond_opening(self, ev: Evaluation) -> Floats:
        """Return the effective opening of each bond now, shape (bonds,) [m]."""
        bonds = self.structure.bonds
        r = np.einsum("ks,ksi->ki", bonds.coefficients[:, 0], ev.points[bonds.nodes])
        slip2 = np.maximum(np.einsum("ki,ki->k", r, r) - ev.opening**2, 0.0)
        gap = np.maximum(ev.opening - bonds.law[:, OFFSET], 0.0)
        effective: Floats = np.sqrt(gap**2 + bonds.law[:, RHO] * slip2)
        return effective

    def release_tie(self, state: State, index: int) -> State:
        """Return the state with one tie let go."""
        holding = state.holding.copy()
        holding[index] = False
        return replace(state, holding=holding)
