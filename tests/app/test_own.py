"""Own ingredients and batches go into the notebook with what they refer to, come back, and teach."""

import tomllib
from dataclasses import replace

import pytest
from tests.app.older import older_notebook

from lumped.app import gathering, notebooks, saving
from lumped.app.beside import beside
from lumped.app.given import Given
from lumped.app.labels import foreign_words, shop_of
from lumped.app.named import dough_of, named, named_by_files, named_in
from lumped.app.own import batch_of, recipe_of, taught
from lumped.app.settings import Settings
from lumped.app.shelf import Shelf
from lumped.errors import InputError, RecipeError
from lumped.notebook import open_notebook as open_plain

LABEL = """\
kind = "ingredient"
schema = 1
title = "Corner flour"
like = "plain-flour"
fat_g = 1.1
carbohydrate_g = 71.3
protein_g = 10.2
salt_g = 0.02
allergens = ["wheat"]
"""
RECIPE = """\
kind = "recipe"
schema = 1
title = "Slipway dough"
dough = "conducting"
[[ingredients]]
ingredient = "corner-flour"
amount_g = 125
[[ingredients]]
ingredient = "water"
amount_g = 237
[[ingredients]]
ingredient = "table-salt"
amount_g = 73
"""
BATCH = """\
kind = "batch"
schema = 1
title = "Friday"
recipe = "slipway.toml"
made_on = 2026-05-08
weighed_after_g = 400
feel = 2
invented = true
weighed = [{ingredient = "Corner flour", amount_g = 148}]
[measured]
resistivity_ohm_m = 0.2
measured_by = "four-needles-ac"
"""


@pytest.fixture
def files(tmp_path):
    folder = tmp_path / "files"
    folder.mkdir()
    for name, text in (("label", LABEL), ("slipway", RECIPE), ("batch", BATCH)):
        (folder / f"{name}.toml").write_text(text, "utf-8")
    return folder


def saved_all(notebook, files):
    return [saving.save_file(notebook, files / f"{name}.toml") for name in ("label", "slipway", "batch")]


def test_every_kind_comes_back_as_the_file_that_it_was(notebook, files):
    for revision, text in zip(saved_all(notebook, files), (LABEL, RECIPE, BATCH), strict=True):
        assert tomllib.loads(gathering.file_text(notebook, revision)) == tomllib.loads(text)


def test_a_batch_refers_to_its_recipe_and_that_to_its_ingredient(notebook, files):
    label, recipe, batch = saved_all(notebook, files)
    assert recipe.links == {"Corner flour": label.reference}
    assert batch.links == {"slipway.toml": recipe.reference, "Corner flour": label.reference}
    given = gathering.given_from(notebook, batch)
    assert batch_of(given).recipe.mass_of("corner-flour") == pytest.approx(0.148)


def test_an_ingredient_that_nobody_knows_is_named(notebook, files):
    with pytest.raises(RecipeError, match="no ingredient “corner-flour”"):
        saving.save_file(notebook, files / "slipway.toml")
    with pytest.raises(RecipeError, match="no ingredient “corner-flour”"):
        saving.save_file(notebook, files / "batch.toml")
    assert notebook.entries() == ()


def test_a_recipe_keeps_the_label_that_it_was_saved_with_until_it_is_saved_again(notebook, files):
    _, recipe, _ = saved_all(notebook, files)
    (files / "label.toml").write_text(LABEL.replace("salt_g = 0.02", "salt_g = 1.0"), "utf-8")
    changed = saving.save_file(notebook, files / "label.toml")
    assert "0.02" in gathering.given_from(notebook, recipe).labels["Corner flour"]
    assert saving.save_file(notebook, files / "slipway.toml").links == {"Corner flour": changed.reference}


def test_batches_of_all_revisions_of_a_recipe_teach_in_the_order_of_their_days(notebook, files):
    _, recipe, _ = saved_all(notebook, files)
    later = BATCH.replace('"Friday"', '"Monday"').replace("05-08", "05-11")
    earlier = BATCH.replace('"Friday"', '"Tuesday"').replace("05-08", "05-05").replace("feel = 2\n", "")
    for text in (later, earlier):
        (files / "batch.toml").write_text(text, "utf-8")
        saving.save_file(notebook, files / "batch.toml")
    given = gathering.with_batches(notebook, gathering.given_from(notebook, recipe), recipe.document)
    assert [tomllib.loads(each.text)["title"] for each in given.batches] == ["Tuesday", "Friday", "Monday"]
    found = taught(given, recipe_of(given))
    assert len(found.lessons.calibration.batches) == 3
    assert "narrowed by 3 batches that were measured: Tuesday, Friday, Monday" in found.words[0]
    assert "learnt from 2 batches: Friday, Monday" in found.words[1]


