"""The rigid body as drawn is the one that presses: every point on its surface, every normal its slope."""

import numpy as np
import pytest

from sim.rigid import Barrier
from ui.scene.barrier import barrier_solid

BODIES = {
    "cylinder": (np.array([0.14, 0.0, 0.25]), 0.0125, False),
    "pole": (np.array([0.0, 0.0, 0.20]), 0.10, False),
    "face": (np.array([0.20, 0.05, 0.15]), 0.02, True),
}


@pytest.mark.parametrize("body", BODIES)
def test_drawn_points_lie_on_the_surface_and_normals_point_out(body):
    core, rounding, box = BODIES[body]
    way = np.array([0.6, -0.8, 0.0])
    barrier = Barrier(core, rounding, box, np.array([0.4, 1.0, 0.3]), way, np.arange(1))
    points, triangles, normals = barrier_solid(barrier, 0.3)
    np.testing.assert_allclose(barrier.distance(points, 0.3), 0.0, atol=1e-12)
    np.testing.assert_allclose(np.linalg.norm(normals, axis=1), 1.0, atol=1e-12)
    assert barrier.distance(points + 1e-3 * normals, 0.3).min() > 0.9e-3
    corner = points[triangles]
    face = np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0])
    large = np.linalg.norm(face, axis=1) > 1e-9
    assert (np.einsum("ij,ij->i", face[large], normals[triangles[large, 0]]) > 0.0).all()
