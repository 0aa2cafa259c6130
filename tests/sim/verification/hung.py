"""How an end of the pillar hangs on what gives: its flanges drawn off one by one, and all moved as one."""

from __future__ import annotations

import numpy as np

from sim.network import Load

TURN_RAD, SHIFT_M = 0.4, np.array([0.01, -0.05, 0.03])


def flange_of_spot(side, end):
    """Return the flange of every spot of an end ("head", "foot"), in the order of the pillar's own list."""
    welds = side.side.pillar.welds.items()
    return np.array([name for name, item in welds if name.startswith(end) for _ in item.points])


def hold_that_flanges_peel_and_press(side, end, spots):
    """Hold that 1 mm along a flange's own way off opens each of its spots by 1 mm; the other way it presses.

    Parameters
    ----------
    spots : numbers of the end's bonds, in the order of `flange_of_spot`
    """
    flanges = flange_of_spot(side, end)
    first, pillar = side.first["pillar"], side.side.pillar
    for name in np.unique(flanges):
        for way in (1.0, -1.0):
            points = side.start.points.copy()
            points[pillar.surface.nodes[name] + first] += way * 1.0e-3 * pillar.welds[name].away[0]
            ev = side.network.evaluate(points, side.start, Load())
            mine = spots[flanges == name]
            np.testing.assert_allclose(ev.opening[mine], way * 1.0e-3, rtol=1e-9)
            assert (np.sign(ev.normal_force[mine]) == way).all()


def moved_as_one(side, nodes):
    """Return what the metal answers to the pillar and some nodes shifted and turned as one about these."""
    c, s = np.cos(TURN_RAD), np.sin(TURN_RAD)
    turn = np.array([[1, 0, 0], [0, c, -s], [0, s, c]])
    points = side.start.points.copy()
    moved = np.concatenate([np.unique(side.pillar_triangles), nodes])
    middle = points[nodes].mean(axis=0)
    points[moved] = (points[moved] - middle) @ turn.T + middle + SHIFT_M
    return side.network.evaluate(points, side.start, Load())
