"""Letting the tool off as a move: the metal springs back to what is left of its shape."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from sim import outcome
from sim.course import AtOnce
from sim.record import Frame


class EaseCourse(AtOnce):
    """Draw the last tool back until it no longer pushes."""

    def frames(self) -> Iterator[Frame]:
        """Yield the metal under the tool and without it."""
        run, begin = self.run, self.run.begin
        first = run.step(run.model.network).first_point(begin.state, begin.ledger)
        held = replace(first, travel_m=begin.opening_m)
        yield run.emit(held, None, 0)
        rest = held if begin.engaged is None else run.at_rest()
        yield run.emit(replace(rest, travel_m=0.0), None, 1)
        run.finish(rest)

    def sentence(self) -> str:
        """Return how far the skin sprang back."""
        return outcome.eased_sentence(*self.run.ends)

    def effect(self) -> str:
        """Return that the tool is off."""
        return "eased"
