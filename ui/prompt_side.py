"""Which prompt is in the window: that of the moment shown, until it is put away."""

from __future__ import annotations

from ui.main_window import MainWindow
from ui.panels.prompt import PromptCard
from ui.state.prompts import prompts
from ui.state.session import Session


class PromptSide:
    """Shows the cards of the moment below the stage.

    Parameters
    ----------
    session, window : what the cards are about, and where they show
    """

    def __init__(self, session: Session, window: MainWindow) -> None:
        self.session, self.window = session, window
        self.card = PromptCard()
        self._away: set[str] = set()
        window.set_prompt(self.card)
        self.card.list_wished.connect(lambda: window.acted.emit("before_metal"))
        self.card.put_away.connect(self._put_away)

    def show(self) -> None:
        """Show the cards of the moment; one that was put away comes back only where it has happened."""
        alone = self.session.view.options.stage_only
        cards = [card for card in prompts(self.session) if self._key(card) not in self._away]
        self.card.show_cards(() if alone else cards)

    def _key(self, card: object) -> str:
        happened = getattr(card, "happened", False)
        where = self.session.timeline.move if happened else ""
        return f"{getattr(card, 'name', '')} {where}"

    def _put_away(self, names: tuple[str, ...]) -> None:
        for card in prompts(self.session):
            if card.name in names:
                self._away.add(self._key(card))
        self.show()
        self.window.focus_stage()
