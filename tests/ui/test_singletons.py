"""Thousands of signals leave the process alive: True and None do not run out of references."""

import subprocess
import sys

import pytest

from ui.singletons import needed

EMITS = """
from ui.app import prepare_application
application = prepare_application()
from PySide6.QtCore import QObject, Signal
class Bell(QObject):
    rung = Signal(object)
bell = Bell()
for _ in range(20000):
    bell.rung.emit(None)
print("alive")
"""


def test_twenty_thousand_signals_do_not_end_the_process():
    done = subprocess.run(
        [sys.executable, "-c", EMITS], capture_output=True, text=True, check=False, timeout=60
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.strip() == "alive"


@pytest.mark.parametrize(
    ("python", "binding", "wanted"),
    [
        ((3, 11), (6, 12), True),
        ((3, 11), (6, 11), False),
        ((3, 12), (6, 12), False),
        ((3, 13), (6, 13), False),
    ],
)
def test_the_guard_is_set_where_the_fault_is(python, binding, wanted):
    assert needed(python, binding) is wanted
