"""An intruded door against the person: a push back from inside first, or a spread at its edge.

Sources
-------
Spread first and the room falls before it grows; pushed back first it grows at once: common practice, no
source.
"""

import numpy as np
import pytest

from sim.door_model import build_model
from sim.ledger import Ledger
from sim.plan import Car, Crush, Ease, EdgePoint, FacePoint, Press, Spread
from sim.run import Begin, MoveRun

CAR = Car(lattice_spacing_m=0.075, latch_strength_ratio=2.5, hinge_strength_ratio=3.0)
WRECK = Crush(shape="face", size_m=0.3, tall_m=0.3, height_m=0.2, along_m=0.55, travel_m=0.15)
"""Another car's corner at the height of the hip: the latch still holds after it."""
BEHIND = FacePoint(side="inner", along_m=0.8, height_m=0.25)


@pytest.fixture(scope="module")
def wrecked():
    model = build_model(CAR)
    begin = Begin(model.start, Ledger())
    for move in (WRECK, Ease()):
        run = MoveRun(model, move, begin)
        frames = list(run)
        begin = run.end
    names = [tie.name for tie in model.structure.ties]
    assert begin.state.holding[names.index("latch")]
    assert frames[-1].clearance.distance_m < 0.05  # 55 mm before
    return model, begin


def room(wrecked, move):
    model, begin = wrecked
    run = MoveRun(model, move, begin)
    metres = np.array([frame.clearance.distance_m for frame in run])
    assert run.result(with_residual=False).solver.failed_count == 0
    return metres


@pytest.mark.slow
@pytest.mark.timeout(900)
def test_spread_first_takes_room_before_it_gives_any(wrecked):
    metres = room(wrecked, Spread(door=EdgePoint(depth_m=0.05), tilt_rad=0.0, opening_m=0.015))
    assert metres.min() < metres[0] - 0.003
    assert int(metres.argmin()) > 0


@pytest.mark.slow
@pytest.mark.timeout(900)
def test_pushed_back_first_it_gives_room_from_the_start(wrecked):
    metres = room(wrecked, Press(head=BEHIND, extension_m=0.05))
    assert metres.min() >= metres[0] - 1e-4
    assert metres[-1] > metres[0] + 0.005
