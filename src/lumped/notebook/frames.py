"""What is in a notebook as pandas frames, for whoever works on in Python."""

from datetime import datetime
from typing import TYPE_CHECKING

from lumped.errors import InputError

if TYPE_CHECKING:
    import pandas as pd

    from lumped.notebook.notebook import Notebook

__all__ = ["Frames"]


class Frames:
    """The frames of one notebook: `notebook.frames`.

    Examples
    --------
    >>> from tempfile import TemporaryDirectory
    >>> from lumped.notebook import open_notebook
    >>> with TemporaryDirectory() as folder, open_notebook(folder) as notebook:
    ...     saved = notebook.save("note", {"title": "Salt", "text": "Coarse."})
    ...     notebook.frames.documents()["title"].tolist()
    ['Salt']
    """

    def __init__(self, notebook: "Notebook") -> None:
        self._notebook = notebook

    def documents(self, *, kind: str | None = None, words: str = "", removed: bool = False) -> "pd.DataFrame":
        """Give the documents by id: kind, title, number of the newest revision, hash, made_by, at, begun (UTC)."""
        import pandas as pd

        listed = self._notebook.entries(kind=kind, words=words, removed=removed)
        columns = ("kind", "title", "number", "hash", "made_by", "at", "begun")
        frame = pd.DataFrame([[getattr(each, name) for name in columns] for each in listed], columns=list(columns))
        frame.index = pd.Index([each.document for each in listed], name="document", dtype="str")
        return _with_moments(frame, "at", "begun")

    def history(self, document: str) -> "pd.DataFrame":
        """Give the revisions of a document by number: title, schema, hash, made_by, at (UTC), note, restored, seal."""
        import pandas as pd

        revisions = self._notebook.history(document)
        columns = ("title", "schema", "hash", "made_by", "at", "note", "restored", "seal")
        frame = pd.DataFrame([[getattr(each, name) for name in columns] for each in revisions], columns=list(columns))
        frame["restored"] = frame["restored"].astype("Int64")
        frame.index = pd.Index([each.number for each in revisions], name="number")
        return _with_moments(frame, "at")

    def bodies(self, kind: str) -> "pd.DataFrame":
        """Give the newest bodies of a kind by document, a column for each key; inner keys are joined by a point."""
        import pandas as pd

        newest = [self._notebook.revision(each.document) for each in self._notebook.entries(kind=kind)]
        frame = pd.json_normalize([dict(self._notebook.body(each)) for each in newest])
        frame.index = pd.Index([each.document for each in newest], name="document", dtype="str")
        return frame

    def series(self) -> "pd.DataFrame":
        """Give the series by id: title, unit, instrument, method, made_by, at (UTC), about (id@hash or empty)."""
        import pandas as pd

        listed = self._notebook.series()
        columns = ("title", "unit", "instrument", "method", "made_by", "at")
        frame = pd.DataFrame([[getattr(each, name) for name in columns] for each in listed], columns=list(columns))
        frame["about"] = [str(each.about or "") for each in listed]
        frame.index = pd.Index([each.id for each in listed], name="series", dtype="str")
        return _with_moments(frame, "at")

    def readings(
        self, series: str, *, start: datetime | None = None, end: datetime | None = None, most: int | None = None
    ) -> "pd.DataFrame":
        """Give readings by moment (UTC): number, value, remark; `attrs` tell title, unit, instrument and method.

        Parameters
        ----------
        series : str
            Id of the series.
        start, end : datetime, optional
            Only from this moment on, and before that one.
        most : int, optional
            Give no more than this many, chosen so that no extreme is lost.

        Raises
        ------
        InputError
            If there is no such series.
        """
        import pandas as pd

        found = self._notebook.readings(series, start=start, end=end, most=most)
        told = next((each for each in self._notebook.series() if each.id == series), None)
        if told is None:
            raise InputError("series-unknown", series=series)
        frame = pd.DataFrame({
            "at": found.at, "number": found.number, "value": found.value,
            "remark": pd.Series([found.remarks.get(number, "") for number in found.number.tolist()], dtype="str"),
        })  # fmt: skip
        frame = _with_moments(frame, "at").set_index("at")
        frame.attrs.update(title=told.title, unit=told.unit, instrument=told.instrument, method=told.method)
        return frame


def _with_moments(frame: "pd.DataFrame", *columns: str) -> "pd.DataFrame":
    import pandas as pd

    for name in columns:
        frame[name] = pd.to_datetime(frame[name].astype("int64"), unit="us", utc=True)
    return frame
