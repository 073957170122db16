"""Who comes, and how much dough their hands want."""

import math
from pathlib import Path

import numpy as np
import pytest

from lumped.errors import InputError
from lumped.quantities import Status
from lumped.sculpt import read_sculpture
from lumped.workshop import Party, dough_for, lump_of_age, read_party

DEMO = Path(__file__).parents[2] / "demo"


@pytest.mark.parametrize(
    ("words", "party"),
    [
        ("28 of 9", Party(count=28, age=9)),
        ("28 of 9 in pairs", Party(count=28, age=9, size=2)),
        ("28 children of age 9 in twos", Party(count=28, age=9, size=2)),
        ("  28  Pupils of 9 years old in groups of 4 ", Party(count=28, age=9, size=4)),
        ("ten of 9", Party(count=10, age=9)),
        ("1,000 of 8 to 10 in threes", Party(count=1000, age=9, size=3)),
        ("12 of 8-10", Party(count=12, age=9)),
        ("2 adults", Party(count=2, age=30)),
        ("one teacher", Party(count=1, age=30)),
        ("3 of 7 in fours", Party(count=3, age=7, size=3)),
        ("1 of 99", Party(count=1, age=99)),
    ],
)
def test_words_say_who_comes(words, party):
    assert read_party(words) == party


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ("0 of 9", "“0 of 9” is nobody"),
        ("-3 of 9", "is nobody"),
        ("2.5 of 9", "does not say who comes. Write how many of what age"),
        ("many of 9", "does not say who comes"),
        ("28", "does not say who comes"),
        ("", "does not say who comes"),
        ("28 of nine", "does not say who comes"),
        ("28 of 0", "an age of 0 can’t be planned for. Give one from 1 to 99 years"),
        ("28 of 100", "an age of 100 can’t be planned for"),
        ("5 of 8 to 120", "an age of 120 can’t be planned for"),
        ("1000000 of 9", r"1,000,000 people are more than Lumped plans for at once \(2,000\)"),
        ("28 of 9 in groups of 40", "that many don’t fit round one sculpture"),
        ("28 of 9 in groups of 0", "that many don’t fit round one sculpture"),
        ("9" * 70 + " of 9", "more than Lumped plans for at once"),
    ],
)
def test_what_says_nobody_is_refused_in_words(words, says):
    with pytest.raises(InputError, match=says):
        read_party(words)


def test_twenty_eight_children_in_pairs_want_what_the_trade_says():
    # shared estimate of the trade: about 1.7 kg conducting and 0.8 kg insulating dough, nobody weighed either
    pairs = [read_party("28 of 9 in pairs")]
    for kind, trade in (("conducting", 1.7), ("insulating", 0.8)):
        found = dough_for(pairs, kind)
        assert found.low < trade < found.high
        assert found.mean == pytest.approx(trade, rel=0.1)
        assert found.provenance.status is Status.FROM_MEMORY


def test_dough_goes_by_groups_and_not_by_heads():
    alone, pairs, threes = (
        dough_for([read_party(f"28 of 9{how}")], "conducting").mean for how in ("", " in pairs", " in threes")
    )
    assert alone == pytest.approx(2 * pairs)
    assert threes < alone
    odd, even = (dough_for([Party(count=count, age=9, size=2)], "conducting").mean for count in (27, 28))
    assert odd == pytest.approx(even)


def test_parties_add_and_older_hands_want_more():
    children, adults = Party(count=10, age=9), Party(count=2, age=30)
    both = dough_for([children, adults], "conducting").mean
    assert both == pytest.approx(sum(dough_for([each], "conducting").mean for each in (children, adults)), rel=0.01)
    lumps = [lump_of_age(age).mean for age in range(1, 100)]
    assert np.all(np.diff(lumps) >= 0)
    assert lumps[8] == 0.060  # the lump that all of Lumped counts by


def test_larger_groups_share_more_lumps_but_fewer_a_head():
    lumps = [Party(count=12, age=9, size=size).lumps("conducting") for size in range(1, 13)]
    means = [each.mean for each in lumps]
    assert means == sorted(means)
    assert all(each.low <= each.mean <= each.high for each in lumps)
    assert lumps[11].mean == 12


def _mass(lump) -> float:
    """Mass of a lump by the share of its box that is inside, at 1,250 kg/m³. [kg]"""
    low, high = lump.solid.bounds()
    axes = [np.linspace(a, b, 31)[:-1] + (b - a) / 60 for a, b in zip(low, high, strict=True)]
    points = np.stack(np.meshgrid(*axes, indexing="ij"), -1).reshape(-1, 3)
    return float((lump.solid.distance(points) < 0).mean() * np.prod(high - low)) * 1250


@pytest.mark.parametrize("path", sorted(DEMO.glob("*.toml")), ids=lambda path: path.stem)
def test_a_pair_of_nine_year_olds_has_dough_for_every_demo_sculpture(path):
    sculpture = read_sculpture(path)
    taken = {"conducting": 0.0, "insulating": 0.0}
    for lump in sculpture.lumps:
        taken[sculpture.doughs[lump.dough].kind] += _mass(lump)
    assert math.fsum(taken.values()) > 0
    for kind, mass in taken.items():
        assert mass <= dough_for([Party(count=2, age=9, size=2)], kind).mean
