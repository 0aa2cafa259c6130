"""What the command line says when it cannot do what was asked: one sentence with the field and the remedy."""

from __future__ import annotations

import errno
import re
from pathlib import Path
from typing import TYPE_CHECKING

from meshes.part import MeshError
from sim.problems import PlanError

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.plan import Plan


MESH_FIELDS = {"spacing_m": "lattice_spacing_m"}
"""Names of the door's dimensions that a plan calls otherwise."""


class Refusal(Exception):  # noqa: N818
    """Something that cannot be done, in one sentence that names the field and the remedy."""


def read_plan(path: Path) -> Plan:
    """Return the plan of a file; raises Refusal in one sentence when it cannot be read or made."""
    from sim import planfile

    try:
        return beside(planfile.load_plan(path), path)
    except PlanError as error:
        about_file = error.field == str(
            path
        )  # the file itself is at fault: its name is in the sentence already
        raise Refusal(sentence_of(error) if about_file else f"{path}: {sentence_of(error)}") from error


def beside(plan: Plan, path: Path) -> Plan:
    """Return the plan with its saved start, if it lies beside the plan's file, named by its whole path."""
    import msgspec

    start = path.parent / plan.start
    if not plan.start or not start.is_file():
        return plan
    return msgspec.structs.replace(plan, start=str(start))


def ready_model(plan: Plan) -> DoorModel:
    """Return the plan's door, when it can be meshed, its start read and every push be made on it.

    Raises
    ------
    PlanError
        When it cannot; nothing has been solved then.
    """
    from sim import starts, wreck
    from sim.moves import course_of

    try:
        model = wreck.model_of(plan)
    except MeshError as error:
        field = f"car.{MESH_FIELDS.get(error.parameter, error.parameter)}"
        raise PlanError(field, error.message) from error
    if plan.start:
        starts.load_start(plan.start, plan, model)
    for name, moves in (("wreck", plan.wreck), ("moves", plan.moves)):
        for index, move in enumerate(moves):
            try:
                course_of(move).ready(model, move)
            except PlanError as error:
                raise error.inside(f"{name}[{index}]") from error
    return model


_TROUBLES = {
    errno.ENOSPC: "the disk is full; free some space and run it again.",
    errno.EDQUOT: "your share of the disk is used up; free some space and run it again.",
    errno.EACCES: "may not be used by you; choose another place or ask for the right to it.",
    errno.EPERM: "may not be used by you; choose another place or ask for the right to it.",
    errno.EROFS: "stands on a disk that is read-only; choose another place.",
    errno.ENOENT: "does not exist; check the path.",
    errno.ENOTDIR: "lies under something that is not a folder; check the path.",
    errno.EISDIR: "is a folder; name a file.",
    errno.EEXIST: "is a file; name a folder.",
    errno.ENAMETOOLONG: "has too long a name; choose a shorter one.",
}


def file_trouble(error: OSError) -> str:
    """Return what is wrong with a file or folder and what to do, as the end of a sentence."""
    known = _TROUBLES.get(error.errno or 0)
    return known or f"cannot be used ({error.strerror or error}); choose another place."


def told_in_window(path: Path, what: str, error: OSError) -> str:
    """Return a sentence for the window: file, what was not done with it ("written"), why, the remedy."""
    words = file_trouble(error).replace("and run it again", "and try again")
    subject = "" if words.startswith(("the ", "your ")) else "it "
    return f"{path.name} was not {what}: {subject}{words}"


def sentence_of(error: PlanError) -> str:
    """Return a plan's error as one sentence that begins with the field."""
    return one_sentence(str(error))


_LONG = re.compile(r"'([^']{60})[^']{240,}'")


def one_sentence(words: str) -> str:
    """Return words on one line with a full stop; what is quoted is cut where it is no name any more."""
    line = _LONG.sub(r"'\1...'", " ".join(words.split()))
    return line if line.endswith((".", "!", "?")) else f"{line}."


def time_words(seconds: float) -> str:
    """Return a time in rough words."""
    if seconds < 90.0:
        return f"{max(1, round(seconds))} s"
    return f"{round(seconds / 60.0)} min"
