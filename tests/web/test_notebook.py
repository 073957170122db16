"""The notebook on the pages as a person meets it, without a browser."""

import sqlite3
import tomllib
from dataclasses import replace

import pytest
from nicegui import ElementFilter
from tests.web.people import a_person, answered, bring, drawn, slip, texts, there, wait_for

from lumped.app import shelf as shelves
from lumped.app.examples import example_recipe, example_text
from lumped.app.given import Given
from lumped.errors import NotebookError
from lumped.texts import say
from lumped.web import paths
from lumped.web.kitchen import Kitchen

NASTY = "<img src=x onerror=alert(1)>"


@pytest.fixture
def kitchen(kitchen, tmp_path):
    """The module's workers with an empty notebook."""
    (tmp_path / "shelf").mkdir()
    fresh = Kitchen(
        settings=replace(kitchen.settings, notebook=str(tmp_path / "shelf" / "notebook.sqlite")), jobs=kitchen.jobs
    )
    yield fresh
    fresh.shelf.close()


def kept(kitchen, kind="sculpture"):
    return [each.entry for each in kitchen.shelf.leaves(kind=kind)]


def a_sculpture(kitchen, name="harbour-light.toml", **more):
    return kitchen.shelf.keep(Given(name=name, text=example_text(name)), **more)


def a_recipe(kitchen, title=""):
    return kitchen.shelf.keep(Given(name="salt.toml", text=example_recipe("ropewalk-salt.toml")), title=title)


def send(user, way="", **fields):
    user.find(marker="keep").trigger("submit.prevent", {**fields, "way": way})


def hidden(user, marker):
    with user.client:
        return "hidden-now" in next(iter(ElementFilter(marker=marker))).classes


async def test_nothing_is_begun_by_looking(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.TABLE)
        await user.open(paths.NOTEBOOK)
        await wait_for(lambda: texts(user, "notebook-where"))
        assert "begins with the first thing" in texts(user, "notebook-where")[0]
        assert not kitchen.shelf.where().there


async def test_a_shape_is_written_down_as_the_sculpture_that_its_sliders_make(kitchen):
    async with a_person(kitchen) as user:
        await user.open("/shape/harbour-mouth?gap=9")
        await answered(user, "light")
        send(user, title="Our harbour")
        await wait_for(lambda: texts(user, "kept")[0])
        said = texts(user, "kept")[0]
        assert "revision 1" in said
        assert kitchen.shelf.where().place in said
        [entry] = kept(kitchen)
        body = tomllib.loads(kitchen.shelf.kept(entry.document).text)
        assert (body["title"], body["lumps"][1]["place"]) == ("Our harbour", "right of west quay, gap 9 mm")


async def test_a_second_writing_appends_a_revision_and_one_without_a_change_does_not(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.shape("harbour-mouth"))
        await answered(user, "light")
        send(user, title="Harbour")
        await wait_for(lambda: there(user, "revision-1"))
        send(user, title="Harbour", why="once more")
        await wait_for(lambda: "Nothing has changed" in texts(user, "kept")[0])
        user.find(marker="slide-gap").trigger("input", "3")
        send(user, title="Harbour", why="closer")
        await wait_for(lambda: there(user, "revision-2"))
        [entry] = kept(kitchen)
        assert [each.number for each in kitchen.shelf.kept(entry.document).history] == [1, 2]
        assert kitchen.shelf.kept(entry.document).newest.note.startswith("closer")


async def test_what_was_pulled_about_opens_with_its_sliders_where_they_stood(kitchen):
    async with a_person(kitchen) as user:
        await user.open("/shape/harbour-mouth?gap=9")
        await answered(user, "light")
        send(user, title="Our harbour")
        await wait_for(lambda: kept(kitchen))
        await user.open(paths.kept(kept(kitchen)[0].document))
        await answered(user, "light")
        with user.client:
            slider = next(iter(ElementFilter(marker="slide-gap")))
        assert slider.props["^value"] == 9
        assert "Our harbour" in texts(user)


async def test_one_tap_notes_what_happened_and_writes_the_sculpture_down_first(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.example("harbour-light.toml"))
        await answered(user, "light")
        await wait_for(lambda: there(user, "tap-light-bright"))
        user.find(marker="tap-light-dark").click()
        await wait_for(lambda: texts(user, "noted-light")[0])
        assert texts(user, "noted-light")[0].startswith("Noted: dark. It was said: bright")
        [entry] = kept(kitchen)
        [outcome] = kitchen.shelf.outcomes(entry.document)
        assert (outcome.happened, outcome.came_true, outcome.sculpture_number) == ("dark", False, 1)


