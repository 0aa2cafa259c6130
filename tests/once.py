"""What several tests look at is worked out once for all workers of a run, and read from disk by the others.

The folder is made by `tests/conftest.py` and goes with the run. An answer is kept under the plan it belongs
to and the text of the whole program: another program, one with a planted fault among them, finds nothing.
"""

from __future__ import annotations

import contextlib
import hashlib
import os
import pickle
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path
from typing import TypeVar

import msgspec

try:
    import fcntl
except ImportError:  # no locks of files here: every worker works it out for itself
    fcntl = None

FOLDER = "HEMLINE_TESTS_SOLVED"
"""The environment's variable that names the folder; without it nothing is kept."""

Made = TypeVar("Made")


@cache
def program_sha256() -> str:
    """Return a hash over the text of mechanics and geometry."""
    import meshes
    import sim

    found = hashlib.sha256()
    for package in (meshes, sim):
        for path in sorted(Path(package.__path__[0]).rglob("*.py")):
            found.update(path.read_bytes())
    return found.hexdigest()


def kept() -> bool:
    """Tell whether answers are kept on disk."""
    return bool(os.environ.get(FOLDER)) and fcntl is not None


def once(make: Callable[[], Made], *key: object) -> Made:
    """Return what ``make`` gives for a key, worked out by whichever worker asks first.

    Parameters
    ----------
    make : gives values that can be pickled
    key : words and plain values (plans, cars, moves) that say all ``make`` hangs on
    """
    if not kept():
        return make()
    plain = msgspec.json.encode([msgspec.to_builtins(part) for part in key])
    path = Path(os.environ[FOLDER]) / hashlib.sha256(program_sha256().encode() + plain).hexdigest()
    with _locked(path.with_suffix(".lock")):
        if path.exists():
            return pickle.loads(path.read_bytes())
        made = make()
        part = path.with_suffix(".part")
        part.write_bytes(pickle.dumps(made, protocol=5))
        part.replace(path)
        return made


@contextlib.contextmanager
def _locked(path: Path) -> Iterator[None]:
    with path.open("w") as file:
        fcntl.flock(file, fcntl.LOCK_EX)
        yield
