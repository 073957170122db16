"""Where ingredients are sold."""

import pytest

from lumped.errors import InputError
from lumped.pantry import pantry
from lumped.pantry.shops import PLACES, sold
from lumped.pantry.where import regions
from lumped.quantities import Status
from lumped.reference import handbook


@pytest.mark.parametrize("where", regions())
def test_every_ingredient_is_sold_somewhere_or_said_to_be_hard_to_find(where):
    for key in pantry():
        found = sold(key, where)
        assert found.place in PLACES
        assert found.place != "unknown"
        assert found.words
        assert found.provenance.status is Status.FROM_MEMORY


def test_the_table_of_shops_names_ingredients_and_regions_that_there_are():
    book = handbook()
    assert set(book.keys("shops")) == set(pantry())
    elsewhere = [book.entry("shops", key).facts.get("elsewhere", {}) for key in book.keys("shops")]
    assert {where for each in elsewhere for where in each} <= set(regions())


def test_flour_salt_water_and_oil_are_at_hand_everywhere():
    everyday = ("plain-flour", "table-salt", "tap-water", "vegetable-oil", "granulated-sugar", "white-vinegar")
    assert {sold(key, where).trouble for key in everyday for where in regions()} == {"none"}


def test_what_the_handbook_does_not_know_nobody_told_where():
    assert sold("my-flour", "europe").words == "nobody told Lumped where"


def test_an_unknown_region_is_refused():
    with pytest.raises(InputError, match="no region “mars”"):
        sold("honey", "mars")
