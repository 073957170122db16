"""Small networks whose answer can be told by hand, and what goes wrong on a table."""

import pickle
import sys

import numpy as np
import pytest

from lumped.chemistry.electrodes import electrode
from lumped.circuit import (
    Branch,
    Conductor,
    Law,
    Motor,
    Network,
    OperatingPoint,
    StraightLine,
    contact,
    lamp,
    motor,
    operating_point,
    pack,
    pack_of_cells,
    resistor,
    switch,
)
from lumped.errors import SolverError

FOUR = pack_of_cells(4, voltage=1.5, resistance=0.25)


def solved(*branches: tuple[str, Law, str, str], conductors: tuple[Conductor, ...] = ()) -> OperatingPoint:
    named = tuple(Branch(name=name, law=law, plus=plus, minus=minus) for name, law, plus, minus in branches)
    return operating_point(Network(branches=named, conductors=conductors))


def lump(*nodes: str, conductance: float = 0.02) -> Conductor:
    count = len(nodes)
    return Conductor(nodes=nodes, matrix=conductance * (count * np.eye(count) - np.ones((count, count))))


def test_two_packs_in_series_add_and_two_against_each_other_cancel():
    ohm = StraightLine(resistance=10.0)
    along = solved(("a", FOUR, "x", "0"), ("b", FOUR, "y", "x"), ("r", ohm, "y", "0"))
    against = solved(("a", FOUR, "x", "0"), ("b", FOUR, "x", "y"), ("r", ohm, "y", "0"))
    assert along.currents["r"] == pytest.approx(1.0, rel=1e-12)
    assert abs(against.currents["r"]) < 1e-15


def test_the_minus_of_the_first_pack_is_zero():
    point = solved(("r", resistor("resistor-100"), "red", "black"), ("pack", FOUR, "red", "black"))
    assert point.potentials["black"] == 0
    assert point.potentials["red"] == pytest.approx(6.0 * 100 / 101, rel=1e-12)


def test_a_dangling_leg_and_a_lump_without_a_pack_have_a_potential_and_no_current():
    loose = ("loose", lamp("lamp-red"), "red", "air")
    bare = ("bare", electrode("tin", 2e-5), "pin", "port")
    point = solved(("pack", FOUR, "red", "black"), loose, bare, conductors=(lump("port", "elsewhere"),))
    assert abs(point.currents["loose"]) < 1e-15
    assert abs(point.currents["bare"]) < 1e-15
    assert point.potentials["air"] == pytest.approx(6.0)


def test_pack_wires_that_touch_draw_the_short_circuit_current():
    point = solved(("pack", FOUR, "red", "black"), ("touch", contact(), "red", "black"))
    assert point.currents["touch"] == pytest.approx(6.0 / 1.05, rel=1e-12)


def test_a_pack_with_both_wires_on_one_node_is_shorted():
    point = solved(("pack", FOUR, "wire", "wire"), ("r", resistor("resistor-100"), "wire", "away"))
    assert point.currents["pack"] == pytest.approx(-6.0)
    assert point.currents["r"] == 0


def test_a_fuse_trips_on_a_short_but_is_invisible_to_a_lamp():
    def lit(fuse: bool) -> OperatingPoint:
        cells = pack("pack-4aa-alkaline", fuse=fuse)
        r, lit = ("r", resistor("resistor-220"), "red", "a"), ("l", lamp("lamp-red"), "a", "black")
        return solved(("pack", cells, "red", "black"), r, lit)

    fused = pack("pack-4aa-alkaline", fuse=True)
    short = solved(("pack", fused, "red", "black"), ("touch", contact(), "red", "black"))
    assert short.tripped == {"pack"}
    assert abs(short.currents["pack"]) < 0.2
    assert not lit(True).tripped
    assert lit(True).currents["l"] == pytest.approx(lit(False).currents["l"], rel=0.01)


def test_a_motor_starts_before_a_fuse_would_trip():
    cells = pack("pack-2aa-alkaline", fuse=True)
    point = solved(("pack", cells, "red", "black"), ("fan", motor("motor-ordinary"), "red", "black"))
    assert point.running == {"fan"}
    assert not point.tripped
    assert point.speed("fan") > 0


def test_a_motor_below_its_starting_current_stands_and_draws_what_its_winding_takes():
    weak = ("r", StraightLine(resistance=96.0), "red", "a")
    point = solved(("pack", FOUR, "red", "black"), weak, ("fan", motor("motor-ordinary"), "a", "black"))
    assert not point.running
    assert point.speed("fan") == 0
    assert point.currents["fan"] == pytest.approx(6.0 / 99.0, rel=1e-12)


def test_starting_is_remembered_a_motor_turns_on_less_than_it_takes_to_start():
    fan = Motor(resistance=2.0, constant=3e-3, static_friction=2e-4, kinetic_friction=1e-4)
    point = solved(
        ("pack", FOUR, "red", "black"),
        ("r", StraightLine(resistance=77.0), "red", "a"),
        ("fan", fan.at_rest(), "a", "black"),
    )
    assert point.running == {"fan"}
    assert point.currents["fan"] == pytest.approx(1e-4 / 3e-3, rel=1e-9)
    assert point.currents["fan"] < fan.starting_current


