"""The one interface by which a law joins the network: a contact, friction, a spring of any kind.

A law sees the points, adds its forces and energy, adds its stiffness block by block, and says what it
remembers once an increment has converged.  `sim.springs` has the ties, the rim, the tool and the loads;
a new one is a class of its own module, and one line in `sim.network.LAWS`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from sim.pattern import Pattern
from sim.small import scatter_dense
from sim.state import Drive, Evaluation, Load, State
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


@dataclass(frozen=True)
class Into:
    """Where a law adds its stiffness: the network's blocks (k, 3, 3) and the law's own first mean.

    own : where the laws' own lists of elements begin among the pattern's groups
    """

    values: Floats
    pattern: Pattern
    first: int
    own: int = 5

    def mean(self, index: int, weights: Floats, stiffness: Floats) -> None:
        """Add the stiffness (3, 3) [N/m] of a weighted mean of nodes, the law's own ``index``-th."""
        self.pattern.add_outer(self.values, self.first + index, weights, stiffness)

    def nodes(self, nodes: Ints, stiffness: Floats) -> None:
        """Add a stiffness [N/m] to nodes, each named once: shape (3, 3) for all or (k, 3, 3)."""
        self.values[self.pattern.diagonal[nodes]] += stiffness

    def triangles(self, rows: Ints, corners: Ints, stiffness: Floats) -> None:
        """Add stiffnesses (k, 9, 9) [N/m] to the corners (k, 3) of some of the structure's triangles."""
        blocks = np.ascontiguousarray(self.pattern.blocks[0][rows, :3, :3])  # corners come first in a patch
        scatter_dense(corners, blocks, np.ones(len(rows), dtype=np.bool_), stiffness, self.values)

    def group(
        self, index: int, rows: Ints, nodes: Ints, stiffness: Floats, order: Ints | None = None
    ) -> None:
        """Add stiffnesses (k, 3m, 3m) [N/m] to nodes (k, m) of some rows of a law's own list of elements.

        index : 0 for edges, 1 for the ground;  order : places in the element of the m nodes
        """
        blocks = self.pattern.blocks[self.own + index][rows]
        if order is not None:
            blocks = blocks[:, order][:, :, order]
        blocks = np.ascontiguousarray(blocks)
        scatter_dense(
            np.ascontiguousarray(nodes), blocks, np.ones(len(rows), dtype=np.bool_), stiffness, self.values
        )


class Law(Protocol):
    """What the network asks of a law.

    name : its energies in `Evaluation.stored` and `Evaluation.spent` stand under it
    line : line of the ledger for what it spends ("" when it never spends)
    means : node lists (distinct nodes) whose weighted means it holds or pushes; they come into the pattern
    """

    name: str
    line: str

    @property
    def means(self) -> Sequence[Ints]:
        """Return the node lists of its weighted means; empty when it acts on single nodes."""

    def forces(self, points: Floats, state: State, load: Load, ev: Evaluation, /) -> None:
        """Add the energy gradient to ``ev.forces`` [N]; set ``ev.stored[name]`` and ``ev.spent``.

        Both energies are as of the last commit: what is newly spent, what is stored now.
        """

    def stiffness(self, ev: Evaluation, state: State, load: Load, into: Into, /) -> None:
        """Add the positive second derivative of the energy [N/m]."""

    def commit(self, state: State, ev: Evaluation, /) -> State:
        """Return the state with what this law remembers of a converged increment (in a field or ``kept``)."""


class MakeLaw(Protocol):
    """A law's class: made from the structure and the tool contacts."""

    def __call__(self, structure: Structure, drives: tuple[Drive, ...], /) -> Law:
        """Return the law for this structure."""
