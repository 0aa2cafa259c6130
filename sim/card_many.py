"""What the model card says of many runs: which numbers are varied and how far, and what scenarios came to.

What scenarios came to is kept as files beside them, as `hemline scenario` wrote them; each is true for one
version of the model and says which.
"""

from __future__ import annotations

import re
from functools import cache
from importlib import resources

from sim import scenario_told
from sim.results import MODEL_VERSION

VARIED_HEADS = ("varied", "range", "spread", "source")
CAME_HEADS = ("scenario", *scenario_told.HEADINGS)
FOLDER = ("scenarios", "came")
SPREADS = {"even": "evenly", "peaked": "peak at the plan's", "peaked_ratio": "peak at the plan's, by ratio"}


@cache
def varied_lines() -> tuple[tuple[str, ...], ...]:
    """Return a line for every number that is not known well, in the order of `VARIED_HEADS`."""
    # its statistics take half a second, and only who looks at the table needs them
    from sim.vary import TABLE

    return tuple(
        (row.words, row.span.words(row.unit), SPREADS[row.quantile.__name__], row.source) for row in TABLE
    )


@cache
def kept() -> tuple[scenario_told.Came, ...]:
    """Return what the ready scenarios came to, by the order of their files' names."""
    folder = resources.files("assets").joinpath(*FOLDER)
    if not folder.is_dir():
        return ()
    files = sorted((file for file in folder.iterdir() if file.name.endswith(".json")), key=lambda f: f.name)
    return tuple(scenario_told.from_json(file.read_bytes()) for file in files)


@cache
def came_lines() -> tuple[tuple[str, ...], ...]:
    """Return a line for every ask of the ready scenarios, in the order of `CAME_HEADS`."""
    out = []
    for came in kept():
        spacings = sorted({1e3 * plan.lattice_spacing_m for plan in came.plans.values()})
        title = f"{re.split('[:,]', came.title)[0]}, {' and '.join(f'{value:.0f}' for value in spacings)} mm"
        if came.model_version != MODEL_VERSION:
            title += f" (of an older model, {came.model_version})"
        out += [(title, *scenario_told.cells(*pair)) for pair in zip(came.answers, came.units, strict=True)]
    return tuple(out)