def test_an_open_switch_darkens_a_lamp():
    def lit(closed: bool) -> float:
        point = solved(
            ("pack", FOUR, "red", "black"), ("s", switch(closed=closed), "red", "a"),
            ("r", resistor("resistor-220"), "a", "b"), ("l", lamp("lamp-red"), "b", "black"),
        )  # fmt: skip
        return point.currents["l"]

    assert lit(True) > 0.01
    assert lit(False) < 1e-7


def test_two_like_leads_give_no_voltage_and_unlike_ones_do():
    def volts(one: str, other: str) -> float:
        point = solved(
            ("one", electrode(one, 2e-5), "a", "p"), ("other", electrode(other, 2e-5), "b", "q"),
            ("meter", StraightLine(resistance=1e7), "a", "b"), conductors=(lump("p", "q"),),
        )  # fmt: skip
        return point.voltages["meter"]

    assert abs(volts("copper", "copper")) < 1e-12
    assert 0.4 < volts("copper", "zinc") < 1.1
    assert volts("zinc", "copper") == pytest.approx(-volts("copper", "zinc"))


def test_dark_currents_balance_as_well_as_bright_ones():
    point = solved(
        ("pack", FOUR, "red", "black"), ("in", electrode("iron", 2e-5), "red", "p"),
        ("l", lamp("lamp-red"), "black", "leg"), ("out", electrode("iron", 2e-5), "leg", "q"),
        conductors=(lump("p", "q"),),
    )  # fmt: skip
    assert 0 < -point.currents["l"] < 1e-7
    assert point.currents["in"] == pytest.approx(-point.currents["pack"], rel=1e-9)
    assert point.power_error < 1e-9


def test_conductors_of_several_bodies_are_taken_apart():
    both = Conductor(nodes=("a", "b", "c", "d"), matrix=np.kron(np.eye(2), np.array([[0.1, -0.1], [-0.1, 0.1]])))
    point = solved(("pack", FOUR, "a", "b"), ("r", resistor("resistor-100"), "c", "a"), conductors=(both,))
    assert point.currents["r"] == 0
    assert point.currents["pack"] == pytest.approx(-6.0 / 11.0)


def test_a_port_matrix_that_leaks_is_refused():
    with pytest.raises(ValueError, match="sum to zero"):
        Conductor(nodes=("a", "b"), matrix=np.array([[0.1, -0.1], [-0.1, 0.2]]))
    with pytest.raises(ValueError, match="2 × 2"):
        Conductor(nodes=("a", "b"), matrix=np.zeros((3, 3)))


def test_branches_have_names_of_their_own():
    branch = Branch(name="r", law=StraightLine(resistance=1.0), plus="a", minus="b")
    with pytest.raises(ValueError, match="same name"):
        Network(branches=(branch, branch))


def test_a_search_that_runs_out_of_steps_says_so(monkeypatch):
    monkeypatch.setattr("lumped.circuit.newton.STEPS", 1)
    with pytest.raises(SolverError, match="did not settle after 1 steps") as problem:
        solved(("pack", FOUR, "red", "black"), ("l", lamp("lamp-red"), "red", "black"))
    assert str(pickle.loads(pickle.dumps(problem.value))) == str(problem.value)


def test_lost_power_is_an_error_never_a_figure(monkeypatch):
    monkeypatch.setattr(sys.modules["lumped.circuit.operating_point"], "POWER", -1.0)
    with pytest.raises(SolverError, match="differ by"):
        solved(("pack", FOUR, "red", "black"), ("l", lamp("lamp-red"), "red", "black"))


def two_motors() -> OperatingPoint:
    return solved(
        ("pack", FOUR, "red", "black"), ("near", motor("motor-ordinary"), "a", "red"),
        ("far", motor("motor-ordinary"), "b", "c"),
        conductors=(lump("a", "b", "m", conductance=0.1), lump("c", "m", "black", conductance=0.05)),
    )  # fmt: skip


def test_the_line_search_is_needed_whole_steps_jump_to_and_fro_across_a_motors_kink(monkeypatch):
    assert two_motors().running == {"near"}
    monkeypatch.setattr("lumped.circuit.newton._share", lambda *_: 1.0)
    with pytest.raises(SolverError):
        two_motors()


def test_four_hundred_nodes_are_solved():
    chain = [("pack", FOUR, "n0", "n399")]
    chain += [(f"r{k}", StraightLine(resistance=1.0), f"n{k}", f"n{k + 1}") for k in range(399)]
    chain += [(f"l{k}", lamp("lamp-red"), f"n{k}", f"n{k + 150}") for k in range(0, 240, 40)]
    point = solved(*chain)
    assert len(point.potentials) == 400
    assert point.power_error <= 1e-9
