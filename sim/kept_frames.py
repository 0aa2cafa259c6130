"""The moments of a solved plan as compact arrays: to be looked at again, not to be pushed on from.

Places are kept to 0.1 mm, as the way from one moment to the next; seam damage and load to a 1/255 and
a fiftieth.  A door's push of 40 moments takes about 300 kB instead of 4 MB.
"""

from __future__ import annotations

import io
import zipfile
from collections.abc import Sequence
from dataclasses import fields, replace
from pathlib import Path
from typing import Any

import msgspec
import numpy as np
from numpy.typing import NDArray

from sim import record as told
from sim.door_model import DoorModel
from sim.folded import Replay, Replayed
from sim.network import State
from sim.record import Frame, MoveRecord
from sim.rigid import Barrier

# a frame's annotations name these two, which `sim.record` itself leaves out so as to stay light; whoever
# reads frames back needs them there
vars(told).update(State=State, Barrier=Barrier)

GRID_M = 1.0e-4
LOAD_STEP = 0.02
PLANES = 5
"""Bytes a whole number is kept in."""
PAIR = 1 << 18
"""Nodes a lattice may have for a pair of them to be one number."""
LEAST_FLOW = 3
"""Of 255: what carries less than a hundredth of the largest flow is not drawn."""
FORM = 2
"""Version of this form; another one is not read."""

FOLD_FULL_J_PER_M2, FOLD_FINE_J_PER_M2 = 1.0e6, 5.0
"""Plastic work is kept by its logarithm, from nothing to the first in 255 steps of 5 % above the second."""
FOLD_STEP = float(np.log1p(FOLD_FULL_J_PER_M2 / FOLD_FINE_J_PER_M2)) / 255.0

_BIG = (
    "points", "seam_damage", "load", "path_pairs", "path_flow_n", "triangles", "state", "fold_j_per_m2",
    "replayed",
)  # fmt: skip
"""Fields of a frame that are kept as arrays, or not at all; the others as words."""
_ROUGH = ("ledger_j", "ladder", "reactions")
"""Fields of which five digits are kept."""


def packed(model: DoorModel, records: Sequence[MoveRecord]) -> bytes:
    """Return the moments of all moves as the bytes of an npz file."""
    frames = [frame for record in records for frame in record.frames]
    arrays: dict[str, NDArray[Any]] = {}
    ways: list[NDArray[np.int64]] = []
    last = _grid(model.structure.points)
    for frame in frames:
        here = _grid(frame.points)
        # a node that a tear has made starts at nothing: its whole place is its way
        ways.append((here - _longer(last, len(here))).reshape(-1))
        last = here
    arrays |= _planes("way", np.concatenate(ways))
    arrays["nodes"] = np.array([len(frame.points) for frame in frames], dtype=np.int32)
    arrays |= _bytes("damage", [255.0 * f.seam_damage for f in frames])
    arrays |= _bytes("load", [f.load / LOAD_STEP for f in frames])
    folds = [f.fold_j_per_m2 for f in frames if f.fold_j_per_m2 is not None]
    if len(folds) == len(frames):
        arrays |= _bytes("fold", [np.log1p(fold / FOLD_FINE_J_PER_M2) / FOLD_STEP for fold in folds])
    arrays |= _flows(frames)
    arrays["words"] = np.frombuffer(msgspec.json.encode(_words(records)), dtype=np.uint8)
    torn = [f.triangles for f in frames if f.triangles is not None]
    if torn:
        arrays["triangles"] = np.concatenate(torn).astype(np.int32)
    return _npz(arrays)


def _bytes(name: str, values: Sequence[NDArray[np.float64]]) -> dict[str, NDArray[Any]]:
    """Return rows of numbers from 0 to 255 as one row of bytes, and how long each was."""
    rows = [np.clip(np.rint(row), 0, 255).astype(np.uint8) for row in values]
    return {name: np.concatenate(rows), f"{name}_count": np.array([len(row) for row in rows], np.int32)}


