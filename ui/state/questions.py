"""What a class is asked before a push: choices made from the plan's own competitors, none of them marked.

Which one comes true is for the run to say (`ui.state.verdict`); nothing here knows an answer.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from sim.move_words import is_driven
from sim.outcome import limit
from sim.plan import Crush, CutSpread, Move, Press, Spread, Squeeze
from sim.units import Units, length_text

if TYPE_CHECKING:
    from sim.model import DoorModel
    from sim.record import Frame, Rung

FIRST, WAY, WHY = "first", "way", "why"
OWN = "own"
"""Key of the reason that is written in one's own words."""

FIRST_WORDS = {
    "seam parting": "The seam parts: the skin comes off its edge",
    "weld broken": "A weld of the seam breaks",
    "latch free": "The latch lets go",
    "striker out": "The striker slides out of the fork",
    "hinge free": "A hinge lets go",
    "bar foot free": "A foot of the bar lets go",
    "spot popped": "A spot of the pillar pops",
    "skin tearing": "The sheet tears",
    "tip shearing through": "A tip cuts through the sheet",
    "seat slipping": "The ram's head or foot slips",
    "base giving": "What the tool stands on gives",
    "stalled": "The tool stalls: it can push no further",
    "nothing gave": "Nothing gives, the metal only bends",
}
"""Every competitor as a choice, always in this order: an order by nearness would tell the answer."""
NOTHING, STALLED = "nothing gave", "stalled"
OF_TIPS = ("tip shearing through", STALLED)
OF_RAMS = ("seat slipping", "base giving")
OUT, IN, STAYS = "out", "in", "stays"

WHY_SPREAD = {
    "skin": "The tips bear on the outer skin and its seam",
    "inner": "The push goes through the inner panel to what holds the door",
    "shared": "Skin and inner panel share the push",
    "seat": "The tips will not keep their seat",
}
WHY_OTHER = {
    "weakest": "It is the weakest part on the line of the push",
    "straight": "The push is straight at it",
    "bent": "The metal there was bent before, so it folds on",
}
WHY_OWN = "Another reason, in your own words"
WAYS = ("Outward, away from the occupant", "Inward, towards the occupant")
ASKED = (
    "What gives first?",
    "Which way does the middle of the outer skin go?",
    "Why? A reason is part of the answer",
)


@dataclass(frozen=True)
class Choice:
    """One answer to choose: key and words."""

    key: str
    words: str


@dataclass(frozen=True)
class Question:
    """One question and its choices.

    key : FIRST, WAY or WHY;  counted : whether hands are counted for each choice
    """

    key: str
    words: str
    choices: tuple[Choice, ...]
    counted: bool = True

    def words_of(self, key: str) -> str:
        """Return a choice's words; empty for none."""
        return next((choice.words for choice in self.choices if choice.key == key), "")


def can_ask(move: Move | None) -> bool:
    """Tell whether there is something to foretell of a move: one that is done at once has no race."""
    return move is not None and is_driven(move)


def is_wedged(model: DoorModel | None, metal: Frame) -> bool:
    """Tell whether a striker is wedged in its fork: from the start, or since a bent latch was held open."""
    # Imported here: the mechanics are loaded by the time there is metal to look at.
    from sim.latch import WEDGED

    on_car = bool(model is not None and model.structure.sliders)
    return on_car or any(WEDGED in name for name in metal.reactions)


def competitors(ladder: Iterable[Rung], move: Move, *, wedged: bool) -> tuple[str, ...]:
    """Return what may give on a move, in the fixed order.

    Parameters
    ----------
    ladder : of the metal that the move finds: what still holds
    wedged : whether a striker is wedged in the fork and may be drawn out of it
    """
    found = {rung.event for rung in ladder} | {NOTHING}
    if isinstance(move, Spread | Squeeze):
        found |= set(OF_TIPS)
    elif isinstance(move, Press):
        found |= {*OF_RAMS, STALLED}
    elif isinstance(move, CutSpread):
        found |= {"base giving", STALLED}
    elif not isinstance(move, Crush):  # a barrier has no limit to its force
        found.add(STALLED)
    if wedged:
        found.add("striker out")
    return tuple(kind for kind in FIRST_WORDS if kind in found)


def questions(kinds: Sequence[str], move: Move, units: Units) -> tuple[Question, ...]:
    """Return the questions on a move whose competitors are known."""
    still = length_text(limit("moved_m"), units)
    ways = (
        Choice(OUT, WAYS[0]),
        Choice(IN, WAYS[1]),
        Choice(STAYS, f"Neither: less than {still} either way"),
    )
    why = WHY_SPREAD if isinstance(move, Spread) else WHY_OTHER
    reasons = (*(Choice(key, words) for key, words in why.items()), Choice(OWN, WHY_OWN))
    return (
        Question(FIRST, ASKED[0], tuple(Choice(k, FIRST_WORDS[k]) for k in kinds)),
        Question(WAY, ASKED[1], ways),
        Question(WHY, ASKED[2], reasons, counted=False),
    )
