"""The door's own elastic answer to a push: one factor for all pushes, contacts that press and never pull.

Linear about a state of rest: displacement u = K^-1 (lambda b + N^T (p - p0)), with b the push's unit force, N
one row per contact (how its gap grows with u) and p >= 0 the contacts' forces (p0 of them at rest).  The gap
g = g0 + N u and the force meet p = k <-g>.  With the tips' travel b.u = T given, lambda goes out and what is
left is a linear complementarity problem in p alone,

    w = q + M p >= 0,   p >= 0,   p.w = 0,   M = C - h h^T / a + 1 / k,
    C = N K^-1 N^T,   h = N K^-1 b,   a = b K^-1 b,

solved by block pivoting.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy import sparse

from sim.bond import LENGTH, OFFSET, PRESSURE, bond_response, separation
from sim.factor import Factor
from sim.increment import VISCOUS_N_PER_M
from sim.network import Load, Network, State
from sim.newton import factor_tangent
from sim.push import Push

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

TRAVEL_M = 1.0e-3  # the small finite push asked for: contacts nearer than that can close under it
REACH_M = 2.0e-3  # contacts further open than this are left out
TWO_SIDED_RATIO = 0.999  # what opens as stiffly as it closes holds both ways
OPEN_M = 1.0e-7  # a hair, to stand on the side where a bond opens
PATIENCE = 5  # guesses in a row that may bring nothing


@dataclass(frozen=True)
class Contacts:
    """Places that may press and never pull.

    rows : sparse, shape (c, 3 n), growth of each gap with the displacement
    gap_m : shape (c,), gaps now, negative where they press;  stiffness_n_per_m : shape (c,)
    """

    rows: sparse.csr_matrix
    gap_m: Floats
    stiffness_n_per_m: Floats


@dataclass(frozen=True, eq=False)
class Elastic:
    """The answer of one door at one state of rest, ready for any number of pushes.

    contacts : what may press;  factor : of the stiffness with none of them
    flex : shape (n, 3, c), displacement by a unit force of each contact [m/N]
    compliance : shape (c, c), of the contacts among themselves [m/N]
    """

    contacts: Contacts
    factor: Factor
    flex: Floats
    compliance: Floats

    def way(self, push: Push, travel_m: float = TRAVEL_M) -> Floats:
        """Return how far the first pad's middle goes on the metal when the tips travel, shape (3,) [m]."""
        pad = push.pads[0]
        free, scale, force_n = self._solve(push, travel_m)
        way: Floats = pad.weights @ (scale * free[pad.nodes] + self.flex[pad.nodes] @ force_n)
        return way

    def contact(self, push: Push, travel_m: float = TRAVEL_M) -> tuple[Floats, Floats]:
        """Return gap [m] and force [N] of every contact when the tips travel, shapes (c,)."""
        free, scale, more_n = self._solve(push, travel_m)
        moved = scale * free + self.flex @ more_n
        return self.contacts.gap_m + self.contacts.rows @ moved.ravel(), more_n + self._rest_n

    @property
    def _rest_n(self) -> Floats:
        contacts = self.contacts
        rest: Floats = contacts.stiffness_n_per_m * np.maximum(-contacts.gap_m, 0.0)
        return rest

    def _solve(self, push: Push, travel_m: float) -> tuple[Floats, float, Floats]:
        """Return displacement by one newton of push (n, 3), the push [N], and the contacts' gain (c,) [N]."""
        contacts, rest_n = self.contacts, self._rest_n
        load = np.zeros(self.flex.shape[:2])
        nodes, weights = push.both()
        load[nodes] = weights[:, None] * push.direction
        free = self.factor.solve(load.ravel())
        own, gained = float(load.ravel() @ free), contacts.rows @ free
        coupled = self.compliance - np.outer(gained, gained) / own
        matrix = coupled + np.diag(1.0 / contacts.stiffness_n_per_m)
        force_n = pressing(matrix, contacts.gap_m + gained * (travel_m / own) - coupled @ rest_n)
        more_n = force_n - rest_n
        return free.reshape(-1, 3), (travel_m - float(gained @ more_n)) / own, more_n


