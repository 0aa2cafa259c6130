"""Where sheet metal has been folded: its plastic work per area, from what the metal remembers.

A layer whose equivalent plastic strain has come to a has taken the work of its flow stress over that strain,
Y a + H a^2 / 2 per volume (linear hardening); the sheet's is the sum over its layers.  It only grows, and
springing back takes none of it away.

Moments kept without it (results of earlier versions) are read again from their shapes.  Places are kept to
0.1 mm, which over an edge of 45 mm is a strain past yield but a turn far below it: so bending is followed as
it is, and of stretch only what goes beyond that rounding.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from sim.compiled import kernel
from sim.network import Network
from sim.section import section_forces
from sim.sheet import RestSheet, hinge_angle, rest_sheet

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

ROUNDING_M = 1.0e-4
"""How far rounding of its two ends' places may lengthen an edge [m]."""


def fold_work(network: Network, hardening: Floats) -> Floats:
    """Return the plastic work of every triangle per rest area, shape (m,) [J/m^2].

    Parameters
    ----------
    hardening : equivalent plastic strain of each layer, shape (m, 7) [-]
    """
    yield_pa, modulus_pa = network.metal[:, 2, None], network.metal[:, 3, None]
    per_volume = hardening * (yield_pa + 0.5 * modulus_pa * hardening)
    work: Floats = network.thickness * (per_volume @ network.weights)
    return work


class Replay:
    """The folding of moments that are known by their shapes alone, worked out when it is first asked for.

    Parameters
    ----------
    network : of the whole metal;  points : of each moment in turn, (n, 3) [m]
    triangles : of each moment, (m, 3); None where nothing is torn
    """

    def __init__(self, network: Network, points: Sequence[Floats], triangles: Sequence[Ints | None]) -> None:
        self._network, self._points, self._triangles = network, tuple(points), tuple(triangles)
        self._work: list[Floats] = []

    def work(self, index: int) -> Floats:
        """Return the plastic work at one moment, shape (m,) [J/m^2]."""
        if not self._work:
            self._work = self._followed()
        return self._work[index]

    def _followed(self) -> list[Floats]:
        network = self._network
        whole = network.structure.triangles
        rest, shape = network.rest, whole
        angle = _by_edge(rest, rest.rest_angle)
        plastic = np.zeros((len(whole), len(network.heights), 3))
        hardening = np.zeros(plastic.shape[:2])
        bent, stretched = np.zeros((len(whole), 3)), np.zeros((len(whole), 3))
        rounding = ROUNDING_M / np.sqrt(network.rest.rest_length2)
        out = []
        for points, triangles in zip(self._points, self._triangles, strict=True):
            now = whole if triangles is None else triangles
            if not np.array_equal(now, shape):
                shape, rest = now, self._rest_of(now)
            turned = hinge_angle(points, rest.hinges)
            seen = _by_edge(rest, turned)
            held = rest.triangle_hinges >= 0
            seen = np.where(held, seen + 2.0 * np.pi * np.rint((angle - seen) / (2.0 * np.pi)), angle)
            angle = seen
            turn = np.where(held, seen - _by_edge(rest, rest.rest_angle), 0.0)
            curvature = np.einsum("mij,mj->mi", rest.to_curvature, turn)
            # a triangle that lost a neighbour reads its curvature from the others: it has not moved for that
            lost = (rest.to_curvature != self._network.rest.to_curvature).any(axis=(1, 2))
            curvature[lost] = bent[lost]
            bent = curvature
            longer = 0.5 * (_lengths2(points, now) / network.rest.rest_length2 - 1.0)
            stretched = np.clip(stretched, longer - rounding, longer + rounding)
            membrane = np.einsum("mij,mj->mi", network.rest.to_strain, stretched)
            _flow(
                membrane, curvature, network.thickness, network.form_ratio, network.metal, network.heights,
                network.weights, plastic, hardening,
            )  # fmt: skip
            out.append(fold_work(network, hardening))
        return out

    def _rest_of(self, triangles: Ints) -> RestSheet:
        """Return the rest data of torn sheets: a new node stood where the one stood that it split off."""
        structure = self._network.structure
        rest = np.zeros((max(len(structure.points), int(triangles.max()) + 1), 3))
        rest[: len(structure.points)] = structure.points
        new = triangles >= len(structure.points)
        rest[triangles[new]] = structure.points[structure.triangles[new]]
        return rest_sheet(rest, triangles, self._network.metal[:, 1])


class Replayed:
    """One moment of a replay, as a frame carries it; it stays where it was made: elsewhere there is none."""

    def __init__(self, replay: Replay, index: int) -> None:
        self._replay, self._index = replay, index

    def __reduce__(self) -> tuple[type, tuple[()]]:
        """Leave the network behind when the frame is sent to another process."""
        return type(None), ()

    def work(self) -> Floats:
        """Return the plastic work at this moment, shape (m,) [J/m^2]."""
        return self._replay.work(self._index)


def _lengths2(points: Floats, triangles: Ints) -> Floats:
    """Return the squared length of every triangle's edges, each opposite its corner, shape (m, 3) [m^2]."""
    corner = points[triangles]
    sides = corner[:, [2, 0, 1]] - corner[:, [1, 2, 0]]
    return np.asarray(np.einsum("mik,mik->mi", sides, sides))


def _by_edge(rest: RestSheet, angle: Floats) -> Floats:
    """Return hinge angles by triangle and edge, shape (m, 3) [rad]; 0 at a rim."""
    return np.where(rest.triangle_hinges >= 0, np.append(angle, 0.0)[rest.triangle_hinges], 0.0)


@kernel
def _flow(
    membrane: Floats,
    curvature: Floats,
    thickness: Floats,
    form_ratio: Floats,
    metal: Floats,
    heights: Floats,
    weights: Floats,
    plastic: Floats,
    hardening: Floats,
) -> None:
    """Let every section flow to a stretch and a curvature [1/m], (m, 3); its memory is changed in place."""
    resultant = np.empty(6)
    new, more = np.empty((heights.shape[0], 3)), np.empty(heights.shape[0])
    for t in range(curvature.shape[0]):
        section_forces(
            membrane[t], curvature[t], thickness[t], form_ratio[t], metal[t], heights, weights, plastic[t],
            hardening[t], new, more, resultant,
        )  # fmt: skip
        plastic[t] = new
        hardening[t] = more
