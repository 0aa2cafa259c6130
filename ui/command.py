"""The command line: open the window, or solve a plan with no screen and write what came of it.

Everything heavy is imported only where it is needed, so that words about a plan come at once.
"""

from __future__ import annotations

import contextlib
import importlib.metadata
import os
import sys
import tomllib
import types
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from cyclopts import App, CycloptsError, Parameter

from sim.problems import PlanError
from ui import cars, exporting, figures, lessons, many_runs, mapping, rooms, scenarios, starting
from ui.folders import check_file, check_folder, fresh_folder
from ui.refusal import Refusal, file_trouble, one_sentence, read_plan, sentence_of
from ui.solving import solve

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.plan import Plan
    from sim.record import MoveRecord

OK, UNEXPECTED, REFUSED, STOPPED = 0, 1, 2, 130
"""Exit codes: done; the program's fault; a plan, word or folder that cannot be used; stopped by the user."""

OURS = ("result.json", "series.csv", "picture.png", "film.png")
"""What a run writes; a folder that holds nothing else may be written again."""

app = App(
    name="hemline",
    help=(
        "Hemline shows what a spreader does to a wrecked car's door, depending on where its tips are put. "
        "Teaching model - not a real car - local procedure first."
    ),
    version=lambda: f"hemline {version()}",
    # a switch has no counterpart that turns it off: leaving it out does
    default_parameter=Parameter(negative=()),
    version_flags=["--version"],
    help_flags=["--help", "-h"],
)


def version() -> str:
    """Return the version of the installed program."""
    try:
        return importlib.metadata.version("hemline")
    except importlib.metadata.PackageNotFoundError:
        return _source_version()


def _source_version() -> str:
    """Return the version that stands in the source, for a program that runs without being installed."""
    try:
        text = (Path(__file__).resolve().parents[1] / "pyproject.toml").read_text(encoding="utf-8")
        return f"{tomllib.loads(text)['project']['version']}, run from its source"
    except (OSError, KeyError, tomllib.TOMLDecodeError):
        return "of unknown version"


@app.default
def window(plan: Path | None = None) -> int:
    """Open the window.

    Parameters
    ----------
    plan
        A plan or a lesson to open, as a TOML file; without one the ready demo is shown.
    """
    arguments = []
    if plan is not None:
        from ui import files

        if files.is_lesson(plan):
            lessons.read(plan)
        else:
            read_plan(plan)
        arguments.append(str(plan))
    from ui import app as program

    return int(program.main(arguments) or OK)


@app.command
def run(plan: Path, *, out: Path) -> int:
    """Solve a plan with no window and write result.json, series.csv, picture.png and film.png.

    Parameters
    ----------
    plan
        The plan, as a TOML file.
    out
        The folder for the results. It is made, or written again when it holds the results of an earlier run.
    """
    asked = read_plan(plan)
    if not asked.moves:
        raise Refusal(f"{plan}: moves is empty, so there is nothing to solve; add a [[moves]] table.")
    check_folder(out, OURS)
    with fresh_folder(out) as folder:
        try:
            model, records = solve(asked, plan.parent)
        except PlanError as error:
            raise Refusal(f"{plan}: {sentence_of(error)}") from error
        write(folder, asked, records)
        draw(folder, asked, model, records)
    sys.stdout.write(f"{told(records)}\n{out}\n")
    return OK


@app.command
def check(*, full: bool = False, json: Path | None = None) -> int:
    """Check the computation against figures from outside the program: a table of claims, and who says so.

    Ends with 1 when a figure is not what it should be; a miss that is known is told and does not count.

    Parameters
    ----------
    full
        All checks, some minutes; without it, those that take seconds.
    json
        A file for the rows as plain values, a name ending in .json.
    """
    from ui import checking

    if json is not None:
        check_file("--json", json, (".json",), "a JSON file's name")
    try:
        return checking.check(full=full, file=json)
    except OSError as error:
        raise Refusal(f"--json {json}: {file_trouble(error)}") from error


@app.command
def export(plan: Path, *, out: Path, move: int | None = None, opening: float | None = None) -> int:
    """Solve a plan and write its start and one moment for other programs: VTU, GLB, STL, CSV, shell input.

    Parameters
    ----------
    plan
        The plan, as a TOML file.
    out
        The folder for the files. It is made, or written again when it holds the files of an earlier call.
    move
        The move whose moment is written, from 1; the last one if left out.
    opening
        The moment at this opening of the tips, in metres; the move's end if left out.
    """
    return exporting.export(plan, out, move, opening, solve)


@app.command
def room(*runs: Path, out: Path) -> int:
    """Draw how the room to the person changes along plans that begin with one start.

    Parameters
    ----------
    runs
        One to four plans as TOML files, which are solved, or folders that 'hemline run' has written.
    out
        The picture, a name ending in .png; a table ending in .csv is written beside it.
    """
    return rooms.room(runs, out, solve, version())


