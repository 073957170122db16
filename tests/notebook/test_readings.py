"""Readings: only added, acknowledged when committed, thinned without losing an extreme."""

from datetime import UTC, datetime, timedelta
from threading import Event

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from lumped.errors import InputError, NotebookError
from lumped.notebook import open_notebook
from lumped.notebook.recording import EVERY, Recorder
from lumped.notebook.thinning import thinned

START = datetime(2026, 5, 9, 14, 0, tzinfo=UTC)


@pytest.fixture
def notebook(place):
    with open_notebook(place, who="Ines (invented)") as notebook:
        yield notebook


@pytest.fixture
def series(notebook):
    return notebook.begin_series("Resistance of the bar", unit="Ω", instrument="meter 1", method="four needles, 1 kHz")


def test_a_series_says_what_with_what_and_how(notebook, series):
    assert notebook.series() == (series,)
    assert (series.unit, series.instrument, series.method) == ("Ω", "meter 1", "four needles, 1 kHz")
    with pytest.raises(InputError, match="must say its method"):
        notebook.begin_series("R", unit="Ω", instrument="meter", method=" ")
    with pytest.raises(InputError, match="60"):
        notebook.begin_series("R", unit="Ω" * 61, instrument="meter", method="four needles")


def test_readings_come_back_as_they_went_in(notebook, series):
    moments = [START + timedelta(seconds=k) for k in range(4)]
    values = [0.1, -1e-300, 1.7976931348623157e308, np.nan]
    notebook.append(series.id, values, at=moments, remarks={3: "over range"})
    found = notebook.readings(series.id)
    np.testing.assert_array_equal(found.value, values)
    assert found.number.tolist() == [1, 2, 3, 4]
    assert found.remarks == {4: "over range"}
    assert found.at[1] - found.at[0] == 1_000_000  # µs
    assert notebook.verify().readings == 4


def test_minus_zero_is_zero_on_every_database(notebook, series):
    notebook.append(series.id, [-0.0])
    assert not np.signbit(notebook.readings(series.id).value).any()


def test_stretches_follow_each_other_without_a_gap(notebook, series):
    for count in (3, 1, 5):
        notebook.append(series.id, np.arange(count))
    assert notebook.readings(series.id).number.tolist() == list(range(1, 10))
    assert notebook.verify().sound


def test_a_range_takes_in_its_beginning_and_not_its_end(notebook, series):
    notebook.append(series.id, np.arange(10.0), at=[START + timedelta(seconds=k) for k in range(10)])
    found = notebook.readings(series.id, start=START + timedelta(seconds=2), end=START + timedelta(seconds=5))
    assert found.value.tolist() == [2.0, 3.0, 4.0]


def test_moments_may_be_numpy_or_numbers_and_need_not_be_in_order(notebook, series):
    notebook.append(series.id, [1.0, 2.0], at=np.array(["2026-05-09T14:00:01", "2026-05-09T14:00:00"], "datetime64[s]"))
    notebook.append(series.id, [3.0], at=[0])
    assert notebook.readings(series.id, start=START).value.tolist() == [1.0, 2.0]


@pytest.mark.parametrize(
    ("values", "options", "words"),
    [
        ([], {}, "no readings"),
        ([1.0, np.inf], {}, "no. 2 is infinite"),
        ([np.nan], {}, "no. 1 has no value. Say why"),
        ([1.0], {"at": [START, START]}, "1 values and 2 moments"),
        ([1.0], {"at": [2**62]}, "no moment"),
        ([1.0, 2.0], {"at": [-(2**62), 0]}, "-4611686018427387904.* is no moment"),
    ],
)
def test_readings_that_say_nothing_are_refused(notebook, series, values, options, words):
    with pytest.raises(InputError, match=words):
        notebook.append(series.id, values, **options)
    assert len(notebook.readings(series.id)) == 0


