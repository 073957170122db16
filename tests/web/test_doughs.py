"""The pages of a dough as a person meets them, without a browser."""

import re
from urllib.parse import parse_qsl, urlsplit

import pytest
from nicegui import ElementFilter
from tests.web.people import a_person, away, bring, drawn, texts, there, wait_for, within

from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import sorted_query
from lumped.web.touching import Touching

SALT = paths.dough("ropewalk-salt.toml")
SUGAR = paths.dough("ropewalk-sugar.toml")


def lead(user, marker):
    with user.client:
        return next(iter(ElementFilter(marker=marker))).props["href"]


def written(user, marker):
    with user.client:
        return next(iter(ElementFilter(marker=marker))).props["^value"]


def figure(user, what):
    return within(user, f"reading-{what}")[1]


async def kneaded(user, address):
    await user.open(address)
    await wait_for(lambda: there(user, "amount-0") or say("web-dough-not") in texts(user))


async def test_the_first_page_shows_two_doughs_by_what_they_do_and_leads_to_them(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.TABLE)
        for dough in ("salt", "sugar"):
            await wait_for(lambda: "Ω·m" in within(user, f"dough-ropewalk-{dough}.toml")[3])  # noqa: B023 - waits here
        assert say("web-dough-carries") in within(user, "dough-ropewalk-salt.toml")
        assert say("web-dough-blocks") in within(user, "dough-ropewalk-sugar.toml")
        assert lead(user, "look-ropewalk-salt.toml") == SALT
        await user.open(lead(user, "own-ropewalk-salt.toml"))
        assert say("web-own-title") in texts(user)


async def test_dragging_an_amount_moves_all_readings_and_tells_where_from(kitchen):
    async with a_person(kitchen) as user:
        await kneaded(user, SALT)
        before = {key: figure(user, key) for key in ("resistivity", "water_activity", "cost")}
        user.find(marker="drag-2").trigger("input", "20 g")
        await wait_for(lambda: figure(user, "resistivity") != before["resistivity"])
        assert all(figure(user, key) != old for key, old in before.items())
        was = before["resistivity"].split(" (")[0]
        assert say("web-before", figure=was) in within(user, "reading-resistivity")


async def test_water_moves_the_feel(kitchen):
    async with a_person(kitchen) as user:
        await kneaded(user, SALT)
        before = figure(user, "feel")
        assert any("inside the trade's" in each for each in within(user, "reading-feel"))
        user.find(marker="drag-1").trigger("input", "450 g")
        await wait_for(lambda: any("above the trade's" in each for each in within(user, "reading-feel")))
        assert figure(user, "feel") != before


async def test_a_changed_dough_opens_as_its_address_says_and_can_be_put_back(kitchen):
    async with a_person(kitchen) as user:
        await kneaded(user, paths.changed(SALT, {"table-salt": "20 g", "cornstarch": "10 g"}))
        await wait_for(lambda: there(user, "amount-5"))
        await wait_for(lambda: say("web-changed") in texts(user))
        assert lead(user, "put-back") == SALT
        await wait_for(lambda: "table-salt=20+g" in lead(user, "way-swap"))


async def test_what_heats_it_and_how_warm_it_is_used_move_the_readings_and_stand_in_the_address(kitchen):
    async with a_person(kitchen) as user:
        await kneaded(user, SALT)
        pot = figure(user, "resistivity")
        user.find(marker="cooked-kettle").trigger("change", "kettle")
        await wait_for(lambda: figure(user, "resistivity") != pot)
        kettle = figure(user, "resistivity")
        user.find(marker="slide-degrees").trigger("input", "35")
        await wait_for(lambda: figure(user, "resistivity") != kettle)
        await wait_for(lambda: "cooked=kettle&degrees=35" in lead(user, "way-swap"))
        warm = figure(user, "resistivity")
        await kneaded(user, paths.changed(SALT, {"cooked": "kettle", "degrees": "35"}))
        await wait_for(lambda: figure(user, "resistivity") == warm)


