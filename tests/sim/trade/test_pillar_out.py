"""A fact of the trade on the whole side: with doors and pillar top free, a ram takes the pillar out and away.

Sources
-------
Every point above the rocker moves away from the occupant from the first degree on: common practice, no
source.
"""

from dataclasses import replace

import msgspec
import numpy as np
import pytest

from meshes.occupant import part_clearance, side_occupant
from meshes.side import build_side
from meshes.side_shape import SIDES
from sim import materials
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive, Network
from sim.pillar import WELD_KIND, PillarBuild
from sim.plan import Car
from sim.side_model import side_structure

RAM_HEIGHT_M = 0.55
LOW = SIDES["low car"]
COARSE = replace(
    LOW,
    front=replace(LOW.front, spacing_m=0.06),
    rear=replace(LOW.rear, spacing_m=0.06),
    pillar=replace(LOW.pillar, spacing_m=0.03),
)
BUILD = PillarBuild(pressed=materials.PATCH_STEEL, pressed_m=0.0012, closing_m=0.0010, held=("foot",))


@pytest.mark.slow
def test_with_doors_and_head_free_no_part_of_the_body_loses_room_while_the_foot_gives():
    mesh = build_side(COARSE)
    side = side_structure(msgspec.structs.replace(Car(), latch="open"), mesh, BUILD)
    points = side.structure.points
    inner = mesh.pillar.surface.nodes_of(("inner",))
    own = mesh.pillar.surface.points[inner]
    middle = np.mean(
        [np.interp(RAM_HEIGHT_M, mesh.pillar.cuts[:, 0], mesh.pillar.cuts[:, k]) for k in (1, 3)]
    )
    away = np.hypot(own[:, 0] - middle, own[:, 2] - RAM_HEIGHT_M)
    nodes, weights = inner[away < 0.06] + side.first["pillar"], 1.0 - away[away < 0.06] / 0.06
    weights = weights / weights.sum()
    drive = Drive(nodes, weights, np.array([0.0, 1.0, 0.0]), float(weights @ points[nodes, 1]))
    stepper = Stepper(Network(side.structure, [drive]), lambda: False)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    occupant = side_occupant(mesh.shape)
    start = part_clearance(points, side.structure.triangles, occupant)
    before = start
    for travel in np.arange(0.0025, 0.0301, 0.0025):
        point = stepper.advance(point, float(travel))
        now = part_clearance(point.state.points, side.structure.triangles, occupant)
        # half a millimetre: the door's skin shivers when a spot lets go
        assert all(now[part] > before[part] - 5e-4 for part in now), (travel, before, now)
        before = now
    assert before["head"] > start["head"] + 0.02
    assert before["hip"] > start["hip"] + 0.01
    assert stepper.network.parted(point.state)[side.structure.bonds.of(WELD_KIND)].sum() >= 1
    assert stepper.tally.failed == 0
    assert point.ledger.closure_ratio() < 0.02
