"""A whole recipe rounded to the measures of a kitchen, so that its dough moves least."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.app.weighing import find_kitchen, grams, measured_told
from lumped.errors import InputError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough.material import Dough
    from lumped.dough.recipe import Recipe
    from lumped.pantry import Pantry
    from lumped.pantry.rounding import Rounded, Shift
    from lumped.quantities import Value

__all__ = ["Kept", "measured_recipe", "write_kept"]

_LEAST = 1e-9  # share of water to flour, of what has none
_WEIGHTS = {"resistivity": 1.0, "hydration": 2.0, "water_activity": 3.0, "ph": 0.3}  # as a swap weighs them: chosen
_SHOWN = {"resistivity": "Ω·m", "hydration": "%", "water_activity": "", "ph": ""}


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """A recipe in the measures of a kitchen.

    Parameters
    ----------
    recipe, rounded_recipe : Recipe
        As written, and as measured.
    kitchen : str
        Name of the kitchen.
    rounded : Rounded
        What was chosen, and how far it moves the dough.
    before, after : mapping of str to float
        Properties of the dough at the middle of what is believed. [SI]
    resistivity_before, resistivity_after : Value
        With their intervals. [Ω·m]
    names : mapping of str to str
        Names of the ingredients.
    """

    recipe: "Recipe"
    rounded_recipe: "Recipe"
    kitchen: str
    rounded: "Rounded"
    before: Mapping[str, float]
    after: Mapping[str, float]
    resistivity_before: "Value"
    resistivity_after: "Value"
    names: Mapping[str, str]

    @property
    def rows(self) -> tuple[tuple[str, str, str, str, str], ...]:
        """For each ingredient: name, as written, as measured, weight, shift."""
        chosen, rows = iter(self.rounded.portions), []
        for old in self.recipe.portions:
            feel = old.as_needed and say(
                "measuring-by-feel", least=f"{1e3 * old.as_needed[0]:g}", most=f"{1e3 * old.as_needed[1]:g}"
            )
            one = next(chosen) if old.mass.mean else None
            words, mass, shift = (one.words, grams(one.mass), _percent(one.shift)) if one else (old.written, "", "")
            rows.append((self.names[old.ingredient], old.written, f"{words} {feel}" if feel else words, mass, shift))
        return tuple(rows)

    @property
    def moves(self) -> tuple[tuple[str, str, str, str], ...]:
        """For each property of the dough: name, before, after, how far it moved."""
        return tuple(
            (say(f"property-{key.replace('_', '-')}"), _shown(key, self.before[key]), _shown(key, self.after[key]),
             _moved(key, self.before[key], self.after[key]))
            for key in _SHOWN if key in self.before
        )  # fmt: skip

    @property
    def notes(self) -> tuple[str, ...]:
        """How it was chosen, and what hands leave open."""
        from lumped.quantities.rounding import rounded_text

        rounded, old, new = self.rounded, self.resistivity_before, self.resistivity_after
        times = rounded.each_alone / rounded.moved if rounded.moved > 0 else 1.0
        key = "measuring-best" if times > 1.05 else "measuring-best-alone"
        said = [say(key, tried=rounded.tried, **({"times": f"{times:.1f}"} if key == "measuring-best" else {}))]
        if not rounded.complete:
            said.append(say("measuring-not-all"))
        ends = {"low": new.low, "high": new.high, "low_before": old.low, "high_before": old.high}
        said.append(say("measuring-within", **{name: rounded_text(end) for name, end in ends.items()}))
        return tuple(said)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "kind": "measured-recipe", "schema": 1, "title": self.recipe.title, "measures": self.kitchen,
            "portions": [measured_told(each) for each in self.rounded.portions],
            "before": dict(self.before), "after": dict(self.after),
            "resistivity_before": self.resistivity_before.as_dict(),
            "resistivity_after": self.resistivity_after.as_dict(),
            "moved": self.rounded.moved, "each_alone": self.rounded.each_alone, "tried": self.rounded.tried,
            "complete": self.rounded.complete,
        }  # fmt: skip


def measured_recipe(dough: "Named", *, kitchen: str) -> Kept:
    """Round a recipe to what a kitchen has, so that its dough moves least.

    Parameters
    ----------
    dough : Named
        A recipe, with what its batches taught.
    kitchen : str
        Whose measures.

    Returns
    -------
    Kept

    Raises
    ------
    InputError
        If there is no such kitchen.
    """
    from lumped.dough import knead
    from lumped.pantry.rounding import Wanted, rounded_to_kitchen

    recipe, shop, system = dough.recipe, dough.shop, find_kitchen(kitchen)
    portions = [each for each in recipe.portions if each.mass.mean]
    wanted = [Wanted(ingredient=shop[each.ingredient], mass=each.mass.mean) for each in portions]
    rounded = rounded_to_kitchen(wanted, system, _shift(recipe, shop), weights=_WEIGHTS)
    kept = _as_recipe(recipe, rounded, system)
    old, new = (knead(each, shop, dough.calibration) for each in (recipe, kept))
    return Kept(
        recipe=recipe, rounded_recipe=kept, kitchen=_kitchen_name(system), rounded=rounded,
        before=_properties(old), after=_properties(new), resistivity_before=old.resistivity,
        resistivity_after=new.resistivity, names={key: shop[key].name for key in recipe.ingredients},
    )  # fmt: skip


def write_kept(found: Kept, path: Path) -> None:
    """Write a rounded recipe as a file of its own; a file that is there is not overwritten.

    Raises
    ------
    InputError
        If the ending is not .toml, or the file can't be written or is there already.
    """
    import tomli_w

    from lumped.app.writing import ready_to_write, write_whole
    from lumped.dough.writing import recipe_document

    ready_to_write(path, (".toml",))
    if path.exists():
        raise InputError("file-there", file=str(path))
    write_whole(path, tomli_w.dumps(recipe_document(found.rounded_recipe)).encode())


def _kitchen_name(system: str) -> str:
    from lumped.pantry.choosing import SCALE
    from lumped.reference import handbook

    return say("measuring-scale") if system == SCALE else handbook().name("measures", system)


def _shift(recipe: "Recipe", shop: "Pantry") -> "Shift":
    """Give the function that tells what other masses do to the dough."""
    import numpy as np

    from lumped.dough.many import knead_many

    keys = recipe.ingredients
    rows = [keys.index(each.ingredient) for each in recipe.portions if each.mass.mean]
    fixed = np.array([_by_feel(recipe, key) for key in keys], float)

    def properties(masses: Any) -> Any:
        table = np.repeat(fixed[:, None], masses.shape[1], axis=1)
        np.add.at(table, rows, masses)
        return knead_many(
            keys, table, kind=recipe.kind, cooked=recipe.cooked, temperature=recipe.temperature, shop=shop
        )

    aim = properties(np.array([[each.mass.mean] for each in recipe.portions if each.mass.mean]))

    def shift(masses: Any) -> dict[str, Any]:
        found = properties(masses)
        return {
            key: np.log(np.maximum(found[key], _LEAST) / np.maximum(aim[key], _LEAST))
            if key in ("resistivity", "hydration")
            else found[key] - aim[key]
            for key in _WEIGHTS
        }

    return shift


def _by_feel(recipe: "Recipe", key: str) -> float:
    """Middle of what is added by feel of an ingredient. [kg]"""
    return sum(sum(each.as_needed) / 2 for each in recipe.portions if each.ingredient == key and each.as_needed)


def _properties(dough: "Dough") -> dict[str, float]:
    """Give the figures that `lumped dough` tells. [SI]"""
    found = {key: dough.reason(key).value for key in _SHOWN}
    return {key: value.mean / 100 if value.unit == "%" else value.mean for key, value in found.items()}


def _as_recipe(recipe: "Recipe", rounded: "Rounded", system: str) -> "Recipe":
    from lumped.pantry.choosing import SCALE

    chosen = iter(rounded.portions)
    portions = tuple(
        replace(each, written=(one := next(chosen)).words, mass=one.mass) if each.mass.mean else each
        for each in recipe.portions
    )
    return replace(
        recipe, portions=portions, weighed_after=None, measures=recipe.measures if system == SCALE else system
    )


def _percent(share: float) -> str:
    return f"{100 * share:+.1f} %".replace("-", "−") if abs(share) >= 5e-4 else "0"


def _shown(key: str, figure: float) -> str:
    from lumped.quantities.rounding import rounded_text

    unit = _SHOWN[key]
    text = rounded_text(100 * figure) if unit == "%" else rounded_text(figure)
    return f"{text} {unit}" if unit else text


def _moved(key: str, before: float, after: float) -> str:
    if key in ("resistivity", "hydration"):
        return _percent(after / before - 1) if before else ""
    return f"{after - before:+.3f}".replace("-", "−") if abs(after - before) >= 5e-4 else "0"
