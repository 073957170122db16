"""What to mind as rows of words and figures, the same for a terminal and a page."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.care import Care, CareTable
    from lumped.dough.safety import Dose, Helping
    from lumped.quantities import Provenance, Value
    from lumped.reference import Row

__all__ = ["DoseRow", "Standing", "dose_rows", "metal_rows", "packets_to_read", "standing"]

_GRAMS, _MG_PER_KG, _PER_CENT = 1e3, 1e6, 100
_SALTY = 0.01  # share of salt from which a dough is no longer like food


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """Whether a dough may stand on the table.

    Parameters
    ----------
    dough : str
        Its name.
    state : {"leaves", "asks", "stays"}
        Whether.
    words : str
        The same in words.
    because : tuple of str
        Ingredients with the needs that they trouble.
    """

    dough: str
    state: str
    words: str
    because: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class DoseRow:
    """A helping or a dose in words.

    Parameters
    ----------
    key : str
        Which.
    words, amount, held : str
        What it is, how much of the substance, and how much dough holds it (of a helping: what share of a day it is).
    source, note : str
        Where the dose was published, or what it is worth; and what is to be known of it.
    provenance : Provenance
        Where all of its figures come from.
    """

    key: str
    words: str
    amount: str
    held: str
    source: str
    note: str
    provenance: "Provenance"


def standing(found: "CareTable") -> list[Standing]:
    """Tell for each dough whether it may stand on the table, and because of what not."""
    states = {dough: state for state in ("leaves", "asks", "stays") for dough in getattr(found.fit, state)}
    return [
        Standing(dough=each.name, state=states[each.name], words=say(f"care-{states[each.name]}"),
                 because=tuple(_because(each, found)))
        for each in found.doughs
    ]  # fmt: skip


def _because(dough: "Care", found: "CareTable") -> Iterator[str]:
    """Say each ingredient with the needs that it troubles, what is certain first."""
    for certain, key in ((True, "care-because"), (False, "care-because-perhaps")):
        needs: dict[str, list[str]] = {}
        for each in found.fit.reasons:
            if each.dough == dough.name and each.certain == certain:
                needs.setdefault(each.ingredient, []).append(each.need)
        for ingredient, troubled in needs.items():
            yield say(key, ingredient=dough.names[ingredient], needs=", ".join(troubled))


def packets_to_read(found: "CareTable") -> dict[str, list[str]]:
    """Name by dough the ingredients that somebody must look up before the dough comes to the table."""
    names = {each.name: each.names for each in found.doughs}
    packets: dict[str, list[str]] = {}
    for each in found.fit.reasons:
        if each.dough in found.fit.asks and names[each.dough][each.ingredient] not in packets.get(each.dough, []):
            packets.setdefault(each.dough, []).append(names[each.dough][each.ingredient])
    return packets


def dose_rows(dough: "Care") -> list[DoseRow]:
    """Write helpings, if there is salt to speak of, and the doses in dough that somebody may get down."""
    return [*(_helping(each) for each in dough.helpings if dough.salt > _SALTY), *(_dose(each) for each in dough.near)]


def _helping(each: "Helping") -> DoseRow:
    from lumped.quantities import short_text

    return DoseRow(
        key=f"helping-{each.key}", words=say(f"care-helping-{each.key}"), provenance=each.provenance,
        amount=say("care-grams", grams=short_text(_GRAMS * each.salt)),
        held=say(
            "care-helping-held", day=short_text(_PER_CENT * each.of_a_day),
            lethal=short_text(_PER_CENT * each.of_lethal), dog=short_text(_PER_CENT * each.of_illness),
        ), source=say("care-helping-source", day=_short("sacn-2003"), child=_short("rcpch-2009")),
        note=each.words,
    )  # fmt: skip


def _dose(each: "Dose") -> DoseRow:
    from lumped.reference import handbook

    row = handbook().row("limits", each.key, each.figure)
    return DoseRow(
        key=f"dose-{each.key}-{each.figure}", words=say(f"care-dose-{each.key}-{each.figure}"),
        amount=say("care-grams", grams=_from_to(each.amount)), provenance=each.provenance,
        held=say("care-grams-of-dough", grams=_from_to(each.dough)),
        source=_where(row),
        note=each.words,
    )  # fmt: skip


def _where(row: "Row") -> str:
    """Say where a figure was printed, or what it is worth."""
    origin = row.value.provenance
    return ", ".join((*map(_short, origin.sources), row.page.split(",")[0])) if origin.sources else origin.status.value


def _short(source: str) -> str:
    from lumped.reference import handbook

    return handbook().sources[source].short


def _from_to(mass: "Value") -> str:
    from lumped.quantities import short_text

    low, high = short_text(_GRAMS * mass.low), short_text(_GRAMS * mass.high)
    return low if low == high else say("care-from-to", start=low, end=high)


def metal_rows(dough: "Care") -> list[tuple[str, ...]]:
    """Write each element, its shares, the limits of the day and from when to when they hold."""
    return [
        (
            say(f"care-element-{each.element}"), _share(each.share), _share(each.share_dry), _limit(each.pliable.mean),
            _limit(each.sticky.mean),
            say("care-from-to", start=each.valid_from.isoformat(), end=each.valid_to.isoformat())
            if each.valid_to else say("care-from", start=each.valid_from.isoformat()),
        )
        for each in dough.migration
    ]  # fmt: skip


def _share(share: float) -> str:
    from lumped.quantities import rounded_text

    return say("care-mg-per-kg", figure=rounded_text(_MG_PER_KG * share))


def _limit(share: float) -> str:
    """Write a limit of the law to the last digit that it prints."""
    from lumped.quantities import short_text

    return say("care-mg-per-kg", figure=short_text(_MG_PER_KG * share, 6))