async def test_a_tap_can_be_taken_back(kitchen):
    document = a_sculpture(kitchen).document
    async with a_person(kitchen) as user:
        await user.open(paths.kept(document))
        await wait_for(lambda: there(user, "tap-light-bright"))
        user.find(marker="tap-light-bright").click()
        await wait_for(lambda: "As it was said" in texts(user, "noted-light")[0])
        user.find(marker="take-back-light").click()
        await wait_for(lambda: texts(user, "noted-light") == ["Taken back."])
        assert kitchen.shelf.outcomes(document) == ()
        assert len(kitchen.shelf.leaves(kind="outcome", removed=True)) == 1


async def test_earlier_tables_are_counted_in_words(kitchen):
    document = a_sculpture(kitchen).document
    async with a_person(kitchen) as user:
        await user.open(paths.kept(document))
        await wait_for(lambda: there(user, "tap-light-bright"))
        for count, seen in enumerate(("bright", "dark", "bright"), 1):
            user.find(marker=f"tap-light-{seen}").click()
            await wait_for(lambda count=count: len(kitchen.shelf.outcomes(document)) == count)
        await wait_for(lambda: texts(user, "tables-light") == ["2 of 3 tables so far: as it was said."])
        await user.open(paths.kept(document))
        await wait_for(lambda: texts(user, "tables-light") == ["2 of 3 tables so far: as it was said."])


async def test_a_tap_on_one_part_says_nothing_of_another(kitchen):
    document = a_sculpture(kitchen, "twin-buoys.toml").document
    async with a_person(kitchen) as user:
        await user.open(paths.kept(document))
        await wait_for(lambda: there(user, ["tap-outer", "buoy-dim"]))
        user.find(marker=["tap-outer", "buoy-dim"]).click()
        await wait_for(lambda: texts(user, ["tables-outer", "buoy"]) != [""])
        assert len(kitchen.shelf.outcomes(document)) == 1
        assert texts(user, ["tables-inner", "buoy"]) == [""]


async def test_a_tap_on_an_old_revision_is_a_note_on_that_revision(kitchen):
    first = a_sculpture(kitchen)
    a_sculpture(kitchen, "ebb-light.toml", document=first.document)
    async with a_person(kitchen) as user:
        await user.open(paths.old(first.document, 1))
        await wait_for(lambda: there(user, "tap-light-bright"))
        assert there(user, "old")
        assert not there(user, "keeping")
        user.find(marker="tap-light-bright").click()
        await wait_for(lambda: kitchen.shelf.outcomes(first.document))
        assert kitchen.shelf.outcomes(first.document)[0].sculpture_number == 1
        assert len(kitchen.shelf.kept(first.document).history) == 2


async def test_the_past_shows_what_changed_between_any_two(kitchen):
    first = a_sculpture(kitchen)
    wider = example_text("harbour-light.toml").replace("gap 6 mm", "gap 8 mm")
    kitchen.shelf.keep(Given(name="a.toml", text=wider), document=first.document)
    async with a_person(kitchen) as user:
        await user.open(paths.kept(first.document))
        await wait_for(lambda: any("gap 6 mm" in each and "gap 8 mm" in each for each in texts(user)))
        user.find(marker="pair-1").trigger("change", "1")
        await wait_for(lambda: say("web-changes-none") in texts(user))


async def test_an_old_revision_is_brought_back_and_the_page_shows_it(kitchen):
    first = a_sculpture(kitchen)
    a_sculpture(kitchen, "ebb-light.toml", document=first.document)
    async with a_person(kitchen) as user:
        await user.open(paths.kept(first.document))
        assert "dark" in await answered(user, "light")
        await wait_for(lambda: there(user, "bring-back-1"))
        user.find(marker="bring-back-1").click()
        await wait_for(lambda: "Brought back from revision 1" in (texts(user, "kept-line") or [""])[0])
        await wait_for(lambda: slip(user, "light") and "dark" not in slip(user, "light"))
        assert kitchen.shelf.kept(first.document).newest.number == 3


async def test_what_is_taken_out_can_be_brought_back_from_its_page_and_from_the_list(kitchen):
    document = a_sculpture(kitchen).document
    async with a_person(kitchen) as user:
        await user.open(paths.kept(document))
        await wait_for(lambda: there(user, "remove"))
        user.find(marker="remove").click()
        await wait_for(lambda: there(user, "removed"))
        assert kept(kitchen) == []
        user.find(marker="bring-this-back").click()
        await answered(user, "light")
        kitchen.shelf.remove(document)
        await user.open(paths.NOTEBOOK)
        await wait_for(lambda: there(user, "taken-out"))
        user.find(marker="bring-back").click()
        await wait_for(lambda: there(user, f"leaf-{document}"))
        assert len(kept(kitchen)) == 1


