"""Files a person writes and the program reads, and files it writes: read with a sentence, written whole."""

from __future__ import annotations

import contextlib
from pathlib import Path

from sim.problems import PlanError

LARGEST_BYTES = 4_000_000
"""More is no plan, lesson, list or scenario: a wrong file is told before it is read."""


def read_text(path: Path, what: str) -> str:
    """Return the text of a file.

    Parameters
    ----------
    path : the file
    what : what it should be, in a word, as "plan"

    Raises
    ------
    PlanError
        The file is not there, is a folder, may not be read, is no text in UTF-8, or above `LARGEST_BYTES`.
    """
    name = str(path)
    try:
        if path.stat().st_size > LARGEST_BYTES:
            raise PlanError(name, f"is far too large for a {what}; check that it is the right file")
        return path.read_text(encoding="utf-8-sig")
    except FileNotFoundError as error:
        raise PlanError(name, "does not exist; check the path") from error
    except IsADirectoryError as error:
        raise PlanError(name, f"is a folder; name the {what}'s file") from error
    except UnicodeDecodeError as error:
        raise PlanError(name, f"is not a text file in UTF-8; save the {what} as UTF-8 text") from error
    except OSError as error:
        raise PlanError(name, f"cannot be read ({error.strerror or error}); check the file") from error


def write_whole(path: Path, data: str | bytes) -> None:
    """Write a file whole or not at all: beside its place first, then moved there.

    Raises
    ------
    OSError
        When it cannot be written; an older file stays as it was, and nothing half-written is left.
    """
    part = path.with_name(f"{path.name}.part")
    try:
        part.write_bytes(data.encode() if isinstance(data, str) else data)
        part.replace(path)
    finally:
        with contextlib.suppress(OSError):  # a disk that takes nothing has nothing to be taken away
            part.unlink(missing_ok=True)
