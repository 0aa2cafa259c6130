"""The list of sources, read from the program's own data: who says so, and how much of it was seen."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib import resources

from sim.checks.row import CONSERVATION, ITSELF, TEXTBOOK, TRADE

LONG_NAME = 24
PLAIN = (TRADE, TEXTBOOK, CONSERVATION, ITSELF)


@dataclass(frozen=True)
class Source:
    """A published work and what of it was seen ("found", "memory" or "computed", with details)."""

    key: str
    title: str
    authors: str
    where: str
    used_for: str
    seen: str

    def words(self) -> str:
        """Return the source as one line."""
        return f"{self.authors}, {self.title}, {self.where} ({self.seen})"

    def short(self) -> str:
        """Return first author, year and how it was seen."""
        first = self.authors.split(",")[0]
        if len(first) > LONG_NAME:  # a body of many words is known by its rule
            first = self.title.split(",")[0]
        seen = self.seen.split()[0].strip("(;,")
        told = {"memory": ", from memory", "computed": ", formula"}.get(seen, "")
        return f"{first} {self.key.rsplit('-', 1)[-1]}{told}"


@cache
def all_sources() -> dict[str, Source]:
    """Return every source by its key."""
    text = resources.files("assets").joinpath("sources.toml").read_text(encoding="utf-8")
    return {key: Source(key=key, **entry) for key, entry in tomllib.loads(text).items()}


def full(authority: str) -> str:
    """Return an authority in full; raises KeyError for a key that is not listed."""
    return authority if authority in PLAIN else all_sources()[authority].words()


def short(authority: str) -> str:
    """Return an authority in a few words; raises KeyError for a key that is not listed."""
    return authority if authority in PLAIN else all_sources()[authority].short()
