"""The load path is a balanced flow: what leaves a node through springs is what acts on it from outside.

Identity of statics, no outside source: at equilibrium the internal forces on a node equal the external ones.
"""

from __future__ import annotations

import numpy as np
import pytest

from sim.door_model import build_model
from sim.increment import VISCOUS_N_PER_M
from sim.ledger import Ledger
from sim.path import LoadPath, load_path
from sim.plan import Car, EdgePoint, Spread
from sim.run import Begin, MoveRun


@pytest.mark.parametrize("depth_m", [0.005, 0.12])
def test_flow_balances_tip_fittings_and_rim(depth_m: float) -> None:
    """Net flow out of every node against tip, latch, hinges, feet and rim on that node."""
    model = build_model(Car(lattice_spacing_m=0.06))
    run = MoveRun(
        model, Spread(door=EdgePoint(depth_m=depth_m), opening_m=0.005), Begin(model.start, Ledger())
    )
    points = [frame.points for frame in run]
    point, network = run._point, run._network
    assert point is not None
    assert run.push is not None
    ev, direction = point.evaluation, run.push.direction
    outside = np.zeros_like(ev.points)
    drive = network.drives[0]
    np.add.at(outside, drive.nodes, drive.weights[:, None] * run.frames[-1].drive_forces[0])
    for i, tie in enumerate(network.structure.ties):
        np.add.at(outside, tie.nodes, -tie.weights[:, None] * ev.tie_force[i])
    outside[network.structure.rim, 1] += ev.rim_push
    net = load_path(network, ev, direction).out_of(len(ev.points))
    off = np.abs(net - outside @ direction).max()
    # the viscous term is the only other force: its size bounds the gap, plus the solver's own balance 1e-6
    viscous = VISCOUS_N_PER_M * np.abs(points[-1] - points[-2]).max() * np.sqrt(3.0)
    assert off <= viscous + 2.0e-6 * ev.drive_force[0]
    assert ev.drive_force[0] > 500.0


def test_strongest_keeps_the_largest_flows() -> None:
    """Drawing keeps the largest flows, in order."""
    path = LoadPath(np.array([[0, 1], [1, 2], [2, 3]]), np.array([1.0, 3.0, 2.0]))
    kept = path.strongest(2)
    assert kept.flow_n.tolist() == [3.0, 2.0]
    assert kept.pairs.tolist() == [[1, 2], [2, 3]]
