"""The command line's words about lessons: look one through, solve its plans, put its sheets on paper."""

from __future__ import annotations

import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from cyclopts import App

from sim.problems import PlanError
from sim.textfiles import read_text, write_whole
from ui import solving
from ui.folders import check_file
from ui.refusal import Refusal, file_trouble, read_plan, sentence_of
from ui.seats import seat_numbers

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.kept import Solve
    from sim.plan import Plan
    from sim.record import MoveRecord
    from ui.state.lesson import Lesson
    from ui.state.lesson_results import PlanResult
    from ui.state.overlay import Overlay
    from ui.state.sheet import Sheet

Kind = Literal["bridge", "evaluation", "review", "handout", "test", "log", "lesson"]
Paper = Literal["a4", "letter"]

STARTS = "starts"
"""Folder, among the kept results, of the starts that wrecks left."""
SHORT_M = 0.020
"""How far the plans beside a plan are run for a quick answer: past the first parting on every ready door."""

app = App(name="lesson", help="Lessons: look one through, solve its plans, put its sheets on paper.")


@app.command
def ready() -> int:
    """List the ready lessons, each with what it is about."""
    from ui.state.lesson_file import load_lesson, ready_lessons, ready_path

    for name in ready_lessons():
        lesson = load_lesson(ready_path(name))
        sys.stdout.write(f"{name}\n  {lesson.title}: {lesson.words}\n")
    return 0


@app.command
def figures() -> int:
    """List the figures that a lesson's text can name."""
    from ui.state.lesson_results import FIGURES

    sys.stdout.write("In a text, {plan.figure} or {plan.figure_of_move_2}:\n")
    for name, (meaning, _) in FIGURES.items():
        sys.stdout.write(f"  {name}: {meaning}\n")
    return 0


@app.command
def check(*lessons: str) -> int:
    """Look lessons through: names that lead nowhere, results that are stale, contrasts that do not come out.

    Ends with 1 when an expected contrast does not come out; results that are stale or missing are told.

    Parameters
    ----------
    lessons
        Lesson files, or names of ready lessons; all ready ones if left out.
    """
    from ui.state import lesson_check

    failed = False
    for path in _paths(lessons):
        lesson, results = read(path)
        report = lesson_check.looked_through(lesson, results, read_text(path, "lesson"))
        sys.stdout.write(f"{path.stem}: {lesson.title}\n" + "".join(f"  {line}\n" for line in report.lines))
        failed |= report.failed
    return int(failed)


@app.command
def solve(*lessons: str, again: bool = False, quick: bool = False, short: bool = False) -> int:
    """Solve the plans of lessons and keep what came out beside them; say which verdicts have changed.

    Parameters
    ----------
    lessons
        Lesson files, or names of ready lessons; all ready ones if left out.
    again
        Solve those too whose kept results are fresh.
    quick
        Leave out the runs beside each plan; its questions cannot be graded then.
    short
        Run the plans beside each plan for the first 20 mm only: enough for questions on what gives first.
    """
    from sim import kept
    from ui.state.lesson_check import changes
    from ui.state.lesson_results import plan_path

    done: set[Path] = set()
    with tempfile.TemporaryDirectory() as scratch:
        for path in _paths(lessons):
            _, results = read(path)
            for result in results.values():
                place = result.folder / result.file
                lacking = not quick and result.kept is not None and not result.kept.neighbours
                if place in done or (result.fresh and not again and not lacking):
                    continue
                done.add(place)
                sys.stderr.write(f"{result.file}\n")
                try:
                    fresh = kept.keep(
                        result.plan,
                        result.folder,
                        result.file,
                        solve=_solver(result, plan_path(path, result.file).parent, Path(scratch)),
                        with_neighbours=not quick,
                        reach_m=SHORT_M if short else None,
                    )
                except PlanError as error:
                    raise Refusal(f"{path}: {sentence_of(error)}") from error
                sys.stdout.write("".join(f"{line}\n" for line in changes(result, fresh)))
                sys.stdout.flush()
    if not done:
        sys.stdout.write("Every kept result is fresh.\n")
    return 0


