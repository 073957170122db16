"""A trough of dough and a thimble of it: every command writes numbers as people read them, never with an exponent."""

import re

import pytest

from lumped.cli import main

_RECIPE = """kind = "recipe"
schema = 1
title = "Boatyard trough (invented)"
dough = "conducting"
[method]
cooked = "pot"
[[ingredients]]
ingredient = "plain-flour"
amount_g = {flour}
[[ingredients]]
ingredient = "tap-water"
amount_g = {water}
[[ingredients]]
ingredient = "table-salt"
amount_g = {salt}
[[ingredients]]
ingredient = "vegetable-oil"
amount_g = {oil}
"""
_TROUGH = {"flour": 25_000, "water": 40_000, "salt": 12_000, "oil": 2_000}
_VERBS = (
    ["dough"], ["care"], ["salt"], ["dry"], ["cool"], ["keep"], ["what-if"], ["measure"], ["make", "--mass", "90 kg"], ["shop"],
    ["wall"], ["swap", "--without", "fat"], ["swap", "--without", "salt"], ["refresh", "--weighed", "25 kg", "--now", "22 kg"],
)  # fmt: skip


@pytest.mark.parametrize("verb", _VERBS, ids=" ".join)
@pytest.mark.parametrize("times", [1, 2e-5])
def test_no_number_has_an_exponent(verb, times, tmp_path, capsys):
    path = tmp_path / "trough.toml"
    path.write_text(_RECIPE.format(**{key: times * grams for key, grams in _TROUGH.items()}), "utf-8")
    main([verb[0], str(path), *verb[1:]])
    said = "".join(capsys.readouterr())
    assert said
    assert not re.findall(r"\d[.\d]*e[+-]?\d+", said)
