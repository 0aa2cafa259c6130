"""Icons, texts, tables and ready plans, read through importlib.resources."""
