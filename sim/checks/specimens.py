"""Small structures for the checks: strips, plates, how they are held and loaded, and their equilibrium.

Everything here only puts together what the rest of `sim` offers; no law and no reference value lives here.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.spatial import cKDTree

from meshes.lattice import Lattice, unit_patch
from sim.materials import Metal
from sim.network import Evaluation, Load, Network, State
from sim.newton import equilibrate
from sim.structure import Section, Structure, Tie

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Nodes = Ints | Sequence[int] | slice

NO_YIELD_PA = 1.0e18
STEEL_PA = 210.0e9
ANGLES_DEG = (0.0, 30.0, 45.0)


class NotSolvedError(RuntimeError):
    """A specimen found no equilibrium; says the residual and the number of iterations."""


def never() -> bool:
    """Return False: nobody asks to stop."""
    return False


def metal(
    *, young_pa: float = STEEL_PA, nu: float = 0.3, yield_pa: float = NO_YIELD_PA, hardening_pa: float = 0.0
) -> Metal:
    """Return a metal; without a yield stress it never yields."""
    return Metal("specimen", young_pa, nu, yield_pa, hardening_pa)


def sheet(lattice: Lattice, thickness_m: float, of: Metal) -> Structure:
    """Return the structure of one flat sheet."""
    triangles = np.array(lattice.triangles, dtype=np.int64)
    section = Section("sheet", thickness_m, of, "folding skin")
    return Structure(np.array(lattice.points), triangles, np.zeros(len(triangles), np.int64), (section,))


def rows(length_m: float, width_m: float, columns: int, count: int) -> Lattice:
    """Return the rectangle filled by the door's own kind of patch: rows along the length."""
    unit = unit_patch(columns, count)
    return Lattice(unit.points * np.array([length_m, width_m, 1.0]), unit.triangles, unit.boundary)


def node_at(points: Floats, *place: float) -> int:
    """Return the node nearest to a place given by its first coordinates."""
    return int(np.argmin(np.sum((points[:, : len(place)] - np.array(place)) ** 2, axis=1)))


def held(structure: Structure, *sets: tuple[Nodes, str]) -> Structure:
    """Return the structure with directions held; each set is (nodes, "xz") and the like."""
    fixed = np.zeros(structure.points.shape, dtype=bool)
    for nodes, directions in sets:
        for letter in directions:
            fixed[nodes, "xyz".index(letter)] = True
    return structure.with_fixed(fixed)


def rim_edges(triangles: Ints) -> Iterator[tuple[int, int, int]]:
    """Yield the edges of one triangle only, each as (start, end, opposite corner)."""
    turns = ((0, 1, 2), (1, 2, 0), (2, 0, 1))
    edges = [(int(t[i]), int(t[j]), int(t[k])) for t in triangles for i, j, k in turns]
    both = {(a, b) for a, b, _ in edges}
    yield from ((a, b, c) for a, b, c in edges if (b, a) not in both)


def clamped(structure: Structure, chain: Nodes) -> Structure:
    """Return the structure clamped along a straight chain of rim nodes: no deflection, no slope.

    Each triangle on the chain gets its mirror image, without stiffness of its own, whose tip is tied to
    move as the inner one does; the hinge between the two then sees the slope the clamp forbids.  The tie is
    ten thousand times as stiff as the sheet's bending over one triangle; stiffer, and its rounding shows.
    """
    thickness, inner = structure.sections[0].thickness_m, structure.sections[0].metal
    points, on = structure.points, set(np.asarray(chain).tolist())
    new: list[Floats] = []
    triangles, ties = [], []
    for a, b, c in rim_edges(structure.triangles):
        if a not in on or b not in on:
            continue
        unit = (points[b] - points[a]) / np.linalg.norm(points[b] - points[a])
        foot = points[a] + unit * (unit @ (points[c] - points[a]))
        tip = len(points) + len(new)
        new.append(2.0 * foot - points[c])
        triangles.append((b, a, tip))
        pair, weights = np.array([tip, c], dtype=np.int64), np.array([1.0, -1.0])
        stiffness = 1.0e4 * inner.young_pa * thickness**3 / 12.0 / float(np.sum((points[c] - foot) ** 2))
        ties.append(Tie(f"mirror {tip}", pair, weights, stiffness, np.full(3, np.inf)))
    nothing = Section("mirror", thickness, replace(inner, young_pa=1.0e-9 * inner.young_pa), "folding skin")
    fixed = np.zeros(points.shape, bool) if structure.fixed is None else structure.fixed
    fixed = np.concatenate([fixed, np.zeros((len(new), 3), bool)])
    fixed[np.asarray(chain)] = True
    return replace(
        structure,
        points=np.concatenate([points, np.array(new)]),
        triangles=np.concatenate([structure.triangles, np.array(triangles, dtype=np.int64)]),
        triangle_section=np.concatenate(
            [structure.triangle_section, np.full(len(new), len(structure.sections))]
        ),
        sections=(*structure.sections, nothing),
        ties=(*structure.ties, *ties),
        fixed=fixed,
    )


