"""The drill log: what the model said, what the metal did, and how often the two agree.

One CSV file in the user's own folder, a line a drill, no names of people.  It is the service's own check of
this program, and it can be deleted at any time.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from dataclasses import asdict, dataclass, fields
from pathlib import Path

from sim.likely import interval
from sim.many import GIVE_WORDS, NOTHING_GAVE
from sim.textfiles import write_whole

FILE_NAME = "drills.csv"
FEW = 5
"""Below this many drills no rate is told."""
UNKNOWN = "could not be seen"
METAL_DID: tuple[str, ...] = (*GIVE_WORDS, NOTHING_GAVE, UNKNOWN)
"""What can be written down as what the metal did first: the words of the model itself."""


@dataclass(frozen=True)
class Drill:
    """One drill.

    date : as 2026-11-26;  lesson, plan : titles;  plan_sha256, model_version : what the model said it with
    model_said : what gave first in the model;  metal_did : what gave first on the drill ground
    build : the car's build in words (no make, no model);  note : what was surprising
    """

    date: str
    lesson: str
    plan: str
    plan_sha256: str
    model_version: str
    model_said: str
    metal_did: str
    build: str = ""
    note: str = ""

    @property
    def agrees(self) -> bool | None:
        """Whether the metal did what the model said; None when it could not be seen."""
        return None if self.metal_did in ("", UNKNOWN) else self.metal_did == self.model_said


COLUMNS = tuple(field.name for field in fields(Drill))


def load(folder: Path) -> tuple[Drill, ...]:
    """Return the drills kept in a folder; a line that cannot be read is passed over."""
    try:
        text = (folder / FILE_NAME).read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError):
        return ()
    rows = csv.DictReader(io.StringIO(text))
    return tuple(
        Drill(**{name: row.get(name) or "" for name in COLUMNS}) for row in rows if row.get("model_said")
    )


def save(drills: Sequence[Drill], folder: Path) -> bool:
    """Write the drills in one step; return False where the folder cannot be written."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
        write_whole(folder / FILE_NAME, as_csv(drills))
    except OSError:
        return False
    return True


def as_csv(drills: Sequence[Drill]) -> str:
    """Return the drills as a table that a spreadsheet opens; a cell never begins like a formula."""
    out = io.StringIO()
    writer = csv.DictWriter(out, COLUMNS, lineterminator="\n")
    writer.writeheader()
    for drill in drills:
        writer.writerow({name: _safe(value) for name, value in asdict(drill).items()})
    return out.getvalue()


def _safe(value: str) -> str:
    return f"'{value}" if value[:1] in ("=", "+", "-", "@") else value


def delete(folder: Path) -> bool:
    """Delete the log; return whether nothing is left of it."""
    try:
        (folder / FILE_NAME).unlink(missing_ok=True)
    except OSError:
        return False
    return True


def rate_words(drills: Sequence[Drill]) -> str:
    """Return how often model and metal agreed, in one sentence for the model card."""
    seen = [drill for drill in drills if drill.agrees is not None]
    agreed = sum(bool(drill.agrees) for drill in seen)
    if not seen:
        return "No drill has been written down yet: nothing is known of how this model does on your metal."
    counted = f"In {agreed} of {len(seen)} drills the metal did first what the model had said"
    unseen = len(drills) - len(seen)
    rest = f" ({unseen} could not be seen)" if unseen else ""
    if len(seen) < FEW:
        return f"{counted}{rest}; too few to speak of a rate."
    low, high = interval(agreed, len(seen))
    return (
        f"{counted}{rest}: with so many, the true share lies between {100 * low:.0f} and {100 * high:.0f} %."
    )
