"""The bar of the colours that are shown, as the panel draws it."""

from __future__ import annotations

from ui.panels.legend import Scale
from ui.scene.colours import FOLD_PAPERS, ColourMode, colour_bar
from ui.state.folds import FOLDED, bound_words, coloured, fold_note
from ui.state.locks import SHUT
from ui.state.session import Session


def scale_of(session: Session) -> Scale:
    """Return the bar of what the stage shows in a sitting; a sentence where it is kept shut."""
    wished, shown = session.view.options.colour_mode, coloured(session)
    if wished != shown:
        return Scale(words=SHUT)
    stops, labels = colour_bar(ColourMode(shown))
    words = dict(labels)
    zero = 0.5 if words.get(0.5) == "0" else None
    scale = Scale(tuple(stops), words.get(0.0, ""), words.get(1.0, ""), zero)
    if shown != FOLDED:
        return scale
    note = fold_note(session.timeline.frame)
    return Scale(tuple(stops), scale.low, scale.high, steps=FOLD_PAPERS, bounds=bound_words(), note=note)