def pressing(matrix: Floats, gap: Floats) -> Floats:
    """Return the forces p >= 0 with gap + matrix p >= 0 and one of both zero at each contact, shape (c,).

    Block pivoting [judice-1994]: which contacts press is guessed, and guessed again from the signs, all at
    once while that leads on, and one by one, the last first, where it does not; so it ends.

    Parameters
    ----------
    matrix : shape (c, c), symmetric and positive definite;  gap : shape (c,)
    """
    press = gap < 0.0
    floor = 1.0e-12 * float(np.abs(gap).max(initial=0.0))
    fewest, patience = len(gap) + 1, PATIENCE
    while True:
        chosen = np.flatnonzero(press)
        force = np.zeros(len(gap))
        force[chosen] = np.linalg.solve(matrix[np.ix_(chosen, chosen)], -gap[chosen])
        wrong = np.where(press, force < 0.0, gap + matrix[:, chosen] @ force[chosen] < -floor)
        count = int(wrong.sum())
        if count == 0:
            return force
        if count < fewest or patience > 0:
            patience = PATIENCE if count < fewest else patience - 1
            fewest = min(count, fewest)
            press = press ^ wrong
        else:
            press[np.flatnonzero(wrong)[-1]] ^= True


def elastic(network: Network, state: State) -> Elastic:
    """Return the elastic answer of a network at a state of rest (no tips on it)."""
    contacts, bonds = _contacts(network, state)
    own, open_state = _opened(network, state, bonds)
    load = Load((), None, VISCOUS_N_PER_M, state.points)
    ev = own.evaluate(state.points, open_state, load)
    ev.flowing[:] = False  # a small push from rest is elastic, also where the metal has flowed before
    factor_tangent(own, ev, open_state, load, whole=True)
    units = contacts.rows.toarray()
    flex = np.array([own.factor.solve(row) for row in units]).reshape(len(units), -1).T
    shape = (*state.points.shape, len(units))
    return Elastic(contacts, own.factor, flex.reshape(shape), contacts.rows @ flex)


def _opened(network: Network, state: State, bonds: Ints) -> tuple[Network, State]:
    """Return the network with no tips and the state with no rim, some bonds on the side where they open.

    A bond's force is S g + (P - S) min(g, 0): the first part stays in the stiffness, the second is a contact.
    """
    held = network.structure.bonds
    law = held.law.copy()
    points = state.points
    gradient, room = np.empty((3, 3)), np.empty((3, 3))
    for k in bonds:
        variables = held.coefficients[k] @ points[held.nodes[k]]
        distance = separation(variables, bool(held.plane[k]), gradient, room)
        law[k, OFFSET] = min(law[k, OFFSET], distance - OPEN_M)
    own = network.with_drives([])
    own.structure = replace(network.structure, bonds=replace(held, law=law))
    touching = state.touching.copy()
    touching[bonds] = False
    return own, replace(state, on_rim=np.zeros_like(state.on_rim), touching=touching)


def _contacts(network: Network, state: State) -> tuple[Contacts, Ints]:
    """Return what may press, and which bonds are among it."""
    s = network.structure
    rim = np.flatnonzero(state.on_rim)
    rows = np.zeros((len(rim), len(s.points), 3))
    rows[np.arange(len(rim)), s.rim[rim], 1] = s.outboard_sign
    gap = s.outboard_sign * (state.points[s.rim[rim], 1] - s.rim_y_m[rim])
    stiffness = np.full(len(rim), s.rim_stiffness_n_per_m)
    bonds, bond_rows, bond_gap, bond_stiffness = _bond_contacts(network, state)
    found = Contacts(
        sparse.csr_matrix(np.concatenate([rows, bond_rows]).reshape(-1, s.points.size)),
        np.concatenate([gap, bond_gap]),
        np.concatenate([stiffness, bond_stiffness]),
    )
    return found, bonds


def _bond_contacts(network: Network, state: State) -> tuple[Ints, Floats, Floats, Floats]:
    """Return the bonds that press but hardly pull and are near enough: ids, rows, gaps, stiffnesses."""
    bonds, points = network.structure.bonds, state.points
    ids, rows, gaps, stiffnesses = [], [], [], []
    gradient, room = np.empty((3, 3)), np.empty((3, 3))
    for k in np.flatnonzero(state.touching):
        law = bonds.law[k]
        variables = bonds.coefficients[k] @ points[bonds.nodes[k]]
        gap = separation(variables, bool(bonds.plane[k]), gradient, room) - law[OFFSET]
        held = bond_response(0.0, float(state.worst[k]), law)[3]
        if gap > REACH_M or held > TWO_SIDED_RATIO * law[PRESSURE]:
            continue
        row = np.zeros_like(points)
        np.add.at(row, bonds.nodes[k], np.einsum("vs,vi->si", bonds.coefficients[k], gradient))
        ids.append(int(k))
        rows.append(row)
        gaps.append(gap)
        stiffnesses.append((law[PRESSURE] - held) * law[LENGTH])
    return (
        np.array(ids, dtype=np.int64),
        np.array(rows, dtype=float).reshape(-1, *points.shape),
        np.array(gaps, dtype=float),
        np.array(stiffnesses, dtype=float),
    )
