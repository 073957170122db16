"""A dough for a class, as a page asks for it: the command's numbers, each with its source."""

import json
from pathlib import Path

import pytest

from lumped.app.asking import Question
from lumped.app.examples import example_recipe
from lumped.app.for_class import classed
from lumped.app.given import Given
from lumped.app.making import make, shopping
from lumped.errors import InputError

SALT = Given(name="ropewalk-salt.toml", text=example_recipe("ropewalk-salt.toml"))
FILE = Path(__file__).parents[2] / "demo" / "recipes" / "ropewalk-salt.toml"
CLASS = {"by": "people", "people": "28", "age": "9", "group": "two", "mass": "", "pot": "3", "minutes": "40",
         "region": "europe", "little_over": False}  # fmt: skip


def planned(given=SALT, **said):
    return classed(Question(given=given, said=CLASS | said), lambda share: None)


def figures(found):
    return {key: figure for key, _, figure in found["figures"]}


def test_the_page_has_the_numbers_of_the_commands():
    found, made = planned(), make(FILE, people=["28 of 9 in pairs"], pot="3 L", region="europe", within="40 min")
    bought = shopping([FILE], "europe", people=["28 of 9 in pairs"])
    shown = figures(found)
    assert shown["made"] == made.batches.mass.text()
    assert (shown["person"], shown["whole"]) == (made.cost.person.text(), made.cost.whole.text())
    rows = [float(row[-1]) for _, rows, _ in found["shops"] for row in rows]
    assert shown["till"].startswith(f"{sum(rows):.2f} EUR (")
    assert [row[1] for row in found["batch"]["rows"]] == [each.grams() for each in made.lines]
    assert len(found["in_time"]["rows"]) == len(made.options)
    assert sum(len(rows) for _, rows, _ in found["shops"]) == len(bought.lines) - 1  # water is from the tap


def test_each_number_and_each_caution_has_a_source_that_the_page_can_show():
    found = planned()
    keys = {*figures(found), *found["work"]["keys"], *found["cooling"]["keys"], *found["in_time"]["keys"],
            *(key for key, _, _ in found["cautions"]), *(f"grams-{key}" for key in found["batch"]["keys"]),
            *(f"cups-{key}" for key in found["batch"]["keys"]),
            *(f"buy-{key}" for _, _, keys in found["shops"] for key in keys)}  # fmt: skip
    assert keys <= set(found["sources"])
    assert all(found["sources"][key]["status"] for key in keys)
    assert found["sources"]["wants"]["status"].startswith("From memory")
    json.dumps(found)  # it comes from another process


def test_a_bare_number_is_in_the_unit_that_its_field_asks_for():
    bare, said = (planned(by="mass", mass=mass, pot=pot) for mass, pot in (("1,7", "5"), ("1700 g", "5 L")))
    assert bare["state"] == said["state"] == "1.70 kg of dough, in one batch"
    assert "person" not in figures(bare)


def test_the_recipe_as_it_is_says_where_its_grams_are_from():
    found = planned(by="recipe", people="nobody looks here")
    assert found["sources"]["grams-table-salt"]["note"].startswith("The amount that the recipe says")
    assert planned()["sources"]["grams-table-salt"]["note"].endswith("scaled to what hands want.")


def test_without_a_time_there_is_no_question_of_time():
    found = planned(minutes=" ")
    assert (found["minutes"], found["in_time"]["rows"], found["blocks"]) == ("", [], "")


def test_what_is_hard_to_get_can_be_replaced():
    (far,) = planned()["far"]
    assert far == ("cream of tartar: by order, on the internet.", "cream-of-tartar")


def test_leaving_little_over_never_leaves_more_but_may_cost_more():
    def over(found):
        return sum(float(row[4].split()[0]) * (1000 if "kg" in row[4] else 1) for _, rows, _ in found["shops"]
                   for row in rows)  # fmt: skip

    assert over(planned(little_over=True)) <= over(planned())


@pytest.mark.parametrize(
    ("said", "sentence"),
    [
        ({"people": "0"}, "“0 of 9 in groups of 2” is nobody"),
        ({"people": "-3"}, "is nobody"),
        ({"people": "1000000"}, "more than Lumped plans for at once"),
        ({"people": "many"}, "does not say who comes"),
        ({"age": "x"}, "does not say who comes"),
        ({"age": "140"}, "can’t be planned for"),
        ({"by": "mass", "mass": "-1"}, "Give a mass from 20 g"),
        ({"by": "mass", "mass": "1000000"}, "Give a mass from 20 g"),
        ({"by": "mass", "mass": "much"}, "much"),
        ({"pot": "0"}, "A pot of 0 L is none"),
        ({"minutes": "0"}, "no time that Lumped can plan with"),
        ({"region": "mars"}, "There is no region “mars”"),
    ],
)
def test_what_can_not_be_is_refused_in_a_sentence(said, sentence):
    with pytest.raises(InputError, match=sentence):
        planned(**said)
