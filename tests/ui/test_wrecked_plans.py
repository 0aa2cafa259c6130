"""The worker finds a wrecked car as the command line does: the same start, the same answer.

Sources
-------
None: one program against itself.
"""

import msgspec

from sim.plan import Car, Crush, Plan, Spread
from sim.run import solve_plan
from ui.bench import Bench
from ui.state.answers import Ended, MoveReady
from ui.state.solve_queue import Job, Request

PLAN = Plan(
    car=Car(lattice_spacing_m=0.09),
    wreck=(Crush(shape="cylinder", travel_m=0.01),),
    moves=(Spread(opening_m=0.0025),),
)


def test_the_worker_solves_the_wreck_first_and_keeps_it():
    said = []
    bench = Bench(said.append)
    bench.do(Request(1, Job.SOLVE, PLAN, first=0, last=0), bool, float)
    assert isinstance(said[-1], Ended)
    (ready,) = [answer for answer in said if isinstance(answer, MoveReady)]
    _, (record,) = solve_plan(PLAN)
    assert ready.record.result.start_sha256 == record.result.start_sha256
    assert ready.record.end_state.sha256() == record.end_state.sha256()
    assert ready.record.result.found["deepest_in_m"] > 0.0
    said.clear()
    longer = PLAN.with_move(0, msgspec.structs.replace(PLAN.moves[0], opening_m=0.005))
    bench.do(Request(2, Job.SOLVE, longer, first=0, last=0), bool, float)
    (again,) = [answer for answer in said if isinstance(answer, MoveReady)]
    assert again.record.result.start_sha256 == record.result.start_sha256
    assert len(bench._begins) == 3  # the wreck once, and each move's end


def test_plans_that_differ_in_their_wreck_alone_share_nothing():
    plain = msgspec.structs.replace(PLAN, wreck=())
    assert plain.past(1) == PLAN.moves
    assert PLAN.past(1) != plain.past(1)
    assert len({PLAN.past(0), plain.past(0), msgspec.structs.replace(plain, start="a.npz").past(0)}) == 3
