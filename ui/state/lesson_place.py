"""Where a lesson was left, so that a class goes on at the same step after a crash: written at every step."""

from __future__ import annotations

import json
from pathlib import Path

FILE_NAME = "lesson-in-hand.json"


def keep(folder: Path, path: Path, position: int) -> bool:
    """Write which lesson is open and at which step; return False where the folder cannot be written."""
    part = folder / f"{FILE_NAME}.part"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        part.write_text(json.dumps({"lesson": str(path.absolute()), "step": position}), encoding="utf-8")
        part.replace(folder / FILE_NAME)
    except OSError:
        return False
    return True


def found(folder: Path) -> tuple[Path, int] | None:
    """Return the lesson and the step that were left open, None when none were or they cannot be read."""
    try:
        raw = json.loads((folder / FILE_NAME).read_text(encoding="utf-8"))
        return Path(raw["lesson"]), int(raw["step"])
    except (OSError, ValueError, KeyError, TypeError):
        return None


def forget(folder: Path) -> None:
    """Forget it: the lesson was put away, or the program was closed."""
    try:
        (folder / FILE_NAME).unlink(missing_ok=True)
    except OSError:
        return
