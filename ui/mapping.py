"""The command that makes an outcome map of a plan's push, and what changes on another plan's."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from sim.problems import PlanError
from ui.folders import check_folder, fresh_folder
from ui.many_runs import worker_count
from ui.progress_line import ProgressLine
from ui.refusal import Refusal, read_plan, ready_model, sentence_of, time_words

if TYPE_CHECKING:
    from sim.map_run import MapProgress
    from sim.outcome_map import Ask, MapDifference, OutcomeMap
    from sim.plan import Plan

FILES = ("map.json", "map.csv", "map.png", "map.txt", "difference.csv", "difference.png")
"""What the command writes; a folder that holds nothing else may be written again."""
KEPT = "maps"
"""Folder of the settings in which runs of maps are kept as they come."""


def outcome_map(
    plan: Path,
    *,
    out: Path,
    other: Path | None = None,
    keep: Path | None = None,
    again: bool = False,
    workers: int | None = None,
) -> int:
    """Map what a plan's push would do at each place along the door's edges; write map.json, .csv, .png, .txt.

    Runs are kept as they come: stopped and begun again, it goes on where it was, and a map that has been
    made before is there at once.

    Parameters
    ----------
    plan
        The plan, as a TOML file; its last spread is set at every place.
    out
        The folder for the map. It is made, or written again when it holds an earlier map.
    other
        A second plan, on another door or with another tool: also write the places that change.
    keep
        A file in which the map is kept in short, to come with a lesson (`assets/maps`).
    again
        Make every run again.
    workers
        How many processes; as many as the machine has cores if left out.
    """
    from sim import map_file
    from sim.outcome_map import same_cells

    asked = [(path, *_asked(path)) for path in (plan, other) if path is not None]
    check_folder(out, FILES)
    try:
        same_cells(asked[0][2], asked[-1][2])
    except PlanError as error:
        raise Refusal(f"--other {other}: {sentence_of(error)}") from error
    count = worker_count(workers)
    with fresh_folder(out) as folder:
        maps = [_made(ask, again=again, workers=count) for _, _, ask in asked]
        said = _write(folder, [read for _, read, _ in asked], maps)
        try:
            if keep is not None:
                map_file.write(keep, map_file.kept_json(maps[0]))
        except PlanError as error:
            raise Refusal(sentence_of(error)) from error
    sys.stdout.write(f"{said}\n{out}\n")
    return 0


def _asked(path: Path) -> tuple[Plan, Ask]:
    """Return the plan of a file and the map it asks for, once it is sure that it can be run at all."""
    from sim import outcome_map as maps

    plan = read_plan(path)
    try:
        ask = maps.asked(plan)
        ready_model(plan)
    except PlanError as error:
        raise Refusal(f"{path}: {sentence_of(error)}") from error
    return plan, ask


def _made(ask: Ask, *, again: bool, workers: int) -> OutcomeMap:
    """Return a map, made as far as it is not known."""
    from sim.map_file import MapStore
    from sim.map_run import MapRun
    from ui.machine import settings_folder
    from ui.state.maps import ready_map

    found = None if again else ready_map(ask)
    if found is not None:
        return found
    store = MapStore(settings_folder() / KEPT)
    if again:
        store.path(ask).unlink(missing_ok=True)
    line = ProgressLine()
    run = MapRun(ask, store, worker_count=workers)
    try:
        for progress in run:
            line.say(progress_words(progress), progress.done / max(1, progress.total))
    finally:
        run.workers.end()
        line.end()
    return run.answer


def progress_words(progress: MapProgress) -> str:
    """Return how far a map is, in a few words."""
    words = f"map: {progress.done} of about {progress.total} runs"
    if progress.seconds_left is not None and progress.done < progress.total:
        words += f", about {time_words(progress.seconds_left)} left"
    return words


def _write(folder: Path, plans: list[Plan], maps: list[OutcomeMap]) -> str:
    """Write the files; return what is said."""
    from sim import map_file, map_words
    from sim.outcome_map import difference

    first = maps[0]
    apart = difference(first, maps[1]) if len(maps) > 1 else None
    said = map_words.sentence(first)
    about = {"title": plans[0].title, "sentence": said, "caption": map_words.caption(first)}
    (folder / "map.json").write_text(map_file.map_json(first, about), encoding="utf-8")
    (folder / "map.csv").write_text(map_file.map_csv(first), encoding="utf-8")
    lines = (*about.values(), *map_words.described(first))
    if apart is not None:
        (folder / "difference.csv").write_text(map_file.difference_csv(apart), encoding="utf-8")
        told = map_words.difference_sentence(apart)
        said = f"{said} {told}"
        lines += (told, *(map_words.change_words(change) for change in apart.changes))
    (folder / "map.txt").write_text("\n".join((*lines, map_file.LIMITS_LINE)) + "\n", encoding="utf-8")
    _draw(folder, plans, first, apart)
    return said


def _draw(folder: Path, plans: list[Plan], first: OutcomeMap, apart: MapDifference | None) -> None:
    from ui.scene import headless

    headless.prepare()
    from ui.map_page import map_page
    from ui.scene.picture import save_png

    title = plans[0].title or "Outcome map"
    save_png(map_page(first, f"Outcome map: {title}"), folder / "map.png")
    if apart is not None:
        both = f"What changes: {title}; {plans[1].title}"
        save_png(map_page(first, both, apart=apart), folder / "difference.png")