async def test_what_is_added_by_feel_is_written_and_stays_when_the_amount_moves(kitchen):
    async with a_person(kitchen) as user:
        await kneaded(user, SALT)
        before = figure(user, "resistivity")
        user.find(marker="write-feel-0").trigger("input", "")
        await wait_for(lambda: figure(user, "resistivity") != before)
        assert not any("by feel" in each and "0 to 40" in each for each in within(user, "amounts"))
        user.find(marker="write-feel-1").trigger("input", "10 to 30")
        await wait_for(lambda: "and 10 to 30 g by feel" in within(user, "amounts"))
        user.find(marker="drag-1").trigger("input", "200 g")
        await wait_for(lambda: "tap-water=200+g%3B10+to+30" in lead(user, "way-swap"))
        assert "and 10 to 30 g by feel" in within(user, "amounts")
        user.find(marker="write-feel-1").trigger("input", "a splash")
        await wait_for(lambda: there(user, "trouble") and "“a splash”" in texts(user, "trouble")[0])


async def test_one_more_ingredient_goes_in(kitchen):
    async with a_person(kitchen) as user:
        await kneaded(user, SALT)
        user.find(marker="more-in").trigger("change", "glycerine")
        await wait_for(lambda: there(user, "amount-5"))
        assert "glycerine" in within(user, "amounts")


async def test_another_region_has_its_own_prices(kitchen):
    async with a_person(kitchen) as user:
        await kneaded(user, SALT)
        assert "EUR" in figure(user, "cost")
        user.find(marker="region").trigger("change", "japan")
        await wait_for(lambda: "JPY" in figure(user, "cost"))


async def test_each_number_tells_where_it_comes_from(kitchen):
    async with a_person(kitchen) as user:
        await kneaded(user, SUGAR)
        await wait_for(lambda: len(within(user, "what-ifs")) > 8)
        with user.client:
            numbers = {each.props["data-figure"] for each in ElementFilter() if "data-figure" in each.props}
        assert {"resistivity", "cost", "free_water", "what-if-pinch", "narrower-resistivity"} <= numbers
        user.find(marker="figure-what-if-pinch").click()
        await wait_for(lambda: texts(user, "source-title") == [say("what-if-pinch")])
        assert any(each.startswith("From memory") for each in within(user, "source"))
        assert any("Standard Reference" in each for each in within(user, "source"))


async def test_an_ingredient_that_nobody_knows_is_refused_in_words_and_can_be_mended_there(kitchen):
    async with a_person(kitchen) as user:
        await kneaded(user, paths.changed(SALT, {"tabel-salt": "20 g"}))
        await wait_for(lambda: any("Lumped knows no ingredient “tabel-salt”" in each for each in texts(user)))
        await wait_for(lambda: there(user, "amount-5"))
        user.find(marker="amount-5").trigger("input", "0")
        await wait_for(lambda: away(user, "trouble"))
        assert "Ω·m" in figure(user, "resistivity")


@pytest.mark.parametrize("amount", ["", "-4 g", "thirty", "900000 g"])
async def test_an_amount_that_can_not_be_read_is_told_and_nothing_read_before_looks_like_its_dough(kitchen, amount):
    async with a_person(kitchen) as user:
        await kneaded(user, SALT)
        user.find(marker="amount-2").trigger("input", amount)
        await wait_for(lambda: say("web-dough-not") in texts(user))
        (told,) = texts(user, "trouble")
        assert told.startswith("table salt: ")
        assert "{" not in told
        assert within(user, "gist") == [say("web-dough-not"), "", "", "", ""]
        assert away(user, "keep")
        user.find(marker="amount-2").trigger("input", "30 g")
        await wait_for(lambda: away(user, "trouble"))
        assert not away(user, "keep")
        assert "Ω·m" in within(user, "gist")[0]


