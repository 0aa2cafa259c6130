"""The undeformed door as input for a general-purpose finite-element program: shells, beams, springs.

The text is the keyword format that several of them read.  Everything is SI (m, N, Pa, kg).

* A sheet becomes shells of three nodes (S3), or of six with nodes on the middles of the edges (S6).  A form
  ratio f stands the same metal f times further apart: thickness f t and modulus E / f give the membrane E t
  and the bending f^2 E t^3 / 12 of the model.
* A beam becomes a square section of side a = sqrt(12 EI / EA) and modulus EA / a^2, which has both its
  stiffnesses.  It has nodes of its own, tied to those of the sheets in their motion and not in their turn,
  because the model's beams are free to twist.  At its first node it is joined to the sheet in both, so that
  it does not turn about itself.
* Whatever holds - seam points, welds, mastic pads, latch, hinges, feet of the bar - becomes a reference node
  whose motion an equation ties to the model's own weighted sum of nodes, on springs to the ground: along the
  joint's normal in direction 1 and across it in 2 and 3.  These hold in both senses; pressure of sheets that
  touch, the rim, yield of seams and strength of ties are not linear and are left out.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from sim.bond import LENGTH, OFFSET, PRESSURE, RHO, STIFFNESS
from sim.structure import Beam, Bonds, Section, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

HOLDING_KINDS = ("seam", "weld", "pad")
SMALL = 1.0e-12
STRAIGHT = 1.0e-3
"""A beam that leaves its chord by less than this share of it can turn about itself."""


@dataclass(frozen=True)
class NodeLoad:
    """One load case: a unit vector times weights on nodes, summing to one newton.

    nodes : shape (k,);  weights : shape (k,);  direction : shape (3,)
    """

    name: str
    nodes: Ints
    weights: Floats
    direction: Floats


@dataclass(frozen=True)
class Spring:
    """A weighted sum of nodes on springs: along its axes the stiffnesses hold what the sum moves.

    axes : shape (3, 3), rows;  stiffness_n_per_m : shape (3,)
    """

    name: str
    nodes: Ints
    weights: Floats
    axes: Floats
    stiffness_n_per_m: Floats


def elastic(structure: Structure) -> Structure:
    """Return what of a structure is linear near rest: what holds, in both senses; no contact, no rim."""
    bonds = structure.bonds
    keep = np.zeros(len(bonds.law), dtype=bool)
    for kind in HOLDING_KINDS:
        keep |= bonds.of(kind)
    law = bonds.law[keep].copy()
    law[:, PRESSURE], law[:, OFFSET] = law[:, STIFFNESS], bonds.law[keep, OFFSET]
    held = Bonds(
        bonds.nodes[keep],
        bonds.coefficients[keep],
        bonds.plane[keep],
        law,
        bonds.kind[keep],
        bonds.kinds,
        bonds.station[keep],
        bonds.reach[keep],
    )
    none = np.zeros(0)
    return replace(structure, bonds=held, rim=none.astype(np.int64), rim_y_m=none, sliders=())


def springs(structure: Structure) -> tuple[Spring, ...]:
    """Return the springs that stand for bonds and ties of an elastic structure."""
    out = []
    bonds, x = structure.bonds, structure.points
    for k, row in enumerate(bonds.law):
        nodes, weights = _summed(bonds.nodes[k], bonds.coefficients[k, 0])
        first, second = (bonds.coefficients[k, i] @ x[bonds.nodes[k]] for i in (1, 2))
        normal = np.cross(first, second) if bonds.plane[k] else first
        along = row[STIFFNESS] * row[LENGTH]
        kind = bonds.kinds[int(bonds.kind[k])]
        across = row[RHO] * along
        out.append(Spring(kind, nodes, weights, _axes(normal), np.array([along, across, across])))
    for tie in structure.ties:
        if np.isfinite(tie.limit_n).all():
            stiff = np.full(3, tie.stiffness_n_per_m)
            out.append(Spring(tie.name, *_summed(tie.nodes, tie.weights), np.eye(3), stiff))
    return tuple(out)


def _summed(nodes: Ints, weights: Floats) -> tuple[Ints, Floats]:
    """Return each node once, with the sum of its weights, where that is not zero."""
    unique, place = np.unique(nodes, return_inverse=True)
    total: Floats = np.bincount(place.ravel(), weights).astype(np.float64)
    keep = np.abs(total) > SMALL
    return unique[keep].astype(np.int64), total[keep]


def _axes(normal: Floats) -> Floats:
    """Return three unit rows at right angles, the first along a vector."""
    first = normal / np.linalg.norm(normal)
    other = np.eye(3)[int(np.argmin(np.abs(first)))]
    second = np.cross(first, other)
    second /= np.linalg.norm(second)
    return np.stack([first, second, np.cross(first, second)])


@dataclass(frozen=True)
class _Nodes:
    """Numbering of the file: the model's nodes that bear something, middles of edges, beams on sheets.

    number : shape (n,), of the model's nodes, -1 where nothing is
    points : shape (k, 3), in the file's order
    middle : by the edge's two nodes;  own : of a beam's node that stands on a sheet, by the model's node
    """

    number: Ints
    points: Floats
    middle: Mapping[tuple[int, int], int]
    own: Mapping[int, int]

    def of_beam(self, node: int) -> int:
        """Return the number of a beam's node."""
        return self.own.get(node, int(self.number[node]))


