"""Differences are told as a person would: by name, with units, and nothing that did not change."""

import pytest

from lumped.notebook import differences

LUMPS = [{"name": "west quay", "length_mm": 60}, {"name": "east quay", "length_mm": 60, "dough": "salt"}]


@pytest.mark.parametrize(
    ("before", "after", "lines"),
    [
        ({"gap_mm": 6}, {"gap_mm": 6.0}, []),
        ({"gap_mm": 6}, {"gap_mm": 4.5}, ["gap: 6 mm → 4.5 mm"]),
        ({"fuse": True}, {"fuse": 1}, ["fuse: yes → 1"]),
        ({"temperature_degC": 20}, {}, ["temperature: taken out, was 20 °C"]),
        ({}, {"resistivity_ohm_m": 0.25}, ["resistivity: new, 0.25 Ω·m"]),
        ({"story": "a\nb"}, {"story": ""}, ["story: a b → empty"]),
        ({"at_mm": [1, 2]}, {"at_mm": [1, 3]}, ["at: 1 mm, 2 mm → 1 mm, 3 mm"]),
        ({"method": {"cooked": "pot"}}, {"method": {"cooked": "kettle"}}, ["method › cooked: pot → kettle"]),
        ({"lumps": LUMPS}, {"lumps": LUMPS[::-1]}, ["lumps › order: west quay, east quay → east quay, west quay"]),
        ({"lumps": LUMPS}, {"lumps": [LUMPS[0]]},
         ["lumps › “east quay”: taken out, was name east quay, length 60 mm, dough salt"]),
        ({"lumps": LUMPS}, {"lumps": [{**LUMPS[0], "length_mm": 75}, LUMPS[1]]},
         ["lumps › “west quay” › length: 60 mm → 75 mm"]),
        ({"rows": [{"a": 1}, {"a": 2}]}, {"rows": [{"a": 0}, {"a": 1}, {"a": 2}]}, ["rows › no. 1: new, a 0"]),
        ({"a": "x" * 200}, {"a": "y"}, ["a: " + "x" * 79 + "… → y"]),
        ({"a": "x" * 200 + "one"}, {"a": "x" * 200 + "two"}, ["a: …" + "x" * 20 + "one → …" + "x" * 20 + "two"]),
        ({"a": 0.3}, {"a": 0.1 + 0.2}, ["a: 0.3 → 0.30000000000000004"]),
    ],
)  # fmt: skip
def test_a_difference_reads_as_a_person_would_say_it(before, after, lines):
    assert [each.text for each in differences(before, after)] == lines


def test_entries_are_told_apart_by_the_key_of_their_kind():
    before = {"ingredients": [{"ingredient": "flour", "amount_g": 125}, {"ingredient": "salt", "amount_g": 48}]}
    after = {"ingredients": [{"ingredient": "salt", "amount_g": 60}, {"ingredient": "flour", "amount_g": 125}]}
    lines = [each.text for each in differences(before, after, keyed_by=("ingredient",))]
    assert lines == ["ingredients › “salt” › amount: 48 g → 60 g", "ingredients › order: flour, salt → salt, flour"]


def test_a_difference_is_data_too():
    (each,) = differences({"gap_mm": 6}, {"gap_mm": 4})
    assert each.as_dict() == {"where": ["gap"], "before": 6, "after": 4, "unit": "mm", "text": "gap: 6 mm → 4 mm"}
