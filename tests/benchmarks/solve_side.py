"""Time a push on the whole side, by hand, one thread:

    OMP_NUM_THREADS=1 PYTHONPATH=. python tests/benchmarks/solve_side.py [side ...]

Two doors and the pillar between them, pushed apart at the front door's latch, behind the inner bend against
the pillar's edge, 30 mm; the line printed is that of `solve_move.py`.
"""

import sys
import time

import numpy as np
from solve_move import line, timed_push

from meshes.side import build_side
from meshes.side_shape import SIDES
from sim.network import Drive, Network
from sim.plan import Car
from sim.side_model import side_structure

PAD_M = 0.035
DIRECTION = np.array([-1.0, 1.0, 0.0]) / np.sqrt(2.0)


def pad(points, nodes, height_m):
    """Return nodes and weights of a pad on a chain of nodes at a height."""
    middle = points[nodes[np.argmin(np.abs(points[nodes, 2] - height_m))]]
    away = np.linalg.norm(points[nodes] - middle, axis=1)
    near = away < PAD_M
    weights = 1.0 - away[near] / PAD_M
    return nodes[near], weights / weights.sum()


def latch_drive(mesh, side, height_m):
    """Return the drive of two tips between the front door's inner bend and the pillar's edge."""
    points = side.structure.points
    first, last = mesh.front.edges["latch_edge"]
    door, on_door = pad(points, mesh.front.wall[-1, first : last + 1], height_m)
    edge = mesh.pillar.surface.chains["front_outer_edge"] + side.first["pillar"]
    post, on_post = pad(points, edge, height_m)
    nodes, weights = np.concatenate([door, post]), np.concatenate([on_door, -on_post])
    return Drive(nodes, weights, DIRECTION, float(DIRECTION @ (weights @ points[nodes])))


def main():
    """Print one line per side."""
    for name in sys.argv[1:] or SIDES:
        start = time.process_time()
        mesh = build_side(SIDES[name])
        side = side_structure(Car(), mesh)
        network = Network(side.structure, [latch_drive(mesh, side, SIDES[name].front.latch_height_m)])
        print(
            f"{name}: set out in {time.process_time() - start:.2f} s of CPU, sheets {mesh.sheet_node_count}"
        )
        timed_push(network, network.initial_state(), 0.0025)
        print(line(name, len(side.structure.points), timed_push(network, network.initial_state(), 0.03)))


if __name__ == "__main__":
    main()
