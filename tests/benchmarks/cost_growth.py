"""How the cost of a push grows with the number of nodes, from some 500 to some 8000, by hand, one thread:

    OMP_NUM_THREADS=1 PYTHONPATH=. python tests/benchmarks/cost_growth.py [TABLE.json [PICTURE.svg]]

Door and whole side on lattices from coarse to fine, CPU milliseconds: one look at the forces, one tangent put
together, one factor, one solve, each the middle of several; and a whole increment, the mean of the first four
of a push on the hem lip at the latch.  The exponent is the slope of the straight line through the logarithms,
by least squares.  Takes some minutes of CPU.  What is in the table already is not measured again.
"""

import json
import math
import sys
import time
from pathlib import Path
from statistics import median

import numpy as np
from solve_move import timed_push

from meshes import side as side_mesh
from sim.door_model import build_model
from sim.increment import VISCOUS_N_PER_M
from sim.network import Load
from sim.plan import Car, EdgePoint, Spread
from sim.push import make_push
from sim.run import STEP_M

LATTICES = (
    *(("door", spacing) for spacing in (0.075, 0.060, 0.045, 0.036, 0.030, 0.025, 0.020, 0.0165)),
    *(("side", spacing) for spacing in (0.090, 0.060, 0.045, 0.036, 0.030)),
)
KINDS = ("forces", "assembly", "factor", "solve", "increment")
INCREMENTS, REPEATS, QUICK_REPEATS = 4, 5, 40
LIP = Spread(door=EdgePoint(depth_m=0.005))


def middle_ms(call, repeats):
    """Return the middle CPU time of a call [ms]."""
    took = []
    for _ in range(repeats):
        start = time.process_time()
        call()
        took.append(time.process_time() - start)
    return 1e3 * median(took)


def measured(extent, spacing_m):
    """Return nodes and milliseconds of one lattice."""
    side_mesh.MAX_SHEET_NODES = 100_000  # a plan's limit is what a window can show, not what can be solved
    model = build_model(Car(extent=extent, lattice_spacing_m=spacing_m))
    network = model.network.with_drives([make_push(model, LIP).drive(model.start.points)])
    state, load = model.start, Load((STEP_M,), None, VISCOUS_N_PER_M, model.start.points)
    ev, out = network.evaluate(state.points, state, load), network.blank()
    values = network.stiffness_values(ev, state, load, ev.springs, positive=True).copy()
    network.factor.refactor(values)
    right = np.ones(3 * len(state.points))
    found = {
        "extent": extent,
        "spacing_m": spacing_m,
        "nodes": len(model.structure.points),
        "forces": middle_ms(lambda: network.evaluate(state.points, state, load, out=out), QUICK_REPEATS),
        "assembly": middle_ms(
            lambda: network.stiffness_values(ev, state, load, ev.springs, positive=True), REPEATS
        ),
        "factor": middle_ms(lambda: network.factor.refactor(values), REPEATS),
        "solve": middle_ms(lambda: network.factor.solve(right), QUICK_REPEATS),
    }
    whole = timed_push(network, state, INCREMENTS * STEP_M)
    count = len(whole["iterations"])
    return {
        **found,
        "increment": 1e3 * whole["total"] / count,
        "factors_each": whole["factors"] / count,
        "steps_each": float(np.mean(whole["steps"])),
        "failed": whole["failed"],
    }


def exponents(rows):
    """Return slope of log cost over log nodes and cost at 1000 nodes [ms] on that line, by kind and extent.

    Door and side have lines of their own: a side's matrix is a chain of three parts, which fills less, and
    its push takes more factors an increment.
    """
    out = {}
    for extent in ("door", "side"):
        own = [row for row in rows if row["extent"] == extent]
        nodes = np.log([row["nodes"] for row in own]) - math.log(1000.0)
        for kind in KINDS:
            slope, level = np.polyfit(nodes, np.log([row[kind] for row in own]), 1)
            out[kind, extent] = (float(slope), float(math.exp(level)))
    return out


# --- the picture: both axes logarithmic, every line named where it ends, no colour needed

WIDE, HIGH, LEFT, RIGHT, TOP, BOTTOM = 760, 460, 64, 190, 24, 48
NODES, COST_MS = (400.0, 10_000.0), (0.05, 4_000.0)
DASHES = {"forces": "2 3", "assembly": "7 3", "factor": "", "solve": "1 5", "increment": ""}


def _x(nodes):
    share = math.log(nodes / NODES[0]) / math.log(NODES[1] / NODES[0])
    return LEFT + share * (WIDE - LEFT - RIGHT)


def _y(cost_ms):
    share = math.log(cost_ms / COST_MS[0]) / math.log(COST_MS[1] / COST_MS[0])
    return HIGH - BOTTOM - share * (HIGH - TOP - BOTTOM)


def _text(x, y, words, anchor="start"):
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}">{words}</text>'


