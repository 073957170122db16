"""On the pages, too, what is no dough or does the opposite is told before anything else of it."""

import pytest
from tests.web.people import a_person, away, bring, texts, there, wait_for, within
from tests.web.test_doughs import SALT

from lumped.app.examples import example_recipe
from lumped.texts import say
from lumped.web import paths

DRY = {"tap-water": "0 g"}


@pytest.mark.parametrize("what", ["swap", "wall", "make", "trial", "time", "care"])
async def test_a_question_about_what_is_no_dough_is_told_so_under_its_headline(kitchen, what):
    async with a_person(kitchen) as user:
        await user.open(paths.ask(what, SALT, DRY))
        await wait_for(lambda: there(user, "unfit") and not away(user, "unfit"))
        assert any(each.startswith("This is no dough: ") for each in texts(user, "unfit"))


async def test_of_a_sound_dough_a_question_says_nothing_of_the_kind(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("trial", SALT, {}))
        await wait_for(lambda: there(user, "trial-steps"))
        assert away(user, "unfit")


async def test_the_page_of_what_is_no_dough_says_so_where_it_would_say_what_it_does(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.changed(SALT, DRY))
        await wait_for(lambda: say("web-dough-none") in within(user, "does"))
        assert any("and it stays crumbs" in each for each in within(user, "does"))
        assert say("web-dough-carries") not in within(user, "does")


@pytest.mark.parametrize(("name", "was", "dough", "said"), [
    ("ropewalk-salt.toml", "conducting", "insulating", "It carries current, and is meant to block it"),
    ("ropewalk-sugar.toml", "insulating", "conducting", "It blocks current, and is meant to carry it"),
])  # fmt: skip
async def test_a_dough_that_does_the_opposite_is_shown_by_what_is_computed(kitchen, name, was, dough, said):
    text = example_recipe(name).replace(f'dough = "{was}"', f'dough = "{dough}"')
    async with a_person(kitchen) as user:
        page = await bring(user, {"swapped.toml": text})
        await user.open(page.headers["location"])
        await wait_for(lambda: said in within(user, "does"))
        assert any(each.startswith("Meant to ") for each in within(user, "does"))
