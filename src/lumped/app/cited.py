"""Every source that a dough's figures stand on, by how much they are worth."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.texts import say

if TYPE_CHECKING:
    from lumped.dough.kneading import Kneading
    from lumped.pantry import Pantry

__all__ = ["Cited", "cited"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Cited:
    """What the figures of a dough stand on.

    Parameters
    ----------
    title : str
        Of the recipe.
    invented : bool
        Whether the recipe is invented.
    groups : mapping of str to tuple of (str, str, str)
        By status, the strongest first: what, its figure ("" for many), where it stands.
    books : tuple of str
        The sources in full.
    """

    title: str
    invented: bool
    groups: dict[str, tuple[tuple[str, str, str], ...]]
    books: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "kind": "sources", "schema": 1, "title": self.title, "invented": self.invented, "sources": list(self.books),
            "by_status": {
                status: [{"what": what, "figure": figure, "source": source} for what, figure, source in rows]
                for status, rows in self.groups.items()
            },
        }  # fmt: skip


def cited(path: Path, *, batches: Sequence[Path] = (), labels: Sequence[Path] = ()) -> Cited:
    """List the sources of a dough's figures.

    Parameters
    ----------
    path : Path
        A recipe file.
    batches, labels : sequence of Path
        Batch files that the prediction learns from, and ingredient files.

    Raises
    ------
    RecipeError, InputError
        If a file can't be read, or the recipe can't exist.
    """
    from lumped.app.shop import shop_with
    from lumped.dough import read_recipe
    from lumped.dough.batch import read_batch
    from lumped.dough.kneading import kneading
    from lumped.dough.learning import learnt
    from lumped.dough.origins import FIGURES
    from lumped.quantities import Status
    from lumped.reference import handbook

    shop = shop_with(labels)
    recipe = read_recipe(path, shop)
    done = kneading(recipe, shop, learnt([read_batch(each, shop) for each in batches], recipe, shop).calibration)
    groups: dict[str, list[tuple[str, str, str]]] = {each.value: [] for each in Status}
    for status, row in (*_rows_of_ingredients(done, shop), *_curves(), *_open(done, shop)):
        groups[status].append(row)
    book = handbook()
    cited = dict.fromkeys(key for figure in FIGURES for key in done.origins.of(figure).sources)
    return Cited(
        title=recipe.title, invented=recipe.invented,
        groups={status: tuple(rows) for status, rows in groups.items() if rows},
        books=tuple(book.sources[key].text() for key in cited if key in book.sources),
    )  # fmt: skip


def _rows_of_ingredients(done: "Kneading", shop: "Pantry") -> Iterator[tuple[str, tuple[str, str, str]]]:
    """Rows of composition, those of one ingredient, source, page and status together."""
    from lumped.app.larder import quantity_words
    from lumped.reference import handbook

    book = handbook()
    for key in done.recipe.ingredients:
        together: dict[tuple[str, str], list[str]] = {}
        rows = book.entry("ingredients", key).rows if key in book.keys("ingredients") else {}
        for quantity, origin in shop[key].origins.items():
            if quantity.startswith("g_per_"):
                continue  # the weights that this recipe uses are among what is open
            page = rows[quantity].page if quantity in rows else ""
            source = ", ".join((*book.citations(origin), *filter(None, (page,))))
            together.setdefault((origin.status.value, source), []).append(quantity_words(quantity))
        for (status, source), quantities in together.items():
            what = say("sources-figures", ingredient=shop[key].name, rows=", ".join(quantities))
            yield status, (what, "", source or say("sources-none"))


def _curves() -> Iterator[tuple[str, tuple[str, str, str]]]:
    from lumped.app.sources import CURVES
    from lumped.reference import handbook

    book = handbook()
    for key in CURVES:
        curve = book.curve(key)
        pages = "; ".join(dict.fromkeys(filter(None, curve.pages)))
        source = ", ".join((*book.citations(curve.provenance), *filter(None, (pages,))))
        yield curve.provenance.status.value, (curve.name, "", source)


def _open(done: "Kneading", shop: "Pantry") -> Iterator[tuple[str, tuple[str, str, str]]]:
    """What the recipe leaves open, with its interval."""
    from lumped.app.sources import opened
    from lumped.reference import handbook

    for words, value in opened(done, shop):
        source = ", ".join(handbook().citations(value.provenance)) or say("sources-none")
        yield value.provenance.status.value, (words, value.text(), source)
