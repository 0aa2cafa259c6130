"""The guard that the program sets at its start, set for the panels too."""

from ui.singletons import keep_singletons

keep_singletons()
