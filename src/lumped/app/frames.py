"""Recipes from a pandas frame, and what becomes of them as one; for whoever works on in Python."""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

from lumped.errors import InputError, RecipeError

if TYPE_CHECKING:
    import pandas as pd

__all__ = ["doughs", "ingredients", "steps"]

_KINDS, _WAYS = ("conducting", "insulating"), ("pot", "kettle", "microwave", "not cooked")
_COLUMNS = {
    "resistivity": "resistivity_ohm_m", "sodium": "sodium_in_lump_kg", "cost": "cost_per_kg",
    "density": "density_kg_per_m3", "salt_solid": "salt_solid_share", "free_water": "free_water_share",
}  # fmt: skip


def doughs(
    grams: "pd.DataFrame",
    *,
    dough: Literal["conducting", "insulating"] = "conducting",
    cooked: Literal["pot", "kettle", "microwave", "not cooked"] = "pot",
    temperature_degC: float = 20.0,
    draws: int = 0,
    region: str | None = None,
    labels: Sequence[str | Path] = (),
) -> "pd.DataFrame":
    """Work out a recipe for each row of a frame, all in one pass.

    Parameters
    ----------
    grams : DataFrame
        A row for each recipe, a column for each ingredient, by key or name; what is empty is 0. [g]
    dough : {"conducting", "insulating"}
        What they are for.
    cooked : {"pot", "kettle", "microwave", "not cooked"}
        How they are heated.
    temperature_degC : float
        At which they are used. [°C]
    draws : int
        How many draws of what is open, such as 256, for intervals; 0 for the middle of what is believed alone.
    region : str, optional
        Where it is bought; without it there is no cost.
    labels : sequence of str or Path
        Ingredient files, for what the handbook does not have.

    Returns
    -------
    DataFrame
        With the same index; SI units stand in the names of the columns. With draws, each column is the median, and
        those that end in `_low` and `_high` are the ends of its 95 % interval.

    Raises
    ------
    RecipeError, InputError
        If an ingredient, a region or a way is not known, a mass is negative or no number, or a row holds nothing.

    Examples
    --------
    >>> import pandas as pd
    >>> grams = {"flour": 125, "tap water": 237, "table salt": [18, 73]}
    >>> recipes = pd.DataFrame(grams, index=["little", "much"])
    >>> doughs(recipes)["resistivity_ohm_m"].round(2).to_dict()
    {'little': 0.36, 'much': 0.16}
    """
    import pandas as pd

    from lumped.app.shop import shop_with
    from lumped.dough.many import knead_many
    from lumped.pantry import region as region_of

    for name, said, choices in (("dough", dough, _KINDS), ("cooked", cooked, _WAYS)):
        _refuse_other(name, said, choices)
    if draws < 0:
        raise InputError("many-draws", draws=f"{draws:,}")
    shop = shop_with([*map(Path, labels)])
    keys = [shop.find(str(name), str(name)).key for name in grams.columns]
    numbers = grams.apply(pd.to_numeric, errors="coerce")
    _refuse_words(grams, numbers)
    masses = numbers.where(grams.notna(), 0.0).to_numpy(float).T / 1e3
    prices = None
    if region is not None:
        region_of(region)
        prices = {key: each.per_mass for key in keys if (each := shop.price(key, region)) is not None}
    found = knead_many(
        keys, masses, kind=dough, cooked=cooked, temperature=temperature_degC + 273.15, count=draws, shop=shop,
        prices=prices,
    )  # fmt: skip
    columns: dict[str, Any] = {}
    for key, array in found.items():
        name = _COLUMNS.get(key, key)
        columns.update(
            {name: array} if not draws else {name: array[1], f"{name}_low": array[0], f"{name}_high": array[2]}
        )
    return pd.DataFrame(columns, index=grams.index)


def _refuse_other(name: str, said: str, choices: Sequence[str]) -> None:
    if said not in choices:
        raise InputError("many-choice", name=name, said=str(said)[:60], choices=", ".join(choices))


def _refuse_words(grams: "pd.DataFrame", numbers: "pd.DataFrame") -> None:
    """Refuse the first entry that is no number."""
    for number, (_, row) in enumerate((grams.notna() & numbers.isna()).iterrows(), 1):
        for name in row.index[row.to_numpy(bool)]:
            said = str(grams.iloc[number - 1][name])[:60]
            raise RecipeError("many-words", number=number, ingredient=str(name), said=said)


def steps(path: str | Path, *, batches: Sequence[str | Path] = (), labels: Sequence[str | Path] = ()) -> "pd.DataFrame":
    """Give the chain of a recipe's dough by key: words, unit, mean, low, high, status, sources.

    Parameters
    ----------
    path : str or Path
        A recipe file.
    batches, labels : sequence of str or Path
        Batch files that the prediction learns from; ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If a file can't be read.
    """
    import pandas as pd

    from lumped.app.doughs import dough

    found = dough(Path(path), batches=[*map(Path, batches)], labels=[*map(Path, labels)])
    rows = [
        (each.words, each.value.unit, each.value.mean, each.value.low, each.value.high,
         each.value.provenance.status.value, ", ".join(each.value.provenance.sources))
        for each in (*found.reasons, *found.facts)
    ]  # fmt: skip
    names = ["words", "unit", "mean", "low", "high", "status", "sources"]
    keys = pd.Index([each.key for each in (*found.reasons, *found.facts)], name="step")
    return pd.DataFrame(rows, columns=names, index=keys)


def ingredients(labels: Sequence[str | Path] = ()) -> "pd.DataFrame":
    """Give the mass shares of all ingredients: a row for each, a column for each compound; each row sums to one.

    Parameters
    ----------
    labels : sequence of str or Path
        Ingredient files, for what the handbook does not have.

    Examples
    --------
    >>> table = ingredients()
    >>> bool((table.sum(axis=1) - 1).abs().max() < 1e-9), float(table.loc["table-salt", "sodium-chloride"]) > 0.97
    (True, True)
    """
    import pandas as pd

    from lumped.app.shop import shop_with
    from lumped.chemistry.compounds import compounds

    shop = shop_with([*map(Path, labels)])
    keys = list(shop)
    names = pd.Index([each.key for each in compounds()], name="compound")
    return pd.DataFrame(shop.matrix(keys).T, index=pd.Index(keys, name="ingredient"), columns=names)
