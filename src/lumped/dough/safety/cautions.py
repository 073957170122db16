"""What to mind with a dough: the gravest first, and last that local rules and qualified people count more.

A caution is there because of what went in, of how the dough is made, or of who is near it.
"""

import datetime
from collections.abc import Mapping

from lumped.dough.safety.bowl import Bowl
from lumped.dough.safety.caution import SEVERITIES, Caution
from lumped.dough.safety.handling import cares, injuries
from lumped.dough.safety.known import caution
from lumped.dough.safety.poisoning import poisonings
from lumped.pantry import Pantry

__all__ = ["cautions_on"]


def cautions_on(
    masses: Mapping[str, float],
    dough_mass: float,
    pantry: Pantry,
    *,
    cooked: str,
    date: datetime.date | None,
    age: float = 2.0,
    dog: float | None = None,
    name: str = "",
    most: Mapping[str, float] | None = None,
) -> tuple[Caution, ...]:
    """Give the cautions on a dough, the gravest first.

    Parameters
    ----------
    masses : mapping of str to float
        What went in of each ingredient. [kg]
    dough_mass : float
        Dough that came out. [kg]
    pantry : Pantry
        What the ingredients are.
    cooked : {"pot", "kettle", "microwave", "not cooked"}
        How it is heated.
    date : date or None
        The day whose law counts; None: no word on the law.
    age : float
        Age of the youngest child who may come by it, 1 to 10 years. [a]
    dog : float or None
        What a dog that may come by it weighs; None: a small one. [kg]
    name : str
        What the dough is called, for the short sentences.
    most : mapping of str to float, optional
        What may have gone in of each ingredient at most; as `masses` if left out. [kg]

    Returns
    -------
    tuple of Caution

    Examples
    --------
    >>> from lumped.pantry import pantry
    >>> found = cautions_on({"plain-flour": 0.25, "table-salt": 0.1, "tap-water": 0.25}, 0.6, pantry(),
    ...                     cooked="not cooked", date=datetime.date(2026, 1, 1))
    >>> found[0].key, found[-1].key
    ('eaten', 'rules')
    """
    bowl = Bowl(
        masses=masses, dough_mass=dough_mass, pantry=pantry, cooked=cooked, date=date, age=age, dog=dog,
        name=name, most=most,
    )  # fmt: skip
    found = [each for kind in (poisonings, injuries, cares) for each in kind(bowl)]
    ranked = sorted(found, key=lambda each: SEVERITIES.index(each.severity))
    return (*ranked, caution("rules"))
