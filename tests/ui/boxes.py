"""The threads that have something run many times for the window, as tests wait for them and end them."""

from __future__ import annotations

import multiprocessing
import time
from contextlib import contextmanager


@contextmanager
def ended(worker):
    """Yield a worker; afterwards its thread has ended and none of its processes is left."""
    yield worker
    assert worker.close()
    assert not multiprocessing.active_children()


def wait(worker, until, seconds=280.0):
    """Return all that a worker has said up to the first thing of which something is true."""
    found, end = [], time.perf_counter() + seconds
    while time.perf_counter() < end:
        found += worker.waiting()
        if found and until(found[-1]):
            return found
        time.sleep(0.01)
    raise AssertionError(f"nothing of the kind in {seconds} s; there was {found}")
