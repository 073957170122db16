"""Ingredients looked up: a list by what they do, where they are sold, what is not in them; one with all figures."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.errors import InputError
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.pantry import Ingredient, Pantry, Price
    from lumped.quantities import Value

__all__ = ["Found", "Shown", "listed", "looked_up", "share_text"]

LANGUAGES = ("en", "fr", "es", "ja")


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """Ingredients that are what was asked for.

    Parameters
    ----------
    ingredients : tuple of Ingredient
        In the pantry's order.
    region : str or None
        Key of the region of prices and shops.
    shop : Pantry
        Where they were found.
    """

    ingredients: "tuple[Ingredient, ...]"
    region: str | None
    shop: "Pantry" = field(repr=False)

    @property
    def rows(self) -> tuple[tuple[str, ...], ...]:
        """Key, name, roles, allergens, traces; with a region also price and shop."""
        return tuple(self._row(each) for each in self.ingredients)

    def _row(self, each: "Ingredient") -> tuple[str, ...]:
        allergens = dict.fromkeys((*each.allergens_eu, *each.allergens_us))
        row = (
            each.key,
            each.name,
            ", ".join(each.roles),
            ", ".join(allergens) or "–",
            ", ".join(each.may_contain) or "–",
        )
        if self.region is None:
            return row
        from lumped.pantry import sold

        return (*row, _price_words(self.shop.price(each.key, self.region)), sold(each.key, self.region).words)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "kind": "pantry", "schema": 1, "region": self.region,
            "ingredients": [
                {"key": each.key, "name": each.name, "roles": list(each.roles),
                 "allergens_eu": list(each.allergens_eu), "allergens_us": list(each.allergens_us),
                 "may_contain": list(each.may_contain), "names": dict(each.names),
                 **({"offer": _offer(self.shop, each.key, self.region)} if self.region else {})}
                for each in self.ingredients
            ],
        }  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """One ingredient with all that is known of it.

    Parameters
    ----------
    ingredient : Ingredient
        The ingredient.
    figures : tuple of dict
        Each row of its table: `quantity`, `figure`, `status`, `source` and `page`, `note`.
    offers : tuple of dict
        By region: price, packs, where it is sold.
    cautions, remarks : tuple of str
        What to mind; questions of faith, without a verdict.
    taken : str
        What an everyday word was taken as, in a sentence; "" if it was asked for by a name of its own.
    """

    ingredient: "Ingredient"
    figures: tuple[dict[str, str], ...]
    offers: tuple[dict[str, Any], ...]
    cautions: tuple[str, ...]
    remarks: tuple[str, ...]
    taken: str = ""

    @property
    def words(self) -> tuple[str, ...]:
        """What it is made of, what it does, allergens, other names."""
        each = self.ingredient
        said = [
            *filter(None, (self.taken,)), say("larder-made-of", parts=", ".join(_parts(each))),
            say("larder-roles", roles=", ".join(each.roles)),
            say("larder-allergens", eu=_listed(each.allergens_eu), us=_listed(each.allergens_us),
                traces=_listed(each.may_contain)),
        ]  # fmt: skip
        also = dict.fromkeys((*each.also, *each.everyday))
        return (*said, say("larder-also", also=", ".join(also))) if also else tuple(said)

    @property
    def names(self) -> tuple[tuple[str, str], ...]:
        """Language and name."""
        return tuple((code, self.ingredient.names[code]) for code in LANGUAGES if code in self.ingredient.names)

    @property
    def weights(self) -> tuple[tuple[str, str, str, str], ...]:
        """US measure, way of filling, weight, status."""
        from lumped.app.weighing import grams

        usual = self.ingredient.usual_method
        return tuple(
            (measure, say("larder-usual", method=method) if method == usual else method, grams(value),
             _status(value.provenance))
            for measure, own in self.ingredient.weights.items() for method, value in own.items()
        )  # fmt: skip

    @property
    def prices(self) -> tuple[tuple[str, str, str, str], ...]:
        """Region, price, packs, where it is sold."""
        return tuple((each["region"], each["price_words"], each["packs_words"], each["sold"]) for each in self.offers)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it, in SI."""
        each = self.ingredient
        return {
            "kind": "ingredient-shown", "schema": 1, "key": each.key, "name": each.name, "names": dict(each.names),
            "also": list(each.also), "everyday": list(each.everyday), "taken": self.taken,
            "roles": list(each.roles), "composition": dict(each.composition),
            "figures": list(self.figures), "usual_method": each.usual_method,
            "weights": {
                measure: {method: value.as_dict() for method, value in own.items()}
                for measure, own in each.weights.items()
            },
            "density": each.density and each.density.as_dict(), "grain": each.grain and each.grain.as_dict(),
            "allergens_eu": list(each.allergens_eu), "allergens_us": list(each.allergens_us),
            "may_contain": list(each.may_contain), "cautions": list(self.cautions), "remarks": list(self.remarks),
            "assumed": list(each.assumed), "offers": list(self.offers),
        }  # fmt: skip


