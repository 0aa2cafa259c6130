"""What presses from below: the ground, the car's stands and props, as laws of the network.

The ground presses on nodes, k <-h>^2 / 2 of how deep each stands in it, and never pulls; the stands carry
the car's weight, each its share P at rest, and lift off when that is gone,

    k <P/k - dz>^2 / 2  +  P dz                                  dz: how far the car has risen there.

Both rub: a spring across holds up to friction x the force of the last converged step, then slides, the
convex potential of `sim.grip`.  What touched nothing before does not rub in its first step.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.law import Into
from sim.state import Evaluation, Load, State
from sim.structure import Structure
from sim.surround import Prop

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

GROUND_ROWS, GROUND_PUSH = "ground rows", "ground push"
"""Kept: one row (node, anchor (3), push [N]) per node on the ground.  Read: pushes (k,) of the near nodes."""
STAND_ROWS, STAND_PUSH = "stand rows", "stand push"
"""Kept: one row (anchor (3) [m], push [N]) per stand.  Read: pushes (stands,) [N]."""
PROP_FORCE = "prop force"
"""Read: forces (props, 3) [N] of the props on what they hold."""


def held_across(
    lag: Floats, limit_n: Floats, stiffness: Floats | float
) -> tuple[Floats, Floats, Floats, Floats]:
    """Return force (k, 3), stored and spent energy (k,) and slide (k, 3) of springs that slide at a limit.

    Parameters
    ----------
    lag : shape (k, 3), how far each has moved across since its anchor [m]
    limit_n : shape (k,)
    """
    size = np.sqrt(np.einsum("ki,ki->k", lag, lag))
    held = np.minimum(stiffness * size, limit_n)
    unit = lag / np.maximum(size, 1.0e-30)[:, None]
    slid = size - held / stiffness
    return held[:, None] * unit, 0.5 * held**2 / stiffness, held * slid, slid[:, None] * unit


def across_stiffness(lag: Floats, limit_n: float, stiffness: float, normal: Floats) -> Floats:
    """Return the positive second derivative (3, 3) of one such spring across a normal [N/m]."""
    plane = np.eye(3) - np.outer(normal, normal)
    size = float(np.sqrt(lag @ lag))
    if stiffness * size <= limit_n:
        return np.asarray(stiffness * plane)
    unit = lag / size
    return np.asarray(limit_n / size * (plane - np.outer(unit, unit)))


class OnGround:
    """The ground under the nodes near it: presses, never pulls, rubs."""

    name, line = "ground", "friction"
    means: Sequence[Ints] = ()

    def __init__(self, structure: Structure) -> None:
        surround = structure.surround
        assert surround is not None and surround.ground is not None
        self._ground, self._body, self._rest = surround.ground, surround.body, structure.points
        self.nodes = np.zeros(0, np.int64) if surround.near is None else surround.near.ground
        self._for: State | None = None

    @property
    def elements(self) -> Ints:
        """Return its nodes, each with the body's, shape (k, 5) or (k, 1)."""
        if self._body is None:
            return self.nodes[:, None]
        return np.column_stack([self.nodes, np.tile(self._body.nodes, (len(self.nodes), 1))])

    def _from(self, state: State) -> None:
        """Read weights, anchors and limits of an increment that begins in a state."""
        if self._for is state:
            return
        self._for, count = state, len(self.nodes)
        self._weights = (
            np.zeros((count, 0)) if self._body is None else self._body.weights(state.points[self.nodes])
        )
        self._anchor, self._limit = np.zeros((count, 3)), np.zeros(count)
        rows = state.kept.get(GROUND_ROWS)
        if rows is not None and count:
            ids = rows[:, 0].astype(np.int64)
            slot = np.minimum(np.searchsorted(self.nodes, ids), count - 1)
            here = self.nodes[slot] == ids
            self._anchor[slot[here]] = rows[here, 1:4]
            self._limit[slot[here]] = self._ground.friction_ratio * rows[here, 4]

    def places(self, points: Floats) -> Floats:
        """Return where its nodes stand over the ground, shape (k, 3) [m]."""
        out: Floats = points[self.nodes]
        if self._body is not None:
            out = out + self._weights @ (points[self._body.nodes] - self._rest[self._body.nodes])
        return out

    def _lag(self, places: Floats) -> Floats:
        n = self._ground.normal
        lag = np.where(self._limit[:, None] > 0.0, places - self._anchor, 0.0)
        out: Floats = lag - (lag @ n)[:, None] * n
        return out

    def forces(self, points: Floats, state: State, _: Load, ev: Evaluation) -> None:
        """Add the ground's push and friction; fill ``ev.read`` with the pushes (k,) [N], >= 0."""
        ev.stored[self.name] = ev.spent[self.name] = 0.0
        if not len(self.nodes):
            ev.read[GROUND_PUSH] = np.zeros(0)
            return
        self._from(state)
        g = self._ground
        places = self.places(points)
        deep = np.minimum(places @ g.normal - g.level_m, 0.0)
        across, kept, heat, _slid = held_across(self._lag(places), self._limit, g.stiffness_n_per_m)
        force = g.stiffness_n_per_m * deep[:, None] * g.normal + across
        ev.forces[self.nodes] += force
        if self._body is not None:
            ev.forces[self._body.nodes] += self._weights.T @ force
        ev.stored[self.name] = 0.5 * g.stiffness_n_per_m * float(deep @ deep) + float(kept.sum())
        ev.spent[self.name] = float(heat.sum())
        ev.read[GROUND_PUSH] = -g.stiffness_n_per_m * deep

    def stiffness(self, ev: Evaluation, state: State, _: Load, into: Into) -> None:
        """Add the nodes that press or rub."""
        if not len(self.nodes):
            return
        self._from(state)
        g, push = self._ground, ev.read[GROUND_PUSH]
        lag = self._lag(self.places(ev.points))
        on = np.flatnonzero((push > 0.0) | (self._limit > 0.0))
        normal = g.stiffness_n_per_m * np.outer(g.normal, g.normal)
        for i in on.tolist():
            k = across_stiffness(lag[i], float(self._limit[i]), g.stiffness_n_per_m, g.normal)
            if self._limit[i] <= 0.0:
                k = np.zeros((3, 3))
            if push[i] > 0.0:
                k = k + normal
            w = np.append(1.0, self._weights[i])
            one = np.asarray(np.kron(np.outer(w, w), k), dtype=float)
            into.group(1, np.array([i]), self.elements[i : i + 1], one[None])

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state with where each node on the ground is held and what it presses with."""
        kept = {key: value for key, value in state.kept.items() if key != GROUND_ROWS}
        push = ev.read.get(GROUND_PUSH)
        if push is None or not (push > 0.0).any() or self._for is None:
            return replace(state, kept=kept) if len(kept) < len(state.kept) else state
        on = push > 0.0
        places = self.places(ev.points)
        slid = held_across(self._lag(places), self._limit, self._ground.stiffness_n_per_m)[3]
        anchor = np.where(self._limit[:, None] > 0.0, self._anchor + slid, places)
        kept[GROUND_ROWS] = np.column_stack([self.nodes.astype(float), anchor, push])[on]
        return replace(state, kept=kept)


class Stands:
    """The wheels' springs, or the blocks, under the car's body."""

    name, line = "stands", "friction"

    def __init__(self, structure: Structure) -> None:
        surround = structure.surround
        assert surround is not None and surround.body is not None
        self._body, self._rest = surround.body, structure.points
        down = surround.gravity_m_s2
        self._up = -down / float(np.linalg.norm(down))
        stands = self._body.stands
        self._weights = self._body.weights(np.array([s.place for s in stands]).reshape(-1, 3))
        self._k = np.array([s.up_n_per_m for s in stands])
        self._across = np.array([s.across_n_per_m for s in stands])
        self._carried = np.array([s.carried_n for s in stands])
        self._friction = np.array([s.friction_ratio for s in stands])

    @property
    def means(self) -> Sequence[Ints]:
        """Return the body nodes, once per stand."""
        return [self._body.nodes for _ in self._body.stands]

    def _moved(self, points: Floats) -> Floats:
        out: Floats = self._weights @ (points[self._body.nodes] - self._rest[self._body.nodes])
        return out

    def _rows(self, state: State) -> tuple[Floats, Floats]:
        rows = state.kept.get(STAND_ROWS)
        if rows is None:
            return np.zeros((len(self._k), 3)), self._friction * self._carried
        return rows[:, :3], self._friction * rows[:, 3]

    def _lag(self, moved: Floats, anchor: Floats) -> Floats:
        lag = moved - anchor
        out: Floats = lag - (lag @ self._up)[:, None] * self._up
        return out

    def forces(self, points: Floats, state: State, _: Load, ev: Evaluation) -> None:
        """Add what the stands push beyond the weight they carry; fill ``ev.read`` with the pushes [N]."""
        moved = self._moved(points)
        anchor, limit = self._rows(state)
        risen = moved @ self._up
        push = np.maximum(self._carried - self._k * risen, 0.0)
        across, kept, heat, _slid = held_across(self._lag(moved, anchor), limit, self._across)
        force = (self._carried - push)[:, None] * self._up + across
        ev.forces[self._body.nodes] += self._weights.T @ force
        level = 0.5 * push**2 / self._k + self._carried * risen - 0.5 * self._carried**2 / self._k
        ev.stored[self.name] = float(level.sum() + kept.sum())
        ev.spent[self.name] = float(heat.sum())
        ev.read[STAND_PUSH] = push

    def stiffness(self, ev: Evaluation, state: State, _: Load, into: Into) -> None:
        """Add every stand that stands."""
        moved = self._moved(ev.points)
        anchor, limit = self._rows(state)
        lag = self._lag(moved, anchor)
        for i in range(len(self._k)):
            k = across_stiffness(lag[i], float(limit[i]), float(self._across[i]), self._up)
            if ev.read[STAND_PUSH][i] > 0.0:
                k = k + self._k[i] * np.outer(self._up, self._up)
            into.mean(i, self._weights[i], k)

    def commit(self, state: State, ev: Evaluation) -> State:
        """Return the state with each stand's anchor and push."""
        moved = self._moved(ev.points)
        anchor, limit = self._rows(state)
        slid = held_across(self._lag(moved, anchor), limit, self._across)[3]
        rows = np.column_stack([anchor + slid, ev.read[STAND_PUSH]])
        return replace(state, kept={**state.kept, STAND_ROWS: rows})


