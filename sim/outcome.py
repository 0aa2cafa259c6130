"""The outcome in words: what the metal did, what that means for the plan, and the one sentence.

Every word follows from a measured quantity; the limits stand in one table with their reason.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from sim.record import BASE_GIVING, LEFT_TEARING, OFF, SLIPPING, Event, Frame, Rung

if TYPE_CHECKING:
    from sim.push import Push

LOADED_RATIO = 0.005  # less is written 0 % and says nothing
SLIPS_RATIO = 0.99  # of what friction holds: the force across stays a little under it, for the lag of a step
LIMITS = {
    # name: value [m or -], reason
    "parted_m": (0.020, "shorter than a tip's width nothing is gained or lost"),
    "torn_m": (0.020, "as for parted seam"),
    "moved_m": (0.010, "less cannot be seen on the metal"),
    "clearance_m": (0.005, "one percent of a hip's breadth; below that the envelope itself is not known"),
    "slid_m": (0.005, "less is the give of the seat itself: common practice, no source"),
    "folded_j": (2.0, "about a thumb's dent in a skin"),
}


HAPPENS = {
    "seam parting": "the seam parts",
    "weld broken": "a weld breaks",
    "latch free": "the latch lets go",
    "striker out": "the striker comes out of the latch",
    "hinge free": "the {part} lets go",
    "bar foot free": "the {part} lets go",
    "skin tearing": "the {part} tears",
    "left tearing": "the {part} tears where the wreck had left it about to",
    "tip shearing through": "a tip cuts through the sheet",
    "tip slipping": "the tip slips along the metal",
    "tip off": "the tip comes off the metal",
}
"""What is said at the moment of an event; of others part and kind are named."""
HAS_HAPPENED = {
    "latch free": "the latch has let go",
    "striker out": "the striker has come out of the latch",
    "hinge free": "the {part} has let go",
    "tip off": "the tip has come off the metal",
}
"""What is said of an event once it is past, of those that a later moment of the move hangs on."""
TELLING = (
    "latch free", "striker out", "hinge free", "tip off", "bar foot free", "skin tearing", "left tearing",
    "tip shearing through", "weld broken", "seam parting",
)  # fmt: skip
"""Kinds of event, the most telling first; others come after them."""
NOT_HOLDING = "the latch was not holding"


def limit(name: str) -> float:
    """Return one threshold."""
    return LIMITS[name][0]


def metal_words(start: Frame, end: Frame, events: Sequence[Event]) -> tuple[str, ...]:
    """Return what the metal did, in the fixed words, most telling first."""
    words: list[str] = []
    kinds = {event.kind for event in events}
    for kind in ("latch free", "striker out", "hinge free", "skin tearing", "tip shearing through"):
        if kind in kinds:
            words.append(kind)
    if end.parted_length_m - start.parted_length_m >= limit("parted_m"):
        words.append("seam parting")
    for name, value in (
        ("skin", end.skin_mid_outboard_m - start.skin_mid_outboard_m),
        ("inner", end.inner_mid_outboard_m - start.inner_mid_outboard_m),
    ):
        if abs(value) > limit("moved_m"):
            words.append(f"{'folding out' if value > 0.0 else 'folding in'} ({name})")
    telling = ("cut open", "cut short", "exposed", "tip slipping", "tip off", "seat slipping", "base giving")
    for kind in ("held open", *telling, "stalled"):
        if kind in kinds:
            words.append(kind)
    if not words:
        folded = sum(end.ledger_j[k] - start.ledger_j[k] for k in end.ledger_j if k.startswith("folding"))
        words.append("bending" if folded > limit("folded_j") else "holding")
    return tuple(words)


def room_lost(start: Frame, end: Frame) -> bool:
    """Tell whether the occupant has less room than before, by more than the envelope is known."""
    return end.clearance.distance_m < start.clearance.distance_m - limit("clearance_m")


def plan_word(start: Frame, end: Frame, metal: Sequence[str]) -> str:
    """Return what it means for the plan: gained, spent, lost ground or stop here."""
    lost = room_lost(start, end)
    freed = bool({"latch free", "striker out", "hinge free"} & set(metal))
    if freed and not lost:
        return "gained"
    if lost:
        return "lost ground"
    if "skin tearing" in metal or "tip shearing through" in metal:
        return "stop here"
    return "spent"


SHARE_WORDS = (
    (0.95, "all it can hold"),
    (0.7, "most of what it can hold"),
    (0.58, "more than half of what it can hold"),
    (0.415, "about half of what it can hold"),
    (0.29, "a third of what it can hold"),
    (0.225, "a quarter of what it can hold"),
    (0.15, "a fifth of what it can hold"),
)
"""From which share on which word is said; fractions begin midway to the next smaller one."""


def _share_word(ratio: float) -> str:
    return next((words for least, words in SHARE_WORDS if ratio >= least), "little of what it can hold")


def clearance_words(start: Frame, end: Frame) -> str:
    """Return how the occupant's room has changed, in words."""
    change = end.clearance.distance_m - start.clearance.distance_m
    if abs(change) < limit("clearance_m"):
        return "clearance unchanged"
    way = "more" if change > 0.0 else "less"
    return f"{abs(change) * 1e3:.0f} mm {way} clearance"


