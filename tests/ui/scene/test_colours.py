"""Colours: what is told apart stays apart for the three common kinds of colour vision, and in grey.

The colour difference and the simulation are typed here on their own, from their publications; the program
has neither. Verified first against published values, then used on the program's colours.

Sources
-------
[sharma-2005] Sharma, Wu, Dalal, Color Res. Appl. 30(1), 21-30: CIEDE2000 and its table 1 of test pairs
[machado-2009] Machado, Oliveira, Fernandes, IEEE TVCG 15(6), 1291-1298: matrices of severity 1.0, linear RGB
[okabe-ito-2002] Okabe, Ito, "Color Universal Design": the palette
[wcag-2.2] W3C, Web Content Accessibility Guidelines 2.2, 1.4.6 (7:1 for text) and 1.4.11 (3:1 for graphics)
[iec-61966-2-1] sRGB; the Lab of its red primary under D65 as commonly tabulated (from memory)
"""

from __future__ import annotations

import itertools

import numpy as np
import pytest

from ui.scene import colours
from ui.scene.colours import METAL_MARKS, OKABE_ITO, PLAN_MARKS, THEMES, ColourMode, colour_bar, rgb, to_lab

VISIONS = {
    "common": np.eye(3),
    "protan": np.array([
        [0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998],
    ]),
    "deutan": np.array([
        [0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881],
    ]),
    "tritan": np.array([
        [1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900],
    ]),
}  # fmt: skip


def linear(colour):
    c = np.asarray(colour, dtype=float)
    return np.where(c <= 0.04045, c / 12.92, ((c + 0.055) / 1.055) ** 2.4)


def seen(colour, vision):
    """Return a colour as one kind of vision sees it [machado-2009]."""
    out = np.clip(VISIONS[vision] @ linear(colour), 0.0, 1.0)
    return np.where(out <= 0.0031308, 12.92 * out, 1.055 * out ** (1 / 2.4) - 0.055)


def difference(first, second):
    """Return CIEDE2000 of two Lab colours [sharma-2005], eqs. 2 to 22."""
    (l1, a1, b1), (l2, a2, b2) = first, second
    mean_c7 = (0.5 * (np.hypot(a1, b1) + np.hypot(a2, b2))) ** 7
    g = 0.5 * (1.0 - np.sqrt(mean_c7 / (mean_c7 + 25.0**7)))
    c1, c2 = np.hypot((1 + g) * a1, b1), np.hypot((1 + g) * a2, b2)
    h1 = np.degrees(np.arctan2(b1, (1 + g) * a1)) % 360.0
    h2 = np.degrees(np.arctan2(b2, (1 + g) * a2)) % 360.0
    turn = 0.0 if c1 * c2 == 0.0 else (h2 - h1 + 180.0) % 360.0 - 180.0
    if c1 * c2 != 0.0 and np.isclose(abs(h2 - h1), 180.0, rtol=0.0, atol=1e-12):
        turn = h2 - h1
    step_h = 2.0 * np.sqrt(c1 * c2) * np.sin(np.radians(turn) / 2.0)
    if c1 * c2 == 0.0:
        mean_h = h1 + h2
    elif abs(h1 - h2) <= 180.0:
        mean_h = 0.5 * (h1 + h2)
    else:
        mean_h = 0.5 * (h1 + h2 + (360.0 if h1 + h2 < 360.0 else -360.0))
    mean_l, mean_c = 0.5 * (l1 + l2), 0.5 * (c1 + c2)
    t = (
        1.0 - 0.17 * np.cos(np.radians(mean_h - 30)) + 0.24 * np.cos(np.radians(2 * mean_h))
        + 0.32 * np.cos(np.radians(3 * mean_h + 6)) - 0.20 * np.cos(np.radians(4 * mean_h - 63))
    )  # fmt: skip
    swing = 30.0 * np.exp(-(((mean_h - 275.0) / 25.0) ** 2))
    rc = 2.0 * np.sqrt(mean_c**7 / (mean_c**7 + 25.0**7))
    sl = 1.0 + 0.015 * (mean_l - 50.0) ** 2 / np.sqrt(20.0 + (mean_l - 50.0) ** 2)
    sc, sh = 1.0 + 0.045 * mean_c, 1.0 + 0.015 * mean_c * t
    dl, dc, dh = (l2 - l1) / sl, (c2 - c1) / sc, step_h / sh
    return float(np.sqrt(dl**2 + dc**2 + dh**2 - np.sin(np.radians(2.0 * swing)) * rc * dc * dh))


