"""The bar of the colours that are shown, as the panel draws it."""

from __future__ import annotations

from ui.panels.legend import Scale
from ui.scene.colours import FOLD_PAPERS, ColourMode, colour_bar
from ui.state.folds import FOLDED, bound_words, coloured, fold_note
from ui.state.locks import SHUT
from ui.state.session import Session
from ui.state.wording import in_units


def scale_of(session: Session) -> Scale:
    """Return the bar of what the stage shows in a sitting; a sentence where it is kept shut."""
    wished, shown = session.view.options.colour_mode, coloured(session)
    if wished != shown:
        return Scale(words=SHUT)
    stops, labels = colour_bar(ColourMode(shown))
    words = dict(labels)
    zero = 0.5 if words.get(0.5) == "0" else None
    low, high = (in_units(words.get(end, ""), session.view.options.units) for end in (0.0, 1.0))
    scale = Scale(tuple(stops), low, high, zero)
    if shown != FOLDED:
        return scale
    note = fold_note(session.timeline.frame)
    return Scale(tuple(stops), scale.low, scale.high, steps=FOLD_PAPERS, bounds=bound_words(), note=note)
