"""What a dough is made of: compounds, their formulas, and what they give to water.

An ingredient is so much of each compound; what dissolves gives ions and acids. Formulas close mass, charge and
elements: nothing appears in a dough that did not go in.
"""

import re
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from lumped.reference import handbook

__all__ = ["Compound", "atoms_of", "compound", "compounds", "molar_mass_of"]

_TERM = re.compile(r"([A-Z][a-z]?)(\d*)|\(([^()]*)\)(\d*)")


@dataclass(frozen=True, slots=True, kw_only=True)
class Compound:
    """One compound of a dough.

    Parameters
    ----------
    key, name : str
        What programs and people call it.
    atoms : mapping of str to int
        How many of each element a molecule has; empty for protein, fat and what no table names.
    molar_mass : float or None
        Mass of a mole; None without a formula. [kg/mol]
    density : float
        Density of the dry, solid or liquid stuff. [kg/m³]
    ions : mapping of str to int
        Strong ions that a molecule gives to water, by their key in the handbook's table `ions`.
    acids : mapping of str to int
        Weak acids that it gives, in whatever form, by their key in the table `acids`. Hydrogen is what closes the
        charge.
    dissolves : bool
        Whether water dissolves it.
    holds_water : bool
        Whether it binds water: starch, fibre, protein.
    crystal_water : int
        Molecules of water that one of it takes into its crystals at room temperature.
    """

    key: str
    name: str
    atoms: Mapping[str, int]
    molar_mass: float | None
    density: float
    ions: Mapping[str, int]
    acids: Mapping[str, int]
    dissolves: bool
    holds_water: bool
    crystal_water: int

    @property
    def crystals(self) -> float:
        """Water in its crystals over its own mass. [1]"""
        if not self.crystal_water or not self.molar_mass:
            return 0.0
        return self.crystal_water * molar_mass_of("H2O") / self.molar_mass


@cache
def compound(key: str) -> Compound:
    """Look a compound up.

    Raises
    ------
    HandbookError
        If there is none of that key; the sentence names those that look alike.

    Examples
    --------
    >>> salt = compound("sodium-chloride")
    >>> round(salt.molar_mass, 5), dict(salt.ions)
    (0.05844, {'sodium': 1, 'chloride': 1})
    """
    entry = handbook().entry("compounds", key)
    formula, behaves = entry.facts.get("formula", ""), entry.facts.get("behaves", "")
    return Compound(
        key=key, name=entry.name, atoms=atoms_of(formula), molar_mass=molar_mass_of(formula) if formula else None,
        density=entry.rows["density"].value.mean, ions=entry.facts.get("ions", {}), acids=entry.facts.get("acids", {}),
        dissolves=behaves == "dissolves", holds_water=behaves == "holds-water",
        crystal_water=entry.facts.get("crystal_water", 0),
    )  # fmt: skip


@cache
def compounds() -> tuple[Compound, ...]:
    """Give all compounds in the handbook's order; water is the first.

    Examples
    --------
    >>> compounds()[0].key
    'water'
    """
    return tuple(compound(key) for key in handbook().keys("compounds"))


def atoms_of(formula: str) -> dict[str, int]:
    """Count the atoms of a formula.

    Parameters
    ----------
    formula : str
        Elements with numbers, groups in brackets: "Ca(HCO3)2".

    Examples
    --------
    >>> atoms_of("Ca(HCO3)2")
    {'Ca': 1, 'H': 2, 'C': 2, 'O': 6}
    """
    if _TERM.sub("", formula):
        raise ValueError(f"no formula: {formula!r}")
    found: Counter[str] = Counter()
    for element, count, group, times in _TERM.findall(formula):
        inner = {element: 1} if element else atoms_of(group)
        for each, number in inner.items():
            found[each] += number * int((count if element else times) or 1)
    return dict(found)


def molar_mass_of(formula: str) -> float:
    """Give the mass of a mole by standard atomic weights. [kg/mol]

    Examples
    --------
    >>> round(1e3 * molar_mass_of("KAl(SO4)2"), 2)
    258.19
    """
    book = handbook()
    return sum(count * book.value("elements", element, "weight").mean for element, count in atoms_of(formula).items())
