"""Documents: saving adds, nothing is overwritten, everything comes back; on a file and on a server."""

from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import text

from lumped.errors import InputError, NotebookError
from lumped.notebook import Kind, Reference, open_notebook
from lumped.notebook.tables import metadata

RECIPE = {"title": "Ropewalk dough", "ingredients": [{"ingredient": "salt", "amount_g": 48}]}
SALTIER = {"title": "Ropewalk dough", "ingredients": [{"ingredient": "salt", "amount_g": 60}]}


class Clock:
    """A clock that goes on by a minute each time it is looked at."""

    def __init__(self):
        self.at = datetime(2026, 5, 9, 14, 0, tzinfo=UTC)

    def __call__(self):
        self.at += timedelta(minutes=1)
        return self.at


@pytest.fixture
def notebook(place):
    recipe = Kind(name="recipe", schema=1, keyed_by=("ingredient",))
    with open_notebook(place, kinds=[recipe], who="Ines (invented)", clock=Clock()) as notebook:
        yield notebook


def test_a_save_adds_a_revision_and_the_first_stays_as_it_was(notebook):
    first = notebook.save("recipe", RECIPE, note="as on Saturday")
    second = notebook.save("recipe", SALTIER, document=first.document)
    assert [each.number for each in notebook.history(first.document)] == [1, 2]
    assert notebook.revision(first.document, 1) == first
    assert first.body == RECIPE
    assert notebook.revision(first.document) == second
    assert (second.made_by, first.note) == ("Ines (invented)", "as on Saturday")
    assert first.when < second.when


def test_two_revisions_are_compared_in_lines_with_units(notebook):
    first = notebook.save("recipe", RECIPE)
    second = notebook.save("recipe", SALTIER, document=first.document)
    assert [each.text for each in notebook.compare(first, second)] == ["ingredients › “salt” › amount: 48 g → 60 g"]
    assert notebook.compare(first, first) == ()


def test_a_removal_is_a_revision_and_any_revision_comes_back(notebook):
    first = notebook.save("recipe", RECIPE)
    notebook.save("recipe", SALTIER, document=first.document)
    gone = notebook.remove(first.document, note="too salty")
    assert gone.removed
    assert gone.number == 3
    assert notebook.entries() == ()
    assert [each.title for each in notebook.entries(removed=True)] == ["Ropewalk dough"]
    with pytest.raises(InputError, match="is its removal: there is nothing in it"):
        notebook.body(gone)
    back = notebook.restore(first.document, 1)
    assert (back.number, back.restored, back.hash) == (4, 1, first.hash)
    assert [each.number for each in notebook.entries()] == [4]
    with pytest.raises(InputError, match="is its removal and can't be brought back"):
        notebook.restore(first.document, 3)


def test_a_recipe_made_from_another_tells_its_lineage(notebook):
    first = notebook.save("recipe", RECIPE)
    free = notebook.save("recipe", {**RECIPE, "title": "Without gluten"}, derived_from=first.reference)
    assert free.links == {"derived from": first.reference}
    assert notebook.referred(free.links["derived from"]) == first
    assert [each.title for each in notebook.linking_to(first.document)] == ["Without gluten"]


def test_a_link_to_nothing_is_refused_and_nothing_is_written(notebook):
    nowhere = Reference("01890a5d-ac96-774b-bcce-b302099a8057", 64 * "0")
    with pytest.raises(InputError, match=r"is not in this notebook\. Save that first"):
        notebook.save("recipe", RECIPE, links={"salt": nowhere})
    assert notebook.entries() == ()


def test_a_search_finds_words_in_any_case_with_or_without_accents(notebook):
    notebook.save("recipe", {"title": "Pâte salée", "story": "100 % from the ropewalk"})
    notebook.save("note", {"title": "Salt", "text": "Coarse salt takes longer."})
    assert [each.title for each in notebook.entries(words="PATE ropewalk")] == ["Pâte salée"]
    assert [each.title for each in notebook.entries(words="sal")] == ["Salt", "Pâte salée"]
    assert [each.title for each in notebook.entries(words="sal", kind="note")] == ["Salt"]
    assert [each.title for each in notebook.entries(words="0 %")] == ["Pâte salée"]
    assert notebook.entries(words="c_arse") == ()


def test_a_search_looks_at_the_newest_revision_only(notebook):
    first = notebook.save("note", {"title": "Quay", "text": "east"})
    notebook.save("note", {"title": "Quay", "text": "west"}, document=first.document)
    assert notebook.entries(words="east") == ()
    assert len(notebook.entries(words="west")) == 1


def test_a_person_names_a_document_by_title_by_id_or_by_revision(notebook):
    first = notebook.save("recipe", RECIPE)
    second = notebook.save("recipe", SALTIER, document=first.document)
    assert notebook.find("ropewalk DOUGH") == second
    assert notebook.find(first.document) == second
    assert notebook.find("Ropewalk dough@1") == first
    assert notebook.find(f"{first.document[:13]}@{first.hash[:8]}") == first
    for unknown in ("Ropewalk", "Ropewalk dough@3", "Ropewalk dough@ffff", "Ropewalk dough@"):
        with pytest.raises(InputError, match=r"There is no|has no revision"):
            notebook.find(unknown)


