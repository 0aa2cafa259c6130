"""The command line's word that draws how the room to the person changes along plans of one start."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

import msgspec

from sim.problems import PlanError
from sim.textfiles import write_whole
from ui.folders import check_file
from ui.refusal import Refusal, file_trouble, read_plan, sentence_of
from ui.state.room_curve import LETTERED, RoomCurve, curve_of, one_start, table

if TYPE_CHECKING:
    from sim.plan import Plan
    from sim.record import MoveRecord

Solve = Callable[["Plan", Path | None], tuple[Any, "tuple[MoveRecord, ...]"]]
RESULT, SERIES = "result.json", "series.csv"
ENDING, MOST = ".png", len(LETTERED)


def room(runs: tuple[Path, ...], out: Path, solve: Solve, version: str) -> int:
    """Draw the curves; return the exit code.

    Parameters
    ----------
    runs : plans, solved now, or folders that ``hemline run`` has written
    out : the picture; a table of the same name ending in .csv goes beside it
    """
    if not 1 <= len(runs) <= MOST:
        raise Refusal(f"RUNS: names {len(runs)} plans; give one to {MOST}.")
    check_file("--out", out, (ENDING,), "a picture's name")
    curves = [_curve(path, solve) for path in runs]
    try:
        sha256 = one_start(curves)
    except PlanError as error:
        raise Refusal(sentence_of(error)) from error
    lines = [f"{LETTERED[k]} {curve.title}: {curve.sentence()}." for k, curve in enumerate(curves)]
    try:
        _draw(curves, lines, sha256, out, version)
        write_whole(out.with_suffix(".csv"), table(curves))
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error
    sys.stdout.write("\n".join([*lines, f"start {sha256}, the same for all", str(out)]) + "\n")
    return 0


def _curve(path: Path, solve: Solve) -> RoomCurve:
    """Return the curve of one plan or finished run."""
    try:
        if path.is_dir():
            if not (path / RESULT).is_file():
                raise Refusal(f"{path}: holds no {RESULT}; make it with 'hemline run PLAN --out FOLDER'.")
            result = msgspec.json.decode((path / RESULT).read_bytes())
            return curve_of(result, (path / SERIES).read_text(encoding="utf-8"))
        plan = read_plan(path)
        if not plan.moves:
            raise Refusal(f"{path}: moves is empty, so there is nothing to solve; add a [[moves]] table.")
        from sim import results

        records = solve(plan, path.parent)[1]
        raw = msgspec.json.decode(results.result_json(plan, records))
        return curve_of(raw, results.series_csv(records))
    except PlanError as error:
        raise Refusal(f"{path}: {sentence_of(error)}") from error
    except (OSError, UnicodeDecodeError) as error:
        trouble = file_trouble(error) if isinstance(error, OSError) else "is not text"
        raise Refusal(f"{path}: {trouble}") from error
    except (msgspec.DecodeError, KeyError, TypeError, ValueError) as error:
        raise Refusal(
            f"{path}: is not a finished run; make it with 'hemline run PLAN --out FOLDER'."
        ) from error


def _draw(curves: list[RoomCurve], lines: list[str], sha256: str, out: Path, version: str) -> None:
    from ui.scene import headless

    headless.prepare()
    from ui.scene.picture import PictureWords, save_png
    from ui.scene.room_picture import room_picture

    plans = "one plan" if len(curves) == 1 else f"{len(curves)} plans"
    words = PictureWords(
        title=f"Room to the person along {plans} from one start ({sha256[:12]}, the same for all)",
        caption="\n".join(lines),
        scale="",
        version=f"Hemline {version}, model {curves[0].model_version}",
    )
    save_png(room_picture(curves, words), out)
