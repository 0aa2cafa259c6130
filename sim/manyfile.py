"""Answers of many runs and of the search for flips as text: JSON and CSV, units in the names."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from typing import Any

import msgspec

from sim import flip, many
from sim.flip import FlipAnswer
from sim.likely import CONFIDENCE, Likelihood
from sim.many import Answer, Tried
from sim.plan import Plan
from sim.planfile import plan_sha256
from sim.results import LIMITS_LINE, MODEL_VERSION
from sim.vary import Input, inputs

_COLUMNS = tuple(name for name in Tried.__struct_fields__ if name not in ("index", "values", "metal"))


def _input(item: Input) -> dict[str, Any]:
    return {
        "path": item.path,
        "words": item.words,
        "unit": item.unit,
        "planned": item.base,
        "low": item.low,
        "high": item.high,
        "spread": item.quantile.__name__,
        "source": item.source,
    }


def _likelihood(item: Likelihood) -> dict[str, Any]:
    return {
        "what": item.what,
        "word": item.word,
        "count": item.count,
        "unsure_count": item.unsure,
        "run_count": item.total,
        "low_ratio": item.low,
        "high_ratio": item.high,
    }


def _head(plan: Plan, sentence: str, *, preview: bool) -> dict[str, Any]:
    return {
        "model_version": MODEL_VERSION,
        "limits": LIMITS_LINE,
        "plan_sha256": plan_sha256(plan),
        "title": plan.title,
        "seed": plan.seed,
        "preview": preview,
        "sentence": sentence,
    }


def _dumps(raw: dict[str, Any]) -> str:
    return msgspec.json.format(msgspec.json.encode(raw), indent=2).decode() + "\n"


def many_json(answer: Answer) -> str:
    """Return many.json's text: the answer, the table it rests on, and every run."""
    raw = _head(answer.plan, many.sentence(answer), preview=answer.preview)
    raw |= {
        "ended_where_a_part_gave": answer.short,
        "judged_move_index": answer.move_index,
        "confidence_ratio": CONFIDENCE,
        "gives_first": [_likelihood(item) for item in answer.first],
        "metal": [_likelihood(item) for item in answer.metal],
        "plan_effect": [_likelihood(item) for item in answer.effect],
        "varied": [_input(item) for item in inputs(answer.plan)],
        "runs": [msgspec.to_builtins(run) for run in answer.runs],
    }
    return _dumps(raw)


def flip_json(answer: FlipAnswer) -> str:
    """Return flip.json's text: what flips the outcome, what does not, and every run of the search."""
    raw = _head(answer.plan, flip.sentence(answer), preview=answer.preview)
    raw |= {
        "verdict": answer.verdict,
        "flips": [
            {
                **_input(item.input),
                "value": item.value,
                "change_ratio": item.change_ratio,
                "verdict": item.verdict,
                "words": flip.flip_words(item),
            }
            for item in answer.flips
        ],
        "steady": [_input(item) for item in answer.steady],
        "untold": [_input(item) for item in answer.untold],
        "runs": [msgspec.to_builtins(run) for run in answer.runs],
    }
    return _dumps(raw)


def runs_csv(plan: Plan, runs: Sequence[Tried]) -> str:
    """Return a row per run: what was varied (by path), and what came out."""
    paths = [item.path for item in inputs(plan)]
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["run_index", *paths, *_COLUMNS, "metal"])
    for run in runs:
        drawn = [run.values.get(path, "") for path in paths]
        told = [getattr(run, name) for name in _COLUMNS]
        row = ["" if value is None else value for value in told]
        writer.writerow([run.index, *drawn, *row, "; ".join(run.metal)])
    return out.getvalue()
