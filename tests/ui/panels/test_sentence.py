"""The one sentence: its first clause in head type, the rest smaller, its text plain words."""

import pytest
from PySide6.QtGui import QTextDocument

from ui.panels.look import SIZES, Look
from ui.panels.sentence import Sentence

TOLD = "The skin came away over 1.5 m; the latch held. The tips were <on> the lip."


def pieces(sentence):
    """Return the words as they are set: (words, size of type [px], whether strong)."""
    document = QTextDocument()
    document.setHtml(super(Sentence, sentence).text())
    out, block = [], document.begin()
    while block.isValid():
        for part in block.begin():
            shape = part.fragment().charFormat().font()
            out.append((part.fragment().text(), shape.pixelSize(), shape.bold() or shape.weight() >= 600))
        block = block.next()
    return out


@pytest.mark.parametrize("scale", [1.0, 24.0 / 14.0])
def test_the_first_clause_is_large_and_what_follows_smaller(qtbot, scale):
    sentence = Sentence()
    qtbot.addWidget(sentence)
    sentence.set_look(Look(scale=scale))
    sentence.setText(TOLD)
    assert sentence.text() == TOLD
    look = Look(scale=scale)
    assert pieces(sentence) == [
        ("The skin came away over 1.5\N{NO-BREAK SPACE}m.", look.px("head"), True),
        ("The latch held. The tips were <on> the lip.", look.px("body"), False),
    ]
    sentence.set_sizes("body", "small")
    assert [size for _, size, _ in pieces(sentence)] == [look.px("body"), look.px("small")]


def test_a_single_clause_stays_whole_and_nothing_is_nothing(qtbot):
    sentence = Sentence()
    qtbot.addWidget(sentence)
    sentence.setText("Next: strip trim, seals and glass.")
    assert pieces(sentence) == [("Next: strip trim, seals and glass.", SIZES["head"], True)]
    sentence.setText("")
    assert sentence.text() == "" and pieces(sentence) == []
