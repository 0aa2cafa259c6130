"""A machine on which no window can draw in three dimensions: still pictures in the stage's place."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

pytest.importorskip("PySide6")

pytestmark = [pytest.mark.gl, pytest.mark.timeout(200)]

ROOT = Path(__file__).resolve().parents[2]
SCRIPT = """
import json, sys, time
from pathlib import Path
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest
from ui.app import App, prepare_application

application = prepare_application()
app = App(folder=Path(sys.argv[1]))
app.window.resize(1024, 700)
app.start()

def until(true):
    end = time.monotonic() + 120
    while not true():
        if time.monotonic() > end:
            raise TimeoutError
        application.processEvents()
        time.sleep(0.005)

def drawn():
    until(lambda: view._image is not None)
    before = view._image.cacheKey()
    def then(change):
        change()
        until(lambda: view._image.cacheKey() != before)
        return view._image.copy()
    return then

until(lambda: app.side is not None and app.session.model is not None)
app.filing.caution_read()
view = app.side.view
first = drawn()(view.request_frame)
turned = drawn()(lambda: app.acting.act("see_latch"))
clicked = []
view.clicked.connect(clicked.append)
QTest.mouseClick(view, Qt.MouseButton.LeftButton, pos=view.rect().center())
told = {
    "view": type(view).__name__,
    "notice": app.window.notice.words.text(),
    "tones": len({first.pixel(x, y) for x in range(9, 600, 7) for y in range(9, 400, 7)}),
    "turned": first != turned,
    "clicked": bool(clicked and clicked[0] is not None),
    "here": app.help._machine(),
}
app.window.close()
print(json.dumps(told))
"""


def test_the_stage_shows_still_pictures_where_no_window_can_draw(tmp_path):
    """Qt is told to have no drawing at all; the pictures are drawn without a window."""
    variables = os.environ | {"PYTHONPATH": str(ROOT), "QT_XCB_GL_INTEGRATION": "none"}
    command = [sys.executable, "-c", SCRIPT, str(tmp_path)]
    done = subprocess.run(command, capture_output=True, text=True, env=variables, check=False, timeout=180)
    assert done.returncode == 0, done.stderr[-2000:]
    told = json.loads(done.stdout.splitlines()[-1])
    assert told["view"] == "StillView"
    assert "still pictures" in told["notice"]
    assert told["tones"] > 40
    assert told["turned"]
    assert told["clicked"]
    assert "still pictures can be drawn - enough" in told["here"]


def test_the_command_tells_what_is_missing(tmp_path):
    variables = os.environ | {
        "PYTHONPATH": str(ROOT), "QT_XCB_GL_INTEGRATION": "none", "XDG_CONFIG_HOME": str(tmp_path)
    }  # fmt: skip
    command = [sys.executable, "-c", "from ui.command import main; import sys; sys.exit(main())", "here"]
    done = subprocess.run(command, capture_output=True, text=True, env=variables, check=False, timeout=120)
    assert done.returncode == 0, done.stderr[-2000:]
    assert "drawing: no window can draw; still pictures can be drawn - enough." in done.stdout
    assert "memory:" in done.stdout
    assert str(Path.home()) not in done.stdout
