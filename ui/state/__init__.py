"""What the window holds: document, history, selection, view options. Knows no Qt and no VTK."""
