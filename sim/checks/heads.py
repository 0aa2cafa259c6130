"""Facts of the trade about rams: smooth heads want a flat spot, points bite and tear, steep lines slip.

The pillar stands alone on its foot, its inner wall flat or bowed to some 60 mm of radius, and the ram is
level from 1.4 m away unless it is said where it stands.  Common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache
from typing import Literal

import numpy as np

from meshes.bowed import bowed
from meshes.pillar import PillarMesh, PillarShape, build_pillar
from sim import materials
from sim.checks.row import TRADE, Row
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Network
from sim.pillar import PillarBuild, pillar_structure
from sim.plan import BaseSpot, PillarSpot, Press, Ram, Surface
from sim.ram import ReadyRam, base_stand, friction_of, on_pillar
from sim.ram_hold import RamHold

Head = Literal["flat", "waffle", "pointed"]
Wall = Literal["flat", "curved", "thin"]

SHAPE = PillarShape(spacing_m=0.03, weld_pitch_m=0.025)
SPACING = "30 mm pillar"
BOW_M = 0.02
ORDINARY = PillarBuild(pressed=materials.PATCH_STEEL, pressed_m=0.0012, closing_m=0.0010, held=("foot",))
THIN = PillarBuild(
    pressed=materials.PATCH_STEEL, pressed_m=0.0020, closing=materials.INNER_STEEL, closing_m=0.0006
)  # held at both ends, its inner wall mild and thin
OFF_M = 0.012  # beside the crown of the bow
STEP_M = 0.0025
ON_WALLS: tuple[tuple[Head, Wall, str], ...] = (
    ("flat", "curved", "slips"),
    ("flat", "flat", "holds"),
    ("pointed", "curved", "holds"),
    ("pointed", "flat", "holds"),
)
ON_THIN_SHEET: tuple[tuple[Head, str], ...] = (("pointed", "goes through"), ("flat", "holds"))
Base = Literal["far_rocker", "tunnel_edge"]
BASE_WORDS: dict[Base, str] = {"far_rocker": "the far rocker", "tunnel_edge": "the tunnel's edge close by"}
LINES: tuple[tuple[Base, float, Surface, str], ...] = (
    ("far_rocker", 0.45, "bare", "holds"),
    ("tunnel_edge", 0.45, "bare", "slips"),
    ("far_rocker", 0.35, "bare", "holds"),
    ("far_rocker", 0.35, "painted", "slips"),
)
"""Where the foot stands, how high the head [m], on what, and what it does within its angle or past it."""


@lru_cache
def _pillar(wall: Wall) -> tuple[PillarMesh, Network]:
    mesh = bowed(build_pillar(SHAPE), BOW_M if wall == "curved" else 0.0)
    return mesh, Network(pillar_structure(mesh, THIN if wall == "thin" else ORDINARY))


def _set(
    wall: Wall, head: Head, height_m: float, off_m: float, foot: BaseSpot, surface: Surface, *, level: bool
) -> tuple[RamHold, Network]:
    """Return a ram set on the inner wall; ``level`` puts its foot at the head's height."""
    mesh, network = _pillar(wall)
    structure = network.structure
    ram, rows = Ram(head=head), np.arange(len(mesh.surface.triangles))
    spot = on_pillar(mesh, rows, structure.triangles, PillarSpot(height_m=height_m, off_m=off_m))
    points = network.initial_state().points
    place = spot.middle(points)
    stand = base_stand(foot, ram, place, 1.0)
    if level:
        stand = replace(stand, place=np.array([place[0], stand.place[1], place[2]]), floored=False)
    move = Press(ram=ram, surface=surface)
    return RamHold(ReadyRam(move, spot, stand, friction_of(head, surface)), structure, points), network


@lru_cache
def end_of(wall: Wall, head: Head, travel_m: float, height_m: float, off_m: float, rib_m: float) -> str:
    """Return what became of a level ram on paint: "holds", "slips" or "goes through"."""
    foot = BaseSpot(rib_m=rib_m)
    return _pressed(*_set(wall, head, height_m, off_m, foot, "painted", level=True), travel_m)


def _pressed(hold: RamHold, network: Network, travel_m: float) -> str:
    stepper = Stepper(network.with_drives([hold.drive]), lambda: False)
    point = stepper.first_point(network.initial_state(), Ledger())
    for k in range(round(travel_m / STEP_M)):
        point = stepper.advance(point, (k + 1) * STEP_M)
        now, force = hold.now(point), float(point.force_n.max())
        if not hold.presses(force):
            continue
        if hold.punches(now, force):
            return "goes through"
        if now.margin_rad < 0.0:
            stepper, point, slipped = hold.slip(stepper, point)
            if slipped.end != "holds":
                return "slips"
    return "holds"


def head_on_wall(head: Head, wall: Wall, wanted: str) -> Row:
    """Return what becomes of a head on paint, a little off the wall's middle."""
    return Row(
        f"{head} head on a {wall} wall, on paint, {1e3 * OFF_M:.0f} mm off its middle",
        TRADE,
        wanted,
        end_of(wall, head, 0.015, 0.45, OFF_M, 0.0),
        relation="same",
        spacing=SPACING,
    )


def head_on_thin_sheet(head: Head, wanted: str) -> Row:
    """Return what becomes of a head on 0.6 mm of mild sheet, square on, the pillar held at both ends."""
    return Row(
        f"{head} head on 0.6 mm of mild inner wall, pressed hard",
        TRADE,
        wanted,
        end_of("thin", head, 0.05, 0.25, 0.0, 0.003),
        relation="same",
        spacing=SPACING,
    )


def line_on_wall(base: Base, height_m: float, surface: Surface, wanted: str) -> Row:
    """Return what becomes of a grooved head whose line is off square: within its angle or past it."""
    made = _set("flat", "waffle", height_m, 0.0, BaseSpot(base=base), surface, level=False)
    on = {"bare": "bare metal", "painted": "paint"}.get(surface, surface)
    return Row(
        f"ram from {BASE_WORDS[base]} to {height_m:.2f} m up, grooved head on {on}",
        TRADE,
        wanted,
        _pressed(*made, 0.01),
        relation="same",
        spacing=SPACING,
    )
