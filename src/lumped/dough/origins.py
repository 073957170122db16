"""Where each figure of a dough comes from: the laws that made it, and what those laws rest on.

A figure names the laws that yield it (`_MADE_BY`), a law names the laws whose results it takes (`_TAKES`), what nobody
measured of it (`_OPEN`) and its tables (`_TABLES`). A figure's sources are those of all laws on its way; what
stands beside the way is not among them.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field

import numpy as np

from lumped.chemistry.acidity import acids_provenance
from lumped.chemistry.activity import activity_provenance
from lumped.chemistry.compounds import compound, compounds
from lumped.chemistry.density import volume_provenance
from lumped.chemistry.solubility import solubility_provenance
from lumped.chemistry.syrup import thickening_provenance
from lumped.dough.calibrating import Calibration
from lumped.dough.chain import Chain
from lumped.dough.recipe import Recipe
from lumped.pantry import Pantry
from lumped.quantities import Provenance, Value
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["FIGURES", "Origins"]

_MADE_BY = {
    "went_in": ("weighing",), "water_lost": ("steam",), "mass": ("steam",), "hydration": ("contents",),
    "bound_water": ("binding",), "free_water": ("binding",), "liquid_water": ("binding",),
    "salt_dissolved": ("dissolving",), "salt_solid": ("dissolving",), "sugar_dissolved": ("dissolving",),
    "sugar_solid": ("dissolving",), "salt_in_liquid": ("dissolving",),
    "liquid_conductivity": ("brine",), "mobility_left": ("thickening",), "syrup_conductivity": ("brine", "thickening"),
    "liquid_share": ("volume",), "density": ("volume",), "obstruction": ("obstruction",),
    "best_possible": ("brine", "thickening", "volume", "bound"), "resistivity": ("brine", "thickening", "obstruction"),
    "water_activity": ("activity",), "ph": ("acidity",), "sodium": ("steam",), "cost": ("steam",),
}  # fmt: skip
_TAKES = {
    "weighing": (), "contents": ("weighing",), "steam": ("contents",), "binding": ("steam",),
    "dissolving": ("binding",), "volume": ("dissolving",), "acidity": ("volume",), "brine": ("acidity",),
    "thickening": ("dissolving",), "bound": (), "obstruction": ("volume",), "activity": ("dissolving",),
}  # fmt: skip
_OPEN = {
    # what of the beliefs each law takes, or how their names begin
    "weighing": ("mass ", "needed "), "contents": ("moisture ", "minerals "), "steam": ("water_lost", "weighed_after"),
    "binding": ("bound_water", "picture"), "dissolving": ("mobile_single", "mobile_double"), "volume": ("air",),
    "acidity": ("flour_ph", "flour_binding"), "brine": ("brine_error",), "thickening": ("walden_exponent",),
    "bound": ("dry_conductivity",), "activity": ("activity_error",),
    "obstruction": ("archie_exponent", "picture", "percolation", "scatter", "dry_conductivity"),
}  # fmt: skip
_TAUGHT = {"binding", "volume", "obstruction"}  # what measured batches teach
FIGURES = tuple(_MADE_BY)
"""What of a dough has sources of its own."""
_WEIGHTS = ("g_per_", "grain")  # of an ingredient's rows those that say nothing of what is in it
_TRACE = 1e-4  # mass over that of the liquid's water from which a compound's tables count


@dataclass(frozen=True, kw_only=True)
class Origins:
    """What the figures of one dough rest on.

    Parameters
    ----------
    recipe : Recipe
        What went in.
    values : mapping of str to Value
        What is open, by name, as `beliefs` names it.
    chain : Chain
        What came of it.
    shop : Pantry
        What the ingredients are.
    calibration : Calibration or None
        What measured batches taught.
    """

    recipe: Recipe
    values: Mapping[str, Value]
    chain: Chain
    shop: Pantry
    calibration: Calibration | None = None
    _found: dict[str, Provenance] = field(default_factory=dict)

    def of(self, figure: str) -> Provenance:
        """Give where a figure comes from, the laws that made it in its note.

        Parameters
        ----------
        figure : str
            One of `FIGURES`.
        """
        laws = _laws(figure)
        note = say("origin-laws", laws="; ".join(say(f"origin-{each}") for each in laws))
        return Provenance.of([self._part(law) for law in laws], note=note)

    def opened(self, figure: str) -> dict[str, Value]:
        """Give what is open in a figure, by name."""
        names = dict.fromkeys(name for law in _laws(figure) for name in self._open(law))
        return {name: value for name, value in self.values.items() if name in names}

    def _part(self, law: str) -> Provenance:
        if law not in self._found:
            believed = [self.values[name].provenance for name in self._open(law)]
            taught = [] if self.calibration is None or law not in _TAUGHT else [self.calibration.provenance]
            tables = _TABLES[law](self) if law in _TABLES else ()
            self._found[law] = Provenance.of((*tables, *believed, *taught))
        return self._found[law]

    def _open(self, law: str) -> list[str]:
        names = [name for name in self.values if name.startswith(_OPEN[law])]
        weighed = "weighed_after" in names  # it tells what left as steam
        return [name for name in names if not (weighed and name == "water_lost")]

    @property
    def dissolved(self) -> tuple[str, ...]:
        """What is dissolved in its liquid, traces apart."""
        share = np.median(self.chain.dissolved / np.maximum(self.chain.liquid_water, 1e-12), axis=1)
        return tuple(each.key for each, part in zip(compounds(), share, strict=True) if part > _TRACE)


def _laws(figure: str) -> tuple[str, ...]:
    """Name the laws that made a figure, in the order in which they are followed."""
    return tuple(dict.fromkeys(law for each in _MADE_BY[figure] for law in (*_on_the_way(each), each)))


def _on_the_way(law: str) -> Iterator[str]:
    """Name the laws whose results a law takes, the first first."""
    for each in _TAKES[law]:
        yield from _on_the_way(each)
        yield each


def _contents(made: Origins) -> Iterator[Provenance]:
    for key in made.recipe.ingredients:
        yield from (origin for row, origin in made.shop[key].origins.items() if not row.startswith(_WEIGHTS))


def _dissolving(made: Origins) -> Iterator[Provenance]:
    yield solubility_provenance(made.dissolved)


def _volume(made: Origins) -> Iterator[Provenance]:
    yield volume_provenance(made.dissolved)
    there = np.median(made.chain.components, axis=1) > 0
    for each, is_there in zip(compounds(), there.tolist(), strict=True):
        if is_there:
            yield handbook().value("compounds", each.key, "density").provenance


def _acidity(made: Origins) -> Iterator[Provenance]:
    yield acids_provenance(dict.fromkeys(acid for each in made.dissolved for acid in compound(each).acids))


def _brine(made: Origins) -> Iterator[Provenance]:
    yield made.chain.liquid_provenance


def _thickening(made: Origins) -> Iterator[Provenance]:
    yield thickening_provenance(each for each in made.dissolved if not compound(each).ions)


def _activity(made: Origins) -> Iterator[Provenance]:
    yield activity_provenance(made.dissolved)
    yield handbook().value("activity", "mixtures", "ross").provenance
    yield from (row.value.provenance for row in handbook().entry("doughs", "flour-isotherm").rows.values())


_TABLES: Mapping[str, Callable[[Origins], Iterator[Provenance]]] = {
    "contents": _contents, "dissolving": _dissolving, "volume": _volume, "acidity": _acidity, "brine": _brine,
    "thickening": _thickening, "activity": _activity,
}  # fmt: skip