def inner_words(start: Frame, end: Frame) -> str:
    """Return the clause on an inner panel whose middle came in, a semicolon before it; "" if it did not."""
    came_in = start.inner_mid_outboard_m - end.inner_mid_outboard_m
    if came_in <= limit("moved_m"):
        return ""
    return f"; the inner panel came in {came_in * 1e3:.0f} mm towards the patient"


def eased_sentence(start: Frame, end: Frame) -> str:
    """Return the sentence after the tool was let off."""
    moved = end.skin_mid_outboard_m - start.skin_mid_outboard_m
    way = "out" if moved > 0.0 else "in"
    if abs(moved) < 0.5e-3:
        return "The tool is off; the skin's middle stayed where it was."
    return f"The tool is off; the skin's middle sprang {abs(moved) * 1e3:.0f} mm {way}."


def push_sentence(start: Frame, end: Frame, peak_latch: float, events: Sequence[Event], push: Push) -> str:
    """Return the sentence after a push: what moved, what let go, what it cost or gained, and why."""
    parted = end.parted_length_m - start.parted_length_m
    kinds = [event.kind for event in events]
    clearance = clearance_words(start, end) + inner_words(start, end)
    seat, share = push.seats[0], push.pads[0].skin_share
    latch = f"the latch carried {_share_word(peak_latch)} at most" if peak_latch > 0.0 else NOT_HOLDING
    costs = f"{latch}; {clearance}"
    why = _why(seat, share, freed=bool({"latch free", "striker out", "hinge free"} & set(kinds)))
    if len(push.pads) > 1:
        why = "Both tips stood on the door, so what one pushed with the other pushed back with."
        if push.force_ratio < 1.0:
            sheets = "its walls" if push.pads[0].part == "pillar" else "skin and inner panel"
            across = "pillar" if push.pads[0].part == "pillar" else "door"
            why = f"The tips closed across the {across}, so {sheets} were pressed towards each other."
    if BASE_GIVING in kinds:
        why = f"The tips were {_place(seat)}; what the other tip stood on was the weaker side of the push."
    why += _slid_words(start, end, events)
    if "latch free" in kinds:
        first = f"The latch let go at {events[kinds.index('latch free')].opening_m * 1e3:.0f} mm"
        first += _seam_words(end, parted, events)
        return f"{first}; {clearance}. {why}"
    if "striker out" in kinds:
        out = events[kinds.index("striker out")]
        return f"The striker slid out of the fork by {out.opening_m * 1e3:.0f} mm; {costs}. {why}"
    if "hinge free" in kinds:
        hinge = events[kinds.index("hinge free")]
        return f"The {hinge.part} let go at {hinge.opening_m * 1e3:.0f} mm; {costs}. {why}"
    torn = end.torn_length_m - start.torn_length_m
    if parted >= limit("parted_m"):
        ripped = f" and tore over {torn * 1e3:.0f} mm" if torn >= limit("torn_m") else ""
        return f"The outer skin came away over {parted * 1e3:.0f} mm{ripped}; {costs}. {why}"
    if torn >= limit("torn_m"):
        return f"The tips tore {torn * 1e3:.0f} mm of sheet; {costs}. {why}"
    if "stalled" in kinds:
        return f"The tool stalled at {end.opening_m * 1e3:.0f} mm; {costs}. {why}"
    skin = end.skin_mid_outboard_m - start.skin_mid_outboard_m
    side = "outward" if skin > 0.0 else "inward"
    what = "The metal bent"
    if BASE_GIVING in kinds:
        what = f"The {push.seats[1]} gave way and moved more than the door"
    if abs(skin) > limit("moved_m"):
        what = f"The middle of the skin moved {abs(skin) * 1e3:.0f} mm {side}"
    return f"{what}, nothing let go; {costs}. {why}"


