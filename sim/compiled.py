"""The one decorator of compiled functions: numba, cached on disk by the text of everything they inline.

Numba's own cache knows a function by the time and size of its file alone.  It inlines functions and freezes
constants of other modules, so an edit there would go unseen; and a copied or checked-out file looks new.
Here a function's cache stands as long as the texts of its module and of all modules of `sim` below it do.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any, TypeVar, cast

from numba import njit
from numba.core import config
from numba.core.caching import InTreeCacheLocator, UserProvidedCacheLocator, UserWideCacheLocator

Function = TypeVar("Function", bound=Callable[..., Any])

ROOM = Path(__file__).resolve().parent
IMPORTED = re.compile(
    r"^\s*from sim\.(\w+) import|^\s*import sim\.(\w+)|^\s*from sim import (\([^)]*\)|.+)$", re.MULTILINE
)


def below(text: str) -> list[str]:
    """Return the modules of this package that a module's text imports, sorted."""
    names = set()
    for one, other, several in IMPORTED.findall(text):
        names.update(re.findall(r"\w+", one or other or several))
    return sorted(name for name in names if (ROOM / f"{name}.py").is_file())


@cache
def text_sha256(module: str) -> str:
    """Return the hash of the text of a module of this package and of all it imports from it."""
    todo, texts = [module], {}
    while todo:
        name = todo.pop()
        if name not in texts:
            texts[name] = (ROOM / f"{name}.py").read_text(encoding="utf-8")
            todo += below(texts[name])
    digest = hashlib.sha256()
    for name in sorted(texts):
        digest.update(f"{name}\0{texts[name]}\0".encode())
    return digest.hexdigest()


class _ByText:
    """Stamps a cache with the hash of the texts in place of the file's time and size."""

    _py_file: str

    def get_source_stamp(self) -> str:
        """Return the hash of all text that can be in the compiled code."""
        return text_sha256(Path(self._py_file).stem)


class UserProvidedByText(_ByText, UserProvidedCacheLocator):
    """The folder named by NUMBA_CACHE_DIR."""


class InTreeByText(_ByText, InTreeCacheLocator):
    """`__pycache__` beside the source."""


class UserWideByText(_ByText, UserWideCacheLocator):
    """The user's own cache folder, where the source cannot be written to."""


LOCATORS = ",".join(
    f"{__name__}.{kind.__name__}" for kind in (UserProvidedByText, InTreeByText, UserWideByText)
)


def _cached(function: Function, *, forceinline: bool) -> Function:
    known: Any = config
    kept = known.CACHE_LOCATOR_CLASSES
    known.CACHE_LOCATOR_CLASSES = LOCATORS
    try:
        return cast(Function, njit(cache=True, forceinline=forceinline)(function))
    finally:
        known.CACHE_LOCATOR_CLASSES = kept


def kernel(function: Function) -> Function:
    """Return the function compiled at its first call, or read from the cache."""
    return _cached(function, forceinline=False)


def inlined(function: Function) -> Function:
    """Return a small function compiled into whatever compiled code calls it."""
    return _cached(function, forceinline=True)
