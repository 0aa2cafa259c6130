"""Results kept beside a plan: solved once, shown at once, and known to be stale for another plan or model.

Two files a plan: words and figures as JSON, which reads and compares well, and the moments as arrays
(`sim.kept_frames`).  A kept result is true for one plan (its hash) and one version of the model.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Callable, Collection, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeAlias

import msgspec

from sim.likely import NOT_SETTLED
from sim.many import GIVES, NOTHING_GAVE, first_give
from sim.move_words import opening_of
from sim.neighbours import neighbours_of as neighbours_of
from sim.plan import Move, Plan
from sim.planfile import plan_sha256
from sim.problems import PlanError
from sim.record import Frame, MoveRecord, MoveResult
from sim.results import LIMITS_LINE, MODEL_VERSION

if TYPE_CHECKING:
    from sim.door_model import DoorModel

CLOSE_RATIO = 0.15
"""Nearer than this to giving, the second part may as well have been the first (assumed)."""

ENDS = ("stalled", "tip off", "seat off")
"""Kinds of event after which a tool goes no further."""
SHORT = "short of its way"
"""A move that ended before it had gone as far as its plan sends it, whatever ended it."""

Solve: TypeAlias = "Callable[[Plan], tuple[DoorModel, tuple[MoveRecord, ...]]]"


class Told(msgspec.Struct, frozen=True):
    """One move in few figures; lengths gained during the move alone.

    first : kind of event in which a part gave first, "nothing gave" when none did
    rival, margin_ratio : what else was nearest to giving just before, and how far it was from that (1: idle)
    settled : every increment converged
    skin_m, inner_m : how far the middles went outboard [m]
    upper_skin_m, upper_inner_m : the same of the upper panel; 0 of results kept before it was read
    ended : why the tool could go no further, () when it went as far as it was sent
    off_square_rad : how far off square a ram's line stood on its wall at first and at last [rad]; () without
        a ram, and of results kept before it was read
    clearance_m, exit_width_m : room to the occupant and width to bring them out by at the end [m]; None where
        it was not read
    """

    first: str
    effect: str
    metal: tuple[str, ...]
    sentence: str
    settled: bool
    first_part: str = ""
    first_opening_m: float | None = None
    first_force_n: float | None = None
    rival: str = ""
    margin_ratio: float = 1.0
    opening_m: float = 0.0
    peak_force_n: float = 0.0
    latch_demand_ratio: float = 0.0
    parted_length_m: float = 0.0
    torn_length_m: float = 0.0
    skin_m: float = 0.0
    inner_m: float = 0.0
    clearance_change_m: float = 0.0
    least_clearance_m: float = 0.0
    seats: tuple[str, ...] = ()
    upper_skin_m: float = 0.0
    upper_inner_m: float = 0.0
    ended: tuple[str, ...] = ()
    clearance_m: float | None = None
    exit_width_m: float | None = None
    off_square_rad: tuple[float, ...] = ()


class Neighbour(msgspec.Struct, frozen=True):
    """The same plan with one thing changed a little; tells whether that thing decides."""

    words: str
    moves: tuple[Told, ...]


class Kept(msgspec.Struct, frozen=True):
    """What was solved, for which plan, by which version of the model.

    moments_sha256 : of the file with the moments, "" of results kept before it was noted
    """

    model_version: str
    plan_sha256: str
    title: str
    limits: str
    moves: tuple[Told, ...]
    neighbours: tuple[Neighbour, ...] = ()
    results: tuple[dict[str, Any], ...] = ()
    moments_sha256: str = ""


def told(records: Sequence[MoveRecord], moves: Sequence[Move] = ()) -> tuple[Told, ...]:
    """Return each solved move in few figures; with the plan's moves also whether they went as far as sent."""
    asked = [opening_of(move) for move in moves] or [0.0] * len(records)
    return tuple(
        _told(record, far) for record, far in zip(records, asked, strict=False) if record.result is not None
    )


