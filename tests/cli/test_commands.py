"""The command line: what it prints, what it writes, how it fails."""

import json
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import pytest

from lumped.cli import main

ROOT = Path(__file__).parents[2]
DEMO = ROOT / "demo"
STATES = {
    # demo: {part: (state, first reason)}
    "harbour-light": {"light": ("bright", "")},
    "ebb-light": {"light": ("dark", "wrong-way")},
    "crowded-quays": {"light": ("dark", "bridged")},
    "loose-mooring": {"starboard light": ("dark", "leg-out")},
    "twin-buoys": {"outer buoy": ("barely-lit", "in-a-row"), "inner buoy": ("barely-lit", "in-a-row")},
    "ferry-on-pins": {"propeller motor": ("still", "legs-thin")},
    "ferry-on-nails": {"propeller motor": ("turning", "")},
    "breakwater": {"light": ("bright", "")},
    "crossed-legs": {"bell light": ("too-hot", "metal-touch")},
    "two-packs": {"light": ("dark", "two-packs")},
}


def test_every_demo_has_its_story_here():
    assert {path.stem for path in DEMO.glob("*.toml")} == set(STATES)


@pytest.mark.parametrize("name", STATES)
def test_a_demo_does_what_its_story_says(name: str, capsys):
    assert main(["check", str(DEMO / f"{name}.toml"), "--json", "--effort", "quick"]) == 0
    verdict = json.loads(capsys.readouterr().out)
    assert verdict["invented"]
    parts = {part["part"]: part for part in verdict["parts"]}
    for part, (state, reason) in STATES[name].items():
        assert parts[part]["state"] == state
        assert [each["code"] for each in parts[part]["reasons"]][:1] == ([reason] if reason else [])


def test_check_prints_a_table_with_reasons_and_cautions(capsys):
    assert main(["check", str(DEMO / "ebb-light.toml"), "--effort", "quick"]) == 0
    shown = capsys.readouterr().out
    for words in (
        "(invented)",
        "milliamperes",
        "the wrong way round",
        "Be careful",
        "Never put a lamp straight on a pack",
    ):
        assert words in shown


def test_check_writes_the_sheet_and_pictures(tmp_path, capsys):
    (tmp_path / "a folder").mkdir()
    sheet, png, svg = (tmp_path / "a folder" / name for name in ("a.pdf", "a.png", "a.svg"))
    demo = str(DEMO / "harbour-light.toml")
    assert main(["check", demo, "--effort", "quick", "--pdf", str(sheet), "--picture", str(png)]) == 0
    assert main(["check", demo, "--effort", "quick", "--picture", str(svg)]) == 0
    assert sheet.read_bytes().startswith(b"%PDF")
    assert png.read_bytes().startswith(b"\x89PNG")
    assert ElementTree.fromstring(svg.read_text("utf-8")).tag.endswith("svg")
    assert str(sheet) in capsys.readouterr().out.replace("\n", "")


def test_a_picture_of_another_ending_is_refused(tmp_path, capsys):
    demo = str(DEMO / "harbour-light.toml")
    assert main(["check", demo, "--effort", "quick", "--picture", str(tmp_path / "a.gif")]) == 1
    assert "ends in .svg or .png" in capsys.readouterr().err.replace("\n", " ")


def test_a_sheet_never_overwrites_a_sculpture_and_an_impossible_place_is_named_before_computing(tmp_path, capsys):
    own = tmp_path / "mine.toml"
    own.write_text((DEMO / "harbour-light.toml").read_text("utf-8"), encoding="utf-8")
    assert main(["check", str(own), "--pdf", str(own)]) == 1
    assert main(["check", str(own), "--pdf", str(own / "a.pdf")]) == 1
    assert "can't be written" in capsys.readouterr().err.replace("\n", " ")
    assert own.read_text("utf-8").startswith("kind")


def test_a_reader_that_stops_early_meets_no_traceback():
    command = f"unset PYTHONUNBUFFERED; {sys.executable} -m lumped schema recipe | (exec 0<&-; sleep 0.1)"
    run = subprocess.run(["bash", "-c", command], capture_output=True, text=True, check=True)
    assert run.stderr == ""


def test_a_failure_is_the_same_sentence_in_words_and_in_json(capsys):
    assert main(["check", "nowhere.toml"]) == 1
    words = capsys.readouterr()
    assert main(["check", "nowhere.toml", "--json"]) == 1
    machine = capsys.readouterr()
    error = json.loads(machine.err)["error"]
    assert (words.out, machine.out) == ("", "")
    assert error["code"] == "document-missing"
    assert error["message"] == " ".join(words.err.split())


