"""Time the window while a side is solved, by hand, on a screen of its own:

    PYTHONPATH=. xvfb-run -s "-screen 0 1920x1080x24" python tests/benchmarks/draw_while_solving.py [thread]

The real window at 1280 x 720 shows a whole side; its view is turned by a degree a frame, first while nothing
is worked out, then while a spread is: by the solver's process, or with ``thread`` in the window's own thread,
to see what that would cost. Printed: frames a second, the longest wait for one, CPU milliseconds a frame of
the window's process, how many moments came in. Asked: 20 a second at rest, 10 while solving (two free cores).
"""

from __future__ import annotations

import os
import sys
import tempfile
import time
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "xcb")

from sim.plan import Car, Plan, Spread
from ui import jobs
from ui.app import App, prepare_application

SECONDS = 12.0
PLAN = Plan(title="Timed", car=Car(extent="side"), moves=(Spread(opening_m=0.1),))


def wait(application, until, most_s=240.0):
    """Let the window work until something is so."""
    end = time.perf_counter() + most_s
    while not until() and time.perf_counter() < end:
        application.processEvents()
        time.sleep(0.005)
    assert until()


def turned(application, app, seconds):
    """Turn the view for some seconds, a frame as soon as the last one is drawn; print what it took."""
    view, drawn = app.side.view, []
    view.frameSwapped.connect(lambda: drawn.append(time.perf_counter()))
    moments, began, cpu = len(app.session.timeline), time.perf_counter(), time.process_time()
    asked = 0
    while time.perf_counter() - began < seconds:
        if len(drawn) >= asked:
            view.renderer.GetActiveCamera().Azimuth(1.0 if (asked // 30) % 2 else -1.0)
            view.request_frame()
            asked = len(drawn) + 1
        application.processEvents()
        time.sleep(0.0005)
    whole = time.perf_counter() - began
    cpu = time.process_time() - cpu
    gaps = [b - a for a, b in zip([began, *drawn], drawn, strict=False)]
    print(
        f"  {len(drawn) / whole:.1f} frames a second, longest wait {1e3 * max(gaps, default=whole):.0f} ms, "
        f"{1e3 * cpu / max(1, len(drawn)):.0f} ms of CPU of the window's process a frame, "
        f"{len(app.session.timeline) - moments} moments came in"
    )


def main():
    """Print a line at rest and one while solving."""
    if "thread" in sys.argv:
        jobs._is_of_a_side = lambda _: False
    application = prepare_application()
    folder = Path(tempfile.mkdtemp())
    app = App(folder=folder)
    app.window.resize(1280, 720)
    app.start()
    app.window.show_page("work")
    wait(application, lambda: app.side is not None and app.session.model is not None)
    app.session.document.open(PLAN, None)
    wait(application, lambda: app.session.model is not None and not app.session.queue.busy)
    application.processEvents()
    load = os.getloadavg()[0]
    print(f"at rest (load of the machine {load:.1f}):")
    turned(application, app, SECONDS / 2)
    app.session.run()
    wait(application, lambda: len(app.session.timeline) > 1)
    print(f"while the side is solved (load of the machine {os.getloadavg()[0]:.1f}):")
    turned(application, app, SECONDS)
    app.session.stop()
    app.window.close()


if __name__ == "__main__":
    main()