def test_a_batch_that_contradicts_its_recipe_teaches_nothing_and_is_told(notebook, files):
    _, recipe, _ = saved_all(notebook, files)
    (files / "batch.toml").write_text(BATCH.replace("Friday", "Slip").replace("= 0.2\n", "= 90\n"), "utf-8")
    saving.save_file(notebook, files / "batch.toml")
    given = gathering.with_batches(notebook, gathering.given_from(notebook, recipe), recipe.document)
    found = taught(given, recipe_of(given))
    assert len(found.lessons.calibration.batches) == 1
    assert any("Slip" in words for words in found.words)


def test_a_batch_that_teaches_nothing_is_named(notebook, files):
    saved_all(notebook, files)
    recipe = notebook.find("slipway dough")
    plain = BATCH[: BATCH.index("[measured]")].replace("feel = 2\n", "").replace("Friday", "Idle")
    (files / "batch.toml").write_text(plain, "utf-8")
    saving.save_file(notebook, files / "batch.toml")
    given = gathering.with_batches(notebook, gathering.given_from(notebook, recipe), recipe.document)
    assert "teach nothing here" in taught(given, recipe_of(given)).words[-1]


def test_a_removed_batch_teaches_no_more(notebook, files):
    _, recipe, batch = saved_all(notebook, files)
    notebook.remove(batch.document)
    assert gathering.batches_of(notebook, recipe.document) == ()


def test_an_ohmmeter_is_refused_in_the_notebook_too(notebook, files):
    saved_all(notebook, files)
    (files / "batch.toml").write_text(BATCH.replace("four-needles-ac", "two-wire-dc"), "utf-8")
    with pytest.raises(RecipeError, match="from an ohmmeter with two probes is no resistivity"):
        saving.save_file(notebook, files / "batch.toml")


@pytest.mark.parametrize("day", ['"in May"', "2026-05-08T10:00:00", "20260508"])
def test_the_day_of_a_batch_is_a_day(notebook, files, day):
    saved_all(notebook, files)
    (files / "batch.toml").write_text(BATCH.replace("2026-05-08", day), "utf-8")
    with pytest.raises(RecipeError, match=r"Write the day alone, as in 2026-05-08\."):
        saving.save_file(notebook, files / "batch.toml")


def test_revisions_of_a_batch_are_compared_by_ingredient(notebook, files):
    *_, batch = saved_all(notebook, files)
    (files / "batch.toml").write_text(BATCH.replace("148", "150").replace("feel = 2", "feel = 3"), "utf-8")
    after = saving.save_file(notebook, files / "batch.toml")
    lines = [each.text for each in notebook.compare(batch, after)]
    assert lines == ["feel: 2 → 3", "weighed › “Corner flour” › amount: 148 g → 150 g"]
    assert notebook.restore(batch.document, 1).links == batch.links


def test_a_bundle_takes_all_of_it_along(notebook, files, tmp_path):
    saved_all(notebook, files)
    notebooks.export(notebook, tmp_path / "all.json")
    with open_plain(tmp_path / "other.sqlite") as other:
        notebooks.bring_in(other, tmp_path / "all.json")
        assert other.contents().fingerprint == notebook.contents().fingerprint
        assert gathering.given_from(other, other.find("Friday")).labels


def test_a_table_of_packets_becomes_ingredients_all_or_none(notebook):
    table = "title,like,salt_g,allergens\nour salt,table-salt,99.8,none\nmy salt,table-salt,99,none\n"
    assert [each.title for each in saving.save_labels(notebook, table, "a.csv")] == ["our salt", "my salt"]
    again = saving.save_labels(notebook, table, "a.csv")
    assert [each.number for each in again] == [1, 1]
    with pytest.raises(InputError, match="stardust"):
        saving.save_labels(notebook, table.replace("table-salt,99,", "stardust,99,"), "a.csv")
    assert len(notebook.entries(kind="ingredient")) == 2


SAND = {"title": "Old sand", "like": "plain-flour", "allergens": []}


@pytest.fixture
def with_sand(notebook, files, tmp_path):
    """The notebook with an ingredient that it can't read, and a recipe and a batch that an older Lumped made of it."""
    saved_all(notebook, files)
    with older_notebook(tmp_path / "lab.sqlite") as older:
        sand = older.save("ingredient", SAND)
        recipe = body_of(RECIPE) | {"title": "Sand dough"}
        recipe["ingredients"][0]["ingredient"] = "old sand"
        used = older.save("recipe", recipe, links={"Old sand": sand.reference})
        batch = body_of(BATCH) | {"title": "Sandy", "made_on": "2026-05-09", "weighed": [recipe["ingredients"][0]]}
        older.save("batch", batch, links={"slipway.toml": older.find("Slipway dough").reference,
                                          "Old sand": sand.reference})  # fmt: skip
    return used


