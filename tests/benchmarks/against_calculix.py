"""The same door, shells and travel in CalculiX, a general-purpose finite-element program, in one run.

    python tests/benchmarks/against_calculix.py [--spacing 0.06] [--travel 0.02]

Needs `ccx` (Debian: apt-get install calculix-ccx).  Both solve a welded two-layer door (skin and inner pan
share their hem nodes, no beams, no contact, fixed hinge and latch patches) whose tip pad is moved 45 degrees
outward, large rotations, elastic-plastic.  Prints CPU seconds of each and the ratio; nothing is asserted.
"""

from __future__ import annotations

import argparse
import math
import os
import resource
import shutil
import subprocess
import sys
import tempfile
import time
from dataclasses import replace
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from sim.door_model import build_model
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive, Network
from sim.plan import Car
from sim.structure import Bonds, Structure


def welded_door(spacing_m: float) -> tuple[Structure, np.ndarray]:
    """Return skin and pan as one structure with shared hem nodes, held at its patches, and the pad."""
    model = build_model(Car(lattice_spacing_m=spacing_m))
    mesh, s = model.mesh, model.structure
    merge = np.arange(len(s.points))
    merge[mesh.hem_skin] = mesh.hem_inner
    triangles = merge[s.triangles]
    used = np.unique(triangles)
    number = np.full(len(s.points), -1)
    number[used] = np.arange(len(used))
    fixed = np.zeros((len(used), 3), dtype=bool)
    for name in ("latch_plate", "upper_hinge", "lower_hinge"):
        fixed[number[merge[mesh.surface.nodes[name]]]] = True
    keep = mesh.wall[-1]
    z = s.points[keep, 2]
    pad = number[keep[(s.points[keep, 0] > 0.8) & (np.abs(z - 0.55) < 0.04)]]
    door = Structure(
        s.points[used], number[triangles], s.triangle_section, s.sections, bonds=Bonds.empty(), fixed=fixed
    )
    return door, pad


def run_hemline(
    door: Structure, pad: np.ndarray, direction: np.ndarray, travel_m: float
) -> tuple[float, float]:
    """Return CPU seconds and the pad's force [N] at the end."""
    drives = []
    for node in pad:
        start = float(direction @ door.points[node])
        drives.append(Drive(np.array([node]), np.ones(1), direction, start, 1.0e9, pushes_only=False))
    start_s = time.process_time()
    network = Network(door, drives)
    stepper = Stepper(network, lambda: False)
    point = stepper.first_point(network.initial_state(), Ledger())
    for k in range(1, round(travel_m / 0.0025) + 1):
        point = stepper.advance(point, 0.0025 * k)
    print("  iterations", stepper.tally.iterations, "failed", stepper.tally.failed)
    return time.process_time() - start_s, float(point.force_n.sum())


def write_input(path: Path, door: Structure, pad: np.ndarray, direction: np.ndarray, travel_m: float) -> None:
    """Write the door as CalculiX input: S3 shells, plastic metals, displaced pad."""
    lines = ["*NODE, NSET=ALL"]
    lines += [f"{i + 1}, {x:.9g}, {y:.9g}, {z:.9g}" for i, (x, y, z) in enumerate(door.points)]
    for index, section in enumerate(door.sections):
        ids = np.flatnonzero(door.triangle_section == index)
        if not len(ids):
            continue
        lines.append(f"*ELEMENT, TYPE=S3, ELSET=E{index}")
        lines += [f"{t + 1}, {a + 1}, {b + 1}, {c + 1}" for t in ids for a, b, c in [door.triangles[t]]]
        metal = section.metal
        lines += [
            f"*MATERIAL, NAME=M{index}",
            "*ELASTIC",
            f"{metal.young_pa}, {metal.poisson_ratio}",
            "*PLASTIC",
            f"{metal.yield_pa}, 0.",
            f"{metal.yield_pa + metal.hardening_pa}, 1.",
            f"*SHELL SECTION, ELSET=E{index}, MATERIAL=M{index}",
            f"{section.thickness_m}",
        ]
    lines.append("*BOUNDARY")
    lines += [f"{n + 1}, {a + 1}, {a + 1}" for n, a in zip(*np.nonzero(door.fixed), strict=True)]
    lines += ["*STEP, NLGEOM, INC=2000", "*STATIC", "0.05, 1., 1e-6, 0.1", "*BOUNDARY"]
    for node in pad:
        lines += [f"{node + 1}, {a + 1}, {a + 1}, {travel_m * direction[a]:.9g}" for a in range(2)]
    lines += ["*NODE PRINT, NSET=ALL, TOTALS=ONLY", "RF", "*END STEP"]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")


def run_calculix(
    door: Structure, pad: np.ndarray, direction: np.ndarray, travel_m: float, limit_s: float
) -> float:
    """Return CPU seconds of CalculiX, nan when it did not finish."""
    with tempfile.TemporaryDirectory() as folder:
        write_input(Path(folder) / "door.inp", door, pad, direction, travel_m)
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        environment = {**os.environ, "OMP_NUM_THREADS": "1"}
        try:
            done = subprocess.run(
                ["ccx", "door"],
                cwd=folder,
                env=environment,
                capture_output=True,
                text=True,
                timeout=limit_s,
                check=False,
            )
        except subprocess.TimeoutExpired:
            return math.nan
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        if "Job finished" not in done.stdout:
            print(done.stdout[-600:])
            return math.nan
        return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def main() -> None:
    """Run both and print the ratio."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--spacing", type=float, default=0.06)
    parser.add_argument("--travel", type=float, default=0.02)
    parser.add_argument("--limit", type=float, default=500.0)
    asked = parser.parse_args()
    if shutil.which("ccx") is None:
        print("ccx is not installed: apt-get install calculix-ccx")
        return
    door, pad = welded_door(asked.spacing)
    direction = np.array([-math.sqrt(0.5), math.sqrt(0.5), 0.0])
    door = replace(door, bonds=Bonds.empty())
    print(
        f"{len(door.points)} nodes, {len(door.triangles)} triangles, {len(pad)} pad nodes, {asked.travel} m"
    )
    run_hemline(door, pad, direction, 0.0025)  # compile first
    ours, force = run_hemline(door, pad, direction, asked.travel)
    print(f"  Hemline {ours:.2f} s CPU, {force / 1e3:.1f} kN")
    theirs = run_calculix(door, pad, direction, asked.travel, asked.limit)
    print(f"  CalculiX {theirs:.2f} s CPU, ratio {theirs / ours:.1f}")


if __name__ == "__main__":
    main()
