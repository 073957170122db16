"""A recipe as a page shows it: what its dough does, what goes in, and the same with other amounts."""

import re
import tomllib
from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Any

import tomli_w

from lumped.app.given import Given, laid_out

__all__ = ["amounts_in", "kneaded", "with_amounts"]

_GRAMS = re.compile(r"\s*(\d+(?:[.,]\d+)?)\s*(?:g|grams?)?\s*")


def kneaded(given: Given, report: Callable[[float], None]) -> dict[str, Any]:
    """Work out the dough of a recipe and make all that a page shows of it; a worker of the pool does it.

    Parameters
    ----------
    given : Given
        The recipe.
    report : callable
        Told the share that is done.

    Returns
    -------
    dict
        `dough` as JSON shows it; `conducts`; `resistivity` and `resistivity_ohm_cm` in words; `steps` (words and
        figure); `does`, sentences on feel and keeping; `narrower`, what would narrow the figure; `ingredients` (name
        and what is added by feel); `cautions`; `method`, `temperature_degC`, `story`.
    """
    from lumped.app.uses import dough as worked_out
    from lumped.dough.notes import first_words, narrowing_words
    from lumped.pantry import pantry
    from lumped.texts import say

    with laid_out(given) as path:
        dough = worked_out(path)
    document = tomllib.loads(given.text)
    report(1.0)
    return {
        "dough": dough.as_dict(),
        "conducts": dough.conducts,
        "resistivity": dough.resistivity.text(),
        "resistivity_ohm_cm": dough.resistivity_ohm_cm.text(),
        "does": list(first_words(dough)),
        "narrower": list(narrowing_words(dough)),
        "steps": [(each.words, each.value.text()) for each in dough.reasons],
        "ingredients": [
            (pantry().find(each["ingredient"]).name, each.get("as_needed_g")) for each in document["ingredients"]
        ],
        "cautions": [*dough.cautions, say("caution-rules")],
        "method": document.get("method", {}).get("cooked", "pot"),
        "temperature_degC": float(document.get("temperature_degC", 20)),
        "story": str(document.get("story", "")),
    }


def amounts_in(text: str) -> list[str]:
    """Give the amounts of a recipe as a person writes them; empty where something is only added by feel.

    Examples
    --------
    >>> amounts_in("ingredients = [{amount_g = 125.0}, {amount = '1 cup'}, {as_needed_g = [0, 9]}]")
    ['125 g', '1 cup', '']
    """
    return [_amount_of(entry) for entry in tomllib.loads(text)["ingredients"]]


def _amount_of(entry: dict[str, Any]) -> str:
    return f"{entry['amount_g']:g} g" if "amount_g" in entry else str(entry.get("amount", ""))


def with_amounts(given: Given, amounts: Sequence[str]) -> Given:
    """Give a recipe with other amounts: grams, or the words of a measure; what is as before stays as it was written.

    Parameters
    ----------
    given : Given
        The recipe.
    amounts : sequence of str
        One for each ingredient: "150 g", "150" (grams), "2 1/2 cups"; empty for none but what is added by feel.

    Examples
    --------
    >>> salt = Given(name="r.toml", text="ingredients = [{amount = '1 cup'}]")
    >>> amounts_in(with_amounts(salt, ["62,5"]).text)
    ['62.5 g']
    """
    document = tomllib.loads(given.text)
    for entry, amount in zip(document["ingredients"], amounts, strict=True):
        if amount.strip() == _amount_of(entry):
            continue
        entry.pop("amount", None)
        entry.pop("amount_g", None)
        if grams := _GRAMS.fullmatch(amount):
            number = float(grams[1].replace(",", "."))
            entry["amount_g"] = int(number) if number.is_integer() else number
        elif amount.strip():
            entry["amount"] = amount.strip()
    return replace(given, text=tomli_w.dumps(document))
