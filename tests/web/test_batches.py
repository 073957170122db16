"""Batches on the pages: written down by a form, shown with what they taught, without a browser."""

from dataclasses import replace

import pytest
from nicegui import ElementFilter
from tests.app.test_batches import SAID, SALT
from tests.web.people import a_person, beside, bring, texts, there, wait_for, within

from lumped.app.batch_form import batch_filled
from lumped.texts import say
from lumped.web import paths
from lumped.web.kitchen import Kitchen

FORM = paths.ask("batch", paths.dough("ropewalk-salt.toml"), {})


@pytest.fixture
def kitchen(kitchen, tmp_path):
    """The module's workers with an empty notebook."""
    fresh = Kitchen(settings=replace(kitchen.settings, notebook=str(tmp_path / "notebook.sqlite")), jobs=kitchen.jobs)
    yield fresh
    fresh.shelf.close()


def kept(kitchen, kind="batch"):
    return [each.entry for each in kitchen.shelf.leaves(kind=kind)]


async def filling(user, address=FORM):
    await user.open(address)
    await wait_for(lambda: there(user, "batch-form"))


async def test_a_dough_leads_to_the_form_which_tells_at_once_what_is_taken(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.dough("ropewalk-salt.toml"))
        await wait_for(lambda: there(user, "way-batch"))
        await filling(user)
        assert any("cream of tartar (9\N{NO-BREAK SPACE}g)" in each for each in within(user, "batch-form"))
        user.find(marker="batch-form").trigger("input", SAID)
        await wait_for(lambda: any("left as steam" in each for each in within(user, "batch-taken")))
        assert tuple(within(user, "batch-taken")) == batch_filled(SAID, SALT).words
        assert not kitchen.shelf.where().there


async def test_an_ohmmeter_with_two_probes_is_refused_with_the_reason(kitchen):
    async with a_person(kitchen) as user:
        await filling(user)
        user.find(marker="batch-form").trigger("submit.prevent", SAID | {"measured_by": "two-wire-dc", "way": ""})
        await wait_for(lambda: beside(user, "measured_by"))
        assert "volts lost where metal meets dough" in beside(user, "measured_by")
        assert beside(user, "measured_by").endswith("leave the reading out: the rest of the batch still teaches.")
        assert kept(kitchen) == []


async def test_a_batch_is_kept_with_its_recipe_and_its_page_tells_what_it_taught(kitchen):
    async with a_person(kitchen) as user:
        await filling(user)
        user.find(marker="batch-form").trigger("submit.prevent", SAID | {"way": ""})
        await wait_for(lambda: kept(kitchen))
        [batch], [recipe] = kept(kitchen), kept(kitchen, "recipe")
        await user.open(paths.kept(batch.document))
        await wait_for(lambda: there(user, "batch-learnt"))
        assert "<b>stirred</b>" in within(user, "batch-found-taken")
        assert {"145 g", "148.5 g"} <= set(within(user, "batch-weighed"))
        assert any("narrowed by one batch" in each for each in within(user, "batch-learnt"))
        user.find(marker="figure-resistivity-this").click()
        await wait_for(lambda: texts(user, "source-title") == ["Resistivity of the dough"])
        await user.open(paths.kept(recipe.document))
        await wait_for(lambda: there(user, "taught") and any("narrowed" in each for each in within(user, "taught")))


async def test_a_second_batch_of_the_same_name_is_not_taken_for_the_first(kitchen):
    kitchen.shelf.keep(batch_filled(SAID, SALT).given)
    async with a_person(kitchen) as user:
        await filling(user)
        user.find(marker="batch-form").trigger("submit.prevent", SAID | {"feel": "2", "way": ""})
        await wait_for(lambda: beside(user, "title") == say("web-batch-name-taken"))
        user.find(marker="batch-form").trigger("submit.prevent", SAID | {"feel": "2", "title": "Monday", "way": ""})
        await wait_for(lambda: len(kept(kitchen)) == 2)
        [one, _] = kept(kitchen)
        await user.open(paths.kept(one.document))
        await wait_for(lambda: there(user, "batch-learnt"))
        assert say("web-batch-stage-all") in within(user, "batch-learnt")


