"""Ingredient files, tables of them, and the notebook's kind; and all that is wrong with them."""

import subprocess
import sys

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from lumped.errors import InputError
from lumped.pantry.kind import INGREDIENT
from lumped.pantry.label_file import LabelFile, read_label_toml
from lumped.pantry.label_table import read_labels_csv

GOOD = """\
kind = "ingredient"
schema = 1
title = "corner flour"
like = "plain-flour"
per = "100 g"
energy_kJ = 1450
fat_g = 1.1
carbohydrate_g = 71.3
sugars_g = 0.8
fibre_g = 3.0
protein_g = 10.2
salt_g = 0.02
serving_g = 30
serving = "1/4 cup"
allergens = ["wheat"]
may_contain = ["soya"]
"""
TABLE = """\
title,like,per,fat_g,carbohydrate_g,sugars_g,fibre_g,protein_g,salt_g,allergens,may_contain
corner flour,plain-flour,100 g,1.1,71.3,0.8,3.0,10.2,0.02,wheat,soya|milk
"kitchen crystals, fine",table-salt,100 g,,,,,,99.8,none,
"""


def toml(tmp_path, text):
    path = tmp_path / "label.toml"
    path.write_text(text, encoding="utf-8")
    return path


def table(tmp_path, text, encoding="utf-8"):
    path = tmp_path / "labels.csv"
    path.write_bytes(text if isinstance(text, bytes) else text.encode(encoding))
    return path


def test_a_label_in_toml_becomes_an_ingredient(tmp_path):
    flour = read_label_toml(toml(tmp_path, GOOD))
    assert (flour.key, flour.name, flour.allergens_us) == ("corner-flour", "corner flour", ("wheat",))
    assert flour.composition["protein"] == pytest.approx(0.102, rel=0.01)
    assert flour.weights["cup"]["spooned"].mean == pytest.approx(0.1183, rel=1e-3)
    assert flour.assumed


@pytest.mark.parametrize(
    ("old", "new", "sentence"),
    [
        ("fat_g = 1.1", "fat_g = -1.1", r"fat_g is -1\.1\. It must be at least 0"),
        ("fat_g = 1.1", "fat_mg = 1.1", r"fat_mg is 1\.1\. There is no such key; did you mean “fat_g”"),
        ("fat_g = 1.1", 'fat_g = "a little"', "Write a number"),
        ("fat_g = 1.1", "fat_g = nan", "fat_g is nan. Write a number"),
        ('per = "100 g"', 'per = "1 ounce"', "Choose one of: '100 g', '100 mL' or 'serving'"),
        ('title = "corner flour"', 'title = "=SUM(A1)"', "Begin with a letter or a digit"),
        ('title = "corner flour"', 'title = "<b>flour</b>"', "Begin with a letter or a digit"),
        ('title = "corner flour"', 'title = "@flour"', "could take the rest for a formula"),
        ('kind = "ingredient"', 'kind = "recipe"', 'should say kind = "ingredient" at its top'),
        ("fat_g = 1.1", "fat_g = = 1.1", "is not TOML"),
        ('title = "corner flour"', 'title = "corner flour"\nroles = ["hero"]', "no role “hero”. Choose from: body"),
        ("carbohydrate_g = 71.3", "carbohydrate_g = 713", "sums to 72"),
    ],
)
def test_what_is_wrong_in_a_file_is_told(tmp_path, old, new, sentence):
    with pytest.raises(InputError, match=sentence):
        read_label_toml(toml(tmp_path, GOOD.replace(old, new)))


def test_a_file_without_figures_is_told(tmp_path):
    with pytest.raises(InputError, match="gives no figure of what is in it"):
        read_label_toml(toml(tmp_path, 'kind = "ingredient"\nschema = 1\ntitle = "blank"\n'))


def test_a_table_becomes_ingredients(tmp_path):
    flour, salt = read_labels_csv(table(tmp_path, TABLE))
    assert (flour.key, salt.name) == ("corner-flour", "kitchen crystals, fine")
    assert flour.may_contain == ("soybeans", "milk")
    assert salt.allergens_eu == ()
    assert salt.composition["sodium-chloride"] > 0.99


