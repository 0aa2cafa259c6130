"""Worker processes for many runs: one job at a time each, ended at once when nobody wants the answers.

They are spawned, not forked, with one thread each; a worker that dies takes its job with it as a fault, and
another takes its place.  Ending them does not wait for the job in hand.
"""

from __future__ import annotations

import contextlib
import multiprocessing
import os
import signal
import threading
import traceback
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from multiprocessing import connection
from typing import Any, Generic, TypeVar

Item = TypeVar("Item")
Answer = TypeVar("Answer")

TICK_S = 0.05
"""How often a wish to stop is looked for."""
LOST_AT_START = 3
"""Workers lost before they were ready, in a row, after which no more are started."""
NICE = 5
"""Workers give way to the window."""
ONE_THREAD = ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS", "NUMBA_NUM_THREADS")


class WorkersLostError(RuntimeError):
    """No worker process can be started on this machine."""


@dataclass(frozen=True)
class Fault:
    """A job without an answer: why, in a sentence, and the details for a report."""

    sentence: str
    report: str = ""


def nothing() -> None:
    """Prepare nothing."""


def end_with_parent() -> None:
    """End this process at once when the one that started it is gone."""
    parent = multiprocessing.parent_process()
    if parent is not None:
        connection.wait([parent.sentinel])
        os._exit(1)


def _serve(pipe: Any, work: Callable[[Any], Any], prepare: Callable[[], None]) -> None:
    """Answer jobs until the pipe closes; the body of a worker."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # the parent is told to stop, and ends its workers
    threading.Thread(target=end_with_parent, daemon=True).start()
    if hasattr(os, "nice"):
        os.nice(NICE)
    prepare()
    pipe.send(None)
    while True:
        try:
            index, item = pipe.recv()
        except EOFError:
            return
        try:
            answer = work(item)
        except Exception as error:  # noqa: BLE001 - one bad job must not take the others with it
            answer = Fault(f"{type(error).__name__}: {error}", traceback.format_exc())
        pipe.send((index, answer))


@contextlib.contextmanager
def one_thread() -> Iterator[None]:
    """Have the processes started inside use one thread each."""
    before = {name: os.environ.get(name) for name in ONE_THREAD}
    os.environ.update(dict.fromkeys(ONE_THREAD, "1"))
    try:
        yield
    finally:
        for name, value in before.items():
            if value is None:
                del os.environ[name]
            else:
                os.environ[name] = value


class _Worker:
    """One process, its pipe and the job it holds."""

    def __init__(self, work: Callable[[Any], Any], prepare: Callable[[], None]) -> None:
        context = multiprocessing.get_context("spawn")
        self.pipe, theirs = context.Pipe()
        self.process = context.Process(target=_serve, args=(theirs, work, prepare), daemon=True)
        with one_thread():
            self.process.start()
        theirs.close()
        self.ready = False
        self.job: int | None = None

    def give(self, index: int, item: object) -> None:
        """Hand over a job."""
        self.job = index
        with contextlib.suppress(OSError):  # a worker that has just died: its sentinel tells
            self.pipe.send((index, item))

    def end(self) -> None:
        """End the process without waiting for its job."""
        self.process.kill()  # it holds nothing that would have to be put away
        self.process.join()
        self.pipe.close()


class Workers(Generic[Item, Answer]):
    """A few worker processes that answer jobs; use it in a ``with`` block, or call `end`.

    Parameters
    ----------
    work : answers one job; a function at the top of a module, so that it can be named to a process
    count : how many processes
    prepare : called once in each before its first job; the second process is started when the first is ready,
        so that what the first one compiles need not be compiled twice
    """

    def __init__(
        self, work: Callable[[Item], Answer], count: int, prepare: Callable[[], None] = nothing
    ) -> None:
        self._work, self._prepare = work, prepare
        self._count = max(1, count)
        self._lost_at_start = 0
        self._workers: list[_Worker] = []

    def __enter__(self) -> Workers[Item, Answer]:
        """Give the workers; none is started yet."""
        return self

    def __exit__(self, *_: object) -> None:
        """End every process."""
        self.end()

    def end(self) -> None:
        """End every process at once."""
        for worker in self._workers:
            worker.process.kill()
        for worker in self._workers:
            worker.end()
        self._workers.clear()

    @property
    def process_ids(self) -> tuple[int, ...]:
        """The processes that are there now."""
        return tuple(w.process.pid for w in self._workers if w.process.pid is not None)

    def answer(
        self, items: Sequence[Item], cancelled: Callable[[], bool] = bool
    ) -> Iterator[tuple[int, Answer | Fault] | None]:
        """Yield (index, answer) as they come, and None at least every tick; ends early when cancelled.

        Ending early, or closing the iterator, ends every process.

        Raises
        ------
        WorkersLostError
            When workers die before they are ready.
        """
        waiting = list(range(len(items)))[::-1]
        left = len(items)
        done = False
        try:
            while left:
                if cancelled():
                    return
                self._fill(len(waiting))
                self._hand_out(items, waiting)
                for index, answer in self._collect():
                    left -= 1
                    yield index, answer
                if left:
                    yield None
            done = True
        finally:
            if not done:
                self.end()

    def _fill(self, waiting: int) -> None:
        """Start the next worker, one at a time until the first is ready."""
        ready = [worker for worker in self._workers if worker.ready]
        if not self._workers or (ready and len(self._workers) < min(self._count, len(ready) + waiting)):
            self._workers.append(_Worker(self._work, self._prepare))

    def _hand_out(self, items: Sequence[Item], waiting: list[int]) -> None:
        for worker in self._workers:
            if worker.ready and worker.job is None and waiting:
                index = waiting.pop()
                worker.give(index, items[index])

    def _collect(self) -> list[tuple[int, Answer | Fault]]:
        """Return what came within a tick; a worker that died has a fault to tell."""
        handles = [h for w in self._workers for h in (w.pipe, w.process.sentinel)]
        told = set(connection.wait(handles, TICK_S))
        out: list[tuple[int, Answer | Fault]] = []
        for worker in list(self._workers):
            if worker.pipe in told and self._hear(worker, out):
                continue
            if worker.process.sentinel in told:
                self._bury(worker, out)
        return out

    def _hear(self, worker: _Worker, out: list[tuple[int, Answer | Fault]]) -> bool:
        """Take what a worker says; return whether there was something to take."""
        try:
            said = worker.pipe.recv()
        except (EOFError, OSError):
            self._bury(worker, out)
            return True
        if said is None:
            worker.ready = True
            self._lost_at_start = 0
        else:
            worker.job = None
            out.append(said)
        return True

    def _bury(self, worker: _Worker, out: list[tuple[int, Answer | Fault]]) -> None:
        worker.end()
        self._workers.remove(worker)
        code = worker.process.exitcode
        if worker.job is not None:
            out.append((worker.job, Fault(f"the worker process ended by itself (exit code {code})")))
        elif not worker.ready:
            self._lost_at_start += 1
            if self._lost_at_start >= LOST_AT_START:
                raise WorkersLostError(f"worker processes end as soon as they start (exit code {code})")
