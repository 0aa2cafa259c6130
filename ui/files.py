"""Plans on disk: the ready ones, the reader's own, and a sentence where one cannot be read or written."""

from __future__ import annotations

from importlib import resources
from pathlib import Path

from meshes.part import MeshError
from sim.plan import Plan
from sim.planfile import load_plan, loads_plan, save_plan
from sim.problems import PlanError
from ui.refusal import one_sentence, told_in_window

READY = {"edge": "edge-at-latch", "contrast": "behind-the-bend"}
LARGEST_BYTES = 4_000_000


class FileTrouble(Exception):  # noqa: N818 - a sentence to the reader
    """A file that cannot be read or written; the text is a sentence for the reader."""


def ready_plan(name: str) -> Plan:
    """Return one of the program's ready plans, "edge" or "contrast"."""
    place = resources.files("assets").joinpath("plans", f"{READY[name]}.toml")
    return loads_plan(place.read_text(encoding="utf-8"))


def is_lesson(path: Path) -> bool:
    """Tell whether a file looks like a lesson: it has steps, and a plan has none."""
    try:
        if path.stat().st_size > LARGEST_BYTES:
            return False
        return any(line.strip() == "[[steps]]" for line in path.read_text(encoding="utf-8").splitlines())
    except (OSError, UnicodeDecodeError):
        return False


def read(path: Path) -> tuple[Plan, str]:
    """Return the plan in a file and the file's text; FileTrouble, saying why, where there is none."""
    try:
        if path.stat().st_size > LARGEST_BYTES:
            raise FileTrouble(f"{path.name} is far too large for a plan; choose a plan's file (.toml).")
        return load_plan(path), path.read_text(encoding="utf-8")
    except (PlanError, MeshError) as problem:
        raise FileTrouble(f"{path.name} was not opened: {one_sentence(str(problem))}") from problem
    except UnicodeDecodeError as problem:
        raise FileTrouble(
            f"{path.name} is not a text file and so no plan; choose a plan's file (.toml)."
        ) from problem
    except OSError as problem:
        raise FileTrouble(told_in_window(path, "opened", problem)) from problem


def write(plan: Plan, path: Path, text: str | None) -> str:
    """Write a plan, keeping the comments of `text`; return what was written."""
    try:
        save_plan(plan, path, previous_text=text)
        return path.read_text(encoding="utf-8")
    except OSError as problem:
        raise FileTrouble(told_in_window(path, "written", problem)) from problem
