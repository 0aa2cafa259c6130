"""The setting of the stage: ground, car body and occupant round the worked metal, made and painted."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from meshes.side import SideMesh
from ui.scene import surroundings
from ui.scene.cast import Cast
from ui.scene.colours import Theme, rgb, word_of
from ui.scene.drawn import Drawn, Shading
from ui.scene.pick import Solid

Floats = NDArray[np.float64]

THINGS = {"body": ("body", "body_edges", "car", "seats"), "occupant": ("occupant",)}
"""Names on the cast by layer; ground, grid and marks always stand."""


class Setting:
    """What stands round one model on one cast and never moves.

    Parameters
    ----------
    model : a door model, or a side's, which brings its own members, seats and ground
    """

    def __init__(self, cast: Cast, model, sign: float) -> None:
        self.cast, self.model, self.sign = cast, model, sign
        self.side: SideMesh | None = getattr(model, "side", None)
        self._solids: dict[str, list[Solid]] = {}
        self._make_ground()
        still = model.rigid
        if self.side is None:
            body = surroundings.standing(model.body, still)
            solid, edges = surroundings.body_solid(body), surroundings.body_edges(body)
        else:
            members = [one for name, one in self.side.members.items() if name in still]
            solid, edges = surroundings.member_solid(members), surroundings.member_edges(members)
            cast.solid("seats", *surroundings.seat_solid(self.side)).set_light(0.62, 0.36)
        body = cast.solid("body", *solid)
        body.set_light(0.68, 0.32)
        body.stand_behind()
        cast.lines("body_edges", edges, 1.2)
        occupant = cast.solid("occupant", *surroundings.occupant_solid(model.occupant))
        occupant.set_light(0.66, 0.32)
        occupant.hide_backs()

    def _make_ground(self) -> None:
        cast, sign = self.cast, self.sign
        lot = surroundings.Lot() if self.side is None else surroundings.lot_of(self.side)
        points, triangles, self._dark = surroundings.shadow_patch(sign, lot)
        grid = surroundings.grid_lines(sign, lot)
        self._flat = grid.reshape(-1, 3)
        around = self.model.structure.surround if self.side is not None else None
        if around is not None and around.ground is not None and abs(around.ground.normal[2]) < 0.5:
            up = around.ground.normal  # on its side: nothing of what lies under the wheels is there
            cast.lines("grid", surroundings.laid_on_side(grid, float(up[1]) * around.ground.level_m), 1.0)
            cast.lines("marks", surroundings.down_arrow(-up, lot), 3.0)
        else:
            cast.admit("shadow", Drawn("ground", points, triangles=triangles, shading=Shading.PLAIN))
            cast.lines("grid", grid, 1.0)
            cast.lines("marks", surroundings.floor_marks(sign, lot), 1.6)
        cast.lines("car", surroundings.car_lines(sign, lot), 1.2)
        self._lot = lot

    def things(self, layer: str) -> list[Drawn]:
        """Return the drawn things of "body" or "occupant"."""
        return [self.cast[name] for name in THINGS[layer] if name in self.cast]

    def paint(self, theme: Theme) -> None:
        """Colour it for a theme."""
        cast = self.cast
        half = word_of(0.5 * (rgb(theme.grid) + rgb(theme.body_edge)))
        tones = {"body_edges": theme.body_edge, "car": half, "marks": half, "body": theme.body}
        seats = word_of(0.55 * rgb(theme.body) + 0.45 * rgb(theme.occupant))
        for name, tone in {**tones, "occupant": theme.occupant, "seats": seats}.items():
            if name in cast:
                cast[name].paint(rgb(tone))
        fade = surroundings.grid_colours(self._flat, self.sign, rgb(theme.paper), rgb(theme.grid), self._lot)
        cast["grid"].paint(fade)
        if "shadow" in cast:
            dark = theme.shadow * self._dark[:, None]
            cast["shadow"].paint((1.0 - dark) * rgb(theme.paper))

    def solids(self, layer: str) -> list[Solid]:
        """Return what can be pointed at in "body" or "occupant", made once: it stands still."""
        if layer not in self._solids:
            self._solids[layer] = self._made(layer)
        return self._solids[layer]

    def _made(self, layer: str) -> list[Solid]:
        if layer == "occupant":
            return [
                Solid.of(part.name, *surroundings.occupant_solid((part,))[:2]) for part in self.model.occupant
            ]
        if self.side is None:
            body = surroundings.standing(self.model.body, self.model.rigid)
            return [Solid.of(name, s.points, s.triangles) for name, s in body.surfaces.items()]
        return [Solid.of(name, s.points, s.triangles) for name, s in self.model.rigid.items()]
