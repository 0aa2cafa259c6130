"""The errors of a plan: each names the field and the remedy in one sentence."""

from __future__ import annotations


class PlanError(ValueError):
    """A plan that cannot be read or done.

    field : path of the field, as `moves[0].door.depth_m`;  message : what is wrong and what to do
    """

    def __init__(self, field: str, message: str) -> None:
        self.field = field
        self.message = message
        super().__init__(f"{field} {message}")

    def inside(self, path: str) -> PlanError:
        """Return the same error with the field's path put before it."""
        return PlanError(f"{path}.{self.field}" if self.field else path, self.message)
