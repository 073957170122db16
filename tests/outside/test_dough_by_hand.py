"""One dough worked out by hand, step by step, against the chain: volumes, obstruction, floor.

Source: the laws themselves, written here once more with plain numbers. Archie 1942, Mackie and Meares 1955, Hashin and
Shtrikman 1962: see `test_effective_medium`. The liquid's own figures are the engine's; other tests hold them.
"""

from dataclasses import replace

import numpy as np
import pytest
from tests.bowls import recipe_of

from lumped.chemistry import mixture_width, salt_water_conductivity
from lumped.chemistry.compounds import compound
from lumped.chemistry.density import brine_density
from lumped.dough.beliefs import middle
from lumped.dough.kneading import followed
from lumped.pantry import pantry

GRAMS = {"wheat-starch": 120, "distilled-water": 110, "table-salt": 60, "vegetable-oil": 15}
OPEN = {"bound_water": 0.25, "archie_exponent": 1.8, "air": 0.08, "percolation": 0.05, "scatter": 0.9}


def chain_of(grams=GRAMS, **open_figures):
    recipe = recipe_of(grams, cooked="not cooked")
    given = middle(recipe, pantry())
    open_figures = {**OPEN, **open_figures}
    unknowns = replace(given.unknowns, **{name: np.array([figure]) for name, figure in open_figures.items()})
    return followed(recipe, replace(given, lost_share=np.array([0.05]), unknowns=unknowns), pantry())


def by_hand(*, gel):
    """Liquid's share of the volume, and conductivity. [1, S/m]"""
    shares = {key: pantry()[key].composition for key in GRAMS}
    held = {part: sum(grams * shares[key].get(part, 0.0) for key, grams in GRAMS.items()) / 1e3
            for key in GRAMS for part in shares[key]}  # fmt: skip
    water = 0.95 * held.pop("water")  # a twentieth steams off
    dry = sum(held.get(part, 0.0) for part in ("starch", "fibre", "protein"))
    bound = 0.25 * dry
    carries = water if gel else water - bound  # a gel lets ions into bound water where there is twice as much or more
    salt = min(held["sodium-chloride"], 0.3594 * carries)  # 26.44 % in saturated brine
    strength = salt / (salt + carries)
    brine = (salt + carries) / float(brine_density(strength, 293.15))
    solids = sum(mass / compound(part).density for part, mass in held.items()) - salt / 2165
    solids += (water - carries) / compound("water").density
    share = 0.92 * brine / (brine + solids)
    through = (share - 0.05) / 0.95
    kept = through * (through / (2 - through)) ** 2 if gel else through**1.8
    assert held["sodium-chloride"] - salt > 0.01  # some stays solid, and stands in the way
    return share, float(salt_water_conductivity(strength, 293.15)) * 0.9 * kept + 1e-8


@pytest.mark.parametrize(("picture", "gel"), [(0.0, False), (1.0, True)])
def test_a_dough_by_hand_is_the_dough_of_the_chain(picture, gel):
    """The starch's few minerals, which the hand leaves out, are 0.2 % of the ions."""
    chain, (share, conductivity) = chain_of(picture=picture, dry_conductivity=1e-8), by_hand(gel=gel)
    assert chain.liquid_share[0] == pytest.approx(share, rel=2e-3)
    assert chain.conductivity[0] == pytest.approx(conductivity, rel=5e-3)


def test_with_both_pictures_alike_a_dough_is_their_geometric_mean():
    """Where hardly any water is bound the two differ by their obstruction alone."""
    ends = [chain_of(picture=each, bound_water=0.0).conductivity[0] for each in (0.0, 1.0)]
    assert chain_of(picture=0.5, bound_water=0.0).conductivity[0] == pytest.approx(np.sqrt(ends[0] * ends[1]), rel=1e-3)


def test_more_air_and_a_higher_threshold_leave_less_to_carry():
    share = chain_of(air=0.0, picture=0.0).liquid_share[0]
    assert chain_of(air=0.10, picture=0.0).liquid_share[0] == pytest.approx(0.90 * share, rel=1e-9)
    kept = {p: chain_of(percolation=p, picture=0.0, scatter=1.0) for p in (0.0, 0.1)}
    phi = kept[0.0].liquid_share[0]
    assert kept[0.1].obstruction[0] / kept[0.0].obstruction[0] == pytest.approx(((phi - 0.1) / 0.9 / phi) ** 1.8)


def test_below_the_threshold_only_the_floor_is_left():
    """10 g of water in 120 g of starch are bound; what flour and fat carry without free water is all there is."""
    found = chain_of({**GRAMS, "distilled-water": 10}, dry_conductivity=1e-9, picture=0.0)
    assert found.conductivity[0] == pytest.approx(1e-9, rel=1e-6)


@pytest.mark.parametrize(("sweet", "percent", "ratio"), [
    # viscosity over that of water at 20 °C: sucrose by Laliberté 2009, glucose (CRC), glycerine (Segur and Oberstar
    # 1951) from memory
    ("granulated-sugar", 60, 58.5), ("granulated-sugar", 40, 6.16), ("glucose-powder", 40, 4.95), ("glycerine", 60, 10.8),
])  # fmt: skip
def test_each_sweet_slows_ions_by_its_own_thickness(sweet, percent, ratio):
    pure = 1 - pantry()[sweet].composition.get("water", 0.0)
    given = percent / pure
    grams = {sweet: given, "distilled-water": 100 - given, "table-salt": 0.1}
    grams["distilled-water"] /= 0.95  # a twentieth steams off
    left = chain_of(grams, walden_exponent=0.75).mobility_left[0]
    assert left == pytest.approx(ratio**-0.75, rel=0.06)  # some per cent of the ratio


@pytest.mark.parametrize("off", [-1.0, 0.5, 1.0])
def test_how_far_the_tables_are_off_is_counted_in_their_half_widths(off):
    there, elsewhere = chain_of(brine_error=0.0, picture=0.0), chain_of(brine_error=off, picture=0.0)
    width = float(mixture_width({ion: each[0] for ion, each in there.charges.items()}, 293.15))
    ratio = elsewhere.liquid_conductivity[0] / there.liquid_conductivity[0]
    assert ratio == pytest.approx(np.exp(off * width), rel=1e-9)
    assert width > 0.02
    assert elsewhere.ph[0] - there.ph[0] == pytest.approx(0.7 * off, rel=0.02)  # in strong brine


@pytest.mark.parametrize(("percent", "free"), [(11.92, 0.58), (14.5, 0.70), (25.0, 0.92)])
def test_flour_with_nothing_but_its_own_water_is_as_free_as_millers_say(percent, free):
    """Wheat flour of 12 % water rests at a humidity of 55 to 60 %, of 14.5 % at 70 (from memory; ±0.06)."""
    flour = (100 - percent) / (1 - 0.1192)
    recipe = recipe_of({"plain-flour": flour, "distilled-water": max(100 - flour, 1e-9)}, cooked="not cooked")
    given = replace(middle(recipe, pantry()), lost_share=np.zeros(1))
    assert followed(recipe, given, pantry()).water_activity[0] == pytest.approx(free, abs=0.06)


def test_strong_acid_slows_its_ions_as_the_table_of_acids_says():
    """CRC prints 7.1 mS/cm of citric acid at 25 % and 20 °C; a dough's liquid is the same liquid."""
    grams = {"citric-acid": 25, "distilled-water": 75 / 0.95}  # a twentieth steams off
    chain = chain_of(grams, walden_exponent=0.8)
    assert 10 * chain.liquid_conductivity[0] * chain.mobility_left[0] == pytest.approx(7.1, rel=0.05)
