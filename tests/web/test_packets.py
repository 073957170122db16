"""A person's own ingredients on the pages: from a form or a file into the notebook, and from there into recipes."""

import tomllib
from dataclasses import replace

import pytest
from nicegui import ElementFilter
from tests.app.older import older_notebook
from tests.app.test_packets import FLOUR
from tests.web.people import a_person, beside, bring, texts, there, wait_for, within

from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.app.packets import packet_of
from lumped.texts import say
from lumped.web import paths
from lumped.web.kitchen import Kitchen

NASTY = "<img src=x onerror=alert(1)>"
TABLE = "title,like,fat_g,carbohydrate_g,protein_g,salt_g,allergens\nmill flour,plain-flour,1,72,10,0,wheat\n"
BATCH = """
kind = "batch"
schema = 1
title = "Friday"
recipe = "ropewalk-salt.toml"
weighed_after_g = 420
feel = 3
"""


@pytest.fixture
def kitchen(kitchen, tmp_path):
    """The module's workers with an empty notebook."""
    fresh = Kitchen(settings=replace(kitchen.settings, notebook=str(tmp_path / "notebook.sqlite")), jobs=kitchen.jobs)
    yield fresh
    fresh.shelf.close()


def options(user, marker):
    with user.client:
        place = next(iter(ElementFilter(marker=marker)))
        return [each.props["value"] for each in place.descendants()]


def kept(kitchen, kind="ingredient"):
    return [each.entry for each in kitchen.shelf.leaves(kind=kind)]


def an_own_flour(kitchen, **more):
    return kitchen.shelf.keep_titled(packet_of(FLOUR | more).given)


async def filling(user, address=paths.PACKET):
    await user.open(address)
    await wait_for(lambda: there(user, "packet"))


async def test_an_empty_form_says_how_to_begin_and_refuses_nothing(kitchen):
    async with a_person(kitchen) as user:
        await filling(user)
        await wait_for(lambda: texts(user, "taken-not") == [say("web-packet-first")])


async def test_the_form_shows_at_once_what_is_taken_and_what_is_assumed(kitchen):
    async with a_person(kitchen) as user:
        await filling(user)
        user.find(marker="packet").trigger("input", FLOUR)
        await wait_for(lambda: there(user, "assumed"))
        assert packet_of(FLOUR).told["assumed"] == within(user, "assumed")[1:]
        assert "13.7 % (11.7 to 15.7)" in within(user, "made-of")
        assert not kitchen.shelf.where().there


async def test_a_slip_stands_beside_its_field_and_goes_when_it_is_mended(kitchen):
    async with a_person(kitchen) as user:
        await filling(user)
        user.find(marker="packet").trigger("submit.prevent", FLOUR | {"fat_g": "-3", "title": NASTY, "way": ""})
        await wait_for(lambda: beside(user, "fat_g"))
        assert "at least 0" in beside(user, "fat_g")
        assert NASTY in beside(user, "title")
        user.find(marker="packet").trigger("input", FLOUR)
        await wait_for(lambda: not beside(user, "fat_g") and there(user, "assumed"))
        assert kept(kitchen) == []


async def test_a_packet_without_a_name_is_not_kept(kitchen):
    async with a_person(kitchen) as user:
        await filling(user)
        user.find(marker="packet").trigger("submit.prevent", FLOUR | {"title": " ", "way": ""})
        await wait_for(lambda: beside(user, "title"))
        assert kept(kitchen) == []


async def test_a_kept_packet_has_a_page_and_stands_in_the_pantry(kitchen):
    async with a_person(kitchen) as user:
        await filling(user)
        user.find(marker="packet").trigger("submit.prevent", FLOUR | {"way": ""})
        await wait_for(lambda: kept(kitchen))
        [entry] = kept(kitchen)
        await user.open(paths.kept(entry.document))
        await wait_for(lambda: there(user, "made-of"))
        assert "corner flour" in texts(user)
        assert any('like = "plain-flour"' in each for each in texts(user))
        await user.open(paths.pantry(words="corner"))
        await wait_for(lambda: there(user, "ingredient-corner-flour"))
        assert say("web-pantry-own") in texts(user)


@pytest.mark.parametrize("name", ["half/half flour", "half/half-flour", "70% flour, 30/70", "Rye (50%25)"])
async def test_one_with_a_slash_in_its_name_has_a_page_in_the_pantry(kitchen, name):
    title = name.replace("-", " ")
    kitchen.shelf.keep(packet_of(FLOUR | {"title": title}).given)
    async with a_person(kitchen) as user:
        await user.open(paths.ingredient(name))
        await wait_for(lambda: there(user, "to-kept") and title in texts(user))


async def test_a_packet_of_two_roles_offers_both_together_when_it_is_changed(kitchen):
    document = an_own_flour(kitchen, role="body, binder").document
    async with a_person(kitchen) as user:
        await filling(user, paths.packet(document))
        assert "body, binder" in options(user, "write-role")
        await filling(user)
        assert "body, binder" not in options(user, "write-role")


async def test_a_changed_packet_is_its_next_revision(kitchen):
    document = an_own_flour(kitchen).document
    async with a_person(kitchen) as user:
        await filling(user, paths.packet(document))
        await wait_for(lambda: there(user, "assumed"))
        with user.client:
            assert next(iter(ElementFilter(marker="write-fat_g"))).props["^value"] == "1.1"
        user.find(marker="packet").trigger("submit.prevent", FLOUR | {"fat_g": "2", "title": "mill flour", "way": ""})
        await wait_for(lambda: len(kitchen.shelf.kept(document).history) == 2)
        assert tomllib.loads(kitchen.shelf.kept(document).text)["fat_g"] == 2