async def test_a_swap_proposes_with_numbers_and_the_taken_one_is_the_recipe(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("swap", SALT, {}))
        assert say("web-swap-begin") in texts(user)
        user.find(marker="tick-cream-of-tartar").trigger("change", True)
        await wait_for(lambda: there(user, "proposal-1"))
        proposal = within(user, "proposal-1")
        assert say("web-left-out") in proposal
        assert any("Ω·m" in each for each in proposal)
        assert there(user, "figure-no-1-resistivity-before")
        user.find(marker="figure-no-1-amount-table-salt").click()
        await wait_for(lambda: texts(user, "source-title") == ["table salt"])
        assert any("The recipe says 1/4 cup" in each for each in within(user, "source"))
        promised = next(each for each in proposal if "Ω·m" in each)
        await kneaded(user, lead(user, "take-1"))
        assert any("instead of cream of tartar" in each for each in texts(user))
        assert figure(user, "resistivity") == promised
        assert "cream of tartar" not in within(user, "amounts")
        await wait_for(lambda: say("web-changed") in texts(user))


async def test_an_allergen_is_chosen_and_what_may_bring_traces_is_told(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("swap", SALT, {}))
        user.find(marker="tick-soybeans").trigger("change", True)
        await wait_for(lambda: any("May contain soybeans as traces" in each for each in within(user, "proposals")))
        await user.open(paths.ask("swap", SALT, {}, without="gluten"))
        await wait_for(lambda: any("May contain gluten as traces" in each for each in within(user, "proposals")))


async def test_a_swap_that_can_not_be_says_what_stands_in_the_way(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("swap", SALT, {}, without="table-salt,salt"))
        await wait_for(lambda: there(user, "blockers") or there(user, "proposal-1"))
        assert there(user, "blockers")


async def test_a_map_begins_with_flour_water_and_salt_wherever_they_stand_in_the_recipe(kitchen):
    text = """kind = "recipe"
schema = 1
title = "Upside down"
dough = "conducting"
ingredients = [{ingredient = "vegetable oil", amount_g = 14}, {ingredient = "table-salt", amount_g = 70},
    {ingredient = "cream of tartar", amount_g = 9}, {ingredient = "tap water", amount_g = 230},
    {ingredient = "flour", amount_g = 130}]
"""
    async with a_person(kitchen) as user:
        brought = kitchen.keep(Given(name="upside-down.toml", text=text))
        await user.open(paths.ask("mix", paths.brought(brought), {}))
        chosen = [
            each.props["value"]
            for k in range(3)
            for each in next(iter(user.find(marker=f"corner-{k}").elements)).default_slot.children
            if each.props.get("selected")
        ]
        assert chosen == ["plain-flour", "tap-water", "table-salt"]


ODD = """kind = "recipe"
schema = 1
title = "Ours"
dough = "conducting"
ingredients = [{ingredient = "form", amount_g = 130}, {ingredient = "tap water", amount_g = 230},
    {ingredient = "Title", amount_g = 70}]
"""


async def test_an_ingredient_named_like_a_word_of_the_address_is_changed_like_any_other(kitchen):
    label = 'kind = "ingredient"\nschema = 1\ntitle = "{}"\nlike = "{}"\n{}\n'
    of = {"form": ("plain-flour", "carbohydrate_g = 76"), "Title": ("table-salt", "salt_g = 99")}
    labels = {title: label.format(title, *each) for title, each in of.items()}
    async with a_person(kitchen) as user:
        key = kitchen.keep(Given(name="ours.toml", text=ODD, labels=labels))
        changes = {"form": "140 g", "title-1": "60 g"}
        await kneaded(user, paths.changed(paths.brought(key), changes))
        assert [written(user, f"amount-{k}") for k in range(3)] == ["140 g", "230 g", "60 g"]
        assert say("web-changed") in texts(user)
        options, found = sorted_query(dict(parse_qsl(urlsplit(lead(user, "way-swap")).query)))
        assert (set(options), found) == ({"of"}, changes)


