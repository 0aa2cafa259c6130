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


OTHER_KINDS = {
    "[[steps]]": "",
    "[[asks]]": 'it is a scenario and no plan; run it with "hemline scenario".',
    "[[views]]": "it is a list of figures and no plan; menu File, Matching pictures, opens it.",
}
"""A table that stands in another kind of file and in no plan, and what is said of it; a lesson is opened."""


def other_kind(path: Path) -> str | None:
    """Return what is said of a file that looks like no plan: "" for a lesson, None for a plan."""
    try:
        lines = {line.strip() for line in read_text(path, "plan").splitlines()}
    except PlanError:
        return None
    return next((words for table, words in OTHER_KINDS.items() if table in lines), None)


def is_lesson(path: Path) -> bool:
    """Tell whether a file looks like a lesson: it has steps, and a plan has none."""
    return other_kind(path) == ""


def read(path: Path) -> tuple[Plan, str]:
    """Return the plan in a file and the file's text; FileTrouble, saying why, where there is none."""
    other = other_kind(path)
    if other:
        raise FileTrouble(f"{path.name} was not opened: {other}")
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
    except PlanError as problem:
        cause = problem.__cause__
        if isinstance(cause, OSError):
            raise FileTrouble(told_in_window(path, "written", cause)) from problem
        raise FileTrouble(f"{path.name} was not written: {one_sentence(str(problem))}") from problem
    except OSError as problem:
        raise FileTrouble(told_in_window(path, "written", problem)) from problem
