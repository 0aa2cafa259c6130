"""The command that wrecks a car and keeps it.

Sources
-------
None: one program against itself.
"""

import pytest

from sim.planfile import load_plan
from sim.planhash import plan_sha256
from ui import refusal
from ui.refusal import Refusal
from ui.starting import start

HEAD = 'schema_version = 1\n[car]\nlattice_spacing_m = 0.09\n[[moves]]\nmove = "ease"\n'
WRECK = HEAD + '[[wreck]]\nmove = "crush"\ntravel_m = 0.005\n'


def test_a_start_is_written_and_found_beside_a_plan_that_names_it(tmp_path, capsys):
    wreck = tmp_path / "wreck.toml"
    wreck.write_text(WRECK)
    assert start(wreck, out=tmp_path / "dent.npz") == 0
    said = capsys.readouterr().out
    assert "mm at its deepest" in said
    assert "start = 'dent.npz'" in said
    plan = tmp_path / "plan.toml"
    plan.write_text(HEAD.replace("[car]", 'start = "dent.npz"\n[car]'))
    asked = refusal.read_plan(plan)
    assert asked.start == str(tmp_path / "dent.npz")
    assert plan_sha256(asked) == plan_sha256(load_plan(plan))  # wherever the file lies


def test_what_cannot_be_a_start_is_refused_in_one_sentence(tmp_path):
    plan = tmp_path / "plan.toml"
    plan.write_text(HEAD)
    with pytest.raises(Refusal, match="wreck is empty, so there is no start to make"):
        start(plan, out=tmp_path / "dent.npz")
    plan.write_text(WRECK)
    with pytest.raises(Refusal, match=r"give it a name ending in .npz"):
        start(plan, out=tmp_path / "dent.txt")
    with pytest.raises(Refusal, match="lies in a folder that does not exist"):
        start(plan, out=tmp_path / "nowhere" / "dent.npz")
    plan.write_text(WRECK.replace("travel_m = 0.005", "travel_m = 5.0"))
    with pytest.raises(Refusal, match=r"wreck\[0\].travel_m is 5; use"):
        start(plan, out=tmp_path / "dent.npz")
