"""What a model is made of, before it is compiled into a network: sheets, beams, bonds, ties, rims.

Everything is generic; a door, a test strip and a peel specimen are all a `Structure`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from sim.materials import Metal
from sim.surround import Surround

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True)
class Section:
    """A sheet's thickness and metal; ``group`` names the line of the ledger its folding goes to."""

    name: str
    thickness_m: float
    metal: Metal
    group: str = "folding skin"
    form_ratio: float = 1.0


@dataclass(frozen=True)
class Beam:
    """A chain of nodes that stretches and bends; twist is free.

    Parameters
    ----------
    nodes : shape (k,)
    axial_n : E A [N];  bending_n_m2 : E I [N m^2];  plastic_moment_n_m : [N m]
    beside : nodes of its own body, against which its bends' directions are read; None is all nodes
    """

    name: str
    nodes: Ints
    axial_n: float
    bending_n_m2: float
    plastic_moment_n_m: float
    group: str = "folding bar"
    beside: Ints | None = None


@dataclass(frozen=True)
class Bonds:
    """Point pairs that hold, slip, part or press: seam points, welds, pads, touching sheets.

    nodes : shape (k, 6);  coefficients : shape (k, 3, 6) of (r, p, q) on those nodes
    plane : shape (k,), normal from p x q (True) or from p alone
    law : shape (k, 8), rows of `sim.bond.bond_law`
    kind : shape (k,), index into ``kinds`` ("seam", "weld", "pad", "touch", ...)
    station : shape (k,), place along the seam [m], NaN where there is none
    reach : shape (k,), slip beyond which pressure no longer acts [m]
    """

    nodes: Ints
    coefficients: Floats
    plane: Bools
    law: Floats
    kind: Ints
    kinds: tuple[str, ...]
    station: Floats
    reach: Floats

    def of(self, kind: str) -> Bools:
        """Return the mask of one kind, shape (k,)."""
        if kind not in self.kinds:
            return np.zeros(len(self.kind), dtype=bool)
        mask: Bools = self.kind == self.kinds.index(kind)
        return mask

    @staticmethod
    def empty() -> Bonds:
        """Return a set of no bonds."""
        none = np.zeros(0)
        return Bonds(
            np.zeros((0, 6), np.int64),
            np.zeros((0, 3, 6)),
            np.zeros(0, bool),
            np.zeros((0, 8)),
            np.zeros(0, np.int64),
            (),
            none,
            none,
        )

    @staticmethod
    def join(parts: list[Bonds]) -> Bonds:
        """Return one set from several, kinds merged by name."""
        kinds: list[str] = []
        index = []
        for part in parts:
            for name in part.kinds:
                if name not in kinds:
                    kinds.append(name)
            lookup = np.array([kinds.index(name) for name in part.kinds], dtype=np.int64)
            index.append(lookup[part.kind] if len(part.kind) else part.kind)
        if not parts:
            return Bonds.empty()
        return Bonds(
            np.concatenate([p.nodes for p in parts]),
            np.concatenate([p.coefficients for p in parts]),
            np.concatenate([p.plane for p in parts]),
            np.concatenate([p.law for p in parts]),
            np.concatenate(index),
            tuple(kinds),
            np.concatenate([p.station for p in parts]),
            np.concatenate([p.reach for p in parts]),
        )


@dataclass(frozen=True)
class Tie:
    """A stiff spring from a weighted mean of nodes to a fixed place or to its own rest sum.

    The spring's vector is sum(weights * x) - its rest value, so weights may sum to zero (node to node).

    Parameters
    ----------
    stiffness_n_per_m : the same in the three directions
    limit_n : shape (3,), the ellipsoid of forces at which it lets go; inf never does
    give_m : way it bends at that force before it lets go (`sim.giving`) [m]; 0 lets go at once
    """

    name: str
    nodes: Ints
    weights: Floats
    stiffness_n_per_m: float
    limit_n: Floats
    group: str = "latch and hinges"
    give_m: float = 0.0


@dataclass(frozen=True)
class Slider:
    """Dry friction between a weighted mean of nodes and a fixed place (`sim.rubbing`).

    weights : shape (k,), summing to one;  stiffness_n_per_m : of the start, before it slides
    force_n : friction at rest [N];  travel_m : way over which it falls to nothing [m]
    """

    name: str
    nodes: Ints
    weights: Floats
    stiffness_n_per_m: float
    force_n: float
    travel_m: float


@dataclass(frozen=True)
class RawEdge:
    """A raw edge that blades have left: its nodes, shape (k,), and its length [m]."""

    nodes: Ints
    length_m: float


@dataclass(frozen=True)
class Structure:
    """A whole model at rest.

    points : shape (n, 3) [m];  triangles : shape (m, 3);  triangle_section : shape (m,)
    rim : nodes that rest on a rigid face and may not go inboard of ``rim_y_m``
    fixed : shape (n, 3), directions held still
    names : named node sets, for reading results only
    lines : where a torn line ends, its last edge's length along the way it was driven and how far it lies off
        that way, shape (4,) [m] by node
    surround : gravity, ground, neighbours and what holds the car; None is a structure without weight
    raw : edges that blades have left
    """

    points: Floats
    triangles: Ints
    triangle_section: Ints
    sections: tuple[Section, ...]
    beams: tuple[Beam, ...] = ()
    bonds: Bonds = field(default_factory=Bonds.empty)
    ties: tuple[Tie, ...] = ()
    rim: Ints = field(default_factory=lambda: np.zeros(0, np.int64))
    rim_y_m: Floats = field(default_factory=lambda: np.zeros(0))
    rim_stiffness_n_per_m: float = 1.0e6
    rim_width_m: float = 0.02
    outboard_sign: float = 1.0
    fixed: Bools | None = None
    names: Mapping[str, Ints] = field(default_factory=dict)
    sliders: tuple[Slider, ...] = ()
    lines: Mapping[int, Floats] = field(default_factory=dict)
    surround: Surround | None = None
    raw: tuple[RawEdge, ...] = ()

    def with_fixed(self, fixed: Bools) -> Structure:
        """Return the same structure with other held directions."""
        return replace(self, fixed=fixed)
