"""Starts that wrecks left, kept on disk: beside their plan, and by their hash in the settings' folder.

A wreck takes from seconds to minutes and its result hangs on car and wreck alone, so nobody waits for it
twice. Beside a plan `car.toml` lies `car.start.npz`, which can be handed on with it. The moments of the wreck
are kept by hash alone, to be watched again. The wrecks of the ready lessons come with the program.
"""

from __future__ import annotations

import contextlib
import hashlib
import shutil
from collections.abc import Sequence
from importlib import resources
from pathlib import Path

import msgspec

from sim import kept_frames, starts
from sim.course import Begin
from sim.door_model import DoorModel
from sim.plan import Plan
from sim.record import Frame, MoveRecord
from sim.results import MODEL_VERSION
from sim.shared_wrecks import start_name
from sim.wreck import car_before

BESIDE = ".start.npz"
"""Ending of the file beside a plan."""
FOLDER = "starts"
MOST_BYTES = 60_000_000
"""What the settings' folder holds of them; the ones used longest ago go first."""

Moves = tuple[tuple[Frame, ...], ...]


def beside(file: Path | None) -> Path | None:
    """Return where a plan's start is kept beside its file."""
    return None if file is None else file.with_name(file.stem + BESIDE)


def ready(plan: Plan) -> Path:
    """Return where the start of a plan's wreck lies if it comes with the program: among the ready lessons."""
    return Path(str(resources.files("assets").joinpath("lessons", "solved", "starts", start_name(plan))))


class StartFiles:
    """Reads and writes kept starts; what cannot be written is worked out again another time.

    Parameters
    ----------
    folder : the settings' folder; None keeps nothing by hash
    """

    def __init__(self, folder: Path | None = None) -> None:
        self._folder = None if folder is None else folder / FOLDER

    def _place(self, plan: Plan) -> Path | None:
        told = msgspec.json.encode((MODEL_VERSION, car_before(plan), plan.wreck), order="deterministic")
        return None if self._folder is None else self._folder / f"{hashlib.sha256(told).hexdigest()[:40]}.npz"

    def read(self, plan: Plan, model: DoorModel, file: Path | None) -> tuple[Begin, Moves] | None:
        """Return what a plan's wreck left, and its moments where they are kept; None when it is not known."""
        place = self._place(plan)
        for path in (beside(file), place, ready(plan)):
            rest = None if path is None or not path.is_file() else starts.own_start(path, plan, model)
            if rest is not None:
                _used(place)
                return rest, self._read_moments(place, model)
        return None

    def _read_moments(self, place: Path | None, model: DoorModel) -> Moves:
        if place is None or not _moments(place).is_file():
            return ()
        try:
            return kept_frames.unpacked(_moments(place), model)
        except (OSError, ValueError, KeyError, msgspec.MsgspecError):
            return ()

    def keep(self, plan: Plan, model: DoorModel, rest: Begin, moves: Sequence[Sequence[Frame]]) -> None:
        """Keep a start that has just been worked out, and how it came about, by hash."""
        place = self._place(plan)
        if place is None:
            return
        with contextlib.suppress(OSError):
            place.parent.mkdir(parents=True, exist_ok=True)
            starts.save_start(place, plan, rest)
            records = [MoveRecord(tuple(frames)) for frames in moves]
            part = place.with_suffix(".part")
            part.write_bytes(kept_frames.packed(model, records))
            part.replace(_moments(place))
            _make_room(place.parent)

    def put_beside(self, plan: Plan, model: DoorModel, file: Path | None, rest: Begin | None) -> None:
        """Lay the start beside its plan's file, unless it lies there already."""
        path, place = beside(file), self._place(plan)
        if not plan.wreck or path is None or file is None or not file.is_file():
            return
        if path.is_file() and starts.own_start(path, plan, model) is not None:
            return
        with contextlib.suppress(OSError):
            if rest is not None:
                starts.save_start(path, plan, rest)
            elif place is not None and place.is_file():
                shutil.copyfile(place, path)


def _used(place: Path | None) -> None:
    """Mark kept files as used just now."""
    for path in () if place is None else (place, _moments(place)):
        with contextlib.suppress(OSError):
            if path.exists():
                path.touch()


def _moments(place: Path) -> Path:
    return place.with_suffix(".moments.npz")


def _make_room(folder: Path) -> None:
    used = 0
    for path in sorted(folder.iterdir(), key=lambda p: p.stat().st_mtime_ns, reverse=True):
        used += path.stat().st_size
        if used > MOST_BYTES:
            path.unlink()
