"""The runs of a scenario under way: solved by worker processes, kept as they come, taken up again.

Every run is kept under the hash of the very plan it solved, the version of the model and the start it began
with; so asks can be changed and read again from what is kept, and a scenario whose plans or ranges change
solves only what has become another run.
"""

from __future__ import annotations

import hashlib
import math
import time
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

import msgspec

from meshes.part import MeshError
from sim.many import Progress, warmed
from sim.newton import CancelledError
from sim.plan import Plan
from sim.planfile import plan_sha256
from sim.problems import PlanError
from sim.results import MODEL_VERSION
from sim.scenario import Asked
from sim.traces import RunTrace, traced
from sim.vary import Draw
from sim.workers import Fault, Workers

ENDING = ".jsonl"


@dataclass(frozen=True)
class Job:
    """One run to make, how much CPU it may take [s], and where wrecks are kept that others have too."""

    draw: Draw
    most_s: float = math.inf
    starts: Path | None = None


class TooLong(msgspec.Struct, frozen=True):
    """Stands for a run that was given up: it is not kept, so a later call makes it again."""

    trace: RunTrace


class _Kept(msgspec.Struct, frozen=True):
    key: str
    trace: RunTrace


def key_of(plan: Plan) -> str:
    """Return what a run is kept under: hash of the plan, of the file it starts from, version of the model."""
    start = hashlib.sha256(Path(plan.start).read_bytes()).hexdigest() if plan.start else ""
    return hashlib.sha256(f"{MODEL_VERSION} {plan_sha256(plan)} {start}".encode()).hexdigest()


def try_run(job: Job) -> RunTrace | TooLong:
    """Return one run as a trace; the job of a worker."""
    from sim.run import solve_plan
    from sim.shared_wrecks import on_start

    draw, end = job.draw, time.process_time() + job.most_s
    values = dict(draw.values)

    def late() -> bool:
        return time.process_time() > end

    try:
        plan = draw.plan if job.starts is None else on_start(draw.plan, job.starts, late)
        _, records = solve_plan(plan, cancelled=late, with_residual=False)
    except (PlanError, MeshError) as error:
        return RunTrace(draw.index, values, why=str(error))
    except CancelledError:
        return TooLong(RunTrace(draw.index, values, why=f"took more than {job.most_s:.0f} s of CPU"))
    return traced(draw.plan, records, draw.index, values)


class Store:
    """Kept runs in a folder, one file a plan, a line a run; what is no such line is passed over."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        folder.mkdir(parents=True, exist_ok=True)

    @property
    def starts(self) -> Path:
        """Where wrecks are kept."""
        return self._folder / "starts"

    def _file(self, name: str) -> Path:
        return self._folder / f"{name}{ENDING}"

    def load(self, name: str) -> dict[str, RunTrace]:
        """Return the kept runs of a plan by their key."""
        file = self._file(name)
        out: dict[str, RunTrace] = {}
        if not file.is_file():
            return out
        for line in file.read_bytes().splitlines():
            try:
                kept = msgspec.json.decode(line, type=_Kept)
            except msgspec.MsgspecError:
                continue  # cut off when the program was ended
            out[kept.key] = kept.trace
        return out

    def add(self, name: str, key: str, trace: RunTrace) -> None:
        """Keep a run."""
        with self._file(name).open("ab") as file:
            file.write(msgspec.json.encode(_Kept(key, trace)) + b"\n")


class ScenarioRuns:
    """The runs of a scenario under way: iterate for the progress, then read `runs`.

    Parameters
    ----------
    count : how many of each plan;  worker_count : how many processes
    store : where runs are kept;  most_s : CPU a run may take [s]
    job : solves one; a function at the top of a module
    prepare : called once in each worker before its first run
    """

    def __init__(
        self,
        asked: Asked,
        count: int,
        *,
        store: Store,
        worker_count: int = 1,
        most_s: float = math.inf,
        cancelled: Callable[[], bool] = bool,
        job: Callable[[Job], RunTrace | TooLong] = try_run,
        prepare: Callable[[], None] = warmed,
    ) -> None:
        self._store, self._cancelled = store, cancelled
        self._draws = asked.draws(count)
        self._most_s = most_s
        self.workers: Workers[Job, RunTrace | TooLong] = Workers(job, worker_count, prepare)
        self._found: dict[tuple[str, int], RunTrace] = {}
        self._keys = {
            (name, draw.index): key_of(draw.plan) for name, draws in self._draws.items() for draw in draws
        }
        for name in self._draws:
            kept = store.load(name)
            for draw in self._draws[name]:
                trace = kept.get(self._keys[name, draw.index])
                if trace is not None:
                    self._found[name, draw.index] = msgspec.structs.replace(trace, index=draw.index)

    def __iter__(self) -> Iterator[Progress]:
        """Yield the progress at least every tick; ends early, with no process left, when cancelled."""
        began = time.perf_counter()
        order = sorted(self._keys, key=lambda place: place[1])  # by draw, so that every plan comes along
        places = [place for place in order if place not in self._found]
        starts = self._store.starts
        jobs = [Job(self._draws[name][index], self._most_s, starts) for name, index in places]
        before = len(self._found)
        yield self._progress(before, began)
        with self.workers:
            for said in self.workers.answer(jobs, self._cancelled):
                if said is not None:
                    self._take(places[said[0]], jobs[said[0]].draw, said[1])
                yield self._progress(before, began)

    def _take(self, place: tuple[str, int], draw: Draw, answer: RunTrace | TooLong | Fault) -> None:
        if isinstance(answer, RunTrace):
            self._store.add(place[0], self._keys[place], answer)
            self._found[place] = answer
        elif isinstance(answer, TooLong):
            self._found[place] = answer.trace
        else:
            self._found[place] = RunTrace(draw.index, dict(draw.values), why=answer.sentence)

    def _progress(self, before: int, began: float) -> Progress:
        seconds, done, total = time.perf_counter() - began, len(self._found), len(self._keys)
        new = done - before
        left = seconds * (total - done) / new if new else (0.0 if done == total else None)
        uncertain = sum(
            not run.moves or any(m.failed_count for m in run.moves) for run in self._found.values()
        )
        return Progress(done, total, uncertain, seconds, left)

    @property
    def whole(self) -> bool:
        """Whether every run has ended."""
        return len(self._found) == len(self._keys)

    @property
    def runs(self) -> Mapping[str, tuple[RunTrace, ...]]:
        """The runs of each plan in the order they were drawn.

        Raises
        ------
        ValueError
            When not every run has ended.
        """
        if not self.whole:
            raise ValueError(f"{len(self._found)} of {len(self._keys)} runs have ended")
        return {
            name: tuple(self._found[name, draw.index] for draw in draws)
            for name, draws in self._draws.items()
        }
