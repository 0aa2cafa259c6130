"""What a test may not leave behind: a thread, a process, a timer, a widget, a VTK object.

Threads, processes and windows are looked for after every test; timers that run and VTK objects after every
module of tests, since finding them takes a walk through all of Python's objects. What a fixture of a wider
scope holds was there before the test, and is let go before the module is looked at.
"""

from __future__ import annotations

import gc
import multiprocessing
import sys
import threading
import time
from collections import Counter

PATIENCE_S = 5.0
"""How long a thread or a process may take to end after its test."""
POOLS = ("ThreadPoolExecutor", "pydevd", "raylet")
"""Threads of libraries that stay for the whole run."""

OURS = ("ui.", "tests.", "pyvistaqt", "pyqtgraph")
"""Where the classes of our own windows and of those of drawing libraries stand."""


def _module(name):
    return sys.modules.get(name)


def threads():
    """Return the threads that run, but those of libraries that stay."""
    return {t for t in threading.enumerate() if not t.name.startswith(POOLS)}


def processes():
    """Return the processes that were started and run."""
    return set(multiprocessing.active_children())


def windows():
    """Return the ids and names of windows that are not yet deleted; none where there is no Qt.

    A widget without a parent counts when it is one of ours or is seen: Qt keeps hidden ones of its own.
    """
    qt = _module("PySide6.QtWidgets")
    if qt is None or qt.QApplication.instance() is None:
        return {}
    shiboken = _module("shiboken6")
    found = [w for w in qt.QApplication.topLevelWidgets() if shiboken is None or shiboken.isValid(w)]
    ours = [w for w in found if w.parent() is None and (type(w).__module__.startswith(OURS) or w.isVisible())]
    return {id(w): f"{type(w).__name__} {w.windowTitle()!r}" for w in ours}


def delete_later():
    """Let Qt delete what was given to it to be deleted."""
    core = _module("PySide6.QtCore")
    if core is not None and core.QCoreApplication.instance() is not None:
        core.QCoreApplication.sendPostedEvents(None, core.QEvent.Type.DeferredDelete.value)


def draws():
    """Tell whether there is anything of Qt or VTK in this process; without, no walk is worth its while."""
    return _module("PySide6.QtCore") is not None or _module("vtkmodules.vtkCommonCore") is not None


def lasting():
    """Return how many timers run, by the name of what they belong to, and how many VTK objects there are."""
    timers, drawn = Counter(), Counter()
    core, shiboken = _module("PySide6.QtCore"), _module("shiboken6")
    vtk = _module("vtkmodules.vtkCommonCore")
    qtimer = core.QTimer if core is not None and shiboken is not None else ()
    base = vtk.vtkObjectBase if vtk is not None else ()
    for thing in gc.get_objects() if qtimer or base else ():
        if isinstance(thing, base):
            drawn[type(thing).__name__] += 1
        elif isinstance(thing, qtimer) and shiboken.isValid(thing) and thing.isActive():
            timers[type(thing.parent()).__name__] += 1
    return timers, drawn


class AfterEach:
    """Threads, processes and windows before a test, and what is left of it."""

    def __init__(self):
        self._threads, self._processes, self._windows = threads(), processes(), windows()

    def left(self):
        """Return what the test has left, in words; a thread or process that is about to end may end."""
        end = time.monotonic() + PATIENCE_S
        while (threads() - self._threads or processes() - self._processes) and time.monotonic() < end:
            time.sleep(0.02)
        out = [f"thread {t.name!r}" for t in threads() - self._threads]
        out += [f"process {p.name!r}" for p in processes() - self._processes]
        for let_go in (delete_later, gc.collect, delete_later):
            if not windows().keys() - self._windows.keys():
                break
            let_go()
        now = windows()
        return out + [f"window {now[key]}" for key in now.keys() - self._windows.keys()]


class AfterModule:
    """Running timers and VTK objects before a module of tests, and what is left of it."""

    def __init__(self):
        self._timers, self._drawn = lasting()

    def left(self):
        """Return what the module has left, in words."""
        out = []
        for _ in range(3 if draws() else 0):  # what Qt deletes lets go of cycles, and those of more
            delete_later()
            gc.collect()
            timers, drawn = lasting()
            out = [f"{n} running timer(s) of {name}" for name, n in (timers - self._timers).items()]
            out += [f"{n} {name}" for name, n in (drawn - self._drawn).items()]
            if not out:
                break
        return out
