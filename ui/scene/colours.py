"""Every colour of the picture and what it means: themes, maps, classes of outcome with their patterns.

Parts are achromatic, told apart by tone; hue belongs to meaning alone. Out of the car is blue, into it is
orange, a parting seam is purple, load is green; the four never share a picture's map. Folding goes by steps
of sky blue, the hue of bending, each step with lines of its own.

The eight hues are those of Okabe and Ito, "Color Universal Design" (2002), made for the three common kinds of
colour vision. Maps run straight in CIELAB (CIE 15, D65) between them, so that equal steps look equal.
No Qt and no VTK here: colours are triples from 0 to 1, or "#rrggbb" words.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np
from numpy.typing import ArrayLike, NDArray

from ui.state.folds import STEP_WORDS, bound_words

Floats = NDArray[np.float64]

OKABE_ITO = {
    "black": "#000000",
    "orange": "#E69F00",
    "sky blue": "#56B4E9",
    "bluish green": "#009E73",
    "yellow": "#F0E442",
    "blue": "#0072B2",
    "vermillion": "#D55E00",
    "reddish purple": "#CC79A7",
}


class ColourMode(Enum):
    """What the colour of the metal tells."""

    MATERIAL = "material"
    OUTBOARD = "outboard"
    SEAM = "seam"
    LOAD = "load"
    FOLDED = "folded"
    """Papered in steps by `ui.scene.folding`; it has no map."""


@dataclass(frozen=True)
class Theme:
    """The tones of one way to show the stage; all "#rrggbb".

    Parameters
    ----------
    paper : the background;  grid : lines on the ground
    skin, inner, bar, stripe, fittings, rim : tones of the door's parts
    body, body_edge, occupant : what stands round the door
    crease : feature lines on metal;  outline : the start shape;  thread : a closed stitch
    text, muted : words in pictures
    tool : a spreader's tips
    plate, plate_text : ground and ink of a word that stands in the scene
    shadow : darkness of the ground under the car, 0 .. 1
    """

    name: str
    paper: str
    grid: str
    skin: str
    inner: str
    bar: str
    stripe: str
    fittings: str
    rim: str
    body: str
    body_edge: str
    occupant: str
    crease: str
    outline: str
    thread: str
    text: str
    muted: str
    plate: str
    plate_text: str
    tool: str
    shadow: float = 0.20


LIGHT = Theme(
    name="light", paper="#F3F2EE", grid="#D3D2CD",
    skin="#CFCFCD", inner="#8E8F90", bar="#4C4D4F", stripe="#67686A", fittings="#222324", rim="#C9C9C7",
    body="#E9E9E7", body_edge="#A3A29E", occupant="#B9B7B1", crease="#26272A", outline="#55565A",
    thread="#17181A", text="#1B1C1E", muted="#55565A", plate="#F3F2EE", plate_text="#1B1C1E",
    tool="#97999C",
)  # fmt: skip
DARK = Theme(
    name="dark", paper="#2A2C2E", grid="#3C3F42",
    skin="#C6C7C6", inner="#85878A", bar="#4A4C4F", stripe="#6A6C70", fittings="#141516", rim="#9FA1A4",
    body="#3A3D40", body_edge="#6D7074", occupant="#5C5E60", crease="#0F1011", outline="#D8D9DA",
    thread="#0C0D0E", text="#F1F1EF", muted="#B4B6B8", plate="#F1F1EF", plate_text="#1B1C1E",
    tool="#A9ABAE", shadow=0.45,
)  # fmt: skip
PROJECTOR = Theme(
    name="projector", paper="#FFFFFF", grid="#CFCFCF",
    skin="#C4C4C4", inner="#7E7E7E", bar="#3A3A3A", stripe="#5E5E5E", fittings="#0E0E0E", rim="#D0D0D0",
    body="#F1F1F1", body_edge="#8A8A8A", occupant="#ADADAD", crease="#000000", outline="#3C3C3C",
    thread="#000000", text="#000000", muted="#3C3C3C", plate="#FFFFFF", plate_text="#000000",
    tool="#8A8A8A", shadow=0.14,
)  # fmt: skip
THEMES = {theme.name: theme for theme in (LIGHT, DARK, PROJECTOR)}


class Pattern(Enum):
    """How an area is filled where hue alone must not tell; names are those of common hatching."""

    SOLID = "solid"
    EMPTY = "empty"
    RISING = "rising lines"
    FALLING = "falling lines"
    CROSSED = "crossed lines"
    LEVEL = "level lines"
    UPRIGHT = "upright lines"
    DOTS = "dots"


@dataclass(frozen=True)
class Mark:
    """Hue and pattern of one class; its word stands beside it wherever it is shown."""

    colour: str
    pattern: Pattern


PLAN_MARKS = {
    "gained": Mark(OKABE_ITO["blue"], Pattern.SOLID),
    "spent": Mark(OKABE_ITO["black"], Pattern.RISING),
    "lost ground": Mark(OKABE_ITO["orange"], Pattern.CROSSED),
    "stop here": Mark(OKABE_ITO["reddish purple"], Pattern.UPRIGHT),
    "not settled": Mark(OKABE_ITO["yellow"], Pattern.DOTS),
}
"""What a move meant for the plan."""

METAL_MARKS = {
    "holding": Mark(OKABE_ITO["black"], Pattern.EMPTY),
    "bending": Mark(OKABE_ITO["sky blue"], Pattern.LEVEL),
    "seam parting": Mark(OKABE_ITO["reddish purple"], Pattern.SOLID),
    "weld broken": Mark(OKABE_ITO["reddish purple"], Pattern.DOTS),
    "skin tearing": Mark(OKABE_ITO["vermillion"], Pattern.RISING),
    "tip shearing through": Mark(OKABE_ITO["vermillion"], Pattern.CROSSED),
    "folding out": Mark(OKABE_ITO["blue"], Pattern.FALLING),
    "folding in": Mark(OKABE_ITO["orange"], Pattern.SOLID),
    "latch free": Mark(OKABE_ITO["bluish green"], Pattern.FALLING),
    "hinge free": Mark(OKABE_ITO["sky blue"], Pattern.UPRIGHT),
    "bar foot free": Mark(OKABE_ITO["bluish green"], Pattern.DOTS),
    "tip slipping": Mark(OKABE_ITO["yellow"], Pattern.RISING),
    "tip off": Mark(OKABE_ITO["yellow"], Pattern.CROSSED),
    "stalled": Mark(OKABE_ITO["yellow"], Pattern.LEVEL),
    "not converged": Mark(OKABE_ITO["black"], Pattern.DOTS),
}
"""What the metal did."""

MAP_MARKS = METAL_MARKS | {
    "striker out": Mark(OKABE_ITO["bluish green"], Pattern.CROSSED),
    "seat slipping": Mark(OKABE_ITO["yellow"], Pattern.FALLING),
    "base giving": Mark(OKABE_ITO["orange"], Pattern.LEVEL),
    "cannot be set": Mark(OKABE_ITO["black"], Pattern.CROSSED),
    "not settled": PLAN_MARKS["not settled"],
}
"""What a cell of an outcome map can say."""

OUT, IN = OKABE_ITO["blue"], OKABE_ITO["vermillion"]
"""Out of the car and into it: the ends of the diverging map, and the arrows before a push."""
SEAM, LOAD = OKABE_ITO["reddish purple"], OKABE_ITO["bluish green"]

OUTBOARD_RANGE_M = 0.10
"""Motion at which the diverging map is full; fixed, so that two pictures can be compared."""
LOAD_RANGE_RATIO = 1.0
"""Share of its yield load at which a sheet shows the full load colour."""


def rgb(word: str) -> Floats:
    """Return "#rrggbb" as a triple from 0 to 1, shape (3,)."""
    return np.array([int(word[i : i + 2], 16) for i in (1, 3, 5)]) / 255.0


def word_of(colour: ArrayLike) -> str:
    """Return a triple from 0 to 1 as "#rrggbb"."""
    values = np.clip(np.rint(np.asarray(colour, dtype=np.float64) * 255.0), 0, 255).astype(int)
    return "#" + "".join(f"{value:02X}" for value in values)


# sRGB (IEC 61966-2-1) to CIE XYZ, D65; and the white of that matrix.
_TO_XYZ = np.array([
    [0.4124564, 0.3575761, 0.1804375], [0.2126729, 0.7151522, 0.0721750], [0.0193339, 0.1191920, 0.9503041],
])  # fmt: skip
_WHITE = _TO_XYZ.sum(axis=1)
_KNEE = 6.0 / 29.0


def to_lab(colours: ArrayLike) -> Floats:
    """Return sRGB triples (..., 3) from 0 to 1 as CIELAB under D65."""
    values = np.asarray(colours, dtype=np.float64)
    linear = np.where(values <= 0.04045, values / 12.92, ((values + 0.055) / 1.055) ** 2.4)
    t = linear @ _TO_XYZ.T / _WHITE
    f = np.where(t > _KNEE**3, np.cbrt(t), t / (3.0 * _KNEE**2) + 4.0 / 29.0)
    x, y, z = f[..., 0], f[..., 1], f[..., 2]
    return np.stack((116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)), axis=-1)


def from_lab(lab: ArrayLike) -> Floats:
    """Return CIELAB (..., 3) under D65 as sRGB triples, cut off at 0 and 1."""
    values = np.asarray(lab, dtype=np.float64)
    y = (values[..., 0] + 16.0) / 116.0
    f = np.stack((y + values[..., 1] / 500.0, y, y - values[..., 2] / 200.0), axis=-1)
    t = np.where(f > _KNEE, f**3, 3.0 * _KNEE**2 * (f - 4.0 / 29.0))
    linear = np.clip(t * _WHITE @ np.linalg.inv(_TO_XYZ).T, 0.0, 1.0)
    return np.where(linear <= 0.0031308, 12.92 * linear, 1.055 * linear ** (1 / 2.4) - 0.055)


@dataclass(frozen=True, eq=False)
class ColourMap:
    """A map from a number to a colour: ``low`` .. ``high`` over a table of sRGB triples, shape (k, 3)."""

    low: float
    high: float
    table: Floats

    def __call__(self, values: ArrayLike) -> Floats:
        """Return the colours of values (n,), cut off at both ends, shape (n, 3)."""
        place = (np.asarray(values, dtype=np.float64) - self.low) / (self.high - self.low)
        at = np.clip(np.nan_to_num(place), 0.0, 1.0) * (len(self.table) - 1)
        first = np.minimum(at.astype(np.int64), len(self.table) - 2)
        share = (at - first)[..., None]
        return self.table[first] * (1.0 - share) + self.table[first + 1] * share


def _through(words: tuple[str, ...], count: int = 257) -> Floats:
    """Return a table that runs straight in CIELAB through equally spaced colours, shape (count, 3)."""
    knots = to_lab(np.array([rgb(word) for word in words]))
    where = np.linspace(0.0, len(words) - 1.0, count)
    return from_lab(
        np.stack([np.interp(where, np.arange(len(words)), knots[:, i]) for i in range(3)], axis=1)
    )


NEUTRAL = "#E4E3E0"
MAPS = {
    ColourMode.OUTBOARD: ColourMap(
        -OUTBOARD_RANGE_M, OUTBOARD_RANGE_M,
        _through(("#8A3200", "#D55E00", "#F0B070", NEUTRAL, "#8CC0E2", "#0072B2", "#003E73")),
    ),
    ColourMode.SEAM: ColourMap(0.0, 1.0, _through((NEUTRAL, "#DFA8C6", "#B9588F", "#8C2D66"))),
    ColourMode.LOAD: ColourMap(0.0, LOAD_RANGE_RATIO, _through((NEUTRAL, "#93CDB6", "#009E73", "#006247"))),
}  # fmt: skip
"""The map of each colour mode that has one; its ends stand out from the ground of the dark theme as well."""

FOLD_PAPERS: tuple[tuple[str, str, float], ...] = (
    (NEUTRAL, NEUTRAL, 0.0),
    ("#9FCAE8", "#1E5878", 0.15),
    ("#5B9FCC", "#164A68", 0.32),
    ("#2A6690", "#D9EDF9", 0.12),
    ("#0A2540", "#0A2540", 0.0),
)
"""Steps of folding, the least first: ground, its slanting lines, and the share of it that the lines take."""

_LABELS = {
    ColourMode.OUTBOARD: ("into the car", "start", "out of the car"),
    ColourMode.SEAM: ("seam whole", "", "seam parted"),
    ColourMode.LOAD: ("no load", "", "yielding"),
}


def colour_bar(
    mode: ColourMode | str, count: int = 33
) -> tuple[list[tuple[float, str]], list[tuple[float, str]]]:
    """Return the stops and the labels of a legend, both from place 0 to 1 along the bar.

    Returns
    -------
    stops : (place, "#rrggbb"), for a linear gradient
    labels : (place, words); lengths in millimetres, zero always among them; empty for "material"
    """
    mode = ColourMode(mode)
    if mode is ColourMode.MATERIAL:
        return [], []
    if mode is ColourMode.FOLDED:
        return _fold_bar()
    places = np.linspace(0.0, 1.0, count)
    scale = MAPS[mode]
    stops = [
        (float(p), word_of(c))
        for p, c in zip(places, scale(scale.low + places * (scale.high - scale.low)), strict=True)
    ]
    low, middle, high = _LABELS[mode]
    if mode is ColourMode.OUTBOARD:
        reach = f"{1e3 * scale.high:.0f} mm"
        return stops, [(0.0, f"{reach} {low}"), (0.5, "0"), (1.0, f"{reach} {high}")]
    return stops, [(0.0, low), (0.5, middle or "half"), (1.0, high)]


def _fold_bar() -> tuple[list[tuple[float, str]], list[tuple[float, str]]]:
    """Return the steps of folding as stops with hard edges, and the words at both ends and at each bound."""
    count = len(FOLD_PAPERS)
    stops = [
        (place, ground)
        for step, (ground, _, _) in enumerate(FOLD_PAPERS)
        for place in (step / count + 1e-4, (step + 1) / count)
    ]
    bounds = [((step + 1) / count, words) for step, words in enumerate(bound_words())]
    return [(0.0, FOLD_PAPERS[0][0]), *stops], [(0.0, STEP_WORDS[0]), *bounds, (1.0, STEP_WORDS[-1])]
