"""How a structure's surroundings join its network: their laws, their elements, and looking round."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from sim import search
from sim.check import Checks
from sim.edging import EDGE_ROWS as EDGE_ROWS
from sim.edging import Edging, chosen, pressing
from sim.grounds import OnGround, Props, Stands
from sim.law import Law
from sim.state import State
from sim.structure import Structure
from sim.weight import Gravity

if TYPE_CHECKING:
    from sim.network import Network

Ints = NDArray[np.int64]


def surround_laws(structure: Structure) -> tuple[Law, ...]:
    """Return the laws of what a structure stands among; none where that is not told."""
    around = structure.surround
    if around is None:
        return ()
    laws: list[Law] = [Gravity(structure)]
    if around.edges is not None:
        laws.append(Edging(structure))
    if around.ground is not None:
        laws.append(OnGround(structure))
    if around.body is not None:
        laws.append(Stands(structure))
    if around.checks:
        laws.append(Checks(structure))
    if around.props:
        laws.append(Props(structure))
    return tuple(laws)


def elements(laws: Sequence[Law]) -> list[Ints]:
    """Return the node lists of edges' and ground's elements, for the pattern."""
    out: list[Ints] = [np.zeros((0, 4), np.int64), np.zeros((0, 1), np.int64)]
    for law in laws:
        if isinstance(law, Edging):
            out[0] = law.elements
        if isinstance(law, OnGround):
            out[1] = law.elements
    return out


def looked(network: Network, state: State) -> tuple[Network, State]:
    """Return network and state after a look round; both as they are where nothing has moved far."""
    structure = network.structure
    assert structure.surround is not None
    near, points = structure.surround.near, state.points
    fresh = near is not None and not search.stale(near, points)
    if near is None or (not fresh and search.lacks(near, structure, points)):
        near = search.look(structure, points)
        network = network.among(search.with_near(structure, near))
    elif not fresh:
        near = replace(near, points=points)
        network = network.standing(search.with_near(structure, near))
    if structure.surround.edges is None:
        return network, state
    if not fresh or EDGE_ROWS not in state.kept:
        rows = chosen(near, points, state.kept.get(EDGE_ROWS))
        state = replace(state, kept={**state.kept, EDGE_ROWS: rows})
    press = pressing(network.structure, state)
    if not np.isin(press, near.coupled).all():
        coupled = search.beside(network.structure, points, press)
        near = replace(near, coupled=coupled)
        network = network.among(search.with_near(network.structure, near))
    return network, state