@pytest.mark.parametrize(("what", "place"), [("salt", [0.3]), ("mix", [0.4, 0.4, 0.2])])
async def test_touching_a_picture_reads_what_the_dough_does_there(kitchen, what, place):
    async with a_person(kitchen) as user:
        await user.open(paths.ask(what, SALT, {}))
        with user.client:
            (picture,) = ElementFilter(kind=Touching)
        await wait_for(lambda: "<svg" in picture.props["day"] and "Ω·m" in figure(user, "resistivity"))
        before = figure(user, "resistivity")
        user.find(kind=Touching).trigger("place", place)
        await wait_for(lambda: figure(user, "resistivity") != before)
        grams = re.search(r"(\d+) g table salt", " ".join(within(user, "touched")))
        touched = re.search(r"table-salt=([\d.]+)\+g", lead(user, "take-mix"))
        assert float(touched[1]) == pytest.approx(float(grams[1]), abs=0.5)  # the words are rounded to a gram


async def test_care_names_allergens_and_each_caution_has_its_source(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("care", SALT, {}, age="4"))
        await wait_for(lambda: there(user, "cautions"))
        assert any("gluten" in each for each in within(user, "care-found"))
        assert within(user, "cautions").count(say("web-source-ask")) >= 5
        user.find(marker="write-age").trigger("input", "four")
        await wait_for(lambda: texts(user, "failure"))
        assert "“four” is no number" in texts(user, "failure")[0]


async def test_a_childs_need_holds_for_the_whole_table_and_leads_to_the_swap(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("care", SALT, {}, child="celiac,stardust", others=SUGAR))
        await wait_for(lambda: there(user, "standing"))
        assert texts(user, "unknown-need")[0].startswith(
            "“stardust” is no need that Lumped knows: what stands here does"
        )
        assert within(user, "standing").count(say("care-leaves")) == 2
        assert "plain wheat flour (coeliac)" in within(user, "standing")
        assert "diet=no-gluten" in lead(user, "mend-0")
        assert "ropewalk-sugar" in lead(user, "mend-1")
        user.find(marker="tick-coeliac").trigger("change", False)
        await wait_for(lambda: not there(user, "standing"))
        assert not texts(user, "unknown-need")
        user.find(marker="tick-peanuts").trigger("change", True)
        await wait_for(lambda: there(user, "standing"))
        assert within(user, "standing").count(say("care-stays")) == 2


async def test_each_dose_says_what_holds_it_and_where_the_figure_is_from(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("care", SALT, {"alum": "9 g"}, dog="20"))
        await wait_for(lambda: there(user, "doses"))
        assert any("a dog of 20 kg" in each for each in within(user, "doses"))
        assert "RCPCH 2009, p. 79" in within(user, "doses")
        assert "2,250 mg/kg" in within(user, "metals")
        user.find(marker="figure-dose-salt-dog-lethal_per_kg").click()
        await wait_for(lambda: any("Merck Veterinary" in each for each in within(user, "source")))


async def test_care_takes_the_day_whose_law_counts(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("care", SALT, {"alum": "9 g"}, on="2021-05-19"))
        await wait_for(lambda: there(user, "metals"))
        assert any("limits of toys on 2021-05-19" in each for each in within(user, "metals"))
        assert "5,625 mg/kg" in within(user, "metals")
        user.find(marker="write-on").trigger("input", "2021-05-20")
        await wait_for(lambda: "2,250 mg/kg" in within(user, "metals"))
        user.find(marker="write-on").trigger("input", "today")
        await wait_for(lambda: texts(user, "failure"))
        assert "“today” is no day" in texts(user, "failure")[0]


