"""Sentences that are read one by one say what they say when their files are read whole."""

import re
from datetime import UTC, datetime
from importlib.resources import files

import pytest
from fluent.runtime import FluentBundle, FluentResource

from lumped.texts.sentences import Sentences

TEXTS = files("lumped.texts")
FOLDERS = sorted(each.name for each in TEXTS.iterdir() if each.is_dir() and not each.name.startswith("_"))


def slots_of(folder):
    """All slots of a folder's sentences, filled."""
    text = "".join(each.read_text(encoding="utf-8") for each in TEXTS.joinpath(folder).iterdir())
    days = dict.fromkeys(re.findall(r"DATETIME\(\s*\$(\w+)", text), datetime(2026, 5, 8, tzinfo=UTC))
    return dict.fromkeys(re.findall(r"\$(\w+)", text), 3) | days


def whole(folder):
    """The bundle of a folder, its files read whole; and the keys of its sentences."""
    bundle, keys = FluentBundle(["en-GB"], use_isolating=False), []
    for file in sorted(TEXTS.joinpath(folder).iterdir(), key=lambda each: each.name):
        if file.name.endswith(".ftl"):
            paper = FluentResource(file.read_text(encoding="utf-8"))
            assert not [each for each in paper.body if type(each).__name__ == "Junk"], file.name
            bundle.add_resource(paper)
            keys += [each.id.name for each in paper.body if type(each).__name__ == "Message"]
    return bundle, keys


@pytest.mark.parametrize("folder", FOLDERS)
def test_each_sentence_is_the_same_alone_as_in_its_file(folder):
    bundle, keys = whole(folder)
    found, slots = Sentences(TEXTS.joinpath(folder), "en-GB"), slots_of(folder)
    assert len(keys) > 10
    for key in keys:
        assert found.has(key)
        text, problems = bundle.format_pattern(bundle.get_message(key).value, slots)
        assert not problems
        assert found.said(key, slots) == text, key


def folder_of(tmp_path, **texts):
    for name, text in texts.items():
        (tmp_path / f"{name}.ftl").write_text(text, encoding="utf-8")
    return Sentences(tmp_path, "en-GB")


def test_a_sentence_brings_those_that_it_names(tmp_path):
    found = folder_of(tmp_path, a="said = { -dough } of { water }\nwater = { $mass } g\n", b="-dough = dough\n")
    assert found.said("said", {"mass": "5"}) == "dough of 5 g"


def test_a_key_of_two_files_is_said_as_in_the_first(tmp_path):
    assert folder_of(tmp_path, a="word = one\n", b="word = two\n").said("word", {}) == "one"


def test_plain_lines_lose_their_spaces_and_comments_and_long_ones_keep_their_lines(tmp_path):
    text = "one =   a word  \n# a remark\n\n## another\ntwo = first\n    second\nthree = last"
    found = folder_of(tmp_path, a=text)
    assert [found.said(key, {}) for key in ("one", "two", "three")] == ["a word", "first\nsecond", "last"]


@pytest.mark.parametrize("key", ["none", "-dough", "hollow"])
def test_what_is_no_sentence_is_an_error_of_ours(tmp_path, key):
    found = folder_of(tmp_path, a="-dough = dough\nhollow =\n    .title = only a title\n")
    assert not found.has("-dough")
    with pytest.raises(KeyError, match="no sentence"):
        found.said(key, {})


def test_an_empty_slot_is_an_error_of_ours(tmp_path):
    with pytest.raises(KeyError, match="sentence 'a'"):
        folder_of(tmp_path, a="a = { $b }\n").said("a", {})