def listed(
    *, role: str | None = None, region: str | None = None, without: Sequence[str] = (), diets: Sequence[str] = (),
    free_of: Sequence[str] = (), words: str = "", labels: Sequence[Path] = (), shop: "Pantry | None" = None,
) -> Found:  # fmt: skip
    """List the ingredients that are all of what is asked for.

    Parameters
    ----------
    role : str, optional
        What it does in a dough; see `pantry.ingredient.ROLES`.
    region : str, optional
        Where it is bought: adds prices and shops; what is hard to find there is left out.
    without : sequence of str
        Classes of ingredients that are left out; see `dough.swap.wants.CLASSES`.
    diets : sequence of str
        Diets that it must suit, or children's needs, in the words of `safety.need_named`.
    free_of : sequence of str
        Allergens that it must not contain, as packets name them; traces leave nothing out.
    words : str
        Words that stand in its names, in any of the four languages.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.
    shop : Pantry, optional
        The ingredients themselves, in place of the handbook's with those files.

    Raises
    ------
    InputError
        If there is no such role, region, class, diet or allergen.

    Examples
    --------
    >>> [each.key for each in listed(role="acid", without=["corn"]).ingredients][:2]
    ['cream-of-tartar', 'lemon-juice']
    """
    from lumped.app.shop import shop_with
    from lumped.dough.safety import diet_named
    from lumped.dough.swap.wants import CLASSES
    from lumped.pantry import region as region_of
    from lumped.pantry import sold
    from lumped.pantry.ingredient import ROLES

    shop = shop_with(labels) if shop is None else shop
    if role is not None and role not in ROLES:
        raise InputError("larder-no-role", role=role, known=", ".join(ROLES))
    for word in without:
        if word not in CLASSES:
            raise InputError("larder-no-class", word=word, known=", ".join(CLASSES))
    if region is not None:
        region_of(region)
    unwanted, asked_for = _unwanted(free_of), [diet_named(each) for each in diets]
    return Found(
        region=region, shop=shop,
        ingredients=tuple(
            each for each in map(shop.__getitem__, shop.named(words))
            if (role is None or role in each.roles) and not any(CLASSES[word](each) for word in without)
            and not unwanted & {*each.allergens_eu, *each.allergens_us}
            and all(_meets(each, diet) for diet in asked_for)
            and (region is None or sold(each.key, region).trouble != "a search")
        ),
    )  # fmt: skip


def _meets(ingredient: "Ingredient", diet: str) -> bool:
    """Whether an ingredient suits a diet, or a child's need; traces leave nothing out."""
    from lumped.dough.safety import DIETS
    from lumped.dough.safety.diets import met_by
    from lumped.dough.safety.needs import borne

    return met_by(ingredient, diet) != "wrong" if diet in DIETS else borne(diet, ingredient) != "holds"


def _unwanted(words: Sequence[str]) -> set[str]:
    """Allergens that are meant: just the one of that name, or what a packet's word for it stands for."""
    from lumped.pantry.label import allergens_named
    from lumped.reference import handbook

    lists = {name for each in ("eu", "us") for name in handbook().entry("allergens", each).facts["names"]}
    meant = allergens_named(tuple(each for each in words if each not in lists), say("larder-free-of"))
    return {*lists & {*words}, *(name for names in meant for name in names)}