def test_semicolons_bring_decimal_commas_and_a_spreadsheets_mark_of_its_encoding_is_skipped(tmp_path):
    text = "title;like;fat_g;carbohydrate_g;fibre_g;protein_g;salt_g\r\ncorner flour;plain-flour;1,1;71,3;3,0;10,2;0,02\r\n"
    (flour,) = read_labels_csv(table(tmp_path, text, "utf-8-sig"))
    assert flour.composition["fat"] == pytest.approx(0.011, rel=0.02)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        (TABLE.replace("corner flour", "=cmd|' /C calc'!A0"), "line 2: title is .*Begin with a letter or a digit"),
        (TABLE.replace("corner flour", "+44"), "Begin with a letter or a digit"),
        (TABLE.replace("corner flour", "<script>x</script>"), "Begin with a letter or a digit"),
        (TABLE.replace("1.1", "=1+1"), "line 2: fat_g is '=1\\+1'. Write a number"),
        (TABLE.replace("1.1", "-1.1"), "It must be at least 0"),
        (TABLE.replace("71.3", "171.3"), "sums to 18"),
        (TABLE.replace("fat_g", "fett_g"), "no column “fett_g”. Did you mean “fat_g”"),
        (TABLE.replace("sugars_g", "fat_g"), "two columns “fat_g”"),
        (TABLE + "extra,plain-flour,100 g\n", "line 4: 3 cells, but there are 11 headings"),
        (TABLE + TABLE.splitlines()[1] + "\n", "two ingredients are called “corner flour”"),
        ("like,fat_g\nplain-flour,1\n", "the headings lack “title”"),
        (TABLE.splitlines()[0] + "\n", "no ingredient under the headings"),
        ("", "no ingredient under the headings"),
        ("title,fat_g\n" + "".join(f"flour {k},1\n" for k in range(501)), "more than 500 ingredients"),
        ('title,fat_g\n"unclosed,1\n', "no table that Lumped can read"),
        ("title,fat_g\n" + "x" * 3000 + ",1\n", "more than 2,000 characters"),
        (b"title,fat_g\nfl\x00our,1\n", "characters that are no text"),
        ("title,fat_g\nMühle,1\n".encode("latin-1"), "no UTF-8 text. Save it as “CSV UTF-8”"),
        (b"title,fat_g\n" + b"flour,1\n" * 300_000, "larger than 2 MB"),
    ],
)
def test_what_is_wrong_in_a_table_is_told(tmp_path, text, sentence):
    with pytest.raises(InputError, match=sentence):
        read_labels_csv(table(tmp_path, text))


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.one_of(st.binary(max_size=300), st.text(max_size=300).map(lambda text: text.encode("utf-8", "ignore"))))
def test_any_rubbish_is_refused_in_words(tmp_path, rubbish):
    for whole in (rubbish, b"title,like,fat_g\n" + rubbish):
        try:
            found = read_labels_csv(table(tmp_path, whole))
        except InputError as problem:
            assert len(str(problem)) > 20  # noqa: PT017 - every refusal is a sentence
        else:
            assert all(each.key for each in found)


def test_a_table_that_is_not_there_or_a_folder_is_told(tmp_path):
    with pytest.raises(InputError, match="There is no file"):
        read_labels_csv(tmp_path / "none.csv")
    with pytest.raises(InputError, match="is a folder"):
        read_labels_csv(tmp_path)


def test_the_notebook_keeps_ingredients_and_refuses_what_is_none():
    INGREDIENT.check({"title": "our salt", "like": "table-salt", "salt_g": 99.8}, "our salt")
    with pytest.raises(InputError, match="salt_g is -1"):
        INGREDIENT.check({"title": "our salt", "salt_g": -1}, "our salt")


def test_every_key_of_the_file_says_what_it_is():
    named = {"kind", "schema_"}
    assert [name for name, field in LabelFile.model_fields.items() if not field.description and name not in named] == []


def test_computing_with_the_pantry_loads_no_pydantic():
    """A light start: the border is a module of its own."""
    code = (
        "import sys; from lumped.pantry import pantry, price, sold; import lumped.pantry.labelling; pantry(); "
        "print('pydantic' in sys.modules)"
    )
    out = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert out.stdout.split() == ["False"]
