"""The page of the one-minute trial as a person meets it, without a browser."""

import pytest
from nicegui import ElementFilter, ui
from tests.web.people import a_person, texts, there, wait_for
from tests.web.test_doughs import SALT, SUGAR, lead, within

from lumped.app.asking_trial import trial_choices
from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.texts import say
from lumped.web import paths

WEAK = {"table-salt": "4 g"}


async def tried(user, of, changes=None, **things):
    await user.open(paths.ask("trial", of, changes or {}, **things))
    await wait_for(lambda: there(user, "trial-steps") or texts(user, "failure"))


def shown(user, marker):
    with user.client:
        return "hidden-now" not in next(iter(ElementFilter(marker=marker))).classes


def drawing(user):
    with user.client:
        return next(each.content for each in ElementFilter(kind=ui.html) if "trial-drawing" in each.classes)


async def test_a_salt_dough_should_shine_and_the_trial_tells(kitchen):
    async with a_person(kitchen) as user:
        await tried(user, SALT)
        assert say("web-trial-go-bright") in texts(user)
        assert not shown(user, "trial-weak")
        assert any("tells a good batch from one" in each for each in within(user, "trial-worth"))
        assert 'class="ray"' in drawing(user)


async def test_a_sugar_dough_should_stay_dark(kitchen):
    async with a_person(kitchen) as user:
        await tried(user, SUGAR)
        assert say("web-trial-go-dark") in texts(user)
        assert 'class="ray"' not in drawing(user)


async def test_steps_come_in_order_and_cautions_end_with_local_rules(kitchen):
    async with a_person(kitchen) as user:
        await tried(user, SALT)
        steps, cautions = within(user, "trial-steps"), within(user, "trial-cautions")
        assert steps[1].startswith("Twist the black wire")
        assert steps[-2].startswith("Take it apart")
        assert steps[-1] == say("web-source-ask")
        assert any("never touch each other" in each for each in cautions)
        assert "Local rules" in cautions[-1]


async def test_each_light_says_what_it_means_when_it_is_not_what_should_be_seen(kitchen):
    async with a_person(kitchen) as user:
        await tried(user, SALT)
        lights = within(user, "trial-lights")
        assert [each.split(":")[0] for each in lights[1:4]] == ["Bright", "Faint", "Dark"]
        assert "ask whether the salt went in" in lights[3]


async def test_a_weak_trial_says_so_and_leads_to_a_better_one(kitchen):
    async with a_person(kitchen) as user:
        await tried(user, SALT, mould="straw", lamp="lamp-white")
        assert shown(user, "trial-weak")
        assert say("web-trial-weak") in within(user, "trial-found")
        await user.open(lead(user, "take-better"))
        await wait_for(lambda: there(user, "trial-steps"))
        assert not shown(user, "trial-weak")


async def test_where_nothing_tells_the_page_says_to_measure(kitchen):
    async with a_person(kitchen) as user:
        await tried(user, SALT, WEAK)
        assert shown(user, "trial-weak")
        assert any("fail it" in each for each in within(user, "trial-worth"))


async def test_another_mould_moves_the_borders_and_the_address(kitchen):
    async with a_person(kitchen) as user:
        await tried(user, SALT)
        before = within(user, "trial-lights")
        user.find(marker="mould-straw").trigger("change", "straw")
        await wait_for(lambda: within(user, "trial-lights") != before)
        assert any("straw" in each for each in within(user, "trial-steps"))


async def test_each_border_tells_where_it_comes_from(kitchen):
    async with a_person(kitchen) as user:
        await tried(user, SALT)
        for what in ("trial-good", "trial-bright", "trial-dark"):
            user.find(marker=f"figure-{what}").click()
            await wait_for(lambda: texts(user, "source-title") == [say(f"web-{what}")])  # noqa: B023 - waits here
            assert any(each.startswith("From memory") for each in within(user, "source"))
            assert say("web-source-made-of") in within(user, "source")


@pytest.mark.parametrize(
    ("things", "says"),
    [({"lamp": "lamp-rad"}, "Did you mean: lamp-red"), ({"mould": "cup"}, "It has: straw"),
     ({"screws": "strip-steel-10mm"}, "is not round")],
)  # fmt: skip
async def test_an_address_with_what_is_not_there_is_answered_in_words_and_can_be_mended(kitchen, things, says):
    async with a_person(kitchen) as user:
        await tried(user, SALT, **things)
        assert says in texts(user, "failure")[0]
        (name,) = things
        good = {"lamp": "lamp-red", "mould": "barrel", "screws": "screw-stainless-3mm"}[name]
        user.find(marker=f"{name}-{good}" if name != "screws" else "screws").trigger("change", good)
        await wait_for(lambda: there(user, "trial-steps"))
        assert not texts(user, "failure")


def test_whatever_can_be_chosen_is_answered():
    from lumped.app.asking_trial import trialled

    salt = Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml"))
    for thing, choices in trial_choices().items():
        assert len(choices) > 1
        for key, name in choices:
            found = trialled(salt, {thing: key})
            assert name
            assert [sum(shares.values()) for _, shares in found["batches"]] == [100, 100]
            assert {"trial-line", *(key for key, _, _ in found["figures"])} == set(found["sources"])
