"""What a packet's label says, as a person types it."""

from dataclasses import dataclass, fields
from difflib import get_close_matches

from lumped.errors import InputError
from lumped.reference import handbook

__all__ = ["NUTRIENTS", "Label", "allergens_named"]

NUTRIENTS = (
    "fat",
    "carbohydrate",
    "sugars",
    "fibre",
    "protein",
    "salt",
    "sodium",
    "water",
    "ash",
    "polyols",
    "alcohol",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """A label; None is what it does not say.

    Parameters
    ----------
    name : str
        What the packet is called.
    like : str
        Key of an ingredient of the handbook that is of the same sort; "" if none is.
    per : {"100 g", "100 mL", "serving"}
        What the table is for.
    kilojoules, kilocalories : float or None
        Energy. [kJ], [kcal]
    fat, carbohydrate, sugars, fibre, protein, salt, sodium, water, ash, polyols, alcohol : float or None
        What is in so much of it. [kg]
    fibre_within : bool or None
        Whether the figure for carbohydrate includes fibre, as in America; None: as the table's salt or sodium tells.
    sodium_from : {"salt", "baking soda"} or None
        What its sodium is a part of.
    density : float or None
        Of a liquid. [kg/m³]
    serving : float or None
        Mass of the serving. [kg]
    serving_measure : str
        The measure that the serving fills, "1/4 cup"; "" if none is given.
    filled : str
        How that measure was filled, one of `ingredient.METHODS`; "" if nobody says.
    allergens, may_contain : tuple of str or None
        Allergens as the packet names them; an empty tuple where it says that there are none.
    contains, roles : tuple of str
        What diets ask for, and what it does in a dough; empty: as the similar ingredient, or as its nutrients tell.
    """

    name: str
    like: str = ""
    per: str = "100 g"
    kilojoules: float | None = None
    kilocalories: float | None = None
    fat: float | None = None
    carbohydrate: float | None = None
    sugars: float | None = None
    fibre: float | None = None
    protein: float | None = None
    salt: float | None = None
    sodium: float | None = None
    water: float | None = None
    ash: float | None = None
    polyols: float | None = None
    alcohol: float | None = None
    fibre_within: bool | None = None
    sodium_from: str | None = None
    density: float | None = None
    serving: float | None = None
    serving_measure: str = ""
    filled: str = ""
    allergens: tuple[str, ...] | None = None
    may_contain: tuple[str, ...] | None = None
    contains: tuple[str, ...] = ()
    roles: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        for each in fields(self):
            given = getattr(self, each.name)
            if isinstance(given, float | int) and not isinstance(given, bool) and not 0 <= given < float("inf"):
                raise InputError("label-negative", where=self.name, row=each.name, value=f"{given:g}")

    @property
    def key(self) -> str:
        """What programs call it: the name in small letters, with hyphens."""
        return "-".join(self.name.casefold().split())


def allergens_named(words: tuple[str, ...], where: str) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Find the allergens of the European and the American list that a packet names.

    Parameters
    ----------
    words : tuple of str
        As the packet says: "wheat", "soya", "almonds".
    where : str
        Which packet, for the message.

    Returns
    -------
    (tuple of str, tuple of str)
        The European and the American names.

    Raises
    ------
    InputError
        If a word is no allergen of either list.

    Examples
    --------
    >>> allergens_named(("Wheat", "barley"), "muffins")
    (('cereals containing gluten',), ('wheat',))
    """
    found = tuple({name: "" for word in words if (name := _named(word, region, where))} for region in ("eu", "us"))
    return tuple(found[0]), tuple(found[1])


def _named(word: str, region: str, where: str) -> str | None:
    asked = word.strip().casefold()
    lists = {each: handbook().entry("allergens", each).facts["names"] for each in ("eu", "us")}
    also = handbook().entry("allergens", "words").facts
    if asked in also[region] and asked not in lists[region]:
        return str(also[region][asked])
    known = {*lists["eu"], *lists["us"], *also["eu"], *also["us"]}
    if asked not in known:
        near = get_close_matches(asked, sorted(known), n=1, cutoff=0.7)
        if near:
            raise InputError("label-allergen", where=where, word=word, near=near[0])
        raise InputError("label-no-allergen", where=where, word=word, known=", ".join(lists["eu"]))
    return asked if asked in lists[region] else None
