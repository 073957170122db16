"""Prices by region: own figures first, else worked out with the spread of both."""

from math import log

import pytest

from lumped.errors import InputError
from lumped.pantry import pantry
from lumped.pantry.prices import price
from lumped.pantry.where import region, regions
from lumped.quantities import Status
from lumped.reference import handbook


@pytest.mark.parametrize("where", regions())
def test_all_that_is_bought_has_a_price_packs_and_a_year_in_every_region(where):
    found = {key: price(key, where) for key in pantry()}
    assert [key for key, each in found.items() if each is None] == ["rain-water"]
    for each in filter(None, found.values()):
        assert 0 < each.per_mass.low < each.per_mass.mean < each.per_mass.high
        assert each.per_mass.provenance.status in (Status.FROM_MEMORY, Status.INVENTED)
        assert each.packs == tuple(sorted(each.packs))
        assert 0.004 < each.packs[0] < 10
        assert 2000 < int(each.dated) < 2100


def test_every_price_belongs_to_an_ingredient_and_every_row_to_a_currency():
    book = handbook()
    assert set(book.keys("prices")) <= set(pantry())
    currencies = {f"{region(key).currency.lower()}_per_kg" for key in regions()}
    assert {row for key in book.keys("prices") for row in book.entry("prices", key).rows} <= currencies


def test_a_price_without_a_figure_of_its_own_is_worked_out_with_both_spreads():
    found, base, level = price("honey", "japan"), price("honey", "europe"), region("japan").level
    assert found.worked_out
    assert not base.worked_out
    assert found.per_mass.mean == pytest.approx(base.per_mass.mean * level.mean)
    spreads = [log(each.high / each.mean) ** 2 for each in (found.per_mass, base.per_mass, level)]
    assert spreads[0] == pytest.approx(spreads[1] + spreads[2])


def test_a_users_own_ingredient_has_no_price_yet():
    assert price("my-flour", "europe") is None


def test_packs_are_those_of_the_country():
    assert price("plain-flour", "north-america").packs == (0.907, 2.268)  # 2 and 5 pounds
    assert price("plain-flour", "europe").packs == (1.0,)


def test_an_unknown_region_is_told_with_those_that_are_known():
    with pytest.raises(InputError, match=r"no region “japon”. Did you mean “japan”\? Lumped knows: north-america,"):
        price("honey", "japon")


@pytest.mark.parametrize("word", ["mars", "zzz", "x" * 500])
def test_where_no_region_is_near_none_is_offered(word):
    with pytest.raises(InputError, match=r"no region “\w{1,40}”. Lumped knows: north-america,"):
        region(word)


@pytest.mark.parametrize(
    ("word", "meant"),
    [("Britain", "uk-ireland"), ("france", "europe"), ("Brasil", "latin-america"), ("us", "north-america")],
)
def test_a_country_is_told_its_region(word, meant):
    with pytest.raises(InputError, match=rf"Did you mean “{meant}”\?"):
        region(word)