class Props:
    """Hands, straps and struts: springs from means of nodes to places."""

    name, line = "props", ""

    def __init__(self, structure: Structure) -> None:
        assert structure.surround is not None
        self._all = structure.surround.props
        self._rest = structure.points
        body = structure.surround.body
        self._body: Ints = np.zeros(0, np.int64) if body is None else body.nodes

    @property
    def means(self) -> Sequence[Ints]:
        """Return the nodes of each prop."""
        return [prop.nodes for prop in self._all]

    def _gap(self, prop: Prop, place: Floats, points: Floats) -> Floats:
        """Return how far what it holds is from a place, less what the prop lets it, shape (3,) [m]."""
        at = points[prop.nodes] - np.where(
            np.isin(prop.nodes, self._body)[:, None], self._rest[prop.nodes], 0.0
        )
        gap: Floats = prop.weights @ at - place
        if prop.way is None:
            return gap
        return np.asarray(min(float(gap @ prop.way), 0.0) * prop.way)

    def forces(self, points: Floats, _: State, load: Load, ev: Evaluation) -> None:
        """Add what the props hold with; fill ``ev.read`` with their forces on the metal (props, 3) [N]."""
        stored, read, moved = 0.0, np.zeros((len(self._all), 3)), load.places or {}
        for i, prop in enumerate(self._all):
            gap = self._gap(prop, moved.get(i, prop.place), points)
            read[i] = -prop.stiffness_n_per_m * gap
            stored += 0.5 * prop.stiffness_n_per_m * float(gap @ gap)
            ev.forces[prop.nodes] -= prop.weights[:, None] * read[i]
        ev.stored[self.name], ev.read[PROP_FORCE] = stored, read

    def stiffness(self, ev: Evaluation, _: State, __: Load, into: Into) -> None:
        """Add the props that hold."""
        for i, prop in enumerate(self._all):
            if not ev.read[PROP_FORCE][i].any():
                continue
            k = np.eye(3) if prop.way is None else np.outer(prop.way, prop.way)
            into.mean(i, prop.weights, prop.stiffness_n_per_m * k)

    def commit(self, state: State, _: Evaluation) -> State:
        """Return the state as it is."""
        return state