def _nodes(structure: Structure, *, quadratic: bool) -> _Nodes:
    t, chains = structure.triangles, [beam.nodes for beam in structure.beams]
    used = np.unique(np.concatenate([t.ravel(), *chains]))
    number = np.full(len(structure.points), -1, dtype=np.int64)
    number[used] = np.arange(1, len(used) + 1)
    points = [structure.points[used]]
    first = len(used) + 1
    middle: dict[tuple[int, int], int] = {}
    if quadratic:
        edges = np.concatenate([t[:, [0, 1]], t[:, [1, 2]], t[:, [2, 0]]])
        edges = np.unique(np.sort(edges, axis=1), axis=0)
        middle = {(int(a), int(b)): first + k for k, (a, b) in enumerate(edges)}
        points.append(0.5 * (structure.points[edges[:, 0]] + structure.points[edges[:, 1]]))
        first += len(edges)
    both = np.intersect1d(t, np.concatenate([np.zeros(0, np.int64), *[chain[1:] for chain in chains]]))
    points.append(structure.points[both])
    own = {int(node): first + k for k, node in enumerate(both)}
    return _Nodes(number, np.concatenate(points), middle, own)


def shell_input(
    structure: Structure, title: str, *, loads: Sequence[NodeLoad] = (), quadratic: bool = False
) -> str:
    """Return the whole input: the elastic structure, and a linear step for each load case.

    Parameters
    ----------
    structure : untouched; what is not linear in it is left out
    loads : load cases; without one the file holds the model alone
    quadratic : six-node shells, which bend well where three-node ones are too stiff
    """
    s = elastic(structure)
    nodes = _nodes(s, quadratic=quadratic)
    held = springs(s)
    lines = [f"** {title}", "** SI units: m, N, Pa, kg; x rearward, y to the right, z up", "*NODE, NSET=ALL"]
    lines += [f"{k + 1}, {x:.9g}, {y:.9g}, {z:.9g}" for k, (x, y, z) in enumerate(nodes.points)]
    lines += _shells(s, nodes)
    lines += _beams(s, nodes, first=len(s.triangles) + 1)
    first = len(s.triangles) + sum(len(beam.nodes) - 1 for beam in s.beams) + 1
    lines += _springs(s, held, nodes, first=first)
    for load in loads:
        lines += _step(load, nodes)
    return "\n".join(lines) + "\n"


def _shells(s: Structure, nodes: _Nodes) -> list[str]:
    kind = "S6" if nodes.middle else "S3"
    lines = []
    for index, section in enumerate(s.sections):
        ids = np.flatnonzero(s.triangle_section == index)
        if not len(ids):
            continue
        name = _name(section.name)
        lines.append(f"*ELEMENT, TYPE={kind}, ELSET={name}")
        for t in ids:
            a, b, c = (int(n) for n in s.triangles[t])
            row = [nodes.number[a], nodes.number[b], nodes.number[c]]
            if nodes.middle:
                row += [nodes.middle[min(p, q), max(p, q)] for p, q in ((a, b), (b, c), (c, a))]
            lines.append(", ".join(str(n) for n in (t + 1, *row)))
        lines += _metal(section)
        lines += [
            f"*SHELL SECTION, ELSET={name}, MATERIAL={name}",
            f"{section.form_ratio * section.thickness_m:.9g}",
        ]
    return lines


def _metal(section: Section) -> list[str]:
    metal, ratio = section.metal, section.form_ratio
    lines = [] if ratio == 1.0 else [f"** form ratio {ratio:g}: thickness times, modulus and density over"]
    return [
        *lines,
        f"*MATERIAL, NAME={_name(section.name)}",
        "*ELASTIC",
        f"{metal.young_pa / ratio:.9e}, {metal.poisson_ratio:.9g}",
        "*DENSITY",
        f"{metal.density_kg_per_m3 / ratio:.9g}",
    ]