@pytest.mark.parametrize(("name", "bad", "shown"), [
    ("thick", "-1", "It shows 1 mm."), ("thick", "0", "It shows 1 mm."), ("thick", "1e9", "It shows 25 mm."),
    ("thick", "nan", "It shows 3 mm."), ("touch", "<b>", "It shows 4 cm²."), ("lamp", "sun", "There is no lamp “sun”"),
])  # fmt: skip
async def test_a_wall_that_the_page_does_not_go_to_is_said_until_something_is_moved(kitchen, name, bad, shown):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("wall", SALT, {}, **{name: bad}))
        await wait_for(lambda: texts(user, "beyond"))
        assert bad in texts(user, "beyond")[0]
        assert shown in texts(user, "beyond")[0]
        user.find(marker="slide-thick").trigger("input", "5")
        await wait_for(lambda: not texts(user, "beyond"))


async def test_a_wall_is_answered_for_now_and_for_the_next_morning(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("wall", SUGAR, {}, thick="3"))
        await wait_for(lambda: say("web-wall-yes") in within(user, "wall-found"))
        await wait_for(lambda: texts(user, "wall-night") == [say("web-wall-night-perhaps")])
        user.find(marker="slide-thick").trigger("input", "25")
        await wait_for(lambda: texts(user, "wall-night") == [say("web-wall-night-yes")])
        await user.open(paths.ask("wall", SALT, {}))
        await wait_for(lambda: texts(user, "wall-night") == [say("web-wall-night-worse")])


async def test_salt_in_a_thin_wall_takes_its_certainty(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("wall", SUGAR, {}, thick="10"))
        await wait_for(lambda: say("web-wall-yes") in texts(user))
        await user.open(paths.ask("wall", SUGAR, {"table-salt": "20 g"}, thick="1"))
        await wait_for(lambda: say("web-wall-perhaps") in within(user, "wall-found"))


async def test_a_brought_recipe_can_be_asked_about_too(kitchen):
    async with a_person(kitchen) as user:
        reply = await bring(user, {"mine.toml": example_recipe("ropewalk-sugar.toml")})
        await kneaded(user, reply.headers["location"])
        await wait_for(lambda: lead(user, "way-wall"))
        await user.open(lead(user, "way-wall"))
        await wait_for(lambda: "mA" in " ".join(texts(user)))


@pytest.mark.parametrize("of", ["", "/dough/none.toml", "/brought/0", "/notebook/none", "//elsewhere.test/x"])
async def test_a_question_about_no_dough_says_so(kitchen, of):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("swap", of, {}))
        await wait_for(lambda: say("web-no-dough") in texts(user))


async def test_the_doughs_of_the_first_page_are_drawn(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.TABLE)
        await wait_for(lambda: all(any(lump in svg for svg in drawn(user)) for lump in ("lump-true", "lump-false")))
        assert sum("lump-false" in svg for svg in drawn(user)) == 1


async def test_a_changed_dough_stands_beside_what_is_written_and_beside_others(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("beside", SALT, {"table-salt": "40 g"}))
        await wait_for(lambda: there(user, "row-resistivity"))
        assert within(user, "row-table-salt") == ["table salt", "40 g (39.2 to 40.8)", "73 g (70 to 76)"]
        assert within(user, "row-ratio")[2].startswith("× 0.7")
        user.find(marker=f"tick-{SUGAR}").trigger("change", True)
        await wait_for(lambda: len(within(user, "row-allergens")) == 4 if there(user, "row-allergens") else False)
        assert within(user, "row-granulated-sugar")[1:3] == ["–", "–"]


async def test_with_nothing_beside_it_the_page_asks_for_something(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("beside", SALT, {}, others=SUGAR))
        await wait_for(lambda: there(user, "row-resistivity"))
        user.find(marker=f"tick-{SUGAR}").trigger("change", False)
        await wait_for(lambda: say("web-beside-begin", most=3) in texts(user))


async def test_a_dough_that_can_not_be_says_why_beside_another(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("beside", SALT, {"table-salt": "-4 g"}, others=SUGAR))
        await wait_for(lambda: there(user, "failure"))


async def test_what_hardly_flows_is_not_written_with_nine_digits(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ask("wall", SALT, {}))
        await wait_for(lambda: say("web-wall-hardly", least="0.001") in texts(user))
