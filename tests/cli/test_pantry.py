"""`lumped pantry` and the sources of a dough, as somebody types them."""

import json
from pathlib import Path

import pytest

from lumped.cli import main
from lumped.pantry import pantry

SALT = str(Path(__file__).parents[2] / "demo" / "recipes" / "ropewalk-salt.toml")


def said(capsys, *words):
    code = main([*words])
    out = capsys.readouterr()
    return code, " ".join(out.out.split()), " ".join(out.err.split())


def as_json(capsys, *words):
    assert main([*words, "--json"]) == 0
    return json.loads(capsys.readouterr().out)


def test_all_ingredients_are_listed(capsys):
    assert {each["key"] for each in as_json(capsys, "pantry")["ingredients"]} == set(pantry())


def test_a_list_holds_what_was_asked_for_and_nothing_else(capsys):
    found = as_json(capsys, "pantry", "--role", "body", "--without", "gluten", "--region", "japan")["ingredients"]
    keys = [each["key"] for each in found]
    assert "plain-flour" not in keys
    assert {"rice-flour", "cornstarch"} & set(keys)
    assert all("body" in each["roles"] for each in found)
    assert all(each["offer"]["sold"] and each["offer"]["currency"] == "JPY" for each in found)


@pytest.mark.parametrize("columns", ["80", "100"])
def test_headings_and_words_of_a_list_stay_whole(capsys, monkeypatch, columns):
    monkeypatch.setenv("COLUMNS", columns)
    assert main(["pantry", "--region", "japan"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert max(map(len, lines)) <= int(columns)
    (heading,) = (line for line in lines if "allergens" in line)
    assert {"ingredient", "does", "price", "sold"} <= set(heading.split())
    assert "supermarket" in " ".join(lines)
    assert "containing" in " ".join(lines)


def test_a_diet_takes_out_what_does_not_suit_it(capsys):
    keys = {each["key"] for each in as_json(capsys, "pantry", "--diet", "no corn", "--diet", "vegan")["ingredients"]}
    assert keys
    assert "cornstarch" not in keys
    assert keys < set(pantry())


def test_nothing_is_all_of_that(capsys):
    code, out, _ = said(capsys, "pantry", "--role", "acid", "--without", "acid")
    assert (code, out) == (0, "Nothing in the pantry is all of that. Leave out one of the words.")


def test_one_ingredient_shows_composition_weights_prices_names_and_cautions(capsys):
    code, out, _ = said(capsys, "pantry", "plain-flour")
    assert code == 0
    for part in ("Made of: starch", "cereals containing gluten", "USDA SR, NDB 20081", "published", "from memory",
                 "spooned (usual)", "scooped", "EUR/kg", "harina de trigo", "Be careful"):  # fmt: skip
        assert part in out


def test_every_row_of_every_ingredient_tells_its_status(capsys):
    for key in list(pantry())[::9]:
        found = as_json(capsys, "pantry", key)
        assert found["figures"]
        assert all(each["status"] for each in found["figures"])
        assert sum(found["composition"].values()) == pytest.approx(1, abs=1e-9)
        assert set(found["names"]) == {"en", "fr", "es", "ja"}
        assert all(each["source"] for each in found["figures"] if each["status"] == "published")


def test_a_name_in_another_language_finds_it(capsys):
    assert as_json(capsys, "pantry", "薄力粉・中力粉", "--region", "japan")["key"] == "plain-flour"


def test_a_label_of_ones_own_is_shown_with_what_it_left_out(capsys, tmp_path):
    label = tmp_path / "quay-flour.toml"
    label.write_text(
        'kind = "ingredient"\nschema = 1\ntitle = "Quay flour (invented)"\nlike = "plain-flour"\nper = "100 g"\n'
        "fat_g = 1.2\ncarbohydrate_g = 71\nprotein_g = 11\n",
        "utf-8",
    )
    code, out, err = said(capsys, "pantry", "Quay flour (invented)", "--label", str(label))
    assert (code, err) == (0, "")
    assert "What its label did not say" in out


def test_each_row_of_a_label_shows_its_figure_and_where_it_comes_from(capsys, tmp_path):
    label = tmp_path / "dune.toml"
    label.write_text(
        'kind = "ingredient"\nschema = 1\ntitle = "Dune flour (invented)"\nlike = "plain-flour"\n'
        'carbohydrate_g = 71\nsugars_g = 0.8\nprotein_g = 11\nsodium_mg = 8\nserving_g = 30\nserving = "1/4 cup"\n',
        "utf-8",
    )
    found = as_json(capsys, "pantry", "Dune flour (invented)", "--label", str(label))
    rows = {each["quantity"]: (each["figure"], each["status"], each["source"]) for each in found["figures"]}
    assert rows["carbohydrate"] == ("71 %", "from a label", "its packet")
    assert rows["sugars"] == ("0.8 %", "from a label", "its packet")
    assert rows["sodium"] == ("0.008 %", "from a label", "its packet")
    assert rows["fat"] == ("0.98 % (0.49 to 1.47)", "from memory", "not on its packet: as in plain wheat flour")
    assert rows["water"][1:] == ("from memory", "what is left to a hundred")
    assert {each["provenance"]["status"] for each in found["weights"]["cup"].values()} == {"computed"}


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("plain-flor",), "Did you mean: plain-flour"),
        (("--role", "acids"), "There is no role “acids”. Choose one of: body, ions, acid"),
        (("--without", "glutn"), "There is no class “glutn”. Choose one of: acid, gluten"),
        (("--diet", "keto"), "is no diet that Lumped knows"),
        (("--region", "mars"), "There is no region “mars”"),
        (("plain-flour", "--region", "mars"), "There is no region “mars”"),
    ],
)
def test_what_is_not_there_is_refused_in_words(capsys, words, says):
    code, _, err = said(capsys, "pantry", *words)
    assert code == 1
    assert says in err