async def test_a_recipe_can_use_it_at_once(kitchen):
    an_own_flour(kitchen)
    async with a_person(kitchen) as user:
        await user.open(paths.dough("ropewalk-salt.toml"))
        await wait_for(lambda: there(user, "amount-0"))
        assert "corner-flour" in options(user, "more-in")
        user.find(marker="more-in").trigger("change", "corner-flour")
        await wait_for(lambda: there(user, "amount-5"))
        assert "corner flour" in within(user, "amounts")
        user.find(marker="keep").trigger("submit.prevent", {"title": "Mine", "way": ""})
        await wait_for(lambda: kept(kitchen, "recipe"))


async def test_one_that_can_no_longer_be_read_keeps_no_dough_from_its_page(kitchen, monkeypatch):
    an_own_flour(kitchen)
    monkeypatch.setattr("lumped.app.shelf.own_labels", lambda notebook: {"sand": "kind = 'ingredient'"})
    async with a_person(kitchen) as user:
        await user.open(paths.dough("ropewalk-salt.toml"))
        await wait_for(lambda: there(user, "amount-0"))
        await user.open(paths.PANTRY)
        await wait_for(lambda: there(user, "pantry-trouble"))


async def test_a_recipe_of_one_that_can_no_longer_be_read_says_why_and_its_page_still_stands(kitchen):
    recipe = tomllib.loads(example_recipe("ropewalk-salt.toml"))
    body = {key: each for key, each in recipe.items() if key not in ("kind", "schema")} | {"title": "Sand dough"}
    body["ingredients"][0]["ingredient"] = "old sand"
    with older_notebook(kitchen.settings.notebook) as older:
        sand = older.save("ingredient", {"title": "Old sand", "like": "plain-flour"})
        used = older.save("recipe", body, links={"Old sand": sand.reference})
        batch = older.save("batch", {"title": "Sandy", "recipe": "a.toml"}, links={"a.toml": used.reference})
    async with a_person(kitchen) as user:
        for page in (paths.kept(used.document), paths.kept(batch.document),
                     paths.ask("time", paths.kept(used.document), {})):  # fmt: skip
            await user.open(page)
            await wait_for(lambda: any("The label of “Old sand” gives no figure" in each for each in texts(user)))


async def test_files_of_ingredients_go_into_the_notebook_all_or_none(kitchen):
    label = packet_of(FLOUR).given.text
    async with a_person(kitchen) as user:
        answer = await bring(user, {"flour.toml": label, "more.csv": TABLE})
        assert answer.headers["location"] == paths.PANTRY
        assert {each.title for each in kept(kitchen)} == {"corner flour", "mill flour"}
        answer = await bring(user, {"a.csv": TABLE.replace("mill", "tide"), "b.csv": TABLE.replace(",72,", ",-72,")})
        assert (answer.status_code, "at least 0" in answer.text) == (400, True)
        assert len(kept(kitchen)) == 2


async def test_a_batch_goes_into_the_notebook_with_its_recipe(kitchen):
    async with a_person(kitchen) as user:
        answer = await bring(user, {"friday.toml": BATCH, "ropewalk-salt.toml": example_recipe("ropewalk-salt.toml")})
        [batch], [recipe] = kept(kitchen, "batch"), kept(kitchen, "recipe")
        assert answer.headers["location"] == paths.kept(batch.document)
        assert kitchen.shelf.kept(batch.document).uses[0].document == recipe.document


async def test_a_recipe_is_brought_with_the_ingredients_it_names(kitchen):
    recipe = example_recipe("ropewalk-salt.toml").replace('"flour"', '"corner flour"')
    async with a_person(kitchen) as user:
        answer = await bring(user, {"mine.toml": recipe, "flour.toml": packet_of(FLOUR).given.text})
        await user.open(answer.headers["location"])
        await wait_for(lambda: there(user, "amount-0"))
        assert kept(kitchen) == []


@pytest.mark.parametrize(
    ("files", "words"),
    [
        ({"a.csv": "title,salt_g\n" + "x" * 10_000_000}, "larger than 2 MB"),
        ({"a.csv": "title,salt_g\n=cmd(),99\n"}, "can&#x27;t stand here"),
        ({"a.csv": f"title,salt_g\n{NASTY},99\n"}, "&lt;img"),
        ({"a.csv": "title,fat_g,protein_g\nsand,70,70\n"}, "sums to 14"),
        ({"a.csv": "\0"}, "no table"),
        ({"a.csv": b"title,salt_g\n\xe9t\xe9,99"}, "UTF-8"),
        ({"a.toml": BATCH.replace("420", "-420")}, "must be more than 0"),
        ({"a.toml": BATCH.replace("ropewalk-salt.toml", "nowhere.toml")}, "nowhere.toml"),
        ({"a.toml": BATCH, "b.toml": "kind = 'sculpture'"}, "go to different places"),
        ({"our salt.csv": TABLE, "our & salt.csv": TABLE, "our salt.csv ": TABLE}, "both “our salt.csv”"),
        ({f"{number}.csv": TABLE for number in range(21)}, "more than 20"),
    ],
)
async def test_hostile_files_get_a_sentence_and_nothing_is_kept(kitchen, files, words):
    async with a_person(kitchen) as user:
        answer = await bring(user, files)
        assert answer.status_code == 400
        assert words in answer.text
        assert "<img" not in answer.text
        assert not kitchen.shelf.where().there


def test_what_was_taken_into_a_shelf_can_be_asked_for(kitchen):
    an_own_flour(kitchen)
    assert kitchen.shelf.with_own(Given(name="", text="")).labels.keys() == {"corner flour"}
    assert kitchen.shelf.own_documents().keys() == {"corner flour"}