def apart(first, second, vision):
    """Return how far apart two "#rrggbb" or triples are for one kind of vision."""
    pair = [rgb(c) if isinstance(c, str) else np.asarray(c) for c in (first, second)]
    return difference(*(to_lab(seen(c, vision)) for c in pair))


@pytest.mark.parametrize(
    ("first", "second", "expected"),
    [
        ((50, 2.6772, -79.7751), (50, 0, -82.7485), 2.0425),
        ((50, -1.3802, -84.2814), (50, 0, -82.7485), 1.0000),
        ((50, 0, 0), (50, -1, 2), 2.3669),
        ((50, 2.49, -0.001), (50, -2.49, 0.0009), 7.1792),
        ((50, 2.5, 0), (50, 0, -2.5), 4.3065),
        ((50, 2.5, 0), (73, 25, -18), 27.1492),
        ((50, 2.5, 0), (61, -5, 29), 22.8977),
        ((50, 2.5, 0), (56, -27, -3), 31.9030),
        ((50, 2.5, 0), (58, 24, 15), 19.4535),
    ],
)
def test_the_difference_is_the_published_one(first, second, expected):
    assert difference(first, second) == pytest.approx(expected, abs=5e-5)  # table 1 has four decimals


@pytest.mark.parametrize("vision", ["protan", "deutan", "tritan"])
def test_the_simulation_leaves_grey_alone(vision):
    assert VISIONS[vision].sum(axis=1) == pytest.approx(
        np.ones(3), abs=2e-6
    )  # six printed decimals, three added


def test_lab_of_known_colours():
    assert to_lab([1.0, 1.0, 1.0]) == pytest.approx([100.0, 0.0, 0.0], abs=1e-3)
    assert to_lab([1.0, 0.0, 0.0]) == pytest.approx([53.24, 80.09, 67.20], abs=0.02)  # two printed decimals


def test_lab_and_back_is_the_same_colour():
    grid = np.array(list(itertools.product(np.linspace(0, 1, 6), repeat=3)))
    np.testing.assert_allclose(colours.from_lab(to_lab(grid)), grid, rtol=0, atol=2e-6)  # rounded sRGB knee


def test_the_hues_are_okabe_and_itos():
    published = [(0, 0, 0), (230, 159, 0), (86, 180, 233), (0, 158, 115), (240, 228, 66), (0, 114, 178),
                 (213, 94, 0), (204, 121, 167)]  # fmt: skip
    assert [tuple(np.rint(255 * rgb(word)).astype(int)) for word in OKABE_ITO.values()] == published


@pytest.mark.parametrize("vision", VISIONS)
@pytest.mark.parametrize("share", [0.2, 0.5, 1.0])
def test_out_and_in_are_told_apart(vision, share):
    """20 is plain to see where about 1 can just be noticed; a fifth of the range is faint by right."""
    scale = colours.MAPS[ColourMode.OUTBOARD]
    out, into = scale(share * scale.high), scale(share * scale.low)
    assert apart(out, into, vision) > (20.0 if share >= 0.5 else 8.0)
    assert apart(out, scale(0.0), vision) > (12.0 if share >= 0.5 else 4.0)
    assert apart(into, scale(0.0), vision) > (12.0 if share >= 0.5 else 4.0)


@pytest.mark.parametrize("vision", VISIONS)
@pytest.mark.parametrize("mode", [ColourMode.OUTBOARD, ColourMode.SEAM, ColourMode.LOAD])
def test_maps_darken_evenly_from_their_zero(mode, vision):
    """Also seen otherwise, a map never turns back: more is always darker."""
    scale = colours.MAPS[mode]
    for end in {scale.high, scale.low} - {0.0}:
        light = [to_lab(seen(scale(v), vision))[0] for v in np.linspace(0.0, end, 21)]
        assert np.all(np.diff(light) < -0.2)


