"""Nothing that a person wrote vanishes from a page without a word."""

import pytest

from lumped.errors import InputError
from lumped.paper.letters import printable, require_letters
from lumped.paper.typesetting import typeset


@pytest.mark.parametrize(
    "title", ["Pa\u0302te sale\u0301e", "Соляное тесто", "Αλάτι", "塩の粘土", "5 % – “salt” ½ Ω·m"]
)
def test_these_can_be_printed(title):
    require_letters({"title": title, "lines": [("x", [title])]})


@pytest.mark.parametrize("title", ["แป้งเกลือ", "नमक", "salt 🧂 dough"])
def test_what_no_font_has_is_refused_and_shown(title):
    with pytest.raises(InputError, match=r"Lumped has no type for: .*Latin, Greek, Cyrillic and Japanese"):
        require_letters({"lines": [{"title": title}]})


def test_the_typesetter_is_not_asked_for_letters_that_it_lacks():
    picture = '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="30"><text x="5" y="20">ก</text></svg>'
    with pytest.raises(InputError, match=r"no type for: ก\."):
        typeset("svg", {"svg": picture}, kind="png")


def test_only_some_of_many_missing_letters_are_named():
    thai = "".join(map(chr, range(0x0E01, 0x0E2F)))
    with pytest.raises(InputError, match=r"for: ก( .){11} …\."):
        require_letters(thai)


def test_each_language_of_the_cards_can_be_printed():
    assert set("ñ¿çœ€ーヶ々〆。") <= printable()
