"""Small words of the stage: names, sentences, and who carries the push."""

from __future__ import annotations

from sim.record import Aim


def named(part: str, seat: str) -> str:
    """Return a part with the seat on it, or alone where the seat says no more."""
    words = part[0].upper() + part[1:]
    return words if seat in ("", part, f"the {part}", "in air") else f"{words}: {seat}"


def sentence(words: str) -> str:
    """Return words as a sentence."""
    return words[0].upper() + words[1:] + ("" if words.endswith(".") else ".")


def split_words(aim: Aim) -> str:
    """Return who carries the push, in words."""
    share = aim.skin_share
    if share >= 0.95:
        return "All of the push goes into the outer skin's lip."
    if share <= 0.05:
        return "All of the push goes into the inner panel."
    return f"{share:.0%} of the push goes into the outer skin's lip, the rest into the inner panel."
