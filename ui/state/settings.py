"""What is remembered between two sessions. A damaged or missing file costs the memory, never the start."""

from __future__ import annotations

import json
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from sim.textfiles import write_whole

FILE_NAME = "settings.json"
RECENT_LIMIT = 8


@dataclass(frozen=True)
class Settings:
    """The remembered choices.

    Parameters
    ----------
    caution_read : the notice of the first start has been read in this folder
    recent : plan files opened last, newest first
    theme : "light" or "dark"
    imperial : pounds and inches instead of kilonewtons and millimetres
    projector : larger type
    text_ratio : factor on all type, 1 to 2
    calm : moments as stills instead of motion
    right_turns : the right button of the mouse turns the picture, not the left one
    shut : what the teacher keeps shut, until it is opened again
    language : of the window's words, a code of `ui.state.tongue.TONGUES`
    """

    caution_read: bool = False
    recent: tuple[str, ...] = ()
    theme: str = "light"
    imperial: bool = False
    projector: bool = False
    text_ratio: float = 1.0
    calm: bool = False
    right_turns: bool = False
    shut: tuple[str, ...] = ()
    language: str = "en"

    def with_recent(self, path: Path) -> Settings:
        """Return the settings with a file at the head of the recent ones."""
        name = str(path)
        others = tuple(item for item in self.recent if item != name)
        return replace(self, recent=(name, *others)[:RECENT_LIMIT])

    def without_recent(self, path: Path) -> Settings:
        """Return the settings without a file that is no longer there."""
        return replace(self, recent=tuple(item for item in self.recent if item != str(path)))


def load(folder: Path) -> Settings:
    """Return the settings kept in a folder; defaults where the file is missing or holds something else."""
    return _settings(_found(folder) or {})


def set_aside_broken(folder: Path) -> str:
    """Put a settings file that cannot be read aside under another name; say so in a sentence, "" if none."""
    path = folder / FILE_NAME
    if not path.exists() or _found(folder) is not None:
        return ""
    aside = path.with_name("settings-unreadable.json")
    try:
        path.replace(aside)
    except OSError:
        return f"The settings in {path} cannot be read, so this start uses the ordinary ones."
    return (
        f"The settings could not be read, so the ordinary ones hold; the old file was put aside as {aside}."
    )


def _found(folder: Path) -> dict[str, Any] | None:
    try:
        found = json.loads((folder / FILE_NAME).read_text(encoding="utf-8"))
    except (OSError, ValueError, RecursionError):
        return None
    return found if isinstance(found, dict) else None


def _settings(found: dict[str, Any]) -> Settings:
    recent = found.get("recent", ())
    names = tuple(str(item) for item in recent)[:RECENT_LIMIT] if isinstance(recent, list) else ()
    shut = found.get("shut", ())
    return Settings(
        caution_read=found.get("caution_read") is True,
        recent=names,
        theme="dark" if found.get("theme") == "dark" else "light",
        imperial=found.get("imperial") is True,
        projector=found.get("projector") is True,
        text_ratio=_ratio(found.get("text_ratio")),
        calm=found.get("calm") is True,
        right_turns=found.get("right_turns") is True,
        shut=tuple(str(item) for item in shut) if isinstance(shut, list) else (),
        language=language if isinstance(language := found.get("language"), str) else "en",
    )


def _ratio(found: object) -> float:
    """Return a factor on type from 1 to 2; 1 for anything else."""
    return float(found) if isinstance(found, int | float) and 1.0 <= found <= 2.0 else 1.0


def save(settings: Settings, folder: Path) -> bool:
    """Write the settings in one step; return False where the folder cannot be written."""
    words = {
        "caution_read": settings.caution_read,
        "recent": list(settings.recent),
        "theme": settings.theme,
        "imperial": settings.imperial,
        "projector": settings.projector,
        "text_ratio": settings.text_ratio,
        "calm": settings.calm,
        "right_turns": settings.right_turns,
        "shut": list(settings.shut),
        "language": settings.language,
    }
    try:
        folder.mkdir(parents=True, exist_ok=True)
        write_whole(folder / FILE_NAME, json.dumps(words, indent=2))
    except OSError:
        return False
    return True