def _seam_words(end: Frame, parted: float, events: Sequence[Event]) -> str:
    """Return what the seam did in a push in which the latch let go; ``parted`` in this push [m]."""
    if parted < limit("parted_m"):
        whole = end.parted_length_m < limit("parted_m")
        return " with the skin still on its seam" if whole else " with no more of the seam parted"
    length = f"{parted * 1e3:.0f} mm in all"
    seam = next((event.opening_m for event in events if event.kind == "seam parting"), None)
    latch = next(event.opening_m for event in events if event.kind == "latch free")
    if seam is None or seam == latch:
        return f"; the seam parted with it, {length}"
    order = "the seam had begun to part before" if seam < latch else "the seam parted only after"
    return f"; {order}, {length}"


def crush_sentence(start: Frame, end: Frame, events: Sequence[Event], seat: str) -> str:
    """Return the sentence after a crush; ``seat`` says what pressed, and where."""
    moved = end.skin_mid_outboard_m - start.skin_mid_outboard_m
    way = "out" if moved > 0.0 else "in"
    gone = [f"{e.part} at {e.opening_m * 1e3:.0f} mm" for e in events if e.kind.endswith(" free")]
    let_go = f"what let go: {', '.join(gone)}" if gone else "nothing let go"
    parted = end.parted_length_m - start.parted_length_m
    seam = f"; {parted * 1e3:.0f} mm of seam parted" if parted >= limit("parted_m") else ""
    return (
        f"The {seat.removesuffix(' on the outer skin')} went in {end.opening_m * 1e3:.0f} mm; "
        f"{let_go}{seam}; {clearance_words(start, end)}. The skin's middle moved {abs(moved) * 1e3:.0f} mm "
        f"{way}; the car's pillars and rocker cannot yield in this model."
    )


def tip_stands(seat: str) -> str:
    """Return where the tip on the door stands, as a sentence; ``seat`` in the words of a seat."""
    return f"The tip is {seat}." if seat.startswith("behind") else f"The tip is on the {seat}."


def _place(seat: str) -> str:
    return seat if seat.startswith(("behind", "belt,")) else f"on the {seat}"


def _why(seat: str, share: float, *, freed: bool) -> str:
    place = _place(seat)
    if 0.3 < share < 0.7:
        return f"The tips were {place}, so skin and inner structure shared the push."
    if share >= 0.5:
        return f"The tips were {place}, so the push went into the outer skin and its seam."
    if freed:
        return f"The tips were {place}, so the push went through the inner structure to what holds the door."
    return f"The tips were {place}, so the inner structure carried the push."


def _slid_words(start: Frame, end: Frame, events: Sequence[Event]) -> str:
    """Return the clause on tips that slid or came off, with a space before it; empty when they held."""
    first, last = start.seat, end.seat
    if first is None or last is None:
        return ""
    words = ""
    if last.slid_m >= limit("slid_m"):
        onto = f", onto the {last.seat}" if last.seat != first.seat else ""
        onto = onto.replace("the behind", "the metal behind").replace("the belt,", "the belt:")
        words += f" The tip on the door slipped {last.slid_m * 1e3:.0f} mm along the metal{onto}."
    if last.other_slid_m >= limit("slid_m"):
        words += f" The other tip slipped {last.other_slid_m * 1e3:.0f} mm."
    if any(event.kind == OFF for event in events):
        words += " Then it came off."
    return words


