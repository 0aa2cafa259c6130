"""Geometry of the teaching door and of what stands round it: parts, lattices, body, occupant."""
