"""Plastic collapse of thick round plates: how much a plate carries once its layers flow.

Thick, so that collapse comes at a sag small against the thickness, before the membrane takes over: a skin of
0.7 mm over a door's span never gets that far and carries as a membrane instead.

References
----------
[save-massonnet-1972] supported plate under a point load 2 pi m, under even load 6 pi m, clamped under even
load 11.26 pi m in all (Tresca), m = s t^2 / 4.  Steel here yields by von Mises, up to 15 % later.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from meshes import lattice
from sim.checks import specimens
from sim.checks.row import Row
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive, Network

RADIUS_M, THICKNESS_M, YIELD_PA = 0.06, 5.0e-3, 200.0e6
MOMENT_N = YIELD_PA * THICKNESS_M**2 / 4.0
SAG = 0.3
"""Sag of the middle over the thickness at which the load is read."""
# load over pi m; mean sag over the middle's for the travel of an even load
CASES = {
    ("supported", "point"): (2.0, 1.0),
    ("supported", "even"): (6.0, 0.45),
    ("clamped", "even"): (11.26, 0.45),
}


@lru_cache
def collapse_n(edge: str, load: str, rings: int) -> float:
    """Return the load of a round plate at a sag of three tenths of its thickness [N]."""
    lat = lattice.disc(RADIUS_M, rings)
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(yield_pa=YIELD_PA))
    rim = lat.boundary["rim"]
    if edge == "supported":
        structure = specimens.held(structure, (rim, "z"), ([0], "xy"), ([int(rim[0])], "y"))
    else:
        structure = specimens.clamped(structure, rim)
    nodes, weights = np.array([0]), np.ones(1)
    if load == "even":
        even = specimens.spread_over(np.array(lat.points), np.array(lat.triangles), (0.0, 0.0, 1.0))[:, 2]
        nodes, weights = np.arange(len(even)), even / even.sum()
    drive = Drive(nodes, weights, np.array([0.0, 0.0, 1.0]), 0.0, stiffness_n_per_m=1.0e10)
    network = Network(structure, [drive])
    stepper = Stepper(network, specimens.never, viscous_n_per_m=0.0)
    point = stepper.first_point(network.initial_state(), Ledger())
    for share in (0.1, 0.2, 0.4, 0.6, 0.8, 1.0):
        point = stepper.advance(point, share * SAG * THICKNESS_M * CASES[edge, load][1])
    if stepper.tally.failed:
        raise specimens.NotSolvedError("an increment of the sagging plate did not converge")
    return float(point.force_n[0])


def collapse(edge: str, load: str, rings: int) -> Row:
    """Return a round plate's collapse load."""
    # 15 %, the case's allowance
    return Row(
        f"thick round plate, {edge}, {load} load: collapse",
        "save-massonnet-1972",
        float(CASES[edge, load][0] * np.pi * MOMENT_N) / 1e3,
        collapse_n(edge, load, rings) / 1e3,
        "kN",
        0.15,
        spacing=f"{rings} rings",
    )
