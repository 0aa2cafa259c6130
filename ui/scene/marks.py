"""Pen, arrows and measurements on the stage: drawn over the metal, so that nothing covers them."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from ui.scene import tubes
from ui.scene.cast import Cast
from ui.scene.colours import Theme, rgb
from ui.scene.label import Label

Floats = NDArray[np.float64]

PEN_WIDTH, MEASURE_WIDTH = 4.0, 2.4
END_M = 0.006
ABOVE_M = np.array([0.0, 0.0, 0.03])
"""A number stands over its line, not on it."""
HEAD_SHARE, HEAD_MOST_M = 0.28, 0.07


class DrawnMarks:
    """What was drawn and measured on one stage."""

    def __init__(self, cast: Cast) -> None:
        self.cast = cast
        self.scale = 1.0
        self.strokes: list[tuple[str, Floats]] = []
        self.measures: list[tuple[Floats, str]] = []
        self._labels: list[Label] = []
        self._names: list[str] = []

    def show(
        self, strokes: Sequence[tuple[str, Floats]], measures: Sequence[tuple[Floats, str]], theme: Theme
    ) -> None:
        """Show strokes, each ("pen" or "arrow", points (k, 3) [m]), and measured lines with their words."""
        self.strokes, self.measures = list(strokes), list(measures)
        self.cast.drop(*self._names)
        self._names.clear()
        for label in self._labels:
            label.hide()
        for kind, points in self.strokes:
            self._line("pen", points, PEN_WIDTH, theme)
            if kind == "arrow":
                self._head(points, theme.plate_text)
        for index, (points, words) in enumerate(self.measures):
            if len(points):
                self._line("measure", points, MEASURE_WIDTH, theme)
                self._ends(points, theme)
                self._say(index, words, points, theme)

    def _line(self, kind: str, points: Floats, width: float, theme: Theme) -> None:
        """Draw a line with a light one behind it, which lifts it off dark metal."""
        if len(points) < 2:
            return
        segments = np.stack((points[:-1], points[1:]), axis=1)
        for wide, tone, share in ((width + 3.5, theme.plate, 0.2), (width, theme.plate_text, 1.0)):
            line = self.cast.lines(self._next(kind), segments, wide)
            line.lie_over(share)
            line.paint(rgb(tone))

    def _next(self, kind: str) -> str:
        name = f"{kind} {len(self._names)}"
        self._names.append(name)
        return name

    def _head(self, points: Floats, tone: str) -> None:
        way = points[-1] - points[0]
        size = float(np.linalg.norm(way))
        length = min(HEAD_SHARE * size, HEAD_MOST_M)
        if length < 1e-6:
            return
        start = points[-1] - way / size * length
        solid = tubes.arrow(start, way, length, length / 5.0)
        head = self.cast.plain(self._next("pen"), solid[0], solid[1])
        head.shine_through(1.0)
        head.paint(rgb(tone))

    def _ends(self, points: Floats, theme: Theme) -> None:
        solids = [tubes.ball(end, END_M, 4, 10) for end in points]
        place, triangles, _ = tubes.joined(solids)
        ball = self.cast.plain(self._next("measure"), place, triangles)
        ball.shine_through(1.0)
        ball.paint(rgb(theme.plate_text))

    def _say(self, index: int, words: str, points: Floats, theme: Theme) -> None:
        while len(self._labels) <= index:
            self._labels.append(Label(self.cast.renderer, on_top=True, beside=True))
        self._labels[index].scale = self.scale
        high = points[[0, -1]].mean(axis=0) + ABOVE_M
        self._labels[index].say(words, high, rgb(theme.plate_text), theme)

    @property
    def labels(self) -> tuple[Label, ...]:
        """The words of measured lines."""
        return tuple(self._labels)

    def close(self) -> None:
        """Leave the scene."""
        for label in self._labels:
            label.remove()
        self._labels.clear()
