"""Files that are no label, or want to do harm, are refused with a sentence each; nothing of them is kept."""

import pytest

from lumped.app import notebooks, saving
from lumped.errors import InputError
from lumped.notebook import open_notebook
from lumped.pantry.label_file import read_label_toml
from lumped.pantry.label_table import labels_in, read_labels_csv

HEAD = "title,like,carbohydrate_g,fat_g,salt_g,serving_g,serving,energy_kJ,energy_kcal\n"
TOML = 'kind = "ingredient"\nschema = 1\ntitle = "ours"\n'
TABLES = {
    "larger than 2 MB": (HEAD + "x" * 2_000_001).encode(),
    "it holds characters that are no text": b"title,salt_g\nour\0salt,9\n",
    "this is no UTF-8 text": HEAD.encode("utf-16"),
    "a spreadsheet could take the rest for a formula": (HEAD + "=cmd|'/c calc'!A0,,,,9,,,,\n").encode(),
    "there is no column “c0”": ",".join(f"c{number}" for number in range(100_000)).encode(),
    "there are two columns “salt_g”": b"title,salt_g,salt_g\nours,1,2\n",
    "carbohydrate_g is '-3'. It must be at least 0": (HEAD + "ours,,-3,,9,,,,\n").encode(),
    "sums to 129.8 g in 100 g": (HEAD + "ours,,80,40,9,,,,\n").encode(),
    "serving_g is '0'. It must be more than 0": (HEAD + "ours,,80,4,1,0,1/4 cup,,\n").encode(),
    "carbohydrate_g is 'nan'": (HEAD + "ours,,nan,4,1,,,,\n").encode(),
    "at line 2 a quotation mark is left open": b'title,salt_g\n"our salt,9\n',
    "a cell has more than 2,000 characters; perhaps a quotation mark is open": b'title,salt_g\n"' + b"x" * 140_000,
    "salt_g is '9 g'. Write a number of grams alone, such as 9.": b"title,salt_g\nours,9 g\n",
    "The columns are: title, like": b"title,zzz\nours,9\n",
}
FILES = {
    "nests more than 32 levels deep": (TOML + "salt_g = " + "[" * 5000 + "]" * 5000).encode(),
    "nests more than 32 levels": (TOML + "x = " + "{a = " * 100 + "1" + "}" * 100).encode(),
    "is no UTF-8 text": TOML.encode("utf-16"),
    "salt_g is inf": (TOML + "salt_g = inf").encode(),
    "larger than 2 MB": (TOML + "#" * 2_000_001).encode(),
}


@pytest.mark.parametrize(("words", "content"), TABLES.items(), ids=list(TABLES))
def test_a_hostile_table_is_refused_in_words(tmp_path, words, content):
    path = tmp_path / "table.csv"
    path.write_bytes(content)
    with pytest.raises(InputError) as refused:
        read_labels_csv(path)
    assert words in str(refused.value)


@pytest.mark.parametrize(("words", "content"), FILES.items(), ids=list(FILES))
def test_a_hostile_ingredient_file_is_refused_in_words(tmp_path, words, content):
    path = tmp_path / "label.toml"
    path.write_bytes(content)
    with pytest.raises(InputError) as refused:
        read_label_toml(path)
    assert words in str(refused.value)


def test_kilojoules_in_the_place_of_kilocalories_are_told():
    [(_, found)] = labels_in(HEAD + "our sugar,granulated-sugar,99.9,0,0,,,,1700\n", "a.csv")
    assert any("7113 kJ in 100 g, doesn't fit what is in it, which gives 1698 kJ" in each for each in found.assumed)


def test_one_bad_line_of_many_saves_none(tmp_path):
    table = "title,like,salt_g\n" + "".join(f"salt {k},table-salt,99\n" for k in range(40)) + "=1+1,table-salt,99\n"
    with open_notebook(tmp_path / "book.sqlite", kinds=notebooks.kinds()) as notebook:
        with pytest.raises(InputError, match="line 42"):
            saving.save_labels(notebook, table, "a.csv")
        assert notebook.entries() == ()