def test_the_sources_of_a_dough_stand_by_status_the_strongest_first(capsys):
    found = as_json(capsys, "dough", SALT, "--sources")
    order = ["measured", "published", "computed", "common practice", "from memory", "invented"]
    assert list(found["by_status"]) == [each for each in order if each in found["by_status"]]
    published = " ".join(each["source"] for each in found["by_status"]["published"])
    assert "NDB 20081" in published
    assert "CRC, aqueous conductivity" in published
    assert any("obstruct" in each["what"] for each in found["by_status"]["from memory"])


def test_the_books_of_a_dough_are_those_of_its_figures(capsys):
    found = " ".join(as_json(capsys, "dough", SALT, "--sources")["sources"])
    for of_each in (
        "Pitzer",
        "Laliberté",
        "Equivalent conductivity of electrolytes",
        "USDA National Nutrient Database",
    ):
        assert of_each in found  # water activity, density, conductivity, composition
    assert "In full" in said(capsys, "dough", SALT, "--sources")[1]


def test_what_the_recipe_left_out_is_not_cited(capsys):
    found = as_json(capsys, "dough", SALT, "--sources")
    whats = " ".join(each["what"] for rows in found["by_status"].values() for each in rows)
    assert "plain wheat flour" in whats
    assert "glycerine" not in whats


def test_an_allergen_and_a_word_of_a_name_narrow_the_list(capsys):
    found = as_json(capsys, "pantry", "--words", "farine", "--free-of", "soya", "--free-of", "wheat")["ingredients"]
    keys = {each["key"] for each in found}
    assert "rye-flour" in keys
    assert not keys & {"plain-flour", "soy-flour", "table-salt"}


def test_a_word_that_is_no_allergen_gets_the_nearest(capsys):
    code, _, err = said(capsys, "pantry", "--free-of", "wheet")
    assert code == 1
    assert "wheat" in err


def test_a_diet_may_be_a_childs_need(capsys):
    """In the words of `lumped care --child`."""
    one, other = (as_json(capsys, "pantry", "--diet", word) for word in ("coeliac", "no gluten"))
    assert one == other
    kept = {each["key"] for each in as_json(capsys, "pantry", "--diet", "dairy-free")["ingredients"]}
    assert "plain-flour" in kept
