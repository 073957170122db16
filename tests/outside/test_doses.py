"""Doses of salt and of other substances, against the papers that print them and against each other.

Sources: Merck Veterinary Manual (Thompson), about 4 g of salt for a kilogram of dog; Campbell & Train, Nutrients 9(7),
648 (2017), less than 10 g of sodium or 5 teaspoons of salt in two children; RCPCH 2009, p. 79, lethal range 0.75 to 3 g
for a kilogram and smallest case 5 g; USDA SR 02047 (teaspoon 6.0 g, sodium 38.758 %, cup 292 g); Wegenast et al. 2022,
case 1 (dog of 28 kg, 13.52 g of cream of tartar in homemade dough) and case 2 (9.6 kg, 6.76 g); label of Epsom salt.
"""

import pytest

from lumped.chemistry.compounds import molar_mass_of
from lumped.dough.safety import doses, helpings
from lumped.pantry import pantry
from lumped.reference import handbook

PANTRY, BOOK = pantry(), handbook()
PURE_SALT = {"table-salt": 0.1}


def dose(bowl, dough_mass, key, figure, **who):
    return next(each for each in doses(bowl, dough_mass, PANTRY, **who) if (each.key, each.figure) == (key, figure))


def test_a_dog_of_ten_kilograms_and_forty_grams_of_salt():
    found = dose(PURE_SALT, 0.1, "salt-dog", "lethal_per_kg", dog=10.0)
    assert 1e3 * found.amount.mean == pytest.approx(40)
    assert found.dough.mean / 0.292 == pytest.approx(0.137, rel=5e-3)  # cups; 99.8 % salt, and three digits printed


def test_ten_grams_of_sodium_are_25_4_grams_of_salt_and_less_than_five_teaspoons():
    found = dose(PURE_SALT, 0.1, "sodium-child", "in_two_deaths")
    assert 1e3 * found.dough.mean == pytest.approx(25.4, rel=3e-3)  # pure salt; the packet is 99.8 %
    assert 1e3 * found.dough.mean < 5 * 6.0
    assert pytest.approx(11.6, abs=0.05) == 5 * 6.0 * 0.38758  # g of sodium in five teaspoons by the table


def test_the_published_range_for_children_and_the_smallest_case():
    found = dose(PURE_SALT, 0.1, "salt-child", "lethal_per_kg", age=2)
    assert (1e3 * found.amount.low / found.eater_mass, 1e3 * found.amount.high / found.eater_mass) == pytest.approx(
        (0.75, 3.0)
    )
    assert 1e3 * dose(PURE_SALT, 0.1, "salt-child", "smallest_case").amount.mean == pytest.approx(5)


def test_a_salt_dough_of_16_per_cent_is_one_lump_for_a_child_and_120_g_for_a_dog():
    """0.75 g/kg · 12 kg / 0.16 = 56 g and 2 g/kg · 10 kg / 0.16 = 125 g, by hand."""
    bowl = {"table-salt": 0.16 / 0.998, "potato-starch": 0.5}
    child = dose(bowl, 1.0, "salt-child", "lethal_per_kg", age=2)
    assert 1e3 * child.dough.low == pytest.approx(56.2, rel=5e-3)  # sodium of the starch
    assert child.lumps == pytest.approx(0.94, abs=0.01)
    assert 1e3 * dose(bowl, 1.0, "salt-dog", "signs_per_kg", dog=10.0).dough.low == pytest.approx(125, rel=5e-3)


@pytest.mark.parametrize(("number", "dough", "salt"), [(0, 0.4, 0.064), (1, 60, 9.6)])
def test_a_pinch_and_a_lump_by_hand(number, dough, salt):
    """16 % salt; a child of 12 kg falls from 0.75 g/kg into the range of published deaths and should eat 2 g a day at
    most; a dog of 10 kg falls ill from 2 g/kg. Of salt 39.34 % are sodium."""
    bowl = {"table-salt": 0.16 / 0.998, "potato-starch": 0.5}
    found = helpings(bowl, 1.0, PANTRY, age=2, dog=10.0)[number]
    by_hand = {"dough": dough, "salt": salt, "sodium": 0.3934 * salt}
    assert {name: 1e3 * getattr(found, name) for name in by_hand} == pytest.approx(by_hand, rel=5e-3)
    shares = {"salt_per_kg": 1e-3 * salt / 12, "salt_per_dog_kg": 1e-3 * salt / 10, "of_lethal": salt / 12 / 0.75,
              "of_illness": salt / 10 / 2, "of_a_day": salt / 2}  # fmt: skip
    assert {name: getattr(found, name) for name in shares} == pytest.approx(shares, rel=5e-3)


@pytest.mark.parametrize(("end", "tartar", "dog"), [("low", 13.52, 28.0), ("high", 6.76, 9.6)])
def test_the_dogs_that_cream_of_tartar_made_ill(end, tartar, dog):
    value = BOOK.value("limits", "tartrate-dog", "kidneys_failed_per_kg")
    assert 1e3 * getattr(value, end) == pytest.approx(tartar / dog, rel=1e-3)  # printed as 483 and 704 mg/kg
    found = dose({"cream-of-tartar": 0.05}, 1.0, "tartrate-dog", "kidneys_failed_per_kg", dog=dog)
    assert 1e3 * getattr(found.amount, end) == pytest.approx(tartar, rel=1e-3)


def test_tartaric_acid_counts_as_the_cream_of_tartar_that_holds_as_much_of_it():
    acid = dose({"tartaric-acid": 0.05}, 1.0, "tartrate-dog", "kidneys_failed_per_kg").dough.mean
    cream = dose({"cream-of-tartar": 0.05}, 1.0, "tartrate-dog", "kidneys_failed_per_kg").dough.mean
    purity = PANTRY["tartaric-acid"].composition["tartaric-acid"]
    of_cream = PANTRY["cream-of-tartar"].composition["potassium-hydrogen-tartrate"]
    assert cream / acid == pytest.approx(188.177 / 150.087 * purity / of_cream, rel=1e-3)


def test_a_teaspoon_of_epsom_salt_holds_495_mg_of_magnesium():
    """The label prints 495 mg for a teaspoon and 5 to 10 g for one or two: 5.0 g of MgSO4·7H2O."""
    value = BOOK.value("limits", "epsom-child", "laxative_age_6")
    share = molar_mass_of("Mg") / molar_mass_of("MgSO4(H2O)7")
    assert 1e6 * value.low * share == pytest.approx(495, rel=0.005)


def test_the_infant_who_died_of_potassium_chloride_got_0_94_g_for_a_kilogram():
    value = BOOK.value("limits", "potassium-child", "infant_death_per_kg")
    assert 1e3 * value.mean == pytest.approx(4.5 / 4.8, rel=5e-3)  # 4500 mg, 4.8 kg; printed to two digits


def test_two_and_a_half_millimoles_of_potassium_are_0_19_g_of_its_chloride():
    care = BOOK.value("limits", "potassium-child", "care_per_kg")
    assert care.mean == pytest.approx(2.5e-3 * molar_mass_of("KCl"), rel=0.03)  # two digits
