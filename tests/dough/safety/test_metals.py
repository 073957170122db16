"""Aluminium and boron are neither made nor lost, and are held against the limits of the day."""

import datetime
import itertools
from dataclasses import replace

import pytest
from hypothesis import given
from tests.dough.safety.bowls import BOWLS, PANTRY, SALT_DOUGH

from lumped.chemistry.compounds import molar_mass_of
from lumped.dough.safety import amount_at_limit, element_share, limits_on, migration
from lumped.errors import InputError
from lumped.quantities import Status
from lumped.reference import handbook

BOOK = handbook()
NOW, ONE_DAY = datetime.date(2026, 11, 26), datetime.timedelta(days=1)


@given(BOWLS)
def test_all_aluminium_and_boron_that_went_in_is_in_the_dough(bowl):
    """Alum's dry salt holds 26.982/258.20 of aluminium, borax's 4 · 10.81/201.21 of boron."""
    alum = sum(mass * PANTRY[key].composition.get("alum", 0) for key, mass in bowl.items())
    borax = sum(mass * PANTRY[key].composition.get("borax", 0) for key, mass in bowl.items())
    assert 2.0 * element_share(bowl, 2.0, PANTRY, "Al") == pytest.approx(alum * 26.982 / 258.20, rel=1e-3)
    assert 2.0 * element_share(bowl, 2.0, PANTRY, "B") == pytest.approx(borax * 43.24 / 201.21, rel=1e-3)


def test_dough_with_alum_at_the_limit_is_at_the_limit():
    alum = amount_at_limit("KAl(SO4)2(H2O)12", "Al", NOW).mean
    pure = (
        alum * 258.20 / 474.39 / (BOOK.row("ingredients", "alum", "alum").high / 100)
    )  # the packet may have lost water
    found = migration({"alum": pure, "potato-starch": 0.5}, 1.0, PANTRY, date=NOW)[0]
    assert found.share == pytest.approx(found.pliable.mean, rel=1e-3)
    assert found.ingredients == ("alum",)


@pytest.mark.parametrize(
    ("alum", "over", "words"),
    [(0.005, (), "both limits would hold"), (0.02, ("sticky",), "the limit for sticky toys would be passed"),
     (0.06, ("pliable", "sticky"), "both limits would be passed")],
)  # fmt: skip
def test_the_words_say_which_limit_would_be_passed_and_that_it_is_no_certificate(alum, over, words):
    found = migration({"alum": alum, "potato-starch": 0.5}, 1.0, PANTRY, date=NOW)[0]
    assert found.over == over
    assert words in found.words
    assert "This is no certificate" in found.words


def test_a_dough_that_dries_holds_more_to_the_kilogram():
    found = migration({"alum": 0.01, "potato-starch": 0.5, "tap-water": 0.49}, 1.0, PANTRY, date=NOW)[0]
    assert found.share_dry == pytest.approx(found.share / (0.01 * (1 - PANTRY["alum"].moisture.low)
        + 0.5 * (1 - PANTRY["potato-starch"].composition["water"])), rel=1e-3)  # fmt: skip  # tap water holds 0.03 % salts


def test_a_dough_that_passes_a_limit_only_once_it_is_dry_says_so():
    """8 g of alum in 420 g of dough: 1083 mg/kg fresh (5 % more if it lost water), above 2250 mg/kg dry, by hand."""
    bowl = {"alum": 0.008, "potato-starch": 0.15, "table-salt": 0.06, "tap-water": 0.202}
    found = migration(bowl, 0.42, PANTRY, date=NOW)[0]
    assert 1e6 * found.share == pytest.approx(0.008 * 0.0568 * 57 / 54.4 / 0.42 * 1e6, rel=0.02)
    assert (found.over, found.over_dry) == (("sticky",), ("pliable", "sticky"))
    assert "Once it is dry, all of it would pass the limit for pliable toys too." in found.words
    fresh = migration({"alum": 0.005, "potato-starch": 0.995}, 1.0, PANTRY, date=NOW)[0]
    assert "Once it is dry" not in fresh.words


def test_borax_meets_the_limits_on_boron():
    found = migration({"borax": 0.02, "potato-starch": 0.5}, 1.0, PANTRY, date=NOW)
    assert [each.element for each in found] == ["B"]
    assert found[0].over == ("pliable", "sticky")


