"""The network: a structure compiled for fast evaluation of energy, forces and stiffness.

The potential at a tip position is elastic + newly dissipated + viscous; its minimum is the equilibrium of
the increment.  Everything is evaluated on one fixed block pattern, so CHOLMOD analyses it once.
"""

from __future__ import annotations

import time
from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim import kernels, tangent
from sim.bond import END, LENGTH, OFFSET, RHO, bond_forces, bond_response, bond_stiffness
from sim.chains import Chains
from sim.factor import Factor, make_factor
from sim.giving import Giving
from sim.grips import Grips
from sim.law import Into, Law, MakeLaw
from sim.pattern import Pattern, build_pattern
from sim.rigid import Barrier, Pressing
from sim.rubbing import Rubbing
from sim.sheet import rest_sheet
from sim.small import scatter_dense, totals
from sim.springs import Loads, Rim, Ties, Tool
from sim.state import Drive, Evaluation, Load, Sizes, State
from sim.structure import Structure
from sim.struts import Struts
from sim.surrounding import elements, surround_laws
from sim.yielding import LAYER_COUNT, layer_rule

__all__ = ["LAWS", "Drive", "Evaluation", "Load", "Network", "State"]

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

# Springs on nodes and weighted means, in the order they are added up.  A new contact, friction or fitting is
# a class of `sim.law.Law` in a module of its own, and one line here.
LAWS: tuple[MakeLaw, ...] = (
    Ties,
    Giving,
    Rim,
    Tool,
    Grips,
    Struts,
    Loads,
    Rubbing,
)


