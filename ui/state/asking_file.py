"""Predictions written down beside the plan: a small plain file that reads well in an editor.

One table a prediction; times are local with their offset, the prediction's before the run's.
"""

from __future__ import annotations

import tomllib
from datetime import datetime
from pathlib import Path
from typing import Any

import tomlkit

from sim.planfile import plan_sha256
from sim.results import LIMITS_LINE, MODEL_VERSION
from sim.textfiles import write_whole
from ui.state.asking import Prediction
from ui.state.questions import FIRST, OWN, WAY, WHY, Question

ENDING = ".predictions.toml"
HEAD = (
    "Predictions made with Hemline, and what the model's runs said. No names are kept, hands are numbers.",
    LIMITS_LINE,
)


def path_beside(place: Path | None, folder: Path, own: Path | None = None) -> Path:
    """Return where predictions are kept: beside their plan or lesson.

    Those on a plan that was never saved, or on one that came with the program (in its folder `own`), are kept
    in the settings' folder.
    """
    if place is None:
        return folder / f"unsaved{ENDING}"
    name = place.stem + ENDING
    return folder / name if own is not None and own in place.parents else place.with_name(name)


def as_table(prediction: Prediction, questions: tuple[Question, ...]) -> dict[str, Any]:
    """Return a prediction as plain values, in the order in which it is read."""
    by_key = {question.key: question for question in questions}
    found: dict[str, Any] = {
        "title": prediction.plan.title,
        "plan_sha256": plan_sha256(prediction.plan),
        "model_version": MODEL_VERSION,
        "move": prediction.move + 1,
    }
    for name, at in (
        ("locked_at", prediction.locked_at),
        ("ran_at", prediction.ran_at),
        ("shown_at", prediction.shown_at),
    ):
        if at is not None:
            found[name] = at
    for key in (FIRST, WAY, WHY):
        question = by_key.get(key)
        if question is None:
            continue
        choice = prediction.chosen.get(key, "")
        own = key == WHY and choice == OWN
        found[key] = prediction.own_words.strip() if own else question.words_of(choice)
        hands = {c.words: n for c in question.choices if (n := prediction.hands.get((key, c.key), 0))}
        if hands:
            found[f"{key}_hands"] = hands
    if prediction.verdict is not None:
        found |= _run_table(prediction, by_key)
    return found


def _run_table(prediction: Prediction, by_key: dict[str, Question]) -> dict[str, Any]:
    verdict = prediction.verdict
    assert verdict is not None
    if not verdict.settled:
        return {"run": "not settled: nothing is compared"}
    first, way = by_key[FIRST], by_key[WAY]
    told = {
        "run": "settled",
        "run_first": " and ".join(first.words_of(key) or key for key in verdict.first),
        "run_way": way.words_of(verdict.way),
        "run_skin_moved_m": round(verdict.moved_m, 6),
        "first_as_foretold": bool(verdict.holds(FIRST, prediction.chosen.get(FIRST, ""))),
        "way_as_foretold": bool(verdict.holds(WAY, prediction.chosen.get(WAY, ""))),
    }
    if verdict.first_m is not None:
        told["run_first_at_m"] = round(verdict.first_m, 6)
    return told


def written(text: str, prediction: Prediction, questions: tuple[Question, ...]) -> str:
    """Return a file's text with a prediction added, or in the place of the same one locked earlier."""
    document = tomlkit.parse(text) if text else tomlkit.document()
    if not text:
        for words in HEAD:
            document.add(tomlkit.comment(words))
    table = tomlkit.item(as_table(prediction, questions))
    rows = document.get("prediction")
    if rows is None:
        rows = tomlkit.aot()
        document["prediction"] = rows
    place = next((i for i, row in enumerate(rows) if row.get("locked_at") == prediction.locked_at), None)
    if place is None:
        rows.append(table)
    else:
        rows[place] = table
    return tomlkit.dumps(document)


def keep(path: Path, prediction: Prediction, questions: tuple[Question, ...]) -> None:
    """Write a prediction down, in one step; OSError where it cannot be.

    A file that holds something else is put aside under another name, never written over.
    """
    text = ""
    if path.exists():
        text = path.read_text(encoding="utf-8", errors="replace")
        if not _is_ours(text):
            path.replace(_free_name(path))
            text = ""
    path.parent.mkdir(parents=True, exist_ok=True)
    write_whole(path, written(text, prediction, questions))


def load(path: Path) -> tuple[dict[str, Any], ...]:
    """Return the predictions kept in a file, oldest first; none where there is no such file."""
    try:
        raw = tomllib.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return ()
    rows = raw.get("prediction", [])
    return tuple(row for row in rows if isinstance(row, dict)) if isinstance(rows, list) else ()


def _is_ours(text: str) -> bool:
    try:
        rows = tomllib.loads(text).get("prediction", [])
    except ValueError:
        return False
    return isinstance(rows, list) and all(isinstance(row, dict) for row in rows)


def _free_name(path: Path) -> Path:
    for number in range(1, 1000):
        other = path.with_name(f"{path.name}.old{number}")
        if not other.exists():
            return other
    return path.with_name(f"{path.name}.{datetime.now().timestamp():.0f}")