@app.command
def sheet(
    lesson: str,
    *,
    out: Path,
    kind: Kind = "bridge",
    paper: Paper = "a4",
    seats: str = "",
    colour: bool = False,
    rules: Path | None = None,
) -> int:
    """Write one of a lesson's sheets as PDF.

    Parameters
    ----------
    lesson
        A lesson file, or the name of a ready lesson; for a bridge sheet also a plan file.
    out
        The PDF file.
    kind
        Which sheet.
    paper
        Which paper.
    seats
        Seat numbers of an evaluation or a test, such as 1-12 or 3,5,8: a page each.
    colour
        Pictures in colour; without it they are grey, as a copier prints them.
    rules
        A file of local rules; those of this user's folder if left out.
    """
    from ui.machine import settings_folder
    from ui.state import drill_log
    from ui.state.sheets import sheet_of

    check_file("--out", out, (".pdf",), "a PDF")
    overlay, drills = _overlay(rules), drill_log.load(settings_folder())
    with tempfile.TemporaryDirectory() as scratch:
        loaded, results = _lesson_or_plan(lesson, kind, Path(scratch))
        made = sheet_of(kind, loaded, results, overlay=overlay, seats=seat_numbers(seats), drills=drills)
        pages = put_on_paper(made, results, out, paper, colour=colour)
    sys.stdout.write(f"{pages} {'page' if pages == 1 else 'pages'}\n{out}\n")
    return 0


@app.command
def record(lesson: str, *, out: Path, seats: str = "1-12") -> int:
    """Write an empty record of a lesson's evaluation as CSV, a line a seat and step, no names.

    Parameters
    ----------
    lesson
        A lesson file, or the name of a ready lesson.
    out
        The CSV file.
    seats
        Seat numbers, such as 1-12 or 3,5,8.
    """
    from ui.state.sheets import record_csv

    check_file("--out", out, (".csv",), "a table's name")
    loaded, _ = read(next(_paths((lesson,))))
    try:
        write_whole(out, record_csv(loaded, seat_numbers(seats)))
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error
    sys.stdout.write(f"{out}\n")
    return 0


# inside -------------------------------------------------------------------------------------------------


def _solver(result: PlanResult, place: Path, scratch: Path) -> Solve:
    """Return what solves a plan and those beside it: a wreck once for all plans of a lesson that have it.

    The start it leaves is kept with the results; that of another lattice for this call alone.
    """
    from sim.course import never
    from sim.shared_wrecks import on_start

    def solved(plan: Plan) -> tuple[DoorModel, tuple[MoveRecord, ...]]:
        starts = result.folder / STARTS if plan.car == result.plan.car else scratch
        return solving.solve(on_start(plan, starts, never), folder=place)

    return solved


def _paths(lessons: tuple[str, ...]) -> Iterator[Path]:
    """Return the files meant: a path, or the name of a ready lesson."""
    from ui.state.lesson_file import ready_lessons, ready_path

    names = ready_lessons()
    for word in lessons or names:
        yield ready_path(word) if word in names else Path(word)


def read(path: Path) -> tuple[Lesson, dict[str, PlanResult]]:
    """Return a lesson and its plans with what was kept of them; Refusal in a sentence where it cannot be."""
    from ui.state.lesson_file import load_lesson
    from ui.state.lesson_results import results_of

    try:
        lesson = load_lesson(path)
        return lesson, results_of(lesson, path)
    except PlanError as error:
        about = "" if error.field == str(path) else f"{path}: "
        raise Refusal(f"{about}{sentence_of(error)}") from error


def _lesson_or_plan(word: str, kind: str, scratch: Path) -> tuple[Lesson, dict[str, PlanResult]]:
    """Return a lesson; of a plan file, a lesson of that one plan, solved now."""
    path = next(_paths((word,)))
    if kind != "bridge" or not _is_plan(path):
        return read(path)
    from sim import kept
    from ui.state.lesson import Lesson
    from ui.state.lesson_results import PlanResult

    plan = read_plan(path)
    try:
        found = kept.keep(plan, scratch, "plan", solve=solving.solve, with_neighbours=False)
    except PlanError as error:
        raise Refusal(f"{path}: {sentence_of(error)}") from error
    return Lesson(title=plan.title or path.stem), {
        "plan": PlanResult("plan", "plan", plan, found, "", scratch)
    }


def _is_plan(path: Path) -> bool:
    import tomllib

    try:
        return "car" in tomllib.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return False


def _overlay(path: Path | None) -> Overlay | None:
    from ui.machine import settings_folder
    from ui.state import overlay

    try:
        if path is None:
            return overlay.load(settings_folder())
        return overlay.loads(read_text(path, "rules"))
    except PlanError as error:
        own = path is None or error.field == str(path)
        raise Refusal(sentence_of(error) if own else f"--rules {path}: {sentence_of(error)}") from error


def put_on_paper(made: Sheet, results: dict[str, PlanResult], out: Path, paper: str, *, colour: bool) -> int:
    """Write a sheet as PDF with its pictures; return how many pages it came to."""
    from ui.scene import headless

    headless.prepare()
    ready_type()
    from ui.lesson_pictures import pictures_of
    from ui.printing import write_pdf

    try:
        return write_pdf(made, out, pictures_of(made, results, colour=colour), paper)
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error


def ready_type() -> None:
    """Start Qt's text machinery where no window has."""
    from ui.scene.picture import _ensure_application

    _ensure_application()
