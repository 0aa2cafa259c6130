"""Checks of the computation against figures from outside the program, callable wherever it is installed."""
