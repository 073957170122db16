"""What is no dough, or does the opposite of what it is for, is told first by each verb that asks about it."""

import json
from pathlib import Path

import pytest

from lumped.cli import main

RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
NONE = "This is no dough: 0 g of water to 100 g of flour"


def written(folder, dough, grams, cooked="pot"):
    entries = "".join(f'{{ingredient = "{key}", amount_g = {each}}},' for key, each in grams.items())
    head = f'kind = "recipe"\nschema = 1\ntitle = "Odd"\ndough = "{dough}"\nmethod = {{cooked = "{cooked}"}}\n'
    (folder / "odd.toml").write_text(f"{head}ingredients = [{entries}]\n", "utf-8")
    return str(folder / "odd.toml")


def swapped(folder, name, was, dough):
    text = (RECIPES / name).read_text("utf-8")
    (folder / name).write_text(text.replace(f'dough = "{was}"', f'dough = "{dough}"'), "utf-8")
    return str(folder / name)


def first_line(capsys, verb, *more):
    assert main([verb, *more]) == 0
    return " ".join(capsys.readouterr().out.split())[:260]


FURTHER = {
    "dough": (), "what-if": (), "trial": (), "make": (), "shop": ("--region", "europe"), "wall": (),
    "swap": ("--without", "table-salt"), "keep": (), "cool": (), "salt": (), "care": (),
    "refresh": ("--weighed", "200 g", "--now", "190 g"),
}  # fmt: skip


@pytest.mark.parametrize("verb", FURTHER)
def test_a_recipe_without_water_is_told_first_to_be_no_dough(capsys, tmp_path, verb):
    dry = written(tmp_path, "conducting", {"flour": 150, "salt": 50})
    assert first_line(capsys, verb, dry, *FURTHER[verb]).startswith(NONE)


UNBOUND = "This is no dough: kneaded cold, starch without gluten is bound by nothing"


@pytest.mark.parametrize("verb", FURTHER)
def test_starch_kneaded_cold_without_a_binder_is_told_first_to_be_no_dough(capsys, tmp_path, verb):
    paste = written(tmp_path, "conducting", {"cornstarch": 100, "water": 80, "salt": 50}, "not cooked")
    further = ("--weighed", "230 g", "--now", "220 g") if verb == "refresh" else FURTHER[verb]
    assert first_line(capsys, verb, paste, *further).startswith(UNBOUND)


@pytest.mark.parametrize("held", [{"psyllium-husk": 3}, {"flour": 60}, {"almond-flour": 100}])
def test_a_binder_gluten_or_a_meal_of_nuts_holds_it(capsys, tmp_path, held):
    grams = {"cornstarch": 100, "water": 90, "salt": 50} | held
    said = first_line(capsys, "dough", written(tmp_path, "conducting", grams, "not cooked"))
    assert "no dough" not in said


@pytest.mark.parametrize(("dough", "grams", "why"), [
    ("conducting", {"flour": 150, "salt": 50, "cream of tartar": 9}, "is no dough, and what was looked for"),
    ("insulating", {"flour": 150, "salt": 50, "water": 200, "cream of tartar": 9}, "does the opposite of what it is for"),
])  # fmt: skip
def test_a_swap_proposes_no_more_of_what_is_none_and_says_why(capsys, tmp_path, dough, grams, why):
    assert main(["swap", written(tmp_path, dough, grams), "--without", "cream-of-tartar"]) == 0
    said = " ".join(capsys.readouterr().out.split())
    assert why in said
    assert "no. 1" not in said