def live_words(frame: Frame, way: Sequence[Frame] = ()) -> str:
    """Return what is said of a moment on the way: what happens, else what has happened and what is nearest.

    Parameters
    ----------
    way : the moments of this move up to this one, the first first; without them nothing is said of the past
    """
    if frame.events:
        return "; ".join(_happening(frame.events))
    slips = any(rung.event == SLIPPING and rung.demand_ratio >= SLIPS_RATIO for rung in frame.ladder)
    if slips:
        others = [rung for rung in frame.ladder if rung.event != SLIPPING]
        now = "the tip is slipping; " + _nearest(others[0]) if others else "the tip is slipping"
    else:
        now = _nearest(frame.ladder[0]) if frame.ladder else "holding"
    so_far = _so_far(frame, way)
    if so_far and now == "holding":
        return so_far
    return f"{so_far}; {now}" if so_far else now


def _happening(events: Sequence[Event]) -> list[str]:
    """Return the clauses of the events of one moment, what lets go first and what only slides last."""
    order = {kind: place for place, kind in enumerate(TELLING)}
    told = sorted(events, key=lambda event: order.get(event.kind, len(order)))
    clauses = (HAPPENS.get(e.kind, rung_words(e.part, e.kind)).format(part=e.part) for e in told)
    return list(dict.fromkeys(clauses))


def _so_far(frame: Frame, way: Sequence[Frame]) -> str:
    """Return what this move has brought about before a moment, in one clause; "" where it is nothing."""
    past = [event for item in way for event in item.events]
    gone = [event for event in past if event.kind in HAS_HAPPENED]
    if gone:
        last = min(gone, key=lambda event: TELLING.index(event.kind))
        return HAS_HAPPENED[last.kind].format(part=last.part)
    if not way:
        return ""
    parted = frame.parted_length_m - way[0].parted_length_m
    torn = frame.torn_length_m - way[0].torn_length_m
    if parted >= limit("parted_m"):
        return f"the outer skin has come away over {parted * 1e3:.0f} mm"
    return f"the sheet has torn over {torn * 1e3:.0f} mm" if torn >= limit("torn_m") else ""


def _nearest(rung: Rung) -> str:
    """Return what is nearest to giving and how near, or that it gives."""
    if rung.demand_ratio >= 1.0:
        return _giving(rung.part, rung.event)
    if rung.demand_ratio < LOADED_RATIO:
        return "holding"
    who, doing = _doing(rung.part, rung.event)
    share = f"{rung.demand_ratio * 100.0:.0f} %"
    if doing:
        return f"{who} is nearest to {doing}, {share}"
    part, _, event = rung_words(rung.part, rung.event).partition(": ")
    return f"nearest to giving: {part} ({event}), {share}" if event else f"nearest to giving: {part}, {share}"


def _giving(part: str, event: str) -> str:
    """Return that something gives now: "the seam is parting"."""
    who, doing = _doing(part, event)
    return f"{who} is {doing}" if doing else rung_words(part, event)


def _doing(part: str, event: str) -> tuple[str, str]:
    """Return who does what as it gives, as "the seam" and "parting"; nothing where no word tells it."""
    if event == SLIPPING:
        return "the tip", "slipping"
    if event == "tip shearing through":
        return "the tip", f"shearing through the {part}"
    last = {"free": "letting go", "stalled": "stalling"}.get(event.split()[-1], event.split()[-1])
    return (f"the {part}", last) if last.split()[0].endswith("ing") else ("", "")


def rung_words(part: str, event: str) -> str:
    """Return part and event in words that say nothing twice: "seam: parting", "upper hinge: free"."""
    if part.lower() == event.lower():
        return part
    if event == "skin tearing" and "skin" not in part:
        event = "sheet tearing"
    if event == LEFT_TEARING:
        event = "torn by the wreck"
    words = event.split()
    while len(words) > 1 and words[0].lower() in part.lower().split():
        words = words[1:]
    return f"{part}: {' '.join(words)}"
