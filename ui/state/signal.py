"""The smallest observer that does: state tells whoever asked, and knows nobody."""

from __future__ import annotations

from collections.abc import Callable
from typing import Generic, ParamSpec

Arguments = ParamSpec("Arguments")


class Signal(Generic[Arguments]):
    """A list of listeners; each is called in the order it was connected."""

    def __init__(self) -> None:
        self._listeners: list[Callable[Arguments, object]] = []

    def connect(self, listener: Callable[Arguments, object]) -> None:
        """Call `listener` at every later `emit`."""
        self._listeners.append(listener)

    def disconnect(self, listener: Callable[Arguments, object]) -> None:
        """Call `listener` no more; ValueError if it never was connected."""
        self._listeners.remove(listener)

    def emit(self, *args: Arguments.args, **kwargs: Arguments.kwargs) -> None:
        """Call every listener; one that is added meanwhile waits for the next time."""
        for listener in tuple(self._listeners):
            listener(*args, **kwargs)
