"""Doses are counted from atoms, and grow with the eater and shrink with the salt."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.dough.safety.bowls import BOWLS, PANTRY, SALT_DOUGH

from lumped.dough.safety import child_mass, dog_mass, doses, element_share, helpings, salt_of_a_day, salt_share
from lumped.errors import InputError
from lumped.quantities import Status


def dose(bowl, dough_mass, key, figure, **who):
    return next(each for each in doses(bowl, dough_mass, PANTRY, **who) if (each.key, each.figure) == (key, figure))


@given(BOWLS, st.floats(0.1, 10.0), st.floats(0.1, 8.0))
def test_making_more_of_a_dough_changes_no_share_and_no_dose(bowl, dough_mass, times):
    more = {key: times * mass for key, mass in bowl.items()}
    assert salt_share(more, times * dough_mass, PANTRY) == pytest.approx(
        salt_share(bowl, dough_mass, PANTRY), rel=1e-12
    )
    grams = {(each.key, each.figure): each.dough.mean for each in doses(bowl, dough_mass, PANTRY)}
    again = {(each.key, each.figure): each.dough.mean for each in doses(more, times * dough_mass, PANTRY)}
    assert again == pytest.approx(grams, rel=1e-12)


@given(BOWLS, st.floats(0.1, 10.0))
def test_dough_times_share_is_the_dose(bowl, dough_mass):
    for each in doses(bowl, dough_mass, PANTRY):
        if each.key == "sodium-child":
            share = float(element_share(bowl, dough_mass, PANTRY, "Na"))
            assert each.dough.mean * share == pytest.approx(each.amount.mean, rel=1e-12)


def test_shares_broadcast_over_many_bowls():
    salts = np.array([0.018, 0.036, 0.073])
    shares = salt_share({**SALT_DOUGH, "table-salt": salts}, np.array([0.35, 0.37, 0.4]), PANTRY)
    one_by_one = [
        float(salt_share({**SALT_DOUGH, "table-salt": float(salt)}, mass, PANTRY))
        for salt, mass in zip(salts, (0.35, 0.37, 0.4), strict=True)
    ]
    assert shares.tolist() == pytest.approx(one_by_one, rel=1e-14)


def test_baking_soda_counts_as_salt_by_its_sodium():
    assert float(salt_share({"baking-soda": 0.1}, 1.0, PANTRY)) == pytest.approx(0.0694, rel=0.01)  # 58.44/84.01, dry


def test_a_heavier_dog_bears_more_and_a_bigger_child_too():
    light, heavy = (dose(SALT_DOUGH, 0.37, "salt-dog", "signs_per_kg", dog=mass).dough.mean for mass in (5.0, 20.0))
    assert heavy == pytest.approx(4 * light)
    small, big = (dose(SALT_DOUGH, 0.37, "salt-child", "lethal_per_kg", age=age).dough.low for age in (1, 6))
    assert big / small == pytest.approx(child_mass(6).mean / child_mass(1).mean)


def test_a_pinch_is_far_below_a_day_s_salt_and_a_lump_far_above_it():
    pinch, lump = helpings(SALT_DOUGH, 0.37, PANTRY, age=2)
    assert pinch.of_a_day < 0.03
    assert lump.of_a_day > 2
    assert lump.salt / pinch.salt == pytest.approx(60 / 0.4)
    assert pinch.words.startswith("A pinch of it (0.4 g) holds 0.039 g of salt")


def test_only_what_went_in_has_doses():
    keys = {each.key for each in doses({"plain-flour": 0.2, "glycerine": 0.05}, 0.25, PANTRY)}
    assert "glycerol-child" in keys
    assert not keys & {"epsom-child", "boron-child", "tartrate-dog", "aluminium-child"}


def test_the_smallest_amount_of_dough_comes_first():
    amounts = [each.dough.low for each in doses(SALT_DOUGH, 0.37, PANTRY)]
    assert amounts == sorted(amounts)


@pytest.mark.parametrize(
    ("ingredient", "key"),
    [("epsom-salt", "epsom-child"), ("potassium-chloride-salt", "potassium-child"), ("borax", "boron-child"),
     ("alum", "aluminium-child"), ("tartaric-acid", "tartrate-dog"), ("glycerine", "glycerol-child")],
)  # fmt: skip
def test_each_substance_with_a_dose_says_it_in_words(ingredient, key):
    found = [each for each in doses({ingredient: 0.03, "potato-starch": 0.2}, 0.35, PANTRY) if each.key == key]
    assert found
    assert all(ingredient in each.ingredients and " g of " in each.words for each in found)


def test_a_day_s_aluminium_is_said_in_milligrams():
    """0.3 mg for each of 12 kg."""
    found = dose({"alum": 0.01, "potato-starch": 0.2}, 0.4, "aluminium-child", "day_per_kg")
    assert "hold 3.6 mg of aluminium" in found.words
    assert 1e6 * found.amount.mean == pytest.approx(3.6)


def test_the_careful_end_takes_spoons_as_full_and_crystals_as_dry_as_they_may_be():
    bowl, full = {"alum": 0.01, "potato-starch": 0.2}, {"alum": 0.012, "potato-starch": 0.2}
    share = float(element_share(full, 0.4, PANTRY, "Al", at_most=True))
    found = next(each for each in doses(bowl, 0.4, PANTRY, most=full) if each.key == "aluminium-child")
    assert found.dough.low * share == pytest.approx(found.amount.low, rel=1e-12)
    assert found.dough.low < found.dough.mean / 1.2  # 12 g for 10, and lost water of crystals besides


def test_a_dose_in_more_dough_than_anybody_eats_is_not_near():
    assert dose(SALT_DOUGH, 0.37, "salt-child", "lethal_per_kg").is_near
    assert not dose({"plain-flour": 0.2}, 0.3, "salt-child", "lethal_per_kg").is_near


def test_a_figure_from_memory_stays_one_in_the_dose():
    found = dose(SALT_DOUGH, 0.37, "salt-dog", "signs_per_kg")
    assert found.provenance.status is Status.FROM_MEMORY


def test_children_grow_with_age_and_a_day_s_salt_with_them():
    ages = np.linspace(1, 10, 37)
    masses = [child_mass(float(age)).mean for age in ages]
    assert np.all(np.diff(masses) > 0)
    assert [1e3 * salt_of_a_day(age).mean for age in (1, 3.9, 4, 7, 11, 15)] == pytest.approx([2, 2, 3, 5, 6, 6])
    assert dog_mass("tiny").mean < dog_mass("large").mean


def test_an_age_beyond_the_table_is_refused():
    with pytest.raises(InputError, match=r"no figure for an age of 0.5 years. Give an age from 1 to 10"):
        child_mass(0.5)
    with pytest.raises(InputError, match=r"no figure for an age of 0.5 years. Give an age from 1 to 18"):
        salt_of_a_day(0.5)


@pytest.mark.parametrize("mass", [0.0, -1.0])
def test_no_dough_is_refused(mass):
    with pytest.raises(InputError, match=r"The dough would weigh -?\d+ g. Give the mass of the dough"):
        salt_share(SALT_DOUGH, mass, PANTRY)
