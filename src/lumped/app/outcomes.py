"""What really happened on the table, noted in the notebook beside what was predicted."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from lumped import __version__
from lumped.notebook import DERIVED, Notebook, Reference, Revision

__all__ = ["Outcome", "note_outcome", "outcomes_of"]

OF = "sculpture"
"""Name of the link from an outcome to the sculpture that it is of."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """What a part did, as it was noted.

    Parameters
    ----------
    document : str
        Id of the note, to take it back by.
    part, happened, said : str
        The part, what it was seen to do, and what was predicted.
    came_true : bool
        Whether that was predicted.
    made_by, when : str
        Who noted it, and when (UTC).
    sculpture_number : int
        Number of the newest revision of the sculpture that says the same, with the same recipes.
    """

    document: str
    part: str
    happened: str
    said: str
    came_true: bool
    made_by: str
    when: str
    sculpture_number: int


def note_outcome(
    notebook: Notebook, sculpture: Revision, part: Mapping[str, Any], happened: str, *, effort: str
) -> Revision:
    """Note what a part really did, beside what was predicted.

    Parameters
    ----------
    notebook : Notebook
        Where to.
    sculpture : Revision
        The sculpture as it was judged.
    part : mapping
        The part as the verdict's JSON shows it.
    happened : str
        What it was seen to do: "bright", "dim", "dark"; "turning", "still".
    effort : {"quick", "full"}
        How finely it was computed.

    Raises
    ------
    InputError
        If such a part can't be seen to do that.
    """
    from lumped.verdict.outcomes import outcome_body

    body = outcome_body(
        part=part["part"], part_kind=part["kind"], predicted=part["states"], said=part["headline"],
        happened=happened, effort=effort, version=__version__,
    )  # fmt: skip
    return notebook.save("outcome", body, links=_recipes_of(sculpture) | {OF: sculpture.reference})


def _recipes_of(revision: Revision) -> dict[str, Reference]:
    """Give the links to recipes: two revisions of a sculpture may say the same and mean other revisions of them."""
    return {name: target for name, target in revision.links.items() if name not in (OF, DERIVED)}


def outcomes_of(notebook: Notebook, document: str) -> tuple[Outcome, ...]:
    """Give what was noted of all revisions of a sculpture, the newest first; what was taken back is left out."""
    states = [(each.hash, _recipes_of(each)) for each in notebook.history(document)]
    numbers = range(len(states), 0, -1)
    found = []
    for revision in notebook.linking_to(document, kind="outcome"):
        body, judged = notebook.body(revision), (revision.links[OF].hash, _recipes_of(revision))
        found.append(Outcome(
            document=revision.document, part=body["part"], happened=body["happened"], said=body["said"],
            came_true=body["came_true"], made_by=revision.made_by, when=revision.when,
            sculpture_number=next((each for each in numbers if states[each - 1] == judged), 0),
        ))  # fmt: skip
    return tuple(found)
