"""The checks behind the model card: in a process of their own, stopped at once, and told about whole."""

import threading
import time

import pytest

from sim.checks.catalogue import chosen
from sim.checks.row import Row
from ui.check_job import CheckJob

pytestmark = pytest.mark.timeout(170)


@pytest.fixture
def job(qtbot):
    made = CheckJob()
    yield made
    assert made.close()


def test_rows_come_in_the_order_of_the_catalogue_and_a_stop_is_heard(job, qtbot):
    rows, ends = [], []
    job.row.connect(rows.append)
    job.ended.connect(ends.append)
    job.start()
    job.start()  # a second wish while checks are under way starts nothing
    qtbot.waitUntil(lambda: len(rows) >= 3, timeout=120_000)
    assert sum(thread.name == "checks" for thread in threading.enumerate()) == 1
    job.stop()
    began = time.perf_counter()
    qtbot.waitUntil(lambda: bool(ends), timeout=10_000)
    assert time.perf_counter() - began < 5.0
    assert ends == [""]
    assert len(rows) < job.total == len(chosen(full=False))
    assert all(isinstance(row, Row) and row.passed for _, row in rows)
    assert [family for family, _ in rows] == [check.family for check in chosen(full=False)[: len(rows)]]


def test_a_fault_is_told_in_a_sentence(job, qtbot, monkeypatch):
    def broken(*_):
        raise OSError("no more processes")

    monkeypatch.setattr("ui.check_job.Workers", broken)
    with qtbot.waitSignal(job.ended, timeout=5000) as caught:
        job.start()
    assert "no more processes" in caught.args[0]