def test_burnt_alum_passes_the_pliable_limit_where_crystals_do_not():
    """12 g in 437 g of dough: crystals bring 12 · 26.982/474.39 g of aluminium, burnt alum nearly 12 · 26.982/258.20."""
    bowl = {"potato-starch": 0.15, "table-salt": 0.06, "tap-water": 0.215}
    crystals, burnt = (migration({**bowl, key: 0.012}, 0.437, PANTRY, date=NOW)[0] for key in ("alum", "burnt-alum"))
    assert 1e6 * crystals.share == pytest.approx(12 * 26.982 / 474.39 / 0.437 * 1e3, rel=0.06)  # it may have lost water
    assert 1e6 * burnt.share == pytest.approx(12 * 26.982 / 258.20 / 0.437 * 1e3, rel=0.01)
    assert (crystals.over, burnt.over) == (("sticky",), ("pliable", "sticky"))


def test_the_worst_case_is_an_ingredient_as_dry_as_it_may_be():
    known = PANTRY["alum"]
    dry = replace(known, moisture=replace(known.moisture, low=0.01))
    shop = PANTRY.with_added(dry)
    found = migration({"alum": 0.012, "potato-starch": 0.2}, 0.437, shop, date=NOW)[0]
    most = known.composition["alum"] * 0.99 / (1 - known.composition["water"])
    assert found.share == pytest.approx(0.012 * most * 26.982 / 258.20 / 0.437, rel=1e-3)
    assert "up to" in found.words


def test_the_worst_case_is_a_spoon_as_full_as_it_may_be():
    bowl = {"alum": 0.0135, "potato-starch": 0.2}
    usual, full = (migration(bowl, 0.4, PANTRY, date=NOW, most=most)[0] for most in (None, {**bowl, "alum": 0.0156}))
    assert full.share / usual.share == pytest.approx(0.0156 / 0.0135)
    assert full.share_dry > usual.share_dry


@pytest.mark.parametrize("key", ["alum", "burnt-alum", "borax"])
def test_as_dry_as_it_may_be_it_holds_as_much_salt_as_its_row_says_at_most(key):
    each, salt = PANTRY[key], key.removeprefix("burnt-")
    most = each.composition[salt] * (1 - each.moisture.low) / (1 - each.composition["water"])
    assert 100 * most == pytest.approx(
        BOOK.row("ingredients", key, salt).high, abs=0.6
    )  # rows give two or three digits


def test_a_salt_dough_holds_neither():
    assert migration(SALT_DOUGH, 0.37, PANTRY, date=NOW) == ()


@pytest.mark.parametrize("element", ["Al", "B"])
def test_the_limits_follow_each_other_day_by_day(element):
    table = handbook().keys("limits")
    dated = [handbook().entry("limits", key) for key in table if key.startswith("migration-")]
    periods = sorted(
        (each.facts["valid_from"], each.facts.get("valid_to")) for each in dated if each.facts["element"] == element
    )
    assert all(end + ONE_DAY == start for (_, end), (start, _) in itertools.pairwise(periods))
    assert periods[-1][1] is None


def test_limits_of_a_law_that_nobody_looked_up_say_so():
    found = migration({"alum": 0.01, "potato-starch": 0.5}, 1.0, PANTRY, date=datetime.date(2031, 1, 1))[0]
    assert found.provenance.status is Status.FROM_MEMORY
    assert "Nobody has looked these limits up" in found.words


def test_each_limit_for_sticky_toys_is_the_stricter():
    for element in ("Al", "B"):
        for year in (2015, 2026, 2031):
            rows = limits_on(element, datetime.date(year, 1, 1)).rows
            assert rows["category_2"].value.mean < rows["category_1"].value.mean


def test_a_day_before_the_law_is_refused():
    with pytest.raises(InputError, match=r"no limit for toys on 2010-01-01. Choose a day from 2013-07-20 on"):
        limits_on("Al", datetime.date(2010, 1, 1))


def test_an_element_without_a_limit_is_refused():
    with pytest.raises(InputError, match=r"no limit for “Fe” in toys. Choose one of: Al, B"):
        limits_on("Fe", NOW)


def test_a_compound_with_more_of_an_element_reaches_the_limit_sooner():
    crystals, dry = amount_at_limit("Na2B4O7(H2O)10", "B", NOW).mean, amount_at_limit("Na2B4O7", "B", NOW).mean
    assert crystals / dry == pytest.approx(molar_mass_of("Na2B4O7(H2O)10") / molar_mass_of("Na2B4O7"))
