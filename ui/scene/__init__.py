"""What is drawn in 3D. Reads the state and never writes it."""
