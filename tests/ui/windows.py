"""The program's window as tests open it with nobody at mouse and keys, and as every test closes it."""

from __future__ import annotations

from contextlib import contextmanager


@contextmanager
def closing(app, qtbot):
    """Yield the program; its window is closed and deleted afterwards, whatever the test came to."""
    try:
        yield app
    finally:
        app.window.close()
        app.window.deleteLater()
        qtbot.wait(10)


def started(app):
    """Start the program with its window in the screen's corner: there is no window manager."""
    app.window.move(0, 0)
    app.window.resize(1280, 720)
    app.start()


def staged(app, qtbot):
    """Wait until stage and car stand."""
    qtbot.waitUntil(lambda: app.side is not None and app.session.model is not None, timeout=60_000)


@contextmanager
def at_work(app, qtbot, *, plan=None, size=(1280, 720), solved=False):
    """Yield the program at work with the caution read; no stage is made.

    Parameters
    ----------
    plan : file to begin with; the ready one if left out
    size : of the window, in pixels
    solved : whether the car has to be set out before anything is looked at
    """
    with closing(app, qtbot):
        app.window.resize(*size)
        app.window.show()
        app.filing.caution_read()
        app.filing.open_first(plan)
        if solved:
            qtbot.waitUntil(lambda: app.session.model and not app.session.queue.busy, timeout=60_000)
        app.showing.show_dirty()
        qtbot.wait(20)
        yield app