def _beams(s: Structure, nodes: _Nodes, *, first: int) -> list[str]:
    lines = []
    for beam in s.beams:
        name, number = _name(beam.name), [nodes.of_beam(int(node)) for node in beam.nodes]
        lines.append(f"*ELEMENT, TYPE=B31, ELSET={name}")
        for a, b in pairwise(number):
            lines.append(f"{first}, {a}, {b}")
            first += 1
        lines += _beam_section(beam, name, s.points[beam.nodes])
        along, away = _chord(s.points[beam.nodes])
        if away < STRAIGHT * float(np.linalg.norm(along)) and number[0] not in nodes.number[s.triangles]:
            turn = 4 + int(along.argmax())
            lines += ["** straight and on springs: free to turn about itself but for this", "*BOUNDARY"]
            lines.append(f"{number[0]}, {turn}, {turn}")
    for node, own in nodes.own.items():
        for i in (1, 2, 3):
            lines += ["*EQUATION", "2", f"{own}, {i}, -1., {nodes.number[node]}, {i}, 1."]
    return lines


def _chord(points: Floats) -> tuple[Floats, float]:
    """Return the size of a chain's chord by axis, shape (3,), and how far the chain leaves it [m]."""
    chord = points[-1] - points[0]
    from_start = points - points[0]
    beside = from_start - np.outer(from_start @ chord, chord) / float(chord @ chord)
    return np.abs(chord), float(np.linalg.norm(beside, axis=1).max())


def _beam_section(beam: Beam, name: str, points: Floats) -> list[str]:
    side = float(np.sqrt(12.0 * beam.bending_n_m2 / beam.axial_n))
    _, _, turns = np.linalg.svd(points - points.mean(axis=0))
    return [
        f"*MATERIAL, NAME={name}",
        "*ELASTIC",
        f"{beam.axial_n / side**2:.9e}, 0.3",
        f"*BEAM SECTION, ELSET={name}, MATERIAL={name}, SECTION=RECT",
        f"{side:.9g}, {side:.9g}",
        ", ".join(f"{v:.9g}" for v in turns[2]),
    ]


def _springs(s: Structure, held: Sequence[Spring], nodes: _Nodes, *, first: int) -> list[str]:
    """Return reference nodes, the equations that move them, and a spring to the ground for each direction."""
    start = len(nodes.points) + 1
    lines = ["*NODE, NSET=HELD"]
    equations = []
    by_stiffness: dict[tuple[int, float], list[int]] = {}
    for k, spring in enumerate(held):
        place = np.abs(spring.weights) @ s.points[spring.nodes] / np.abs(spring.weights).sum()
        lines.append(f"{start + k}, " + ", ".join(f"{v:.9g}" for v in place))
        for i in range(3):
            terms = [(start + k, i + 1, -1.0)]
            for node, weight in zip(spring.nodes, spring.weights, strict=True):
                parts = weight * spring.axes[i]
                terms += [
                    (int(nodes.number[node]), j + 1, float(parts[j]))
                    for j in range(3)
                    if abs(parts[j]) > SMALL
                ]
            equations += ["*EQUATION", str(len(terms))]
            equations += [
                ", ".join(f"{n}, {d}, {c:.9g}" for n, d, c in terms[m : m + 4])
                for m in range(0, len(terms), 4)
            ]
            stiffness = float(spring.stiffness_n_per_m[i])
            by_stiffness.setdefault((i + 1, stiffness), []).append(start + k)
    for number, ((direction, stiffness), at) in enumerate(by_stiffness.items()):
        name = f"HOLD{number + 1}"
        lines.append(f"*ELEMENT, TYPE=SPRING1, ELSET={name}")
        for node in at:
            lines.append(f"{first}, {node}")
            first += 1
        lines += [f"*SPRING, ELSET={name}", str(direction), f"{stiffness:.9e}"]
    return lines + equations


def _step(load: NodeLoad, nodes: _Nodes) -> list[str]:
    lines = [f"** load case: {load.name}", "*STEP", "*STATIC", "*CLOAD, OP=NEW"]
    for node, weight in zip(load.nodes, load.weights, strict=True):
        for i in range(3):
            if abs(weight * load.direction[i]) > SMALL:
                lines.append(f"{nodes.number[node]}, {i + 1}, {weight * load.direction[i]:.9g}")
    return [*lines, "*NODE PRINT, NSET=ALL", "U", "*END STEP"]


def file_number(structure: Structure) -> Ints:
    """Return the number in the file of each of the model's nodes, shape (n,); -1 bears nothing."""
    return _nodes(structure, quadratic=False).number


def _name(words: str) -> str:
    return words.upper().replace(" ", "_")
