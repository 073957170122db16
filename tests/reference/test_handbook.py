import pickle

import pytest

from lumped.errors import HandbookError
from lumped.quantities import Status
from lumped.reference import handbook, known_units, read_handbook, to_si

SOURCES = '[[sources]]\nkey = "tables"\ntitle = "Tables"\nshort = "Tables"\n'
GOOD = (
    'quantity = "length", value = 2, low = 1, high = 3, unit = "mm", '
    'source = "tables", page = "p. 1", status = "published"'
)


def shelf(tmp_path, row=GOOD, sources=SOURCES, curve=""):
    (tmp_path / "sources.toml").write_text(sources, encoding="utf-8")
    entry = f'[[entries]]\nkey = "nail"\nname = "nail"\nrows = [{{ {row} }}]\n'
    (tmp_path / "things.toml").write_text(f'about = "Things"\n{entry}{curve}', encoding="utf-8")
    return tmp_path


def test_a_figure_leaves_in_si_with_its_provenance_and_stays_as_printed_in_its_row(tmp_path):
    book = read_handbook(shelf(tmp_path))
    value, row = book.value("things", "nail", "length"), book.row("things", "nail", "length")
    assert (value.low, value.mean, value.high, value.unit) == (0.001, 0.002, 0.003, "m")
    assert (row.printed, row.unit, row.page) == (2.0, "mm", "p. 1")
    assert value.provenance.status is Status.PUBLISHED
    assert book.citations(value.provenance) == ("Tables",)


@pytest.mark.parametrize(
    ("old", "new", "why"),
    [
        ('source = "tables"', 'source = "table"', "the source “table” is not in sources.toml"),
        ('source = "tables"', 'source = ""', "names its source"),
        ('page = "p. 1"', 'page = ""', "names table or page"),
        ('unit = "mm", ', "", "no unit"),
        ('unit = "mm"', 'unit = "ell"', "the unit “ell” is not on the list"),
        ("low = 1", "low = 2.5", "not in order"),
        ("low = 1, ", "", "both low and high"),
        ("value = 2", 'value = "two"', "are numbers"),
        ("value = 2", "value = nan", "are numbers"),
        ('status = "published"', 'status = "measured"', "the status “measured”"),
        ('status = "published"', 'status = "computed"', "says in its note from what"),
        ('quantity = "length"', 'quantity = "length", colour = "red"', "unknown field colour"),
        ("low = 1", 'spread = "lognormal", low = 0', "lognormal value is positive"),
    ],
)
def test_an_unsound_row_is_refused_by_file_entry_and_row(tmp_path, old, new, why):
    with pytest.raises(HandbookError, match=r"things\.toml, entry “nail”, row “length” is unsound") as caught:
        read_handbook(shelf(tmp_path, row=GOOD.replace(old, new)))
    assert why in str(caught.value)


def test_a_curve_with_a_missing_column_is_refused(tmp_path):
    curve = '[[curves]]\nkey="c"\nname="c"\naxes=["x"]\nunits={x="", y="V"}\nrows=[{x=1, status="invented"}]'
    with pytest.raises(HandbookError, match="row “row 1” is unsound: the columns are x, y"):
        read_handbook(shelf(tmp_path, curve=curve))


def test_a_table_may_be_spread_over_files_named_for_its_parts(tmp_path):
    shelf(tmp_path)
    part = f'about = "More"\n[[entries]]\nkey = "screw"\nname = "screw"\nrows = [{{ {GOOD} }}]\n'
    (tmp_path / "things-more.toml").write_text(part, encoding="utf-8")
    book = read_handbook(tmp_path)
    assert (book.keys("things"), book.about["things"]) == (("nail", "screw"), "Things; More")
    (tmp_path / "things-more.toml").write_text(part.replace("screw", "nail"), encoding="utf-8")
    with pytest.raises(
        HandbookError, match=r"things-more\.toml, entry “nail”, row “-” is unsound: the key is used twice"
    ):
        read_handbook(tmp_path)


def test_a_file_that_is_no_toml_is_named(tmp_path):
    with pytest.raises(HandbookError, match=r"file things\.toml can't be read: Invalid value"):
        read_handbook(shelf(tmp_path, curve="key ="))


@pytest.mark.parametrize(
    ("ask", "answer"),
    [
        (
            lambda book: book.value("ingredient", "table-salt", "density"),
            "no table “ingredient”. Did you mean: ingredients",
        ),
        (lambda book: book.name("ingredients", "tabel-salt"), "Did you mean: table-salt"),
        (lambda book: book.value("ingredients", "table-salt", "g_per_cups"), "Did you mean: g_per_cup"),
        (lambda book: book.curve("nacl-conductivity"), "nacl-conductivity-20degC"),
    ],
)
def test_what_the_handbook_lacks_is_told_with_what_looks_alike(ask, answer):
    with pytest.raises(HandbookError) as caught:
        ask(handbook())
    assert answer in str(caught.value)
    assert str(pickle.loads(pickle.dumps(caught.value))) == str(caught.value)


def test_a_curve_cannot_be_written_on():
    with pytest.raises(ValueError, match="read-only"):
        handbook().curve("nacl-solubility")["salt"][0] = 1.0


def test_every_unit_of_the_closed_list_leads_to_si_and_no_other_is_known():
    assert to_si(20, "°C") == (293.15, "K")
    assert to_si(126, "mS/cm") == (12.6, "S/m")
    assert to_si(76.31, "S·cm²/mol") == (0.007631, "S·m²/mol")
    assert not known_units("furlong")
    with pytest.raises(KeyError):
        to_si(1.0, "furlong")


def test_the_handbook_is_read_once():
    assert handbook() is handbook()
