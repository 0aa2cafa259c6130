"""Everything a person sees: the command line, the window, the pictures."""