def _npz(arrays: dict[str, NDArray[Any]]) -> bytes:
    """Return arrays as npz bytes that hang on the arrays alone: no dates inside."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as file:
        for name, array in arrays.items():
            data = io.BytesIO()
            np.save(data, array, allow_pickle=False)
            file.writestr(
                zipfile.ZipInfo(f"{name}.npy", (1980, 1, 1, 0, 0, 0)),
                data.getvalue(),
                compress_type=zipfile.ZIP_DEFLATED,
                compresslevel=9,
            )
    return out.getvalue()


def _grid(points: NDArray[np.float64]) -> NDArray[np.int64]:
    return np.rint(points / GRID_M).astype(np.int64)


def _longer(points: NDArray[np.int64], count: int) -> NDArray[np.int64]:
    if len(points) >= count:
        return points[:count]
    return np.concatenate([points, np.zeros((count - len(points), 3), np.int64)])


def _flows(frames: Sequence[Frame]) -> dict[str, NDArray[Any]]:
    """Return the load paths: every pair of nodes met, and its flow in each moment, of 255 at the most."""
    most = np.array([float(frame.path_flow_n.max(initial=0.0)) for frame in frames])
    keys, shares = [], []
    for frame, top in zip(frames, most, strict=True):
        pairs = frame.path_pairs.reshape(-1, 2)
        keys.append(pairs[:, 0] * PAIR + pairs[:, 1])
        shares.append(np.rint(255.0 * frame.path_flow_n / top) if top > 0.0 else np.zeros(len(pairs)))
    drawn = [key[share >= LEAST_FLOW] for key, share in zip(keys, shares, strict=True)]
    met = np.unique(np.concatenate(drawn))
    flow = np.zeros((len(frames), len(met)), dtype=np.uint8)
    for row, key, share in zip(flow, keys, shares, strict=True):
        kept = share >= LEAST_FLOW
        row[np.searchsorted(met, key[kept])] = share[kept].astype(np.uint8)
    return _planes("pair", np.diff(met, prepend=0)) | {"flow": flow, "most": most.astype(np.float32)}


def _planes(name: str, ways: NDArray[np.int64]) -> dict[str, NDArray[Any]]:
    """Return whole numbers as planes of bytes, signs folded in: small numbers leave the high planes empty."""
    folded = np.where(ways < 0, -2 * ways - 1, 2 * ways)
    return {f"{name}_{k}": (folded >> (8 * k) & 255).astype(np.uint8) for k in range(PLANES)}


def _from_planes(name: str, arrays: dict[str, NDArray[Any]]) -> NDArray[np.int64]:
    folded = np.zeros(len(arrays[f"{name}_0"]), dtype=np.int64)
    for k in range(PLANES):
        folded |= arrays[f"{name}_{k}"].astype(np.int64) << (8 * k)
    return np.where(folded & 1, -(folded + 1) // 2, folded // 2)


def _words(records: Sequence[MoveRecord]) -> dict[str, Any]:
    return {
        "form": FORM,
        "moves": [len(record.frames) for record in records],
        "frames": [_frame_words(frame) for record in records for frame in record.frames],
    }


def _frame_words(frame: Frame) -> dict[str, Any]:
    barrier = frame.barrier
    if barrier is not None:  # which triangles it touches matters to the mechanics alone
        barrier = replace(barrier, triangles=np.zeros(0, dtype=np.int64))
    small = {
        field.name: getattr(frame, field.name)
        for field in fields(frame)
        if field.name not in _BIG and field.name != "barrier"
    }
    raw: dict[str, Any] = msgspec.to_builtins({**small, "barrier": barrier}, enc_hook=_plain)
    for name in _ROUGH:
        raw[name] = _rough(raw[name])
    raw["torn"] = 0 if frame.triangles is None else len(frame.triangles)
    return raw


def _plain(value: Any) -> Any:
    if isinstance(value, np.ndarray | np.generic):
        return value.tolist()
    raise NotImplementedError(f"{type(value)} cannot be kept")


def _rough(value: Any) -> Any:
    if isinstance(value, dict):
        return {key: _rough(item) for key, item in value.items()}
    if isinstance(value, list | tuple):
        return [_rough(item) for item in value]
    return float(f"{value:.5g}") if isinstance(value, float) else value


def unpacked(path: Path, model: DoorModel) -> tuple[tuple[Frame, ...], ...]:
    """Return the moments of each move.

    Raises
    ------
    ValueError, msgspec.DecodeError
        When they are of another form, or belong to another lattice than the model's.
    """
    with np.load(path, allow_pickle=False) as file:
        arrays = {name: file[name] for name in file.files}
    words = msgspec.json.decode(arrays["words"].tobytes())
    if words["form"] != FORM:
        raise ValueError(f"{path.name} is of form {words['form']}, not {FORM}")
    frames = _frames(arrays, words["frames"], model)
    ends = np.cumsum(words["moves"])
    return tuple(tuple(frames[end - count : end]) for end, count in zip(ends, words["moves"], strict=True))


def _frames(arrays: dict[str, NDArray[Any]], words: list[dict[str, Any]], model: DoorModel) -> list[Frame]:
    last = _grid(model.structure.points)
    if len(words) != len(arrays["nodes"]) or arrays["nodes"][0] < len(last):
        raise ValueError("the moments belong to another lattice")
    ways, met = _from_planes("way", arrays), np.cumsum(_from_planes("pair", arrays))
    pairs = np.stack([met // PAIR, met % PAIR], axis=-1)
    damage, loads = _rows("damage", arrays), _rows("load", arrays)
    folds = _rows("fold", arrays) if "fold" in arrays else []
    at, torn_at = 0, 0
    frames = []
    for k, said in enumerate(words):
        count, torn = int(arrays["nodes"][k]), int(said.pop("torn"))
        last = _longer(last, count) + ways[at : at + 3 * count].reshape(-1, 3)
        flow = arrays["flow"][k]
        big = {
            "points": GRID_M * last,
            "seam_damage": damage[k] / 255.0,
            "load": LOAD_STEP * loads[k],
            "path_pairs": pairs[flow > 0],
            "path_flow_n": float(arrays["most"][k]) / 255.0 * flow[flow > 0],
            "triangles": arrays["triangles"][torn_at : torn_at + torn].astype(np.int64) if torn else None,
        }
        if folds:
            big["fold_j_per_m2"] = FOLD_FINE_J_PER_M2 * np.expm1(FOLD_STEP * folds[k])
        frames.append(_frame(said, big))
        at, torn_at = at + 3 * count, torn_at + torn
    return frames if folds else _replayed(frames, model)


def _replayed(frames: list[Frame], model: DoorModel) -> list[Frame]:
    """Return moments kept without their plastic work, which is read again from their shapes."""
    replay = Replay(model.network, [f.points for f in frames], [f.triangles for f in frames])
    return [replace(frame, replayed=Replayed(replay, k)) for k, frame in enumerate(frames)]


def _rows(name: str, arrays: dict[str, NDArray[Any]]) -> list[NDArray[np.float64]]:
    ends = np.cumsum(arrays[f"{name}_count"])[:-1]
    return [row.astype(np.float64) for row in np.split(arrays[name], ends)]


def _frame(said: dict[str, Any], big: dict[str, Any]) -> Frame:
    none: dict[str, Any] = {name: [] for name in ("points", "seam_damage", "load")}
    return replace(msgspec.convert({**said, **none}, Frame, dec_hook=_array), **big)


def _array(_: type, value: Any) -> Any:
    """Return a list of numbers as the array that a field asks for; empty places keep three columns."""
    array = np.array(value)
    return array if array.size else np.zeros((0, 3))
