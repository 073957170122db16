"""Cards and labels as they leave the printer: read from their own pixels and their own text."""

import re
import subprocess
import tomllib
from dataclasses import replace
from datetime import date
from functools import cache
from importlib.resources import files
from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
import zxingcpp
from PIL import Image, ImageFont

from lumped.app.cards import card, write_card
from lumped.app.recipe_code import compact, recipe_texts
from lumped.app.tags import tags, write_tags
from lumped.dough import read_recipe
from lumped.errors import InputError, RecipeError
from lumped.paper import svg_as_png
from lumped.paper.codes import LEAST_SQUARE, code_svg, fits_in_code
from lumped.picture.dough_mark import mark_svg

DAY = date(2026, 5, 8)
RECIPES = Path(__file__).parents[2] / "demo" / "recipes"
SALT, SUGAR = RECIPES / "ropewalk-salt.toml", RECIPES / "ropewalk-sugar.toml"
LONG_TITLE = "The ropewalk kitchen’s rainy Wednesday dough with everything that was left on the shelf (invented)"
MANY = f"""
kind = "recipe"
schema = 1
title = "{LONG_TITLE}"
dough = "conducting"
invented = true
steps = ["Mélanger la farine, l’eau et le sel.", "かきまぜます。", "Stir until it leaves the side of the pot, and then a while longer."]
ingredients = [
""" + ",\n".join(
    f'{{ingredient = "{key}", amount_g = {mass}}}'
    for key, mass in {
        "plain-flour": 150, "rye-flour": 20, "oat-flour": 15, "lupin-flour": 12, "almond-flour": 12, "table-salt": 60,
        "tap-water": 260, "vegetable-oil": 12, "cream-of-tartar": 8, "bottled-lemon-juice": 10, "granulated-sugar": 5,
        "glycerine": 6, "potassium-chloride": 3, "epsom-salt": 4,
    }.items()
) + "]\n"  # fmt: skip


@pytest.fixture
def many(tmp_path):
    path = tmp_path / "many.toml"
    path.write_text(MANY, "utf-8")
    return path


@cache
def printed(path: Path, language: str, paper: str, folder: Path) -> Path:
    out = folder / f"{path.stem}-{language}-{paper}.pdf"
    write_card(card(path, on=DAY, language=language, measures="metric"), pdf=out, paper=paper)
    return out


def tool(name: str, *flags: str) -> bytes:
    return subprocess.run([name, *flags], capture_output=True, check=True).stdout


def text_of(pdf: Path) -> str:
    return " ".join(tool("pdftotext", "-layout", str(pdf), "-").decode().split())


def pages_of(pdf: Path) -> int:
    return int(re.search(r"Pages:\s+(\d+)", tool("pdfinfo", str(pdf)).decode())[1])


def codes_on(pdf: Path, page: int = 1) -> list[str]:
    raster = tool("pdftoppm", "-r", "200", "-f", str(page), "-l", str(page), "-gray", str(pdf))
    return [each.text for each in zxingcpp.read_barcodes(np.asarray(Image.open(BytesIO(raster))))]


def outside(pdf: Path) -> list[str]:
    """Words that stand nearer than 5 mm to the edge of their page."""
    boxes, size = tool("pdftotext", "-bbox", str(pdf), "-").decode(), (0.0, 0.0)
    lost = []
    for page, edges, word in re.findall(r"<(?:page ([^>]*)|word ([^>]*)>(.*?)</word)>", boxes):
        numbers = [float(each) for each in re.findall(r'"([\d.-]+)"', page or edges)]
        if page:
            size = tuple(numbers)
        elif min(numbers[:2]) < 14 or numbers[2] > size[0] - 14 or numbers[3] > size[1] - 14:
            lost.append(word)
    return lost


@pytest.mark.parametrize("paper", ["a4", "us-letter"])
@pytest.mark.parametrize("language", ["en", "fr", "es", "ja"])
@pytest.mark.parametrize("path", [SALT, SUGAR], ids=["salt", "sugar"])
def test_a_card_is_one_page_in_each_language_with_nothing_at_the_edge(path, language, paper, tmp_path):
    pdf = printed(path, language, paper, tmp_path)
    assert pages_of(pdf) == 1
    assert outside(pdf) == []


