"""Where the parts of a door stand on a picture: names are written beside them in sharp type."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

OWN_M, BEHIND_M = 0.05, 0.01
"""What is hit nearer to a part's place than this is the part itself [m]: fittings; sheets and bar."""
LAYER_OF = {"outer skin": "skin", "hem": "skin", "inner panel": "inner", "bar": "bar"}
"""Layers of parts; all others belong to latch and hinges."""
INSIDE = 0.92
"""A part further out than this share of the picture is not named."""


def on_picture(renderer: Any, points: Floats) -> Floats:
    """Return where points [m] stand on the picture, -1 .. 1 across and up, shape (k, 2); 9 behind the eye."""
    camera = renderer.GetActiveCamera()
    matrix = camera.GetCompositeProjectionTransformMatrix(renderer.GetTiledAspectRatio(), 0.0, 1.0)
    table = np.array(matrix.GetData()).reshape(4, 4)
    seen = np.column_stack((points, np.ones(len(points)))) @ table.T
    ahead = np.where(seen[:, 3] > 1e-9, seen[:, 3], np.nan)
    return np.nan_to_num(seen[:, :2] / ahead[:, None], nan=9.0)


def part_places(structure: Any, points: Floats) -> dict[str, Floats]:
    """Return a place [m] on each part that has a name, by the name as it is written."""
    names: Mapping[str, Any] = structure.names
    found = {
        word: points[names[key]].mean(axis=0)
        for word, key in (
            ("outer skin", "skin_mid"),
            ("inner panel", "inner_mid"),
            ("latch", "latch_plate"),
            ("upper hinge", "upper_hinge"),
            ("lower hinge", "lower_hinge"),
        )
        if len(names.get(key, ()))
    }
    if len(names.get("hem_lip", ())):
        lip = points[names["hem_lip"]]
        found["hem"] = lip[np.argmin(np.abs(lip[:, 2] - 0.12) - lip[:, 0])]
    bar = next((beam for beam in structure.beams if beam.name == "bar"), None)
    if bar is not None:
        nodes = np.asarray(bar.nodes)
        found["bar"] = points[nodes[len(nodes) // 3]]
    return found


def named_places(stage: Any, structure: Any, points: Floats, layers: Mapping[str, str]) -> dict[str, Floats]:
    """Return the parts in sight with their place on the picture, 0 .. 1 from its upper left corner.

    Layers that can be seen through are off afterwards: the picture has been taken.

    Parameters
    ----------
    stage : looked at;  structure, points : the door and where its nodes are [m], shape (n, 3)
    layers : mode of the layers that are not solid, by name
    """
    places = {
        word: place
        for word, place in part_places(structure, points).items()
        if layers.get(LAYER_OF.get(word, "latch_hinges")) != "off"
    }
    for layer in layers:
        stage.set_layer(layer, "off")
    seen = on_picture(stage.renderer, np.array(list(places.values()))) if places else np.zeros((0, 2))
    return {
        word: np.array([0.5 + 0.5 * x, 0.5 - 0.5 * y])
        for (word, place), (x, y) in zip(places.items(), seen, strict=True)
        if max(abs(x), abs(y)) < INSIDE and _in_sight(stage, place, BEHIND_M if word in LAYER_OF else OWN_M)
    }


def _in_sight(stage: Any, place: Floats, own_m: float) -> bool:
    """Tell whether nothing solid stands between the eye and a place: the part's own surface may."""
    eye = np.array(stage.renderer.GetActiveCamera().GetPosition())
    hit = stage.first_hit(eye, place)
    return hit is None or float(np.linalg.norm(np.asarray(hit.point) - place)) < own_m
