"""What it costs the blades to part metal: by ultimate shear, sheet by sheet, and what the fittings hold."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.blades import Line, Section
from sim.bond import END, LENGTH, bond_response
from sim.network import Network, State
from sim.severed import Severed
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

LINE = "cut"
"""Line of the ledger the blades' work stands on."""
SHEAR_OVER_TENSILE = 0.8  # ultimate shear over tensile strength of mild sheet, from memory
FITTING_WAY_M = 0.005  # way over which a hinge's or striker's pin is sheared, about half of it, assumed
BEAM_TURN_RAD = 1.0  # turn a bar is bent through before it is sheared, assumed


def blade_work(
    network: Network,
    where: Line,
    gaps: list[tuple[int, int]],
    taken: tuple[int, ...],
    gone: Bools,
    made: Severed,
    state: State,
) -> float:
    """Return the blades' work [J]: shear over the thickness, tau t per area, and what bonds still hold.

    A bar is bent by one radian and a fitting's pin sheared over five millimetres (assumed).
    """
    s, work = network.structure, 0.0
    shear = _shear_n_per_m(network)
    lengths = {tuple(sorted(e)): 0.0 for e in where.edges.tolist()}
    for t, corners in enumerate(s.triangles.tolist()):
        for a, b in ((corners[0], corners[1]), (corners[1], corners[2]), (corners[2], corners[0])):
            key = (min(a, b), max(a, b))
            if key in lengths:
                lengths[key] += 0.5 * shear[t] * float(network.thickness[t])
    for (a, b), per_m in lengths.items():
        work += per_m * float(np.linalg.norm(s.points[a] - s.points[b]))
    work += sum(beam_work(s, i) for i, _ in gaps)
    work += sum(tie_work(s, i) for i in taken)
    for row in np.flatnonzero(gone).tolist():
        law, worst = made.structure.bonds.law[row], float(state.worst[made.bond_origin[row]])
        full = bond_response(0.0, float(law[END]), law)[1]
        work += (full - bond_response(0.0, worst, law)[1]) * float(law[LENGTH])
    return float(work)


def beam_work(structure: Structure, index: int) -> float:
    """Return what it takes to bend a bar flat between the blades until it parts [J]."""
    return BEAM_TURN_RAD * structure.beams[index].plastic_moment_n_m


def tie_work(structure: Structure, index: int) -> float:
    """Return what it takes to shear a fitting's pin [J]."""
    limit = structure.ties[index].limit_n
    return FITTING_WAY_M * float(np.max(np.where(np.isfinite(limit), limit, 0.0)))


def _shear_n_per_m(network: Network) -> Floats:
    """Return each triangle's ultimate shear force per length [N/m]; by yield where it never necks."""
    s = network.structure
    metals = [one.metal for one in s.sections]
    strength = np.array([m.tensile_pa if np.isfinite(m.tensile_pa) else m.yield_pa for m in metals])
    out: Floats = SHEAR_OVER_TENSILE * strength[s.triangle_section] * network.thickness
    return out


def blade_force(network: Network, found: Section, where: Line) -> float:
    """Return the force that shears all sheet the blades part at once [N]: an upper bound."""
    s, shear = network.structure, _shear_n_per_m(network)
    edges = {(int(min(e)), int(max(e))) for e in where.edges.tolist()}
    total = 0.0
    for t, corners in enumerate(s.triangles.tolist()):
        for a, b in ((corners[0], corners[1]), (corners[1], corners[2]), (corners[2], corners[0])):
            if (min(a, b), max(a, b)) in edges:
                total += 0.5 * shear[t] * float(np.linalg.norm(s.points[a] - s.points[b]))
    length = edge_length_m(s, where.edges) + edge_length_m(s, where.left)
    return float(total * min(1.0, found.metal_m / length)) if length > 0.0 else 0.0


def edge_length_m(structure: Structure, edges: Ints) -> float:
    """Return the length of some edges at rest [m]."""
    return float(np.linalg.norm(structure.points[edges[:, 0]] - structure.points[edges[:, 1]], axis=1).sum())
