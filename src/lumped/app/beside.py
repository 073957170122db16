"""Recipes, or revisions of one, side by side: what goes in and what comes out of each."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.app.asking import Question
from lumped.app.given import Given, names_file
from lumped.app.labels import shop_of
from lumped.app.own import recipe_of, taught
from lumped.app.pricing import known_prices
from lumped.app.sources import told_of
from lumped.app.titles import marked
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.app.settings import Settings
    from lumped.dough.comparing import Comparison, Side
    from lumped.dough.properties import Property
    from lumped.quantities import Value

__all__ = ["Row", "amount_rows", "beside", "besides", "outcome_rows", "shared_notes", "side_names"]

Report = Any


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One line of a comparison.

    Parameters
    ----------
    key : str
        Of the ingredient or property.
    words : str
        What it is.
    cells : tuple of str
        What each recipe has of it.
    values : tuple of Value
        The figures behind the cells, if they are figures that were worked out.
    """

    key: str
    words: str
    cells: tuple[str, ...]
    values: "tuple[Value, ...]" = ()


def beside(
    places: Sequence[str],
    *,
    settings: "Settings | None" = None,
    region: str | None = None,
    labels: Sequence[Path] = (),
    batches: Sequence[str] = (),
) -> "Comparison":
    """Put recipes side by side: files, or revisions in the notebook.

    Parameters
    ----------
    places : sequence of str
        Each a file, or a title or id in the notebook with or without @ and a number.
    settings : Settings, optional
        They say which notebook.
    region : str, optional
        Where it is bought; without it there is no cost.
    labels : sequence of Path
        Ingredient files, for what neither the handbook nor the notebook has.
    batches : sequence of str
        Batches that each recipe learns from, as far as they are of its kind: files, or in the notebook. One of the
        notebook learns from those that are kept of it besides.

    Raises
    ------
    RecipeError, InputError, NotebookError
        If one of them can't be found or read, or a batch contradicts its recipe.
    """
    from lumped.app.together import read_together
    from lumped.dough.comparing import compared

    found = read_together(places, labels=labels, settings=settings)
    prices, money = known_prices(found.recipes, region, found.shop)
    known = [_known(place, batches, labels, settings) for place in places]
    one_each = len(set(found.titles)) == len(found.titles)
    sides = compared(
        found.recipes, found.shop, names=found.titles if one_each else None, prices=prices, money=money,
        calibrations=[None if each is None else each.calibration for each in known],
    )  # fmt: skip
    taught = _taught_words(sides, [() if each is None else each.words for each in known])
    return replace(sides, left_out=found.left_out, taught=taught)


def _known(
    place: str, batches: Sequence[str], labels: Sequence[Path], settings: "Settings | None"
) -> "Named | None":  # fmt: skip
    """Read a recipe with what its batches taught; None where there can be none."""
    from lumped.app.named import named

    return (
        None if names_file(place) and not batches else named(place, batches=batches, labels=labels, settings=settings)
    )


def _taught_words(found: "Comparison", words: Sequence[Sequence[str]]) -> tuple[str, ...]:
    """Say of each recipe what its batches taught."""
    return tuple(say("unfit-of", title=side.name, words=each)
                 for side, told in zip(found.sides, words, strict=True) for each in told)  # fmt: skip


def besides(question: Question, report: Report) -> dict[str, Any]:
    """Put a recipe beside others for a page.

    Parameters
    ----------
    question : Question
        The recipe and the others; said are their `names` and the `region`.

    Returns
    -------
    dict
        `titled`, the names (what is invented is marked); `amounts` and `outcomes` (key, words, cells); `notes`; each
        number's source by "key-number".
    """
    from lumped.dough.comparing import compared

    givens = (question.given, *question.others)
    own = {title: text for given in givens for title, text in given.labels.items()}
    shop = shop_of(Given(name="", text="", labels=own))
    recipes = [recipe_of(given, shop) for given in givens]
    known = [taught(given, recipe) for given, recipe in zip(givens, recipes, strict=True)]
    prices, money = known_prices(recipes, question.said["region"] or None, shop)
    found = compared(recipes, shop, names=question.said["names"], prices=prices, money=money,
                     calibrations=[each.lessons.calibration for each in known])  # fmt: skip
    report(1.0)
    outcomes = outcome_rows(found)
    return {
        "titled": list(side_names(found)),
        "amounts": [(row.key, row.words, row.cells) for row in amount_rows(found)],
        "outcomes": [(row.key, row.words, row.cells) for row in outcomes],
        "notes": [*found.unfit, *_taught_words(found, [each.words for each in known]), *shared_notes(found)],
        "sources": {
            f"{row.key}-{number}": told_of(row.words, value.provenance, recipe=side.recipe)
            for row in outcomes for number, (side, value) in enumerate(zip(found.sides, row.values, strict=False))
        } | {
            f"{key}-{number}": told_of(name, side.amounts[key].provenance, note=_written(key, side))
            for key, name in found.ingredients.items() for number, side in enumerate(found.sides) if key in side.amounts
        },
    }  # fmt: skip


def _written(key: str, side: "Side") -> str:
    """How the recipe words an amount."""
    written = [each.written for each in side.recipe.portions if each.ingredient == key]
    return say("web-beside-amount-written", written=" + ".join(written))


def side_names(found: "Comparison") -> tuple[str, ...]:
    """Say what each recipe is called, and that it is invented if it is."""
    return tuple(marked(side.name, invented=side.recipe.invented) for side in found.sides)


def amount_rows(found: "Comparison") -> list[Row]:
    """Say what goes into each."""
    return [
        Row(key=key, words=name, cells=tuple(_grams(side.amounts.get(key)) for side in found.sides))
        for key, name in found.ingredients.items()
    ]


def outcome_rows(found: "Comparison") -> list[Row]:
    """Say what comes out of each: its properties, its resistivity against the first's, its allergens."""
    return list(_outcomes(found))


def _outcomes(found: "Comparison") -> Iterator[Row]:
    for each in found.properties:
        yield _property(each, found)
    ratios = tuple(side.ratio for side in found.sides)
    cells = tuple(f"× {ratio.text()}" if number else say("beside-itself") for number, ratio in enumerate(ratios))
    yield Row(key="ratio", words=say("beside-ratio"), cells=cells, values=ratios)
    named = tuple(_allergens(side) for side in found.sides)
    yield Row(key="allergens", words=say("beside-allergens"), cells=named)


def _property(shown: "Property", found: "Comparison") -> Row:
    values = tuple(side.properties[shown.key] for side in found.sides)
    cells = tuple(shown.text(each, found.money) for each in values)
    return Row(key=shown.key, words=shown.words, cells=cells, values=values)


def _allergens(side: "Side") -> str:
    return ", ".join(side.allergens) or say("beside-none")


def shared_notes(found: "Comparison") -> list[str]:
    """Say what is to be known of all of them."""
    return [say("beside-shared"), *([say("map-prices", money=found.money)] if found.money else [])]


def _grams(amount: "Value | None") -> str:
    if amount is None:
        return say("beside-none")
    from lumped.quantities import short_text

    mean = f"{short_text(1e3 * amount.mean, 4)} g"
    if amount.is_exact:
        return mean
    return f"{mean} ({short_text(1e3 * amount.low, 3)} to {short_text(1e3 * amount.high, 3)})"
