"""Where words of a picture find room: beside what they name, none over another, the least important left out.

All in pixels of the picture, x to the right and y up. A box is (left, low, right, high).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Box = tuple[float, float, float, float]

GAP_PX = 4.0
"""Between a word and what it names, and between two words."""
RINGS = (0.0, 1.3, 2.6, 4.2, 6.0)
"""How far words may be moved off, in heights of a word."""
DIRECTIONS = 12
NEAR = 0.6
"""A word further from its place than this many of its heights gets a line to it."""
ANCHORS = 9
"""Places along what is named that are tried."""
COVER_COST, SOFT_COST = 6.0, 60.0
"""Pixels of way that a word would rather go than cover a piece of a face, or a fitting."""


@dataclass(frozen=True, eq=False)
class Wish:
    """A word that looks for room: its width and height, and the places it may name, shape (k, 2)."""

    size: tuple[float, float]
    places: Floats


@dataclass(frozen=True)
class Room:
    """Where a word was put: its box, the place it names (an index), whether a line leads there."""

    box: Box
    place: int
    led: bool


@dataclass(frozen=True, eq=False)
class Picture:
    """What the words have to mind.

    Parameters
    ----------
    size : of the picture;  taken : boxes of other words
    clear : places that no word may cover, (k, 2);  faces, soft : places that words had better not cover
    """

    size: tuple[float, float]
    taken: tuple[Box, ...]
    clear: Floats
    faces: Floats
    soft: Floats


def find_rooms(wishes: Sequence[Wish], picture: Picture) -> list[Room | None]:
    """Return each word's room, the most important first; None where there is none."""
    taken = list(picture.taken)
    found: list[Room | None] = []
    for wish in wishes:
        room = _best(wish, taken, picture)
        found.append(room)
        if room is not None:
            taken.append(room.box)
    return found


def _best(wish: Wish, taken: list[Box], picture: Picture) -> Room | None:
    wide, high = wish.size
    best, least = None, np.inf
    for index in _spread(len(wish.places)):
        place = wish.places[index]
        for centre in _centres(place, wide, high):
            box = (centre[0] - wide / 2, centre[1] - high / 2, centre[0] + wide / 2, centre[1] + high / 2)
            if not _inside(box, picture.size) or any(_meet(box, other) for other in taken):
                continue
            if _within(picture.clear, box):
                continue
            far = _distance(box, place)
            cost = far + COVER_COST * _within(picture.faces, box) + SOFT_COST * _within(picture.soft, box)
            if cost < least:
                best, least = Room(box, index, far > NEAR * high), cost
    return best


def _spread(count: int) -> list[int]:
    """Return some of so many indices, the middle first, then outward."""
    chosen = np.unique(np.linspace(0, count - 1, min(count, ANCHORS)).round().astype(int))
    return sorted(chosen.tolist(), key=lambda k: abs(k - 0.5 * (count - 1)))


def _centres(place: Floats, wide: float, high: float) -> list[Floats]:
    """Return where a word's middle may stand: over and under its place, then round it further and further."""
    up = np.array([0.0, high / 2 + GAP_PX])
    out = [place + up, place - up]
    for ring in RINGS[1:]:
        for turn in np.arange(DIRECTIONS) * 2.0 * np.pi / DIRECTIONS:
            way = np.array([np.cos(turn), np.sin(turn)])
            out.append(place + way * (ring * high + np.abs(way) * (wide / 2, high / 2)))
    return out


def _inside(box: Box, size: tuple[float, float]) -> bool:
    return box[0] >= GAP_PX and box[1] >= GAP_PX and box[2] <= size[0] - GAP_PX and box[3] <= size[1] - GAP_PX


def _meet(first: Box, second: Box) -> bool:
    across = first[0] < second[2] + GAP_PX and second[0] < first[2] + GAP_PX
    return across and first[1] < second[3] + GAP_PX and second[1] < first[3] + GAP_PX


def _within(points: Floats, box: Box) -> int:
    """Return how many of points (k, 2) lie in a box."""
    if not len(points):
        return 0
    low, high = np.array(box[:2]), np.array(box[2:])
    return int(((points > low) & (points < high)).all(axis=1).sum())


def _distance(box: Box, place: Floats) -> float:
    """Return how far a place is from a box, 0 in it."""
    low, high = np.array(box[:2]), np.array(box[2:])
    return float(np.linalg.norm(np.maximum(np.maximum(low - place, place - high), 0.0)))
