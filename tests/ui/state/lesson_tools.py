"""Small results and a small lesson for the tests of lessons; invented, no run behind them."""

from pathlib import Path

import msgspec

from sim.kept import Kept, Neighbour, Told
from sim.plan import Plan
from sim.planfile import plan_sha256
from sim.results import MODEL_VERSION
from ui.state.lesson_results import PlanResult

LESSON = """# a comment to keep
schema_version = 1
title = "A lesson"
author = "somebody's post"
licence = "CC0-1.0"
level = "operations"

[[plans]]
name = "lip"
file = "first-bite-lip"

[[plans]]
name = "bend"
file = "first-bite-bend"

[[steps]]
phase = "open"
title = "Begin"
words = "First: {lip.first} at {lip.first_opening}."

[[steps]]
phase = "show"
title = "Look"
plan = "lip"
moment = "end"
question = "first"
notes = "{bend.effect}"

[[questions]]
name = "first"
ask = "What lets go first?"
plan = "lip"
why = "Because."
"""


def move(first="seam parting", **changes) -> Told:
    """Return a move's figures."""
    plain = Told(
        first=first,
        effect="spent",
        metal=(first,),
        sentence="It came away.",
        settled=True,
        first_opening_m=0.01,
        first_force_n=2400.0,
        peak_force_n=4000.0,
        margin_ratio=0.8,
        rival="latch free",
        seats=("hem lip", "pillar edge"),
        opening_m=0.1,
    )
    return msgspec.structs.replace(plain, **changes)


def result(name="lip", told=None, *, beside=None, why_stale="", plan=None) -> PlanResult:
    """Return a plan with a kept result; its neighbours say the same unless told otherwise."""
    plan = plan or Plan(title=f"Plan {name}")
    told = told or move()
    neighbours = (("10 mm to one side", told), ("a coarser lattice", told)) if beside is None else beside
    kept = Kept(
        MODEL_VERSION,
        plan_sha256(plan),
        plan.title,
        "",
        (told,),
        tuple(Neighbour(words, (one,)) for words, one in neighbours),
    )
    return PlanResult(name, name, plan, kept, why_stale, Path("nowhere"))
