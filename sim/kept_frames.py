"""The moments of a solved plan as compact arrays: to be looked at again, not to be pushed on from.

Places are kept to 0.1 mm, as the way from one moment to the next; seam damage and load to a 1/255 and
a fiftieth.  A door's push of 40 moments takes about 300 kB instead of 4 MB.
"""

from __future__ import annotations

import io
import zipfile
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import msgspec
import numpy as np
from numpy.typing import NDArray

from sim.door_model import DoorModel
from sim.plan import BeltPoint, EdgePoint
from sim.record import Clearance, Event, Frame, MoveRecord, Rung, SeatNow
from sim.rigid import Barrier

GRID_M = 1.0e-4
LOAD_STEP = 0.02
PLANES = 5
"""Bytes a whole number is kept in."""
PAIR = 1 << 18
"""Nodes a lattice may have for a pair of them to be one number."""
LEAST_FLOW = 3
"""Of 255: what carries less than a hundredth of the largest flow is not drawn."""
FORM = 1
"""Version of this form; another one is not read."""

_NUMBERS = (
    "move_index",
    "increment",
    "opening_m",
    "force_n",
    "parted_length_m",
    "torn_length_m",
    "latch_demand_ratio",
    "skin_mid_outboard_m",
    "inner_mid_outboard_m",
    "iterations",
    "sharp_edge_count",
)


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
    arrays["damage"] = np.rint(255.0 * np.array([f.seam_damage for f in frames])).astype(np.uint8)
    loads = [np.clip(np.rint(f.load / LOAD_STEP), 0, 255).astype(np.uint8) for f in frames]
    arrays["load"], arrays["loads"] = np.concatenate(loads), np.array([len(x) for x in loads], np.int32)
    arrays |= _flows(frames)
    arrays["words"] = np.frombuffer(msgspec.json.encode(_words(records)), dtype=np.uint8)
    torn = [f.triangles for f in frames if f.triangles is not None]
    if torn:
        arrays["triangles"] = np.concatenate(torn).astype(np.int32)
    return _npz(arrays)


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
    seat, barrier = frame.seat, frame.barrier
    words: dict[str, Any] = {name: getattr(frame, name) for name in _NUMBERS}
    words |= {
        "ledger_j": {name: _short(value) for name, value in frame.ledger_j.items()},
        "ladder": [(rung.part, rung.event, _short(rung.demand_ratio)) for rung in frame.ladder],
        "events": [(e.kind, e.part, e.opening_m, e.force_n) for e in frame.events],
        "clearance": (
            frame.clearance.distance_m,
            frame.clearance.metal_point,
            frame.clearance.body_point,
            frame.clearance.body_part,
        ),
        "drive": (frame.drive_points.tolist(), frame.drive_forces.tolist()),
        "reactions": {name: [_short(x) for x in force] for name, force in frame.reactions.items()},
        "torn": 0 if frame.triangles is None else len(frame.triangles),
    }
    if seat is not None:
        place = msgspec.to_builtins(seat.place)
        words["seat"] = (place, seat.seat, seat.skin_share, seat.slid_m, seat.other_slid_m)
        words["line"] = (seat.line.tolist(), seat.tips.tolist())
    if barrier is not None:
        words["barrier"] = {
            "core": barrier.core.tolist(),
            "rounding_m": barrier.rounding_m,
            "is_box": barrier.is_box,
            "centre": barrier.centre.tolist(),
            "direction": barrier.direction.tolist(),
        }
    return words


def _short(value: float) -> float:
    return float(f"{value:.5g}")


def unpacked(path: Path, model: DoorModel) -> tuple[tuple[Frame, ...], ...]:
    """Return the moments of each move.

    Raises
    ------
    ValueError
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
    at, load_at, torn_at = 0, 0, 0
    frames = []
    for k, said in enumerate(words):
        count = int(arrays["nodes"][k])
        part = slice(at, at + 3 * count)
        last = _longer(last, count) + ways[part].reshape(-1, 3)
        load = arrays["load"][load_at : load_at + int(arrays["loads"][k])]
        flow = arrays["flow"][k]
        torn = int(said["torn"])
        triangles = arrays["triangles"][torn_at : torn_at + torn].astype(np.int64) if torn else None
        frames.append(
            _frame(
                said,
                points=GRID_M * last,
                seam_damage=arrays["damage"][k] / 255.0,
                load=LOAD_STEP * load,
                path_pairs=pairs[flow > 0],
                path_flow_n=float(arrays["most"][k]) / 255.0 * flow[flow > 0],
                triangles=triangles,
            )
        )
        at, load_at, torn_at = part.stop, load_at + len(load), torn_at + torn
    return frames


def _frame(said: dict[str, Any], **arrays: Any) -> Frame:
    distance, metal, body, part = said["clearance"]
    points, forces = (np.array(one, dtype=np.float64).reshape(-1, 3) for one in said["drive"])
    return Frame(
        **{name: said[name] for name in _NUMBERS},
        ledger_j=said["ledger_j"],
        ladder=tuple(Rung(*rung) for rung in said["ladder"]),
        events=tuple(Event(*event) for event in said["events"]),
        clearance=Clearance(distance, tuple(metal), tuple(body), part),
        drive_points=points,
        drive_forces=forces,
        reactions={name: (force[0], force[1], force[2]) for name, force in said["reactions"].items()},
        seat=_seat(said),
        barrier=_barrier(said.get("barrier")),
        **arrays,
    )


def _seat(said: dict[str, Any]) -> SeatNow | None:
    if "seat" not in said:
        return None
    raw, seat, share, slid, other = said["seat"]
    place = msgspec.convert(raw, EdgePoint | BeltPoint)
    line, tips = (np.array(one, dtype=np.float64) for one in said["line"])
    return SeatNow(place, seat, share, slid, other, line, tips)


def _barrier(said: dict[str, Any] | None) -> Barrier | None:
    if said is None:
        return None
    core, centre, direction = (np.array(said[name]) for name in ("core", "centre", "direction"))
    none = np.zeros(0, dtype=np.int64)
    return Barrier(core, said["rounding_m"], said["is_box"], centre, direction, none)
