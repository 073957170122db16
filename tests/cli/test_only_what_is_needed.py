"""A command waits for no table and no sentence that it does not need."""

import json
import subprocess
import sys
from pathlib import Path

SALT = Path(__file__).parents[2] / "demo" / "recipes" / "ropewalk-salt.toml"
TELL = """
import contextlib, io, json, sys
from lumped.cli import main
from lumped.reference import handbook
import lumped.texts
with contextlib.redirect_stdout(io.StringIO()):
    assert main(["dough", sys.argv[1]]) == 0
said = lumped.texts._sentences("en")
print(json.dumps({
    "tables": {name: [len(shelf._known), len(shelf)] for name, shelf in handbook().tables.items()},
    "sentences": [len(said._keys) - len(said._unread), len(said._keys)],
}))
"""


def test_a_dough_reads_no_prices_no_shops_and_few_ingredients_and_sentences():
    run = subprocess.run([sys.executable, "-c", TELL, str(SALT)], capture_output=True, text=True, check=True)
    read = json.loads(run.stdout)
    unasked = ("prices", "shops", "lamps", "packs", "metals", "workshop", "swap", "gauges", "moulds", "lasting")
    assert [name for name in unasked if read["tables"][name][0]] == []
    assert read["tables"]["ingredients"][0] < 10 < read["tables"]["ingredients"][1]
    assert read["sentences"][0] < 0.2 * read["sentences"][1]
