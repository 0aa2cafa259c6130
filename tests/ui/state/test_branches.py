"""The tree of steps: its rows, and every step's metal as it was at the first visit."""

from types import SimpleNamespace

import pytest

from sim.door_model import build_model
from sim.plan import Car, Ease, EdgePoint, Plan, Spread, Squeeze
from sim.run import solve_plan, start_frame
from ui.state import known
from ui.state.answers import DoorReady, Ended, MoveReady
from ui.state.branches import branches
from ui.state.history import History
from ui.state.session import Session
from ui.state.solve_queue import Job


def test_each_branch_keeps_its_lane_and_the_path_is_marked():
    history = History(Plan(seed=0))
    for seed in (1, 2):
        history.commit(Plan(seed=seed), f"{seed}")
    history.go(0)
    history.commit(Plan(seed=3), "3")
    history.go(1)
    history.commit(Plan(seed=4), "4")
    history.go(3)
    rows = branches(history.steps, history.path)
    assert [(row.label, row.lane, row.parent) for row in rows] == [
        ("Start", 0, -1), ("1", 0, 0), ("2", 0, 1), ("3", 1, 0), ("4", 2, 1),
    ]  # fmt: skip
    assert [row.on_path for row in rows] == [True, False, False, True, False]
    assert [row.now for row in rows] == [False, False, False, True, False]


@pytest.fixture
def sitting(frame):
    """Return a session with a door, and its requests."""
    session = Session(Plan(moves=(Spread(opening_m=0.01),)))
    asked = []
    session.asked.connect(asked.append)
    session.prepare()
    session.take([DoorReady(asked[0].number, Car(), SimpleNamespace(), frame()), Ended(asked[0].number)])
    return SimpleNamespace(session=session, asked=asked)


def test_a_step_is_found_at_the_moment_it_was_left_at(sitting, record):
    session = sitting.session
    session.run()
    found = record([0.0, 0.0025, 0.005, 0.0075, 0.01])
    number = sitting.asked[-1].number
    session.take([MoveReady(number, 0, session.plan, found), Ended(number)])
    session.timeline.go(3)
    session.document.commit(Plan(moves=(Spread(tilt_rad=0.1),)), "Tilt")
    session.document.undo()
    session.timeline.go(3)
    session.go_to_step(1)
    assert len(session.timeline) == 1
    session.go_to_step(0)
    assert session.timeline.position == 3
    assert session.timeline.frame is found.frames[2]


def test_any_step_of_any_branch_has_the_metal_of_its_first_visit(monkeypatch):
    """Worked out again after it was forgotten, the state's hash is the same, bit for bit."""
    monkeypatch.setattr(known, "RECORDS_KEPT", 1)
    car = Car(lattice_spacing_m=0.06)
    model = build_model(car)
    session = Session(Plan(car=car, moves=(Spread(opening_m=0.0025),)))
    requests = []
    session.asked.connect(requests.append)
    session.prepare()
    session.take([DoorReady(requests[0].number, car, model, start_frame(model)), Ended(requests[0].number)])

    def metal():
        """Return the hash of the state at the end of the plan shown, worked out if it is not known."""
        session.run()
        if session.queue.busy:
            request = requests[-1]
            assert request.job is Job.SOLVE
            _, records = solve_plan(request.plan)
            session.take([MoveReady(request.number, 0, request.plan, records[0]), Ended(request.number)])
        return session.record(0).end_state.sha256()

    seen = {0: metal()}
    for depth in (0.02, 0.12):  # two branches from the first step
        session.go_to_step(0)
        move = Spread(door=EdgePoint(depth_m=depth), opening_m=0.0025)
        session.document.commit(Plan(car=car, moves=(move,)), f"depth {depth}")
        seen[session.document.history.position] = metal()
    assert len(set(seen.values())) == 3
    assert [step.parent for step in session.document.steps] == [-1, 0, 0]
    for number in (1, 0, 2):
        session.go_to_step(number)
        assert metal() == seen[number]


def test_back_before_a_squeeze_the_metal_is_what_it_was():
    """Undone, squeeze and push have left nothing: the state's hash is the untouched one's, and on from it."""
    car = Car(lattice_spacing_m=0.09)
    model = build_model(car)
    untouched = model.start.sha256()
    squeeze, push = Squeeze(height_m=0.6, closing_m=0.02), Spread(tilt_rad=0.0, opening_m=0.0025)
    session = Session(Plan(car=car))
    requests = []
    session.asked.connect(requests.append)
    session.prepare()
    session.take([DoorReady(requests[0].number, car, model, start_frame(model)), Ended(requests[0].number)])
    for moves in ((squeeze,), (squeeze, Ease()), (squeeze, Ease(), push)):
        session.document.commit(Plan(car=car, moves=moves), "one more")
    _, records = solve_plan(session.plan)
    session.run()
    number = requests[-1].number
    found = [MoveReady(number, k, session.plan, record) for k, record in enumerate(records)]
    session.take([*found, Ended(number)])
    assert session.record(2).end_state.sha256() != untouched
    for _ in range(3):
        session.document.undo()
    assert session.plan.moves == ()
    assert session.timeline.frame.state.sha256() == untouched
    session.document.commit(Plan(car=car, moves=(push,)), "another way")
    again = solve_plan(session.plan)[1][0]
    assert again.frames[0].state.sha256() == untouched == again.result.start_sha256