@pytest.mark.parametrize(
    "arguments", [["chek"], ["check"], ["check", "a.toml", "--effort", "hard"], ["schema", "dough"]]
)
def test_wrong_usage_ends_with_two(arguments: list[str], capsys):
    with pytest.raises(SystemExit) as ended:
        main(arguments)
    assert ended.value.code == 2
    assert "usage:" not in (said := capsys.readouterr().err)
    assert said.strip().endswith((".", "”"))


@pytest.mark.parametrize(("arguments", "code", "said"), [
    (["mix", "r.toml", "--of", "a", "b", "c"], "usage-words", "“lumped mix” has no place for “b c”. An option that"),
    (["dough", "r.toml", "--hour", "2"], "usage-unknown", "“lumped dough” does not know “--hour 2”."),
    (["care", "r.toml", "--on", "tomorrow"], "usage-other", "--on “tomorrow” is no day that Lumped can read."),
    (["dry", "r.toml", "--hours", "two"], "usage-value", "--hours can’t be “two”: a number is needed."),
    (["dry", "r.toml", "--hours"], "usage-no-value", "--hours needs a value after it"),
])  # fmt: skip
def test_wrong_usage_is_a_sentence_and_for_programs_an_error(arguments, code, said, capsys):
    for more in ([], ["--json"]):
        with pytest.raises(SystemExit) as ended:
            main(more + arguments if code == "usage-no-value" else arguments + more)
        assert ended.value.code == 2
        err = capsys.readouterr().err
        assert said in (json.loads(err)["error"]["message"] if more else " ".join(err.split()))
        assert not more or json.loads(err)["error"]["code"] == code


@pytest.mark.parametrize("verb", ["dough", "beside"])
def test_a_name_that_is_neither_a_file_nor_kept_is_named(verb, tmp_path, capsys):
    asked = [verb, "harbour mud", "--notebook", str(tmp_path / "none.sqlite")]
    assert main(asked) == 1
    said = " ".join(capsys.readouterr().err.split())
    assert "no file “harbour mud” here, and no notebook" in said


def test_the_bare_command_prints_its_verbs(capsys):
    assert main([]) == 0
    shown = capsys.readouterr().out
    assert all(f"\n    {verb} " in shown for verb in ("check", "dough", "ports", "parts", "schema", "serve"))


def test_dough_prints_the_chain_from_grams_to_ohms(capsys):
    assert main(["dough", str(DEMO / "recipes/ropewalk-salt.toml")]) == 0
    shown = capsys.readouterr().out
    for words in ("Free water", "Ω·m", "Ω·cm", "Nobody measured this batch", "not food"):
        assert words in shown


def test_dough_in_json_gives_the_interval_in_si(capsys):
    assert main(["dough", str(DEMO / "recipes/ropewalk-salt.toml"), "--json"]) == 0
    resistivity = json.loads(capsys.readouterr().out)["resistivity"]
    assert resistivity["unit"] == "Ω·m"
    assert 0 < resistivity["low"] < resistivity["mean"] < resistivity["high"]


def test_ports_gives_a_symmetric_matrix_whose_rows_sum_to_zero(capsys):
    assert main(["ports", str(DEMO / "crowded-quays.toml"), "--json", "--effort", "quick"]) == 0
    result = json.loads(capsys.readouterr().out)
    matrix = result["matrix_S"]
    assert len(matrix) == len(result["ports"]) == 4
    largest = max(max(map(abs, row)) for row in matrix)
    for i, row in enumerate(matrix):
        assert sum(row) == pytest.approx(0, abs=1e-9 * largest)
        assert row == pytest.approx([other[i] for other in matrix], abs=1e-12 * largest)


def test_ports_prints_its_matrix(capsys):
    assert main(["ports", str(DEMO / "harbour-light.toml"), "--effort", "quick"]) == 0
    assert "pack.red@0" in capsys.readouterr().out


def test_parts_lists_what_a_file_may_name(capsys):
    assert main(["parts"]) == 0
    shown = capsys.readouterr().out
    assert all(key in shown for key in ("lamp-red", "motor-ordinary", "pack-4aa-alkaline", "nail-iron-3mm"))


@pytest.mark.parametrize("kind", ["sculpture", "recipe", "batch", "ingredient", "bundle"])
def test_schema_prints_a_json_schema(kind: str, capsys):
    assert main(["schema", kind]) == 0
    assert json.loads(capsys.readouterr().out)["additionalProperties"] is False


def test_a_light_command_loads_no_heavy_library():
    code = "import sys; from lumped.cli import main; main([]); print(*sorted(sys.modules))"
    loaded = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout.split()
    heavy = {"numpy", "scipy", "pydantic", "nicegui", "numba", "typst", "lumped.web", "lumped.sculpt"}
    assert heavy & set(loaded) == set()
