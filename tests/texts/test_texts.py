"""Every sentence that the code asks for is there, and every sentence that is there is asked for."""

import pickle
import re
from pathlib import Path

import pytest

import lumped
from lumped.errors import InputError, LumpedError, SculptureError
from lumped.texts import has, say

SOURCE = Path(lumped.__file__).parent
CODE = "\n".join(path.read_text("utf-8") for path in SOURCE.rglob("*.py"))
KEYS = [
    match[1]
    for path in (SOURCE / "texts/en").glob("*.ftl")
    for match in re.finditer(r"^([a-z][\w-]*) =", path.read_text("utf-8"), re.M)
]


def test_no_sentence_is_written_twice():
    assert len(KEYS) == len(set(KEYS))


def test_every_sentence_asked_for_by_name_is_there():
    asked = set(re.findall(r"""\bsay\(\s*"([a-z][\w-]*)\"""", CODE)) | set(
        re.findall(r"""(?:Error|failure)\(\s*"([a-z][\w-]*)\"""", CODE)
    )
    assert len(asked) > 50
    assert [key for key in sorted(asked) if not has(key)] == []


def test_every_sentence_is_asked_for():
    def is_asked(key: str) -> bool:
        if f'"{key}"' in CODE or f"'{key}'" in CODE:
            return True
        beginnings = [key[: k + 1] for k, letter in enumerate(key) if letter == "-"]
        return any(f'"{start}{{' in CODE for start in beginnings)

    assert [key for key in KEYS if not is_asked(key)] == []


def test_a_missing_sentence_stops_the_program():
    with pytest.raises(KeyError, match="no sentence"):
        say("no-such-sentence")


def test_a_slot_left_empty_stops_the_program():
    with pytest.raises(KeyError, match="quantity-unreadable"):
        say("quantity-unreadable", text="six")


def test_an_error_survives_pickling():
    error = SculptureError("place-leg-words", text="somewhere")
    copy = pickle.loads(pickle.dumps(error))
    assert (type(copy), str(copy), copy.data) == (SculptureError, str(error), error.data)


def test_an_error_is_a_dict_for_machines():
    error = InputError("quantity-unreadable", text="six", example="6 cm")
    assert error.as_dict()["code"] == "quantity-unreadable"
    assert error.as_dict()["message"] == str(error)
    assert isinstance(error, LumpedError)
    assert isinstance(error, ValueError)
