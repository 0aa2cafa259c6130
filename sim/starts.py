"""Saved starts: a wrecked state as a file that others can share, checked when it is read.

The file is a plain NumPy archive: the arrays of the state, and one JSON text with the version of the model,
the car's numbers, the wreck that made it, the books, and the hash of all of it.
"""

from __future__ import annotations

import hashlib
import zipfile
from pathlib import Path
from typing import Any

import msgspec
import numpy as np
from numpy.typing import NDArray

from sim.course import Begin
from sim.ledger import SPENT, Ledger
from sim.model import DoorModel
from sim.network import State
from sim.plan import Car, Plan
from sim.problems import PlanError
from sim.results import MODEL_VERSION
from sim.twins import felt

FORM = 1
ARRAYS = ("points", "plastic", "hardening", "turn", "worst", "touching", "holding", "on_rim", "angle")
KEPT = "kept: "
NOT_FELT = ("latch", "handle_n")  # a handle may be pulled on the start others made
PERSON = "occupant"
REMAKE = "make it again from its plan with 'hemline start'"


def _arrays(state: State) -> dict[str, NDArray[Any]]:
    out: dict[str, NDArray[Any]] = {name: np.asarray(getattr(state, name)) for name in ARRAYS}
    return out | {KEPT + key: np.asarray(value) for key, value in state.kept.items()}


def _hash(arrays: dict[str, NDArray[Any]], meta: dict[str, Any]) -> str:
    digest = hashlib.sha256(msgspec.json.encode(meta, order="deterministic"))
    for name in sorted(arrays):
        digest.update(name.encode() + str(arrays[name].dtype).encode() + str(arrays[name].shape).encode())
        digest.update(np.ascontiguousarray(arrays[name]).tobytes())
    return digest.hexdigest()


def save_start(path: Path, plan: Plan, begin: Begin) -> str:
    """Write a start beside its place and move it there; return its hash.

    Raises
    ------
    OSError
        When the folder cannot be written or the disk is full; an old file stays as it was.
    """
    ledger = begin.ledger
    meta: dict[str, Any] = {
        "form": FORM,
        "model_version": MODEL_VERSION,
        "car": msgspec.to_builtins(plan.car),
        "wreck": msgspec.to_builtins(plan.wreck),
        "ledger": {"work_j": ledger.work_j, "stored_j": ledger.stored_j, "lines": dict(ledger.lines)},
    }
    arrays = _arrays(begin.state)
    sha = _hash(arrays, meta)
    text = msgspec.json.encode({**meta, "sha256": sha}).decode()
    part = path.with_name(path.name + ".part")
    try:
        with part.open("wb") as file:
            np.savez_compressed(file, about=np.array(text), **arrays)  # type: ignore[arg-type]
        part.replace(path)
    except OSError:
        part.unlink(missing_ok=True)
        raise
    return sha


def find_start(name: str, folder: Path | None = None) -> Path:
    """Return where a saved start lies: beside the plan, or as its name says."""
    for path in ([] if folder is None else [folder / name]) + [Path(name)]:
        if path.is_file():
            return path
    raise PlanError("start", f"names {name!r}, which is not there; put the file beside the plan, or {REMAKE}")


def load_start(name: str, plan: Plan, model: DoorModel, folder: Path | None = None) -> Begin:
    """Return the start in a file.

    Raises
    ------
    PlanError
        When it is not there, is damaged, was made by another version of the model or on another car.
    """
    path = find_start(name, folder)
    try:
        with path.open("rb") as raw, np.load(raw, allow_pickle=False) as file:
            arrays = {key: file[key] for key in file.files if key != "about"}
            meta = msgspec.json.decode(str(file["about"]))
        sha = meta.pop("sha256")
        version, car = meta["model_version"], msgspec.convert(meta["car"], Car)
        books = meta["ledger"]
        ledger = Ledger(
            float(books["work_j"]),
            float(books["stored_j"]),
            {**dict.fromkeys(SPENT, 0.0), **{key: float(value) for key, value in books["lines"].items()}},
        )
    except (OSError, ValueError, KeyError, TypeError, zipfile.BadZipFile, msgspec.MsgspecError) as error:
        raise PlanError("start", f"{name!r} is not a saved start or is damaged; {REMAKE}") from error
    if version != MODEL_VERSION:
        raise PlanError(
            "start", f"{name!r} was made by version {version} of the model, this is {MODEL_VERSION}; {REMAKE}"
        )
    _same_car(name, car, plan.car)
    if sha != _hash(arrays, meta):
        raise PlanError("start", f"{name!r} has been changed since it was made (its hash differs); {REMAKE}")
    return Begin(_state(name, arrays, model), ledger)


def own_start(path: Path, plan: Plan, model: DoorModel) -> Begin | None:
    """Return the start in a file if this very wreck on this very car left it; None where it is another.

    A handle that is pulled afterwards is no other wreck.
    """
    try:
        with path.open("rb") as raw, np.load(raw, allow_pickle=False) as file:
            meta = msgspec.json.decode(str(file["about"]))
        wreck, car = meta["wreck"], msgspec.convert(meta["car"], Car)
        same = wreck == msgspec.json.decode(msgspec.json.encode(plan.wreck))
        if not same or _as_built(car) != _as_built(plan.car):
            return None
        return load_start(str(path), plan, model)
    except (OSError, ValueError, KeyError, TypeError, zipfile.BadZipFile, msgspec.MsgspecError, PlanError):
        return None


def _as_built(car: Car) -> str:
    """Return how the latch stood in the wreck: nobody pulled the handle then."""
    return "full" if car.latch == "open" else car.latch


def _same_car(name: str, made_on: Car, car: Car) -> None:
    alike = msgspec.structs.replace(made_on, **{field: getattr(car, field) for field in NOT_FELT})
    # who sits inside is not felt by the metal either: a start serves any person in any posture
    apart = [one for one in felt(alike, car) if not one.path.rpartition(".")[2].startswith(PERSON)]
    if apart:
        raise PlanError(
            "start", f"{name!r} was made on another car ({apart[0]}); use that car's numbers, or {REMAKE}"
        )


def _state(name: str, arrays: dict[str, NDArray[Any]], model: DoorModel) -> State:
    """Return the state, if it fits the model's network."""
    like = model.start
    for field in ARRAYS:
        wanted = getattr(like, field)
        got = arrays.get(field)
        if got is None or got.shape != wanted.shape or got.dtype != wanted.dtype:
            raise PlanError("start", f"{name!r} does not fit this car's network ({field}); {REMAKE}")
    kept = {key.removeprefix(KEPT): value for key, value in arrays.items() if key.startswith(KEPT)}
    return State(**{field: arrays[field] for field in ARRAYS}, kept=kept)