def shared(points: Floats, chain: Ints, total: ArrayLike) -> Floats:
    """Return nodal shares (k, 3) of a total evenly spread along a chain of nodes, by tributary length."""
    size = np.linalg.norm(np.diff(points[chain], axis=0), axis=1)
    share = np.zeros(len(chain))
    share[:-1] += 0.5 * size
    share[1:] += 0.5 * size
    out: Floats = share[:, None] / share.sum() * np.asarray(total, dtype=float)
    return out


def spread_over(points: Floats, triangles: Ints, per_area: ArrayLike) -> Floats:
    """Return nodal forces (n, 3) of a force per area on flat triangles."""
    a, b, c = (points[triangles[:, i]] for i in range(3))
    area = 0.5 * np.linalg.norm(np.cross(b - a, c - a), axis=1)
    out = np.zeros_like(points)
    for i in range(3):
        np.add.at(out, triangles[:, i], area[:, None] / 3.0 * np.asarray(per_area, dtype=float))
    return out


def edge_couples(structure: Structure, chain: Ints, moment_n: float) -> Floats:
    """Return nodal forces (n, 3) of an even moment per length along a rim chain, linear in each rim triangle.

    Positive moment turns the inside up: it works on the slope dw/dn with n inwards.
    """
    points, on = structure.points, set(np.asarray(chain).tolist())
    out = np.zeros_like(points)
    for a, b, c in rim_edges(structure.triangles):
        if a not in on or b not in on:
            continue
        along = points[b] - points[a]
        size = np.linalg.norm(along)
        share = (points[c] - points[a]) @ along / size**2
        height = np.linalg.norm(points[c] - points[a] - share * along)
        for node, weight in ((c, 1.0), (a, share - 1.0), (b, -share)):
            out[node, 2] += moment_n * size * weight / height
    return out


@dataclass(frozen=True)
class Answer:
    """A solved structure: where its nodes are, what holds it, the evaluation and the network."""

    points: Floats
    moved: Floats
    reactions: Floats
    evaluation: Evaluation
    network: Network


def settled(
    network: Network, state: State, load: Load, start: Floats, cancelled: Callable[[], bool] = never
) -> Evaluation:
    """Return the equilibrium under a load.

    Raises
    ------
    NotSolvedError
        When the descent did not converge, or had nothing to do.
    """
    answer = equilibrate(network, state, load, start, cancelled=cancelled)
    if answer.iteration_count == 0:
        raise NotSolvedError("the load is below the solver's force limit: nothing was solved")
    if not answer.converged:
        raise NotSolvedError(f"residual {answer.residual_n} N after {answer.iteration_count} iterations")
    return answer.evaluation


def solve(
    structure: Structure,
    dead_n: Floats | None = None,
    *,
    start: Floats | None = None,
    steps: int = 1,
    state: State | None = None,
) -> Answer:
    """Return the equilibrium under dead loads, reached in equal steps; held nodes stay as in `start`.

    Raises
    ------
    NotSolvedError
        As `settled`.
    """
    network = Network(structure)
    state = network.initial_state() if state is None else state
    x = structure.points.copy() if start is None else np.array(start)
    dead = np.zeros_like(structure.points) if dead_n is None else dead_n
    if len(dead) < len(structure.points):
        dead = np.concatenate([dead, np.zeros((len(structure.points) - len(dead), 3))])
    for k in range(1, steps + 1):
        state = replace(state, points=x)
        ev = settled(network, state, Load((), dead * k / steps), x)
        x = ev.points.copy()
    reactions = np.where(network.free, 0.0, ev.forces)
    return Answer(x, x - structure.points, reactions, ev, network)


def near(lattice: Lattice, place: tuple[float, float], radius_m: float) -> Ints:
    """Return the nodes within a radius of a place in the plane."""
    return np.array(cKDTree(lattice.points[:, :2]).query_ball_point(place, radius_m), dtype=np.int64)


def quadratic_fit(points: Floats, w: Floats) -> Floats:
    """Return (kxx, kyy, kxy) of the least-squares quadratic through deflections at points (k, 2+)."""
    x, y = points[:, 0] - points[:, 0].mean(), points[:, 1] - points[:, 1].mean()
    terms = np.column_stack([np.ones_like(x), x, y, 0.5 * x * x, 0.5 * y * y, x * y])
    found: Floats = np.linalg.lstsq(terms, w, rcond=None)[0][3:]
    return found
