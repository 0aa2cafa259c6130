"""The pillar alone under a ram, for the facts of the trade about rams: set up, pushed in, squeezed.

Pressed.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from meshes.bowed import bowed
from meshes.pillar import PillarShape, build_pillar
from sim import materials
from sim.crush import drawn_back
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Network
from sim.pillar import PillarBuild, pillar_structure
from sim.plan import BaseSpot, PillarSpot, Press, Ram
from sim.ram import ReadyRam, base_stand, friction_of, on_pillar
from sim.ram_hold import RamHold
from sim.state import Drive

SHAPE = PillarShape(spacing_m=0.03, weld_pitch_m=0.025)
SOFT = PillarBuild(
    pressed=materials.PATCH_STEEL, pressed_m=0.0012, closing_m=0.0010, held=("foot",)
)  # an ordinary steel of 350 MPa, its head free


class Pillar:
    """A pillar by itself, at rest or as something has left it; ``point`` is where it stands."""

    def __init__(self, build=SOFT, bow_m=0.0):
        self.mesh = bowed(build_pillar(SHAPE), bow_m)
        self.structure = pillar_structure(self.mesh, build)
        self.network = Network(self.structure)
        stepper = Stepper(self.network, lambda: False)
        self.point = stepper.first_point(self.network.initial_state(), Ledger())

    def disc(self, wall, height_m, reach_m):
        """Return nodes and weights of a pad on the middle of a wall."""
        points, cuts = self.mesh.surface.points, self.mesh.cuts
        own = self.mesh.surface.nodes_of((wall,))
        middle = np.mean([np.interp(height_m, cuts[:, 0], cuts[:, k]) for k in (1, 3)])
        away = np.hypot(points[own, 0] - middle, points[own, 2] - height_m)
        weights = 1.0 - away[away < reach_m] / reach_m
        return own[away < reach_m], weights / weights.sum()

    def driven(self, nodes, weights, way, travel_m, step_m):
        """Push and let off; the pillar stays as it springs back to."""
        points = self.point.state.points
        drive = Drive(nodes, weights, way, float(way @ (weights @ points[nodes])))
        stepper = Stepper(self.network.with_drives([drive]), lambda: False)
        point = replace(self.point, travel_m=0.0, before=None)
        for k in range(round(travel_m / step_m)):
            point = stepper.advance(point, (k + 1) * step_m)
        assert stepper.tally.failed == 0
        self.point = replace(drawn_back(stepper, point), travel_m=0.0, before=None)
        return self

    def pushed_in(self, height_m, travel_m):
        """Push the outer wall inboard, as a crash does, and let off."""
        return self.driven(*self.disc("outer", height_m, 0.06), np.array([0.0, -1.0, 0.0]), travel_m, 0.01)

    def squeezed(self, height_m, closing_m):
        """Close a spreader's tips over inner and outer wall, and let off."""
        inner, outer = self.disc("inner", height_m, 0.055), self.disc("outer", height_m, 0.055)
        nodes = np.concatenate([inner[0], outer[0]])
        weights = np.concatenate([inner[1], -outer[1]])
        return self.driven(nodes, weights, np.array([0.0, 1.0, 0.0]), closing_m, 0.0025)

    def hold(self, head="waffle", surface="bare", height_m=0.45, off_m=0.0, foot=None, level=True):
        """Return a ram set on the inner wall; ``level`` puts its foot at the head's height."""
        ram, foot = Ram(head=head), BaseSpot() if foot is None else foot
        rows = np.arange(len(self.mesh.surface.triangles))
        place = PillarSpot(height_m=height_m, off_m=off_m)
        spot = on_pillar(self.mesh, rows, self.structure.triangles, place)
        place = spot.middle(self.point.state.points)
        stand = base_stand(foot, ram, place, 1.0)
        if level:
            stand = replace(stand, place=np.array([place[0], stand.place[1], place[2]]), floored=False)
        ready = ReadyRam(Press(ram=ram, surface=surface), spot, stand, friction_of(head, surface))
        return RamHold(ready, self.structure, self.point.state.points)

    def set_down(self, **where):
        """Return how a ram stands when it has just been set."""
        hold = self.hold(**where)
        network = self.network.with_drives([hold.drive])
        return hold.now(Stepper(network, lambda: False).first_point(self.point.state, Ledger()))

    def pressed(self, travel_m, step_m=0.005, **where):
        """Drive a ram out until it slips or has gone its way; return its hold and how it stood at each step.

        The last row is how it came to be: "held", or how a slip ended.
        """
        hold = self.hold(**where)
        stepper = Stepper(self.network.with_drives([hold.drive]), lambda: False)
        point = replace(self.point, travel_m=0.0, before=None)
        point = stepper.first_point(point.state, point.ledger)
        rows = [(0.0, hold.now(point), point)]
        for k in range(round(travel_m / step_m)):
            point = stepper.advance(point, (k + 1) * step_m)
            now = hold.now(point)
            rows.append((point.travel_m, now, point))
            force = float(point.force_n.max())
            if hold.presses(force) and hold.punches(now, force):
                return hold, rows, "through"
            if hold.presses(force) and now.margin_rad < 0.0:
                stepper, point, slipped = hold.slip(stepper, point)
                rows.append((point.travel_m, hold.now(point), point))
                if slipped.end != "holds":
                    return hold, rows, slipped.end
        assert stepper.tally.failed == 0
        assert point.ledger.closure_ratio() < 0.02
        return hold, rows, "held"
