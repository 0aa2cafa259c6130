"""One checked figure: what is claimed, who says so, what was expected and what the program computed."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

Relation = Literal["equal", "within", "at least", "at most", "more than", "less than", "same"]

TRADE = "common practice, no source"
TEXTBOOK = "textbook formula, from memory"
CONSERVATION = "law of conservation"
ITSELF = "the program on another lattice"
"""Authorities that are no published work; every other authority is a key of the list of sources."""


@dataclass(frozen=True)
class Row:
    """One checked figure.

    authority : a source's key, or one of the words above
    relation : "equal" allows ``tolerance`` of the expected value, "within" allows it in the figure's own
        unit, "at least" and "at most" allow it of the bound, "more than" and "less than" allow nothing (two
        runs in which nothing happened are no more than each other), "same" compares words
    spacing : lattice the figure was computed on, in words;  seconds : what it took
    known : why the figure is known to miss, where it does; such a row fails in the open without being news
    """

    claim: str
    authority: str
    expected: float | str
    got: float | str
    unit: str = ""
    tolerance: float = 0.0
    relation: Relation = "equal"
    spacing: str = ""
    seconds: float = 0.0
    known: str = ""

    @property
    def error(self) -> float | None:
        """Return the deviation over the expected value, for "within" in the figure's unit; None for words."""
        if isinstance(self.expected, str) or isinstance(self.got, str):
            return None
        if self.relation == "within" or self.expected == 0.0:
            return self.got - self.expected
        return self.got / self.expected - 1.0

    @property
    def passed(self) -> bool:
        """Return whether the figure is what was claimed; a figure that is no number never is."""
        if isinstance(self.expected, str) or isinstance(self.got, str):
            return self.relation == "same" and self.expected == self.got
        if not (math.isfinite(self.expected) and math.isfinite(self.got)):
            return False
        room = self.tolerance if self.relation == "within" else self.tolerance * abs(self.expected)
        if self.relation == "more than":
            return bool(self.got > self.expected)
        if self.relation == "less than":
            return bool(self.got < self.expected)
        if self.relation == "at least":
            return bool(self.got >= self.expected - room)
        if self.relation == "at most":
            return bool(self.got <= self.expected + room)
        return bool(abs(self.got - self.expected) <= room)  # a numpy figure's own True is no plain value


def spacing_word(spacing_m: float) -> str:
    """Return a lattice's spacing [m] in millimetres and words."""
    return f"{1e3 * spacing_m:g} mm"


def settling(claim: str, coarse: Row, fine: Row) -> Row:
    """Return the row that says a finer lattice is nearer to the answer: ratio of the two errors."""
    before, after = coarse.error, fine.error
    ratio = math.nan if before is None or after is None or before == 0.0 else abs(after) / abs(before)
    return Row(
        claim=f"{claim}: finer is nearer",
        authority=fine.authority,
        expected=1.0,
        got=ratio,
        unit="of the coarse error",
        relation="at most",
        spacing=f"{coarse.spacing} to {fine.spacing}",
    )
