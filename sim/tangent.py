"""The sheets' stiffness put together: triangles' springs and hinges' own curvature into 3x3 blocks.

What the springs of a triangle answer for is B^T K B with B their derivative by the nodes; what their forces
do as they turn is added beside it.  Edge i of a triangle runs from corner i + 1 to corner i + 2, so corner p
pulls on edge p + 1 with its vector and on edge p + 2 against it.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import inlined, kernel
from sim.small import put

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@inlined
def _edge_slopes(points: Floats, corners: Ints, rest_length2: Floats, edge: Floats) -> None:
    """Fill the edges' vectors over their rest length squared, shape (3, 3) [1/m]."""
    for i in range(3):
        a, b = corners[(i + 1) % 3], corners[(i + 2) % 3]
        for k in range(3):
            edge[i, k] = (points[b, k] - points[a, k]) / rest_length2[i]


@inlined
def _turn_slopes(
    corners: Ints, own_hinges: Ints, hinges: Ints, gradient: Floats, turn: Floats, flap: Floats
) -> None:
    """Fill how the hinge angles change with the corners (hinge, corner, 3) and their own flaps (3, 3)."""
    for i in range(3):
        h = own_hinges[i]
        if h < 0:
            turn[i, :, :] = 0.0
            flap[i, :] = 0.0
            continue
        a, b = (i + 1) % 3, (i + 2) % 3
        own = hinges[h, 0] == corners[a]  # a hinge's edge runs as in the triangle it was found in
        first, second = (a, b) if own else (b, a)
        inner, outer = (2, 3) if own else (3, 2)
        for k in range(3):
            turn[i, first, k] = gradient[h, 0, k]
            turn[i, second, k] = gradient[h, 1, k]
            turn[i, i, k] = gradient[h, inner, k]
            flap[i, k] = gradient[h, outer, k]


@inlined
def _products(
    stiff: Floats, both: bool, edge: Floats, turn: Floats, by_edge: Floats, by_turn: Floats
) -> None:
    """Fill K B for each corner: (corner, edge, 3), (corner, hinge, 3); ``both``: edges act on hinges."""
    for p in range(3):
        e, f = (p + 1) % 3, (p + 2) % 3
        for j in range(3):
            for k in range(3):
                by_edge[p, j, k] = stiff[j, e] * edge[e, k] - stiff[j, f] * edge[f, k]
                by_turn[p, j, k] = (
                    stiff[3 + j, 3] * turn[0, p, k]
                    + stiff[3 + j, 4] * turn[1, p, k]
                    + stiff[3 + j, 5] * turn[2, p, k]
                )
        if not both:
            continue
        for j in range(3):
            for k in range(3):
                by_turn[p, j, k] += stiff[3 + j, e] * edge[e, k] - stiff[3 + j, f] * edge[f, k]
                by_edge[p, j, k] += (
                    stiff[j, 3] * turn[0, p, k] + stiff[j, 4] * turn[1, p, k] + stiff[j, 5] * turn[2, p, k]
                )


@inlined
def _corner_block(
    p: int, q: int, edge: Floats, turn: Floats, by_edge: Floats, by_turn: Floats, part: Floats
) -> None:
    """Fill the block of two corners, shape (3, 3)."""
    e, f = (q + 1) % 3, (q + 2) % 3
    for i in range(3):
        for j in range(3):
            part[i, j] = (
                by_edge[p, e, i] * edge[e, j]
                - by_edge[p, f, i] * edge[f, j]
                + by_turn[p, 0, i] * turn[0, q, j]
                + by_turn[p, 1, i] * turn[1, q, j]
                + by_turn[p, 2, i] * turn[2, q, j]
            )


@inlined
def _put_flaps(
    patch: Ints, code: Ints, stiff: Floats, flap: Floats, by_turn: Floats, part: Floats, values: Floats
) -> None:
    """Add the blocks of the flaps with the corners and with each other; a flap moves its own hinge only."""
    for p in range(3):
        if patch[3 + p] < 0:
            continue
        for q in range(3):
            for i in range(3):
                for j in range(3):
                    part[i, j] = flap[p, i] * by_turn[q, p, j]
            put(values, code[3 + p, q], part)
        for q in range(p + 1):
            if patch[3 + q] < 0:
                continue
            for i in range(3):
                for j in range(3):
                    part[i, j] = flap[p, i] * stiff[3 + p, 3 + q] * flap[q, j]
            put(values, code[3 + p, 3 + q], part)
            if p != q and patch[3 + p] == patch[3 + q]:  # two neighbours share a corner
                put(values, code[3 + p, 3 + q], part.T)


