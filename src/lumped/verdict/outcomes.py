"""What really happened, beside what was predicted: one tap on the table, and it is noted.

A part is seen to do one of a few things that nobody can mistake (a lamp is bright, dim or dark). The prediction is a
range of states; it came true if what happened lies in it.
"""

from collections.abc import Iterable
from pathlib import Path
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints

from lumped.documents import checked
from lumped.errors import InputError
from lumped.notebook import Body, Kind
from lumped.sculpt.scene import PartKind

__all__ = ["OUTCOME", "SEEN", "came_true", "outcome_body", "seen_as"]

SEEN: dict[PartKind, tuple[str, ...]] = {"lamp": ("bright", "dim", "dark"), "motor": ("turning", "still")}
"""What a part can be seen to do, by kind; of the others nothing is seen."""

_SEEN_AS = {"barely-lit": "dim", "too-hot": "bright", "straining": "still"}
Line = Annotated[str, StringConstraints(min_length=1, max_length=200)]


class OutcomeFile(BaseModel):
    """What one part did."""

    model_config = ConfigDict(extra="forbid", frozen=True)
    kind: Literal["outcome"]
    schema_: Literal[1] = Field(alias="schema")
    title: Line
    part: Line = Field(description="Name of the part in its sculpture.")
    part_kind: Line = Field(description="What kind of part it is.")
    predicted: Annotated[list[Line], Field(min_length=1, max_length=10)] = Field(
        description="States that were predicted, from the one as drawn to the ends of what is unknown."
    )
    said: Line = Field(description="The prediction in words.")
    happened: Line = Field(description="What the part was seen to do.")
    came_true: bool = Field(description="Whether that lies in what was predicted.")
    effort: Literal["quick", "full"] = Field(description="How finely the prediction was computed.")
    version: Line = Field(description="The Lumped that made the prediction.")


def seen_as(state: str) -> str:
    """Tell what a state looks like to somebody at the table.

    Examples
    --------
    >>> seen_as("barely-lit"), seen_as("bright")
    ('dim', 'bright')
    """
    return _SEEN_AS.get(state, state)


def came_true(predicted: Iterable[str], happened: str) -> bool:
    """Tell whether what happened lies in what was predicted.

    Examples
    --------
    >>> came_true(["dim", "barely-lit", "dark"], "dark"), came_true(["bright"], "dark")
    (True, False)
    """
    return happened in map(seen_as, predicted)


def outcome_body(
    *, part: str, part_kind: PartKind, predicted: Iterable[str], said: str, happened: str, effort: str, version: str
) -> Body:
    """Give the document that tells what a part did.

    Parameters
    ----------
    part : str
        Its name in the sculpture.
    part_kind : str
        What kind of part it is.
    predicted : iterable of str
        Predicted states.
    said : str
        The prediction in words.
    happened : str
        What it was seen to do: one of `SEEN[part_kind]`.
    effort : str
        How finely the prediction was computed.
    version : str
        Which Lumped made it.

    Raises
    ------
    InputError
        If such a part can't be seen to do that.
    """
    states = list(predicted)
    if happened not in SEEN.get(part_kind, ()):
        raise InputError("outcome-unseen", part=part, happened=happened, choices=", ".join(SEEN.get(part_kind, ())))
    return {
        "title": f"{part}: {happened}", "part": part, "part_kind": part_kind, "predicted": states, "said": said,
        "happened": happened, "came_true": came_true(states, happened), "effort": effort, "version": version,
    }  # fmt: skip


def _check(body: Body, name: str) -> None:
    checked(OutcomeFile, {"kind": "outcome", "schema": 1, **body}, Path(name), failure=InputError)


OUTCOME = Kind(name="outcome", schema=1, check=_check)
"""Outcomes; form 1 is the only one there was."""
