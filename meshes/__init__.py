"""Geometry and nothing else: parts, lattices, the door, the body, the occupant, mesh files."""
