"""The page on making dough keeps step with the program: its figures come out, its Python runs."""

import re
from pathlib import Path

import pytest
from tests.told import hold

from lumped.dough import knead, read_recipe
from lumped.dough.kneading import knead_middle
from lumped.dough.other_ways import cold_version
from lumped.pantry import pantry
from lumped.workshop import dough_for, make_dough, read_party

ROOT = Path(__file__).parents[2]
PAGE = (ROOT / "docs" / "making.md").read_text("utf-8")
SALT = read_recipe(ROOT / "demo/recipes/ropewalk-salt.toml")
SUGAR = read_recipe(ROOT / "demo/recipes/ropewalk-sugar.toml")
PAIRS = read_party("28 of 9 in pairs")


def made(recipe, pot, **more):
    return make_dough(recipe, parties=[PAIRS], pot=pot, **more)


def test_the_amounts_of_the_page_come_out():
    for kind, written in (("conducting", "1.8 kg (1.2 to 2.9)"), ("insulating", "0.83 kg (0.40 to 1.4)")):
        value = dough_for([PAIRS], kind)
        ends = [float(each) for each in re.findall(r"[\d.]+", written)]
        assert written in PAGE
        assert [value.mean, value.low, value.high] == pytest.approx(ends, rel=0.04)  # two digits
    pots = {pot: made(SALT, pot).batches.count + made(SUGAR, pot).batches.count for pot in (2e-3, 3e-3, 5e-3)}
    assert pots == {2e-3: 3, 3e-3: 3, 5e-3: 2}


def test_the_times_of_the_page_come_out():
    found = made(SALT, 3e-3, within=2400.0)
    waits = {each.place: each.wait.mean / 60 for each in found.waits}
    assert waits == pytest.approx({"pot": 2.8 * 60, "slab": 2.1 * 60, "thin": 55, "bath": 10}, rel=0.1)
    options = {(each.way, each.place): each for each in found.options}
    ready = {key: each.ready.mean / 60 for key, each in options.items()}
    assert ready["not cooked", None] == pytest.approx(23, rel=0.05)
    assert ready["kettle", "bath"] == pytest.approx(40, rel=0.05)
    assert ready["pot", "bath"] == pytest.approx(72, rel=0.05)
    assert ready["pot", "slab"] == pytest.approx(3.2 * 60, rel=0.05)
    assert options["pot", "bath"].surely == pytest.approx(0.45, rel=0.12)  # a fortieth of 2 kg
    assert options["pot", "bath"].most == pytest.approx(0.95, rel=0.06)
    cooking = next(each for each in found.steps if each.key == "cooking")
    assert cooking.time.mean / 60 == pytest.approx(19, rel=0.1)
    single = next(each for each in make_dough(SALT).steps if each.key == "cooking")
    assert single.time.mean / 60 == pytest.approx(4, rel=0.15)


def test_the_cold_dough_of_the_page_comes_out():
    shop = pantry()
    cold = cold_version(SALT, shop)
    chain = knead_middle(cold, shop)
    assert float(chain.resistivity[0]) == pytest.approx(0.34, rel=0.03)
    assert float(knead_middle(SALT, shop).resistivity[0]) == pytest.approx(0.22, rel=0.05)
    assert cold.mass_of("tap-water") / SALT.mass_of("tap-water") == pytest.approx(0.72, abs=0.005)
    assert cold.mass_of("plain-flour") / SALT.mass_of("plain-flour") == pytest.approx(1.19, abs=0.01)
    assert float(chain.solid("sodium-chloride")[0] / chain.of("sodium-chloride")[0]) == pytest.approx(1 / 6, abs=0.02)


def test_times_and_resistivities_are_read_out_of_the_page():
    found = made(SALT, 3e-3, within=2400.0)
    waits = {each.place: each.wait.mean / 60 for each in found.waits}
    ready = {(each.way, each.place): each.ready for each in found.options}
    cold, kettle, pot = (ready[key] for key in (("not cooked", None), ("kettle", "bath"), ("pot", "bath")))
    hold(PAGE, "left in its pot | about {} h", [waits["pot"] / 60])
    hold(PAGE, "pressed into slabs of 2 cm, on a table | about {} h", [waits["slab"] / 60])
    hold(PAGE, "rolled out to 1 cm, on a table | about {} min", [waits["thin"]])
    hold(PAGE, "stays solid | {} min ({} to {})", [each / 60 for each in (cold.mean, cold.low, cold.high)])
    hold(PAGE, "kettle, flat bags in cold water | {} min ({} to {})",
         [each / 60 for each in (kettle.mean, kettle.low, kettle.high)])  # fmt: skip
    hold(
        PAGE,
        "| pot, flat bags in cold water | {} min ({} to {})",
        [each / 60 for each in (pot.mean, pot.low, pot.high)],
    )
    less = knead(cold_version(SALT, pantry())).resistivity
    hold(PAGE, "119 % of the flour: {} Ω·m ({} to {}) instead of {}",
         [less.mean, less.low, less.high, knead(SALT).resistivity.mean])  # fmt: skip


def test_the_python_of_the_page_runs(monkeypatch, capsys):
    monkeypatch.chdir(ROOT)
    (code,) = re.findall(r"```python\n(.*?)```", PAGE, re.DOTALL)
    names: dict = {}
    exec(compile(code, "docs/making.md", "exec"), names)
    assert "EUR" in capsys.readouterr().out
    assert len(names["batch"]) == 5
    assert {"flour", "salt"} <= set(names["bought"]["shelf"])
