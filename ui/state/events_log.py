"""What happened in the program, line by line, and none of it personal: for a report that can be sent on."""

from __future__ import annotations

import re
from collections import deque
from datetime import datetime
from pathlib import Path

KEPT = 500
_PATH = re.compile(r"(?:[A-Za-z]:)?[\\/](?:[^\n\\/:;,'\"<>|]+[\\/])+[^\s\\/:;,'\"<>|()]*")
_FILE = re.compile(r"(?<!\S)[^\s\"'()]+(\.(?:toml|png|pdf|csv|json|html|md|vtu|glb|stl|inp))\b")
"""Names of files that people give; those of the program's own text end otherwise."""
_ENDING = re.compile(r"\.[A-Za-z0-9]{1,5}$")
_HOME = Path.home()


def impersonal(text: str, ours: tuple[str, ...]) -> str:
    """Return a text without folders and names of files, but for those of the program and its libraries.

    Parameters
    ----------
    ours : folders whose files may be named, such as the one the program lies in
    """

    def put(found: re.Match[str]) -> str:
        path = found[0]
        for folder in ours:
            if path.startswith(folder):
                return path[len(folder) :].lstrip("\\/")
        ending = _ENDING.search(path)
        return f"(a file{' ending in ' + ending[0] if ending else ''})"

    text = _FILE.sub(lambda found: f"(a file ending in {found[1]})", _PATH.sub(put, text))
    name = _HOME.name
    return re.sub(rf"\b{re.escape(name)}\b", "(a person)", text) if len(name) > 3 else text


class EventsLog:
    """The last lines, each with its time.

    Parameters
    ----------
    ours : folders whose files may be named
    """

    def __init__(self, ours: tuple[str, ...] = ()) -> None:
        self._ours = ours
        self._lines: deque[str] = deque(maxlen=KEPT)

    def note(self, kind: str, text: str) -> None:
        """Write a line down; an empty text is none, and one that is said again at once is not repeated."""
        words = impersonal(text.strip(), self._ours)
        if not words or (self._lines and self._lines[-1].endswith(f"{kind}: {words}")):
            return
        self._lines.append(f"{datetime.now():%H:%M:%S} {kind}: {words}")

    @property
    def text(self) -> str:
        """All lines kept, the oldest first."""
        return "\n".join(self._lines)
