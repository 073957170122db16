"""Limiting conductivities of ions at 25 °C.

Sources: CRC Handbook, "Ionic conductivity and diffusion at infinite dilution" (Vanýsek), by its 87th edition and by the
package chemicals 1.5.2; acetate and benzoate after Marcus, by the same package. Conductivities of whole salts at no
concentration: the same handbook, 97th edition, "Equivalent conductivity of electrolytes", sums.
"""

import pytest

from lumped.chemistry.mixture import limiting_conductivity
from lumped.reference import handbook

CRC = {  # S·cm²/mol of charge
    "hydrogen": 349.65, "sodium": 50.08, "potassium": 73.48, "chloride": 76.31, "hydroxide": 198.0, "sulphate": 80.0,
    "hydrogen-carbonate": 44.5, "aluminium": 61.0, "calcium": 59.47, "magnesium": 53.0, "iron": 54.0, "nickel": 49.6,
    "copper": 53.6, "ammonium": 73.5, "acetate": 40.9, "benzoate": 32.4,
}  # fmt: skip


@pytest.mark.parametrize(("ion", "printed"), CRC.items())
def test_an_ion_in_much_water_carries_what_the_table_says(ion, printed):
    assert 1e4 * limiting_conductivity(ion) == pytest.approx(printed, rel=1e-9)


@pytest.mark.parametrize(
    ("ions", "printed"), [(("sodium", "chloride"), 126.39), (("potassium", "chloride"), 149.79),
                          (("hydrogen", "chloride"), 425.96)]
)  # fmt: skip
def test_a_salt_in_much_water_carries_the_sum_of_its_ions(ions, printed):
    assert 1e4 * sum(map(limiting_conductivity, ions)) == pytest.approx(printed, abs=0.005)


def test_an_ion_that_no_table_names_says_that_it_is_from_memory():
    named = {key for key in handbook().keys("ions")
             if handbook().value("ions", key, "limiting_conductivity").provenance.status.value == "published"}  # fmt: skip
    assert named == set(CRC)
