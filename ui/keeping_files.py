"""Files of the sittings: one a running window, written aside and put in place, found again after a crash.

A window holds a lock on its file for as long as it runs. A file whose lock nobody holds was left behind by
a program that did not end by itself.
"""

from __future__ import annotations

import contextlib
import hashlib
import logging
import os
import threading
import time
from collections.abc import Callable, Iterator, Sequence
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

import msgspec
from PySide6.QtCore import QLockFile

from sim import kept
from sim.plan import Plan
from sim.results import MODEL_VERSION
from ui.state.sitting import Sitting, SittingError, decoded, encoded

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.record import MoveRecord

SITTINGS, SOLVED = "sittings", "worked-out"
SOLVED_BYTES = 200_000_000
"""Room of all results kept; those not used for the longest time go first."""


class SittingFile:
    """The file of this window.

    Parameters
    ----------
    folder : where settings are remembered
    """

    def __init__(self, folder: Path) -> None:
        self.folder = folder / SITTINGS
        self.path = self.folder / f"{os.getpid()}-{time.time_ns():x}.json"
        self._lock: QLockFile | None = None

    def write(self, sitting: Sitting) -> bool:
        """Write a sitting whole or not at all; return False where the folder cannot be written."""
        data = encoded(sitting, datetime.now().astimezone())
        part = self.path.with_suffix(".part")
        try:
            self._hold()
            with part.open("wb") as file:
                file.write(data)
                file.flush()
                os.fsync(file.fileno())
            part.replace(self.path)
        except OSError:
            return False
        return True

    def _hold(self) -> None:
        if self._lock is None:
            self.folder.mkdir(parents=True, exist_ok=True)
            self._lock = _lock_of(self.path)
            self._lock.tryLock(0)

    def end(self) -> None:
        """Take the file away: the window was closed by its user."""
        for path in (self.path, self.path.with_suffix(".part")):
            with contextlib.suppress(OSError):
                path.unlink(missing_ok=True)
        if self._lock is not None:
            self._lock.unlock()
            self._lock = None


class Left:
    """A sitting that was left behind, held so that no other window takes it too."""

    def __init__(self, path: Path, sitting: Sitting, lock: QLockFile) -> None:
        self.path, self.sitting, self._lock = path, sitting, lock

    def done(self) -> None:
        """Take the file away: all of it is in the window's own file."""
        with contextlib.suppress(OSError):
            self.path.unlink(missing_ok=True)
        self._lock.unlock()

    def let_go(self) -> None:
        """Leave the file where it is, for another time."""
        self._lock.unlock()


def left_behind(folder: Path) -> tuple[Left | None, str]:
    """Return the newest sitting that nobody holds, and a sentence on any that cannot be read ("" if none).

    One that cannot be read is set aside under another name, so that it is told once and loses nothing.
    """
    trouble = ""
    for path in _newest_first(folder / SITTINGS):
        lock = _lock_of(path)
        if not lock.tryLock(0):
            continue
        try:
            sitting = decoded(path.read_bytes(), path.name)
        except (OSError, SittingError) as problem:
            aside = path.with_suffix(".broken")
            with contextlib.suppress(OSError):
                path.replace(aside)
            trouble = f"What was kept of the last sitting could not be read; it was put aside as {aside}."
            trouble += "" if isinstance(problem, SittingError) else f" ({problem})"
            lock.unlock()
            continue
        return Left(path, sitting, lock), trouble
    return None, trouble


def _newest_first(folder: Path) -> list[Path]:
    try:
        found = [p for p in folder.iterdir() if p.suffix == ".json"]
        return sorted(found, key=lambda p: p.stat().st_mtime_ns, reverse=True)
    except OSError:
        return []


def _lock_of(path: Path) -> QLockFile:
    lock = QLockFile(str(path.with_suffix(".lock")))
    lock.setStaleLockTime(0)  # held for hours; only a dead holder frees it
    return lock


# --- results by their hash -------------------------------------------------------------------------------


def solved_name(plan: Plan, count: int) -> str:
    """Return the name under which the first moves of a plan are kept: what their outcome hangs on, hashed."""
    told = msgspec.json.encode((MODEL_VERSION, plan.car, plan.past(count)), order="deterministic")
    return hashlib.sha256(told).hexdigest()[:40]


def keep_solved(folder: Path, plan: Plan, model: DoorModel, records: Sequence[MoveRecord]) -> bool:
    """Keep the moments of a plan's leading moves, unless they are; return whether they can be read again.

    What a kept moment does not hold (a ram, a whole side, a part on the ground) is not kept at all.
    """
    place = folder / SOLVED
    name = solved_name(plan, len(records))
    if (place / f"{name}.json").exists():
        return True
    frames = [frame for record in records for frame in record.frames]
    if not all(_can_be_kept(record) for record in records) or any(
        frame.ram is not None or frame.exit_width_m is not None or frame.grounded_n for frame in frames
    ):
        return False
    cut = msgspec.structs.replace(plan, moves=plan.moves[: len(records)])
    try:
        kept.put(cut, model, records, place, name)
    except kept.PlanError:
        return False
    _make_room(place)
    return True


def _can_be_kept(record: MoveRecord) -> bool:
    """Tell whether a record was solved in this sitting: one that was kept before carries no state."""
    return record.result is not None and record.end_state is not None


def solved_before(folder: Path, plan: Plan, count: int, model: DoorModel) -> tuple[MoveRecord, ...]:
    """Return the kept records of a plan's first `count` moves, of fewer where only those are kept."""
    place = folder / SOLVED
    for number in range(count, 0, -1):
        name = solved_name(plan, number)
        found = kept.read(place, name)
        if found is None or found.model_version != MODEL_VERSION:
            continue
        records = kept.moments(place, name, found, model)
        if records:
            for ending in (".json", ".npz"):
                with contextlib.suppress(OSError):
                    (place / f"{name}{ending}").touch()
            return records
    return ()


def _make_room(place: Path, most: int = SOLVED_BYTES) -> None:
    try:
        files = sorted(((p.stat().st_mtime_ns, p.stat().st_size, p) for p in place.iterdir()), reverse=True)
    except OSError:
        return
    used = 0
    for _, size, path in files:
        used += size
        if used > most:
            with contextlib.suppress(OSError):
                path.unlink()


# --- the thread that writes ------------------------------------------------------------------------------


class WriterThread:
    """Does jobs off the window's way, one after another; of jobs of one name only the newest is done."""

    def __init__(self) -> None:
        self._jobs: dict[str, Callable[[], object]] = {}
        self._wake = threading.Condition()
        self._ends = False
        self._thread = threading.Thread(target=self._serve, name="keeping", daemon=True)
        self._thread.start()

    def submit(self, name: str, job: Callable[[], object]) -> None:
        """Have a job done soon, in the place of one of its name that still waits."""
        with self._wake:
            self._jobs[name] = job
            self._wake.notify()

    def close(self) -> bool:
        """Do what waits, and end; return whether the thread ended."""
        with self._wake:
            self._ends = True
            self._wake.notify()
        self._thread.join(10.0)
        return not self._thread.is_alive()

    def _serve(self) -> None:
        for job in self._waiting():
            try:
                job()
            except Exception:
                logging.getLogger(__name__).warning("Not kept for after a crash", exc_info=True)

    def _waiting(self) -> Iterator[Callable[[], object]]:
        while True:
            with self._wake:
                while not self._jobs and not self._ends:
                    self._wake.wait()
                if not self._jobs:
                    return
                job = self._jobs.pop(next(iter(self._jobs)))
            yield job
