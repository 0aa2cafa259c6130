"""Find an action by words: its own, or others people use for it; and every key on one sheet."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from ui.state.actions import HANDS, MENUS, SAME_KEYS, SEPARATOR, STEER, STEERING
from ui.state.ready_plans import ACTION, groups
from ui.state.tongue import tr

OTHER_WORDS: dict[str, str] = {
    "open": "load file",
    "save": "keep write store",
    "picture": "image export screenshot png slide handout",
    "figures": "images slides series batch svg png alt text captions figures",
    "mesh": "export vtu stl glb csv other programs numbers",
    "bring_back": "recover crash lost restore",
    "undo": "back take back mistake",
    "redo": "again forward",
    "branches": "history tree go back jump",
    "run": "solve calculate start go compute",
    "stop": "cancel abort interrupt",
    "start": "rewind beginning reset home",
    "play": "animate film watch pause",
    "pace": "speed slow fast",
    "loop": "repeat again",
    "stops": "halt event pause when",
    "add_spread": "new move push spreader",
    "add_crush": "new move wreck deform barrier",
    "add_ease": "new move release close",
    "add_squeeze": "new move pinch close",
    "add_flex": "new move lever pry entry bar frame",
    "add_cut": "new move cutter blades relief pocket",
    "add_spread_cut": "new move pocket raw edge tips",
    "add_strip": "new move peel reveal trim glass seal",
    "add_press": "new move ram push pillar",
    "add_hold": "new move swing strap prop door",
    "add_latch": "new move handle pawl try pull",
    "add_support": "new move stabilise blocks cribbing",
    "add_wreck": "crash deform start accident before",
    "change_move": "edit form fields numbers",
    "move_earlier": "order reorder up swap",
    "move_later": "order reorder down swap",
    "take_out": "delete remove move",
    "wreck": "crash start found solve watch",
    "form": "edit settings vehicle door metal seam latch spreader numbers side left right",
    "likely": "chance probability sure certain many runs",
    "flips": "sensitive depends decides unknown",
    "weigh": "stop cut compare cost tearing sharp edges relief",
    "map": "where place best spot overview heat chart edge difference compare doors",
    "map_large": "where place overview chart whole back row",
    "ask": "predict question guess quiz",
    "lock": "fix commit prediction",
    "compare": "reveal answer show outcome result",
    "twin": "copy duplicate variant compare contrast car",
    "beside": "compare two twin contrast split",
    "present": "projector class display second screen",
    "notes": "teacher speaker script",
    "shut": "hide cover answers reveal",
    "lesson_open": "load course",
    "sheets": "print pdf handout bridge evaluation",
    "words": "glossary terms dictionary meaning",
    "rules": "local procedure service",
    "drills": "log record real metal agreement",
    "stage_only": "big full picture hide panels",
    "projector": "beamer high contrast white large",
    "dark": "night black theme light",
    "larger": "zoom text font size bigger",
    "smaller": "zoom text font size",
    "calm": "reduced motion animation still",
    "right_turns": "mouse style button rotate drag orbit touchpad",
    "imperial": "units inches pounds millimetres kilonewtons metric",
    "language": "deutsch sprache translation",
    "colour": "color map load seam",
    "view": "camera angle",
    "see_patient": "camera occupant seat inside",
    "camera_back": "camera undo view",
    "see_tool_section": "cut plane slice inside",
    "see_tool_asunder": "exploded apart parts",
    "alone": "isolate hide others single part",
    "start_shape": "ghost before undeformed outline",
    "see_tool_measure": "distance angle ruler gap",
    "see_tool_pen": "draw arrow annotate mark",
    "drawer_plan": "panel column left",
    "drawer_reading": "panel column right",
    "full": "fullscreen maximise",
    "caution": "warning safety notice",
    "before_metal": "safety real car checklist",
    "card": "model limits sources validation about checks",
    "keys": "shortcuts keyboard help",
    "describe": "text screen reader alt caption description copy",
    "layout": "reset default panels size restore",
    "here": "system check graphics memory opengl slow computer requirements test",
    "log": "error messages report fault bug copy",
    "find": "search command help",
    "event_back": "page remote",
    "event_on": "page remote",
}
"""Other words that lead to an action, in small letters."""


INSIDE = 3
"""Rank of a word typed that stands inside another one: it counts where nothing comes nearer."""


@dataclass(frozen=True)
class Entry:
    """An action that can be found.

    name : of the action;  words, keys : as the menus show them;  menu : where it stands;  others : more words
    """

    name: str
    words: str
    keys: tuple[str, ...]
    menu: str
    others: str = ""


def entries(more: Iterable[tuple[str, str]] = ()) -> tuple[Entry, ...]:
    """Return every action there is, in the order of the menus, then what is in no table: what comes ready.

    Parameters
    ----------
    more : name and words of the ready lessons' actions
    """
    found = [
        Entry(name, tr(words), keys_of(name, keys), tr(menu), _others(name, words))
        for menu, table in (*MENUS, (STEERING, STEER))
        for name, words, keys in table
        if name != SEPARATOR
    ]
    found += [Entry(name, words, (), "Ready lessons", "lesson course") for name, words in more]
    found += [
        Entry(f"{ACTION}{name}", title, (), "Ready plans", f"plan scenario example {_plain(group.title)}")
        for group in groups()
        for name, title in group.plans
    ]
    return tuple(found)


def _plain(words: str) -> str:
    return words.lower().replace(":", " ").replace(",", " ")


def _others(name: str, words: str) -> str:
    """Return other words for an action; the English ones too where another language is spoken."""
    english = "" if tr(words) == words else words.lower()
    return f"{OTHER_WORDS.get(name, '')} {english}".strip()


def keys_of(name: str, keys: str) -> tuple[str, ...]:
    """Return all keys of an action, the first one first."""
    return SAME_KEYS.get(name, (keys,) if keys else ())


def find(text: str, among: Sequence[Entry]) -> tuple[Entry, ...]:
    """Return the actions that every typed word leads to, the nearest first; all of them for no word."""
    wanted = text.lower().split()
    if not wanted:
        return tuple(among)
    ranked = [(rank, k, entry) for k, entry in enumerate(among) if (rank := _rank(entry, wanted)) is not None]
    nearest = min((rank for rank, _, _ in ranked), default=0)
    kept = [item for item in ranked if item[0] < INSIDE or nearest == INSIDE]
    return tuple(entry for _, _, entry in sorted(kept, key=lambda item: item[:2]))


def _rank(entry: Entry, wanted: Sequence[str]) -> int | None:
    """Return how far the words typed are from an action, 0 the nearest; None where one leads elsewhere."""
    worst = 0
    own = _plain(entry.words).split()
    others = f"{entry.others} {entry.menu.lower()}".split()
    for word in wanted:
        if any(one.startswith(word) for one in own):
            rank = 0 if own[0].startswith(word) else 1
        elif word in (key.lower() for key in entry.keys):
            rank = 1
        elif any(one.startswith(word) for one in others):
            rank = 2
        elif len(word) > 2 and word in f"{entry.words.lower()} {entry.others}":
            rank = INSIDE
        else:
            return None
        worst = max(worst, rank)
    return worst


def sheet() -> tuple[tuple[str, tuple[tuple[str, str], ...]], ...]:
    """Return every key with what it does, by group: what is pressed, then words."""
    groups = [("By hand", HANDS)]
    for menu, table in ((STEERING, STEER), *MENUS):
        rows = tuple(
            (" or ".join(keys_of(name, keys)), words.rstrip("\u2026")) for name, words, keys in table if keys
        )
        groups.append((menu, rows))
    return tuple((name, rows) for name, rows in groups if rows)
