"""Four languages on paper: the same sentences with the same slots, and never two on one page."""

import re
from datetime import date
from importlib.resources import files
from pathlib import Path

import pytest

from lumped.app.cards import card
from lumped.reference import handbook
from lumped.texts import LANGUAGES, has, say, speaking

OTHERS = [code for code in LANGUAGES if code != "en"]
RECIPES = Path(__file__).parents[2] / "demo" / "recipes"


def messages(code: str) -> dict[str, set[str]]:
    """Keys of a language with the slots of each."""
    text = "\n".join(file.read_text("utf-8") for file in files("lumped.texts").joinpath(code).iterdir())
    parts = re.split(r"^([a-z][\w-]*) =", text, flags=re.M)
    return {key: set(re.findall(r"\$(\w+)", body)) for key, body in zip(parts[1::2], parts[2::2], strict=True)}


ENGLISH = messages("en")


@pytest.mark.parametrize("code", OTHERS)
def test_each_sentence_of_card_and_labels_is_there_with_the_same_slots(code):
    found = messages(code)
    needed = {key for key in ENGLISH if key.startswith(("card-", "tags-", "trial-card-", "trial-bad-"))}
    needed |= {key for key in ENGLISH if re.match(r"measure-(?!read)", key)}
    needed -= {"card-no-dough", "card-conducting-blocks", "card-insulating-carries"}  # errors speak English
    needed -= {"card-language", "tags-count", "tags-tare-odd"}  # errors speak English
    assert needed - set(found) == set()
    assert set(found) - set(ENGLISH) == {f"card-unread-{code}"}
    plural = {"count"}  # only where the language has plurals
    assert {key: (ENGLISH[key], found[key]) for key in needed if ENGLISH[key] - plural != found[key] - plural} == {}


@pytest.mark.parametrize("code", OTHERS)
def test_every_allergen_of_both_lists_and_every_ingredient_has_a_name(code):
    listed = {name for region in ("eu", "us") for name in handbook().entry("allergens", region).facts["names"]}
    with speaking(code):
        assert [name for name in listed if not has(f"card-allergen-{name.replace(' ', '-')}")] == []
    assert [key for key in handbook().keys("names") if not handbook().entry("names", key).facts.get(code)] == []


@pytest.mark.parametrize("code", OTHERS)
@pytest.mark.parametrize("name", ["salt", "sugar"])
def test_a_card_mixes_no_languages(code, name):
    english, other = (
        card(RECIPES / f"ropewalk-{name}.toml", on=date(2026, 5, 8), language=each, measures="metric").shown
        for each in ("en", code)
    )
    for key in ("what", "looks", "does", "trial", "steps", "careful", "contains", "traces", "columns"):
        ours, theirs = ([each] if isinstance(each, str) else each for each in (other[key], english[key]))
        assert [one for one, two in zip(ours, theirs, strict=True) if one and one == two] == [], key


@pytest.mark.parametrize("code", OTHERS)
def test_the_sources_on_a_card_are_described_in_its_language(code):
    foot = " ".join(card(RECIPES / "ropewalk-salt.toml", on=date(2026, 5, 8), language=code).shown["foot"])
    assert "USDA SR" in foot
    assert not re.findall(r"conductivity|standards|properties", foot)


@pytest.mark.parametrize("code", LANGUAGES)
def test_a_card_says_when_its_trial_is_weak_and_only_then(code, tmp_path):
    text = (RECIPES / "ropewalk-salt.toml").read_text("utf-8")
    with speaking(code):
        weak = say("trial-card-weak")
    trials = []
    for grams in (73, 4):
        path = tmp_path / f"{grams}.toml"
        path.write_text(text.replace('amount = "1/4 cup"', f"amount_g = {grams}"), "utf-8")
        trials.append(card(path, on=date(2026, 5, 8), language=code).shown["trial"])
    assert [weak in each for each in trials] == [False, True]
    assert trials[1][-1] == weak


@pytest.mark.parametrize("code", LANGUAGES)
@pytest.mark.parametrize("way", ["pot", "kettle", "microwave"])
def test_the_steps_speak_of_feel_only_where_something_is_added_by_feel(code, way, tmp_path):
    text = (RECIPES / "ropewalk-salt.toml").read_text("utf-8").replace('cooked = "pot"', f'cooked = "{way}"')
    firsts = []
    for number, written in enumerate((text, text.replace("as_needed_g = [0, 40]\n", ""))):
        path = tmp_path / f"{number}.toml"
        path.write_text(written, "utf-8")
        steps = card(path, on=date(2026, 5, 8), language=code).shown["steps"]
        firsts.append(steps[0])
        assert len(steps) == 5 - number
    feel = {"en": "by feel", "es": "al tacto", "fr": "au toucher", "ja": "手ざわり"}[code]
    assert [feel in each for each in firsts] == [True, False]


def test_a_sentence_that_a_language_lacks_stops_the_program():
    with speaking("ja"), pytest.raises(KeyError, match="no sentence 'cli-lumped'"):
        say("cli-lumped")


def test_the_language_is_put_back():
    with speaking("fr"):
        assert say("card-heading-careful") == "Attention"
    assert say("card-heading-careful") == "Be careful"
