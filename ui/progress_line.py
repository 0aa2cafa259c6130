"""How far a command is: one line on the error stream that is written over, or lines where nobody looks on."""

from __future__ import annotations

import sys


class ProgressLine:
    """One line on the error stream that is written over; without a screen, lines below one another."""

    def __init__(self) -> None:
        self.live = sys.stderr.isatty()
        self._said = ""

    def write(self, words: str) -> None:
        """Say something in place of what stands there."""
        sys.stderr.write(f"\r\x1b[K{words}" if self.live else f"{words}\n")
        sys.stderr.flush()

    def say(self, words: str, share: float) -> None:
        """Say how far it is, without a screen once every tenth; ``share`` of the whole is done."""
        tenth = words if self.live else f"{words.partition(':')[0]} {int(10 * share)}"
        if tenth == self._said:
            return
        self._said = tenth
        self.write(words)

    def end(self) -> None:
        """Leave the line."""
        if self.live:
            sys.stderr.write("\r\x1b[K")
            sys.stderr.flush()
