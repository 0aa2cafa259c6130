"""The command line's words about lessons, and sheets on paper."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QColor, QImage, QPdfWriter, QTextDocument

from tests.ui.state.lesson_tools import LESSON, result
from ui import command, paging, printing
from ui.printing import write_pdf
from ui.refusal import Refusal
from ui.seats import seat_numbers
from ui.state.lesson_file import loads_lesson
from ui.state.sheet import TURN, Sheet, paragraph, table
from ui.state.sheets import sheet_of

# of the paper in points of 1/72 inch, from memory: A4 (ISO 216) is 210 x 297 mm, letter 8.5 x 11 in
SIZES = {"a4": (595, 842), "letter": (612, 792)}


@pytest.mark.parametrize("paper", SIZES)
def test_a_sheet_becomes_a_pdf_of_that_paper(qapp, tmp_path, paper):
    lesson = loads_lesson(LESSON + '[[evaluation]]\ndoes = "Looks"\nlooked_for = "both sides"\n')
    picture = QImage(640, 350, QImage.Format.Format_RGB32)
    picture.fill(QColor("grey"))
    plain = sheet_of("bridge", lesson, {"lip": result()})
    assert write_pdf(plain, tmp_path / "one.pdf", {"lip": picture}, paper) == 1
    seats = sheet_of("evaluation", lesson, {}, seats=("1", "2", "3"))
    assert write_pdf(seats, tmp_path / "three.pdf", {}, paper) == 3
    data = (tmp_path / "three.pdf").read_bytes()
    assert data.startswith(b"%PDF-")
    boxes = [tuple(map(float, box)) for box in re.findall(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]", data)]
    assert boxes and all(box == pytest.approx(SIZES[paper], abs=1.0) for box in boxes)
    assert not list(tmp_path.glob("*.part"))


@pytest.mark.parametrize(("lines", "sides"), [(10, {0}), (48, {0, 1})])
def test_a_page_that_does_not_fit_goes_over_where_it_may_be_turned(qapp, tmp_path, lines, sides):
    writer = QPdfWriter(str(tmp_path / "turned.pdf"))
    printing.set_up(writer, "a4")
    body = paragraph("front " * 10) * lines + TURN + paragraph("back " * 10) * 6
    text = Sheet("Bridge sheet", "Both sides", (body,)).page(0)
    document, _ = printing._fitted(text, writer, printing._Paper(writer), {})
    layout, block, found = document.documentLayout(), document.begin(), []
    while block.isValid():
        found.append((block.text()[:4], int(layout.blockBoundingRect(block).center().y())))
        block = block.next()
    high = document.pageSize().height()
    assert {at // high for _, at in found} == sides
    assert {at // high for word, at in found if word == "back"} == {max(sides)}
    assert {at // high for word, at in found if word == "fron"} == {0}


def test_a_folder_that_is_not_there_leaves_nothing(qapp, tmp_path):
    sheet = sheet_of("evaluation", loads_lesson(LESSON), {})
    with pytest.raises(FileNotFoundError):
        write_pdf(sheet, tmp_path / "none" / "a.pdf", {})


def test_seats_are_read():
    assert seat_numbers("1-3, 7") == ("1", "2", "3", "7")
    assert seat_numbers("") == ("",)
    with pytest.raises(Refusal, match="write 1-12"):
        seat_numbers("a-b")


def test_a_lesson_that_cannot_be_read_is_refused_in_a_sentence(tmp_path, capsys):
    path = tmp_path / "bad.toml"
    path.write_text(LESSON.replace('phase = "open"', 'phase = "begin"'), encoding="utf-8")
    assert command.main(["lesson", "check", str(path)]) == 2
    said = capsys.readouterr().err
    assert said.count("\n") == 1 and "steps" in said and "'open'" in said


def test_a_lesson_is_looked_through(tmp_path, capsys):
    path = tmp_path / "own.toml"
    path.write_text(LESSON + "extra = 1\n", encoding="utf-8")
    assert command.main(["lesson", "check", str(path)]) == 0
    said = capsys.readouterr().out
    assert "not a field of a lesson, kept as it is: questions[0].extra" in said
    assert "not been solved yet" in said


def test_ready_lessons_and_figures_are_listed(capsys):
    assert command.main(["lesson", "ready"]) == 0
    assert command.main(["lesson", "figures"]) == 0
    said = capsys.readouterr().out
    assert "01-first-bite" in said and "first_opening" in said


def test_a_sheet_that_is_no_pdf_is_refused(capsys):
    assert command.main(["lesson", "sheet", "01-first-bite", "--out", "sheet.txt"]) == 2
    assert ".pdf" in capsys.readouterr().err


def test_plans_are_solved_once_and_again_with_what_changed(tmp_path, capsys):
    (tmp_path / "push.toml").write_text(
        'schema_version = 1\ntitle = "a push"\n[car]\nlattice_spacing_m = 0.09\n[[moves]]\nmove = "spread"\n'
        'opening_m = 0.005\n[moves.door]\nat = "edge"\ndepth_m = 0.005\n',
        encoding="utf-8",
    )
    lesson = tmp_path / "own.toml"
    lesson.write_text(
        'schema_version = 1\ntitle = "Own"\nauthor = "a post"\nlicence = "CC0-1.0"\n'
        '[[plans]]\nname = "push"\nfile = "push"\n[[steps]]\nphase = "open"\ntitle = "A"\nplan = "push"\n',
        encoding="utf-8",
    )
    words = ["lesson", "solve", str(lesson), "--quick"]
    assert command.main(words) == 0
    assert "push: solved for the first time: nothing gave" in capsys.readouterr().out
    first = {path.name: path.read_bytes() for path in (tmp_path / "solved").iterdir()}
    assert sorted(first) == ["push.json", "push.npz"]
    assert command.main(words) == 0
    assert "Every kept result is fresh." in capsys.readouterr().out
    assert command.main([*words, "--again"]) == 0
    assert "push: nothing has changed" in capsys.readouterr().out
    assert {path.name: path.read_bytes() for path in (tmp_path / "solved").iterdir()} == first


def test_no_row_of_a_table_lies_on_two_pages(qapp):
    rows = [(f"row {k}", "word " * 40) for k in range(60)]
    text = "<p>Above</p>" + table(("Name", "Words"), rows, (30, 70)) + "<p>Below</p>"

    def lay_out(html):
        document = QTextDocument()
        document.setHtml(html)
        document.setPageSize(QSizeF(500.0, 700.0))
        return document

    def spans(document):
        found = document.rootFrame().childFrames()
        return [paging._span(document, one, row) for one in found for row in range(one.rows())]

    def shared(document):
        return [span for span in spans(document) if span[0] // 700.0 != (span[1] - 1.0) // 700.0]

    assert shared(lay_out(text))  # left alone, some do
    document = paging.with_whole_rows(text, lay_out)
    assert shared(document) == []
    plain = document.toPlainText()
    assert [f"row {k}" in plain for k in range(60)] == [True] * 60
    assert plain.index("Above") < plain.index("row 0") < plain.index("row 59") < plain.index("Below")
    assert plain.count("Name") == document.pageCount()  # each page has the table's head