@pytest.mark.parametrize("path", [SALT, SUGAR], ids=["salt", "sugar"])
def test_the_code_on_the_printed_card_reads_back_to_the_identical_recipe(path, tmp_path):
    (found,) = codes_on(printed(path, "en", "a4", tmp_path))
    back = tmp_path / "back.toml"
    back.write_text(found, "utf-8")
    assert read_recipe(back) == read_recipe(path)
    assert tomllib.loads(found) == tomllib.loads(path.read_text("utf-8"))


@pytest.mark.parametrize("language", ["en", "fr", "es", "ja"])
def test_fourteen_ingredients_many_allergens_and_a_long_title_are_all_on_paper(many, language, tmp_path):
    made = card(many, on=DAY, language=language, measures="metric")
    pdf = tmp_path / "many.pdf"
    write_card(made, pdf=pdf, paper="us-letter")
    assert pages_of(pdf) <= 2
    assert outside(pdf) == []
    text = re.sub(r"\s", "", "".join(tool("pdftotext", "-raw", str(pdf), "-").decode()))
    wanted = [made.title, *(row[0] for row in made.shown["rows"]), *made.shown["careful"], made.shown["contains"]]
    assert len(made.shown["rows"]) == 14
    assert [each for each in wanted if re.sub(r"\s", "", each) not in text] == []


def test_the_makers_steps_stay_in_their_own_words_and_the_card_says_so(many):
    shown = card(many, on=DAY, language="fr").shown
    assert shown["steps"][1] == "かきまぜます。"
    assert "dans la langue de l’auteur" in shown["steps_note"]


def test_decimal_comma_local_day_and_local_names():
    french, japanese = (card(SALT, on=DAY, language=each, measures="metric").shown for each in ("fr", "ja"))
    resistivity = next(each for each in french["does"] if "Ω·m" in each)
    assert re.search(r"\d,\d", resistivity)
    assert not re.search(r"\d\.\d", resistivity)
    assert "le 8 mai 2026" in " ".join(french["foot"])
    assert "2026年5月8日" in " ".join(japanese["foot"])
    assert french["rows"][0][0] == "farine de blé T55"
    assert "blé" in french["contains"]
    assert japanese["rows"][0][2].startswith("カップ")


def test_a_card_in_another_language_has_the_cups_of_its_readers():
    """A Japanese cup holds 200 mL: “1 cup” of an American recipe, written カップ 1, would be a trap."""
    found = {each: card(SALT, on=DAY, language=each).shown["columns"][-1] for each in ("en", "fr", "es", "ja")}
    asked = {each: card(SALT, on=DAY, language=each, measures="us").shown["columns"][-1] for each in ("fr", "ja")}
    assert "US" in found["en"]
    assert "200" in found["ja"] or "日本" in found["ja"]
    assert all("250" in found[each] for each in ("fr", "es"))
    assert all(asked[each] != found[each] for each in asked)


def test_the_measures_are_those_of_the_country():
    columns = {each: card(SALT, on=DAY, measures=each).shown["columns"] for each in ("japan", "us-label", "scale")}
    assert "200 mL" in columns["japan"][2]
    assert "240 mL" in columns["us-label"][2]
    assert len(columns["scale"]) == 2
    with pytest.raises(RecipeError, match=r"no martian measures"):
        card(SALT, on=DAY, measures="martian")


def test_a_card_says_what_a_lamp_does_and_that_nobody_measured():
    salt, sugar = (" ".join(card(each, on=DAY).shown["does"]) for each in (SALT, SUGAR))
    assert "2 cm thick: bright" in salt
    assert "nobody measured a batch" in salt
    assert "stays bright" in sugar
    assert "Salt creeps" in sugar


def test_demo_recipes_say_that_they_are_invented_and_translations_that_nobody_read_them(tmp_path):
    text = text_of(printed(SALT, "es", "a4", tmp_path))
    assert "Inventado" in text
    assert "Ninguna persona de lengua materna" in text