def test_a_series_that_is_not_here_is_named(notebook):
    for use in (notebook.readings, notebook.record, lambda id: notebook.append(id, [1.0])):
        with pytest.raises(InputError, match="There is no series nowhere"):
            use("nowhere")


def test_a_recorded_reading_is_acknowledged_when_another_program_sees_it(notebook, series, place):
    with notebook.record(series.id) as recorder, open_notebook(place) as other:
        first = recorder.add(4.7, at=START)
        assert recorder.committed < first or len(other.readings(series.id)) >= first
        recorder.wait(first)
        assert other.readings(series.id).value.tolist() == [4.7]
        recorder.add(None, at=START, remark="needle fell out")
    found = notebook.readings(series.id)
    assert found.remarks == {2: "needle fell out"}
    assert np.isnan(found.value[1])


def test_readings_that_come_quickly_share_a_commit(notebook, series):
    with notebook.record(series.id) as recorder:
        for k in range(1000):
            place = recorder.add(float(k))
        recorder.wait(place)
        assert recorder.committed == 1000
    with notebook._store.reading() as connection:
        commits = connection.exec_driver_sql("SELECT count(*) FROM stretches").scalar()
    assert commits < 20
    assert notebook.readings(series.id).value.tolist() == list(range(1000))


def test_a_commit_begins_in_half_the_time_within_which_a_reading_is_promised_to_be_on_the_disk():
    assert EVERY <= 0.5 / 2  # s; the other half is the disk's


def test_what_could_not_be_written_waits_and_is_tried_again():
    kept, attempts, full = [], [], Event()
    full.set()

    def write(waiting, again):
        attempts.append(again)
        if full.is_set():
            raise NotebookError("notebook-full", place="lab")
        kept.extend(waiting)

    recorder = Recorder(write, every=0.01)
    place = recorder.add(1.0)
    with pytest.raises(NotebookError, match="is full"):
        recorder.wait(place)
    assert (recorder.committed, len(recorder.waiting)) == (0, 1)
    full.clear()
    recorder.add(2.0)
    recorder.close()
    assert [value for _, value, _ in kept] == [1.0, 2.0]
    assert recorder.committed == 2
    assert attempts[:2] == [False, True]


def test_a_recorder_that_closes_on_a_full_disk_says_what_it_still_holds():
    def write(waiting, again):
        raise NotebookError("notebook-full", place="lab")

    recorder = Recorder(write, every=0.01)
    recorder.add(1.0)
    with pytest.raises(NotebookError, match=r"1 readings could not be written and are still in memory\. .* is full"):
        recorder.close()
    assert [value for _, value, _ in recorder.waiting] == [1.0]


MANY = arrays(np.float64, st.integers(1, 400), elements=st.floats(-1e6, 1e6) | st.just(np.nan))


@given(value=MANY, most=st.integers(4, 100), data=st.data())
def test_thinning_keeps_every_extreme_and_both_ends(value, most, data):
    at = np.array(data.draw(st.lists(st.integers(0, 10**15), min_size=len(value), max_size=len(value))), dtype=np.int64)
    chosen = thinned(at, value, most)
    assert len(chosen) <= most
    assert (np.diff(chosen) > 0).all()
    real = ~np.isnan(value)
    if real.any():
        assert np.nanmax(value[chosen]) == np.nanmax(value)
        assert np.nanmin(value[chosen]) == np.nanmin(value)


def test_thinning_keeps_the_extremes_of_every_span():
    at, value = np.arange(100_000), np.random.default_rng(5).normal(size=100_000)
    chosen = thinned(at, value, 400)
    for span in range(100):
        cut = slice(1000 * span, 1000 * (span + 1))
        inside = chosen[(chosen >= cut.start) & (chosen < cut.stop)]
        assert {value[cut].max(), value[cut].min()} <= set(value[inside])
        assert {cut.start, cut.stop - 1} <= set(inside.tolist())