def test_the_diverging_map_is_balanced_and_its_middle_neutral():
    scale = colours.MAPS[ColourMode.OUTBOARD]
    assert scale.low == -scale.high
    middle = to_lab(scale(0.0))
    assert np.hypot(*middle[1:]) < 3.0
    for share in (0.25, 0.5, 0.75, 1.0):
        light = [to_lab(scale(sign * share * scale.high))[0] for sign in (1, -1)]
        assert abs(light[0] - light[1]) < 12.0


def test_values_beyond_the_range_and_not_a_number_stay_on_the_map():
    scale = colours.MAPS[ColourMode.LOAD]
    np.testing.assert_array_equal(scale([9.0]), scale([scale.high]))
    assert np.isfinite(scale([np.nan])).all()


APART = 10.0
"""CIEDE2000 between classes of one pattern: ten times the just noticeable (common practice, no source)."""


@pytest.mark.parametrize("marks", [PLAN_MARKS, METAL_MARKS, colours.MAP_MARKS])
def test_classes_differ_in_pattern_or_clearly_in_hue(marks):
    for (first, a), (second, b) in itertools.combinations(marks.items(), 2):
        if a.pattern is not b.pattern:
            continue
        worst = min(apart(a.colour, b.colour, vision) for vision in VISIONS)
        assert worst >= APART, (first, second, worst)


def test_no_two_classes_are_the_same_in_hue_and_pattern():
    for marks in (PLAN_MARKS, METAL_MARKS):
        assert len({(mark.colour, mark.pattern) for mark in marks.values()}) == len(marks)


def contrast(first, second):
    """Return the contrast ratio of [wcag-2.2]."""
    light = sorted((0.2126, 0.7152, 0.0722) @ linear(rgb(word)) + 0.05 for word in (first, second))
    return light[1] / light[0]


def test_contrast_of_black_on_white_is_21():
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0, abs=1e-9)


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda theme: theme.name)
def test_themes_can_be_read_from_the_back_row(theme):
    assert contrast(theme.text, theme.paper) >= 7.0
    assert contrast(theme.muted, theme.paper) >= 4.5
    assert contrast(theme.crease, theme.skin) >= 7.0
    assert contrast(theme.thread, theme.skin) >= 7.0
    assert contrast(theme.skin, theme.inner) >= 1.8
    assert contrast(theme.inner, theme.bar) >= 1.8


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda theme: theme.name)
def test_parts_have_no_hue(theme):
    """Hue is for meaning: chroma below 4 reads as grey (common practice, no source)."""
    for tone in ("skin", "inner", "bar", "stripe", "fittings", "body", "occupant", "paper"):
        assert np.hypot(*to_lab(rgb(getattr(theme, tone)))[1:]) < 4.0


FULL = {
    f"{mode.value} {end}": colours.word_of(colours.MAPS[mode](getattr(colours.MAPS[mode], end)))
    for mode, end in (
        (ColourMode.OUTBOARD, "low"), (ColourMode.OUTBOARD, "high"), (ColourMode.SEAM, "high"),
        (ColourMode.LOAD, "high"),
    )
} | {f"folded {step}": paper[0] for step, paper in enumerate(colours.FOLD_PAPERS) if step}  # fmt: skip
"""What metal is coloured where it tells most, and every step of folding but the one that is as it was."""


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda theme: theme.name)
@pytest.mark.parametrize("name", sorted(FULL))
def test_coloured_metal_stands_out_from_ground_and_body_in_every_theme(theme, name):
    """What lies behind and beside the metal is no class of its colours: 10 apart for every vision."""
    for ground in (theme.paper, theme.body):
        worst = min(apart(FULL[name], ground, vision) for vision in VISIONS)
        assert worst >= APART, (name, ground, worst)


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda theme: theme.name)
@pytest.mark.parametrize("hue", ["SEAM", "LOAD", "OUT", "IN"])
def test_stitches_path_and_arrows_stand_out_in_every_theme(theme, hue):
    """Drawn on skin, before the body and before the ground."""
    for ground in (theme.paper, theme.body, theme.skin):
        assert min(apart(getattr(colours, hue), ground, vision) for vision in VISIONS) >= APART
        assert contrast(getattr(colours, hue), ground) >= 1.7


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda theme: theme.name)
def test_lines_of_a_section_and_of_the_start_shape_are_seen_in_every_theme(theme):
    """3:1 for graphics [wcag-2.2]; a section's dark line lies on its halo, which has the plate's tone."""
    assert contrast(theme.outline, theme.paper) >= 3.0
    assert contrast(theme.plate_text, theme.plate) >= 7.0
    assert contrast(theme.crease, theme.plate) >= 7.0


