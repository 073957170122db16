"""What a packet's label leaves out: as in an ingredient of the same sort, or none and up to what is left to a hundred.

Whatever is left out is a range and never a silent nothing. The range of what takes the place of water widens the
water's interval, and the range of salt that of the minerals; the two are what a dough draws.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from lumped.chemistry.compounds import compound, molar_mass_of
from lumped.errors import InputError
from lumped.pantry.ingredient import Ingredient
from lumped.pantry.label import Label
from lumped.quantities import short_text
from lumped.texts import say

__all__ = [
    "SALT_HOLDS", "SUGARS", "Taken", "counts_fibre_within", "is_syrup", "left_out", "percents", "refuse_too_little",
    "sodium_in", "taken_words",
]  # fmt: skip

SUGARS = ("sucrose", "glucose", "fructose", "maltose")
SALT_HOLDS = (compound("sodium-chloride").molar_mass or 0.0) / molar_mass_of("Na")  # salt for a part of sodium
_MAIN = ("fat", "carbohydrate", "protein")
_HALF = 0.5  # of what a similar ingredient holds, either way: from memory
_FIBRE = 1 / 6  # of what no sugar is: wholemeal rye holds a fifth, bran and husks more; from memory
_SALT, _MOST_SALT = 0.001, 0.01  # of a food whose label tells none: from memory
_SALT_LIKE = 0.001  # what a food of an unsalted sort may hold: from memory
_ENOUGH, _ENOUGH_OF_A_LIQUID = 0.5, 0.1  # shares that must be told to know what it is: chosen


@dataclass(frozen=True, slots=True, kw_only=True)
class Taken:
    """A share that no label tells.

    Parameters
    ----------
    name : str
        Which: "fat", "carbohydrate", "sugars", "fibre", "protein", "salt".
    share, low, high : float
        What is taken of it, and what there may be. [1]
    dry : bool
        Whether it stands where there could be water.
    grows : bool
        Whether it gives way and grows where the whole has to be filled.
    sure : float
        What of it the label does tell. [1]
    """

    name: str
    share: float
    low: float
    high: float
    dry: bool = True
    grows: bool = True
    sure: float = 0.0

    def scaled(self, factor: float) -> "Taken":
        """Give so much more of what the label does not tell, if it may grow."""
        if not self.grows:
            return self
        share, low, high = (self.sure + factor * (each - self.sure) for each in (self.share, self.low, self.high))
        return replace(self, share=share, low=low, high=max(min(high, 1.0), share))


def counts_fibre_within(label: Label) -> bool:
    """Tell whether a label's carbohydrate includes fibre: as it says, or as in America where it prints only sodium.

    Examples
    --------
    >>> counts_fibre_within(Label(name="a", salt=0.0)), counts_fibre_within(Label(name="a", sodium=0.0))
    (False, True)
    """
    if label.fibre_within is not None:
        return label.fibre_within
    return label.salt is None and label.sodium is not None


def refuse_too_little(label: Label, shares: Mapping[str, float], left: float) -> None:
    """Refuse a label that tells so little that nobody knows what it is.

    Parameters
    ----------
    label : Label
        What the packet says, without an ingredient that it is like.
    shares : mapping of str to float
        Mass shares that it prints. [1]
    left : float
        What it leaves open. [1]

    Raises
    ------
    InputError
        If the greater part is open, of a liquid nine tenths, while fat, carbohydrate or protein is not told.
    """
    missing = [name for name in _MAIN if name not in shares]
    liquid = label.per == "100 mL" or label.density is not None
    if missing and "water" not in shares and left > 1 - (_ENOUGH_OF_A_LIQUID if liquid else _ENOUGH):
        names = [say(f"label-name-{name}") for name in missing]
        both = names[0] if len(names) == 1 else say("label-and", first=", ".join(names[:-1]), last=names[-1])
        raise InputError("label-too-little", where=label.name, known=short_text(100 * (1 - left)), missing=both)


def left_out(label: Label, shares: Mapping[str, float], like: Ingredient | None, left: float) -> dict[str, Taken]:
    """Give what is taken of each nutrient that a label leaves out.

    Parameters
    ----------
    label : Label
        What the packet says.
    shares : mapping of str to float
        Mass shares that it prints, salt as sodium. [1]
    like : Ingredient or None
        An ingredient of the same sort.
    left : float
        What the printed ones leave to the whole. [1]

    Returns
    -------
    dict of str to Taken
        By name; salt as salt.

    Examples
    --------
    >>> found = left_out(Label(name="syrup"), {"carbohydrate": 0.8}, None, 0.2)
    >>> found["fat"].high, found["sugars"].high, found["salt"].high
    (0.2, 0.8, 0.01)
    """
    found = _as_like(label, shares, like) if like else _alone(label, shares, left)
    return {each.name: each for each in found if each.name not in shares and each.high > 5e-5}


def _as_like(label: Label, shares: Mapping[str, float], like: Ingredient) -> Iterator[Taken]:
    """As in the similar ingredient, half of it either way; sugars as a part of carbohydrate."""
    held, within = like.composition, counts_fibre_within(label)
    sweet = {key: held.get(key, 0.0) for key in SUGARS}
    maltose = sweet["maltose"] if is_syrup(like) else 0.0
    sugars, rest = sum(sweet.values()) - maltose, held.get("starch", 0.0) + maltose
    fibre = shares.get("fibre", held.get("fibre", 0.0))
    inside = fibre if within else 0.0
    if "carbohydrate" in shares:
        told = max(shares["carbohydrate"] - inside, 0.0)
        part = sugars / ((sugars + rest) or 1.0)
        yield Taken(name="sugars", share=told * part, low=told * part * _HALF,
                    high=min(told * part * (1 + _HALF), told), dry=False, grows=False)  # fmt: skip
    else:
        sure = shares.get("sugars", 0.0) + inside
        yield _about("carbohydrate", sure + rest + (0.0 if "sugars" in shares else sugars), sure)
        yield replace(_about("sugars", sugars), dry=False)
    yield from (_about(name, held.get(name, 0.0)) for name in ("fat", "protein"))
    yield replace(_about("fibre", fibre), dry=not within, grows=not within)
    if "sodium" not in shares:
        salt = SALT_HOLDS * sum(sodium_in(like).values())
        most = max(2 * salt, _SALT_LIKE) if salt > 0 and "ions" not in like.roles else 2 * salt
        most = max(min(most, 1.0), salt)
        yield Taken(name="salt", share=salt, low=0.0, high=most, grows=False)


def _about(name: str, share: float, sure: float = 0.0) -> Taken:
    grows = share - sure
    most = max(min(share + _HALF * grows, 1.0), share)  # more than the whole is brought into it later, all three alike
    return Taken(name=name, share=share, low=share - _HALF * grows, high=most, sure=sure)


def is_syrup(like: Ingredient) -> bool:
    """Tell whether what is no sugar of its carbohydrate is maltose and longer sugars, not starch.

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> is_syrup(pantry()["corn-syrup"]), is_syrup(pantry()["plain-flour"])
    (True, False)
    """
    return like.composition.get("maltose", 0.0) > 0 and not like.composition.get("starch", 0.0)


def _alone(label: Label, shares: Mapping[str, float], left: float) -> Iterator[Taken]:
    """None, and up to what is left to the whole; of fibre up to a part of what no sugar is, and of salt a little."""
    sugars, open_main = shares.get("sugars", 0.0), [name for name in _MAIN if name not in shares]
    for name in open_main:
        least = sugars if name == "carbohydrate" else 0.0
        yield Taken(name=name, share=least, low=least, high=least + left)
    within, told = counts_fibre_within(label), shares.get("carbohydrate", 0.0)
    if not open_main:
        food = told - sugars + shares["protein"] + shares["fat"]
        most = _FIBRE * food if within else min(_FIBRE * food, left)
        yield Taken(name="fibre", share=0.0, low=0.0, high=most, dry=not within)
    else:
        yield Taken(name="fibre", share=0.0, low=0.0, high=_FIBRE * told if within else left, dry=not within)
    yield Taken(name="sugars", share=0.0, low=0.0, high=told, dry=False)
    if "sodium" not in shares:
        yield Taken(name="salt", share=min(_SALT, left), low=0.0, high=min(_MOST_SALT, left), grows=False)


def sodium_in(like: Ingredient) -> dict[str, float]:
    """Sodium of an ingredient by the compound that holds it. [1]

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> {key: round(share, 2) for key, share in sodium_in(pantry()["table-salt"]).items()}
    {'sodium-chloride': 0.39}
    """
    counts = ((key, share, compound(key)) for key, share in like.composition.items())
    return {
        key: share * each.ions["sodium"] * molar_mass_of("Na") / (each.molar_mass or 1.0)
        for key, share, each in counts
        if "sodium" in each.ions
    }


def taken_words(taken: Sequence[Taken], like: Ingredient | None, carbohydrate: float) -> Iterator[str]:
    """Say what was taken of what a label leaves out, in figures.

    Parameters
    ----------
    taken : sequence of Taken
        What was taken.
    like : Ingredient or None
        An ingredient of the same sort.
    carbohydrate : float
        Share of carbohydrate that the label prints. [1]
    """
    by_name = {each.name: each for each in taken}
    alone = like is None and carbohydrate > 0.01
    listed = [each for each in taken if each.name != "salt" and not (alone and each.name == "sugars")]
    if listed and like:
        parts = ", ".join(_part("label-part-like", each) for each in listed)
        yield say("label-assumed-like-parts", like=like.name, parts=parts)
    elif listed:
        yield say("label-assumed-no-parts", parts=", ".join(_part("label-part-none", each) for each in listed))
    if alone and "sugars" in by_name:
        yield say("label-assumed-no-sugars", share=short_text(100 * carbohydrate))
    if salt := by_name.get("salt"):
        if like:
            yield say("label-assumed-salt-like", like=like.name, **percents(salt))
        else:
            yield say("label-assumed-salt", **percents(salt))


def _part(sentence: str, each: Taken) -> str:
    return say(sentence, name=say(f"label-name-{each.name}"), **percents(each))


def percents(each: Taken) -> dict[str, str]:
    """Give its share and the ends of its range as sentences write them: two digits.

    Examples
    --------
    >>> percents(Taken(name="fat", share=0.0098, low=0.0049, high=0.0147))
    {'share': '0.98', 'low': '0.49', 'high': '1.5'}
    """
    return {end: short_text(100 * getattr(each, end)) for end in ("share", "low", "high")}
