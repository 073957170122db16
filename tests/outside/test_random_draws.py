"""Intervals, their causes and what a measurement teaches, against plain random draws that no ladder arranged.

Source: the definition of each. The 95 % interval of a dough is where 95 of 100 random doughs lie (Monte Carlo, JCGM
101:2008); what a measurement settles is the variance that goes when it is known (law of total variance); what a batch
teaches is Bayes' rule, here by weighing random draws of both doughs with the likelihood of what was measured.
"""

from dataclasses import replace

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough import knead, measured_dough
from lumped.dough.beliefs import beliefs, sorted_out
from lumped.dough.calibrating import LEARNT, calibrated
from lumped.dough.kneading import followed
from lumped.pantry import pantry
from lumped.pantry.amounts import weighed

COUNT = 40_000
LEAST = {"bound_water": 0.0, "air": 0.0, "mobile_double": 0.0, "percolation": 0.0}


def as_weighed(recipe):
    return replace(recipe, portions=tuple(replace(each, mass=weighed(each.mass.mean)) for each in recipe.portions))


SALT = as_weighed(recipe_of({**CONDUCTING, "table-salt": 73}))
LEAN = as_weighed(recipe_of({**CONDUCTING, "table-salt": 36}))
SUGAR = as_weighed(recipe_of(INSULATING, "insulating", "not cooked"))


def at_random(value, random):
    """A value's own belief, written here once more."""
    if value.low == value.high:
        return np.full(COUNT, value.mean)
    if value.spread == "uniform":
        low, high = random.uniform(value.low, value.mean, COUNT), random.uniform(value.mean, value.high, COUNT)
        return np.where(random.random(COUNT) < 0.5, low, high)
    z = random.standard_normal(COUNT) / 1.959964
    if value.spread == "lognormal":
        return value.mean * np.where(z < 0, value.mean / value.low, value.high / value.mean) ** z
    return value.mean + z * np.where(z < 0, value.mean - value.low, value.high - value.mean)


def doughs(recipe, seed, **known):
    """What is unknown of many random doughs of a recipe, and their resistivity."""
    random = np.random.default_rng(seed)
    named = {name: at_random(value, random) for name, value in beliefs(recipe, pantry()).items()} | known
    for name, least in LEAST.items():
        named[name] = np.maximum(named[name], least)
    chain = followed(recipe, sorted_out(recipe, named, pantry()), pantry())
    return named, chain.resistivity


def likelihood(resistivity, measured):
    width = np.where(resistivity < measured.mean, measured.mean / measured.low, measured.high / measured.mean)
    return np.exp(-0.5 * (1.959964 * np.log(resistivity / measured.mean) / np.log(width)) ** 2)


def weighed_quantiles(figures, weights):
    order = np.argsort(figures)
    return np.interp([0.025, 0.5, 0.975], np.cumsum(weights[order]) / weights.sum(), figures[order])


@pytest.mark.parametrize("recipe", [SALT, SUGAR])
def test_an_interval_is_where_95_of_100_random_doughs_lie(recipe):
    found = knead(recipe).resistivity
    random = np.quantile(doughs(recipe, 1)[1], [0.025, 0.5, 0.975])
    assert (found.low, found.mean, found.high) == pytest.approx(tuple(random), rel=0.05)  # the scatter of 4096 draws


@pytest.mark.parametrize(("recipe", "measurement", "settles"), [
    (SALT, "finished", ("water_lost",)),
    (SUGAR, "syrup", ("walden_exponent",)),
])  # fmt: skip
def test_what_a_measurement_settles_is_the_variance_that_goes_with_it(recipe, measurement, settles):
    named, before = doughs(recipe, 2)
    known = {name: np.full(COUNT, np.median(named[name])) for name in settles}
    share = 1 - np.var(np.log(doughs(recipe, 2, **known)[1])) / np.var(np.log(before))
    found = {each.measurement: each.share for each in knead(recipe).influences}
    assert found[measurement] == pytest.approx(share, abs=0.03)


def test_what_a_batch_teaches_of_another_recipe_is_bayes_rule():
    """How dough stands in the way of ions is shared; amounts, steam and scatter are each batch's own."""
    measured = measured_dough(0.13, "four-needles-ac").resistivity
    named, resistivity = doughs(SALT, 3)
    weights = likelihood(resistivity, measured)
    _, other = doughs(LEAN, 4, **{name: named[name] for name in LEARNT})
    wanted, before = weighed_quantiles(other, weights), knead(LEAN).resistivity
    found = knead(LEAN, calibration=calibrated(SALT, measured)).resistivity
    assert (found.low, found.mean, found.high) == pytest.approx(tuple(wanted), rel=0.06)  # 2048 points are kept
    assert found.high / found.low < 0.7 * before.high / before.low


def test_what_one_measured_batch_would_narrow_is_what_bayes_rule_leaves_of_the_next():
    named, before = doughs(SALT, 5)
    weights = likelihood(before, measured_dough(float(np.median(before)), "four-needles-ac").resistivity)
    _, after = doughs(SALT, 6, **{name: named[name] for name in LEARNT})
    left = np.log(after)
    share = 1 - np.cov(left, aweights=weights) / np.var(np.log(before))
    low, _, high = weighed_quantiles(after, weights)
    (found,) = (each for each in knead(SALT).influences if each.measurement == "resistivity")
    assert found.share == pytest.approx(share, abs=0.03)
    assert found.factor_left == pytest.approx(high / low, rel=0.06)
