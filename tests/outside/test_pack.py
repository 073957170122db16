"""An alkaline cell of size AA.

Source: data sheet of an LR6 after GB/T 8897.2 (IEC 60086-2, modified): 1.60 V open, 1.45 V with 3.9 Ω after 0.3 s, 7 A
shorted. The first two imply (1.60 − 1.45)/(1.45/3.9) = 0.40 Ω, the last 0.23 Ω.
"""

import pytest

from lumped.circuit import Branch, Network, StraightLine, operating_point, pack_of_cells
from lumped.reference import handbook

CELL = {name: row.value.mean for name, row in handbook().entry("packs", "cell-alkaline").rows.items()}


def loaded_volts(resistance, load):
    cell = pack_of_cells(1, voltage=CELL["new_voltage"], resistance=resistance)
    branches = (
        Branch(name="cell", law=cell, plus="a", minus="0"),
        Branch(name="load", law=StraightLine(resistance=load), plus="a", minus="0"),
    )
    return operating_point(Network(branches=branches)).voltages["load"]


def test_a_cell_of_0_40_ohm_shows_the_printed_voltage_at_3_9_ohm():
    assert loaded_volts(0.40, 3.9) == pytest.approx(1.45, abs=0.005)  # the sheet prints hundredths


def test_the_handbooks_cell_lies_between_what_the_sheets_two_figures_imply():
    row = handbook().row("packs", "cell-alkaline", "fresh_resistance")
    shorted, loaded = CELL["new_voltage"] / 7, (1.60 - 1.45) / (1.45 / 3.9)
    assert loaded == pytest.approx(0.40, rel=0.01)
    assert row.low < shorted < loaded < row.high
    assert row.printed == pytest.approx(shorted, rel=0.05)


def test_a_used_cell_gives_a_little_less_than_a_new_one():
    assert 1.5 <= CELL["fresh_voltage"] <= CELL["new_voltage"]  # nominal 1.5 V