def _told(record: MoveRecord, asked_m: float) -> Told:
    result, frames = record.result, record.frames
    assert result is not None
    start, end = frames[0], frames[-1]
    give = first_give(result.events)
    rival, margin = rival_of(frames, () if give is None else (give.kind,))
    return Told(
        first=NOTHING_GAVE if give is None else give.kind,
        effect=result.plan_effect,
        metal=result.metal,
        sentence=result.sentence,
        settled=result.solver.failed_count == 0 and NOT_SETTLED not in result.metal,
        first_part="" if give is None else give.part,
        first_opening_m=None if give is None else give.opening_m,
        first_force_n=None if give is None else give.force_n,
        rival=rival,
        margin_ratio=margin,
        opening_m=end.opening_m,
        peak_force_n=max(frame.force_n for frame in frames),
        latch_demand_ratio=result.latch_demand_ratio,
        parted_length_m=end.parted_length_m - start.parted_length_m,
        torn_length_m=end.torn_length_m - start.torn_length_m,
        skin_m=end.skin_mid_outboard_m - start.skin_mid_outboard_m,
        inner_m=end.inner_mid_outboard_m - start.inner_mid_outboard_m,
        clearance_change_m=end.clearance.distance_m - start.clearance.distance_m,
        least_clearance_m=result.clearance_m["least"],
        seats=result.seats,
        upper_skin_m=result.upper_panel_m.get("skin", 0.0),
        upper_inner_m=result.upper_panel_m.get("inner", 0.0),
        clearance_m=end.clearance.distance_m,
        exit_width_m=end.exit_width_m,
        ended=_ended(end, asked_m),
        off_square_rad=_off_square(frames),
    )


def _off_square(frames: Sequence[Frame]) -> tuple[float, ...]:
    rams = [frame.ram for frame in frames if frame.ram is not None]
    return (float(rams[0].angle_rad), float(rams[-1].angle_rad)) if rams else ()


def _ended(end: Frame, asked_m: float) -> tuple[str, ...]:
    kinds = {event.kind for event in end.events}
    short = (SHORT,) if end.opening_m < 0.99 * asked_m else ()
    return (*(kind for kind in ENDS if kind in kinds), *short)


def rival_of(frames: Sequence[Frame], first: Collection[str]) -> tuple[str, float]:
    """Return what else was nearest to giving in the last moment before anything gave, and its distance.

    ``first`` holds the kinds of event that count as what gave first.
    """
    before = frames[0]
    for frame in frames:
        if any(event.kind in GIVES for event in frame.events):
            break
        before = frame
    others = [rung for rung in before.ladder if rung.event in GIVES and rung.event not in first]
    if not others:
        return "", 1.0
    top = max(others, key=lambda rung: rung.demand_ratio)
    return top.event, max(0.0, 1.0 - top.demand_ratio)


def keep(
    plan: Plan,
    folder: Path,
    name: str,
    *,
    solve: Solve | None = None,
    with_neighbours: bool = True,
    reach_m: float | None = None,
) -> Kept:
    """Solve a plan and its neighbours, write what came out, and return it.

    Parameters
    ----------
    plan : the plan;  folder, name : where to
    solve : returns model and records of a plan
    with_neighbours, reach_m : whether the plans next to it are solved too, and how far [m]

    Raises
    ------
    PlanError
        When a move cannot be made, or the folder cannot be written.
    """
    from sim.run import solve_plan  # who only reads kept figures needs no mechanics

    solver: Solve = solve or solve_plan
    model, records = solver(plan)
    beside = tuple(
        Neighbour(words, _as_far_as_it_goes(solver, other))
        for words, other in neighbours_of(plan, reach_m)
        if with_neighbours
    )
    return put(plan, model, records, folder, name, beside)


def _as_far_as_it_goes(solver: Solve, plan: Plan) -> tuple[Told, ...]:
    """Return the moves of a plan next to a plan, up to the first that cannot be made there."""
    moves = plan.moves
    while moves:
        try:
            return told(solver(msgspec.structs.replace(plan, moves=moves))[1], moves)
        except PlanError as error:
            moves = moves[: _move_of(error)]
    return ()


