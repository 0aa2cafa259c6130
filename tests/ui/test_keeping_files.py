"""What was worked out in a sitting is kept as it is, and read again after a crash instead of solved anew."""

import logging

import msgspec
import numpy as np
import pytest

pytest.importorskip("PySide6")

from sim.plan import Car, Plan, Spread
from ui.keeping_files import WriterThread, keep_solved, solved_before
from ui.solving import solve


@pytest.fixture(scope="module")
def solved():
    plan = Plan(car=Car(lattice_spacing_m=0.09), moves=(Spread(opening_m=0.002),))
    return plan, *solve(plan)


def test_a_push_is_kept_and_read_again_as_it_was(tmp_path, solved):
    plan, model, records = solved
    assert keep_solved(tmp_path, plan, model, records)
    (again,) = solved_before(tmp_path, plan, 1, model)
    assert len(again.frames) == len(records[0].frames)
    assert again.result.sentence == records[0].result.sentence
    np.testing.assert_allclose(again.frames[-1].points, records[0].frames[-1].points, atol=1e-4)
    other = msgspec.structs.replace(plan, moves=(Spread(opening_m=0.003),))
    assert solved_before(tmp_path, other, 1, model) == ()


def test_what_cannot_be_kept_is_told_in_the_log_and_ends_nothing(caplog):
    writer, done = WriterThread(), []
    with caplog.at_level(logging.WARNING):
        writer.submit("solved", lambda: done.missing)
        writer.submit("sitting", lambda: done.append(1))
        assert writer.close()
    assert done == [1]
    assert "Not kept" in caplog.text
