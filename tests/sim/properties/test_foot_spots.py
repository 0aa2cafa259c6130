"""Spots at the pillar's foot are told by their height, also where a sheet has since torn beside them."""

from types import SimpleNamespace

import numpy as np

from sim.bond import END
from sim.lookout import FOOT_M, popped_at_foot


def structure(heights_m, nodes):
    law = np.zeros((len(nodes), END + 1))
    law[:, END] = 1.0
    bonds = SimpleNamespace(
        of=lambda _kind: np.ones(len(nodes), dtype=bool), law=law, nodes=np.array(nodes)[:, None]
    )
    points = np.column_stack((np.zeros((len(heights_m), 2)), heights_m))
    return SimpleNamespace(points=points, bonds=bonds)


def test_a_spot_on_a_node_that_split_is_read_where_that_node_stands():
    # the third node is the half that a tear has put at the end of the list
    torn = structure([0.5 * FOOT_M, 3.0 * FOOT_M, 0.5 * FOOT_M], nodes=[2, 1])
    assert popped_at_foot(torn, SimpleNamespace(worst=np.array([1.0, 0.0])))
    assert not popped_at_foot(torn, SimpleNamespace(worst=np.array([0.0, 1.0])))
    assert not popped_at_foot(torn, SimpleNamespace(worst=np.array([0.0, 0.0])))
