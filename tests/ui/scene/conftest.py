"""Doors and shapes for the scene's tests. The shapes are invented: the scene only draws what it is given."""

from __future__ import annotations

import gc
from types import SimpleNamespace

import numpy as np
import pytest

from sim.door_model import build_model
from sim.plan import Car
from sim.record import Aim, Clearance


@pytest.fixture(scope="session")
def model():
    """Return the default door."""
    return build_model(Car())


@pytest.fixture(scope="session")
def left_model():
    """Return its mirror image."""
    return build_model(Car(side="left"))


def moved(model, reach_m: float = 0.10):
    """Return a frame in which the skin's latch edge stands out and the rest has gone in a little."""
    points = model.start.points.copy()
    x, z = model.start.points[:, 0], model.start.points[:, 2]
    skin = model.mesh.surface.nodes_of(("outer_skin",))
    near = np.clip(1.0 - np.hypot((x - 1.0) / 0.32, (z - 0.36) / 0.24), 0.0, 1.0)
    far = np.exp(-(((x - 0.45) / 0.2) ** 2) - ((z - 0.3) / 0.2) ** 2)
    points[skin, 1] += model.outboard_sign * (reach_m * near - 0.3 * reach_m * far)[skin]
    bonds = model.structure.bonds
    seam = bonds.of("seam") | bonds.of("weld")
    gap = np.einsum("kj,kji->ki", bonds.coefficients[seam, 0], points[bonds.nodes[seam]])
    load = np.exp(-np.hypot(x - 1.0, z - 0.36) / 0.2)[model.mesh.surface.triangles].mean(axis=1)
    reactions = {
        "latch": (3000.0, 0.0, 0.0),
        "upper hinge": (900.0, 0.0, 0.0),
        "lower hinge": (900.0, 0.0, 0.0),
    }
    start = model.mesh.section_point(model.mesh.edge_station("latch_edge", 0.36), 0.005)[1]
    stations = np.linspace(0.36, 0.60, 9)
    hem = [model.mesh.section_point(model.mesh.edge_station("latch_edge", z), 0.005)[1] for z in stations]
    along = [int(skin[np.argmin(np.linalg.norm(points[skin] - place, axis=1))]) for place in hem]
    pairs = np.column_stack((along[:-1], along[1:]))
    return SimpleNamespace(
        points=points, seam_damage=np.clip(np.linalg.norm(gap, axis=1) / 0.012, 0.0, 1.0), load=load,
        clearance=Clearance(0.08, (0.7, -0.1, 0.3), (0.7, -0.18, 0.3), "pelvis"), reactions=reactions,
        drive_points=start[None], drive_forces=np.array([[-3000.0, 0.0, 0.0]]),
        force_n=3000.0, opening_m=0.06, triangles=None, barrier=None, path_pairs=pairs,
        path_flow_n=np.full(len(pairs), 900.0),
    )  # fmt: skip


@pytest.fixture
def frame(model):
    """Return the default door moved."""
    return moved(model)


def aim_at(model, tilt_rad: float, depth_m: float = 0.005) -> Aim:
    """Return an aim at the latch edge with a given outward turn."""
    sign = model.outboard_sign
    station = model.mesh.edge_station("latch_edge", 0.36)
    tip = model.mesh.section_point(station, depth_m)[1]
    pad = tip + np.array([[0.0, sign * y, z] for y in (-0.015, 0.015) for z in (-0.025, 0.025)])
    direction = np.array([-np.cos(tilt_rad), sign * np.sin(tilt_rad), 0.0])
    return Aim(
        np.array([tip, tip + np.array([0.006, 0.0, 0.0])]), direction, float(np.sin(tilt_rad)), 0.9,
        ("hem lip", "pillar edge"), pad, station,
    )  # fmt: skip


@pytest.fixture
def plotter():
    """Return a small off-screen plotter, closed afterwards."""
    import pyvista

    made = pyvista.Plotter(off_screen=True, window_size=(480, 360), lighting="none")
    yield made
    made.close()
    gc.collect()


@pytest.fixture
def stage(plotter, model):
    """Return a stage that shows the default door."""
    from ui.scene.stage import Stage

    made = Stage(plotter)
    made.set_model(model)
    yield made
    made.close()


def pixels(stage):
    """Return what a stage draws now, shape (height, width, 3), as whole numbers."""
    from ui.scene.picture import grab

    return np.asarray(grab(stage.plotter), dtype=np.int64)
