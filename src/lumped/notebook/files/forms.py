"""The form of revisions, series and stretches in files: which keys there are, and how a record becomes a table."""

import re
from collections.abc import Mapping
from typing import Annotated, Any, Literal, TypeVar

from pydantic import AfterValidator, BaseModel, ConfigDict, Field, ValidationError

from lumped.errors import InputError
from lumped.notebook.canonical import Body
from lumped.notebook.lines import LINE_LIMIT, NOTE_LIMIT, TITLE_LIMIT, UNIT_LIMIT, plain_line, shown
from lumped.notebook.moments import as_iso, read_iso
from lumped.notebook.records import Revision, Series
from lumped.notebook.reference import ID, Reference

__all__ = [
    "FORM",
    "SEAL",
    "BundleForm",
    "DocumentForm",
    "HistoryForm",
    "ReadingsForm",
    "RevisionForm",
    "SavedForm",
    "SeriesForm",
    "StretchForm",
    "TopForm",
    "as_revision",
    "as_series",
    "fitted",
    "refuse_other_form",
    "revision_table",
    "series_table",
]

FORM = 1
"""Number of the form of bundles and plain files; a newer one is refused."""

LARGEST_NUMBER = 2**31 - 1
SEAL = re.compile("[0-9a-f]{64}")
_REFERENCE = rf"^{ID}@[0-9a-f]{{64}}$"
_MOMENT = r"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{6})?Z$"


def _line(limit: int) -> Any:
    return Annotated[str, Field(max_length=limit), AfterValidator(lambda text: plain_line(text, limit))]


_Id = Annotated[str, Field(pattern=f"^{ID}$", description="A UUID in lower case.")]
_Seal = Annotated[str, Field(pattern=r"^[0-9a-f]{64}$", description="SHA-256.")]
_Moment = Annotated[str, Field(pattern=_MOMENT, description="UTC; microseconds only where there are some.")]
_Link = Annotated[str, Field(pattern=_REFERENCE, description="id@hash of a revision in this notebook.")]
_Count = Annotated[int, Field(ge=1, le=LARGEST_NUMBER)]


class _Form(BaseModel):
    model_config = ConfigDict(strict=True, extra="forbid", frozen=True, populate_by_name=False)


class RevisionForm(_Form):
    """A revision without its body; what is empty is left out."""

    number: _Count
    form: _Count = Field(alias="schema", description="Form in which the body was written.")
    title: _line(TITLE_LIMIT) = ""  # type: ignore[valid-type]
    hash: str = Field("", pattern=r"^([0-9a-f]{64})?$", description="SHA-256 of the body (RFC 8785).")
    made_by: _line(LINE_LIMIT) = ""  # type: ignore[valid-type]
    at: _Moment
    note: _line(NOTE_LIMIT) = ""  # type: ignore[valid-type]
    restored: _Count | None = None
    links: dict[str, _Link] = {}
    seal: _Seal


class SavedForm(RevisionForm):
    """A revision with its body; null in a removal."""

    body: dict[str, Any] | None


class DocumentForm(_Form):
    """A document: its revisions, the first first."""

    id: _Id
    kind: _line(LINE_LIMIT)  # type: ignore[valid-type]
    revisions: list[SavedForm] = Field(min_length=1)


class HistoryForm(_Form):
    """What stands at the top of a document's history."""

    document: _Id
    kind: _line(LINE_LIMIT)  # type: ignore[valid-type]


class TopForm(_Form):
    """What stands at the top of a notebook's plain files."""

    kind: Literal["notebook"]
    form: Literal[1] = Field(alias="schema")
    id: _Id
    fingerprint: _Seal
    about: _line(NOTE_LIMIT) = ""  # type: ignore[valid-type]


class ReadingsForm(_Form):
    """Readings as columns, in the order in which they were written down; remarks by number, from 1."""

    at_us: list[int] = Field(description="Microseconds since 1970, UTC.")
    value: list[float | None] = Field(description="In the unit of the series; null where the remark says why.")
    remarks: dict[str, str] = {}


