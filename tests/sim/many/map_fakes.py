"""Stand-ins for the runs of a map: what they come to is known beforehand and solves nothing."""

from __future__ import annotations

from sim.map_cell import Job, Look

BEND_M = 0.1


def quick(job: Job) -> Look:
    """Return the seam on the lip and the latch or a hinge behind the bend, by what stands at that edge."""
    if job.cell.depth_m < BEND_M:
        return Look("seam parting", "seam", 0.01, 2.0e3, "latch free", 0.8)
    what = "latch free" if job.cell.edge == "latch_edge" else "hinge free"
    return Look(what, "", 0.007, 1.6e4, "seam parting", 0.5)


def finer_says_otherwise(job: Job) -> Look:
    """Return another outcome on the finer lattice, at the sill of the latch edge alone."""
    found = quick(job)
    at_sill = job.cell.edge == "latch_edge" and job.cell.along_m < 0.06
    if job.spacing_m < 0.06 and at_sill and job.cell.depth_m < 0.01:
        return Look("skin tearing", "outer skin", 0.02, 3.0e3)
    return found


def dies(job: Job) -> Look:
    """Answer no job at all for one cell."""
    if job.cell.along_m < 0.06 and job.cell.depth_m < 0.01 and job.cell.edge == "latch_edge":
        raise RuntimeError("the run was lost")
    return quick(job)