@kernel
def assemble_triangles(
    points: Floats,
    triangles: Ints,
    triangle_hinges: Ints,
    hinges: Ints,
    gradient: Floats,
    rest_length2: Floats,
    springs: Floats,
    elastic: Floats,
    flowing: Bools,
    stiffness: Floats,
    patch: Ints,
    patch_block: Ints,
    membrane_floor: float,
    values: Floats,
) -> None:
    """Add the material and membrane-geometric stiffness of all triangles to ``values``.

    Parameters
    ----------
    springs : shape (m, 6), spring forces of the geometric part
    elastic, stiffness : shape (m, 6, 6), of the springs, symmetric; the second where ``flowing``; the first
        has no part that couples edges and hinges
    patch : shape (m, 6), the triangle's corners then the opposite corner of each neighbour (-1: none)
    patch_block : shape (m, 6, 6), block index of each node pair; bit-complement (~index) when the stored
        block is the transpose
    membrane_floor : lower limit of the membrane spring forces in the geometric part (0 keeps
        the positive part alone, -inf all)
    values : shape (blocks, 3, 3), added to
    """
    edge, flap, part = np.empty((3, 3)), np.empty((3, 3)), np.empty((3, 3))
    turn, by_edge, by_turn = np.empty((3, 3, 3)), np.empty((3, 3, 3)), np.empty((3, 3, 3))
    pull = np.empty(3)
    for t in range(triangles.shape[0]):
        _edge_slopes(points, triangles[t], rest_length2[t], edge)
        _turn_slopes(triangles[t], triangle_hinges[t], hinges, gradient, turn, flap)
        stiff = stiffness[t] if flowing[t] else elastic[t]
        _products(stiff, flowing[t], edge, turn, by_edge, by_turn)
        for i in range(3):
            pull[i] = max(springs[t, i], membrane_floor) / rest_length2[t, i]
        code = patch_block[t]
        for p in range(3):
            for q in range(p + 1):
                _corner_block(p, q, edge, turn, by_edge, by_turn, part)
                between = 3 - p - q  # the edge that joins two corners is opposite the third
                s = pull[(p + 1) % 3] + pull[(p + 2) % 3] if p == q else -pull[between]
                part[0, 0] += s
                part[1, 1] += s
                part[2, 2] += s
                put(values, code[p, q], part)
        _put_flaps(patch[t], code, stiff, flap, by_turn, part, values)


@inlined
def _turned(v0: float, v1: float, v2: float, normal: Floats, scale: float, twice: float, out: Floats) -> None:
    """Fill scale [v]x - twice n (n x v)^T, shape (3, 3)."""
    n0, n1, n2 = normal[0], normal[1], normal[2]
    w0, w1, w2 = twice * (n1 * v2 - n2 * v1), twice * (n2 * v0 - n0 * v2), twice * (n0 * v1 - n1 * v0)
    a, b, c = scale * v0, scale * v1, scale * v2
    out[0, 0], out[0, 1], out[0, 2] = -n0 * w0, -c - n0 * w1, b - n0 * w2
    out[1, 0], out[1, 1], out[1, 2] = c - n1 * w0, -n1 * w1, -a - n1 * w2
    out[2, 0], out[2, 1], out[2, 2] = -b - n2 * w0, a - n2 * w1, -n2 * w2


@inlined
def _flap_slopes(
    e: Floats, p: Floats, normal: Floats, sign: float, d_tip: Floats, d_a: Floats, d_t: Floats
) -> float:
    """Fill d u / d tip, d u / d a and d t / d b of one flap; return t.

    u = |e| n / |n|^2 with n = sign * e x p, t = p.e / |e|^2, p = tip - a, e = b - a.  Moving along v
    gives d u = |e| / |n|^2 sign ([v]x - 2 n (n x v)^T / |n|^2).
    """
    length2 = e[0] * e[0] + e[1] * e[1] + e[2] * e[2]
    length = np.sqrt(length2)
    size2 = normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]
    t = (p[0] * e[0] + p[1] * e[1] + p[2] * e[2]) / length2
    scale = sign * length / size2
    twice = 2.0 * scale / size2
    _turned(e[0], e[1], e[2], normal, scale, twice, d_tip)
    _turned(p[0] - e[0], p[1] - e[1], p[2] - e[2], normal, scale, twice, d_a)
    back = 1.0 / (length * size2)
    for j in range(3):
        d_t[j] = (p[j] - 2.0 * t * e[j]) / length2
        for i in range(3):
            d_a[i, j] -= normal[i] * e[j] * back
    return float(t)


