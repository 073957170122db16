"""The docs keep step with the program: their files work, their commands run, their words are the program's."""

import re
import shlex
import shutil
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


@pytest.mark.parametrize("name", [each.name for each in sorted((ROOT / "demo").glob("*.toml"))])
def test_a_demo_file_that_is_copied_with_its_recipes_works_in_a_fresh_folder(name, tmp_path, monkeypatch, capsys):
    shutil.copy(ROOT / "demo" / name, tmp_path)
    shutil.copytree(ROOT / "demo" / "recipes", tmp_path / "recipes")
    monkeypatch.chdir(tmp_path)
    assert main(["check", name, "--effort", "quick"]) == 0
    assert capsys.readouterr().out


COMMANDS = [
    line.removeprefix("$ lumped ").split("#")[0]
    for page in PAGES
    for block in blocks(page, "console")
    for line in block.splitlines()
    if line.startswith("$ lumped ") and "mine.toml" not in line and not line.startswith("$ lumped notebook ")
]


@pytest.mark.parametrize("command", sorted(set(COMMANDS)))
def test_a_command_in_the_docs_runs(command: str, capsys, monkeypatch):
    monkeypatch.chdir(ROOT)
    monkeypatch.setenv("LUMPED_EFFORT", "quick")
    assert main(shlex.split(command)) == 0
    assert capsys.readouterr().out


SNIPPETS = [
    (page, block)
    for page in PAGES
    if "$ lumped notebook " not in page.read_text("utf-8")
    for block in blocks(page, "python")
]


@pytest.mark.parametrize(("page", "block"), SNIPPETS, ids=lambda given: getattr(given, "name", ""))
def test_python_in_the_docs_runs(page: Path, block: str, monkeypatch):
    monkeypatch.chdir(ROOT)
    exec(compile(block, str(page), "exec"), {})


KEEPING = [page for page in PAGES if "$ lumped notebook " in page.read_text("utf-8")]


@pytest.mark.parametrize("page", KEEPING, ids=lambda page: page.name)
def test_what_a_page_does_with_the_notebook_works_from_top_to_bottom(page: Path, tmp_path, capsys, monkeypatch):
    text = (ROOT / "demo/harbour-light.toml").read_text("utf-8")
    shutil.copytree(ROOT / "demo", tmp_path / "demo")
    (tmp_path / "mine.toml").write_text(text.replace("gap 6 mm", "gap 9 mm"), encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("LUMPED_NOTEBOOK", str(tmp_path / "notebook.sqlite"))
    monkeypatch.setenv("COLUMNS", "110")
    printed = ""
    for kind, block in re.findall(r"```(console|python|text)\n(.*?)```", page.read_text("utf-8"), re.S):
        if kind == "python":
            exec(compile(block, str(page), "exec"), {})
        elif kind == "text":
            assert timeless(block) in timeless(printed)
        else:
            for line in block.splitlines():
                printed = run_if_notebook(line, capsys) or printed


def run_if_notebook(line: str, capsys) -> str:
    """Run a line of a page if it is about the notebook; give what it printed."""
    if not line.startswith("$ lumped notebook "):
        return ""
    words, _, file = line.removeprefix("$ lumped ").partition(" > ")
    capsys.readouterr()
    assert main(shlex.split(words, comments=True)) == 0, line
    printed = capsys.readouterr().out
    assert printed, line
    if file:
        Path(file).write_text(printed, encoding="utf-8")
    return printed


def timeless(text: str) -> str:
    """Give a text without the moments, ids and spaces that differ from run to run."""
    return " ".join(re.sub(r"\d{4}-\d\d-\d\d \d\d:\d\d [+-]\d\d:\d\d|\b[0-9a-f]{8}-[0-9a-f]{4,5}", "…", text).split())


def test_every_verb_of_the_notebook_is_in_its_page():
    notebook = next(action for action in parser()._actions if action.dest == "verb").choices["notebook"]
    verbs = next(action for action in notebook._actions if action.choices and not action.option_strings).choices
    told = (ROOT / "docs/notebook.md").read_text("utf-8")
    assert len(verbs) > 10
    assert [verb for verb in verbs if f"$ lumped notebook {verb}" not in told] == []


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
    links = re.findall(r"\]\(([^)#:]+)(?:#[^)]*)?\)", page.read_text("utf-8"))
    assert [link for link in links if not (page.parent / link).exists()] == []


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_links_to_a_part_of_a_page_find_its_heading(page: Path):
    links = re.findall(r"\]\(([^)#:]*)#([^)]+)\)", page.read_text("utf-8"))
    assert [(link, part) for link, part in links if part not in headings(page.parent / link if link else page)] == []


def headings(page: Path) -> set[str]:
    """Give the names by which links find the headings of a page."""
    found = re.findall(r"^#+ (.+)$", page.read_text("utf-8"), re.M)
    return {re.sub(r"[^\w\- ]", "", each.lower()).replace(" ", "-") for each in found}


def test_the_readme_s_table_names_every_verb_and_each_page_of_the_docs_is_linked_from_the_readme():
    readme = (ROOT / "README.md").read_text("utf-8")
    table = readme[readme.index("## All commands") :].partition("\n## ")[0]
    verbs = next(action for action in parser()._actions if action.dest == "verb").choices
    assert [verb for verb in verbs if f"`{verb}" not in table] == []
    assert [page.name for page in (ROOT / "docs").glob("*.md") if f"(docs/{page.name}" not in readme] == []


def test_the_lock_names_no_host():
    assert "://" not in (ROOT / "requirements.lock").read_text("utf-8")


def test_the_project_file_and_the_package_tell_the_same_version():
    import lumped

    assert tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]["version"] == lumped.__version__