def _move_of(error: PlanError) -> int:
    """Return the index of the move a refusal is about; the refusal again where it is about none."""
    found = re.match(r"moves\[(\d+)\]", error.field)
    if found is None:
        raise error
    return int(found[1])


def put(
    plan: Plan,
    model: DoorModel,
    records: Sequence[MoveRecord],
    folder: Path,
    name: str,
    neighbours: tuple[Neighbour, ...] = (),
) -> Kept:
    """Write what has been solved, and return it; PlanError when the folder cannot be written."""
    from sim import kept_frames

    moments = kept_frames.packed(model, records)
    kept = Kept(
        model_version=MODEL_VERSION,
        plan_sha256=plan_sha256(plan),
        title=plan.title,
        limits=LIMITS_LINE,
        moves=told(records, plan.moves),
        neighbours=neighbours,
        results=tuple(_timeless(record) for record in records),
        moments_sha256=hashlib.sha256(moments).hexdigest(),
    )
    text = msgspec.json.format(msgspec.json.encode(kept), indent=1)
    _put(folder, {f"{name}.json": text + b"\n", f"{name}.npz": moments})
    return kept


def _timeless(record: MoveRecord) -> dict[str, Any]:
    """Return a result as plain values without the times it took: the same run gives the same file."""
    assert record.result is not None
    raw: dict[str, Any] = msgspec.to_builtins(record.result)
    if raw.get("latch") is None:  # only a move at a handle has it
        raw.pop("latch", None)
    raw["solver"] |= {"factor_s": 0.0, "assemble_s": 0.0, "wall_s": 0.0}
    return raw


def _put(folder: Path, files: dict[str, bytes]) -> None:
    parts = [folder / f"{name}.part" for name in files]
    try:
        folder.mkdir(parents=True, exist_ok=True)
        for part, data in zip(parts, files.values(), strict=True):
            part.write_bytes(data)
        for part, name in zip(parts, files, strict=True):
            part.replace(folder / name)
    except OSError as error:
        for part in parts:
            part.unlink(missing_ok=True)
        raise PlanError(
            str(folder), f"cannot be written ({error.strerror or error}); choose another folder"
        ) from error


def read(folder: Path, name: str) -> Kept | None:
    """Return the kept result of a plan's file name; None when there is none or it cannot be read."""
    try:
        return msgspec.json.decode((folder / f"{name}.json").read_bytes(), type=Kept)
    except (OSError, msgspec.DecodeError):
        return None


def stale(kept: Kept | None, plan: Plan, called: str) -> str:
    """Return in one sentence why a kept result does not speak for a plan; empty when it does."""
    if kept is None:
        return f"{called}: has not been solved yet; run it to see what happens."
    if kept.model_version != MODEL_VERSION:
        return (
            f"{called}: the kept result is of model version {kept.model_version}, this is {MODEL_VERSION}; "
            "run it again to see what comes out now."
        )
    if kept.plan_sha256 != plan_sha256(plan):
        return f"{called}: the plan is another than the one that was kept; run it again."
    return ""


def whole(folder: Path, name: str, kept: Kept) -> bool:
    """Tell whether the file with the moments is the one that was written with a kept result."""
    try:
        data = (folder / f"{name}.npz").read_bytes()
    except OSError:
        return False
    return kept.moments_sha256 in ("", hashlib.sha256(data).hexdigest())


def moments(folder: Path, name: str, kept: Kept, model: DoorModel) -> tuple[MoveRecord, ...]:
    """Return the kept moves with their moments, as if they had just been solved; () when they are not there.

    A kept moment holds places to a tenth of a millimetre and no state of the metal: it is to be looked
    at, and what is pushed on from it is solved again.
    """
    from sim import kept_frames

    if not whole(folder, name, kept):
        return ()
    try:
        frames = kept_frames.unpacked(folder / f"{name}.npz", model)
        results = [msgspec.convert(raw, MoveResult) for raw in kept.results]
    except (OSError, ValueError, KeyError, msgspec.DecodeError):
        return ()
    if len(frames) != len(results):
        return ()
    return tuple(MoveRecord(f, result) for f, result in zip(frames, results, strict=True))