def test_a_recipe_too_long_for_a_code_loses_its_story_then_its_steps_then_the_code_and_says_so(tmp_path):
    def worded(story: int, steps: int) -> str:
        path = tmp_path / "long.toml"
        more = f'story = "{"word " * story}"\nsteps = [{",".join(chr(34) + "stir " * 60 + chr(34) for _ in range(steps))}]\n'
        path.write_text(SALT.read_text("utf-8").replace('dough = "conducting"', 'dough = "conducting"\n' + more).split("story = \"\"\"")[0]
                        + SALT.read_text("utf-8").split('"""\n')[-1], "utf-8")  # fmt: skip
        return card(path, on=DAY).shown["code_words"]

    assert "The same recipe" in worded(10, 0)
    assert "without its story" in worded(400, 1)
    assert "without story and steps" in worded(400, 8)


def test_a_text_with_too_small_squares_gets_no_code():
    squares = {length: code_svg("a" * length, size=20.0) for length in (60, 600)}
    assert squares[600] == ""
    assert not fits_in_code("a" * 3000, size=200.0)
    side = int(re.search(r'viewBox="0 0 (\d+)', squares[60])[1])
    assert 20.0 / side >= LEAST_SQUARE


def test_what_a_code_lacks_is_named():
    assert [lacks for lacks, _ in recipe_texts(tomllib.loads(SALT.read_text("utf-8")))] == ["", "no-story"]


def test_compact_toml_keeps_quotes_lines_days_and_odd_keys():
    document = {"a b": 'say "x"\nnew', "at": DAY, "on": True, "n": [1, 2.5, {"k": "ü\x7f"}]}
    assert tomllib.loads(compact(document)) == document


def test_the_two_marks_differ_in_shape_and_in_blackness():
    carries, blocks = (
        np.asarray(Image.open(BytesIO(svg_as_png(mark_svg(each), width=120))).convert("L")) < 128
        for each in (True, False)
    )
    middle = slice(50, 70)
    assert carries[:, :4].any()
    assert carries[:, -8:].any()
    assert blocks[:, :10].any()
    assert not blocks[middle, :20].any()
    assert blocks[40:80, 70:100].mean() > 0.95  # dark and closed
    assert carries[40:80, 45:75].mean() < 0.6  # hollow


def test_no_page_shows_an_empty_box(tmp_path):
    fonts = files("lumped.paper").joinpath("fonts")
    japanese = ImageFont.truetype(str(fonts.joinpath("NotoSansCJKjp-JIS.otf")), 40)
    latin = ImageFont.truetype(str(fonts.joinpath("DejaVuSerif.ttf")), 40)
    empty = {id(font): bytes(font.getmask("\U0010ffff")) for font in (japanese, latin)}
    names = files("lumped.reference").joinpath("data/names.toml").read_text("utf-8")
    texts = [
        file.read_text("utf-8")
        for code in ("fr", "es", "ja")
        for file in files("lumped.texts").joinpath(code).iterdir()
    ]
    signs = {each for each in "".join([names, *texts]) if each.isprintable() and not each.isspace()}
    assert {
        each for each in signs if all(bytes(font.getmask(each)) == empty[id(font)] for font in (japanese, latin))
    } == set()


def test_labels_tell_what_is_in_the_bag_and_fill_their_pages(tmp_path):
    made = tags(SUGAR, made_on=DAY, language="fr", bags=8, trays=2, tare="6,5 g")
    pdf = tmp_path / "tags.pdf"
    write_tags(made, pdf)
    assert pages_of(pdf) == 2
    assert outside(pdf) == []
    found = [tomllib.loads(each) for each in codes_on(pdf)]
    assert len(found) == 8
    assert found[0] == {"kind": "bag", "title": "Ropewalk sugar dough", "dough": "insulating", "made_on": DAY,
                        "recipe": found[0]["recipe"]}  # fmt: skip
    assert len(codes_on(pdf, 2)) >= 2  # two trays, each with two faces
    text = text_of(pdf)
    for phrase in ("Bloque le", "Ne se mange pas", "6,5 g", "8 mai 2026", "pliez ici", "céréales contenant"):
        assert phrase in text, phrase