@inlined
def hinge_blocks(points: Floats, hinge: Ints, moment: float, blocks: Floats, room: Floats) -> None:
    """Fill moment * d2 theta of one hinge (a, b, c, f) by pairs of its nodes [N/m].

    Parameters
    ----------
    blocks : filled, shape (9, 3, 3): aa, ba, bb, ca, cb, cc, fa, fb, ff (c and f do not meet)
    room : shape (19, 3), working room
    """
    e, p, q, n1, n2 = room[0], room[1], room[2], room[3], room[4]
    dt1, dt2 = room[5], room[6]
    cc, ca, ff, fa = room[7:10], room[10:13], room[13:16], room[16:19]
    for i in range(3):
        e[i] = points[hinge[1], i] - points[hinge[0], i]
        p[i] = points[hinge[2], i] - points[hinge[0], i]
        q[i] = points[hinge[3], i] - points[hinge[0], i]
    for i in range(3):
        j, k = (i + 1) % 3, (i + 2) % 3
        n1[i] = e[j] * p[k] - e[k] * p[j]
        n2[i] = q[j] * e[k] - q[k] * e[j]
    t1 = _flap_slopes(e, p, n1, 1.0, cc, ca, dt1)
    t2 = _flap_slopes(e, q, n2, -1.0, ff, fa, dt2)
    length = np.sqrt(e[0] * e[0] + e[1] * e[1] + e[2] * e[2])
    s1 = length / (n1[0] * n1[0] + n1[1] * n1[1] + n1[2] * n1[2])
    s2 = length / (n2[0] * n2[0] + n2[1] * n2[1] + n2[2] * n2[2])
    # moving all nodes alike changes nothing: every block follows from d u / d tip, d u / d a and d t / d b
    for i in range(3):
        for j in range(3):
            cb, fb = -cc[i, j] - ca[i, j], -ff[i, j] - fa[i, j]
            bb = -n1[i] * s1 * dt1[j] - t1 * cb - n2[i] * s2 * dt2[j] - t2 * fb
            ba = -bb + cc[j, i] + ca[j, i] + ff[j, i] + fa[j, i]
            blocks[1, i, j] = moment * ba
            blocks[2, i, j] = moment * bb
            blocks[3, i, j] = moment * ca[i, j]
            blocks[4, i, j] = moment * cb
            blocks[5, i, j] = moment * cc[i, j]
            blocks[6, i, j] = moment * fa[i, j]
            blocks[7, i, j] = moment * fb
            blocks[8, i, j] = moment * ff[i, j]
    for i in range(3):
        for j in range(3):
            blocks[0, i, j] = -blocks[1, j, i] - blocks[3, j, i] - blocks[6, j, i]


@kernel
def assemble_hinges(points: Floats, hinges: Ints, moments: Floats, hinge_block: Ints, values: Floats) -> None:
    """Add the geometric stiffness moment * d2 theta of all hinges to ``values`` (blocks, 3, 3)."""
    blocks, room = np.empty((9, 3, 3)), np.empty((19, 3))
    for h in range(hinges.shape[0]):
        if moments[h] == 0.0:
            continue
        hinge_blocks(points, hinges[h], moments[h], blocks, room)
        at = 0
        for p in range(4):
            for q in range(p + 1):
                if p == 3 and q == 2:
                    continue
                put(values, hinge_block[h, p, q], blocks[at])
                at += 1


@kernel
def hinge_moments(triangle_hinges: Ints, springs: Floats, moments: Floats) -> None:
    """Fill the moment of each hinge [N m]: the sum of its two triangles' springs."""
    moments[:] = 0.0
    for t in range(triangle_hinges.shape[0]):
        for i in range(3):
            h = triangle_hinges[t, i]
            if h >= 0:
                moments[h] += springs[t, 3 + i]