def _axes():
    right, foot = WIDE - RIGHT, HIGH - BOTTOM
    out = []
    for nodes in (500, 1000, 2000, 4000, 8000):
        out.append(f'<path class="hair" d="M{_x(nodes):.1f} {TOP}V{foot}"/>')
        out.append(_text(_x(nodes), foot + 18, str(nodes), "middle"))
    for cost in (0.1, 1.0, 10.0, 100.0, 1000.0):
        out.append(f'<path class="hair" d="M{LEFT} {_y(cost):.1f}H{right}"/>')
        out.append(_text(LEFT - 8, _y(cost) + 4, f"{cost:g}", "end"))
    out.append(_text(0.5 * (LEFT + right), HIGH - 10, "nodes", "middle"))
    out.append(_text(LEFT - 8, TOP - 8, "CPU ms", "end"))
    return out


def _line(kind, rows, fit):
    """Return one straight line and its points."""
    slope, level = fit
    low, high = min(row["nodes"] for row in rows), max(row["nodes"] for row in rows)
    ends = [(_x(n), _y(level * (n / 1000.0) ** slope)) for n in (low, high)]
    wide = 2.4 if kind == "increment" else 1.4
    dash = f' stroke-dasharray="{DASHES[kind]}"' if DASHES[kind] else ""
    way = f"M{ends[0][0]:.1f} {ends[0][1]:.1f}L{ends[1][0]:.1f} {ends[1][1]:.1f}"
    out = [f'<path d="{way}" fill="none" stroke="#17191c" stroke-width="{wide}"{dash}/>']
    for row in rows:
        x, y = _x(row["nodes"]), _y(row[kind])
        if row["extent"] == "door":
            out.append(f'<circle cx="{x:.1f}" cy="{y:.1f}" r="3.2"/>')
        else:
            out.append(f'<rect class="open" x="{x - 3:.1f}" y="{y - 3:.1f}" width="6" height="6"/>')
    return out


def _name(kind, fits):
    """Return the words beside the lines of one kind: its exponents, of the door and of the side."""
    slope, level = fits[kind, "door"]
    beside = _y(level * 8.0**slope) + (-14 if kind == "solve" else 0)  # solve ends where assembly does
    name = "whole increment" if kind == "increment" else kind
    powers = " and ".join(f"{fits[kind, extent][0]:.2f}" for extent in ("door", "side"))
    return [_text(WIDE - RIGHT + 8, beside + 4, f"{name}: {powers}")]


def picture(rows):
    """Return the picture as SVG."""
    fits = exponents(rows)
    body = _axes()
    for kind in KINDS:
        for extent in ("door", "side"):
            own = [row for row in rows if row["extent"] == extent]
            body += _line(kind, own, fits[kind, extent])
        body += _name(kind, fits)
    legend = WIDE - RIGHT + 8
    body.append(_text(legend, TOP - 8, "exponents, door and side"))
    body += [f'<circle cx="{legend + 4}" cy="{HIGH - 34}" r="3.2"/>', _text(legend + 14, HIGH - 30, "door")]
    body += [
        f'<rect class="open" x="{legend + 1}" y="{HIGH - 19}" width="6" height="6"/>',
        _text(legend + 14, HIGH - 12, "whole side"),
    ]
    style = (
        "text{font:13px system-ui,sans-serif;fill:#17191c}.hair{stroke:#d3d5d6;stroke-width:1;fill:none}"
        "circle{fill:#17191c}.open{fill:#fff;stroke:#17191c;stroke-width:1.4}"
    )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {HIGH}" width="{WIDE}" height="{HIGH}">'
        f"<title>CPU cost over number of nodes</title><style>{style}</style>"
        f'<rect width="{WIDE}" height="{HIGH}" fill="#fff"/>' + "".join(body) + "</svg>\n"
    )


def words(row):
    """Return the line printed for a lattice."""
    costs = " ".join(f"{kind} {row[kind]:.2f}" for kind in KINDS)
    return (
        f"{row['extent']} {1e3 * row['spacing_m']:.0f} mm, {row['nodes']} nodes, ms: {costs}; factors"
        f" {row['factors_each']:.1f} and steps {row['steps_each']:.0f} an increment, failed {row['failed']}"
    )


def main():
    """Measure what is not in the table yet, print it, and draw it."""
    table = Path(sys.argv[1]) if len(sys.argv) > 1 else None
    rows = json.loads(table.read_text(encoding="utf-8")) if table is not None and table.is_file() else []
    known = {(row["extent"], row["spacing_m"]) for row in rows}
    for extent, spacing in LATTICES:
        if (extent, spacing) in known:
            continue
        if not rows:
            measured("door", 0.09)  # compiled once, outside the time
        rows.append(measured(extent, spacing))
        if table is not None:
            table.write_text(json.dumps(rows, indent=1) + "\n", encoding="utf-8")
        print(words(rows[-1]), flush=True)
    for (kind, extent), (slope, level) in exponents(rows).items():
        print(
            f"{extent}, {kind}: {level:.2f} ms at 1000 nodes, times (nodes / 1000) to the power {slope:.2f}"
        )
    if len(sys.argv) > 2:
        Path(sys.argv[2]).write_text(picture(rows), encoding="utf-8")


if __name__ == "__main__":
    main()