class Network:
    """A compiled structure with its tool contacts."""

    def __init__(self, structure: Structure, drives: Sequence[Drive] = ()) -> None:
        self.structure = structure
        self.drives = tuple(drives)
        self.barrier: Barrier | None = None
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
        top = self.heights[-1] * self.thickness * self.form_ratio
        self._quick = kernels.quick_table(self.elastic, r.to_strain, r.to_curvature, self.metal, top)
        self.beams = Chains(structure)
        self._stiff = np.zeros((len(structure.triangles), 6, 6))
        self._moments = np.zeros(len(r.hinges))
        self._bond_stiff = np.zeros((len(structure.bonds.law), 18, 18))
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

    def _compile(self) -> None:
        s = self.structure
        self.laws: tuple[Law, ...] = self._make_laws()
        self._first = np.cumsum([0, *(len(law.means) for law in self.laws)]).tolist()
        means = [nodes for law in self.laws for nodes in law.means]
        groups = [self.rest.patch, self.rest.hinges, s.bonds.nodes, self.beams.links, self.beams.bends]
        groups += elements(self.laws)
        fixed = np.zeros(s.points.shape, dtype=bool) if s.fixed is None else s.fixed
        self.pattern: Pattern = build_pattern(len(s.points), groups, means, fixed)
        self.free = ~fixed
        p = self.pattern
        self.factor: Factor = make_factor(p.rows, p.columns, 3 * len(s.points))
        self.values = np.zeros((p.block_count, 3, 3))
        self.assemble_seconds = 0.0
        self._sizes = Sizes(
            len(s.points),
            len(s.triangles),
            len(self.rest.hinges),
            len(s.bonds.law),
            len(self.beams.links),
            len(self.beams.bends),
            len(s.ties),
            len(s.rim),
            self.travel_count,
            LAYER_COUNT,
        )

    def _make_laws(self) -> tuple[Law, ...]:
        s = self.structure
        laws = tuple(make(s, self.drives) for make in LAWS) + surround_laws(s)
        if self.barrier is None:
            return laws
        return (*laws, Pressing(self.barrier, s, self.rest.area, len(self.drives)))

    def blank(self) -> Evaluation:
        """Return an evaluation to be filled."""
        return Evaluation(self._sizes)

    @property
    def travel_count(self) -> int:
        """How many travels a load prescribes: one per drive, and the barrier's as the last."""
        return len(self.drives) + (self.barrier is not None)

    def _with(self, *, recompiled: bool = True, **changed: object) -> Network:
        """Return this network with something changed: the same rest data, a new pattern or only new laws."""
        other = object.__new__(Network)
        other.__dict__.update(self.__dict__, **changed)
        if recompiled:
            other._compile()
        else:
            other.laws = other._make_laws()
        return other

    def with_drives(self, drives: Sequence[Drive]) -> Network:
        """Return this network with other tool contacts (a new pattern, the same rest data)."""
        return self._with(drives=tuple(drives), barrier=None)

    def with_barrier(self, barrier: Barrier) -> Network:
        """Return this network with a rigid body that presses on it, in place of all tool contacts."""
        return self._with(drives=(), barrier=barrier)

    def with_grips(self, drives: Sequence[Drive]) -> Network:
        """Return this network with its contacts gripping otherwise: the same nodes, so the same pattern."""
        return self._with(drives=tuple(drives), recompiled=False)

    def among(self, structure: Structure) -> Network:
        """Return this network in other surroundings: the same sheets, beams, bonds and ties."""
        return self._with(structure=structure)

    def standing(self, structure: Structure) -> Network:
        """Return this network with a structure that differs only in numbers of its surroundings."""
        return self._with(structure=structure, recompiled=False)

    def initial_state(self) -> State:
        """Return the state at rest."""
        s = self.structure
        m = len(s.triangles)
        return State(
            s.points.copy(),
            np.zeros((m, LAYER_COUNT, 3)),
            np.zeros((m, LAYER_COUNT)),
            np.zeros((len(self.beams.bends), 2)),
            np.zeros(len(s.bonds.law)),
            np.ones(len(s.bonds.law), bool),
            np.ones(len(s.ties), bool),
            np.ones(len(s.rim), bool),
            self.rest.rest_angle.copy(),
        )

    def evaluate(
        self, points: Floats, state: State, load: Load, *, out: Evaluation | None = None
    ) -> Evaluation:
        """Return energies and forces (energy gradient, (n, 3) [N]) at ``points``, in ``out`` if given."""
        start = time.perf_counter()
        s, r = self.structure, self.rest
        ev = self.blank() if out is None else out
        ev.points[:] = points
        ev.forces[:] = 0.0
        kernels.sheet_forces(
            ev.points,
            s.triangles,
            r.triangle_hinges,
            r.hinges,
            state.angle,
            *self._sections,
            self._quick,
            state.plastic,
            state.hardening,
            ev.plastic,
            ev.hardening,
            ev.filled,
            ev.springs,
            ev.flowing,
            ev.triangle_stored,
            ev.triangle_folding,
            ev.angle,
            ev.gradient,
            ev.moments,
            ev.forces,
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
        self.beams.forces(state, ev)
        ev.element_stored_j, ev.element_spent_j = totals(
            (ev.triangle_stored, ev.bond_stored, ev.link_stored, ev.bend_stored),
            (ev.triangle_folding, ev.bend_folding, ev.bond_parted),
        )
        for law in self.laws:
            law.forces(ev.points, state, load, ev)
        self.assemble_seconds += time.perf_counter() - start
        return ev

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
        v = self.values
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
            self._stiff,
        )
        tangent.assemble_triangles(
            ev.points,
            s.triangles,
            r.triangle_hinges,
            r.hinges,
            ev.gradient,
            r.rest_length2,
            springs_guess,
            self.elastic,
            ev.flowing,
            self._stiff,
            r.patch,
            p.blocks[0],
            0.0 if positive else -np.inf,
            v,
        )
        if not positive:
            tangent.hinge_moments(r.triangle_hinges, springs_guess, self._moments)
            tangent.assemble_hinges(ev.points, r.hinges, self._moments, p.blocks[1], v)
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
            self._bond_stiff,
        )
        scatter_dense(b.nodes, p.blocks[2], ev.active, self._bond_stiff, v)
        self.beams.stiffness(ev, state, (p.blocks[3], p.blocks[4]), v, positive=positive)
        for law, first in zip(self.laws, self._first, strict=False):
            law.stiffness(ev, state, load, Into(v, p, first))
        if shift > 0.0:
            v[p.diagonal] += shift * np.eye(3)
        values: Floats = v.ravel()[p.gather]
        values[p.blank] = 0.0
        values[p.unit] = self.fixed_scale
        self.assemble_seconds += time.perf_counter() - start
        return values

    fixed_scale = 1.0e6  # [N/m], diagonal of held directions: any positive number of the matrix's size

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state after an increment has converged: plastic set, damage and contact flags kept."""
        s = self.structure
        r = np.einsum("ks,ksi->ki", s.bonds.coefficients[:, 0], ev.points[s.bonds.nodes])
        slip = np.sqrt(np.maximum(np.einsum("ki,ki->k", r, r) - ev.opening**2, 0.0))
        gap = ev.opening - s.bonds.law[:, OFFSET]
        near = slip < s.bonds.reach
        touching = np.where(
            state.touching, near | (gap > 0.0) & near, (slip < 0.8 * s.bonds.reach) & (gap >= 0.0)
        )
        after = replace(
            state,
            points=ev.points.copy(),
            plastic=ev.plastic.copy(),
            hardening=ev.hardening.copy(),
            turn=ev.turn.copy(),
            worst=ev.worst.copy(),
            touching=touching,
            angle=ev.angle.copy(),
        )
        for law in self.laws:
            after = law.commit(after, ev)
        return after

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
