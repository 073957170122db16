import numpy as np
import pytest
from scipy.integrate import quad, solve_ivp

from lumped.chemistry.dissolving import (
    dissolving_time,
    grain_diameter,
    salt_dissolving_time,
    stirred_dissolving_time,
)
from lumped.errors import HandbookError
from lumped.reference import handbook

UNIT = {"solid_density": 1.0, "saturation": 1.0}
IN_DOUGH = {"temperature": 293.15, "obstruction": 0.3}


@pytest.mark.parametrize("final", [0.0, 1e-9, 1e-4, 0.01, 0.3, 0.9, 0.999])
def test_the_closed_forms_are_the_integrals(final):
    still = quad(lambda x: x / (1 - final * (1 - x**3)), 0, 1)[0]
    swept = quad(lambda x: 1 / (1 - final * (1 - x**3)), 0, 1)[0]
    assert dissolving_time(1.0, diffusivity=1.0, final=final, **UNIT) == pytest.approx(still, rel=1e-7)
    assert stirred_dissolving_time(1.0, sweep=1.0, final=final, **UNIT) == pytest.approx(swept, rel=1e-7)


@pytest.mark.parametrize(("thin", "share"), [(0.05, 0.87), (0.146, 0.83)])
def test_a_lone_grain_is_really_gone_a_little_sooner(thin, share):
    # the whole problem with its moving wall, by lines on y = r/R in ln y; thin = saturation over the grain's density
    count, far = 200, np.log(200.0)
    y, step = np.exp(np.linspace(0, far, count + 1)), far / count

    def change(_, v):
        u = np.concatenate([[1.0], v[1:], [0.0]])
        first, second = (u[2:] - u[:-2]) / (2 * step), (u[2:] - 2 * u[1:-1] + u[:-2]) / step**2
        wall = thin * (-3 * u[0] + 4 * u[1] - u[2]) / (2 * step)
        return np.concatenate([[2 * wall], ((second + first) / y[1:-1] ** 2 + wall * first) / v[0]])

    def gone(_, v):
        return v[0] - 1e-3

    gone.terminal = True
    start = np.concatenate([[1.0], np.zeros(count - 1)])
    found = solve_ivp(change, (0, 1 / thin), start, method="BDF", events=gone, rtol=1e-5, atol=1e-8)
    simple = dissolving_time(1.0, diffusivity=1.0, solid_density=1.0, saturation=thin)
    assert found.t[-1] / simple == pytest.approx(share, abs=0.02)


def test_coarse_salt_of_a_millimetre_takes_about_half_an_hour_in_dough_that_lies_still():
    # the trade's half an hour; r²/D of 1 mm at this obstruction is 0.5 mm radius, lone
    lone = salt_dissolving_time(1e-3, salt=0.0, water=0.2, **IN_DOUGH) / 60
    among = salt_dissolving_time(1e-3, salt=0.036, water=0.2, **IN_DOUGH) / 60
    assert 20 < lone < 45
    assert lone < among < 2 * lone


def test_salt_that_does_not_fit_never_dissolves():
    assert salt_dissolving_time(1e-3, salt=0.08, water=0.2, **IN_DOUGH) == np.inf
    assert stirred_dissolving_time(1.0, sweep=1.0, final=1.0, **UNIT) == np.inf


def test_twice_the_grain_takes_four_times_as_long_when_still_and_twice_when_stirred():
    still = dissolving_time([1e-3, 2e-3], diffusivity=1e-9, final=0.5, **UNIT)
    swept = stirred_dissolving_time([1e-3, 2e-3], sweep=1e-5, final=0.5, **UNIT)
    assert still[1] / still[0] == pytest.approx(4)
    assert swept[1] / swept[0] == pytest.approx(2)


def test_a_spoon_makes_minutes_of_it():
    sweep = handbook().value("grains", "stirring", "pot").mean
    assert 30 < stirred_dissolving_time(0.5e-3, sweep=sweep, solid_density=2165, saturation=317) < 300


def test_many_grains_at_once():
    times = salt_dissolving_time(np.array([2e-4, 1e-3, 2e-3]), salt=np.array([[0.01], [0.03]]), water=0.2, **IN_DOUGH)
    assert times.shape == (2, 3)
    assert np.all(np.diff(times, axis=0) > 0)
    assert np.all(np.diff(times, axis=1) > 0)


def test_coarse_salt_is_coarser_than_table_salt_and_an_unknown_kind_is_refused():
    assert grain_diameter("coarse-salt").low > grain_diameter("table-salt").high
    with pytest.raises(HandbookError, match="coarse-salt"):
        grain_diameter("coarse-sal")
