"""What is amiss with a recipe, as its page says it."""

import pytest

from lumped.app.amiss import amiss
from lumped.app.changing import changed
from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.app.readings import readings
from lumped.errors import LumpedError

SALT = Given(name="ropewalk-salt.toml", text=example_recipe("ropewalk-salt.toml"))


@pytest.mark.parametrize(
    ("name", "said", "told"),
    [
        ("table-salt", "-3 g", "table salt: “-3 g” is less than nothing. Write an amount above zero."),
        ("table-salt", "123456789", "table salt: “123456789 g” is 123,457 kg, more than any bowl holds;"),
        ("table-salt", "", "table salt: say how much goes in, “125 g” or “1 cup”; 0 leaves it out."),
        ("cooked", "fried", "How it is made: “fried” is no way to make it. Choose one of: 'pot', 'kettle'"),
        ("table-salt", "a lot", "table salt: “a lot” is no amount that Lumped can read."),
        (
            "plain-flour",
            "1 cup;0-9999999",
            "plain flour, what is added by feel: 9,999,999 g can’t be. It must be at most",
        ),
        ("plain-flour", "1 cup;abc", "plain flour, what is added by feel: “abc” does not say what is added by feel."),
        ("degrees", "900", "How warm it is when it is used: “900” can’t be. It must be at most 90."),
        ("degrees", "warm", "How warm it is when it is used: “warm” can’t be. Write a number of degrees Celsius"),
        ("sugarr", "3 g", "Lumped knows no ingredient “sugarr”. Did you mean: granulated-sugar"),
    ],
)
def test_a_page_names_the_ingredient_and_not_the_place_in_a_file(name, said, told):
    with pytest.raises(LumpedError) as caught:
        readings(changed(SALT, {name: said}), "europe")
    assert amiss(caught.value.as_dict()).startswith(told)
