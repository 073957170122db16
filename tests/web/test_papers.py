"""Papers of a dough as its page hands them out, without a browser."""

import re
from datetime import date

import pytest
from tests.web.people import a_person, texts, there, wait_for

from lumped.app.asking import Question
from lumped.app.asking_paper import carded, tagged
from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.web import paths

SALT = paths.dough("ropewalk-salt.toml")


def given(name):
    return Given(name=name, text=example_recipe(name))


@pytest.mark.parametrize("work", [carded, tagged])
def test_a_paper_of_a_changed_language_is_another_pdf(work):
    said = {"on": date(2026, 3, 1).isoformat(), "paper": "a4", "people": ""}
    papers = [
        work(Question(given=given("ropewalk-salt.toml"), said=said | {"language": each}), lambda _: None)
        for each in ("en", "fr")
    ]
    assert all(each.startswith(b"%PDF") for each in papers)
    assert papers[0] != papers[1]


async def test_the_recipe_page_hands_out_a_card(kitchen):
    async with a_person(kitchen) as user:
        await user.open(SALT)
        await wait_for(lambda: there(user, "take-card"))
        user.find(marker="paper-language").trigger("change", "es")
        user.find(marker="take-card").click()
        reply = await user.download.next(timeout=20)
        assert reply.content.startswith(b"%PDF")
        assert b"/Lang(es-ES)" in reply.content


async def test_a_card_is_for_a_class_and_on_the_paper_that_is_chosen(kitchen):
    async with a_person(kitchen) as user:
        await user.open(SALT)
        await wait_for(lambda: there(user, "take-card"))
        user.find(marker="write-people").trigger("input", "28")
        user.find(marker="take-card").click()
        await wait_for(lambda: any("“28” does not say who comes" in each for each in texts(user)))
        user.find(marker="write-people").trigger("input", "28 of 9 in pairs")
        user.find(marker="paper").trigger("change", "us-letter")
        user.find(marker="take-card").click()
        reply = await user.download.next(timeout=20)
        assert re.search(rb"/MediaBox ?\[0 0 612 792\]", reply.content) is not None
        assert not any("“28” does not say" in each for each in texts(user))


async def test_the_plan_for_a_class_hands_out_its_card(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("make", SALT, {}, people="14", age="6"))
        await wait_for(lambda: there(user, "take-card"))
        user.find(marker="take-card").click()
        assert (await user.download.next(timeout=20)).content.startswith(b"%PDF")
