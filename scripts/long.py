"""The long trials of "nothing lost": results go into out/long as they come, and a second call goes on where it stopped.

    python scripts/long.py [kill] [cut] [two-writers] [bundle]

leaves out what is not named; without a name all of them run. It ends with a table, and with 1 if anything was lost.
"""

import json
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import asdict
from pathlib import Path
from random import Random
from typing import Any

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))  # the trials live beside the tests

from tests.notebook.children import Nursery  # noqa: E402
from tests.notebook.cutting import Commits, commit_many, damage  # noqa: E402
from tests.notebook.servers import Server, why_none  # noqa: E402
from tests.notebook.trials import Ground, ground, kill_once, two_writers  # noqa: E402

OUT = ROOT / "out" / "long"
KILLS, CUTS, WRITES, BUNDLES = 500, 2_000, 10_000, 100_000
FUZZ_SEED, FUZZ_SHARE = 2026, 2_000

Trial = tuple[str, Callable[[Path], dict[str, Any]]]


def kill(at: Ground) -> Iterator[Trial]:
    """Kill a program at 500 random moments."""
    for seed in range(KILLS):
        yield f"{seed:04}", lambda folder, seed=seed: asdict(kill_once(seed, folder, at))


def cut(commits: Commits) -> Iterator[Trial]:
    """Cut the log at 1,000 random bytes, and overwrite it from another 1,000 on."""
    for seed in range(CUTS):
        yield f"{seed:04}", lambda folder, seed=seed: _cut_once(commits, folder, seed)


def _cut_once(commits: Commits, folder: Path, seed: int) -> dict[str, Any]:
    chance = Random(10_000 + seed)
    at = chance.randrange(len(commits.log))
    rubbish = bytes([commits.log[at] ^ 0xFF]) + chance.randbytes(len(commits.log) - at - 1) if seed % 2 else b""
    problems = damage(commits, folder / "cut", at, rubbish)
    return {"byte": at, "of": len(commits.log), "overwritten": bool(rubbish), "problems": problems}


def write(nursery: Nursery) -> Iterator[Trial]:
    """Let two programs write 10,000 times each, on a file and on a server."""
    half = WRITES // 2
    yield "file", lambda folder: asdict(two_writers(folder / "n.sqlite", folder, nursery, saves=half, appends=half))
    yield "server", lambda folder: _write_on_server(folder, nursery)


def _write_on_server(folder: Path, nursery: Nursery) -> dict[str, Any]:
    if reason := why_none():
        return {"skipped": reason, "problems": []}
    server = Server()
    try:
        half = WRITES // 2
        return asdict(two_writers(server.fresh(), folder, nursery, saves=half, appends=half))
    finally:
        server.close()


def read_bundles() -> Iterator[Trial]:
    """Read 100,000 damaged bundles."""
    from tests.notebook.fuzzing import fuzz

    def some(start: int) -> dict[str, Any]:
        found = fuzz(FUZZ_SHARE, FUZZ_SEED, start=start)
        return {
            "inputs": FUZZ_SHARE,
            "outcomes": found,
            "problems": [each for each in found if each != "the same" and not each.startswith("refused: ")],
        }

    for start in range(0, BUNDLES, FUZZ_SHARE):
        yield f"{start:06}", lambda folder, start=start: some(start)


def run(name: str, trials: Iterator[Trial]) -> None:
    """Make those trials that were not made yet; each result is written as soon as it is there."""
    folder = OUT / name
    folder.mkdir(parents=True, exist_ok=True)
    for key, trial in trials:
        file = folder / f"{key}.json"
        if file.exists():
            continue
        start = time.monotonic()
        with tempfile.TemporaryDirectory(prefix="lumped-long-") as room:
            try:
                result = trial(Path(room))
            except Exception as error:  # a trial that breaks off has failed, and the others go on
                result = {"problems": [f"{type(error).__name__}: {error}"]}
        part = file.with_suffix(".part")
        part.write_text(json.dumps({**result, "took_s": round(time.monotonic() - start, 3)}, indent=1) + "\n")
        part.replace(file)
        if result["problems"]:
            print(f"{name} {key}: {result['problems'][0]}", flush=True)


def tell() -> int:
    """Print what all trials have found; give how many failed."""
    failed = 0
    print(f"{'trial':<12} {'made':>6} {'failed':>7} {'minutes':>8}  what they held")
    for folder in sorted(path for path in OUT.iterdir() if path.is_dir()):
        results = [json.loads(file.read_text()) for file in sorted(folder.glob("*.json"))]
        bad = sum(bool(each["problems"]) for each in results)
        minutes = sum(each["took_s"] for each in results) / 60
        print(f"{folder.name:<12} {len(results):>6} {bad:>7} {minutes:>8.1f}  {_held(folder.name, results)}")
        failed += bad
    return failed


def _held(name: str, results: list[dict[str, Any]]) -> str:
    def total(key: str) -> int:
        return sum(each.get(key, 0) for each in results)

    if name == "kill":
        return (
            f"{total('revisions'):,} revisions and {total('readings'):,} readings acknowledged before the kill; "
            f"{total('beyond')} commits done and not yet acknowledged; {_counted(each['scene'] for each in results)}"
        )
    if name == "cut":
        length = max((each.get("of", 0) for each in results), default=0)
        what = _counted("overwritten" if each.get("overwritten") else "cut" for each in results)
        return f"{what}; a log of {length / 1e6:.1f} MB"
    if name == "bundle":
        same = sum(each.get("outcomes", {}).get("the same", 0) for each in results)
        return f"{total('inputs'):,} damaged inputs, {same:,} of them read as the same notebook"
    return "; ".join(
        each.get("skipped") or f"2 × {each['writes_each']:,} writes in {each['seconds']:.0f} s"
        for each in results
        if "skipped" in each or "writes_each" in each
    )


def _counted(words: Iterable[str]) -> str:
    return ", ".join(f"{count:,} {word}" for word, count in Counter(words).most_common())


def main() -> int:
    named = sys.argv[1:] or ["kill", "cut", "two-writers", "bundle"]
    with tempfile.TemporaryDirectory(prefix="lumped-long-") as folder:
        if "cut" in named:
            run("cut", cut(commit_many(Path(folder))))
        with ground(Path(folder) / "ground") as at:
            if "kill" in named:
                run("kill", kill(at))
            if "two-writers" in named:
                run("two-writers", write(at.nursery))
    if "bundle" in named:
        run("bundle", read_bundles())
    return 1 if tell() else 0


if __name__ == "__main__":
    sys.exit(main())