def test_the_bar_has_its_zero_and_its_ends():
    stops, labels = colour_bar("outboard")
    assert [place for place, _ in labels] == [0.0, 0.5, 1.0]
    assert dict(labels)[0.5] == "0"
    assert "into" in dict(labels)[0.0] and "out of" in dict(labels)[1.0]
    assert stops[0][0] == 0.0 and stops[-1][0] == 1.0
    assert colour_bar("material") == ([], [])


@pytest.mark.parametrize("vision", VISIONS)
def test_words_of_an_outcome_map_are_told_apart(vision):
    """In a map areas are filled with the hue itself: 10 apart where they share a pattern."""
    for (first, a), (second, b) in itertools.combinations(colours.MAP_MARKS.items(), 2):
        if a.pattern is b.pattern:
            assert apart(a.colour, b.colour, vision) > 10.0, (first, second)


def test_the_usual_words_of_a_map_differ_in_pattern_alone():
    """What the ready maps say is told apart in a black and white print."""
    usual = (
        "seam parting",
        "latch free",
        "hinge free",
        "skin tearing",
        "not settled",
        "stalled",
        "weld broken",
    )
    patterns = [colours.MAP_MARKS[word].pattern for word in usual if word != "weld broken"]
    assert len(set(patterns)) == len(patterns)


@pytest.mark.parametrize("word", sorted(colours.MAP_MARKS))
def test_a_pattern_s_ink_is_seen_on_its_hue(word):
    """3:1 for graphics [wcag-2.2]; the dark ink of the patterns stands on every hue but black's own paper."""
    colour = colours.MAP_MARKS[word].colour
    if colour != OKABE_ITO["black"]:
        assert contrast("#1B1C1E", colour) >= 3.0


MAIN = ("holding", "seam parting", "skin tearing", "latch free", "hinge free", "not settled")
"""What a map of a door mostly says: these stand beside one another in areas, so hue alone has to do."""


@pytest.mark.parametrize("vision", VISIONS)
@pytest.mark.parametrize(("first", "second"), list(itertools.combinations(MAIN, 2)))
def test_the_main_words_of_a_map_are_told_apart_by_hue_alone(first, second, vision):
    marks = [colours.MAP_MARKS[word].colour for word in (first, second)]
    assert apart(*marks, vision) >= 10.0


@pytest.mark.parametrize("vision", VISIONS)
def test_steps_of_folding_are_told_apart_and_darken(vision):
    """Grounds 10 apart, each darker than the one before, for every kind of colour vision."""
    grounds = [ground for ground, _, _ in colours.FOLD_PAPERS]
    for first, second in itertools.combinations(grounds, 2):
        assert apart(first, second, vision) >= APART, (first, second)
    light = [to_lab(seen(rgb(ground), vision))[0] for ground in grounds]
    assert np.all(np.diff(light) < -8.0)


def test_steps_of_folding_hold_on_a_washed_out_wall():
    """Half of the light on the wall is the room's (common practice, no source): neighbours stay in sight.

    What tells them then is 2.3 and more, the difference that is just noticed by a usual eye in use
    [mahy-1994, from memory], and the lines, which no two neighbours with lines have alike.
    """
    washed = [to_lab(np.sqrt(0.5 * rgb(ground) ** 2 + 0.5)) for ground, _, _ in colours.FOLD_PAPERS]
    assert all(difference(a, b) > 2.3 for a, b in itertools.pairwise(washed))
    shares = [share for _, _, share in colours.FOLD_PAPERS]
    assert all(abs(a - b) >= 0.1 for a, b in itertools.pairwise(shares))


def test_the_bar_of_folding_has_its_bounds_in_numbers():
    stops, labels = colour_bar("folded")
    assert [place for place, _ in labels] == pytest.approx([0.0, 0.2, 0.4, 0.6, 0.8, 1.0])
    assert [words for _, words in labels][1:-1] == ["0.05", "0.2", "1", "5 kJ/m\u00b2"]
    assert {colour for _, colour in stops} == {ground for ground, _, _ in colours.FOLD_PAPERS}
