"""The crew's own tools: kept and read back whole, refused in a sentence, never in the way of a start."""

import msgspec
import pytest

from sim.plan import Tool
from ui.state.tool_list import FILE_NAME, RANGES, ToolList, ToolTrouble, alike, check_tool, dumps, loads

NARROW = Tool(name="narrow tips", tip_width_m=0.02, tip_depth_m=0.02, friction_ratio=0.5)


def test_a_tool_kept_is_there_the_next_time_with_every_number(tmp_path):
    tools = ToolList(tmp_path / "settings")
    seen = []
    tools.changed.connect(lambda: seen.append(len(tools.tools)))
    tools.keep(NARROW)
    tools.keep(msgspec.structs.replace(NARROW, name="  second pair ", arm_m=0.6))
    again = ToolList(tmp_path / "settings")
    assert again.tools == tools.tools
    assert again.tools[0] == NARROW
    assert again.tools[1].name == "second pair"
    assert seen == [1, 2]
    assert (tmp_path / "settings" / FILE_NAME).read_text().startswith("# The crew's own tools")


def test_the_same_name_is_replaced_and_one_can_be_taken_off(tmp_path):
    tools = ToolList(tmp_path)
    tools.keep(NARROW)
    tools.keep(msgspec.structs.replace(NARROW, tip_width_m=0.03))
    assert [tool.tip_width_m for tool in tools.tools] == [0.03]
    assert tools.named(msgspec.structs.replace(NARROW, tip_width_m=0.03, name="x")) == "narrow tips"
    tools.drop("narrow tips")
    assert ToolList(tmp_path).tools == ()


@pytest.mark.parametrize("name", RANGES)
def test_a_number_out_of_its_range_is_refused_by_name(tmp_path, name):
    low, high, _ = RANGES[name]
    for value in (0.5 * low, 2.0 * high, float("nan")):
        with pytest.raises(ToolTrouble, match="it goes from"):
            check_tool(msgspec.structs.replace(NARROW, **{name: value}))
    tools = ToolList(tmp_path)
    with pytest.raises(ToolTrouble):
        tools.keep(msgspec.structs.replace(NARROW, **{name: 2.0 * high}))
    assert tools.tools == ()


def test_a_tool_without_name_or_with_a_bad_curve_is_refused():
    with pytest.raises(ToolTrouble, match="name of your own"):
        check_tool(msgspec.structs.replace(NARROW, name=" "))
    with pytest.raises(ToolTrouble, match="opens no wider"):
        check_tool(msgspec.structs.replace(NARROW, opening_m=(0.0, 0.0), force_n=(1e4, 1e4)))
    with pytest.raises(ToolTrouble, match="as many forces"):
        check_tool(msgspec.structs.replace(NARROW, opening_m=(0.0, 0.1), force_n=(1e4,)))


def test_what_cannot_be_used_is_left_out_and_told_and_the_rest_is_there():
    text = dumps((NARROW,)) + '\n[[tool]]\nname = "odd"\ntip_width_m = 9.0\n[[tool]]\ncolour = "red"\n'
    found = loads(text)
    assert found.tools == (NARROW,)
    assert len(found.troubles) == 2
    assert "tool 2" in found.troubles[0]
    assert loads("no toml [").tools == ()
    assert loads("tool = 3").troubles


def test_a_file_that_cannot_be_read_costs_no_start_and_is_put_aside(tmp_path):
    (tmp_path / FILE_NAME).write_text("my own words [")
    tools = ToolList(tmp_path)
    assert tools.tools == ()
    assert "cannot be read" in tools.troubles[0]
    tools.keep(NARROW)
    assert (tmp_path / f"{FILE_NAME}.old").read_text() == "my own words ["
    assert ToolList(tmp_path).tools == (NARROW,)


def test_a_folder_that_cannot_be_written_is_told_and_the_list_stays(tmp_path):
    (tmp_path / "settings").write_text("a file where the folder should be")
    tools = ToolList(tmp_path / "settings")
    with pytest.raises(ToolTrouble, match="cannot be written"):
        tools.keep(NARROW)
    assert tools.tools == ()


def test_tools_are_alike_by_their_numbers_alone():
    assert alike(NARROW, msgspec.structs.replace(NARROW, name="other"))
    assert not alike(NARROW, msgspec.structs.replace(NARROW, friction_ratio=0.6))
