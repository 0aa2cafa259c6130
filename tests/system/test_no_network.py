"""The program asks nothing of any network: a run, the window and a lesson with every way out nailed up."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

pytest.importorskip("PySide6")

pytestmark = [pytest.mark.gl, pytest.mark.timeout(200)]

ROOT = Path(__file__).resolve().parents[2]
NAILED = """
import socket, sys

def refused(*words, **named):
    raise RuntimeError(f"something asked for a network: {words}")

made = socket.socket.__init__

def only_of_this_machine(self, family=-1, *words, **named):
    if family in (-1, socket.AF_INET, getattr(socket, "AF_INET6", None)):
        refused("socket", family)
    made(self, family, *words, **named)

socket.socket.__init__ = only_of_this_machine
socket.create_connection = socket.getaddrinfo = socket.gethostbyname = refused
"""
WINDOW = (
    NAILED
    + """
import time
from pathlib import Path
from ui.app import App, prepare_application

application = prepare_application()
app = App(folder=Path(sys.argv[1]))
app.start()

def until(true):
    end = time.monotonic() + 120
    while not true():
        assert time.monotonic() < end
        application.processEvents()
        time.sleep(0.005)

until(lambda: app.side is not None and app.session.model is not None and not app.session.queue.busy)
app.filing.caution_read()
app.session.run_selected_to(0.005)
until(lambda: not app.session.queue.busy)
for name in ("lesson_01-first-bite", "words", "here", "log", "find", "card"):
    app.acting.act(name)
    end = time.monotonic() + 0.2
    until(lambda: time.monotonic() > end)
fetched = [name for name in sys.modules if name.startswith(("PySide6.QtNetwork", "PySide6.QtWebEngine"))]
app.window.close()
assert not fetched, fetched
print("no network was asked for")
"""
)
TRIED = (
    NAILED
    + """
import urllib.request
urllib.request.urlopen("http://127.0.0.1:9/")
"""
)


def run(script, *words):
    return subprocess.run(
        [sys.executable, "-c", script, *words], capture_output=True, text=True, check=False, timeout=180,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
    )  # fmt: skip


def test_the_window_asks_for_no_network(tmp_path):
    done = run(WINDOW, str(tmp_path))
    assert done.returncode == 0, done.stderr[-2000:]
    assert "no network was asked for" in done.stdout


def test_the_nails_hold():
    done = run(TRIED)
    assert done.returncode != 0
    assert "something asked for a network" in done.stderr
