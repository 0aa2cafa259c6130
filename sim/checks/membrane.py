"""In-plane sheet springs: the distorted patch, the pulled bar and the sheared panel.

The benchmark's own inner points lie on the rectangle's diagonals; cut in triangles, every choice of diagonal
puts the six points of some bending patch on one conic, where its three hinge angles cannot tell the
curvatures apart.  The inner points here are therefore moved by about a centimetre; the answer does not depend
on them.

References
----------
[macneal-harder-1985] patch under a linear edge displacement; bar F L / E A and panel F / b t G, textbook.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from sim.checks import specimens
from sim.checks.row import TEXTBOOK, Row
from sim.checks.specimens import Answer
from sim.structure import Section, Structure

Floats = NDArray[np.float64]

# corners of the rectangle, then the four inner points [m]; five quads cut in two
PATCH_POINTS = (
    (0.0, 0.0), (0.24, 0.0), (0.24, 0.12), (0.0, 0.12),
    (0.05, 0.03), (0.17, 0.02), (0.16, 0.09), (0.07, 0.08),
)  # fmt: skip
PATCH_QUADS = ((0, 1, 5, 4), (1, 2, 6, 5), (2, 3, 7, 6), (3, 0, 4, 7), (4, 5, 6, 7))
GRADIENT = 1.0e-3 * np.array([[1.0, 0.5], [0.5, 1.0]])
# Young's modulus a million times the benchmark's, so that the solver's force limit is nothing beside the
# forces; stresses scale with it
PATCH_YOUNG_PA = 1.0e12
# stresses of the benchmark [Pa], for its own modulus of 1e6: Hooke's law in plane stress, computed
PATCH_STRESS = {0.25: (1333.3333e6, 400.0e6), 1.0 / 3.0: (1500.0e6, 375.0e6)}
PATCH_SPACING = "10 triangles"


@lru_cache
def solved_patch(nu: float) -> Answer:
    """Return the distorted patch with its four corners on the linear field."""
    points = np.column_stack([np.array(PATCH_POINTS), np.zeros(8)])
    triangles = [t for a, b, c, d in PATCH_QUADS for t in ((a, b, c), (a, c, d))]
    section = Section("sheet", 1.0e-3, specimens.metal(young_pa=PATCH_YOUNG_PA, nu=nu))
    structure = Structure(points, np.array(triangles, np.int64), np.zeros(10, np.int64), (section,))
    structure = specimens.held(structure, ([0, 1, 2, 3], "xyz"))
    start = structure.points.copy()
    start[:4, :2] += start[:4, :2] @ GRADIENT.T
    return specimens.solve(structure, start=start)


def patch_field(nu: float) -> Row:
    """Return how far inner points of the patch lie off the linear field, over the field's size."""
    answer = solved_patch(nu)
    field = answer.network.structure.points[:, :2] @ GRADIENT.T
    off = max(float(np.abs(answer.moved[:, :2] - field).max()), float(np.abs(answer.moved[:, 2]).max()))
    return Row(
        f"distorted patch, \u03bd {nu:.2f}: inner points on the linear field",
        "macneal-harder-1985",
        0.0,
        off / float(np.abs(field).max()),
        "of the field",
        1e-6,  # coupled edge springs hold a constant strain exactly
        "within",
        PATCH_SPACING,
    )


def patch_stress(nu: float) -> tuple[float, float]:
    """Return (sigma, tau) of the patch from the force that holds a corner [Pa]."""
    # half of each neighbouring edge pulls on corner 2: edges +x (0.12 long) and +y (0.24), 1 mm thick
    half = 1.0e-3 * np.array([[0.06, 0.12], [0.12, 0.06]])
    direct, shear = np.linalg.solve(half, solved_patch(nu).reactions[2, :2])
    nominal = np.array([[direct, shear], [shear, direct]])
    second = np.linalg.solve(np.eye(2) + GRADIENT, nominal)
    return float(second[0, 0]), float(second[0, 1])


def green_over_linear(nu: float) -> tuple[float, float]:
    """Return by how much Green's strain of the field raises direct and shear stress, about 1.001 times."""
    linear = 0.5 * (GRADIENT + GRADIENT.T)
    green = linear + 0.5 * GRADIENT.T @ GRADIENT
    direct = (green[0, 0] + nu * green[1, 1]) / (linear[0, 0] + nu * linear[1, 1])
    return float(direct), float(green[0, 1] / linear[0, 1])


