"""A measure weighed, a weight in cups and spoons, and what the measures of each country hold."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.errors import InputError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.pantry.choosing import Measured
    from lumped.quantities import Value

__all__ = ["Weighed", "find_kitchen", "grams", "kitchen_table", "measured_told", "weighed_amount"]
_METRIC = ("g", "mg", "kg")
_WEIGHTS = (*_METRIC, "oz", "lb")


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighed:
    """An amount of an ingredient, weighed, and in the measures of kitchens.

    Parameters
    ----------
    text, ingredient, name : str
        The amount's words; key and name of the ingredient.
    mass : Value
        What it weighs. [kg]
    method, usual : str or None, str
        How the measure is filled, if that was said, and what is taken otherwise.
    unit : str
        "g", "cup", …
    packs : bool
        Whether it matters how a measure of it is filled.
    is_range : bool
        Whether the words leave open how much it is: from so much to so much.
    ways : mapping of str to Measured
        The same mass, of a range the most, in the measures of each kitchen asked for; empty where nobody knows what a
        measure of it weighs.
    """

    text: str
    ingredient: str
    name: str
    mass: "Value"
    method: str | None
    usual: str
    unit: str
    packs: bool
    ways: "Mapping[str, Measured]"
    is_range: bool = False

    @property
    def words(self) -> tuple[str, ...]:
        """What it weighs, how it is filled, and what that is worth."""
        said = [self._weight_words] if self.unit in _WEIGHTS else list(self._measure_words)
        if not self.ways:
            said.append(say("measuring-nowhere"))
        elif self.is_range:
            said.append(say("measuring-most"))
        elif self.unit in _WEIGHTS:
            said.append(say("measuring-in-measures"))
        return tuple(said)

    @property
    def _weight_words(self) -> str:
        """A weight is what it is; all that may be said of it is what it is in grams."""
        from lumped.quantities import short_text

        if self.is_range:
            return say("measuring-range", text=self.text, ingredient=self.name, mass=grams(self.mass))
        key = "measuring-a-weight" if self.unit in _METRIC else "measuring-in-grams"
        return say(key, text=self.text, ingredient=self.name, mass=short_text(1e3 * self.mass.mean, 3))

    @property
    def _measure_words(self) -> Iterator[str]:
        from lumped.pantry.measures import FLUFFED
        from lumped.reference import handbook

        status, sources = self.mass.provenance.status.value, handbook().citations(self.mass.provenance)
        yield say("measuring-weighs", text=self.text, ingredient=self.name, mass=grams(self.mass))
        if self.method in FLUFFED and not self.packs:
            yield say("measuring-grains", ingredient=self.name, method=self.method or "", usual=self.usual)
        else:
            key = "measuring-method" if self.method or self.usual != "spooned" else "measuring-method-unsaid"
            yield say(key, method=self.method or self.usual)
        key = "measuring-status-sources" if sources else "measuring-status"
        yield say(key, status=status, **({"sources": "; ".join(sources)} if sources else {}))

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        return {
            "kind": "weighed", "schema": 1, "text": self.text, "ingredient": self.ingredient, "method": self.method,
            "mass": self.mass.as_dict(), "ways": {key: measured_told(each) for key, each in self.ways.items()},
        }  # fmt: skip


def find_kitchen(word: str) -> str:
    """Find whose measures are meant; the beginning of a key will do, "grams" is a scale.

    Raises
    ------
    InputError
        If there are no such measures, or several.

    Examples
    --------
    >>> find_kitchen("japan"), find_kitchen("us"), find_kitchen("grams")
    ('japanese', 'us', 'scale')
    """
    from lumped.pantry.choosing import SCALE
    from lumped.pantry.measures import kitchens

    asked = word.strip().casefold()
    if asked in ("g", "gram", "grams", "weight"):
        return SCALE
    known = (*kitchens(), SCALE)
    if asked in known:
        return asked
    found = [key for key in known if asked and key.startswith(asked)]
    if len(found) != 1:
        raise InputError("measuring-in", system=word, known=", ".join(known))
    return found[0]


def weighed_amount(
    text: str, ingredient: str, *, kitchen: str | None = None, method: str | None = None, labels: Sequence[Path] = ()
) -> Weighed:
    """Weigh an amount of an ingredient, and say it in the measures of kitchens.

    Parameters
    ----------
    text : str
        "1 1/2 cup", "1 cup scooped", "180 g".
    ingredient : str
        Its key or name.
    kitchen : str, optional
        Whose measures; those of the United States if left out, and a weight is then said in all.
    method : str, optional
        How measures are filled.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Returns
    -------
    Weighed

    Raises
    ------
    RecipeError, InputError
        If there is no such ingredient, kitchen or method, or the amount can't be read.

    Examples
    --------
    >>> weighed_amount("1 1/2 cup", "flour", method="scooped").mass.text()
    '0.217 kg (0.195 to 0.240)'
    >>> weighed_amount("180 g", "plain-flour", kitchen="japan").ways["japanese"].words
    '1½ cups + 3 tbsp'
    """
    from lumped.app.shop import shop_with
    from lumped.errors import RecipeError
    from lumped.pantry.amounts import mass_of, read_amount
    from lumped.pantry.choosing import SCALE, as_measures
    from lumped.pantry.measures import kitchens, packs

    shop = shop_with(labels)
    found, system = shop.find(ingredient), find_kitchen(kitchen) if kitchen else None
    amount = read_amount(text.partition("+")[0].strip())
    by_weight, is_range = amount.unit in _WEIGHTS, amount.low != amount.high
    mass = mass_of(text, found, system if system and system != SCALE else "us", None if by_weight else method)
    asked = (system,) if by_weight and system else (*kitchens(), SCALE)
    ways = {}
    for each in asked:
        try:
            ways[each] = as_measures(mass.high if is_range else mass.mean, found, each, method)
        except RecipeError as problem:
            if problem.code != "recipe-no-weight":
                raise
    return Weighed(
        text=text.strip(), ingredient=found.key, name=found.name, mass=mass, method=amount.method or method,
        usual=found.usual_method, unit=amount.unit, packs=packs(found), ways=ways, is_range=is_range,
    )  # fmt: skip


def kitchen_table() -> list[dict[str, Any]]:
    """Give what each measure of each country holds, with status and source.

    Examples
    --------
    >>> next(row["volume_m3"] for row in kitchen_table() if (row["kitchen"], row["measure"]) == ("japanese", "cup"))
    0.0002
    """
    from lumped.pantry.measures import kitchens
    from lumped.reference import handbook

    book = handbook()
    return [
        {"kitchen": key, "name": book.name("measures", key), "measure": measure, "volume_m3": row.value.mean,
         "status": row.value.provenance.status.value, "sources": list(book.citations(row.value.provenance))}
        for key in kitchens() for measure, row in book.entry("measures", key).rows.items()
    ]  # fmt: skip


def grams(mass: "Value") -> str:
    """Write a mass in grams with its interval."""
    ends = {end: 1e3 * getattr(mass, end) for end in ("mean", "low", "high")}
    return replace(mass, unit="g", **ends).text()


def measured_told(each: "Measured") -> dict[str, Any]:
    """Give a mass in measures as JSON shows it, in SI."""
    return {
        "ingredient": each.ingredient, "words": each.words, "mass": each.mass.as_dict(), "wanted_kg": each.wanted,
        "shift": each.shift,
    }  # fmt: skip
