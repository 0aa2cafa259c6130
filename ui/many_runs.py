"""The commands that run a plan many times: how likely its outcome is, and what single unknown flips it."""

from __future__ import annotations

import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from sim.problems import PlanError
from ui.folders import check_folder, fresh_folder
from ui.progress_line import ProgressLine
from ui.refusal import Refusal, read_plan, ready_model, sentence_of, time_words

if TYPE_CHECKING:
    from sim.many import Progress
    from sim.plan import Plan

MANY_FILES = ("many.json", "many.csv")
FLIP_FILES = ("flip.json", "flip.csv")
"""What the two commands write; a folder that holds nothing else may be written again."""

MOST_RUNS, MOST_WORKERS = 4096, 256


def many(
    plan: Path,
    *,
    out: Path,
    runs: int | None = None,
    preview: bool = False,
    first: bool = False,
    workers: int | None = None,
    counts: bool = False,
) -> int:
    """Run a plan many times with what is not known well varied; write many.json and many.csv.

    Parameters
    ----------
    plan
        The plan, as a TOML file; its seed draws the runs, so the same plan gives the same answer.
    out
        The folder for the results. It is made, or written again when it holds the results of an earlier call.
    runs
        How many runs; 64 of a door and 16 of a whole side if left out. With fewer than 36 no word but "not
        settled" can be said, and the counts tell.
    preview
        Solve on a coarse lattice: quicker, and no answer to rely on.
    first
        End each run where a part gives: what gives first is known then, and nothing of what would follow.
    workers
        How many processes; as many as the machine has cores if left out.
    counts
        Also say the counts behind the words.
    """
    if runs is not None and not 1 <= runs <= MOST_RUNS:
        raise Refusal(f"--runs {runs}: cannot be; use 1 to {MOST_RUNS}.")
    asked = _asked(plan)
    check_folder(out, MANY_FILES)
    from sim import many as model
    from sim import manyfile

    runs = model.runs_of(asked) if runs is None else runs

    line = ProgressLine()
    with fresh_folder(out) as folder:
        count = worker_count(workers)
        under_way = model.Many(asked, runs, worker_count=count, coarse=preview, short=first)
        try:
            for progress in under_way:
                line.say(progress_words(progress), progress.done / progress.total)
        finally:
            under_way.workers.end()
            line.end()
        answer = under_way.answer
        (folder / "many.json").write_text(manyfile.many_json(answer), encoding="utf-8")
        (folder / "many.csv").write_text(manyfile.runs_csv(asked, answer.runs), encoding="utf-8")
    if counts:
        sys.stdout.write(f"{model.counts(answer)}\n")
    sys.stdout.write(f"{model.sentence(answer)}\n{out}\n")
    return 0


def flip(
    plan: Path,
    *,
    out: Path,
    only: tuple[str, ...] = (),
    preview: bool = False,
    workers: int | None = None,
) -> int:
    """Find which single unknown flips the outcome of a plan, and at what value; write flip.json and flip.csv.

    Parameters
    ----------
    plan
        The plan, as a TOML file.
    out
        The folder for the results. It is made, or written again when it holds the results of an earlier call.
    only
        Look at this number only, by its path in the plan such as "car.latch_strength_ratio"; may be repeated.
    preview
        Solve on a coarse lattice: quicker, and no answer to rely on.
    workers
        How many processes; as many as the machine has cores if left out.
    """
    asked = _asked(plan)
    check_folder(out, FLIP_FILES)
    from sim import flip as model
    from sim import manyfile
    from sim.vary import inputs

    known = [item.path for item in inputs(asked)]
    for path in only:
        if path not in known:
            raise Refusal(f"--only {path}: is not varied on this plan; use one of {', '.join(known)}.")
    line = ProgressLine()
    with fresh_folder(out) as folder:
        search = model.FlipSearch(asked, only=only, worker_count=worker_count(workers), coarse=preview)
        try:
            for step in search:
                words = f"{step.round_words}: {step.done} of {step.total} runs"
                line.say(words, step.done / max(1, step.total))
        finally:
            search.workers.end()
            line.end()
        answer = search.answer
        (folder / "flip.json").write_text(manyfile.flip_json(answer), encoding="utf-8")
        (folder / "flip.csv").write_text(manyfile.runs_csv(asked, answer.runs), encoding="utf-8")
    for item in answer.flips[1:]:
        sys.stdout.write(f"also: {model.flip_words(item)}\n")
    sys.stdout.write(f"{model.sentence(answer)}\n{out}\n")
    return 0


def _asked(path: Path) -> Plan:
    """Return the plan of a file, once it is sure that it can be run at all."""
    plan = read_plan(path)
    try:
        from sim.many import judged
        from sim.vary import draws

        judged(plan)
        draws(plan, 1)
        ready_model(plan)
    except PlanError as error:
        raise Refusal(f"{path}: {sentence_of(error)}") from error
    return plan


def worker_count(asked: int | None) -> int:
    """Return how many processes: as asked, or as many as there are cores; Refusal where it cannot be."""
    if asked is None:
        return max(1, os.cpu_count() or 1)
    if not 1 <= asked <= MOST_WORKERS:
        raise Refusal(f"--workers {asked}: cannot be; use 1 to {MOST_WORKERS}.")
    return asked


def progress_words(progress: Progress) -> str:
    """Return how far many runs are, in words."""
    done, total = progress.done, progress.total
    words = f"runs: {done} of {total}"
    if progress.seconds_left is not None and done < total:
        words += f", about {time_words(progress.seconds_left)} left"
    if progress.uncertain:
        words += f", {progress.uncertain} failed or not settled"
    return words