def test_a_title_that_two_documents_have_must_be_told_apart(notebook):
    notebook.save("recipe", RECIPE)
    notebook.save("note", {"title": "Ropewalk dough"})
    with pytest.raises(InputError, match=r"could be 2 documents: .* Name one by the beginning of its id"):
        notebook.find("Ropewalk dough")


def test_somebody_who_saved_meanwhile_is_named(notebook):
    first = notebook.save("recipe", RECIPE)
    notebook.save("recipe", SALTIER, document=first.document, after=1)
    with pytest.raises(InputError, match=r"Ines \(invented\) saved revision 2"):
        notebook.save("recipe", RECIPE, document=first.document, after=1)
    assert len(notebook.history(first.document)) == 2


def test_a_document_keeps_its_kind(notebook):
    first = notebook.save("recipe", RECIPE)
    with pytest.raises(InputError, match="is a recipe in this notebook, and can't become a note"):
        notebook.save("note", RECIPE, document=first.document)
    with pytest.raises(InputError, match="A recipe and a note can't be compared"):
        notebook.compare(first, notebook.save("note", {"title": "x"}))


@pytest.mark.parametrize(
    ("body", "words"),
    [
        ({"title": "x", "on": datetime(2026, 5, 9, tzinfo=UTC)}, "no dates"),
        ({"title": "x", "salt_g": None}, "leave the key out"),
        ({"title": "x", "salt_g": float("inf")}, "can't hold inf"),
        ({"title": "x", "salt_g": 2**53}, "can't hold 9007199254740992"),
        ({"title": "x", "kind": "recipe"}, "told beside it"),
        ({"title": "x", "text": "a" * 2_000_001}, "may be 2 MB long"),
        ({"title": "a\x1b[2Jb"}, "can't stand in a line"),
        ({"title": "x" * 600}, "600"),
    ],
    ids=["date", "none", "infinite", "huge", "reserved", "long", "escape", "long title"],
)
def test_what_a_document_cannot_hold_is_refused_in_words(notebook, body, words):
    with pytest.raises(InputError) as refused:
        notebook.save("note", body)
    assert words in str(refused.value)
    assert notebook.entries() == ()


def test_a_document_says_what_it_is(notebook):
    with pytest.raises(InputError, match="must say what kind it is"):
        notebook.save(" ", {"title": "x"})


def test_a_body_nested_too_deep_is_refused(notebook):
    deep: dict = {}
    for _ in range(40):
        deep = {"in": deep}
    with pytest.raises(InputError, match="nested 32 deep"):
        notebook.save("note", deep)


@pytest.mark.parametrize("table", ["documents", "revisions", "links", "series", "readings", "stretches", "notebook"])
def test_the_store_itself_refuses_to_change_or_take_away(notebook, table):
    first = notebook.save("note", {"title": "x"})
    notebook.save("note", {"title": "y"}, derived_from=first.reference)
    series = notebook.begin_series("R", unit="Ω", instrument="meter", method="four wires")
    notebook.append(series.id, [1.0])
    column = {"documents": "kind", "links": "name", "notebook": "id"}.get(table, "seal")
    column = "value" if table == "readings" else column
    key = ", ".join(each.name for each in metadata.tables[table].primary_key)
    again = f"INSERT INTO {table} SELECT * FROM {table} WHERE true ON CONFLICT ({key}) DO UPDATE SET {column} = NULL"
    orders = [f"DELETE FROM {table}", f"UPDATE {table} SET {column} = NULL", again]
    if notebook.place.file is not None:
        orders.append(f"INSERT OR REPLACE INTO {table} SELECT * FROM {table}")
    for order in orders:
        with pytest.raises(NotebookError, match="a notebook only grows"), notebook._store.writing() as connection:
            connection.execute(text(order))
    assert notebook.verify().sound


def test_an_old_body_is_read_in_the_newest_form_and_stays_as_it_was(place):
    with open_notebook(place, kinds=[Kind(name="pot", schema=1)]) as notebook:
        old = notebook.save("pot", {"title": "Pot", "litres": 2})
    newer = Kind(
        name="pot", schema=3,
        migrations={1: lambda body: {**body, "lid": True}, 2: lambda body: {**body, "handles": 2}},
    )  # fmt: skip
    with open_notebook(place, kinds=[newer]) as notebook:
        kept = notebook.revision(old.document)
        assert kept == old
        assert notebook.body(kept) == {"title": "Pot", "litres": 2, "lid": True, "handles": 2}
        notebook.save("pot", notebook.body(kept), document=old.document)
    with open_notebook(place, kinds=[Kind(name="pot", schema=1)]) as notebook:
        with pytest.raises(NotebookError, match=r"written by a newer Lumped \(form 3; this one reads up to form 1\)"):
            notebook.body(notebook.revision(old.document))
        assert notebook.verify().sound


def test_a_body_that_its_kind_cannot_read_is_refused(place):
    def check(body, name):
        if "litres" not in body:
            raise InputError("body-holds", where=name, value="no litres")

    with open_notebook(place, kinds=[Kind(name="pot", check=check)]) as notebook:
        with pytest.raises(InputError, match="no litres"):
            notebook.save("pot", {"title": "Pot"})
        assert notebook.entries() == ()
