"""An outcome map under way: its runs in worker processes, kept on disk as they come, gone on with later."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from sim import warm
from sim.many import FAILED
from sim.map_cell import Job, Look, look, look_or_fault
from sim.map_file import MapStore
from sim.outcome_map import Ask, OutcomeMap, made, needs_second
from sim.workers import Workers


@dataclass(frozen=True)
class MapProgress:
    """How far a map is: runs done of those there may be; ``seconds_left`` is None until one has ended."""

    done: int
    total: int
    seconds: float
    seconds_left: float | None


class MapRun:
    """A map under way: iterate for the progress, then read `answer`.

    Parameters
    ----------
    ask : what is asked
    store : where runs are kept as they come and looked for first; None keeps nothing
    worker_count : how many processes
    job : answers one run;  prepare : called once in each worker before its first
    """

    def __init__(
        self,
        ask: Ask,
        store: MapStore | None = None,
        *,
        worker_count: int = 1,
        cancelled: Callable[[], bool] = bool,
        job: Callable[[Job], Look] = look,
        prepare: Callable[[], None] = warm.main,
    ) -> None:
        self.ask, self._store, self._cancelled = ask, store, cancelled
        self.workers: Workers[Job, Look] = Workers(job, worker_count, prepare)
        found = store.looks(ask) if store is not None else {}
        self._found: tuple[dict[int, Look], ...] = tuple(
            {index: one for (turn, index), one in found.items() if turn == which} for which in (0, 1)
        )
        self._whole = False

    def __iter__(self) -> Iterator[MapProgress]:
        """Yield the progress at least every tick; ends early, with no process left, when cancelled."""
        began, before = time.perf_counter(), sum(len(found) for found in self._found)
        with self.workers:
            for turn in (0, 1):
                wanted = self._wanted(turn)
                for said in self.workers.answer([self._job(turn, k) for k in wanted], self._cancelled):
                    if said is not None:
                        self._take(turn, wanted[said[0]], look_or_fault(said[1]))
                    yield self._progress(time.perf_counter() - began, before)
                if len(self._wanted(turn)):
                    return
            self._whole = True
            yield self._progress(time.perf_counter() - began, before)

    def _wanted(self, turn: int) -> list[int]:
        """Return the cells still to be run on a lattice."""
        first = self._found[0]
        cells = range(len(self.ask.grid.cells)) if turn == 0 else [k for k in first if needs_second(first[k])]
        return sorted(k for k in cells if k not in self._found[turn])

    def _job(self, turn: int, index: int) -> Job:
        return Job(self.ask.plan, self.ask.grid.cells[index], self.ask.spacings_m[turn])

    def _take(self, turn: int, index: int, one: Look) -> None:
        self._found[turn][index] = one
        if self._store is not None and one.standing != FAILED:
            self._store.add(self.ask, turn, index, one)

    def _progress(self, seconds: float, before: int) -> MapProgress:
        first, second = self._found
        cells = len(self.ask.grid.cells)
        needed = sum(needs_second(one) for one in first.values())
        total = cells + round(needed * cells / max(1, len(first)))
        done = len(first) + len(second)
        fresh = done - before
        left = seconds * (total - done) / fresh if fresh > 0 else None
        return MapProgress(done, max(total, done), seconds, left)

    @property
    def whole(self) -> bool:
        """Whether every cell has been run as often as it needs."""
        return self._whole

    @property
    def answer(self) -> OutcomeMap:
        """The map.

        Raises
        ------
        ValueError
            When runs are still to come.
        """
        if not self._whole:
            raise ValueError("the map is not whole yet")
        first: Mapping[int, Look] = self._found[0]
        return made(self.ask, [first[k] for k in range(len(first))], self._found[1])
