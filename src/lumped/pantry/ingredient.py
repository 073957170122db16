"""Something from a shop: what it is made of, what a spoon of it weighs, who may touch it."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from lumped.pantry.prices import Price
from lumped.quantities import Provenance, Status, Value

__all__ = ["METHODS", "ROLES", "Ingredient"]

ROLES = (
    "body", "ions", "acid", "moisture keeper", "softener", "preservative", "liquid", "sweetener", "colour", "binder",
    "raising",
)  # fmt: skip
METHODS = ("spooned", "scooped", "sifted", "poured", "packed", "levelled")


@dataclass(frozen=True, slots=True, kw_only=True)
class Ingredient:
    """An ingredient.

    Parameters
    ----------
    key, name : str
        What programs and people call it.
    composition : mapping of str to float
        Mass share of each compound (`chemistry.compounds`), ions included; they sum to one. [1]
    moisture : Value
        Its share of water, as far as it is known; its mean is `composition["water"]`. [1]
    minerals : Value
        How much of its mineral salts there really is over what `composition` says. [1]
    weights : mapping of str to mapping of str to Value
        What a US measure of it weighs: by measure ("cup", "tbsp", "tsp", "dash") and by method ("spooned", "scooped",
        "sifted", "poured", "packed", "levelled"); see `METHODS`. [kg]
    usual_method : str
        The method that is meant where a recipe says none.
    density : Value or None
        Density of a liquid. [kg/m³]
    grain : Value or None
        Diameter of its grains or crystals. [m]
    roles : tuple of str
        What it does in a dough: "body", "ions", "acid", …; see `ROLES`.
    allergens_eu, allergens_us : tuple of str
        Allergens of the European and American lists that it contains.
    may_contain : tuple of str
        Allergens that often come with it as traces.
    contains : tuple of str
        What diets ask for beyond allergens: "gluten", "corn", "animal", "alcohol".
    cautions : tuple of str
        Keys of the cautions that go with it.
    notes : tuple of str
        Keys of remarks without a verdict, such as questions of religion.
    also : tuple of str
        Other names of it.
    names : mapping of str to str
        Its name by language: "en", "fr", "es", "ja".
    everyday : tuple of str
        Words of any language that may mean several, and in a kitchen mean this one: "salt", "sel", "塩".
    origins : mapping of str to Provenance
        Where each printed row comes from.
    label : mapping of str to Value
        Figures of its packet's label by what they are of ("fat", "carbohydrate", …), with what was taken where the
        label is silent; empty for the handbook's own. [1]
    assumed : tuple of str
        What its label did not say and was assumed, in sentences; empty for the handbook's own.
    bought : Price or None
        What somebody paid for a packet of it; None for the handbook's own, whose prices stand there.
    """

    key: str
    name: str
    composition: Mapping[str, float]
    moisture: Value
    minerals: Value
    weights: Mapping[str, Mapping[str, Value]] = field(default_factory=dict)
    usual_method: str = "levelled"
    density: Value | None = None
    grain: Value | None = None
    roles: tuple[str, ...] = ()
    allergens_eu: tuple[str, ...] = ()
    allergens_us: tuple[str, ...] = ()
    may_contain: tuple[str, ...] = ()
    contains: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    also: tuple[str, ...] = ()
    names: Mapping[str, str] = field(default_factory=dict)
    everyday: tuple[str, ...] = ()
    origins: Mapping[str, Provenance] = field(default_factory=dict)
    label: Mapping[str, Value] = field(default_factory=dict)
    assumed: tuple[str, ...] = ()
    bought: Price | None = None

    @property
    def called(self) -> tuple[str, ...]:
        """All that it is called: key, name, other names, names in other languages, everyday words."""
        return (self.key, self.name, *self.also, *self.names.values(), *self.everyday)

    @property
    def is_own(self) -> bool:
        """Whether it is a person's own: its figures stand on a packet's label."""
        return any(origin.status is Status.LABEL for origin in self.origins.values())
