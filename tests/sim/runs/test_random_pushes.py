"""Random legal pushes, some of the three hundred of `tests/benchmarks/random_pushes.py`.

Each reaches its opening or ends with an event that says why; nothing is raised, every number is finite, and
the books close to 2 % of the work (of ten joules where it is less: one step may gape by a tenth).
"""

import pytest

from sim.plan import BeltPoint
from tests.sim.runs.random_pushes import ended, push_of

NUMBERS = range(30)
ALLOWED = 1
"""Of thirty, 95 % must be in order; the offenders are named in the failure."""


def test_pushes_are_the_same_each_time_and_of_every_kind():
    pushes = [push_of(number) for number in NUMBERS]
    assert pushes == [push_of(number) for number in NUMBERS]
    doors = [move.door for _, move in pushes]
    assert {d.edge for d in doors if not isinstance(d, BeltPoint)} == {
        "latch_edge",
        "hinge_edge",
        "sill_edge",
    }
    assert {d.lip for d in doors if isinstance(d, BeltPoint)} == {"outer", "inner", "both"}
    tilts = [move.tilt_rad for _, move in pushes]
    assert min(tilts) < -1.0 and max(tilts) > 1.0


@pytest.mark.slow
@pytest.mark.timeout(900)
def test_they_come_to_an_end_with_their_books_closed():
    found = [ended(number) for number in NUMBERS]
    for answer in found:
        assert not answer.fault, (answer.number, answer.words, answer.fault)
        assert answer.finite, (answer.number, answer.words)
    offenders = [(a.number, a.problems, a.words) for a in found if a.problems]
    assert len(offenders) <= ALLOWED, offenders
