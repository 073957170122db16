"""How a dough feels: common practice at first, batches later."""

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of

from lumped.dough.kneading import knead_middle
from lumped.dough.texture import Feel, FeelFit, features_of, feel_of, fitted
from lumped.dough.wetting import hydration_window
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
    feel = Feel(hydration=score, wetness=score.mean, least=0.5, most=2.0, score=score)
    assert feel.word == word
    assert feel.figure == f"{word}: {mean:.1f} of 5 ({low:.1f} to {high:.1f})"


SYRUPS = [
    {"plain-flour": 150, "corn-syrup": 150, "vegetable-oil": 30},
    {"plain-flour": 150, "honey": 150, "vegetable-oil": 30},
    {"plain-flour": 150, "glycerine": 80, "distilled-water": 20},
    {"cornstarch": 150, "honey": 200},
]


@pytest.mark.parametrize("grams", SYRUPS)
def test_syrup_wets_flour_and_makes_a_dough(grams):
    found = feel(grams, "insulating", "not cooked")
    assert found.is_dough
    assert "crumbs" not in found.words
    assert "syrup" in found.words
    assert "Add water" not in found.words


def test_fat_holds_starch_without_water_and_nobody_is_told_to_add_any():
    found = feel({"cornstarch": 150, "shortening": 75}, "insulating", "not cooked")
    assert found.is_dough
    assert "fat" in found.words
    assert "Add water" not in found.words
    assert "breaks when it is bent" in found.words


def test_flour_with_a_little_fat_stays_crumbs_and_a_wall_wants_fat_not_water():
    wall, leg = (feel({"plain-flour": 150, "vegetable-oil": 12}, kind, "not cooked")
                 for kind in ("insulating", "conducting"))  # fmt: skip
    assert not wall.is_dough
    assert "Add syrup or fat" in wall.words
    assert "Add water" in leg.words


def test_a_flood_of_syrup_pours():
    assert "it pours" in feel({"plain-flour": 100, "honey": 400}, "insulating", "not cooked").words


def test_water_inside_the_window_counts_alone():
    wetter = feel(INSULATING | {"vegetable-oil": 60}, "insulating", "not cooked")
    assert wetter.wetness == pytest.approx(wetter.hydration.mean)


def test_syrup_and_fat_count_the_less_the_more_water_there_is():
    """By hand: 30 g of water, 46 g of oil (50 mL) to 100 g; window from 35: 0.30 + (1 - 0.30/0.35) · 0.50."""
    found = feel({"plain-flour": 100, "distilled-water": 30, "vegetable-oil": 46}, "insulating", "not cooked")
    assert found.wetness == pytest.approx(0.30 + (1 - 0.30 / 0.35) * 0.50, rel=2e-3)  # oil's density: three digits
