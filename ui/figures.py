"""The command that draws a list of figures with no window: pictures, captions, and what has changed."""

from __future__ import annotations

import hashlib
import os
import sys
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

import msgspec

from sim.problems import PlanError
from sim.textfiles import write_whole
from ui.refusal import Refusal, file_trouble, sentence_of
from ui.solving import solve

if TYPE_CHECKING:
    from PySide6.QtGui import QImage

    from sim.record import Frame
    from ui.state.figure_list import Drawn, Figure, FigureList
    from ui.state.lesson_results import PlanResult

INDEX = "figures.json"


def figures(listed: Path, *, out: Path, again: bool = False) -> int:
    """Draw a list of figures with no window: a PNG, a caption and a text for each, and what has changed.

    Plans whose kept results are fresh are not solved again; others are, and kept in the folder "solved".

    Parameters
    ----------
    listed
        The list, as a TOML file: states, views, sizes, styles.
    out
        The folder for the pictures; pictures of the same names are drawn over.
    again
        Solve every plan again.
    """
    from ui.state import figure_list, tongue

    tongue.speak(os.environ.get(tongue.VARIABLE, tongue.ENGLISH))
    try:
        wanted = figure_list.load(listed)
        results = _results(wanted, listed, out, again=again)
    except PlanError as error:
        own = error.field == str(listed)
        raise Refusal(sentence_of(error) if own else f"{listed}: {sentence_of(error)}") from error
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error
    before = _index(out)
    try:
        now = _draw_all(wanted, results, out)
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error
    changed = figure_list.verdict_changes(before, now)
    for line in changed:
        sys.stdout.write(f"{line}\n")
    if before and not changed:
        sys.stdout.write("Nothing has changed since the last time.\n")
    sys.stdout.write(f"{len(now)} pictures\n{out}\n")
    return 0


def _index(out: Path) -> dict[str, Drawn]:
    """Return what was drawn the last time, by name; empty when nothing was or it cannot be read."""
    from ui.state.figure_list import Drawn

    try:
        found = msgspec.json.decode((out / INDEX).read_bytes(), type=list[Drawn])
    except (OSError, msgspec.DecodeError):
        return {}
    return {drawn.name: drawn for drawn in found}


def _results(wanted: FigureList, listed: Path, out: Path, *, again: bool) -> dict[str, PlanResult]:
    """Return the plans of a list with fresh results, solved now where none were kept."""
    from sim import kept
    from sim.planfile import load_plan
    from ui.state.lesson_file import ready_path
    from ui.state.lesson_results import FOLDER, PlanResult, plan_path

    found: dict[str, PlanResult] = {}
    for k, state in enumerate(wanted.states):
        if state.plan in found:
            continue
        try:
            plan = load_plan(plan_path(listed, state.plan))
        except PlanError as error:
            raise error.inside(f"states[{k}]") from error
        places = (out / FOLDER, listed.parent / FOLDER, ready_path("").parent / FOLDER)
        known = ((folder, kept.read(folder, state.plan)) for folder in places)
        fresh = next((pair for pair in known if not kept.stale(pair[1], plan, "")), None)
        if fresh is None or again:
            sys.stderr.write(f"{state.plan}\n")
            folder = out / FOLDER
            fresh = folder, kept.keep(plan, folder, state.plan, solve=solve, with_neighbours=False)
        found[state.plan] = PlanResult(state.plan, state.plan, plan, fresh[1], "", fresh[0])
        if not 1 <= state.move <= len(plan.moves):
            raise PlanError(f"states[{k}].move", f"is {state.move}; the plan has 1 to {len(plan.moves)}")
    return found


def _draw_all(wanted: FigureList, results: Mapping[str, PlanResult], out: Path) -> dict[str, Drawn]:
    from ui.lessons import ready_type
    from ui.scene import headless

    headless.prepare()
    ready_type()
    from ui.lesson_pictures import Darkroom
    from ui.state.figure_list import figures as each

    out.mkdir(parents=True, exist_ok=True)
    room = Darkroom(results)
    now = {}
    for figure in each(wanted):
        drawn = _draw(figure, wanted, results[figure.state.plan], room, out)
        now[drawn.name] = drawn
        sys.stderr.write(f"{drawn.name}\n")
    write_whole(out / INDEX, msgspec.json.format(msgspec.json.encode(list(now.values())), indent=1) + b"\n")
    return now


def _draw(figure: Figure, wanted: FigureList, result: PlanResult, room: Any, out: Path) -> Drawn:
    from ui.figure_page import page, png, svg
    from ui.state.figure_list import Drawn, verdict_of
    from ui.state.figure_words import alt_text, caption

    state, view = figure.state, figure.view
    index = state.move - 1
    record = room.records(state.plan)[index]
    at = _moment_of(figure, record.frames)
    frame = record.frames[at]
    ended = record.result if at == len(record.frames) - 1 else None
    assert result.kept is not None
    said = "" if ended is None else ended.sentence
    words = caption(result.plan, state.words, said, result.kept.plan_sha256, wanted.licence)
    alt = alt_text(result.plan, index, frame, ended, view.camera, view.colours, way=record.frames[: at + 1])
    image = page(room, figure, result, frame, licence=wanted.licence)
    if "png" in wanted.formats:
        write_whole(out / f"{figure.name}.png", png(image.drawn(), f"{words}\n{alt}"))
    if "svg" in wanted.formats:
        write_whole(out / f"{figure.name}.svg", svg(image, words, alt))
    write_whole(out / f"{figure.name}.caption.txt", f"{words}\n".encode())
    write_whole(out / f"{figure.name}.alt.txt", f"{alt}\n".encode())
    verdict = verdict_of(result.kept, state.move)
    return Drawn(
        figure.name,
        state.plan,
        result.kept.plan_sha256,
        result.kept.model_version,
        verdict,
        words,
        alt,
        _pixels(image.drawn()),
    )


def _moment_of(figure: Figure, frames: Sequence[Frame]) -> int:
    """Return the index of a figure's moment among its move's frames."""
    from ui.state.lesson_results import moment_at

    wanted = figure.state.opening_m
    if figure.style == "before":
        return moment_at(frames, "start")
    if wanted is not None:
        return min(range(len(frames)), key=lambda k: abs(frames[k].opening_m - wanted))
    return moment_at(frames, figure.state.moment)


def _pixels(image: QImage) -> str:
    """Return a hash of a picture's pixels."""
    return hashlib.sha256(bytes(image.constBits())).hexdigest()
