"""How fast doughs are worked out: one recipe, a whole map of them in one pass against the same one by one, a swap,
and the command from a cold start, each beside what is wanted of it.

All figures are from this machine, now, the best of several runs, on one thread as the command runs; ratios are of runs
beside each other.

    python scripts/bench_dough.py [POINTS]
"""

import os
import subprocess
import sys
import time
from collections.abc import Callable
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import Any

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # as the command does, before numpy looks

import numpy as np

from lumped.dough import read_recipe
from lumped.dough.beliefs import middle
from lumped.dough.kneading import followed, knead_middle
from lumped.dough.lasting import Piece
from lumped.dough.lasting.outlook import Surroundings, outlook
from lumped.dough.maps import MixMap, mix_map
from lumped.dough.recipe import Recipe
from lumped.dough.salting import salting
from lumped.dough.swap import read_wish, swapped
from lumped.pantry import pantry
from lumped.picture.mix_map import map_svg
from lumped.quantities import Value

ROOT = Path(__file__).parents[1]
THREE = ("plain-flour", "tap-water", "table-salt")
WANTED = 50.0  # times as fast as one by one
BUDGETS = {"one recipe": 1e-3, "a swap, the slowest of these": 3.0, "`lumped dough` from a cold start": 0.8}  # s
SWAPS = (
    ("ropewalk-salt", {"without": ["cream-of-tartar"]}),
    ("ropewalk-salt", {"without": ["salt"]}),
    ("ropewalk-salt", {"diets": ["gluten-free", "vegan", "no-corn"], "without": ["salt", "acid", "fat"]}),
    ("ropewalk-sugar", {"without": ["gluten", "sugar"]}),
)


def main() -> int:
    points = int(sys.argv[1]) if len(sys.argv) > 1 else 2016
    divisions = round((np.sqrt(8 * points + 1) - 3) / 2)
    recipe = read_recipe(ROOT / "demo/recipes/ropewalk-salt.toml")
    found = mix_map(recipe, THREE, divisions=divisions)
    count = len(found.shares)
    print(f"a map of {count:,} doughs, resistivity; numpy {np.__version__}, {os.cpu_count()} cores")
    recipes = [_at(recipe, found, shares) for shares in found.shares]
    one_by_one = _best(lambda: [_alone(each, found) for each in recipes], runs=3)
    together = _best(lambda: found.at(found.shares), runs=20)
    scalar = np.array([_alone(each, found) for each in recipes])
    furthest = float(np.max(np.abs(found.at(found.shares) / np.clip(scalar, *found.shown.span) - 1)))
    _tell("all, one by one", one_by_one)
    _tell("all in one pass", together)
    print(f"{'the two differ by at most':<44}{furthest:>12.1e}")
    _tell("the map, surveyed and worked out", _best(lambda: mix_map(recipe, THREE, divisions=divisions), runs=5))
    _tell("the map, drawn (SVG)", _best(lambda: map_svg(found), runs=3))
    _tell("the salt picture's row, 61 amounts of 512", _best(lambda: salting(recipe), runs=3))
    roll, lying = Piece(shape="roll", thickness=0.012, extent=0.1), Surroundings()
    drying = _best(lambda: outlook(recipe, roll, lying, duration=86400.0, count=64), runs=3)
    _tell("a roll that dries for a day, 64 draws", drying)
    ratio = one_by_one / together
    fast = ratio >= WANTED and furthest < 1e-6
    print(f"{'one pass is faster':<44}{ratio:>11.0f}×  wanted {WANTED:.0f}×: {'reached' if fast else 'MISSED'}")
    took = (
        _best(lambda: knead_middle(recipe), runs=300),
        max(_best(partial(_swap, *each), runs=2) for each in SWAPS),
        _best(_cold_start, runs=5),
    )
    kept = [_tell_budget(what, seconds) for what, seconds in zip(BUDGETS, took, strict=True)]
    return 0 if fast and all(kept) else 1


def _swap(name: str, wish: dict[str, Any]) -> None:
    recipe = read_recipe(ROOT / f"demo/recipes/{name}.toml")
    swapped(recipe, read_wish(recipe, pantry(), **wish), pantry())


def _cold_start() -> None:
    """Run the command in a process of its own, as an installed one runs: Python's compiled files lie beside it."""
    command = [sys.executable, "-m", "lumped", "dough", str(ROOT / "demo/recipes/ropewalk-salt.toml")]
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL, env=kept)


def _tell_budget(what: str, seconds: float) -> bool:
    """Print how much of its budget something took."""
    kept = seconds <= BUDGETS[what]
    _tell(what, seconds, end="")
    print(f"  {100 * seconds / BUDGETS[what]:.0f} % of {BUDGETS[what]:g} s: {'kept' if kept else 'MISSED'}")
    return kept


def _at(recipe: Recipe, found: MixMap, shares: Any) -> Recipe:
    """The recipe with the three at a point of the map."""
    for key, share in zip(found.corners, shares, strict=True):
        recipe = _with_mass(recipe, key, float(share * found.total))
    return recipe


def _alone(recipe: Recipe, found: MixMap) -> float:
    """Resistivity of a recipe, a batch like those of the map. [Ω·m]"""
    batch = replace(middle(recipe, pantry()), unknowns=found.given.unknowns)
    return float(followed(recipe, batch, pantry()).resistivity[0])


def _with_mass(recipe: Recipe, key: str, mass: float) -> Recipe:
    portions = tuple(
        replace(each, mass=Value.exact(mass, "kg"), as_needed=None) if each.ingredient == key else each
        for each in recipe.portions
    )
    return replace(recipe, portions=portions)


def _best(work: Callable[[], Any], *, runs: int) -> float:
    took = []
    for _ in range(runs):
        start = time.perf_counter()
        work()
        took.append(time.perf_counter() - start)
    return min(took)


def _tell(what: str, seconds: float, end: str = "\n") -> None:
    print(f"{what:<44}{1e3 * seconds:>12.2f} ms", end=end)


if __name__ == "__main__":
    sys.exit(main())
