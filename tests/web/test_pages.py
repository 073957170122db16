"""The pages as a person meets them, without a browser."""

import asyncio

import pytest
from nicegui import ElementFilter
from tests.web.people import a_person, answered, away, bring, drawn, slip, texts, wait_for

from lumped.app.examples import example_text
from lumped.sculpt.starting import starting_shapes
from lumped.texts import say
from lumped.web import paths

OWN = """
kind = "sculpture"
schema = 1
title = "<img src=x onerror=alert(1)>"
[doughs.mine]
recipe = "own.toml"
[[lumps]]
name = "<b>lump</b>"
dough = "mine"
shape = "ball"
diameter_mm = 30
[[parts]]
name = "light & bright"
part = "lamp-red"
legs.long = "top of <b>lump</b>, 10 mm deep"
legs.short = "dangling"
"""


async def test_the_first_page_shows_each_starting_shape_drawn(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.TABLE)
        for shape in starting_shapes():
            assert shape.title in texts(user)
        await wait_for(lambda: all("<svg" in svg for svg in drawn(user)))
        assert len(drawn(user)) == len(starting_shapes()) + 2  # and the two doughs


async def test_a_shape_answers_at_once_and_again_when_a_choice_changes(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.shape("harbour-mouth"))
        before = await answered(user, "light")
        assert "dark" not in before
        user.find(marker="pick-way-wrong").trigger("change", "wrong")
        await wait_for(lambda: "dark" in slip(user, "light"))
        assert any(text.startswith("It sits the wrong way round") for text in slip(user, "light"))


async def test_moving_a_slider_moves_the_lumps_of_the_drawing(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.shape("harbour-mouth"))
        await answered(user, "light")
        before = drawn(user)
        user.find(marker="slide-gap").trigger("input", "12")
        await wait_for(lambda: drawn(user) != before)


async def test_only_the_last_of_many_quick_moves_is_answered(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.shape("harbour-mouth"))
        for gap in ("3", "4", "5", "-2"):
            user.find(marker="slide-gap").trigger("input", gap)
        await wait_for(lambda: "dark" in slip(user, "light"))
        await asyncio.sleep(0.5)
        assert "dark" in slip(user, "light")


async def test_level_lines_are_another_view_of_the_same_answer(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.example("harbour-light.toml"))
        await answered(user, "light")
        assert "data-volts" not in drawn(user)[0]
        user.find(marker="look-potential").trigger("change", "potential")
        assert "data-volts" in drawn(user)[0]
        assert say("web-level-hint") in texts(user)


async def test_cautions_unfold_when_something_gets_hot(kitchen):
    def unfolded(user):
        with user.client:
            folds = [each for each in ElementFilter() if each.tag == "details" and "careful" in each.classes]
        return ["open" in each.props for each in folds]

    async with a_person(kitchen) as user:
        await user.open(paths.shape("harbour-mouth", {"lamp_depth": 20, "length": 50}))
        await answered(user, "light")
        assert unfolded(user) == [False]
        user.find(marker="slide-thickness").trigger("input", "35")
        await wait_for(lambda: unfolded(user) == [True])


async def test_the_file_to_keep_opens_again_to_the_same_words(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.shape("ropewalk"))
        before = await answered(user, "rope light")
        user.find(marker="take-file").click()
        kept = (await user.download.next()).text
        reply = await bring(user, {"rope.toml": kept})
        await user.open(reply.headers["location"])
        assert await answered(user, "rope light") == before


async def test_the_sheet_is_a_pdf(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.example("harbour-light.toml"))
        await answered(user, "light")
        user.find(marker="take-sheet").click()
        reply = await user.download.next(timeout=30)
        assert reply.content.startswith(b"%PDF")