async def test_a_kept_batch_is_changed_in_the_form_and_becomes_its_next_revision(kitchen):
    batch = kitchen.shelf.keep(batch_filled(SAID, SALT).given)
    async with a_person(kitchen) as user:
        await user.open(paths.kept(batch.document))
        await wait_for(lambda: there(user, "batch-change"))
        with user.client:
            assert next(iter(ElementFilter(marker="batch-change"))).props["href"] == paths.batch(batch.document)
        await filling(user, paths.batch(batch.document))
        with user.client:
            written = {name: next(iter(ElementFilter(marker=f"write-{name}"))).props["^value"]
                       for name in ("title", "made_on", "weighed-plain-flour", "resistivity_ohm_m")}  # fmt: skip
            assert next(iter(ElementFilter(marker="tag-feel-4"))).props["checked"]
        assert written == {name: SAID[name].replace(",", ".") for name in written}
        assert any("0.190 Ω·m" in each for each in within(user, "batch-taken"))
        form = user.find(marker="batch-form")
        form.trigger("submit.prevent", SAID | {"resistivity_ohm_m": "-1", "way": ""})
        await wait_for(lambda: beside(user, "resistivity_ohm_m"))
        assert len(kitchen.shelf.kept(batch.document).history) == 1
        form.trigger("submit.prevent", SAID | {"resistivity_ohm_m": "0.21", "way": ""})
        await wait_for(lambda: len(kitchen.shelf.kept(batch.document).history) == 2)
    found = kitchen.shelf.kept(batch.document)
    assert kitchen.shelf.changes(batch.document, 1, 2) == ("measured › resistivity: 0.19 Ω·m → 0.21 Ω·m",)
    assert found.revision.links == batch.links
    assert len(kept(kitchen)) == 1


async def test_a_batch_that_somebody_changed_meanwhile_is_not_written_over(kitchen):
    batch = kitchen.shelf.keep(batch_filled(SAID, SALT).given)
    monday = kitchen.shelf.keep(batch_filled(SAID | {"title": "Monday"}, SALT).given)
    async with a_person(kitchen) as user:
        await filling(user, paths.batch(batch.document))
        form = user.find(marker="batch-form")
        form.trigger("submit.prevent", SAID | {"title": "Monday", "way": ""})
        await wait_for(lambda: beside(user, "title") == say("web-batch-name-taken"))
        kitchen.shelf.keep(batch_filled(SAID | {"feel": "2"}, SALT).given, document=batch.document)
        form.trigger("submit.prevent", SAID | {"feel": "3", "way": ""})
        await wait_for(lambda: there(user, "batch-trouble"))
    assert [len(kitchen.shelf.kept(each.document).history) for each in (batch, monday)] == [2, 1]


async def test_what_is_no_batch_has_no_form_to_change_it(kitchen):
    recipe = kitchen.shelf.keep(SALT)
    gone = kitchen.shelf.keep(batch_filled(SAID, SALT).given)
    kitchen.shelf.remove(gone.document)
    async with a_person(kitchen) as user:
        await filling(user, paths.batch(recipe.document))  # of a recipe it is the form for a new one
        assert not there(user, "to-batch")
        for document in (gone.document, "nowhere"):
            await user.open(paths.batch(document))
            await wait_for(lambda: there(user, "nothing") or say("web-no-dough") in texts(user))


async def test_a_batch_of_a_changed_recipe_is_of_the_recipe_as_it_was_changed(kitchen):
    address = paths.ask("batch", paths.dough("ropewalk-salt.toml"), {"table-salt": "36 g", "title": "Less salt"})
    async with a_person(kitchen) as user:
        await filling(user, address)
        user.find(marker="batch-form").trigger("submit.prevent", SAID | {"way": ""})
        await wait_for(lambda: kept(kitchen))
        assert [each.title for each in kept(kitchen, "recipe")] == ["Less salt"]


async def test_saying_the_same_again_adds_no_revision(kitchen):
    given = batch_filled(SAID, SALT).given
    first = kitchen.shelf.keep_titled(given)
    assert kitchen.shelf.keep_titled(given).number == first.number
    async with a_person(kitchen) as user:
        answer = await bring(user, {"friday.toml": given.text, SALT.name: SALT.text})
        assert answer.headers["location"] == paths.kept(first.document)
        assert len(kitchen.shelf.kept(first.document).history) == 1
