"""A guard against a fault of the Qt binding that ends the process.

PySide6 6.12.0 on Python 3.11 gives back one reference too few to True at each emit of a signal, and to None
in other calls (measured: 200 emits, 200 references lost; 6.11.3 loses none). Some thousand signals later
Python stops with "deallocating True or False". From Python 3.12 on these objects are never counted.
"""

from __future__ import annotations

import ctypes
import sys

import PySide6

FAULTY_FROM = (6, 12)
COUNTED_BEFORE = (3, 12)
RESERVE = 1 << 40
"""References put in store: more than could be lost in years."""


def needed(python: tuple[int, int], binding: tuple[int, int]) -> bool:
    """Tell whether this pair of versions needs the guard."""
    return python < COUNTED_BEFORE and binding >= FAULTY_FROM


def keep_singletons() -> bool:
    """Put references to True, False and None in store where needed; return whether it was."""
    version = PySide6.__version_info__
    if not needed(sys.version_info[:2], (int(version[0]), int(version[1]))):
        return False
    for thing in (True, False, None):
        # The count is the first field of every object of this Python.
        count = ctypes.c_ssize_t.from_address(id(thing))
        if count.value < RESERVE:
            count.value += RESERVE
    return True