def looked_up(
    name: str, *, region: str | None = None, labels: Sequence[Path] = (), shop: "Pantry | None" = None
) -> Shown:
    """Show one ingredient with all that is known of it.

    Parameters
    ----------
    name : str
        Its key, name or another name of it, in any of the four languages.
    region : str, optional
        Key of the region of price and shop; all regions if left out.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.
    shop : Pantry, optional
        The ingredients themselves, in place of the handbook's with those files.

    Raises
    ------
    RecipeError, InputError
        If there is no such ingredient (the sentence names those that look alike), or no such region.

    Examples
    --------
    >>> shown = looked_up("crème de tartre")
    >>> shown.ingredient.key, shown.figures[0]["source"]
    ('cream-of-tartar', 'USDA SR, NDB 18373')
    """
    from lumped.app.shop import shop_with
    from lumped.dough.safety import cautions_of, remarks_on
    from lumped.pantry import regions

    shop = shop_with(labels) if shop is None else shop
    each = shop.find(name)
    return Shown(
        ingredient=each, figures=tuple(_figures(each)),
        offers=tuple(_offer(shop, each.key, place) for place in ((region,) if region else regions())),
        cautions=tuple(found.words for found in cautions_of(each)),
        remarks=tuple(remark.words for remark in remarks_on({each.key: 1.0}, shop)), taken=shop.taken_as(name),
    )  # fmt: skip


def _figures(each: "Ingredient") -> Iterator[dict[str, str]]:
    """The rows of its table but for weights of measures; of a user's own ingredient those of its label."""
    from lumped.reference import handbook

    book = handbook()
    if each.label or each.key not in book.keys("ingredients"):
        for name, value in each.label.items():
            origin = value.provenance
            yield {"quantity": name, "figure": share_text(value), "status": origin.status.value,
                   "source": origin.note, "note": ""}  # fmt: skip
        return
    for quantity, row in book.entry("ingredients", each.key).rows.items():
        if not quantity.startswith("g_per_"):
            spread = f" ({row.low:g} to {row.high:g})" if row.low != row.high else ""
            source = ", ".join((*book.citations(row.value.provenance), *filter(None, (row.page,))))
            yield {"quantity": quantity.replace("_", " "), "figure": f"{row.printed:g} {row.unit}{spread}",
                   "status": row.value.provenance.status.value, "source": source, "note": row.note}  # fmt: skip


def share_text(value: "Value") -> str:
    """Write a share in per cent as labels print it, with its range.

    Examples
    --------
    >>> from lumped.quantities import Value
    >>> share_text(Value.exact(0.713, "")), share_text(Value(mean=0.12, low=0.08, high=0.15, unit=""))
    ('71.3 %', '12 % (8 to 15)')
    """
    from lumped.quantities import short_text

    mean, low, high = (short_text(100 * each, 3) for each in (value.mean, value.low, value.high))
    return f"{mean} %" if low == high else f"{mean} % ({low} to {high})"


def _parts(each: "Ingredient") -> Iterator[str]:
    from lumped.quantities import short_text
    from lumped.reference import handbook

    for key, share in sorted(each.composition.items(), key=lambda item: -item[1]):
        if share > 0:
            yield say("larder-part", name=handbook().name("compounds", key), share=short_text(100 * share, 3))


def _offer(shop: "Pantry", key: str, where: str) -> dict[str, Any]:
    """Price, packs and shop of an ingredient in a region."""
    from lumped.pantry import region, sold

    place, there, found = region(where), sold(key, where), shop.price(key, where)
    packs = ", ".join(f"{1e3 * each:g}" for each in found.packs) if found else ""
    return {
        "region": where, "name": place.name, "currency": place.currency,
        "price_per_kg": found and found.per_mass.as_dict(), "price_words": _price_words(found),
        "worked_out": found and found.worked_out, "dated": found and found.dated,
        "packs_kg": list(found.packs) if found else [],
        "packs_words": say("larder-packs-g", packs=packs) if packs else "–",
        "sold": there.words, "trouble": there.trouble, "sold_status": there.provenance.status.value,
    }  # fmt: skip


def _price_words(found: "Price | None") -> str:
    if found is None:
        return say("larder-unknown-price")
    text = found.per_mass.text()
    return say("larder-worked-out", price=text) if found.worked_out else text


def _status(origin: Any) -> str:
    from lumped.reference import handbook

    return "; ".join((origin.status.value, *handbook().citations(origin)))


def _listed(words: "Sequence[str] | Pantry") -> str:
    return ", ".join(words) or "–"
