"""How soon a page follows a hand: from an amount that is dragged, or a condition that is moved, to the changed figure.

The first figures are of the server's work alone, page by page: what the page's own function takes, warm, for a change
that it has not met before, in processor time, so that other work on the machine counts little. The last are what a
person waits in a real browser, from the slider's input event to the changed text on the page, the wire and the drawing
included.

    python scripts/bench_pages.py [MOVES]
"""

import os
import statistics
import sys
import time
from collections.abc import Callable
from pathlib import Path

from lumped.app.asking import Question, walled
from lumped.app.asking_time import cooled_told, dried_told, kept_told, refreshed_told
from lumped.app.asking_trial import trialled
from lumped.app.changing import changed
from lumped.app.examples import example_recipe
from lumped.app.for_class import classed
from lumped.app.given import Given
from lumped.app.readings import home_region, readings

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from tests.web.served import FLAGS, chromium, served  # noqa: E402

BUDGET = 100.0  # ms; the median that is wanted of what follows a finger
LONGER = {"time, drying": 200.0, "for a class": 500.0}  # ms; a day in steps, and a plan of many ways to make it
RECIPE, SALT = "ropewalk-salt.toml", 2  # and the row of its salt
PIECE = {"shape": "roll", "thick": "12 mm", "cover": "open", "room": "21 °C", "humidity": "45 %", "draught": "quiet",
         "hours": "24"}  # fmt: skip
CLASS = {"by": "people", "people": "28", "age": "9", "group": "two", "mass": "", "pot": "3", "minutes": "",
         "region": "europe", "little_over": False}  # fmt: skip
LAMPS = ("lamp-red", "lamp-green", "lamp-blue", "lamp-white")
_MOVE = """async ([row, value]) => {
  const slider = document.getElementById(`drag-${row}`);
  const figure = document.querySelector("[data-figure=resistivity]");
  const before = figure.textContent, start = performance.now();
  const changed = new Promise((done) => {
    const look = new MutationObserver(() => {
      if (figure.textContent !== before) { look.disconnect(); done(performance.now() - start); }
    });
    look.observe(figure, {childList: true, characterData: true, subtree: true});
  });
  slider.value = value;
  slider.dispatchEvent(new Event("input", {bubbles: true}));
  return await changed;
}"""


def main() -> int:
    moves = int(sys.argv[1]) if len(sys.argv) > 1 else 40
    print(f"{RECIPE}, moved {moves} times on each page; {os.cpu_count()} cores")
    kept = [_tell(page, at_the_server(work, moves)) for page, work in pages().items()]
    kept.append(_tell("in the browser: dough, an amount", in_the_browser(moves)))
    return 0 if all(kept) else 1


def pages() -> dict[str, Callable[[int], object]]:
    """Give what the pages do when something is moved for the k-th time, by the page and what is moved."""
    salt, sugar = _given(RECIPE), _given("ropewalk-sugar.toml")
    return {
        "dough, an amount": lambda k: readings(_salted(salt, k), home_region()),
        "dough, how warm it is used": lambda k: readings(changed(salt, {"degrees": f"{15 + k}"}), home_region()),
        "dough, what heats it": lambda k: readings(_heated(salt, k), home_region()),
        "time, drying: humidity": lambda k: dried_told(salt, **PIECE | {"humidity": f"{30 + k} %"}),
        "time, drying: thickness": lambda k: dried_told(salt, **PIECE | {"thick": f"{4 + k / 2} mm"}),
        "time, drying: a month in a bag": lambda k: dried_told(
            salt, **PIECE | {"humidity": f"{30 + k} %", "cover": "bag", "hours": "720"}
        ),
        "time, pot clock": lambda k: cooled_told(salt, form="pot", thick="", mass="", room=f"{15 + k / 4} °C"),
        "time, a slab's clock": lambda k: cooled_told(salt, form="slab", thick=f"{10 + k} mm", mass="", room="21 °C"),
        "time, what grows": lambda k: kept_told(salt, ("room", "fridge")[k % 2]),
        "time, kneading soft again": lambda k: refreshed_told(salt, "512 g", f"{460 + k} g"),
        "trial": lambda k: trialled(_salted(salt, k), {"mould": ("", "ice-cube")[k % 2]}),
        "trial, a weak one": lambda k: trialled(_salted(salt, k), {"mould": "straw", "lamp": LAMPS[k % len(LAMPS)]}),
        "wall": lambda k: walled(sugar, 2 + k / 10, 4.0, "lamp-red"),
        "for a class": lambda k: _class(salt, people=str(10 + k)),
        "for a class, in 40 min": lambda k: _class(salt, people=str(10 + k), minutes="40"),
    }


def _given(name: str) -> Given:
    text = example_recipe(name)
    assert text is not None
    return Given(name=name, text=text)


def _salted(given: Given, k: int) -> Given:
    return changed(given, {"table-salt": f"{30 + k} g"})


def _heated(given: Given, k: int) -> Given:
    return changed(given, {"table-salt": f"{30 + k} g", "cooked": ("kettle", "not cooked")[k % 2]})


def _class(given: Given, **said: str) -> object:
    return classed(Question(given=given, said=CLASS | said), lambda share: None)


def at_the_server(work: Callable[[int], object], moves: int) -> list[float]:
    """Work so many changes out. [ms]"""
    for k in range(2):
        work(k)
    took = []
    for k in range(2, moves + 2):
        start = time.process_time()
        work(k)
        took.append(1e3 * (time.process_time() - start))
    return took


def in_the_browser(moves: int) -> list[float]:
    """Drag a slider so often, and see when the figure changes. [ms]"""
    from playwright.sync_api import sync_playwright

    with served() as (_, address), sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium(), args=FLAGS)
        page = browser.new_page()
        page.goto(f"{address}/dough/{RECIPE}")
        page.wait_for_selector(".what-ifs dd", timeout=30_000)
        took = []
        for k in range(moves):
            page.wait_for_timeout(150)
            took.append(float(page.evaluate(_MOVE, [SALT, 30 + k])))
        browser.close()
    return took


def _tell(what: str, took: list[float]) -> bool:
    """Print how long the middle one of some changes took, and whether that is within the budget."""
    slow, middle = sorted(took)[int(0.95 * (len(took) - 1))], statistics.median(took)
    budget = next((longer for page, longer in LONGER.items() if what.startswith(page)), BUDGET)
    kept = middle < budget
    found = f"{budget:.0f} ms {'kept' if kept else 'MISSED'}"
    print(f"{what:<44}{middle:>9.1f} ms  (19 of 20 below {slow:.0f} ms)  {found}", flush=True)
    return kept


if __name__ == "__main__":
    sys.exit(main())