app.command(many_runs.many)
app.command(many_runs.flip)
app.command(mapping.outcome_map, name="map")
app.command(scenarios.scenario)
app.command(cars.builds)
app.command(cars.fields)
app.command(starting.start)
app.command(cars.contrast)
app.command(lessons.app)
app.command(figures.figures)


@app.command
def card(file: Path, *, full: bool = False) -> int:
    """Write the model card: what is modelled, what is not, every number with its source, and the checks.

    Parameters
    ----------
    file
        Where to: a name that ends in .html or .md.
    full
        All checks, some minutes; without it, those that take seconds.
    """
    from ui import checking

    check_file("FILE", file, checking.ENDINGS, "a page or Markdown")
    try:
        return checking.write_card(file, full=full, version=f"Hemline {version()}")
    except OSError as error:
        raise Refusal(f"FILE {file}: {file_trouble(error)}") from error


@app.command
def here() -> int:
    """Look whether the window will run on this machine: drawing, memory, cores, screen, folder.

    Ends with 1 when something is too little; each line says what helps.
    """
    from ui.machine import facts_apart, versions
    from ui.state.machine import findings, report, runs

    facts = facts_apart()
    sys.stdout.write(f"{report(facts)}\n\n{versions()}\n")
    return OK if runs(findings(facts)) else UNEXPECTED


def write(folder: Path, plan: Plan, records: Sequence[MoveRecord]) -> None:
    """Write the numbers; raises OSError when the disk is full or may not be written."""
    from sim import results

    try:
        results.write_results(folder, plan, records)
    except PlanError as error:
        if isinstance(error.__cause__, OSError):
            raise error.__cause__ from error
        raise


def draw(folder: Path, plan: Plan, model: DoorModel, records: Sequence[MoveRecord]) -> None:
    """Draw the metal before the first move and after the last one, and the way between, with words."""
    from ui.scene import headless

    headless.prepare()
    from sim import aim as aims
    from sim import builds
    from sim.plan import Spread, Squeeze
    from sim.results import MODEL_VERSION
    from ui import filming
    from ui.scene import picture as figures

    pushes = [move for move in plan.moves if isinstance(move, Spread | Squeeze)]
    aim = aims.tried(model, pushes[0]) if pushes else None
    words = figures.PictureWords(
        sentence=told(records),
        title=plan.title or "One plan, before and after",
        caption=builds.car_words(plan.car),
        version=f"Hemline {version()}, model {MODEL_VERSION}",
    )
    start, end = records[0].frames[0], records[-1].frames[-1]
    tool = pushes[0].tool if pushes else None
    image = figures.picture(model, start, end, words, aim=aim, tool=tool)
    figures.save_png(image, folder / "picture.png")
    filming.draw_film(folder / "film.png", plan, model, records, words)


def told(records: Sequence[MoveRecord]) -> str:
    """Return what happened: the last push, what came after it, and before it whatever met a hidden hazard."""
    results = [record.result for record in records if record.result is not None]
    pushes = [k for k, result in enumerate(results) if result.seats]
    first = max(pushes[-1] if pushes else len(results) - 1, 0)
    met = [
        f"Move {k + 1}: {result.sentence}"
        for k, result in enumerate(results[:first])
        if any(event.kind == "caution" for event in result.events)
    ]
    return " ".join([*met, *(result.sentence for result in results[first:])])


def say_unexpected(
    kind: type[BaseException], error: BaseException, trace: types.TracebackType | None
) -> None:
    """Say a fault of the program in one sentence, with where it happened, and no traceback."""
    where = ""
    while trace is not None:
        where = f" at {Path(trace.tb_frame.f_code.co_filename).name}:{trace.tb_lineno}"
        trace = trace.tb_next
    words = (
        f"hemline met a fault of its own ({kind.__name__}: {error}{where}); please report it with the plan."
    )
    sys.stderr.write(one_sentence(words) + "\n")


def main(arguments: Sequence[str] | None = None) -> int:
    """Return the exit code of one call; the console's entry.

    0 done, 2 refused in one sentence on the error stream, 130 stopped by the user.
    """
    if arguments is None:
        sys.excepthook = say_unexpected
    words = list(sys.argv[1:] if arguments is None else arguments)
    try:
        command, bound, _ = app.parse_args(words, exit_on_error=False, print_error=False)
        code = command(*bound.args, **bound.kwargs)
        return code if isinstance(code, int) else OK
    except CycloptsError as error:
        sys.stderr.write(one_sentence(f"{error} See hemline --help") + "\n")
        return REFUSED
    except Refusal as error:
        sys.stderr.write(f"{error}\n")
        return REFUSED
    except BrokenPipeError:
        # who read along has stopped reading; the interpreter flushes once more at its end
        with contextlib.suppress(OSError):
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return OK
    except OSError as error:
        where = error.filename or "what it says"
        sys.stderr.write(f"{where}: {file_trouble(error)}\n")
        return REFUSED
    except KeyboardInterrupt:
        sys.stderr.write("Stopped; nothing was written.\n")
        return STOPPED


if __name__ == "__main__":
    sys.exit(main())
