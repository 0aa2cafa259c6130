"""The words of the trade: each idea under one neutral name, found by the other words people use for it."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cache
from importlib import resources

from ui.state.tongue import ENGLISH, spoken, tr


@dataclass(frozen=True)
class Term:
    """One idea.

    name : our word;  meaning : a sentence;  aliases : other words for it
    kind : "part", "tool", "move", "outcome" or "state"
    local : aliases that a service added itself
    english : words in English that lead here too, where another language is spoken
    """

    name: str
    meaning: str
    aliases: tuple[str, ...]
    kind: str
    local: tuple[str, ...] = ()
    english: tuple[str, ...] = ()

    @property
    def all_words(self) -> tuple[str, ...]:
        """Every word that leads here, our own first."""
        return (self.name, *self.local, *self.aliases)


@cache
def terms() -> tuple[Term, ...]:
    """Return every term of the program, by name."""
    text = resources.files("assets").joinpath("texts", "glossary.toml").read_text(encoding="utf-8")
    found = [
        Term(entry["name"], entry["meaning"], tuple(entry.get("aliases", ())), entry["kind"])
        for entry in tomllib.loads(text)["term"]
    ]
    return tuple(sorted(found, key=lambda term: term.name.lower()))


def with_local(found: Iterable[Term], local: dict[str, str]) -> tuple[Term, ...]:
    """Return the terms with a service's own words, given as local word to our name."""
    return tuple(
        replace(term, local=tuple(word for word, name in local.items() if name.lower() in _names(term)))
        for term in found
    )


def _names(term: Term) -> tuple[str, ...]:
    return term.name.lower(), tr(term.name).lower()


def in_tongue(found: Iterable[Term]) -> tuple[Term, ...]:
    """Return terms in the language spoken, by name; their English words lead there still."""
    if spoken() == ENGLISH:
        return tuple(found)
    said = [
        replace(
            term,
            name=tr(term.name),
            meaning=tr(term.meaning),
            aliases=tuple(tr(listed(term.aliases)).split("; ")),
            english=(term.name, *term.aliases),
        )
        for term in found
    ]
    return tuple(sorted(said, key=lambda term: term.name.lower()))


def listed(aliases: Iterable[str]) -> str:
    """Return a term's other words as one text, as a translation holds them: others, not one for each."""
    return "; ".join(aliases)


def search(found: Iterable[Term], words: str) -> tuple[Term, ...]:
    """Return the terms that a word leads to, the nearest first; all of them for no word."""
    wanted = words.strip().lower()
    if not wanted:
        return tuple(found)
    ranked = [(rank, term) for term in found if (rank := _rank(term, wanted)) is not None]
    return tuple(term for _, term in sorted(ranked, key=lambda pair: (pair[0], pair[1].name.lower())))


def _rank(term: Term, wanted: str) -> int | None:
    """Return how near a word comes to a term, 0 the nearest; None when it does not."""
    if wanted == term.name.lower():
        return 0
    others = [word.lower() for word in (*term.all_words, *term.english)]
    if wanted in others:
        return 1
    if any(word.startswith(wanted) for word in others):
        return 2
    if any(wanted in word for word in others):
        return 3
    return 4 if wanted in term.meaning.lower() else None
