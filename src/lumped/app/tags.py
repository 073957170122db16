"""Labels for bags and trays: which dough, made when, what it holds, and that it is no food."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lumped.errors import InputError
from lumped.texts import say, speaking

if TYPE_CHECKING:
    from lumped.app.named import Named
    from lumped.dough.recipe import Recipe
    from lumped.pantry import Pantry

__all__ = ["Tags", "tags", "tags_of", "write_tags"]

_MOST = 200
_CODE_SIZE = 20.0  # mm, on a bag; it is larger on a tray
_HASH = 16  # digits: as many as tell all recipes of a school apart


@dataclass(frozen=True, slots=True, kw_only=True)
class Tags:
    """The labels of a dough.

    Parameters
    ----------
    title, language : str
        Of the recipe; of the labels.
    mark : {"carries", "blocks", ""}
        Which mark they bear, "" for none.
    code : str
        The text of their square code; in it a long title is shortened.
    bags, trays : int
        How many of each.
    shown : dict
        What stands on them.
    """

    title: str
    language: str
    mark: str
    code: str
    bags: int
    trays: int
    shown: dict[str, str] = field(repr=False)

    def as_dict(self) -> dict[str, Any]:
        """Give them as JSON shows them."""
        return {
            "kind": "tags", "schema": 1, "title": self.title, "language": self.language,
            "mark": self.mark or None, "bags": self.bags, "trays": self.trays,
            "code": self.code, **self.shown,
        }  # fmt: skip


def tags(
    path: Path, *, made_on: date | None = None, language: str = "en", bags: int = 8, trays: int = 1, tare: str = "",
    batch: Path | None = None, labels: Sequence[Path] = (),
) -> Tags:  # fmt: skip
    """Make the labels of a dough.

    Parameters
    ----------
    path : Path
        A recipe file.
    made_on : date, optional
        When the dough was made; the batch's day, or else a line to write on.
    language : {"en", "fr", "es", "ja"}
        Language of the labels.
    bags, trays : int
        How many small ones, and how many large ones that stand when they are folded.
    tare : str
        What the empty bag weighs: "6 g"; left out, a line to write on.
    batch : Path, optional
        The batch file of what is in the bags.
    labels : sequence of Path
        Ingredient files, for what the handbook does not have.

    Raises
    ------
    RecipeError, InputError
        If a file can't be read, or there can't be so many labels, such a weight, or such a language.
    """
    from lumped.app.named import named_by_files

    dough = named_by_files(path, batches=[batch] if batch else [], labels=labels)
    return tags_of(dough, made_on=made_on, language=language, bags=bags, trays=trays, tare=tare)


def tags_of(
    dough: "Named", *, made_on: date | None = None, language: str = "en", bags: int = 8, trays: int = 1, tare: str = ""
) -> Tags:
    """Make the labels of a recipe that was read, of the batch that was named with it; the arguments of `tags`."""
    from lumped.app.card_sentences import allergens_shown, face
    from lumped.app.card_words import day_text, unread
    from lumped.app.cards import known_language
    from lumped.dough.safety import allergens_of

    known_language(language)
    if not (0 <= bags <= _MOST and 0 <= trays <= _MOST and bags + trays > 0):
        raise InputError("tags-count", bags=str(bags), trays=str(trays), most=str(_MOST))
    recipe, shop, one, weight = dough.recipe, dough.shop, dough.batch, _tare(tare)
    day = made_on or (one.made_on if one else None)
    inside, mark = one.recipe if one else recipe, _mark(dough)
    found, known = allergens_of(inside.masses, shop), _recipe_hash(dough.document)
    code = _code(recipe.title, recipe.kind, day, known)
    poisons = tuple(_poisons(inside, shop))
    with speaking(language):
        said = face(recipe, mark, shop)
        shown = {
            "what": said["what"], "mark_words": said["mark_words"], "not_food": said["not_food"],
            "made": say("tags-made"), "made_on": day_text(day) if day else "", "tare_words": say("tags-tare"),
            "tare": say("card-grams", amount=_localised(weight)) if weight else "", "gross_words": say("tags-gross"),
            "hash": say("tags-hash", hash=known), "fold": say("tags-fold"), "code_alt": say("tags-qr-alt"),
            **allergens_shown(found), "careful": " ".join(say(f"card-careful-{each}") for each in poisons),
            "foot": " ".join([say("tags-foot"), *([said["invented"]] if said["invented"] else []), *unread()]),
        }  # fmt: skip
    return Tags(title=recipe.title, language=language, mark=mark, code=code, bags=bags, trays=trays, shown=shown)


def _poisons(recipe: "Recipe", shop: "Pantry") -> Iterator[str]:
    """Name the cautions on what in a dough poisons a child by its amount; "not food" stands on a label anyway."""
    from lumped.dough.kneading import knead_middle
    from lumped.dough.safety import cautions_on

    mass = float(knead_middle(recipe, shop).mass[0])
    for each in cautions_on(recipe.masses, mass, shop, cooked=recipe.cooked, date=None, most=recipe.most):
        if each.severity == "poison" and each.when == "amount" and each.key.endswith("-child"):
            yield each.key


def _mark(dough: "Named") -> str:
    """What the mark says: of the recipe, and no other of the batch as it was weighed."""
    from lumped.app.card_facts import true_mark
    from lumped.app.named import dough_of
    from lumped.dough import knead

    marks = {true_mark(dough_of(dough))}
    if dough.batch is not None:
        marks.add(true_mark(knead(dough.batch.recipe, dough.shop, dough.calibration)))
    return marks.pop() if len(marks) == 1 else ""


def write_tags(made: Tags, path: Path, *, paper: str = "a4") -> None:
    """Write labels as PDF.

    Raises
    ------
    InputError
        If there is no such paper, the name has another ending, or the file can't be written.
    """
    from lumped.app.writing import ready_to_write, write_whole
    from lumped.paper.cards import tags_pdf
    from lumped.paper.codes import code_svg
    from lumped.picture.dough_mark import mark_svg

    ready_to_write(path, (".pdf",))
    data = {
        "title": made.title, "language": made.language, "bags": made.bags, "trays": made.trays,
        "mark": made.mark and mark_svg(made.mark == "carries"), "code": code_svg(made.code, size=_CODE_SIZE),
        **made.shown,
    }  # fmt: skip
    write_whole(path, tags_pdf(data, paper=paper))


def _tare(text: str) -> float:
    """What the empty bag weighs; 0 if nobody said. [kg]"""
    from lumped.quantities import parse_quantity

    if not text.strip():
        return 0.0
    mass = parse_quantity(text, "mass")
    if not 0 < mass < 10:
        raise InputError("tags-tare-odd", tare=text)
    return mass


def _localised(mass: float) -> str:
    from lumped.app.card_words import local
    from lumped.quantities import short_text

    return local(short_text(1e3 * mass, 4))


def _recipe_hash(document: dict[str, Any]) -> str:
    """The first digits of the recipe's hash: equal recipes have equal ones, however their files are laid out."""
    from lumped.notebook.canonical import hash_of

    return hash_of(document)[:_HASH]


def _code(title: str, kind: str, day: date | None, known: str) -> str:
    """What a bag is, in a few lines; the title is shortened until its squares are large enough."""
    from lumped.app.recipe_code import compact
    from lumped.paper.codes import fits_in_code

    made = {} if day is None else {"made_on": day}
    shorter = (title, *(f"{title[:letters].rstrip()}…" for letters in range(len(title) - 1, -1, -1)))
    texts = (compact({"kind": "bag", "title": each, "dough": kind, **made, "recipe": known}) for each in shorter)
    return next(text for text in texts if fits_in_code(text, size=_CODE_SIZE))
