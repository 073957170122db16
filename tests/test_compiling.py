"""What was compiled before a file that it calls into changed is compiled anew."""

import os
import subprocess
import sys

CALLED = "from lumped.compiling import compiled\n\n@compiled\ndef number() -> int:\n    return {}\n"
CALLING = "from lumped.compiling import compiled\nfrom {0}.called import number\n\n@compiled\ndef told() -> int:\n    return number()\n"


def test_a_loop_follows_what_it_calls_when_that_changes(tmp_path):
    package = tmp_path / "loops_of_a_test"
    package.mkdir()
    (package / "__init__.py").write_text("", encoding="utf-8")
    (package / "calling.py").write_text(CALLING.format(package.name), encoding="utf-8")
    for number in (1, 2):
        (package / "called.py").write_text(CALLED.format(number), encoding="utf-8")
        assert run(tmp_path, package.name) == f"{number}"
    kept = list(package.rglob("*.nbi"))
    assert {each.name.split(".")[0].split("-")[0] for each in kept} == {"called", "calling"}


def run(folder, package):
    code = f"from {package}.calling import told; print(told())"
    done = subprocess.run(
        [sys.executable, "-B", "-c", code],
        capture_output=True,
        text=True,
        check=True,
        env={**os.environ, "PYTHONPATH": os.pathsep.join([str(folder), *sys.path])},
    )
    return done.stdout.strip()
