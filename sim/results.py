"""Results on disk: result.json and series.csv, units in the names, nothing half-written."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any

import msgspec

from sim.plan import Plan
from sim.planfile import plan_sha256
from sim.problems import PlanError
from sim.record import Event, MoveRecord, MoveResult, Rung

MODEL_VERSION = "4"
LIMITS_LINE = "Teaching model - not a real car - local procedure first"

_SERIES = (
    "move_index",
    "increment",
    "opening_m",
    "force_n",
    "clearance_m",
    "latch_demand_ratio",
    "parted_length_m",
    "torn_length_m",
    "skin_mid_outboard_m",
    "inner_mid_outboard_m",
)


def _event(event: Event) -> dict[str, Any]:
    return {"kind": event.kind, "part": event.part, "opening_m": event.opening_m, "force_n": event.force_n}


def _rung(rung: Rung) -> dict[str, Any]:
    return {"part": rung.part, "event": rung.event, "demand_ratio": rung.demand_ratio}


def move_to_raw(result: MoveResult) -> dict[str, Any]:
    """Return one move's result as plain values."""
    solver = result.solver
    return {
        "seats": list(result.seats),
        "events": [_event(event) for event in result.events],
        "metal": list(result.metal),
        "plan_effect": result.plan_effect,
        "sentence": result.sentence,
        "ladder": [_rung(rung) for rung in result.ladder],
        "ledger_j": dict(result.ledger_j),
        "ledger_closure_ratio": result.ledger_closure_ratio,
        "viscous_ratio": result.viscous_ratio,
        "parted_length_m": result.parted_length_m,
        "torn_length_m": result.torn_length_m,
        "sharp_edge_count": result.sharp_edge_count,
        "latch_demand_ratio": result.latch_demand_ratio,
        "skin_mid_outboard_m": result.skin_mid_outboard_m,
        "inner_mid_outboard_m": result.inner_mid_outboard_m,
        "inner_residual_outboard_m": result.inner_residual_outboard_m,
        "clearance_m": dict(result.clearance_m),
        "start_sha256": result.start_sha256,
        "solver": {
            "name": solver.name,
            "kernels": solver.kernels,
            "node_count": solver.node_count,
            "increment_count": solver.increment_count,
            "iteration_count": solver.iteration_count,
            "failed_count": solver.failed_count,
            "factor_s": solver.factor_s,
            "assemble_s": solver.assemble_s,
            "wall_s": solver.wall_s,
        },
        "notes": list(result.notes),
        **_side(result),
    }


def _side(result: MoveResult) -> dict[str, Any]:
    """Return what only some moves and cars have, as plain values."""
    found: dict[str, Any] = {"found": dict(result.found)} if result.found else {}
    if result.cut is not None:
        found["cut"] = asdict(result.cut)
    if result.latch is not None:
        found["latch"] = asdict(result.latch)
    if result.upper_panel_m:
        found["upper_panel_m"] = dict(result.upper_panel_m)
    if not result.exit_width_m:
        return found
    return {
        **found,
        "part_clearance_m": {part: dict(value) for part, value in result.part_clearance_m.items()},
        "exit_width_m": dict(result.exit_width_m),
        "spots_gone": result.spots_gone,
    }


def result_json(plan: Plan, records: Sequence[MoveRecord]) -> str:
    """Return result.json's text."""
    raw = {
        "model_version": MODEL_VERSION,
        "limits": LIMITS_LINE,
        "plan_sha256": plan_sha256(plan),
        "title": plan.title,
        "seed": plan.seed,
        "moves": [move_to_raw(record.result) for record in records if record.result is not None],
    }
    return msgspec.json.format(msgspec.json.encode(raw), indent=2).decode() + "\n"


def series_csv(records: Sequence[MoveRecord]) -> str:
    """Return series.csv's text: a row per frame, units in the headings."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    lines = list(records[0].frames[0].ledger_j) if records and records[0].frames else []
    parts = list(records[0].frames[0].part_clearance_m) if records and records[0].frames else []
    side = [*(f"clearance_{part.replace(' ', '_')}_m" for part in parts), "exit_width_m", "spots_gone"]
    books_of = [f"{name.replace(' ', '_')}_j" for name in lines]
    writer.writerow([*_SERIES, *books_of, *(side if parts else ()), "events"])
    for record in records:
        for frame in record.frames:
            row = [
                frame.move_index,
                frame.increment,
                frame.opening_m,
                frame.force_n,
                frame.clearance.distance_m,
                frame.latch_demand_ratio,
                frame.parted_length_m,
                frame.torn_length_m,
                frame.skin_mid_outboard_m,
                frame.inner_mid_outboard_m,
            ]
            books: list[object] = [frame.ledger_j[name] for name in lines]
            if parts:
                books += [frame.part_clearance_m[part] for part in parts]
                books += [frame.exit_width_m, frame.spots_gone]
            writer.writerow([*row, *books, "; ".join(f"{e.part}: {e.kind}" for e in frame.events)])
    return out.getvalue()


def write_results(folder: Path | str, plan: Plan, records: Sequence[MoveRecord]) -> tuple[Path, Path]:
    """Write result.json and series.csv; return their paths.

    Raises
    ------
    PlanError
        When the folder cannot be written or the disk is full; files of an earlier run stay as they were.
    """
    folder = Path(folder)
    texts = {"result.json": result_json(plan, records), "series.csv": series_csv(records)}
    parts = []
    try:
        folder.mkdir(parents=True, exist_ok=True)
        for name, text in texts.items():
            part = folder / (name + ".part")
            parts.append(part)
            part.write_text(text, encoding="utf-8")
        for name in texts:
            (folder / (name + ".part")).replace(folder / name)
    except OSError as error:
        for part in parts:
            part.unlink(missing_ok=True)
        raise PlanError(
            "--out",
            f"{folder} cannot be written ({error.strerror or error}); "
            "choose another folder or free some space",
        ) from error
    return folder / "result.json", folder / "series.csv"
