"""What one worker of the tests has solved is what the next one reads, and only for the same program."""

import numpy as np
import pytest

from tests import once as kept
from tests.sim.runs import solved as pushes

COARSE, SHORT = pushes.car(lattice_spacing_m=0.09), pushes.edge(opening_m=0.0025, stop_at=())


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """Return a folder for what is solved, and no answer remembered from before."""
    monkeypatch.setenv(kept.FOLDER, str(tmp_path))
    pushes.solved.cache_clear()
    yield tmp_path
    pushes.solved.cache_clear()


def test_the_next_worker_reads_the_same_answer(folder, monkeypatch):
    first = pushes.solved(COARSE, SHORT)
    pushes.solved.cache_clear()
    with monkeypatch.context() as patch:
        patch.setattr(pushes, "solve", None)
        second = pushes.solved(COARSE, SHORT)
    assert second is not first
    assert (second.result, second.balance) == (first.result, first.balance)
    for one, other in zip(first.frames, second.frames, strict=True):
        np.testing.assert_array_equal(one.points, other.points)
        assert (one.force_n, one.ledger_j) == (other.force_n, other.ledger_j)
    assert second.run.frames[-1].force_n == first.frames[-1].force_n  # made again where it is asked for


def test_another_key_or_another_program_is_worked_out_anew(folder, monkeypatch):
    made = []

    def make():
        made.append(len(made))
        return made[-1]

    assert kept.once(make, "one", COARSE) == kept.once(make, "one", COARSE) == 0
    assert kept.once(make, "one", pushes.CAR) == 1
    assert kept.once(make, "two", COARSE) == 2
    monkeypatch.setattr(kept, "program_sha256", lambda: "a program with a fault")
    assert kept.once(make, "one", COARSE) == 3


def test_with_no_folder_nothing_is_kept(monkeypatch):
    monkeypatch.delenv(kept.FOLDER, raising=False)
    answers = iter((1, 2))
    assert kept.once(lambda: next(answers), "key") == 1
    assert kept.once(lambda: next(answers), "key") == 2
