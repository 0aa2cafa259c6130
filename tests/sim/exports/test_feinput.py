"""The input for a general-purpose solver: what it says is the model, checked without any solver."""

import re

import numpy as np
import pytest

from sim import feinput
from sim.door_model import build_model
from sim.network import Load, Network
from sim.plan import Car


@pytest.fixture(scope="module", params=["bonded", "welded", "mixed"])
def structure(request):
    return build_model(Car(lattice_spacing_m=0.09, seam=request.param)).structure


def cards(text: str) -> list[tuple[str, list[list[str]]]]:
    """Return the input's cards: the keyword line, and its rows of words."""
    out: list[tuple[str, list[list[str]]]] = []
    for line in text.splitlines():
        if line.startswith("**"):
            continue
        if line.startswith("*"):
            out.append((line, []))
        else:
            out[-1][1].append([word.strip() for word in line.split(",")])
    return out


def named(text: str, keyword: str) -> list[tuple[str, list[list[str]]]]:
    return [card for card in cards(text) if card[0].startswith(keyword)]


def nodes_of(text: str) -> dict[int, np.ndarray]:
    rows = [row for _, block in named(text, "*NODE,") for row in block]
    return {int(row[0]): np.array(row[1:], dtype=float) for row in rows}


def test_springs_hold_the_energy_of_bonds_and_ties(structure):
    """Half k v^2 of the weighted sums, against the network's own laws at a motion of a micrometre."""
    elastic = feinput.elastic(structure)
    network = Network(elastic)
    state = network.initial_state()
    rng = np.random.default_rng(1)
    move = 1.0e-9 * rng.standard_normal(structure.points.shape)
    ev = network.evaluate(state.points + move, state, Load())
    own = float(ev.bond_stored.sum() + ev.tie_stored.sum())
    told = 0.0
    for spring in feinput.springs(elastic):
        along = spring.axes @ (spring.weights @ move[spring.nodes])
        told += 0.5 * float(spring.stiffness_n_per_m @ along**2)
    # the normal turns with the sheet: second order in a motion that is 1e-7 of the lattice
    assert told == pytest.approx(own, rel=1e-5)
    assert told > 0.0


def test_axes_are_at_right_angles(structure):
    for spring in feinput.springs(feinput.elastic(structure)):
        np.testing.assert_allclose(spring.axes @ spring.axes.T, np.eye(3), rtol=0.0, atol=1e-12)


@pytest.mark.parametrize("quadratic", [False, True])
def test_shells_are_the_sheets(structure, quadratic):
    text = feinput.shell_input(structure, "door", quadratic=quadratic)
    nodes = nodes_of(text)
    kind = "S6" if quadratic else "S3"
    shells = [card for card in named(text, "*ELEMENT") if f"TYPE={kind}" in card[0]]
    rows = [row for _, block in shells for row in block]
    assert len(rows) == len(structure.triangles)
    assert sorted(int(row[0]) for row in rows) == list(range(1, len(rows) + 1))
    told = 0.0
    for row in rows:
        a, b, c = (nodes[int(n)] for n in row[1:4])
        told += 0.5 * float(np.linalg.norm(np.cross(b - a, c - a)))
        if quadratic:
            for middle, (p, q) in zip(row[4:], ((a, b), (b, c), (c, a)), strict=True):
                np.testing.assert_allclose(nodes[int(middle)], 0.5 * (p + q), rtol=0.0, atol=2e-9)
    p, t = structure.points, structure.triangles
    own = 0.5 * np.linalg.norm(np.cross(p[t[:, 1]] - p[t[:, 0]], p[t[:, 2]] - p[t[:, 0]]), axis=1).sum()
    assert told == pytest.approx(float(own), rel=1e-7)  # nine digits a coordinate
    number = feinput.file_number(structure)
    for node in np.unique(t):
        np.testing.assert_allclose(nodes[int(number[node])], p[node], rtol=0.0, atol=1e-9)


def test_a_form_ratio_keeps_stretch_and_multiplies_bending(structure):
    """E t and E t^3 / 12 of the file: f times thicker at an f-th of the modulus."""
    text = feinput.shell_input(structure, "door")
    metals = {
        re.search("NAME=(.*)", key).group(1): i
        for i, (key, _) in enumerate(cards(text))
        if "*MATERIAL" in key
    }
    sections = {
        re.search("ELSET=([^,]*)", key).group(1): float(block[0][0]) for key, block in named(text, "*SHELL")
    }
    used = set(structure.triangle_section.tolist())
    assert len(sections) == len(used)
    for index in used:
        section = structure.sections[index]
        name = section.name.upper().replace(" ", "_")
        young = float(cards(text)[metals[name] + 1][1][0][0])
        t, f = section.thickness_m, section.form_ratio
        assert young * sections[name] == pytest.approx(section.metal.young_pa * t, rel=1e-8)
        assert young * sections[name] ** 3 == pytest.approx(f**2 * section.metal.young_pa * t**3, rel=1e-8)


def test_beams_keep_both_stiffnesses(structure):
    text = feinput.shell_input(structure, "door")
    all_cards = cards(text)
    for beam in structure.beams:
        name = beam.name.upper().replace(" ", "_")
        at = next(i for i, (key, _) in enumerate(all_cards) if key == f"*MATERIAL, NAME={name}")
        young, side = float(all_cards[at + 1][1][0][0]), float(all_cards[at + 2][1][0][0])
        assert young * side**2 == pytest.approx(beam.axial_n, rel=1e-8)
        assert young * side**4 / 12.0 == pytest.approx(beam.bending_n_m2, rel=1e-7)


def test_equations_sum_their_terms_and_name_nodes_that_are_there(structure):
    text = feinput.shell_input(structure, "door")
    nodes = nodes_of(text)
    held = {int(row[0]) for key, block in named(text, "*NODE, NSET=HELD") for row in block}
    assert len(held) == len(feinput.springs(feinput.elastic(structure)))
    bound: set[tuple[int, int]] = set()
    for _, block in named(text, "*EQUATION"):
        words = [word for row in block[1:] for word in row]
        assert len(words) == 3 * int(block[0][0])
        terms = [(int(n), int(d)) for n, d in zip(words[::3], words[1::3], strict=True)]
        assert all(n in nodes for n, _ in terms)
        assert terms[0] not in bound and float(words[2]) == -1.0
        bound.add(terms[0])
    assert {(n, d) for n in held for d in (1, 2, 3)} <= bound


def test_every_line_fits_and_elements_are_numbered_once(structure):
    text = feinput.shell_input(structure, "door", quadratic=True)
    assert max(len(line) for line in text.splitlines()) <= 132
    numbers = [row[0] for _, block in named(text, "*ELEMENT") for row in block]
    assert len(numbers) == len(set(numbers))
