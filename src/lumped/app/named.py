"""A recipe as somebody names it, read with what is its own: ingredients, and what its batches taught.

A file is read with the files that are named beside it. A title or id of the notebook brings the notebook's own
ingredients, and all batches that are kept of it.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.app.given import Given, names_file
from lumped.app.labels import shop_of
from lumped.app.own import batch_of, kneading_of, learnt_words, recipe_of, taught
from lumped.documents import document_in

if TYPE_CHECKING:
    from lumped.app.settings import Settings
    from lumped.dough import Dough, Recipe
    from lumped.dough.batch import Batch
    from lumped.dough.calibrating import Calibration
    from lumped.dough.kneading import Kneading
    from lumped.dough.learning import Lessons
    from lumped.pantry import Pantry

__all__ = ["Named", "dough_of", "named", "named_by_files", "named_in"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Named:
    """A recipe with all that is known of its dough.

    Parameters
    ----------
    recipe : Recipe
        What goes in.
    shop : Pantry
        What the ingredients are: the handbook's, and one's own.
    lessons : Lessons
        What its batches taught.
    words : tuple of str
        The same in sentences: which batches narrow what, and which teach nothing and why.
    left_out : tuple of str
        Which ingredients of the notebook can't be read, and why; the recipe names none of them.
    given : Given or None
        Its text, if it was not read from files.
    document : dict
        What its file says, or what its file would say.
    batch : Batch or None
        The last one that was named.
    """

    recipe: "Recipe"
    shop: "Pantry"
    lessons: "Lessons"
    words: tuple[str, ...] = ()
    left_out: tuple[str, ...] = ()
    given: Given | None = None
    document: dict[str, Any] = field(default_factory=dict, repr=False)
    batch: "Batch | None" = None

    @property
    def calibration(self) -> "Calibration | None":
        """What measured batches taught of the obstruction; None if none was measured."""
        return self.lessons.calibration

    def kneading(self) -> "Kneading":
        """Follow the recipe through in draws, with what its batches taught; the second time a text costs nothing."""
        if self.given is not None:
            return kneading_of(self.given)
        from lumped.dough.kneading import kneading

        return kneading(self.recipe, self.shop, self.calibration)

    @property
    def unfit(self) -> tuple[str, ...]:
        """What to say first: that it is no dough, or does the opposite of what it is for; nothing of a sound one."""
        from lumped.dough.unfit import unfit_words

        return unfit_words(self.kneading())

    def as_dict(self) -> dict[str, Any]:
        """Give what it is unfit for, what its batches taught, what was left out; nothing if there is nothing to say."""
        told = (("unfit", self.unfit), ("taught", self.words), ("left_out", self.left_out))
        return {key: list(each) for key, each in told if each}


def named(
    place: str, *, batches: Sequence[str] = (), labels: Sequence[Path] = (), settings: "Settings | None" = None
) -> Named:  # fmt: skip
    """Read the recipe that somebody names; the notebook is opened only if something of it is named.

    Parameters
    ----------
    place : str
        A recipe file, or a title or id in the notebook with or without @ and a number; one of the notebook learns
        from all batches that are kept of it.
    batches : sequence of str
        Batches to learn from besides, in the order in which they were made: files, or in the notebook.
    labels : sequence of Path
        Ingredient files, for what neither the handbook nor the notebook has.
    settings : Settings, optional
        They say which notebook.

    Raises
    ------
    RecipeError, InputError, NotebookError
        If something can't be found or read; if all are files, also if a batch contradicts its recipe.
    """
    if all(map(names_file, (place, *batches))):
        return named_by_files(Path(place), batches=[Path(each) for each in batches], labels=labels)
    from lumped.app.gathering import gathered, named_batch
    from lumped.app.notebooks import searched_for

    titles = [each for each in (place, *batches) if not names_file(each)]
    with searched_for(titles, settings) as notebook:
        given, left_out = gathered(notebook, place, batches=batches, labels=labels)
        last = named_batch(notebook, batches[-1]) if batches else None
    batch = None if last is None else batch_of(replace(last, labels={**last.labels, **given.labels}))
    return replace(named_in(given), left_out=left_out, batch=batch)


def named_by_files(path: Path, *, batches: Sequence[Path] = (), labels: Sequence[Path] = ()) -> Named:
    """Read a recipe file; the arguments are those of `named`.

    Raises
    ------
    RecipeError, InputError
        If a file can't be read, or a batch contradicts its recipe.
    """
    from lumped.app.shop import shop_with
    from lumped.documents import read_document
    from lumped.dough import read_recipe
    from lumped.dough.batch import read_batch
    from lumped.dough.learning import learnt

    shop = shop_with(labels)
    recipe, read = read_recipe(path, shop), [read_batch(each, shop) for each in batches]
    lessons = learnt(read, recipe, shop)
    return Named(
        recipe=recipe, shop=shop, lessons=lessons, words=learnt_words(read, lessons),
        document=read_document(path, "recipe"), batch=read[-1] if read else None,
    )  # fmt: skip


def named_in(given: Given) -> Named:
    """Read a recipe from its text, with the ingredients and batches that came along.

    Raises
    ------
    RecipeError, InputError
        If the recipe can't be read or can't exist.

    Examples
    --------
    >>> from lumped.app.examples import example_recipe
    >>> named_in(Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml"))).words
    ()
    """
    recipe = recipe_of(given)
    own = taught(given, recipe)
    return Named(
        recipe=recipe, shop=shop_of(given), lessons=own.lessons, words=own.words, given=given,
        document=document_in(given.text, given.name),
    )  # fmt: skip


def dough_of(named: Named) -> "Dough":
    """Work out the dough of a recipe that was read, with what its batches taught."""
    from lumped.dough import knead

    return knead(named.recipe, named.shop, named.calibration, named.lessons.fit)
