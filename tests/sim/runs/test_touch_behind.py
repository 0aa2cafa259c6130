"""What the inner panel does behind the lip is felt by the touch, and goes the way of the whole push.

That a bite on the belt's inner lip alone rolls the lip out and the panel under it inward: common practice, no
source. The whole push is the ready plan's own kept result.
"""

from importlib import resources
from pathlib import Path

import pytest

from sim.aim import tried
from sim.door_model import build_model
from sim.kept import read
from sim.planfile import load_plan
from sim.record import BEHIND_M

ASSETS = Path(str(resources.files("assets")))


@pytest.mark.parametrize(("name", "turns_in"), [("belt-inner-lip", True), ("belt-outer-lip", False)])
def test_the_touch_tells_whether_the_panel_behind_the_lip_comes_in(name, turns_in):
    plan = load_plan(ASSETS / "plans" / f"{name}.toml")
    found = tried(build_model(plan.car), plan.moves[0])
    assert found.way == "out"
    assert found.turns_in is turns_in
    whole = read(ASSETS / "lessons" / "solved", name)
    assert whole is not None
    assert (whole.moves[0].inner_m < -BEHIND_M) is turns_in
    if turns_in:
        assert found.touch.room_m < 0.0 and whole.moves[0].clearance_change_m < 0.0