def test_a_label_with_a_long_title_and_many_allergens_keeps_inside_its_lines(many, tmp_path):
    pdf = tmp_path / "tags.pdf"
    made = tags(many, language="en", bags=1, trays=1)
    write_tags(made, pdf, paper="us-letter")
    words = tool("pdftotext", "-raw", "-f", "1", "-l", "1", str(pdf), "-").decode().split()
    assert not set(f"{made.title} {made.shown['contains']}".split()) - set(words)


def test_equal_recipes_have_equal_hashes_and_others_have_not(tmp_path):
    other = tmp_path / "other.toml"
    other.write_text("# a remark\n" + SALT.read_text("utf-8"), "utf-8")
    hashes = {path: tags(path).shown["hash"] for path in (SALT, other, SUGAR)}
    assert hashes[SALT] == hashes[other] != hashes[SUGAR]


def test_labels_that_cannot_be_are_refused():
    with pytest.raises(InputError, match=r"0 small and 0 large labels can't be printed"):
        tags(SALT, bags=0, trays=0)
    with pytest.raises(InputError, match=r"empty bag of “12 kg” can't be"):
        tags(SALT, tare="12 kg")
    with pytest.raises(InputError, match=r"no cards in the language “de”.*en, fr, es, ja"):
        tags(SALT, language="de")


def test_an_unknown_paper_is_refused(tmp_path):
    made = card(SALT, on=DAY)
    with pytest.raises(InputError, match=r"no sheet “a5”"):
        write_card(made, pdf=tmp_path / "card.pdf", paper="a5")
    assert replace(made, code="").as_dict()["code"] is None


def test_a_long_title_is_shortened_in_a_labels_code_and_hash_kind_and_day_stay(many, tmp_path):
    made = tags(many, made_on=DAY, bags=1, trays=1)
    pdf = tmp_path / "tags.pdf"
    write_tags(made, pdf)
    found = [tomllib.loads(each) for each in codes_on(pdf)]
    assert found
    assert found[0]["title"].endswith("…")
    assert LONG_TITLE.startswith(found[0]["title"][:-1])
    assert len(found[0]["title"]) > 25
    assert (found[0]["dough"], found[0]["made_on"]) == ("conducting", DAY)
    assert found[0]["recipe"] in made.shown["hash"]
    assert made.title == LONG_TITLE  # on paper it stands in full


def weakly_salted(folder):
    """A dough of which nobody can tell whether it carries."""
    text = (
        'kind = "recipe"\nschema = 1\ntitle = "Weak"\ndough = "conducting"\n'
        'ingredients = [{ingredient = "flour", amount_g = 150}, {ingredient = "tap-water", amount_g = 200},'
        '{ingredient = "salt", amount_g = 0.8}]\n'
    )
    (folder / "weak.toml").write_text(text, "utf-8")
    return folder / "weak.toml"


@pytest.mark.parametrize(("language", "said"), [
    ("en", "Meant to carry current"), ("fr", "Censée conduire le courant"), ("es", "Pensada para conducir la corriente"),
    ("ja", "電気を通すはず"),
])  # fmt: skip
def test_where_nobody_can_tell_card_and_labels_bear_no_mark_but_a_sentence(tmp_path, language, said):
    weak = weakly_salted(tmp_path)
    pages = tmp_path / "card.pdf", tmp_path / "tags.pdf"
    paper, labels = card(weak, on=DAY, language=language), tags(weak, language=language, bags=1, trays=1)
    write_card(paper, pdf=pages[0])
    write_tags(labels, pages[1])
    for made, page in zip((paper, labels), pages, strict=True):
        assert made.as_dict()["mark"] is None
        assert re.sub(r"\s", "", said) in re.sub(r"\s", "", text_of(page))
        assert outside(page) == []
    assert {each.shown["what"] for each in (paper, labels)} == {paper.shown["what"]}
