"""The command line's word that wrecks a car and keeps it: a start that plans can begin with."""

from __future__ import annotations

import sys
from pathlib import Path

from sim.problems import PlanError
from ui.folders import check_file
from ui.refusal import Refusal, file_trouble, read_plan, ready_model, sentence_of

ENDING = ".npz"


def start(plan: Path, *, out: Path) -> int:
    """Solve a plan's wreck alone and write the start it leaves, to share and to name in other plans.

    Parameters
    ----------
    plan
        A plan with at least one [[wreck]] table, as a TOML file.
    out
        The file for the start; its name ends in .npz.
    """
    asked = read_plan(plan)
    if not asked.wreck:
        raise Refusal(f"{plan}: wreck is empty, so there is no start to make; add a [[wreck]] table.")
    check_file("--out", out, (ENDING,), "a start's name")
    from sim import starts, wreck

    try:
        ready_model(asked)
        model = wreck.model_of(asked)
        rest = wreck.wrecked(asked, model)
        found = wreck.as_found(asked, model, rest).found
        sha256 = starts.save_start(out, asked, rest)
    except PlanError as error:
        raise Refusal(f"{plan}: {sentence_of(error)}") from error
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error
    words = "" if found is None else found.sentence()
    sys.stdout.write(f"{words}\nstart = {out.name!r}  # {sha256}\n{out}\n")
    return 0
