"""Time the drawing of moments, by hand, CPU of all threads together:

    PYTHONPATH=. python tests/benchmarks/draw_side.py

Door and side, one view and two that share a camera, plain and cut by a plane: each moment moves all nodes,
paints them and draws once. Printed: milliseconds of CPU a moment, what of it is ours and what the renderer's,
moments a second on two cores (half the CPU time each), and renders a moment. Asked: 15 a second in one view,
10 in two or while a solve takes one of the cores, one render a moment.
"""

from __future__ import annotations

import time

from ui.scene import headless

headless.prepare()

import numpy as np  # noqa: E402
import pyvista  # noqa: E402

from sim.door_model import build_model  # noqa: E402
from sim.plan import Car  # noqa: E402
from ui.scene.stage import Stage  # noqa: E402
from ui.state.seeing import CutPlane  # noqa: E402

SIZE = (1280, 720)
MOMENTS = 24
ASKED = {1: 15.0, 2: 10.0}


def stages(model, count):
    """Return some stages that show a model and look through one camera, and their plotters."""
    plotters = [
        pyvista.Plotter(off_screen=True, window_size=[SIZE[0] // count, SIZE[1]], lighting="none")
        for _ in range(count)
    ]
    made = [Stage(plotter) for plotter in plotters]
    for stage in made:
        stage.set_model(model)
        stage.renderer.SetActiveCamera(made[0].renderer.GetActiveCamera())
        stage.show_start_ghost(True)
    return made, plotters


def moments(model):
    """Return shapes that bend outward more and more, the whole of the metal moving."""
    rest = model.start.points
    bow = np.exp(-(((rest[:, 0] - 0.9) / 0.5) ** 2))
    for share in np.linspace(0.0, 1.0, MOMENTS):
        points = rest.copy()
        points[:, 1] += model.outboard_sign * 0.15 * share * bow
        yield points


def timed(model, count, plane):
    """Return CPU seconds of ours and of the renderer, and renders, over all moments of some views."""
    shown, plotters = stages(model, count)
    renders = []
    for stage, plotter in zip(shown, plotters, strict=True):
        stage.set_cut(plane)
        plotter.render_window.Render()
        plotter.render_window.AddObserver("EndEvent", lambda *_: renders.append(1))
    ours = drawing = 0.0
    for points in moments(model):
        for stage, plotter in zip(shown, plotters, strict=True):
            start = time.process_time()
            stage.show_points(points)
            between = time.process_time()
            plotter.render_window.Render()
            drawing += time.process_time() - between
            ours += between - start
    for stage, plotter in zip(shown, plotters, strict=True):
        stage.close()
        plotter.close()
    return ours, drawing, len(renders)


def main():
    """Print one line per picture."""
    models = {"door": build_model(Car()), "side": build_model(Car(extent="side"))}
    for name, model in models.items():
        for count in (1, 2):
            for words, plane in (("plain", None), ("cut", CutPlane("level", 0.36))):
                ours, drawing, renders = timed(model, count, plane)
                whole = (ours + drawing) / MOMENTS
                rate = 2.0 / whole
                print(
                    f"{name}, {count} view{'s' * (count > 1)}, {words}: {1e3 * whole:.0f} ms of CPU a moment "
                    f"({1e3 * ours / MOMENTS:.0f} ours, {1e3 * drawing / MOMENTS:.0f} drawing), "
                    f"{rate:.0f} a second on two cores, {rate / ASKED[count]:.1f} x what is asked, "
                    f"{renders / MOMENTS / count:.0f} render a moment and view"
                )


if __name__ == "__main__":
    main()