class StretchForm(_Form):
    """Readings that were committed together."""

    first: _Count
    count: _Count
    seal: _Seal


class SeriesForm(_Form):
    """A series without its readings; what is empty is left out."""

    id: _Id
    title: _line(TITLE_LIMIT) = ""  # type: ignore[valid-type]
    unit: _line(UNIT_LIMIT) = ""  # type: ignore[valid-type]
    instrument: _line(LINE_LIMIT) = ""  # type: ignore[valid-type]
    method: _line(LINE_LIMIT) = ""  # type: ignore[valid-type]
    made_by: _line(LINE_LIMIT) = ""  # type: ignore[valid-type]
    at: _Moment
    about: _Link | None = None
    seal: _Seal


class MeasuredForm(SeriesForm):
    """A series with its readings."""

    readings: ReadingsForm
    stretches: list[StretchForm]


class BundleForm(_Form):
    """A whole notebook in one JSON object."""

    kind: Literal["notebook"]
    form: Literal[1] = Field(alias="schema")
    id: _Id
    fingerprint: _Seal = Field(description="Hash over the newest seals: nothing is missing if it is right.")
    documents: list[DocumentForm]
    series: list[MeasuredForm]


Model = TypeVar("Model", bound=BaseModel)


def fitted(model: type[Model], table: object, where: str) -> Model:
    """Hold a table against its form.

    Parameters
    ----------
    model : type
        One of the forms.
    table : object
        What was read.
    where : str
        Its place, for messages.

    Raises
    ------
    InputError
        With the first thing that is wrong.
    """
    try:
        return model.model_validate(table)
    except ValidationError as error:
        first = error.errors(include_url=False, include_input=False)[0]
        cause = (first.get("ctx") or {}).get("error")
        problem = str(cause) if isinstance(cause, InputError) else first["msg"] + "."
        key = " › ".join(shown(step, 40) for step in first["loc"]) or "–"
        raise InputError("bundle-key", where=shown(where), key=key, problem=shown(problem, 200)) from None
    except RecursionError:
        raise InputError("bundle-too-deep", limit=32) from None


def refuse_other_form(table: Mapping[str, Any], where: str) -> None:
    """See that something calls itself a notebook, of a form known here.

    Raises
    ------
    InputError
        If it is another kind, or was written by a newer Lumped.
    """
    kind, form = table.get("kind"), table.get("schema")
    if kind != "notebook":
        raise InputError("bundle-other-kind", file=shown(where), found=shown(kind if kind is not None else "nothing"))
    if isinstance(form, int | float) and not isinstance(form, bool) and form > FORM:
        raise InputError("bundle-newer", file=shown(where), form=shown(form), known=str(FORM))


def revision_table(revision: Revision) -> dict[str, object]:
    """Give a revision as a table, without its body."""
    return {**revision.envelope(), "seal": revision.seal}


def as_revision(form: RevisionForm, *, document: str, kind: str, body: Body | None) -> Revision:
    """Make the record of a revision."""
    return Revision(
        document=document, kind=kind, number=form.number, schema=form.form, title=form.title, body=body,
        hash=form.hash, made_by=form.made_by, at=_moment(form.at), note=form.note, restored=form.restored,
        links={name: Reference.read(each) for name, each in form.links.items()}, seal=form.seal,
    )  # fmt: skip


def series_table(series: Series) -> dict[str, object]:
    """Give a series as a table, without its readings."""
    return {**series.envelope(), "seal": series.seal}


def as_series(form: SeriesForm) -> Series:
    """Make the record of a series."""
    return Series(
        id=form.id, title=form.title, unit=form.unit, instrument=form.instrument, method=form.method,
        made_by=form.made_by, at=_moment(form.at), about=Reference.read(form.about) if form.about else None,
        seal=form.seal,
    )  # fmt: skip


def _moment(text: str) -> int:
    moment = read_iso(text)
    if as_iso(moment) != text:
        raise InputError("moment-unreadable", text=shown(text))
    return moment
