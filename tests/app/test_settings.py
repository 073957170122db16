"""Settings: flags over variables over the file over defaults, each refusal with where it was said."""

import pytest

from lumped.app import load_settings
from lumped.errors import InputError


@pytest.fixture
def file(tmp_path):
    path = tmp_path / "settings.toml"
    path.write_text('paper = "us-letter"\nport = 9000\n', encoding="utf-8")
    return path


def test_flags_win_over_variables_and_variables_over_the_file(file):
    assert load_settings({}, {}, file).paper == "us-letter"
    assert load_settings({}, {"LUMPED_PAPER": "a4", "LUMPED_PORT": "9001"}, file).port == 9001
    assert load_settings({"port": 9002, "paper": None}, {"LUMPED_PORT": "9001"}, file).port == 9002


@pytest.mark.parametrize(
    ("flags", "environment", "words"),
    [
        ({"port": 70000}, {}, "--port is 70000"),
        ({}, {"LUMPED_PAPER": "a5"}, "LUMPED_PAPER is a5, but paper must be one of: a4, us-letter"),
        ({}, {"LUMPED_PORT": "many"}, "LUMPED_PORT is many"),
    ],
)
def test_a_setting_that_cannot_be_is_refused_with_where_it_was_said(file, flags, environment, words):
    with pytest.raises(InputError) as caught:
        load_settings(flags, environment, file)
    assert words in str(caught.value)


def test_an_unknown_setting_is_refused_with_the_known_ones(file):
    file.write_text('papre = "a4"', encoding="utf-8")
    with pytest.raises(InputError, match="no setting"):
        load_settings({}, {}, file)


def test_a_settings_file_that_is_no_toml_is_named(file):
    file.write_text("paper = ", encoding="utf-8")
    with pytest.raises(InputError, match="is not TOML"):
        load_settings({}, {}, file)
