"""The field of a mould against closed forms.

Sources: R = ρ·L/A of a cylinder between faces. Rayleigh's bounds (J. W. Strutt, The Theory of Sound, 1877, § 305; from
memory): adding a perfect conductor lowers a resistance, cutting dough away raises it. Two parallel rods of radius a, their
middles d apart, in a wide slab of thickness L: R = ρ·arcosh(d/2a)/(π·L), from the potential of two line charges.
"""

import math

import pytest

from lumped.reference import handbook
from lumped.sculpt.mould import mould, moulds, rods_resistance
from lumped.shape import Block, Roll


def tube(bore, length):
    return Roll(start=(0.0, 0.0, 0.0), end=(length, 0.0, 0.0), radius=bore / 2)


def from_both_ends(length, depth):
    return (((0.0, 0.0, 0.0), (depth, 0.0, 0.0)), ((length, 0.0, 0.0), (length - depth, 0.0, 0.0)))


@pytest.mark.parametrize("bore", [6e-3, 20e-3])
def test_rods_as_wide_as_the_tube_give_the_cylinder_between_their_faces(bore):
    found = rods_resistance(tube(bore, 0.06), from_both_ends(0.06, 0.02), bore / 2, pitch=bore / 10)
    assert found == pytest.approx(0.02 / (math.pi * (bore / 2) ** 2), rel=2e-3)  # ten cells across


@pytest.mark.parametrize(("key", "bore"), [("straw", 6e-3), ("barrel", 19.5e-3)])
def test_a_tube_lies_between_shorting_its_cross_sections_and_cutting_away_all_but_the_core(key, bore):
    found = solved(key)
    gap, radius = 0.02, 1.5e-3
    assert gap / (math.pi * (bore / 2) ** 2) < found < gap / (math.pi * radius**2)


def test_two_rods_through_a_wide_slab_give_the_closed_form():
    spacing, radius, height = 0.012, 1.5e-3, 0.004
    slab = Block(centre=(0.0, 0.0, 0.0), size=(0.09, 0.09, height))
    rods = tuple(((x, 0.0, height / 2), (x, 0.0, -height / 2)) for x in (-spacing / 2, spacing / 2))
    found = rods_resistance(slab, rods, radius, pitch=6e-4)
    wide = math.acosh(spacing / (2 * radius)) / (math.pi * height)
    assert found == pytest.approx(wide, rel=0.02)  # five cells across a rod, a slab of seven spacings: 1 % each


@pytest.mark.parametrize("key", moulds())
def test_what_the_handbook_keeps_is_what_the_field_gives(key):
    assert mould(key).factor.mean == pytest.approx(solved(key), rel=5e-4)  # the table prints four digits


def test_the_end_that_the_handbook_keeps_is_that_of_the_sizes():
    assert mould("straw").factor.low == pytest.approx(solved("straw", "low"), rel=5e-4)


def solved(key, end="mean"):
    from lumped.sculpt.mould import _factor, _sizes

    kind = handbook().entry("moulds", key).facts["kind"]
    return _factor(kind, _sizes(key)[0], 1.5e-3, end)
