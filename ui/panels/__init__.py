"""The panels around the view, one widget a file."""
