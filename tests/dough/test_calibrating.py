"""What a measured batch teaches."""

from dataclasses import replace

import numpy as np
import pytest
from tests.bowls import CONDUCTING, recipe_of

from lumped.dough import knead, measured_dough
from lumped.dough.calibrating import KEPT, LEARNT, calibrated
from lumped.errors import RecipeError
from lumped.quantities import Status

RECIPE = replace(recipe_of({**CONDUCTING, "table-salt": 73}), weighed_after=0.420)


def spread(value):
    return value.high / value.low


def measured(resistivity):
    return measured_dough(resistivity, "four-needles-ac").resistivity


def test_a_measured_batch_moves_the_prediction_towards_it_and_narrows_it():
    before = knead(RECIPE).resistivity
    target = 0.8 * before.mean
    after = knead(RECIPE, calibration=calibrated(RECIPE, measured(target))).resistivity
    assert after.mean == pytest.approx(target, rel=0.10)  # what one batch has over another stays unknown: 15 %
    assert spread(after) < 0.8 * spread(before)
    assert after.low < target < after.high


def test_what_is_learnt_of_one_recipe_narrows_another():
    other = recipe_of({**CONDUCTING, "table-salt": 36})
    learnt = calibrated(RECIPE, measured(0.15))
    assert spread(knead(other, calibration=learnt).resistivity) < 0.85 * spread(knead(other).resistivity)


def test_two_batches_teach_more_than_one():
    once = calibrated(RECIPE, measured(0.15), batch="Monday")
    twice = calibrated(RECIPE, measured(0.15), before=once, batch="Tuesday")
    assert twice.batches == ("Monday: 0.150 Ω·m (0.136 to 0.165)", "Tuesday: 0.150 Ω·m (0.136 to 0.165)")
    assert spread(knead(RECIPE, calibration=twice).resistivity) < spread(knead(RECIPE, calibration=once).resistivity)


@pytest.mark.parametrize("reading", [0.15, 0.31])
def test_batches_that_agree_are_believed_in_the_end(reading):
    recipe, learnt = recipe_of({**CONDUCTING, "table-salt": 73}), None
    for day in range(6):
        learnt = calibrated(recipe, measured(reading), before=learnt, batch=str(day))
    assert knead(recipe, calibration=learnt).resistivity.mean == pytest.approx(reading, rel=0.03)


def test_a_measurement_that_contradicts_the_recipe_teaches_nothing():
    with pytest.raises(RecipeError, match=r"was measured, but this recipe yields"):
        calibrated(RECIPE, measured(20.0))


def test_an_ohmmeter_reading_never_gets_that_far():
    with pytest.raises(RecipeError, match=r"from an ohmmeter with two probes is no resistivity"):
        measured_dough(0.2, "two-wire-dc")


def test_a_calibrated_dough_says_so_and_names_the_batches():
    dough = knead(RECIPE, calibration=calibrated(RECIPE, measured(0.15), batch="Monday"))
    assert any("Measured batches narrow the interval" in note for note in dough.notes)
    assert dough.resistivity.provenance.status is Status.FROM_MEMORY


def test_each_thing_that_is_learnt_keeps_its_own_name():
    """An exponent of 1.5 to 3 and bound water of 0.15 to 0.4 can't be mistaken for each other."""
    learnt = calibrated(RECIPE, measured(0.15))
    assert [learnt.value(name).mean >= 1.5 for name in ("archie_exponent", "bound_water", "picture")] == [
        True,
        False,
        False,
    ]
    assert learnt.value("bound_water").mean < 0.45
    drawn = learnt.draws()
    assert drawn["archie_exponent"].min() >= 1.5 > drawn["picture"].max() >= drawn["picture"].min() >= 0
    assert drawn["bound_water"].max() < 0.8


def test_the_points_lie_within_what_was_believed_before():
    points = np.array(calibrated(RECIPE, measured(0.15)).points)
    assert points.shape == (KEPT, len(LEARNT))
    assert np.all((points[:, 0] >= 1.5) & (points[:, 0] <= 3.0))
    assert np.all((points[:, 2] >= 0) & (points[:, 2] <= 1))
