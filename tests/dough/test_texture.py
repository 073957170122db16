"""How a dough feels: common practice at first, batches later."""

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.kneading import knead_middle
from lumped.dough.texture import Feel, FeelFit, features_of, feel_of, fitted, hydration_window
from lumped.quantities import Provenance, Status, Value


def feel(grams, kind="conducting", cooked="pot", fit=None):
    recipe = recipe_of(grams, kind, cooked)
    chain = knead_middle(recipe)
    return feel_of(recipe, chain, Value.exact(float(chain.hydration[0]), ""), fit)


def test_the_usual_doughs_lie_in_the_trades_window():
    assert feel({**CONDUCTING, "table-salt": 73}).fits
    assert feel(INSULATING, "insulating", "not cooked").fits


def test_more_water_is_softer_and_less_is_stiffer():
    scores = [feel({**CONDUCTING, "table-salt": 73, "tap-water": water}).score.mean for water in (120, 200, 260, 400)]
    assert scores == sorted(scores)
    assert scores[0] < 2
    assert scores[-1] > 4


def test_a_dough_outside_the_window_is_told_what_to_do():
    assert "Add water by the spoon" in feel({**CONDUCTING, "table-salt": 73, "tap-water": 60}).words
    assert "Add flour by the spoon" in feel({**CONDUCTING, "table-salt": 73, "tap-water": 330}).words


def test_at_the_edges_of_the_window_a_plain_dough_is_stiff_or_soft():
    recipe = recipe_of({"plain-flour": 100, "tap-water": 100})
    least, most = hydration_window(recipe)
    for edge, score in ((least.mean, 2.0), (most.mean, 4.0)):
        found = feel({"plain-flour": 100, "distilled-water": 100 * edge})
        assert found.score.mean == pytest.approx(score, abs=0.05)  # flour brings a little fat and no sugar


def test_with_nothing_believed_before_the_fit_is_that_of_least_squares():
    """numpy's `lstsq` on the same figures is the reference."""
    rng = np.random.default_rng(7)
    x = np.column_stack([np.ones(40), rng.normal(size=(40, 4))])
    y = rng.integers(1, 6, 40)
    open_minded = FeelFit(mean=(0.0,) * 5, covariance=tuple(map(tuple, 1e10 * np.eye(5))))
    found = fitted([(row, int(score)) for row, score in zip(x, y, strict=True)], open_minded)
    np.testing.assert_allclose(found.mean, np.linalg.lstsq(x, y, rcond=None)[0], atol=1e-6)


def test_batches_one_by_one_teach_what_they_teach_together():
    recipe = recipe_of({**CONDUCTING, "table-salt": 73})
    scored = [(features_of(recipe, knead_middle(recipe)), score) for score in (2, 3, 2)]
    step_by_step = None
    for each in scored:
        step_by_step = fitted([each], step_by_step)
    np.testing.assert_allclose(step_by_step.mean, fitted(scored).mean, rtol=1e-9)
    assert step_by_step.batches == 3


def test_scored_batches_narrow_the_score_and_move_it_to_what_hands_felt():
    grams = {**CONDUCTING, "table-salt": 73}
    recipe = recipe_of(grams)
    learnt = fitted([(features_of(recipe, knead_middle(recipe)), 2)] * 12)
    before, after = feel(grams).score, feel(grams, fit=learnt).score
    assert after.high - after.low < before.high - before.low
    assert after.mean == pytest.approx(2.0, abs=0.3)
    assert "12 scored batches" in after.provenance.note


@pytest.mark.parametrize(
    ("low", "mean", "high", "word"),
    [
        (2.6, 3.0, 3.4, "right"),
        (2.6, 3.2, 3.9, "right"),  # neighbours: the middle says it
        (1.3, 3.0, 4.9, "anything from crumbly to sticky"),
        (1.6, 2.9, 4.2, "anything from stiff to soft"),
    ],
)
def test_a_wide_interval_is_not_called_right(low, mean, high, word):
    score = Value(mean=mean, low=low, high=high, unit="", provenance=Provenance(status=Status.FROM_MEMORY))
    feel = Feel(hydration=score, least=0.5, most=2.0, score=score)
    assert feel.word == word
    assert feel.figure == f"{word}: {mean:.1f} of 5 ({low:.1f} to {high:.1f})"
