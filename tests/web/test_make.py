"""The page of a dough for a class as a person meets it, without a browser."""

from nicegui import ElementFilter
from tests.web.people import a_person, texts, there, wait_for, within

from lumped.texts import say
from lumped.web import paths

SALT, SUGAR = paths.dough("ropewalk-salt.toml"), paths.dough("ropewalk-sugar.toml")


async def planned(user, page=SALT, **said):
    await user.open(paths.ask("make", page, {}, **said))
    await wait_for(lambda: there(user, "make-first"))


async def test_a_class_is_answered_at_once_and_each_number_tells_its_source(kitchen):
    async with a_person(kitchen) as user:
        await planned(user, people="28", age="9", group="two", region="japan")
        assert any("for 28 people" in each for each in within(user, "make-first"))
        assert any("JPY" in each for each in within(user, "make-first"))
        assert "table salt" in within(user, "weigh")
        assert any("kg" in each or " g" in each for each in within(user, "shop"))
        assert not there(user, "in-time")
        user.find(marker="figure-buy-table-salt").click()
        await wait_for(lambda: texts(user, "source-title") == ["table salt"])
        assert any("look at the shelf" in each for each in within(user, "source"))


async def test_too_short_a_time_says_what_blocks_and_what_would_do(kitchen):
    async with a_person(kitchen) as user:
        await planned(user)
        user.find(marker="write-minutes").trigger("input", "40")
        await wait_for(lambda: there(user, "in-time"))
        assert "Hands and stove block" in texts(user, "blocks")[0]
        assert any(each.startswith("In 40 min: kneaded cold gives all") for each in within(user, "in-time"))


STARCH = {"plain-flour": "0", "cornstarch": "120 g", "rice-flour": "40 g"}


async def test_a_mix_without_gluten_kneaded_cold_is_called_no_dough_first(kitchen):
    async with a_person(kitchen) as user:
        await planned(user)
        assert not there(user, "holding")
        await user.open(paths.ask("make", SALT, STARCH | {"cooked": "not cooked"}))
        await wait_for(lambda: texts(user, "unfit") == [say("feel-unbound")])
        assert not there(user, "holding")
        await user.open(paths.ask("make", SALT, STARCH | {"cooked": "not cooked", "psyllium-husk": "10 g"}))
        await wait_for(lambda: there(user, "holding"))
        assert say("swap-note-starch-cold") in texts(user, "holding")[0]


async def test_cold_kneading_is_no_way_out_of_too_short_a_time_without_gluten(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("make", SALT, STARCH, minutes="40"))
        await wait_for(lambda: there(user, "in-time"))
        assert say("swap-note-starch-cooked") in texts(user, "holding")[0]
        assert not any(each.startswith("In 40 min: kneaded cold") for each in within(user, "in-time"))
        assert any(each.startswith("kneaded cold: This is no dough: kneaded cold") for each in within(user, "in-time"))


async def test_a_slip_of_the_pen_is_a_sentence_and_nothing_that_was_said_is_lost(kitchen):
    async with a_person(kitchen) as user:
        await planned(user, people="12", minutes="90")
        user.find(marker="write-people").trigger("input", "0")
        await wait_for(lambda: texts(user, "failure"))
        assert "is nobody" in texts(user, "failure")[0]
        assert not there(user, "make-first")
        user.find(marker="write-people").trigger("input", "12")
        await wait_for(lambda: there(user, "in-time"))
        assert texts(user, "failure") == []
        assert any("for 12 people" in each for each in within(user, "make-first"))


async def test_where_nothing_is_said_the_page_asks_for_it(kitchen):
    async with a_person(kitchen) as user:
        await planned(user)
        user.find(marker="write-people").trigger("input", " ")
        await wait_for(lambda: say("web-make-begin-people") in texts(user))
        user.find(marker="by-mass").trigger("change", "mass")
        await wait_for(lambda: say("web-make-begin-mass") in texts(user))
        user.find(marker="write-mass").trigger("input", "1.7")
        await wait_for(lambda: say("web-make-state", mass="1.70", count=2) in texts(user))


async def test_a_dough_that_is_never_hot_has_nothing_to_cool(kitchen):
    async with a_person(kitchen) as user:
        await planned(user, SUGAR)
        assert say("column-cooling") not in within(user, "clock")
        assert any("Raw flour" in each for each in within(user, "cautions"))


async def test_what_is_hard_to_get_leads_to_something_else_instead(kitchen):
    async with a_person(kitchen) as user:
        await planned(user, region="europe")
        with user.client:
            link = next(iter(ElementFilter(marker="instead-cream-of-tartar")))
        assert "without=cream-of-tartar" in link.props["href"]


async def test_nonsense_in_an_address_falls_back_to_what_is_offered(kitchen):
    async with a_person(kitchen) as user:
        await planned(user, by="moon", group="hundreds", packets="all")
        assert any("in groups of 2" in each for each in within(user, "make-first"))
