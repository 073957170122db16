"""The pantry on the pages as a person meets it, without a browser."""

from nicegui import ElementFilter
from tests.web.people import a_person, texts, there, wait_for, within

from lumped.pantry import pantry
from lumped.texts import say
from lumped.web import paths


def lead(user, marker):
    with user.client:
        return next(iter(ElementFilter(marker=marker))).props["href"]


def listed(user):
    with user.client:
        rows = [mark for each in ElementFilter(kind=None) for mark in each._markers]
    return {mark.removeprefix("ingredient-") for mark in rows if mark.startswith("ingredient-")}


async def opened(user, address=paths.PANTRY):
    await user.open(address)
    await wait_for(lambda: there(user, "pantry-count") and texts(user, "pantry-count")[0])


async def test_all_ingredients_stand_on_the_page_and_the_first_page_leads_there(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.TABLE)
        assert lead(user, "to-web-pantry") == paths.PANTRY
        await opened(user)
        assert listed(user) == set(pantry())


async def test_an_ingredient_is_found_in_four_languages_with_or_without_accents(kitchen):
    async with a_person(kitchen) as user:
        await opened(user)
        for words in ("cream of tartar", "creme de tartre", "CRÉMOR TÁRTARO", "酒石酸水素"):
            user.find(marker="write-words").trigger("input", words)
            await wait_for(lambda: listed(user) == {"cream-of-tartar"})
            user.find(marker="write-words").trigger("input", "")
            await wait_for(lambda: len(listed(user)) == len(pantry()))


async def test_what_is_free_of_an_allergen_stays_and_traces_are_said(kitchen):
    async with a_person(kitchen) as user:
        await opened(user)
        user.find(marker="free").trigger("change", "wheat")
        await wait_for(lambda: "plain-flour" not in listed(user))
        assert all("wheat" not in pantry()[key].allergens_us for key in listed(user))
        assert {"rye-flour", "rice-flour"} <= listed(user)
        assert say("web-pantry-traces", names=", ".join(pantry()["rice-flour"].may_contain)) in texts(user)


async def test_the_address_keeps_what_was_asked_for(kitchen):
    async with a_person(kitchen) as user:
        await opened(user, paths.pantry(role="body", diet="no gluten,vegan", region="japan"))
        assert "plain-flour" not in listed(user)
        assert "potato-starch" in listed(user)
        assert any("JPY" in each for each in texts(user))


async def test_a_diet_that_is_no_longer_asked_for_brings_its_ingredients_back(kitchen):
    async with a_person(kitchen) as user:
        await opened(user, paths.pantry(diet="vegan"))
        assert "honey" not in listed(user)
        user.find(marker="tick-vegan").trigger("change", False)
        await wait_for(lambda: "honey" in listed(user))


async def test_a_word_that_is_nowhere_and_a_wrong_region_get_a_sentence(kitchen):
    async with a_person(kitchen) as user:
        await opened(user, paths.pantry(words="<script>alert(1)</script>"))
        assert texts(user, "pantry-count") == [say("larder-none")]
        await user.open(paths.pantry(region="atlantis"))
        await wait_for(lambda: there(user, "pantry-failure"))
        assert "atlantis" in texts(user, "pantry-failure")[0]


async def test_one_ingredient_tells_each_figure_with_its_source(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ingredient("farine de blé T55"))
        await wait_for(lambda: there(user, "made-of"))
        assert "11.9 % (10.4 to 13.4)" in within(user, "made-of")
        assert "145 g (130 to 160)" in within(user, "weights")
        assert {"cereals containing gluten", "soybeans, lupin, mustard"} <= set(within(user, "touch"))
        user.find(marker="figure-row-protein").click()
        await wait_for(lambda: texts(user, "source-title") == ["protein"])
        assert any("NDB 20081" in each for each in within(user, "source"))


async def test_each_figure_of_each_ingredient_can_be_asked(kitchen):
    from lumped.app.larder import ingredient_told

    for key in pantry():
        told = ingredient_told(pantry(), key)
        rows = [row for group in ("made_of", "printed", "weights", "offers", "names", "allergens", "cautions")
                for row in told[group]]  # fmt: skip
        assert {row[0] for row in rows} == set(told["sources"]), key
        assert all(each["status"] for each in told["sources"].values())
        published = [each for each in told["sources"].values() if each["status"].startswith("Published")]
        assert all(each["sources"] for each in published), key


async def test_an_unknown_ingredient_gets_the_nearest(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.ingredient("flouer"))
        await wait_for(lambda: any("flouer" in each for each in texts(user)))
        assert not there(user, "made-of")


async def test_a_dough_leads_to_its_ingredients(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.dough("ropewalk-salt.toml"))
        await wait_for(lambda: there(user, "about-0"))
        await user.open(lead(user, "about-0"))
        await wait_for(lambda: there(user, "made-of"))
        assert "plain wheat flour" in texts(user)
