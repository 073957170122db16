"""The page of how long a dough lasts as a person meets it, without a browser."""

import json
import re

import pytest
from nicegui import ElementFilter
from nicegui.element import Element
from tests.app.test_batches import SAID
from tests.web.people import a_person, drawn, texts, there, wait_for
from tests.web.test_doughs import SALT, SUGAR, within

from lumped.app.asking_time import dried_told
from lumped.app.batch_form import batch_filled
from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.cli import main
from lumped.quantities import rounded_text
from lumped.texts import say
from lumped.web import paths


async def opened(user, of=SALT, changes=None, **said):
    await user.open(paths.ask("time", of, changes or {}, **said))
    await wait_for(lambda: there(user, "keep-found"))
    await wait_for(lambda: within(user, "keep-found") and within(user, "cool-found"))


def shown(user, marker):
    """Whether an element and all that it lies in are shown."""
    with user.client:
        place = next(iter(ElementFilter(kind=Element, marker=marker)))
        return not any("hidden-now" in each.classes for each in (place, *place.ancestors()))


def lost(user):
    return re.search(r"lost ([\d.]+)", within(user, "dry-found")[1])[1]


async def test_the_page_says_what_the_command_says(kitchen, capsys):
    assert main(["dry", "demo/recipes/ropewalk-salt.toml", "--json"]) == 0
    words = json.loads(capsys.readouterr().out)["words"]
    async with a_person(kitchen) as user:
        await opened(user)
        assert [each for each in within(user, "dry-found") if each in words] == words
        assert 'data-strip="mass"' in drawn(user)[0]


