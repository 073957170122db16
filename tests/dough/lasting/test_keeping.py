"""The limits are those of L. R. Beuchat, Cereal Foods World 26, 345 (1981), as the table prints them."""

import numpy as np
import pytest

from lumped.dough.lasting.keeping import GROUPS, growth_margins, keeping
from lumped.errors import InputError
from lumped.quantities import Value

PRINTED = {"bacteria": 0.95, "salmonella": 0.91, "yeasts": 0.87, "moulds": 0.80, "salt-lovers": 0.75, "dry-moulds": 0.65,
           "sugar-yeasts": 0.60}  # fmt: skip


def wet(activity, ends=0.005):
    return Value(mean=activity, low=activity - ends, high=min(activity + ends, 1.0), unit="")


def sour_by(ph):
    return Value(mean=ph, low=ph - 0.2, high=ph + 0.2, unit="")


def states(found):
    return {each.group.key: each.state for each in found.growths}


def test_margins_are_counted_from_the_printed_limits():
    margins = growth_margins([0.5, 0.97])
    for key, limit in PRINTED.items():
        np.testing.assert_allclose(margins[key], [0.5 - limit, 0.97 - limit], atol=1e-12)


def test_below_six_tenths_nobody_grows():
    found = keeping(wet(0.55))
    assert set(states(found).values()) == {"stopped"}
    assert "nobody can grow" in found.words[0]
    assert "no promise" in found.words[-1]


def test_a_salt_saturated_dough_leaves_only_lovers_of_salt_and_drought():
    found = states(keeping(wet(0.755)))
    assert {key for key in GROUPS if found[key] != "stopped"} == {"salt-lovers", "dry-moulds", "sugar-yeasts"}
    assert found["salt-lovers"] == "may grow"  # within the table's rounding


@pytest.mark.parametrize(("low", "mean", "high", "state"), [
    (0.85, 0.90, 0.935, "stopped"), (0.85, 0.90, 0.945, "may grow"), (0.945, 0.97, 0.98, "may grow"),
    (0.965, 0.97, 0.98, "grows"),
])  # fmt: skip
def test_an_interval_that_reaches_a_limit_leaves_a_doubt(low, mean, high, state):
    """Bacteria need 0.95, printed to 0.01: no end of the interval may lie within that."""
    assert keeping(Value(mean=mean, low=low, high=high, unit=""), ph=sour_by(6.5)).of("bacteria").state == state


def test_a_wet_dough_is_open_to_all():
    assert set(states(keeping(wet(0.98), ph=sour_by(6.5))).values()) == {"grows"}


def test_acid_stops_bacteria_and_no_mould():
    found = keeping(wet(0.98), ph=Value(mean=3.6, low=3.5, high=3.7, unit=""))
    assert found.of("bacteria").by == found.of("salmonella").by == "acid"
    assert found.of("moulds").state == "grows"


def test_a_doubtful_acid_leaves_a_doubt():
    found = keeping(wet(0.98), ph=Value(mean=4.5, low=4.3, high=4.7, unit=""))
    assert found.of("salmonella").state == "may grow"


def test_a_preservative_slows_moulds_where_it_is_sour_enough_and_known():
    sour, plain = sour_by(4.0), sour_by(6.8)
    assert keeping(wet(0.9), ph=sour, sorbate=0.002).of("moulds").state == "slowed"
    assert keeping(wet(0.9), ph=sour, benzoate=0.002).of("moulds").by == "preservative"
    assert keeping(wet(0.9), ph=plain, sorbate=0.002).of("moulds").state == "grows"
    assert keeping(wet(0.9), sorbate=0.002).of("moulds").state == "grows"  # nobody knows the pH
    assert keeping(wet(0.9), ph=sour, sorbate=1e-5).of("moulds").state == "grows"


def test_a_fridge_slows_and_does_not_stop():
    found = keeping(wet(0.98), temperature=277.15)
    assert set(states(found).values()) == {"slowed"}
    assert any("fridge" in each for each in found.words)


def test_an_activity_above_one_is_refused():
    with pytest.raises(InputError, match=r"water activity of 1.2 can’t be"):
        keeping(Value(mean=1.2, low=1.1, high=1.3, unit=""))
