"""The recipe card: one page to cook from, with what the dough will do and what to mind, in one of four languages."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.errors import InputError
from lumped.texts import LANGUAGES, say, speaking

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough import Recipe

__all__ = ["Card", "card", "card_of", "known_language", "write_card"]

CODE_SIZE = 44.0  # mm
_KITCHENS_OF = {
    # language: region whose cups its readers have; a Japanese cup holds 200 mL, so that another's would be a trap
    "ja": "japan", "fr": "europe", "es": "europe",
}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Card:
    """A recipe card.

    Parameters
    ----------
    title, language : str
        Of the recipe; of the card.
    mark : {"carries", "blocks", ""}
        Which mark it bears, "" for none.
    code : str
        The text of its square code, "" if it is too long for one.
    shown : dict
        All that stands on it, as plain text by place.
    """

    title: str
    language: str
    mark: str
    code: str
    shown: dict[str, Any] = field(repr=False)

    def as_dict(self) -> dict[str, Any]:
        """Give it as JSON shows it."""
        return {
            "kind": "card", "schema": 1, "title": self.title, "language": self.language,
            "mark": self.mark or None, "code": self.code or None, **self.shown,
        }  # fmt: skip


def card(
    path: Path, *, on: date, language: str = "en", measures: str | None = None, batches: Sequence[Path] = (),
    labels: Sequence[Path] = (), people: Sequence[str] = (),
) -> Card:  # fmt: skip
    """Make the card of a recipe.

    Parameters
    ----------
    path : Path
        A recipe file.
    on : date
        The day: it stands on the card, and limits of law change.
    language : {"en", "fr", "es", "ja"}
        Language of the card; the recipe's own title and steps stay as they are.
    measures : str, optional
        Whose cups and spoons: a system of measures, a region, or "scale"; if left out those of the language's
        kitchens, on an English card the recipe's own.
    batches : sequence of Path
        Batch files that the prediction learns from; the card names the last one.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.
    people : sequence of str
        For whom it is made, such as "28 of 9 in pairs": the amounts are those of one of so many batches as a large
        household pot needs; those of the recipe if left out.

    Returns
    -------
    Card

    Raises
    ------
    RecipeError, InputError
        If a file can't be read, or there is no such language or system of measures.
    """
    from lumped.app.named import named_by_files

    known_language(language)
    dough = named_by_files(path, batches=batches, labels=labels)
    return card_of(dough, on=on, language=language, measures=measures, people=people)


def card_of(
    dough: "Named", *, on: date, language: str = "en", measures: str | None = None, people: Sequence[str] = ()
) -> Card:
    """Make the card of a recipe that was read; the arguments are those of `card`."""
    from lumped.app.card_facts import gathered
    from lumped.app.card_sentences import (
        allergens_shown,
        amounts_shown,
        careful,
        does,
        face,
        foot,
        for_people,
        steps_shown,
    )  # fmt: skip
    from lumped.workshop.kitchen import in_kitchen
    from lumped.workshop.making import batches_for
    from lumped.workshop.people import read_party

    known_language(language)
    parties = [read_party(each) for each in people]
    facts = gathered(dough, on=on)
    recipe, shop = facts.recipe, facts.shop
    batches = batches_for(recipe, parties, shop) if parties else None
    weighed = recipe if batches is None else batches.recipe
    system = _system(measures or _KITCHENS_OF.get(language), recipe)
    lacks, code = _code(dough.document)
    in_kitchen(weighed, system, shop)  # refuses measures that there are not, in the words of all errors
    with speaking(language):
        lines, shifts = in_kitchen(weighed, system, shop)
        as_written = [say("card-qr-as-written")] if code and batches is not None else []
        shown = {
            "headings": {key: say(f"card-heading-{key}") for key in _HEADINGS},
            "for_people": "" if batches is None else for_people(sum(each.count for each in parties), batches),
            **face(recipe, facts.mark, shop), **amounts_shown(lines, shifts.get("resistivity", 0.0), system, shop),
            **steps_shown(recipe, shop), "does": list(does(facts)), "trial": list(facts.trial.card_words),
            **allergens_shown(facts.care.allergens), "careful": list(careful(facts)),
            "code_words": " ".join([say(f"card-qr{'-' if lacks else ''}{lacks}"), *as_written]),
            "code_alt": say("card-qr-alt"), "foot": list(foot(facts)),
        }  # fmt: skip
    return Card(title=recipe.title, language=language, mark=facts.mark, code=code, shown=shown)


_HEADINGS = ("ingredients", "steps", "does", "trial", "careful", "allergens")


def write_card(
    made: Card, *, pdf: Path | None = None, picture: Path | None = None, paper: str = "a4"
) -> None:  # fmt: skip
    """Write a card as PDF, and its first page as a PNG.

    Raises
    ------
    InputError
        If there is no such paper, a name has another ending, or the file can't be written.
    """
    from lumped.app.writing import ready_to_write, write_whole
    from lumped.paper.cards import card_pdf, card_png

    if pdf is not None:
        ready_to_write(pdf, (".pdf",))
        write_whole(pdf, card_pdf(_for_paper(made), paper=paper))
    if picture is not None:
        ready_to_write(picture, (".png",))
        write_whole(picture, card_png(_for_paper(made), paper=paper))


def _for_paper(made: Card) -> dict[str, Any]:
    from lumped.paper.codes import code_svg
    from lumped.picture.dough_mark import mark_svg

    return {
        "title": made.title, "language": made.language, "mark": made.mark and mark_svg(made.mark == "carries"),
        "code": code_svg(made.code, size=CODE_SIZE) if made.code else "", "code_mm": CODE_SIZE, **made.shown,
    }  # fmt: skip


def known_language(code: str) -> None:
    """See that there is a language.

    Raises
    ------
    InputError
        If there is none; the sentence names all.
    """
    if code not in LANGUAGES:
        raise InputError("card-language", language=code, known=", ".join(LANGUAGES))


def _system(measures: str | None, recipe: "Recipe") -> str:
    """Whose cups and spoons: those of a region, or a system by name; the recipe's own if nothing is asked for."""
    from lumped.pantry import regions
    from lumped.workshop.kitchen import measures_of

    return measures_of(measures, recipe) if measures is None or measures in regions() else measures


def _code(document: dict[str, Any]) -> tuple[str, str]:
    """The longest text of the recipe that a code of the card's size takes, and what it lacks."""
    from lumped.app.recipe_code import recipe_texts
    from lumped.paper.codes import fits_in_code

    return next((each for each in recipe_texts(document) if fits_in_code(each[1], size=CODE_SIZE)), ("none", ""))
