"""Compounds: neutral, named after what is in the handbook, and closed in mass."""

import pytest

from lumped.chemistry.compounds import atoms_of, compound, compounds
from lumped.errors import HandbookError
from lumped.reference import handbook

METALS = {"sodium": "Na", "potassium": "K", "magnesium": "Mg", "calcium": "Ca", "aluminium": "Al"}


@pytest.mark.parametrize("each", compounds(), ids=lambda each: each.key)
def test_the_metals_that_a_compound_gives_are_those_of_its_formula(each):
    given = {METALS[ion]: count for ion, count in {**each.ions, **each.acids}.items() if ion in METALS}
    assert given == {element: count for element, count in each.atoms.items() if element in METALS.values()}


@pytest.mark.parametrize("each", compounds(), ids=lambda each: each.key)
def test_what_it_gives_is_in_the_handbook_and_can_be_neutral(each):
    charge = sum(count * handbook().value("ions", ion, "charge").mean for ion, count in each.ions.items())
    assert set(each.acids) <= set(handbook().keys("acids"))
    assert charge == 0 or each.acids, "what strong ions leave is met by the acid's ions"


def test_what_holds_water_does_not_dissolve():
    assert not [each.key for each in compounds() if each.holds_water and each.dissolves]
    assert [each.key for each in compounds() if each.holds_water] == ["starch", "fibre", "protein"]


def test_an_unknown_compound_is_named_with_those_that_look_alike():
    with pytest.raises(HandbookError, match=r"sodium-chloride"):
        compound("sodium-cloride")


def test_a_formula_that_is_none_is_refused():
    with pytest.raises(ValueError, match=r"no formula: 'NaCl\+'"):
        atoms_of("NaCl+")
