"""Will it run here: what this machine has, a word for each, and what to do where it is too little.

Limits are the program's own figures: a window takes about 0.75 GB after a run, drawing wants OpenGL 3.2,
and one core works out the metal while another keeps the window alive.
"""

from __future__ import annotations

from dataclasses import dataclass

GOOD, ENOUGH, LITTLE = "good", "enough", "too little"
GIGA = 1e9
MEMORY_GOOD, MEMORY_LEAST = 4.0, 1.5
"""Memory [GB] with room for other programs; and with none."""
FREE_LEAST, DISK_LEAST = 0.8, 0.3
"""Memory free now, and room on the disk [GB]."""
SCREEN_GOOD, SCREEN_LEAST = (1280, 720), (1024, 768)
GL_LEAST = (3, 2)
SOFTWARE = ("llvmpipe", "softpipe", "swrast", "software", "swiftshader", "basic render")
"""Parts of the names that drivers without a graphics card give themselves."""


@dataclass(frozen=True)
class Facts:
    """What was found; None where it could not be found out.

    gl_version, gl_name : of a window's drawing, (0, 0) where no window can draw
    pictures : whether still pictures can be drawn, looked at only where no window can
    memory_gb, free_gb, disk_gb : all memory, memory free now, room in the folder of the settings
    screen : width and height [px];  folder : where settings go;  writable : whether they can
    """

    gl_version: tuple[int, int] | None = None
    gl_name: str = ""
    pictures: bool | None = None
    memory_gb: float | None = None
    free_gb: float | None = None
    cores: int | None = None
    screen: tuple[int, int] | None = None
    folder: str = ""
    writable: bool = True
    disk_gb: float | None = None


@dataclass(frozen=True)
class Finding:
    """One thing looked at: what it is, what was found, the word for it, and what to do."""

    what: str
    found: str
    word: str
    remedy: str = ""


def findings(facts: Facts) -> tuple[Finding, ...]:
    """Return a finding for each thing that could be looked at."""
    made = (_drawing(facts), _memory(facts), _free(facts), _cores(facts), _screen(facts), _folder(facts))
    return tuple(item for item in made if item is not None)


def runs(found: tuple[Finding, ...]) -> bool:
    """Tell whether nothing is too little."""
    return all(item.word != LITTLE for item in found)


def verdict(found: tuple[Finding, ...]) -> str:
    """Return one sentence on all findings."""
    bad = [item.what for item in found if item.word == LITTLE]
    slow = [item.what for item in found if item.word == ENOUGH]
    if bad:
        return f"Hemline will not do its full work here: {', '.join(bad)}. Each line says what helps."
    if slow:
        return f"Hemline runs here; it would be better off with more of: {', '.join(slow)}."
    return "Hemline runs here."


def report(facts: Facts) -> str:
    """Return all findings as plain lines."""
    found = findings(facts)
    lines = [f"{item.what}: {item.found} - {item.word}." + _then(item.remedy) for item in found]
    return "\n".join((verdict(found), "", *lines))


def _then(remedy: str) -> str:
    return f" {remedy}" if remedy else ""


def _drawing(facts: Facts) -> Finding | None:
    if facts.gl_version is None:
        return None
    what, version = "drawing", facts.gl_version
    if version >= GL_LEAST:
        found = f"OpenGL {version[0]}.{version[1]}, {facts.gl_name or 'no name'}"
        if any(name in facts.gl_name.lower() for name in SOFTWARE):
            return Finding(what, found, ENOUGH, "Drawn by the processor: keep the window small if it lags.")
        return Finding(what, found, GOOD)
    remedy = (
        "Install the graphics driver of the machine, or start at the machine and not over a remote desktop."
    )
    found = f"OpenGL {version[0]}.{version[1]}" if version > (0, 0) else "no window can draw"
    if facts.pictures:
        return Finding(what, f"{found}; still pictures can be drawn", ENOUGH, remedy)
    return Finding(what, f"{found}, nor can still pictures be drawn", LITTLE, remedy)


def _memory(facts: Facts) -> Finding | None:
    if facts.memory_gb is None:
        return None
    word = _word(facts.memory_gb, MEMORY_LEAST, MEMORY_GOOD)
    remedy = {GOOD: "", ENOUGH: "Close other programs in class.", LITTLE: "Use a machine with 4 GB or more."}
    return Finding("memory", f"{facts.memory_gb:.1f} GB", word, remedy[word])


def _free(facts: Facts) -> Finding | None:
    if facts.free_gb is None:
        return None
    word = GOOD if facts.free_gb >= FREE_LEAST else ENOUGH
    remedy = "" if word == GOOD else "Close other programs: a run may be slow while memory is moved to disk."
    return Finding("memory free now", f"{facts.free_gb:.1f} GB", word, remedy)


def _cores(facts: Facts) -> Finding | None:
    if facts.cores is None:
        return None
    word = GOOD if facts.cores >= 2 else ENOUGH
    remedy = "" if word == GOOD else "Use lessons with kept results: a run holds the window up on one core."
    return Finding("processor cores", str(facts.cores), word, remedy)


def _screen(facts: Facts) -> Finding | None:
    if facts.screen is None:
        return None
    width, height = facts.screen
    fits = [width >= least[0] and height >= least[1] for least in (SCREEN_GOOD, SCREEN_LEAST)]
    word = GOOD if fits[0] else ENOUGH if fits[1] else LITTLE
    remedy = {
        GOOD: "",
        ENOUGH: "Columns become drawers: F2 the plan, F3 the reading.",
        LITTLE: "Set the screen to 1024 x 768 or more, or its scaling to 100 %.",
    }
    return Finding("screen", f"{width} x {height}", word, remedy[word])


def _folder(facts: Facts) -> Finding | None:
    if not facts.folder:
        return None
    if not facts.writable:
        return Finding(
            "folder of the settings", f"{facts.folder} cannot be written", LITTLE,
            "Make a folder named settings beside the program, or free this one: nothing is remembered now.",
        )  # fmt: skip
    if facts.disk_gb is not None and facts.disk_gb < DISK_LEAST:
        return Finding(
            "folder of the settings", f"{facts.disk_gb:.1f} GB left", ENOUGH,
            "Free some room: the sitting and solved results are kept there.",
        )  # fmt: skip
    return Finding("folder of the settings", f"{facts.folder} can be written", GOOD)


def _word(value: float, least: float, good: float) -> str:
    return GOOD if value >= good else ENOUGH if value >= least else LITTLE
