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
RINGS = (1.3, 2.6, 4.2, 6.0)
"""How far words may be moved off, in heights of a word."""
DIRECTIONS = 8
TRIES = 2 + len(RINGS) * DIRECTIONS
NEAR = 0.6
"""A word further from its place than this many of its heights gets a line to it."""
ANCHORS = 7
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
    chosen = _spread(len(wish.places))
    places = np.repeat(wish.places[chosen], TRIES, axis=0)
    indices = np.repeat(chosen, TRIES)
    centres = places + np.tile(_ways(*wish.size), (len(chosen), 1))
    half = 0.5 * np.array(wish.size)
    boxes = np.hstack((centres - half, centres + half))
    free = _free(boxes, taken, picture)
    boxes, places, indices = boxes[free], places[free], indices[free]
    if not len(boxes):
        return None
    far = np.linalg.norm(np.maximum(np.maximum(boxes[:, :2] - places, places - boxes[:, 2:]), 0.0), axis=1)
    cost = far + COVER_COST * _within(picture.faces, boxes) + SOFT_COST * _within(picture.soft, boxes)
    best = int(np.argmin(cost))
    left, low, right, high = boxes[best].tolist()
    return Room((left, low, right, high), int(indices[best]), bool(far[best] > NEAR * wish.size[1]))


def _free(boxes: Floats, taken: list[Box], picture: Picture) -> NDArray[np.bool_]:
    """Return which boxes (k, 4) lie in the picture, over no other word and over no place to be kept clear."""
    size = np.array(picture.size) - GAP_PX
    free = (boxes[:, :2] >= GAP_PX).all(axis=1) & (boxes[:, 2:] <= size).all(axis=1)
    for left, low, right, high in taken:
        across = (boxes[:, 0] < right + GAP_PX) & (left < boxes[:, 2] + GAP_PX)
        free &= ~(across & (boxes[:, 1] < high + GAP_PX) & (low < boxes[:, 3] + GAP_PX))
    return np.asarray(free & (_within(picture.clear, boxes) == 0))


def _spread(count: int) -> list[int]:
    """Return some of so many indices, the middle first, then outward."""
    chosen = np.unique(np.linspace(0, count - 1, min(count, ANCHORS)).round().astype(int))
    return sorted(chosen.tolist(), key=lambda k: abs(k - 0.5 * (count - 1)))


def _ways(wide: float, high: float) -> Floats:
    """Return how a word's middle may stand off its place: over, under, then round it further and further."""
    up = high / 2 + GAP_PX
    turn = np.arange(DIRECTIONS) * 2.0 * np.pi / DIRECTIONS
    round_it = np.column_stack((np.cos(turn), np.sin(turn)))
    edge = np.abs(round_it) * (wide / 2, high / 2)
    rings = [round_it * (ring * high) + edge * np.sign(round_it) for ring in RINGS]
    return np.concatenate(([[0.0, up], [0.0, -up]], *rings))


def _within(points: Floats, boxes: Floats) -> NDArray[np.int64]:
    """Return how many of points (k, 2) lie in each box (n, 4), shape (n,)."""
    x, y = points[:, 0], points[:, 1]
    inside = (x > boxes[:, :1]) & (x < boxes[:, 2:3]) & (y > boxes[:, 1:2]) & (y < boxes[:, 3:])
    return np.asarray(inside.sum(axis=1))


def meet(first: Box, second: Box) -> bool:
    """Return whether two boxes lie over one another."""
    across = first[0] < second[2] and second[0] < first[2]
    return across and first[1] < second[3] and second[1] < first[3]
