"""The local search against a grid over all amounts, on a pantry small enough for one."""

from dataclasses import replace

import numpy as np
from tests.dough.swap.shelves import SALT, salt_dough, shelf

from lumped.dough.kneading import kneading
from lumped.dough.swap.blocking import texture_words
from lumped.dough.swap.figures import figures_of, table_of
from lumped.dough.swap.laying_out import Base, search_for
from lumped.dough.swap.requirements import beyond
from lumped.dough.swap.search import KEPT
from lumped.dough.swap.together import searched, searched_together
from lumped.dough.swap.wants import Wish


def search_in(wish, *keys):
    recipe, shop = salt_dough(), shelf(*SALT, *keys)
    done = kneading(recipe, shop)
    return search_for(Base(
        recipe=recipe, wish=wish, shop=shop, before=done, prices=None, money="", system="scale",
        count=3, date=None, learnt=done, calibration=None,
    ))  # fmt: skip


def test_the_search_finds_what_a_grid_finds():
    """All of 25 × 25 × 25 amounts of rice flour, water and salt, evaluated; the search must not be worse by 2 %."""
    search = search_in(Wish(classes=("wheat",)), "rice-flour")
    rows = [search.table.row(key) for key in ("rice-flour", "tap-water", "table-salt")]
    axes = [np.append(np.linspace(0.5, 1.6, 24) * middle, middle) for middle in (0.130, 0.237, 0.055)]
    grid = np.stack([each.ravel() for each in np.meshgrid(*axes, indexing="ij")])
    masses = np.repeat(np.where(search.gone, 0.0, search.old)[:, None], grid.shape[1], axis=1)
    masses[rows] = grid
    scores, over = search.scores(masses, np.full(grid.shape[1], search.same_way))
    best = searched(search)[0]
    assert best.over <= KEPT
    assert best.score <= 1.02 * scores[over <= KEPT].min()


def test_scores_of_many_are_those_of_each_alone():
    search = search_in(Wish(classes=("wheat",)), "rice-flour", "cornstarch")
    factors = np.linspace(0.5, 1.5, 7)
    masses = np.where(search.gone, 0.0, search.old)[:, None] * factors
    masses[search.table.row("rice-flour")] = 0.12
    ways = np.full(7, search.same_way)
    together, _ = search.scores(masses, ways)
    alone = [search.scores(masses[:, [k]], ways[[k]])[0][0] for k in range(7)]
    np.testing.assert_allclose(together, alone, rtol=1e-6)


def test_the_recipe_itself_scores_nothing():
    search = search_in(Wish(), "rice-flour")
    score, over = search.scores(search.old[:, None], np.array([search.same_way]))
    assert abs(score[0]) < 1e-9
    assert over[0] == 0


def test_what_needs_another_texture_is_still_a_dough():
    """Flour 10 g in 411 g of water pours, flour 100 g in 250 g is soft: only the second is worth naming."""
    search = replace(search_in(Wish(), "rice-flour"), without=frozenset({"texture"}))
    masses = np.repeat(search.old[:, None], 3, axis=1)
    masses[search.table.row("plain-flour")] = [0.010, 0.100, 0.125]
    masses[search.table.row("tap-water")] = [0.411, 0.250, 0.010]
    new = figures_of(search.table, masses, np.full(3, search.same_way))
    beyond_here = beyond(search.standard, new, without=search.without)["texture"]
    assert beyond_here[0] > 1
    assert beyond_here[1] == 0
    assert beyond_here[2] > 0.3


def test_searches_side_by_side_find_what_each_finds_alone():
    searches = [replace(search_in(Wish(classes=("wheat",)), "rice-flour", "cornstarch"), beam=8, enough=enough,
                        without=frozenset(without)) for enough, without in ((True, ()), (True, ("current",)),
                        (False, ("texture",)))]  # fmt: skip
    other = search_in(Wish(classes=("wheat",)), "cornstarch")  # a table of its own
    keys = ("rice-flour", *other.table.keys, *(key for key in searches[0].table.keys if key != "rice-flour"))
    wide = table_of(salt_dough(), tuple(dict.fromkeys(keys)), shelf(*SALT, "rice-flour", "cornstarch"))
    together = searched_together([*searches, other], wide)
    for one, alone in zip(together, map(searched, [*searches, other]), strict=True):
        assert [each.added for each in one] == [each.added for each in alone]
        np.testing.assert_allclose([each.score for each in one], [each.score for each in alone], rtol=1e-9)


def test_what_another_texture_changes_is_told_part_by_part():
    search = search_in(Wish(), "rice-flour")
    masses = search.old[:, None].copy()
    masses[search.table.row("tap-water")] = 0.42
    masses[search.table.row("table-salt")] = 0.25
    new = figures_of(search.table, masses, np.array([search.same_way]))
    said = "; ".join(texture_words(search.standard.old, new))
    assert "g of water to 100 g of flour, which sticks" in said
    assert "g of salt to 100 g of flour instead of 4" in said
    assert "fat" not in said
