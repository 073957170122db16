"""Mixtures of two conductivities, against closed forms.

Sources: Hashin & Shtrikman (J. Appl. Phys. 33, 3125, 1962); Maxwell (1873); Bruggeman (1935); Sen, Scala & Cohen
(1981) for Archie's exponent 1.5 of spheres; Archie (Trans. AIME 146, 54, 1942). Numbers computed from those forms.
"""

import numpy as np
import pytest

from lumped.dough.obstruction import (
    archie,
    bruggeman,
    hashin_shtrikman,
    mackie_meares,
    maxwell_garnett,
    obstruction_bound,
)


@pytest.mark.parametrize(("share", "low", "high"), [(0.5, 2.8, 4.705882), (0.3, 4.315789, 6.582278)])
def test_hashin_shtrikman_bounds_of_ten_and_one(share, low, high):
    assert hashin_shtrikman(10, 1, share) == pytest.approx((low, high), rel=1e-6)
    assert hashin_shtrikman(1, 10, 1 - share) == pytest.approx((low, high), rel=1e-6)


def test_the_bounds_are_maxwell_garnett_with_either_matrix():
    low, high = hashin_shtrikman(10, 1, 0.5)
    assert maxwell_garnett(10, 1, 0.5) == pytest.approx(high, rel=1e-12)
    assert maxwell_garnett(1, 10, 0.5) == pytest.approx(low, rel=1e-12)


def test_symmetric_bruggeman_lies_between_the_bounds():
    assert bruggeman(10, 1, 0.5) == pytest.approx(4.0, rel=1e-9)
    assert bruggeman(10, 1, 0.3) == pytest.approx(6.25, rel=1e-6)


def test_thirty_per_cent_of_insulating_spheres_in_three_theories_and_their_order():
    bound, differential, symmetric = float(obstruction_bound(0.7)), float(archie(0.7, 1.5)), bruggeman(1, 0, 0.3)
    assert (symmetric, differential, bound) == pytest.approx((0.55, 0.585662, 0.608696), rel=1e-6)
    assert symmetric < differential < bound


def test_symmetric_bruggeman_stops_conducting_below_one_third():
    assert bruggeman(1, 0, 1 - 0.333) == pytest.approx(0, abs=1e-12)
    assert bruggeman(1, 0, 1 - 0.34) > 0.009


@pytest.mark.parametrize(("share", "exponent", "factor"), [(0.2, 2, 25), (0.2, 1.3, 8.1033), (0.4, 1.5, 3.9528)])
def test_archies_formation_factor(share, exponent, factor):
    assert 1 / archie(share, exponent) == pytest.approx(factor, rel=1e-4)


def test_no_picture_of_a_dough_beats_the_bound():
    share = np.linspace(0, 1, 501)
    for exponent in (1.5, 2.25, 3.0):
        assert np.all(archie(share, exponent) <= obstruction_bound(share) + 1e-12)
    assert np.all(mackie_meares(share) <= obstruction_bound(share) + 1e-12)
    assert archie(0.5, 1.2) > obstruction_bound(0.5)  # a smaller exponent would break it


def test_a_thin_gel_slows_ions_by_four_times_its_polymer():
    polymer = 1e-4
    mobility = mackie_meares(1 - polymer) / (1 - polymer)
    assert (1 - mobility) / polymer == pytest.approx(4, rel=1e-3)  # Mackie & Meares 1955, from memory
