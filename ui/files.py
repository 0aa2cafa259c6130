"""Plans on disk: the ready ones, the reader's own, and a sentence where one cannot be read or written."""

from __future__ import annotations

from importlib import resources
from pathlib import Path

from meshes.part import MeshError
from sim.plan import Plan
from sim.planfile import loads_plan, save_plan
from sim.problems import PlanError
from sim.textfiles import read_text
from ui.refusal import one_sentence, told_in_window

READY = {"edge": "edge-at-latch", "contrast": "behind-the-bend"}


class FileTrouble(Exception):  # noqa: N818 - a sentence to the reader
    """A file that cannot be read or written; the text is a sentence for the reader."""


def ready_plan(name: str) -> Plan:
    """Return one of the program's ready plans, "edge" or "contrast"."""
    place = resources.files("assets").joinpath("plans", f"{READY[name]}.toml")
    return loads_plan(place.read_text(encoding="utf-8"))


def is_lesson(path: Path) -> bool:
    """Tell whether a file looks like a lesson: it has steps, and a plan has none."""
    try:
        return any(line.strip() == "[[steps]]" for line in read_text(path, "lesson").splitlines())
    except PlanError:
        return False


def read(path: Path) -> tuple[Plan, str]:
    """Return the plan in a file and the file's text; FileTrouble, saying why, where there is none."""
    try:
        text = read_text(path, "plan")
        return loads_plan(text), text
    except (PlanError, MeshError) as problem:
        of_file = isinstance(problem, PlanError) and problem.field == str(path)
        why = f"it {problem.message}" if of_file else str(problem)
        raise FileTrouble(f"{path.name} was not opened: {one_sentence(why)}") from problem


def write(plan: Plan, path: Path, text: str | None) -> str:
    """Write a plan, keeping the comments of `text`; return what was written."""
    try:
        save_plan(plan, path, previous_text=text)
        return path.read_text(encoding="utf-8")
    except OSError as problem:
        raise FileTrouble(told_in_window(path, "written", problem)) from problem