def body_of(text):
    return {key: each for key, each in tomllib.loads(text).items() if key not in ("kind", "schema")}


def test_an_ingredient_that_can_no_longer_be_read_stops_only_what_names_it(notebook, with_sand, tmp_path):
    settings = Settings(notebook=str(tmp_path / "lab.sqlite"))
    found = named("slipway dough", settings=settings)
    [words] = found.left_out
    assert words.startswith("Old sand: The label of “Old sand” gives no figure")
    assert "{" not in words
    assert dough_of(found).conducts
    with pytest.raises(InputError, match="The label of “Old sand” gives no figure"):
        named("sand dough", settings=settings)


def test_a_recipe_of_the_notebook_is_followed_once_and_as_from_files(notebook, files):
    saved_all(notebook, files)
    once, again = (named_in(given_with(notebook, "Friday")).kneading() for _ in range(2))
    assert once is again
    paths = {"batches": [files / "batch.toml"], "labels": [files / "label.toml"]}
    written = named_by_files(files / "slipway.toml", **paths).kneading()
    assert written.chain.resistivity.tolist() == once.chain.resistivity.tolist()


def test_a_batch_of_such_an_ingredient_teaches_nothing_and_is_told(notebook, with_sand, tmp_path):
    found = named("slipway dough", settings=Settings(notebook=str(tmp_path / "lab.sqlite")))
    assert found.calibration.batches == named_in(given_with(notebook, "Friday")).calibration.batches
    assert any("Old sand" in each for each in found.words)


def given_with(notebook, batch):
    """The recipe with one of its batches."""
    recipe = gathering.given_from(notebook, notebook.find("slipway dough"))
    return replace(recipe, batches=(gathering.given_from(notebook, notebook.find(batch)),))


def test_a_recipe_file_that_names_it_is_told_why(notebook, with_sand, files, tmp_path):
    settings = Settings(notebook=str(tmp_path / "lab.sqlite"))
    (files / "mine.toml").write_text(RECIPE.replace("corner-flour", "old-sand"), "utf-8")
    with pytest.raises(InputError, match="The label of “Old sand” gives no figure"):
        named(str(files / "mine.toml"), batches=["Friday"], settings=settings)
    assert named(str(files / "slipway.toml"), batches=["Friday"], settings=settings).left_out


def test_recipes_side_by_side_stand_without_it(notebook, with_sand, tmp_path):
    settings = Settings(notebook=str(tmp_path / "lab.sqlite"))
    found = beside(["slipway dough", "slipway dough@1"], settings=settings)
    assert len(found.sides) == 2
    assert "Old sand" in found.left_out[0]
    with pytest.raises(InputError, match="The label of “Old sand” gives no figure"):
        beside(["slipway dough", "sand dough"], settings=settings)


def test_a_shelf_gives_it_only_to_what_names_it(notebook, with_sand, tmp_path):
    shelf = Shelf(Settings(notebook=str(tmp_path / "lab.sqlite")))
    names = [list(shelf.with_own(Given(name="a.toml", text=text)).labels)
             for text in (RECIPE, RECIPE.replace("corner-flour", "old sand"), "no toml")]  # fmt: skip
    assert names == [["Corner flour"], ["Corner flour", "Old sand"], ["Corner flour"]]
    shelf.close()


def test_words_of_the_handbook_are_nobodys_own():
    assert foreign_words(RECIPE) == ("corner-flour",)
    own = Given(name="r.toml", text=RECIPE, labels={"Corner flour": LABEL})
    assert recipe_of(own).mass_of("corner-flour") == pytest.approx(0.125)
    assert "corner-flour" in shop_of(own)
    with pytest.raises(InputError, match="TOML"):
        recipe_of(Given(name="r.toml", text="kind ="))


@pytest.mark.parametrize("word", ["Corner Flour", "córner-flour", "CORNER  FLOUR"])
def test_an_own_ingredient_is_found_however_it_is_written(notebook, files, word):
    saving.save_file(notebook, files / "label.toml")
    (files / "slipway.toml").write_text(RECIPE.replace("corner-flour", word), "utf-8")
    assert "Corner flour" in saving.save_file(notebook, files / "slipway.toml").links


def test_a_word_of_the_handbook_is_nobodys_own_with_or_without_accents():
    assert foreign_words("ingredients = [{ingredient = 'creme de tartre'}, {ingredient = 'plain flour'}]") == ()
