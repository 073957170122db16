"""Several recipes that lie on one table, as somebody names them: files and titles of the notebook, with one shop."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.app.given import Given, names_file
from lumped.app.labels import left_out_words, shop_of, sound_labels
from lumped.app.own import recipe_of
from lumped.app.shop import shop_with
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.app.settings import Settings
    from lumped.dough import Recipe
    from lumped.pantry import Pantry

__all__ = ["Together", "read_together"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Together:
    """Recipes that lie on one table.

    Parameters
    ----------
    places : tuple of str
        As they were named.
    recipes : tuple of Recipe
        What goes in.
    titles : tuple of str
        What each is called; one of the notebook with its revision.
    shop : Pantry
        What their ingredients are: the handbook's, and one's own.
    left_out : tuple of str
        Which ingredients of the notebook can't be read, and why.
    """

    places: tuple[str, ...]
    recipes: "tuple[Recipe, ...]"
    titles: tuple[str, ...]
    shop: "Pantry"
    left_out: tuple[str, ...] = ()

    @classmethod
    def of(cls, dough: "Named") -> "Together":
        """Give one recipe that was read."""
        recipe = dough.recipe
        return cls(places=(recipe.title,), recipes=(recipe,), titles=(recipe.title,), shop=dough.shop)

    @property
    def unfit(self) -> tuple[str, ...]:
        """What to say first: which is no dough, or does the opposite of what it is for; nothing of sound ones."""
        from lumped.dough.kneading import kneading
        from lumped.dough.unfit import unfit_words

        found = zip(self.names, (unfit_words(kneading(each, self.shop)) for each in self.recipes), strict=True)
        told = [(name, words) for name, all_words in found for words in all_words]
        return tuple(words if len(self.recipes) == 1 else say("unfit-of", title=name, words=words)
                     for name, words in told)  # fmt: skip

    def as_dict(self) -> dict[str, Any]:
        """Give which are unfit, and what was left out, as JSON shows it; nothing if there is nothing to say."""
        return {key: list(each) for key, each in (("unfit", self.unfit), ("left_out", self.left_out)) if each}

    @property
    def names(self) -> tuple[str, ...]:
        """What each is called at the table, no two alike."""
        from lumped.dough.naming import told_apart

        return tuple(told_apart([each.title for each in self.recipes]))


def read_together(
    places: Sequence[str], *, labels: Sequence[Path] = (), settings: "Settings | None" = None
) -> Together:  # fmt: skip
    """Read recipes that somebody names; the notebook is opened only if something of it is named.

    Parameters
    ----------
    places : sequence of str
        Each a file, or a title or id in the notebook with or without @ and a number.
    labels : sequence of Path
        Ingredient files, for what neither the handbook nor the notebook has.
    settings : Settings, optional
        They say which notebook.

    Raises
    ------
    RecipeError, InputError, NotebookError
        If one of them can't be found or read, or is no recipe.
    """
    from lumped.dough import read_recipe

    kept = [place for place in places if not names_file(place)]
    found, own = _from_notebook(kept, settings) if kept else ({}, {})
    taken = {title: text for given in found.values() for title, text in given.labels.items()}
    shop = shop_with(labels, shop_of(Given(name="", text="", labels=taken)))
    recipes = tuple(
        recipe_of(found[place], shop) if place in found else read_recipe(Path(place), shop) for place in places
    )
    titles = (found[place].name if place in found else each.title for place, each in zip(places, recipes, strict=True))
    return Together(
        places=tuple(places), recipes=recipes, titles=tuple(titles), shop=shop, left_out=left_out_words(own, taken)
    )


def _from_notebook(places: Sequence[str], settings: "Settings | None") -> tuple[dict[str, Given], dict[str, str]]:
    """Give recipes by what they are called, with the notebook's own ingredients; and the texts of all of these.

    The newest of an ingredient goes before the one that a recipe was saved with, if it can be read.
    """
    from lumped.app.gathering import given_from, own_labels, recipe_kept
    from lumped.app.notebooks import searched_for

    found = {}
    with searched_for(places, settings) as notebook:
        own = own_labels(notebook)
        for place in places:
            revision = recipe_kept(notebook, place)
            name = say("beside-revision", title=revision.title, number=revision.number)
            given = given_from(notebook, revision)
            found[place] = replace(given, name=name, labels={**given.labels, **sound_labels(own)})
    return found, own