async def test_somebody_else_wrote_meanwhile_is_said_with_a_way_to_look_and_to_write_all_the_same(kitchen):
    document = a_sculpture(kitchen).document
    async with a_person(kitchen) as user:
        await user.open(paths.kept(document))
        await answered(user, "light")
        a_sculpture(kitchen, "ebb-light.toml", document=document)
        send(user, title="Mine")
        await wait_for(lambda: texts(user, "keep-failure"))
        assert "gone on meanwhile: Ann saved revision 2" in texts(user, "keep-failure")[0]
        with user.client:
            assert next(iter(ElementFilter(marker="keep-look"))).props["href"] == paths.old(document, 2)
        user.find(marker="keep-anyway").click()
        await wait_for(lambda: texts(user, "kept")[0])
        assert [each.title for each in kitchen.shelf.kept(document).history] == [
            "The harbour light", "The light that stayed dark", "Mine",
        ]  # fmt: skip


async def test_the_first_page_shows_what_was_written_down_and_finds_it_by_a_word(kitchen):
    for name in ("harbour-light.toml", "two-packs.toml", "twin-buoys.toml", "crossed-legs.toml", "ferry-on-pins.toml"):
        a_sculpture(kitchen, name)
    a_recipe(kitchen, "Salt dough of the other table")
    async with a_person(kitchen) as user:
        await user.open(paths.TABLE)
        await wait_for(lambda: "The second pack" in texts(user))
        await wait_for(lambda: len(drawn(user)) > 6 and all("<svg" in svg for svg in drawn(user)))
        user.find(marker="write-words").trigger("input", "BUOYS")
        await wait_for(lambda: sum("revision 1" in each for each in texts(user)) == 1)
        user.find(marker="write-words").trigger("input", "")
        user.find(marker="kind-recipe").trigger("change", "recipe")
        await wait_for(lambda: "Ropewalk salt dough" in texts(user) and say("web-kind-sculpture") not in texts(user))


async def test_the_notebook_page_tells_where_it_lies_and_who_writes(kitchen):
    a_sculpture(kitchen)
    async with a_person(kitchen) as user:
        await user.open(paths.NOTEBOOK)
        await wait_for(lambda: texts(user, "notebook-where"))
        assert kitchen.settings.notebook in texts(user, "notebook-where")[0]
        assert texts(user, "notebook-who") == ["Ann writes in it."]
        assert not hidden(user, "leaves")


async def test_a_recipe_alone_is_brought_and_its_page_leads_with_what_the_dough_does(kitchen):
    async with a_person(kitchen) as user:
        reply = await bring(user, {"salt.toml": example_recipe("ropewalk-salt.toml")})
        assert reply.status_code == 303
        await user.open(reply.headers["location"])
        await wait_for(lambda: there(user, "amount-0"))
        assert say("web-dough-carries") in texts(user)
        assert any("Ω·m" in each for each in texts(user))
        assert any("Ω·cm" in each for each in texts(user))
        await wait_for(lambda: say("safety-brief-rules") in texts(user))
        send(user, title="Ours")
        await wait_for(lambda: kept(kitchen, "recipe"))


async def test_other_amounts_are_answered_and_written_down_as_the_next_revision(kitchen):
    document = a_recipe(kitchen).document
    async with a_person(kitchen) as user:
        await user.open(paths.kept(document))
        await wait_for(lambda: there(user, "amount-2"))
        before = [each for each in texts(user) if "Ω·m" in each]
        user.find(marker="amount-2").trigger("input", "20,5")
        await wait_for(lambda: [each for each in texts(user) if "Ω·m" in each] != before)
        send(user, title="Ropewalk salt dough")
        await wait_for(lambda: there(user, "revision-2"))
        assert kitchen.shelf.changes(document, 1, 2) == (
            "ingredients › “table-salt” › amount: taken out, was 1/4 cup",
            "ingredients › “table-salt” › amount: new, 20.5 g",
        )


async def test_an_amount_that_can_not_be_read_is_refused_in_words_and_not_written(kitchen):
    document = a_recipe(kitchen).document
    async with a_person(kitchen) as user:
        await user.open(paths.kept(document))
        await wait_for(lambda: there(user, "amount-2"))
        user.find(marker="amount-2").trigger("input", "some")
        await wait_for(lambda: say("web-dough-not") in texts(user))
        assert any("“some” is no amount" in each for each in texts(user))
        send(user, title="Ropewalk salt dough")
        await wait_for(lambda: texts(user, "keep-failure"))
        assert len(kitchen.shelf.kept(document).history) == 1


