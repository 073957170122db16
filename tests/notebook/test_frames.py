"""A notebook from Python: pandas frames with moments, units and names."""

from datetime import UTC, datetime, timedelta

import numpy as np
import pandas as pd
import pytest

import lumped
from lumped.errors import InputError

START = datetime(2026, 5, 9, 14, 0, tzinfo=UTC)


@pytest.fixture
def notebook(place):
    with lumped.open_notebook(place) as notebook:
        yield notebook


def test_readings_are_a_frame_by_moment(notebook):
    series = notebook.begin_series("Bar", unit="Ω", instrument="meter 1", method="four needles, 1 kHz")
    at = [START + timedelta(seconds=k) for k in range(3)]
    notebook.append(series.id, [1.5, np.nan, 1.7], at=at, remarks={1: "fell out"})
    frame = notebook.frames.readings(series.id)
    assert frame.index.tolist() == [pd.Timestamp(each) for each in at]
    assert frame["value"].dropna().tolist() == [1.5, 1.7]
    assert frame["remark"].tolist() == ["", "fell out", ""]
    assert frame.attrs == {"title": "Bar", "unit": "Ω", "instrument": "meter 1", "method": "four needles, 1 kHz"}
    assert len(notebook.frames.readings(series.id, start=at[1])) == 2
    with pytest.raises(InputError, match="There is no series"):
        notebook.frames.readings("nowhere")


def test_documents_and_their_histories_are_frames(notebook):
    first = notebook.save("note", {"title": "Quay", "at": {"gap_mm": 6}}, note="first")
    notebook.save("note", {"title": "Quay", "at": {"gap_mm": 4}}, document=first.document)
    documents, history = notebook.frames.documents(), notebook.frames.history(first.document)
    assert documents.loc[first.document, ["kind", "title", "number"]].tolist() == ["note", "Quay", 2]
    assert documents.loc[first.document, "begun"] < documents.loc[first.document, "at"]
    assert history["note"].tolist() == ["first", ""]
    assert history["hash"].is_unique
    assert notebook.frames.bodies("note").loc[first.document, "at.gap_mm"] == 4


def test_an_empty_notebook_gives_empty_frames_with_their_columns(notebook):
    assert "title" in notebook.frames.documents().columns
    assert "unit" in notebook.frames.series().columns
    assert notebook.frames.bodies("note").empty