def test_a_swap_that_makes_a_dough_of_what_was_none_is_proposed(capsys, tmp_path):
    paste = written(tmp_path, "conducting", {"cornstarch": 100, "water": 80, "salt": 30}, "not cooked")
    assert main(["swap", paste, "--without", "corn", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["unfit"]
    assert found["proposals"]


@pytest.mark.parametrize("verb", ["card", "tags"])
@pytest.mark.parametrize(("grams", "said"), [
    ({"cornstarch": 100, "water": 80, "salt": 50}, "bound by nothing"),
    ({"flour": 11, "water": 5, "sugar": 319}, "2.8 % of it is flour or starch"),
])  # fmt: skip
def test_no_paper_is_made_of_what_nothing_holds(capsys, tmp_path, verb, grams, said):
    out = tmp_path / "x.pdf"
    assert main([verb, written(tmp_path, "insulating", grams, "not cooked"), "--pdf", str(out)]) == 1
    assert said in " ".join(capsys.readouterr().err.split())
    assert not out.exists()


def test_what_has_hardly_any_flour_is_told_first_to_be_no_dough(capsys, tmp_path):
    sweet = written(tmp_path, "insulating", {"flour": 11, "water": 5, "sugar": 319})
    assert first_line(capsys, "dough", sweet).startswith("This is no dough: 2.8 % of it is flour or starch")


@pytest.mark.parametrize("verb", ["dough", "what-if", "trial", "make", "wall"])
@pytest.mark.parametrize(("name", "was", "dough", "said"), [
    ("ropewalk-salt.toml", "conducting", "insulating", "Meant to block current; computed: it carries, 0.240 Ω·m"),
    ("ropewalk-sugar.toml", "insulating", "conducting", "Meant to carry current; computed: it blocks, 1,160 Ω·m"),
])  # fmt: skip
def test_a_dough_that_does_the_opposite_is_told_first(capsys, tmp_path, verb, name, was, dough, said):
    assert first_line(capsys, verb, swapped(tmp_path, name, was, dough)).startswith(said)


@pytest.mark.parametrize("grams", [
    {"flour": 150, "distilled water": 90}, {"flour": 100, "sugar": 200, "distilled water": 60},
])  # fmt: skip
def test_a_conducting_dough_without_salt_is_told_to_block(capsys, tmp_path, grams):
    said = first_line(capsys, "dough", written(tmp_path, "conducting", grams))
    assert "Meant to carry current; computed: it blocks" in said


@pytest.mark.parametrize("verb", ["trial", "make", "wall"])
def test_programs_are_told_too(capsys, tmp_path, verb):
    dry = written(tmp_path, "conducting", {"flour": 150, "salt": 50})
    assert main([verb, dry, "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["unfit"][0].startswith(NONE)


def test_of_a_sound_dough_nothing_is_said(capsys):
    for verb in ("dough", "trial"):
        said = first_line(capsys, verb, str(RECIPES / "ropewalk-salt.toml"))
        assert "no dough" not in said
        assert "Meant to" not in said


@pytest.mark.parametrize("verb", ["shop", "beside"])
def test_of_several_doughs_the_one_is_named(capsys, tmp_path, verb):
    dry = written(tmp_path, "conducting", {"flour": 150, "salt": 50})
    said = first_line(capsys, verb, str(RECIPES / "ropewalk-salt.toml"), dry, "--region", "europe")
    assert said.startswith(f"Odd: {NONE}")


def test_an_invented_recipe_is_marked_in_the_title(capsys):
    assert first_line(capsys, "dough", str(RECIPES / "ropewalk-salt.toml")).startswith("Ropewalk salt dough (invented)")


@pytest.mark.parametrize("verb", ["card", "tags"])
@pytest.mark.parametrize(("name", "was", "dough"), [
    ("ropewalk-salt.toml", "conducting", "insulating"), ("ropewalk-sugar.toml", "insulating", "conducting"),
])  # fmt: skip
def test_a_swapped_file_gets_no_paper_with_a_false_mark(capsys, tmp_path, verb, name, was, dough):
    paper = tmp_path / "paper.pdf"
    assert main([verb, swapped(tmp_path, name, was, dough), "--pdf", str(paper)]) == 1
    assert "would bear a false mark" in " ".join(capsys.readouterr().err.split())
    assert not paper.exists()


@pytest.mark.parametrize("verb", ["card", "tags"])
def test_where_nobody_can_tell_the_verb_says_that_there_is_no_mark(capsys, tmp_path, verb):
    weak = written(tmp_path, "conducting", {"flour": 150, "tap-water": 200, "salt": 0.8})
    assert "Odd: Meant to carry current; whether it does can’t be told" in first_line(capsys, verb, weak)


def test_labels_of_a_batch_that_was_weighed_otherwise_are_refused(capsys, tmp_path):
    recipe = written(tmp_path, "conducting", {"flour": 150, "tap-water": 200, "salt": 60})
    (tmp_path / "batch.toml").write_text(
        'kind = "batch"\nschema = 1\ntitle = "Monday"\nrecipe = "odd.toml"\n'
        'weighed = [{ingredient = "salt", amount_g = 0.1}]\n', "utf-8")  # fmt: skip
    assert main(["tags", recipe, "--batch", str(tmp_path / "batch.toml")]) == 1
    assert "is to carry current, but blocks it" in " ".join(capsys.readouterr().err.split())


@pytest.mark.parametrize(("grams", "why"), [
    ({"flour": 150, "sugar": 90, "distilled water": 200}, "it does the opposite of what it is for"),
    ({"flour": 150, "salt": 50}, "That is no dough"),
])  # fmt: skip
def test_a_trial_of_what_is_unsound_compares_it_with_no_mistake(capsys, tmp_path, grams, why):
    """A dough that blocks was called good, and one of 5 Ω·m a mistake."""
    odd = written(tmp_path, "conducting", grams)
    assert main(["trial", odd]) == 0
    said = " ".join(capsys.readouterr().out.split())
    assert why in said
    assert "mistake" not in said
    assert "good batches" not in said
    assert main(["trial", odd, "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert (found["mistake"], found["tells"]) == (None, False)
