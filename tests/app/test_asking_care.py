"""Who may touch a dough, as a page asks for it."""

import pytest

from lumped.app.asking import Question
from lumped.app.asking_care import cared
from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.errors import InputError

SALT = Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml"))


def ask(**said):
    words = {"names": ["salt"], "needs": [], "on": "2026-05-08", "age": "", "dog": ""} | said
    return cared(Question(given=SALT, said=words), lambda share: None)


def test_a_child_of_two_is_meant_where_nobody_says_an_age():
    assert ask()["doses"] == ask(age="2")["doses"] != ask(age="9")["doses"]


@pytest.mark.parametrize("age", ["0", "0.5", "200", "-3"])
def test_an_age_without_figures_is_refused_and_not_taken_for_two(age):
    with pytest.raises(InputError, match=f"of {age}"):
        ask(age=age)


@pytest.mark.parametrize("said", [{"age": "nan"}, {"dog": "inf"}, {"age": "two"}, {"dog": "1,250"}])
def test_what_is_no_age_or_weight_is_said_in_words(said):
    with pytest.raises(InputError, match=r"is no number|two ways"):
        ask(**said)


def test_the_limit_that_the_whole_table_hears_of_tells_its_source():
    told = ask(needs=["coeliac"])
    assert any("20 mg of gluten" in words for words in told["whole_table"])
    assert any("828/2014" in source for source in told["sources"]["gluten-limit"]["sources"])
    assert "gluten-limit" not in ask(needs=["peanuts"])["sources"]
