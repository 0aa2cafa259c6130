"""From the screen to the metal: what each event looks, sounds and feels like, and when to stop; hazard cards.

The words are the program's data (assets/texts/bridge.toml): common practice of the trade, no source.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib import resources

from sim.kept import Told

ALWAYS = "always"
"""The sign that stands on every sheet: before the push."""


@dataclass(frozen=True)
class Sign:
    """What one event looks, sounds and feels like on metal, and when to stop."""

    event: str
    screen: str
    look: str
    listen: str
    feel: str
    stop: str


@cache
def _texts() -> tuple[dict[str, Sign], dict[str, str]]:
    raw = tomllib.loads(
        resources.files("assets").joinpath("texts", "bridge.toml").read_text(encoding="utf-8")
    )
    signs = {entry["event"]: Sign(**entry) for entry in raw["sign"]}
    return signs, {entry["name"]: entry["words"] for entry in raw["hazard"]}


def signs() -> Mapping[str, Sign]:
    """Return every sign, by the kind of event."""
    return _texts()[0]


def hazards() -> Mapping[str, str]:
    """Return every hazard card, by its name."""
    return _texts()[1]


def events_of(moves: Sequence[Told], more: Sequence[str] = ()) -> tuple[str, ...]:
    """Return the kinds of event that moves came to, and some more, in the order of the signs."""
    met = {move.first for move in moves} | set(more)
    for move in moves:
        met |= {word.partition(" (")[0] for word in move.metal}
    return tuple(event for event in signs() if event in met)