@pytest.mark.parametrize("text", [
    'kind = "recipe"\ntitle = "Bun', "kind = 'recipe'\nx = " + "9" * 5000, "kind = 'recipe'\nx = " + "[" * 4000,
    'kind = "sculpture"\nschema = 1\n',
])  # fmt: skip
async def test_a_broken_file_is_told_and_can_not_be_written_down(kitchen, text):
    async with a_person(kitchen) as user:
        reply = await bring(user, {"bun.toml": text})
        await user.open(reply.headers["location"])
        await wait_for(lambda: texts(user, "failure"))
        assert texts(user, "failure")[0].startswith(("“bun.toml”", "bun.toml"))
        await wait_for(lambda: away(user, "keep"))
        user.find(marker="keep").trigger("submit.prevent", {"title": "Bun", "why": "", "way": ""})
        if "sculpture" not in text:
            await wait_for(lambda: texts(user, "keep-failure"))
            assert "is not TOML" in texts(user, "keep-failure")[0] or "deep" in texts(user, "keep-failure")[0]


async def test_a_missing_recipe_is_named_and_unknown_doughs_offered(kitchen):
    async with a_person(kitchen) as user:
        reply = await bring(user, {"boat.toml": OWN})
        assert reply.status_code == 303
        await user.open(reply.headers["location"])
        assert not await answered(user, "light & bright")
        assert "boat.toml refers to the recipe “own.toml”" in texts(user, "failure")[0]
        user.find(marker="unknown-instead").click()
        await wait_for(lambda: slip(user, "light & bright"))
        assert "dark" in slip(user, "light & bright")
        assert "<img" not in drawn(user)[0]
        assert "<b>" not in drawn(user)[0]


async def test_a_recipe_that_comes_along_is_used(kitchen):
    from lumped.app.examples import example_recipe

    async with a_person(kitchen) as user:
        reply = await bring(user, {"boat.toml": OWN, "own.toml": example_recipe("ropewalk-salt.toml")})
        await user.open(reply.headers["location"])
        assert "dark" in await answered(user, "light & bright")


async def test_a_broken_file_is_refused_in_the_words_of_the_command_line(kitchen, tmp_path, monkeypatch, capsys):
    from lumped.cli import main

    broken = example_text("harbour-light.toml").replace("length_mm", "lenght_mm", 1)
    (tmp_path / "broken.toml").write_text(broken, "utf-8")
    monkeypatch.chdir(tmp_path)
    assert main(["check", "broken.toml"]) == 1
    said = " ".join(capsys.readouterr().err.split())
    async with a_person(kitchen) as user:
        reply = await bring(user, {"broken.toml": broken})
        await user.open(reply.headers["location"])
        await answered(user, "light")
        assert texts(user, "failure") == [said]


@pytest.mark.parametrize(
    ("files", "words"),
    [
        ({"a.toml": "kind = 'recipe'", "b.toml": "kind = 'recipe'"}, "no sculpture"),
        ({"a.toml": OWN, "b.toml": OWN}, "2 sculptures"),
        ({"a.toml": "#" * 2_000_001}, "2 MB"),
        ({"a.toml": b"\xff\xfe\x00"}, "is no UTF-8 text"),
    ],
)
async def test_what_can_not_be_taken_in_is_said_in_words(kitchen, files, words):
    async with a_person(kitchen) as user:
        reply = await bring(user, files)
        assert reply.status_code == 400
        assert words in reply.text


async def test_files_sent_by_another_site_are_refused(kitchen):
    async with a_person(kitchen) as user:
        assert (await bring(user, {"a.toml": OWN}, origin="http://elsewhere.test")).status_code == 400


@pytest.mark.parametrize("path", ["/nowhere", paths.shape("duck"), paths.example("../README.md"), paths.brought("0")])
async def test_where_there_is_nothing_the_page_says_so(kitchen, path):
    async with a_person(kitchen) as user:
        reply = await user.http_client.get(path)
        assert say("web-back") in reply.text


async def test_a_shape_opens_as_its_address_says(kitchen):
    async with a_person(kitchen) as user:
        await user.open("/shape/harbour-mouth?gap=-2&colour=lamp-green")
        said = await answered(user, "light")
        assert "light (green lamp)" in said
        assert "dark" in said


async def test_an_address_out_of_reach_is_refused_in_words(kitchen):
    async with a_person(kitchen) as user:
        await user.open("/shape/harbour-mouth?gap=99")
        assert any("can't be 99. Choose a number from -2 to 15" in text for text in texts(user))