def patch_direct(nu: float) -> Row:
    """Return the direct stress of the patch; its large-strain part is taken from the field itself."""
    # 1e-4, the printed digits
    return Row(
        f"distorted patch, \u03bd {nu:.2f}: direct stress",
        "macneal-harder-1985",
        PATCH_STRESS[nu][0] / 1e6,
        patch_stress(nu)[0] / green_over_linear(nu)[0] / 1e6,
        "MPa",
        1e-4,
        spacing=PATCH_SPACING,
    )


def patch_shear(nu: float) -> Row:
    """Return the shear stress of the patch."""
    return Row(
        f"distorted patch, \u03bd {nu:.2f}: shear stress",
        "macneal-harder-1985",
        PATCH_STRESS[nu][1] / 1e6,
        patch_stress(nu)[1] / green_over_linear(nu)[1] / 1e6,
        "MPa",
        1e-4,
        spacing=PATCH_SPACING,
    )


def _strip(angle_deg: float) -> lattice.Lattice:
    # eight spacings across, as the case asks
    return lattice.rectangle(0.1, 0.02, 0.0025, np.radians(angle_deg))


@lru_cache
def _pulled(angle_deg: float, nu: float) -> tuple[float, float]:
    """Return how much the bar has grown and narrowed [m]."""
    lat = _strip(angle_deg)
    structure = specimens.sheet(lat, 1.0e-3, specimens.metal(nu=nu))
    left, right = lat.boundary["left"], lat.boundary["right"]
    corner = specimens.node_at(structure.points, 0.0, 0.0)
    structure = specimens.held(structure, (slice(None), "z"), (left, "x"), ([corner], "y"))
    dead = np.zeros_like(structure.points)
    dead[right] += specimens.shared(structure.points, right, (1000.0, 0.0, 0.0))
    moved = specimens.solve(structure, dead).moved
    narrowing = moved[lat.boundary["top"], 1].mean() - moved[lat.boundary["bottom"], 1].mean()
    return float(moved[right, 0].mean()), float(narrowing)


def bar_growth(angle_deg: float, nu: float) -> Row:
    """Return the lengthening of a pulled bar on a turned lattice."""
    # 0.1 %: the strain of 2.4e-4 itself is all that tells Green from small strain; same for every angle
    return Row(
        f"pulled bar, \u03bd {nu:.2f}, lattice at {angle_deg:.0f}\u00b0: lengthening",
        TEXTBOOK,
        1e3 * 1000.0 * 0.1 / (specimens.STEEL_PA * 20.0e-6),
        1e3 * _pulled(angle_deg, nu)[0],
        "mm",
        1e-3,
        spacing="8 across",
    )


def bar_narrowing(angle_deg: float, nu: float) -> Row:
    """Return the narrowing of a pulled bar on a turned lattice."""
    return Row(
        f"pulled bar, \u03bd {nu:.2f}, lattice at {angle_deg:.0f}\u00b0: narrowing",
        TEXTBOOK,
        -1e3 * nu * 1000.0 / (specimens.STEEL_PA * 1.0e-3),
        1e3 * _pulled(angle_deg, nu)[1],
        "mm",
        1e-3,
        spacing="8 across",
    )


def panel_shear(angle_deg: float, nu: float) -> Row:
    """Return the shear of a panel under an even shear flow on a turned lattice."""
    lat = _strip(angle_deg)
    structure = specimens.sheet(lat, 1.0e-3, specimens.metal(nu=nu))
    points, corner = structure.points, specimens.node_at(structure.points, 0.0, 0.0)
    other = specimens.node_at(structure.points, 0.1, 0.0)
    structure = specimens.held(structure, (slice(None), "z"), ([corner], "xy"), ([other], "y"))
    flow = 1.0e4  # [N/m] along every edge
    dead = np.zeros_like(points)
    for name, length, way in (
        ("top", 0.1, (1, 0, 0)), ("bottom", 0.1, (-1, 0, 0)),
        ("right", 0.02, (0, 1, 0)), ("left", 0.02, (0, -1, 0)),
    ):  # fmt: skip
        chain = lat.boundary[name]
        dead[chain] += specimens.shared(points, chain, flow * length * np.array(way))
    moved = specimens.solve(structure, dead).moved
    gamma = float(np.mean(moved[lat.boundary["top"], 0] - moved[lat.boundary["bottom"], 0])) / 0.02
    return Row(
        f"sheared panel, \u03bd {nu:.2f}, lattice at {angle_deg:.0f}\u00b0: shear modulus",
        TEXTBOOK,
        specimens.STEEL_PA / (2.0 * (1.0 + nu)) / 1e9,
        flow / (1.0e-3 * gamma) / 1e9,
        "GPa",
        1e-3,
        spacing="8 across",
    )
