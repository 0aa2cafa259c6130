"""The exported door in CalculiX, a general-purpose finite-element program, and in the network."""

from __future__ import annotations

import os
import shutil
import subprocess
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from sim import feinput
from sim.network import Load, Network
from sim.structure import Structure

NEEDED = "HEMLINE_NEEDS_CCX"
"""Set where CalculiX has to be there; without it the tests are skipped where it is missing."""


def need_ccx() -> None:
    """Skip the test, or fail it where the solver has to be there."""
    if shutil.which("ccx") is not None:
        return
    if os.environ.get(NEEDED):
        pytest.fail("CalculiX (ccx) is not there although it has to be: apt-get install calculix-ccx")
    pytest.skip("CalculiX (ccx) is not installed: apt-get install calculix-ccx")


def compliances_in_ccx(
    structure: Structure, loads: list[feinput.NodeLoad], folder: Path, *, quadratic: bool
) -> np.ndarray:
    """Return the motion of each load along itself under one newton [m/N], as CalculiX finds it."""
    text = feinput.shell_input(structure, "door", loads=loads, quadratic=quadratic)
    (folder / "door.inp").write_text(text, encoding="utf-8")
    done = subprocess.run(
        ["ccx", "door"], cwd=folder, capture_output=True, text=True, check=False, timeout=170,
        env={**os.environ, "OMP_NUM_THREADS": str(os.cpu_count() or 1)},
    )  # fmt: skip
    assert "Job finished" in done.stdout, done.stdout[-2000:]
    number = feinput.file_number(structure)
    blocks = (folder / "door.dat").read_text(encoding="utf-8").split("displacements")[1:]
    assert len(blocks) == len(loads)
    out = []
    for load, block in zip(loads, blocks, strict=True):
        rows = [line.split() for line in block.splitlines()[1:]]
        moved = {int(row[0]): np.array(row[1:], dtype=float) for row in rows if len(row) == 4}
        at = np.array([moved[int(number[node])] for node in load.nodes])
        out.append(float(load.weights @ (at @ load.direction)))
    return np.array(out)


def compliances_of_network(structure: Structure, loads: list[feinput.NodeLoad]) -> np.ndarray:
    """Return the same from the network's own tangent at rest."""
    network = Network(feinput.elastic(structure))
    state = network.initial_state()
    ev = network.evaluate(state.points, state, Load())
    network.factor.refactor(network.stiffness_values(ev, state, Load(), ev.springs))
    out = []
    for load in loads:
        force = np.zeros_like(state.points)
        np.add.at(force, load.nodes, load.weights[:, None] * load.direction)
        moved = network.factor.solve(force.ravel()).reshape(-1, 3)
        out.append(float(load.weights @ (moved[load.nodes] @ load.direction)))
    return np.array(out)


def without_beam(structure: Structure, name: str) -> Structure:
    """Return the structure without one beam; nodes that bear nothing then are held."""
    beams = tuple(beam for beam in structure.beams if beam.name != name)
    used = np.unique(np.concatenate([structure.triangles.ravel(), *[beam.nodes for beam in beams]]))
    fixed = np.ones(structure.points.shape, dtype=bool)
    fixed[used] = False
    return replace(structure, beams=beams, fixed=fixed)


def refined(structure: Structure) -> Structure:
    """Return the structure with every triangle cut in four on its own plane; springs stay on their nodes."""
    t = structure.triangles
    edges = np.unique(np.sort(np.concatenate([t[:, [0, 1]], t[:, [1, 2]], t[:, [2, 0]]]), axis=1), axis=0)
    first = len(structure.points)
    middle = {(int(a), int(b)): first + k for k, (a, b) in enumerate(edges)}
    points = np.concatenate([structure.points, structure.points[edges].mean(axis=1)])
    out = []
    for a, b, c in t.tolist():
        p, q, r = (middle[min(e), max(e)] for e in ((a, b), (b, c), (c, a)))
        out += [[a, p, r], [p, b, q], [r, q, c], [p, q, r]]
    section = np.repeat(structure.triangle_section, 4)
    return replace(structure, points=points, triangles=np.array(out), triangle_section=section, fixed=None)