async def test_the_page_of_a_kept_recipe_says_what_the_command_says_of_its_title(kitchen, capsys):
    kitchen.shelf.keep(batch_filled(SAID, Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml"))).given)
    [recipe] = kitchen.shelf.leaves(kind="recipe")
    kept = paths.kept(recipe.entry.document)
    place = ["ropewalk salt dough", "--notebook", kitchen.settings.notebook]
    assert main(["dry", *place, "--json"]) == 0
    fresh = json.loads(capsys.readouterr().out)["moments"][0]["resistivity"]
    figure = "{} ({} to {})".format(*(rounded_text(fresh[end]) for end in ("mean", "low", "high")))
    assert main(["keep", *place, "--json"]) == 0
    words = json.loads(capsys.readouterr().out)["words"]
    async with a_person(kitchen) as user:
        await opened(user, kept)
        assert set(words[1:]) <= {
            *within(user, "keep-found"),
            *texts(user, "caveat"),
        }  # how wet it is stands in figures
        assert words[0] not in within(user, "keep-found")
        assert figure in within(user, "time-dry")
        await opened(user)
        assert figure not in within(user, "time-dry")


async def test_a_thin_roll_dries_sooner_and_a_bag_holds_its_water(kitchen):
    async with a_person(kitchen) as user:
        await opened(user)
        thick = float(lost(user))
        user.find(marker="drag-thick").trigger("input", "6 mm")
        await wait_for(lambda: float(lost(user)) > 1.2 * thick)
        before = lost(user)
        user.find(marker="cover-bag").trigger("change", "bag")
        await wait_for(lambda: lost(user) != before)
        assert float(lost(user)) < 0.5 * thick
        assert say("lasting-rest-cover") in within(user, "dry-found")


async def test_a_damp_room_wets_a_salt_dough(kitchen):
    async with a_person(kitchen) as user:
        await opened(user, humidity="90 %")
        assert any("draws water out of the air" in each for each in within(user, "dry-found"))


@pytest.mark.parametrize(
    ("name", "bad", "says"),
    [("thick", "abc", "“abc” is not an amount"), ("thick", "-5 mm", "-5 mm in size can’t be"),
     ("thick", "1e6", "can’t be"), ("humidity", "140 %", "A humidity of 140 %"), ("room", "900", "A room of 900 °C"),
     ("humidity", "-3", "A humidity of -3 %"), ("room", "3 mm", "a temperature is wanted")],
)  # fmt: skip
async def test_a_figure_that_can_not_be_is_answered_in_words_and_nothing_is_lost(kitchen, name, bad, says):
    async with a_person(kitchen) as user:
        await opened(user)
        before = within(user, "dry-found")
        user.find(marker=f"say-{name}").trigger("input", bad)
        await wait_for(lambda: texts(user, "failure"))
        assert says in texts(user, "failure")[0]
        assert within(user, "dry-found") == before
        user.find(marker=f"say-{name}").trigger("input", {"thick": "12", "humidity": "45", "room": "21"}[name])
        await wait_for(lambda: not texts(user, "failure"))
        assert within(user, "dry-found") == before


@pytest.mark.parametrize(
    "said", [{"thick": "<b>"}, {"shape": "cube"}, {"hours": "0"}, {"cover": "sock"}, {"draught": "gale"}]
)
async def test_an_address_that_can_not_be_is_answered_in_words_and_the_rest_still_stands(kitchen, said):
    async with a_person(kitchen) as user:
        await opened(user, **said)
        await wait_for(lambda: texts(user, "failure"))
        assert next(iter(said.values())) in texts(user, "failure")[0]
        assert there(user, "caveat")


async def test_what_a_bag_lost_is_kneaded_in_again(kitchen):
    async with a_person(kitchen) as user:
        await opened(user)
        user.find(marker="write-weighed").trigger("input", "512 g")
        user.find(marker="write-now").trigger("input", "487")
        await wait_for(lambda: within(user, "refresh-found"))
        assert say("lasting-refresh-knead", water="25") in within(user, "refresh-found")
        user.find(marker="write-now").trigger("input", "600 g")
        await wait_for(lambda: texts(user, "failure"))
        assert "heavier than" in texts(user, "failure")[0]
        user.find(marker="write-now").trigger("input", "")
        await wait_for(lambda: not texts(user, "failure") and not within(user, "refresh-found"))


async def test_a_pot_asks_for_its_weight_a_slab_for_its_thickness(kitchen):
    async with a_person(kitchen) as user:
        await opened(user)
        assert shown(user, "write-mass")
        assert not shown(user, "say-deep")
        user.find(marker="form-slab").trigger("change", "slab")
        await wait_for(lambda: any(each.startswith("Pressed to a slab of 20") for each in within(user, "cool-found")))
        assert not shown(user, "write-mass")
        assert say("cool-adult") in within(user, "cool-found")


async def test_what_was_never_hot_has_nothing_to_choose(kitchen):
    async with a_person(kitchen) as user:
        await opened(user, SUGAR)
        assert within(user, "cool-found") == [say("cool-never-hot")]
        assert not shown(user, "form-pot")


async def test_keeping_says_who_could_grow_and_that_it_is_no_promise(kitchen):
    async with a_person(kitchen) as user:
        await opened(user)
        assert texts(user, "caveat") == [say("lasting-caveat")]
        room = within(user, "keep-found")
        assert "moulds of dry places" in room
        user.find(marker="where-fridge").trigger("change", "fridge")
        await wait_for(lambda: say("lasting-cold") in within(user, "keep-found"))


async def test_each_answer_tells_where_it_comes_from(kitchen):
    async with a_person(kitchen) as user:
        await opened(user, weighed="512 g", now="487 g")
        await wait_for(lambda: within(user, "refresh-found"))
        titles = {"time-dry": "web-time-dry", "time-rest": "heading-rest", "time-cool": "web-time-cool",
                  "time-refresh": "web-time-refresh", "time-growth": "web-time-growth", "time-habit": "web-time-habit",
                  "time-activity": "web-time-activity"}  # fmt: skip
        for what, title in titles.items():
            user.find(marker=f"figure-{what}").click()
            await wait_for(lambda: texts(user, "source-title") == [say(title)])  # noqa: B023 - waits here
            assert any(say(f"web-status-{each}") in within(user, "source")
                       for each in ("from-memory", "common-practice", "published", "computed"))  # fmt: skip


@pytest.mark.parametrize("hours", ["24", "72", "168", "720"])
@pytest.mark.parametrize("thick", ["3", "40"])
def test_whatever_the_sliders_reach_is_followed(hours, thick):
    salt = Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml"))
    for cover, humidity in (("open", "10"), ("box", "95")):
        found = dried_told(salt, shape="ball", thick=thick, cover=cover, room="35", humidity=humidity, draught="fan",
                           hours=hours)  # fmt: skip
        assert "nan" not in " ".join(str(row) for row in (*found["rows"], found["words"]))
        assert "nan" not in found["drawings"]["dough-light"].lower().replace("nance", "")
