"""Starts that wrecks left are found again: beside their plan, and by hash; those of another car are not.

Sources
-------
None: one program against itself.
"""

from importlib import resources
from pathlib import Path

import msgspec
import numpy as np
import pytest

from sim.plan import Car, Crush, Plan, Spread
from sim.planfile import load_plan, save_plan
from sim.starts import own_start
from sim.wreck import model_of
from ui.bench import Bench
from ui.start_files import StartFiles, beside, ready
from ui.state.answers import Ended, FoundReady, FramesReady, Refused
from ui.state.solve_queue import Job, Request

PLAN = Plan(
    car=Car(lattice_spacing_m=0.09),
    wreck=(Crush(shape="cylinder", travel_m=0.01),),
    moves=(Spread(opening_m=0.0025),),
)


def said_to(request, folder):
    """Return what a fresh worker says to a request."""
    said = []
    Bench(said.append, StartFiles(folder)).do(request, bool, float)
    return said


def found_in(said):
    return next((answer for answer in said if isinstance(answer, FoundReady)), None)


@pytest.fixture(scope="module")
def worked_out(tmp_path_factory):
    """Return a settings' folder and a plan's file in whose sitting the wreck has been worked out."""
    folder = tmp_path_factory.mktemp("settings")
    path = tmp_path_factory.mktemp("plans") / "dented.toml"
    save_plan(PLAN, path)
    said = said_to(Request(1, Job.FIND, PLAN, file=path, keeps=True), folder)
    return folder, path, said


def test_it_is_watched_while_it_is_worked_out(worked_out):
    _, _, said = worked_out
    frames = [answer.frames[0] for answer in said if isinstance(answer, FramesReady)]
    assert [answer.move for answer in said if isinstance(answer, FramesReady)] == [-1] * len(frames)
    assert frames[-1].opening_m == pytest.approx(0.01, abs=1e-12)
    assert all(frame.state is None for frame in frames)
    told = found_in(said)
    assert told.before == PLAN.past(0)
    assert len(told.moves[0]) == len(frames)
    assert isinstance(said[-1], Ended)


def test_beside_the_plan_it_is_found_by_anybody_to_whom_both_are_given(worked_out, tmp_path):
    _, path, said = worked_out
    assert beside(path).is_file()
    again = said_to(Request(1, Job.PREPARE, PLAN, file=path), tmp_path)  # another machine: no kept ones
    told = found_in(again)
    assert not any(isinstance(answer, FramesReady) for answer in again)
    assert np.array_equal(told.start.points, found_in(said).start.points)
    assert told.told == found_in(said).told
    assert told.moves == ()


def test_by_its_hash_it_is_found_whatever_the_plan_is_called_with_its_moments(worked_out):
    folder, _, said = worked_out
    named = msgspec.structs.replace(PLAN, title="Another title", moves=())
    told = found_in(said_to(Request(1, Job.PREPARE, named), folder))
    kept, solved = told.moves[0], found_in(said).moves[0]
    assert [frame.opening_m for frame in kept] == [frame.opening_m for frame in solved]
    assert np.abs(kept[-1].points - solved[-1].points).max() < 1e-4  # kept to a tenth of a millimetre


def test_a_handle_pulled_afterwards_is_no_other_wreck_but_another_car_is(worked_out):
    folder, path, _ = worked_out
    pulled = PLAN.with_car(msgspec.structs.replace(PLAN.car, latch="open"))
    assert found_in(said_to(Request(1, Job.PREPARE, pulled, file=path), folder)) is not None
    for other in (
        PLAN.with_car(msgspec.structs.replace(PLAN.car, skin_thickness_m=0.0008)),
        PLAN.with_car(msgspec.structs.replace(PLAN.car, latch="half")),
        msgspec.structs.replace(PLAN, wreck=(Crush(shape="cylinder", travel_m=0.0125),)),
    ):
        assert found_in(said_to(Request(1, Job.PREPARE, other, file=path), folder)) is None


def test_a_damaged_file_is_passed_over_and_worked_out_anew(worked_out, tmp_path):
    _, path, _ = worked_out
    copy = tmp_path / "dented.toml"
    copy.write_text(path.read_text(encoding="utf-8"), encoding="utf-8")
    beside(copy).write_bytes(beside(path).read_bytes()[:2000])
    assert found_in(said_to(Request(1, Job.PREPARE, PLAN, file=copy), None)) is None


def test_a_saved_start_is_looked_for_beside_the_plans_file(worked_out, tmp_path):
    _, path, said = worked_out
    plan = msgspec.structs.replace(PLAN, wreck=(), start="shared.npz")
    file = tmp_path / "mine.toml"
    save_plan(plan, file)
    refused = said_to(Request(1, Job.PREPARE, plan, file=file), None)[-1]
    assert isinstance(refused, Refused)
    assert "put the file beside the plan" in refused.sentence
    (tmp_path / "shared.npz").write_bytes(beside(path).read_bytes())
    told = found_in(said_to(Request(1, Job.PREPARE, plan, file=file), None))
    assert told.told == found_in(said).told


def test_a_start_whose_file_has_changed_is_read_again(worked_out, tmp_path):
    _, path, _ = worked_out
    plan = msgspec.structs.replace(PLAN, wreck=(), start="shared.npz")
    file = tmp_path / "mine.toml"
    (tmp_path / "shared.npz").write_bytes(beside(path).read_bytes())
    said = []
    bench = Bench(said.append)
    bench.do(Request(1, Job.PREPARE, plan, file=file), bool, float)
    assert found_in(said) is not None
    (tmp_path / "shared.npz").write_bytes(b"no longer a start")
    said.clear()
    bench.do(Request(2, Job.PREPARE, plan, file=file), bool, float)
    assert isinstance(said[-1], Refused)


def test_the_wreck_of_the_ready_lessons_comes_with_the_program():
    for way in ("fold", "forward", "rip"):
        plan = load_plan(Path(str(resources.files("assets"))) / "plans" / f"high-striker-{way}.toml")
        path = ready(plan)
        assert path.is_file()
    model = model_of(plan)
    assert own_start(path, plan, model) is not None
    rest, moments = StartFiles().read(plan, model, None)
    assert rest.ledger.work_j > 0.0
    assert moments == ()