async def test_a_recipe_made_from_another_is_its_kin_both_ways(kitchen):
    document = a_recipe(kitchen).document
    async with a_person(kitchen) as user:
        await user.open(paths.kept(document))
        await wait_for(lambda: there(user, "amount-2"))
        user.find(marker="amount-2").trigger("input", "30 g")
        send(user, way="anew", title="Ropewalk salt dough")
        await wait_for(lambda: len(kept(kitchen, "recipe")) == 2)
        other = next(each for each in kept(kitchen, "recipe") if each.document != document)
        assert other.title == "Ropewalk salt dough, another way"
        for one, kin in ((document, other.document), (other.document, document)):
            await user.open(paths.kept(one))
            await wait_for(lambda kin=kin: there(user, f"kin-{kin}"))


async def test_markup_in_titles_stays_text(kitchen):
    document = a_sculpture(kitchen, title=NASTY, note=NASTY).document
    async with a_person(kitchen) as user:
        for page in (paths.NOTEBOOK, paths.TABLE, paths.kept(document)):
            await user.open(page)
            await wait_for(lambda: NASTY in texts(user))
        await wait_for(lambda: there(user, "revision-1"))
        assert texts(user).count(NASTY) >= 2


@pytest.mark.parametrize("path", [paths.kept("nothing"), paths.old("nothing", 3)])
async def test_where_the_notebook_has_nothing_the_page_says_so(kitchen, path):
    a_sculpture(kitchen)
    async with a_person(kitchen) as user:
        await user.open(path)
        await wait_for(lambda: say("web-no-kept") in texts(user))


async def test_without_its_folder_the_notebook_says_so_and_the_rest_goes_on(kitchen, tmp_path):
    a_sculpture(kitchen)
    folder = tmp_path / "shelf"
    async with a_person(kitchen) as user:
        folder.rename(tmp_path / "elsewhere")
        await user.open(paths.shape("harbour-mouth"))
        assert "bright" in await answered(user, "light")
        send(user, title="Harbour")
        await wait_for(lambda: texts(user, "keep-failure"))
        assert "no longer at" in texts(user, "keep-failure")[0]
        with pytest.raises(NotebookError, match="no longer at"):  # however often one tries
            a_sculpture(kitchen)
        assert not folder.exists()
        (tmp_path / "elsewhere").rename(folder)
        send(user, title="Harbour")
        await wait_for(lambda: texts(user, "kept")[0])
        assert len(kept(kitchen)) == 2


async def test_a_busy_notebook_says_so_and_can_be_tried_again(kitchen, monkeypatch):
    monkeypatch.setattr(shelves, "PATIENCE", 0.1)
    a_sculpture(kitchen)
    other = sqlite3.connect(kitchen.settings.notebook, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    async with a_person(kitchen) as user:
        await user.open(paths.shape("harbour-mouth"))
        await wait_for(lambda: there(user, "tap-light-bright"))
        user.find(marker="tap-light-bright").click()
        await wait_for(lambda: "Another program is writing" in texts(user, "noted-light")[0])
        other.execute("ROLLBACK")
        other.close()
        user.find(marker="tap-light-bright").click()
        await wait_for(lambda: "As it was said" in texts(user, "noted-light")[0])


@pytest.mark.parametrize("path", [paths.TABLE, paths.NOTEBOOK])
async def test_a_file_that_is_no_notebook_is_left_alone_and_said(kitchen, path):
    from pathlib import Path

    file = Path(kitchen.settings.notebook)
    file.parent.mkdir(exist_ok=True)
    file.write_text("Salt, flour, water.\n" * 99, "utf-8")
    async with a_person(kitchen) as user:
        await user.open(path)
        await wait_for(lambda: texts(user, "notebook-trouble"))
        assert "is no notebook of Lumped" in texts(user, "notebook-trouble")[0]
        assert file.read_text("utf-8").startswith("Salt")


async def test_a_slip_stays_the_same_thing_when_its_words_change(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.shape("harbour-mouth"))
        await answered(user, "light")
        with user.client:
            before = next(iter(ElementFilter(marker="slip-light"))).id
        user.find(marker="pick-way-wrong").trigger("change", "wrong")
        await wait_for(lambda: "dark" in slip(user, "light"))
        with user.client:
            assert next(iter(ElementFilter(marker="slip-light"))).id == before


async def test_an_empty_notebook_takes_no_room_on_the_first_page(kitchen):
    async with a_person(kitchen) as user:
        await user.open(paths.TABLE)
        await wait_for(lambda: all("<svg" in svg for svg in drawn(user)))
        assert hidden(user, "shelf")
        a_sculpture(kitchen)
        await user.open(paths.TABLE)
        await wait_for(lambda: not hidden(user, "shelf"))
