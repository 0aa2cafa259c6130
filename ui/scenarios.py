"""The command that runs a scenario's plans many times and tells what came out, ask by ask."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from sim.problems import PlanError
from sim.textfiles import write_whole
from ui.folders import check_folder
from ui.many_runs import progress_words, worker_count
from ui.progress_line import ProgressLine
from ui.refusal import Refusal, file_trouble, sentence_of

if TYPE_CHECKING:
    from sim.scenario import Asked

ANSWER, TABLE, RUNS = "scenario.json", "scenario.md", "runs"
"""What the command writes: the answer as plain values, as a table, and the folder of kept runs."""
OURS = (ANSWER, TABLE, RUNS)
STOPPED = 130
"""Exit code of a call stopped by the user."""


def scenario(
    file: Path,
    *,
    out: Path,
    runs: int | None = None,
    workers: int | None = None,
    most_seconds: float | None = None,
) -> int:
    """Run the plans of a scenario many times, with what is not known well varied, and tell what was asked.

    What is told is what came out; nothing is passed or failed. Runs are kept in the folder as they come, so a
    call that was stopped goes on where it was, and other asks can be read from the same runs.

    Parameters
    ----------
    file
        The scenario, as a TOML file.
    out
        The folder for the runs and the answer.
    runs
        How many runs of each plan; as the scenario says if left out.
    workers
        How many processes; as many as the machine has cores if left out.
    most_seconds
        A run that takes more CPU time than this is given up and counted as unsure; no limit if left out.
    """
    asked = _read(file)
    count = asked.scenario.runs if runs is None else runs
    from sim.scenario import MOST_RUNS

    if not 1 <= count <= MOST_RUNS:
        raise Refusal(f"--runs {count}: cannot be; use 1 to {MOST_RUNS}.")
    if most_seconds is not None and not most_seconds > 0.0:
        raise Refusal(f"--most-seconds {most_seconds}: cannot be; use a time above 0.")
    check_folder(out, OURS)
    try:
        return _run(asked, count, out, worker_count(workers), most_seconds)
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error
    except PlanError as error:
        raise Refusal(f"{file}: {sentence_of(error)}") from error


def _read(file: Path) -> Asked:
    from sim.scenario import load_scenario

    try:
        return load_scenario(file)
    except PlanError as error:
        own = error.field == str(file)
        raise Refusal(sentence_of(error) if own else f"{file}: {sentence_of(error)}") from error


def _run(asked: Asked, count: int, out: Path, workers: int, most_seconds: float | None) -> int:
    import math

    from sim import scenario_told as told
    from sim.answers import answer
    from sim.scenario_runs import ScenarioRuns, Store

    limit = math.inf if most_seconds is None else most_seconds
    store, line = Store(out / RUNS), ProgressLine()
    if asked.scenario.wrecks != "drawn":
        line.say("wrecks: solving what is not kept yet", 0.0)
        asked = asked.on_starts(store.starts)
    under_way = ScenarioRuns(asked, count, store=store, worker_count=workers, most_s=limit)
    try:
        for progress in under_way:
            line.say(progress_words(progress), progress.done / progress.total)
    except KeyboardInterrupt:
        line.end()
        sys.stderr.write(f"Stopped; the runs made so far are kept in {out / RUNS}: call it again to go on.\n")
        return STOPPED
    finally:
        under_way.workers.end()
        line.end()
    found = dict(under_way.runs)
    came = told.came_to(asked, found, answer(asked.scenario.asks, found))
    for name, text in ((ANSWER, told.to_json(came)), (TABLE, told.markdown(came))):
        write_whole(out / name, text)
    sys.stdout.write("\n".join((came.title, *told.lines(came), str(out))) + "\n")
    return 0
