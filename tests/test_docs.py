"""The docs keep step with the program: their files work, their commands run, their words are the program's."""

import re
import shlex
import tomllib
from pathlib import Path

import pytest

from lumped.cli import main
from lumped.cli.main import parser
from lumped.sculpt.model import sculpture_schema

ROOT = Path(__file__).parents[1]
PAGES = sorted([ROOT / "README.md", ROOT / "CONTRIBUTING.md", *(ROOT / "docs").rglob("*.md")])


def blocks(page: Path, kind: str) -> list[str]:
    return re.findall(rf"```{kind}\n(.*?)```", page.read_text("utf-8"), re.S)


def test_the_sculpture_file_of_the_docs_gets_a_verdict(tmp_path, capsys):
    (text,) = blocks(ROOT / "docs/sculpture-file.md", "toml")
    path = tmp_path / "mine.toml"
    path.write_text(text, encoding="utf-8")
    assert main(["check", str(path), "--effort", "quick"]) == 0
    assert "lamp" in capsys.readouterr().out


COMMANDS = [
    line.removeprefix("$ lumped ").split("#")[0]
    for page in PAGES
    for block in blocks(page, "console")
    for line in block.splitlines()
    if line.startswith("$ lumped ") and "mine.toml" not in line
]


@pytest.mark.parametrize("command", sorted(set(COMMANDS)))
def test_a_command_in_the_docs_runs(command: str, capsys, monkeypatch):
    monkeypatch.chdir(ROOT)
    monkeypatch.setenv("LUMPED_EFFORT", "quick")
    assert main(shlex.split(command)) == 0
    assert capsys.readouterr().out


def test_every_verb_is_in_the_readme_or_the_docs():
    verbs = next(action for action in parser()._actions if action.dest == "verb").choices
    told = "\n".join(page.read_text("utf-8") for page in PAGES)
    assert [verb for verb in verbs if f"lumped {verb}" not in told] == []


def test_every_key_of_a_sculpture_file_is_in_its_docs():
    schema = sculpture_schema()
    tables = [schema, *schema["$defs"].values()]
    keys = {key for table in tables for key in table.get("properties", {})}
    told = (ROOT / "docs/sculpture-file.md").read_text("utf-8")
    assert [key for key in sorted(keys) if key not in told] == []


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_links_between_pages_lead_somewhere(page: Path):
    links = re.findall(r"\]\(([^)#:]+)\)", page.read_text("utf-8"))
    assert [link for link in links if not (page.parent / link).exists()] == []


def test_the_lock_names_no_host():
    assert "://" not in (ROOT / "requirements.lock").read_text("utf-8")


def test_the_project_file_and_the_package_tell_the_same_version():
    import lumped

    assert tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]["version"] == lumped.__version__
