"""Writes down what the program, Qt and Python say while it runs, for the report."""

from __future__ import annotations

import sys
import sysconfig
import traceback
from collections.abc import Callable
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QMessageLogContext, QtMsgType, qInstallMessageHandler

from ui.state.events_log import EventsLog

FAULT = "The program met a fault; what you did is kept. Help, What happened in the program, has a report."
ROOT = str(Path(__file__).resolve().parents[1])


def new_log() -> EventsLog:
    """Return a log in which files of the program and its libraries may be named."""
    return EventsLog((ROOT, sysconfig.get_paths()["purelib"], sysconfig.get_paths()["stdlib"]))


def listen(log: EventsLog, tell: Callable[[str], object] | None = None) -> None:
    """Write down what Qt says and what nobody catches; both still go to the error stream.

    Parameters
    ----------
    tell : called with a sentence for the reader after a fault that nobody caught
    """
    before = sys.excepthook

    def caught(kind: type[BaseException], fault: BaseException, trace: TracebackType | None) -> None:
        log.note("fault", "".join(traceback.format_exception(kind, fault, trace)))
        before(kind, fault, trace)
        if tell is not None and issubclass(kind, Exception):
            tell(FAULT)

    def of_qt(_kind: QtMsgType, _context: QMessageLogContext, text: str) -> None:
        log.note("Qt", text)
        sys.stderr.write(f"{text}\n")

    sys.excepthook = caught
    qInstallMessageHandler(of_qt)
