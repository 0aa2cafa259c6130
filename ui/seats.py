"""Seat numbers as people write them."""

from __future__ import annotations

from ui.refusal import Refusal

MOST = 200


def seat_numbers(words: str) -> tuple[str, ...]:
    """Return seat numbers from words such as "1-12" or "3,5,8"; one empty seat for no words.

    Raises
    ------
    Refusal
        When the words are something else.
    """
    if not words.strip():
        return ("",)
    found: list[str] = []
    for part in words.split(","):
        first, dash, last = (piece.strip() for piece in part.partition("-"))
        last = last if dash else first
        if not (first.isdecimal() and last.isdecimal() and 1 <= int(first) <= int(last) < int(first) + MOST):
            raise Refusal(f"--seats {words}: cannot be read; write 1-12 or 3,5,8, at most {MOST} in a row.")
        found += [str(k) for k in range(int(first), int(last) + 1)]
    return tuple(found)
