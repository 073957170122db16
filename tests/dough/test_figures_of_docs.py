"""What the pages tell of doughs is what the engine computes: each figure is read out of the page.

A number of `docs/dough.md` and `docs/maps.md` that is neither held here nor listed as chosen or said by others is
named with its line, so that no figure stands there on trust.
"""

from collections.abc import Callable
from dataclasses import replace
from functools import cache
from pathlib import Path

import numpy as np
import pytest
from tests.bowls import CONDUCTING, INSULATING, recipe_of
from tests.told import figures, hold, not_held, page

from lumped.app.measuring import measured_recipe
from lumped.app.named import named_by_files
from lumped.chemistry import brine_conductivity, salt_dissolving_time, salt_solubility
from lumped.dough import knead, read_recipe
from lumped.dough.beliefs import middle, sorted_out
from lumped.dough.calibrating import KEPT
from lumped.dough.influence import influences_on
from lumped.dough.kneading import followed, kneading
from lumped.dough.properties import PROPERTIES
from lumped.dough.salting import salting
from lumped.dough.texture import POURS, POWDER
from lumped.dough.what_if import ratio, what_if
from lumped.pantry import pantry
from lumped.reference import handbook
from lumped.verdict.walls import Wall

DOUGH, MAPS, HOW, MEASURES = (f"docs/{name}.md" for name in ("dough", "maps", "how-it-is-computed", "measures"))
GRAMS = (18, 36, 73, 146)
KELVIN = 273.15


@cache
def salted(grams, **more):
    return kneading(replace(recipe_of({**CONDUCTING, "table-salt": grams}), **more))


@cache
def sour_free(grams):
    return kneading(recipe_of({**CONDUCTING, "table-salt": grams, "cream-of-tartar": 0}))


@cache
def sugared(starch=False, **more):
    grams = {"cornstarch" if starch and key == "plain-flour" else key: mass for key, mass in INSULATING.items()}
    changed = grams | {key.replace("_", "-"): mass for key, mass in more.items()}
    return kneading(recipe_of({key: mass for key, mass in changed.items() if mass}, "insulating", "not cooked"))


@cache
def changes(sweet):
    done = sugared() if sweet else salted(73)
    return {each.key: each.factor for each in what_if(done.recipe)}


@cache
def row():
    return salting(salted(73).recipe)


def three(value, scale=1.0):
    """A figure and its ends, as pages print them."""
    return [scale * each for each in (value.mean, value.low, value.high)]


def inverse(value):
    return [1 / value.mean, 1 / value.high, 1 / value.low]


def spread(draws):
    return [float(each) for each in np.quantile(draws, [0.5, 0.025, 0.975])]


def resistivity(done, scale=1.0):
    return three(done.value(done.chain.resistivity, "Ω·m", "resistivity"), scale)


def grains(grams, exponent=2.0, *, bare=False):
    """Ω·cm of the estimate's own assumptions; bare without oil and cream of tartar."""
    kept = {key: mass for key, mass in CONDUCTING.items() if not bare or key in ("plain-flour", "tap-water")}
    recipe = recipe_of({**kept, "table-salt": grams})
    given = middle(recipe, pantry())
    theirs = {"archie_exponent": exponent, "picture": 0.0, "bound_water": 0.3, "air": 0.0}
    unknowns = replace(given.unknowns, **{name: np.array([value]) for name, value in theirs.items()})
    return 100 * float(followed(recipe, replace(given, unknowns=unknowns), pantry()).resistivity[0])


def activity(grams):
    chain = salted(grams).chain
    return float(np.median(chain.water_activity))


def of_the_dough(grams):
    chain = salted(grams).chain
    return 100 * float(np.median(chain.of("sodium-chloride") / chain.mass))


def sodium(grams):
    return float(np.median(PROPERTIES["sodium"].given(salted(grams).chain)))


def by_acid(grams):
    """What acid adds to the conductivity of the liquid. [%]"""
    return spread(100 * (salted(grams).chain.liquid_conductivity / sour_free(grams).chain.liquid_conductivity - 1))


def acidity(done):
    return three(done.value(done.chain.ph, "", "ph"))


def entry(quantity, scale=1.0):
    return three(handbook().value("doughs", "unmeasured", quantity), scale)


def window(cooked):
    return [100 * handbook().value("marks", f"hydration-{cooked}", end).mean for end in ("least", "most")]


def dissolving(salt):
    return float(salt_dissolving_time(1e-3, salt=salt, water=0.237, temperature=20 + KELVIN, obstruction=0.3))


def leaks():
    wall = Wall(thickness=3e-3, area=4e-4)
    return [1e3 * 3.2 / wall.resistance(each) for each in (13, 118, 300, 900)]


def at_the_turn():
    found = row()
    return [*three(found.best, 1e3), *(1e3 * each for each in found.enough)]


def of_salt(grams):
    """A row of the maps' table: by the estimate's assumptions, all that is open, water activity, share."""
    return [grains(grams), *resistivity(salted(grams), 100), activity(grams), of_the_dough(grams)]


def either_way_of(value):
    return sorted((value.mean / value.low, value.high / value.mean))


def ropewalk(kind):
    return knead(read_recipe(Path(f"demo/recipes/ropewalk-{kind}.toml"))).resistivity


def either_way(grams):
    return either_way_of(salted(grams).value(salted(grams).chain.resistivity, "Ω·m", "resistivity"))


def full_brine(celsius):
    return brine_conductivity(float(salt_solubility(celsius + KELVIN)), celsius + KELVIN)


def settled(done, names):
    """What share of what is open goes when some of it is known, as `lumped.dough.influence` counts. [%]"""
    known = {name: np.full_like(each, np.median(each)) for name, each in done.named.items() if name in names}
    left = followed(done.recipe, sorted_out(done.recipe, {**done.named, **known}, pantry()), pantry())
    return 100 * (1 - np.var(np.log(left.resistivity)) / np.var(np.log(done.chain.resistivity)))


def narrowed(done, measurement):
    """What a measurement takes away of what is open, and the factor that it leaves. [%, 1]"""
    found = next(each for each in influences_on(done, pantry()) if each.measurement == measurement)
    return 100 * found.share, found.factor_left


@cache
def ropewalk_in_japan():
    return measured_recipe(named_by_files(Path("demo/recipes/ropewalk-salt.toml")), kitchen="japanese")


SEEN: dict[tuple[str, str], Callable] = {
    # page, and its words with {} where a figure stands: what is seen, in the page's units
    (MAPS, "conducts best with {} g of salt ({} to {} g), just where the water is full; anything from {} to {} g"): (
        at_the_turn),
    (MAPS, "| 18 g | 23.7 Ω·cm | {} Ω·cm | {} Ω·cm ({} to {}) | {} | {} % |"): lambda: of_salt(18),
    (MAPS, "| 36 g | 14.6 | {} | {} ({} to {}) | {} | {} % |"): lambda: of_salt(36),
    (MAPS, "| 73 g | 11.3 | {} | {} ({} to {}) | {} | {} % |"): lambda: of_salt(73),
    (MAPS, "| 146 g | 13.7 | {} | {} ({} to {}) | {} | {} % |"): lambda: of_salt(146),
    (MAPS, "conduct {} to {} % worse than the estimate by hand"): lambda: sorted(
        100 * (grains(grams) / theirs - 1) for grams, theirs in zip(GRAMS, (23.7, 14.6, 11.3, 13.7), strict=True)
    )[::3],
    (MAPS, "without these, {} to {} % better"): lambda: sorted(
        100 * (1 - grains(grams, bare=True) / theirs) for grams, theirs in zip(GRAMS, (23.7, 14.6, 11.3, 13.7), strict=True)
    )[::3],
    (MAPS, "its middle lies {} to {} times as high"): lambda: sorted(
        resistivity(salted(grams), 100)[0] / grains(grams) for grams in GRAMS
    )[::3],
    (MAPS, "Each of {} possible batches"): lambda: [512],
    (MAPS, "({} to {} % water to flour for cooked doughs, {} to {} % for those kneaded cold"): lambda: [
        *window("cooked"), *window("not-cooked")],
    (DOUGH, "all {} draws are in it"): lambda: [salted(73).chain.resistivity.size],
    (DOUGH, "({} of the draws are kept"): lambda: [KEPT],
    (DOUGH, "({} %, from memory)"): lambda: [100 * (1 - handbook().value("doughs", "unmeasured", "scatter").low)],
    (DOUGH, "(cooked {} to {} %, kneaded cold {} to {} %, common practice)"): lambda: [
        *window("cooked"), *window("not-cooked")],
    (DOUGH, "at m = 2 without air: {}/{}/{}/{}; all open: {}/{}/{}/{}"): lambda: [
        *map(grains, GRAMS), *(resistivity(salted(grams), 100)[0] for grams in GRAMS)],
    (DOUGH, "a factor of {} to {} either way"): lambda: [
        min(low for low, _ in map(either_way, GRAMS)), max(high for _, high in map(either_way, GRAMS))],
    (DOUGH, "| {} to {}, grains without air |"): lambda: [grains(73, 1.5), grains(73, 3.0)],
    (DOUGH, "| solid from {} g ({} to {}) |"): lambda: three(row().solid_from, 1e3),
    (DOUGH, "differ by {} % ({} to {}); sodium {} times"): lambda: [
        *(100 * (each - 1) for each in three(ratio(salted(36), salted(146)))), sodium(36) / sodium(146)],
    (DOUGH, ".94/.88/.75/.75 | {}/{}/{}/{} |"): lambda: [*map(activity, GRAMS)],
    (DOUGH, "| {} % ({} to {}) | corrected: in a full brine"): lambda: by_acid(73),
    (DOUGH, "with 18 g of salt it adds {} % ({} to {})"): lambda: by_acid(18),
    (DOUGH, "| {} g ({} to {}) | corrected: flour takes hydrogen"): lambda: spread(
        1e3 * salted(73).chain.in_liquid("potassium-hydrogen-tartrate")),
    (DOUGH, "1.8 times too conducting | {} ({} to {}) |"): lambda: inverse(changes(sweet=False)["hot"]),
    (DOUGH, "| {} Ω·m ({} to {}); ratio {} ({} to {}) |"): lambda: [
        *resistivity(sugared()), *three(ratio(sugared(), salted(73)))],
    (DOUGH, "400 to 900 Ω·m | {} Ω·m ({} to {}) |"): lambda: resistivity(sugared(distilled_water=120)),
    (DOUGH, "about 85 Ω·m | {} Ω·m ({} to {}) |"): lambda: resistivity(sugared(granulated_sugar=0)),
    (DOUGH, "a factor of 2.5, a gram 5 | {} ({} to {}); {} ({} to {}) |"): lambda: [
        *inverse(changes(sweet=True)["pinch"]), *inverse(changes(sweet=True)["gram"])],
    (DOUGH, "7 to 13 % | {} % ({} to {}) |"): lambda: [100 * (each - 1) for each in inverse(changes(sweet=True)["tap"])],
    (DOUGH, "28 % | {} % ({} to {}) |"): lambda: [
        100 * (each - 1) for each in three(ratio(sugared(True), sugared(True, distilled_water=0, tap_water=70)))],
    (DOUGH, "a factor of 4 | {} ({} to {}) |"): lambda: three(changes(sweet=True)["starch"]),
    (DOUGH, "13/118/300/900 Ω·m | {}/{}/{}/{} |"): leaks,
    (DOUGH, "{} min for a lone grain; {} h with 73 g salt in 237 g water"): lambda: [
        dissolving(0.0) / 60, dissolving(0.073) / 3600],
    (DOUGH, "below flour's own pH, {} ({} to {})"): lambda: entry("flour_ph"),
    (DOUGH, "{} mmol to 100 g of white flour for each unit of pH ({} to {})"): lambda: [
        100 * pantry()["plain-flour"].composition["protein"] * each for each in entry("flour_binding")],
    (DOUGH, "a sugar dough reads {} ({} to {}), a salt dough without acid {} ({} to {}), one with a tablespoon of cream"
            " of tartar {} ({} to {})"): lambda: [
        *acidity(sugared()), *acidity(sour_free(73)), *acidity(salted(73))],
    (DOUGH, "make up {} to {} % of what is open of these doughs"): lambda: sorted(
        settled(done, ("archie_exponent", "bound_water", "picture")) for done in (sugared(), salted(73))),
    (DOUGH, "weighed, it takes {} % of what is open away, and a factor of {} between the ends is left"): lambda: (
        narrowed(salted(73), "resistivity")),
    (DOUGH, "of the stiff sugar dough {} %, and a factor of {}."): lambda: narrowed(sugared(), "resistivity"),
    (DOUGH, "thickened with that sugar: {} %)"): lambda: narrowed(sugared(), "syrup")[:1],
    (DOUGH, "weigh the finished dough: {} %)"): lambda: narrowed(salted(73), "finished")[:1],
    (DOUGH, "crumbs (wetted below {} of the least of the window) and batter (above {} of the most)"): lambda: [
        POWDER, POURS],
    (DOUGH, "less than {} % of starch, fibre and protein"): lambda: [
        100 * handbook().value("marks", "body", "least").mean],
    (MAPS, "less than {} % flour or starch, which is no dough"): lambda: [
        100 * handbook().value("marks", "body", "least").mean],
    (DOUGH, "kneaded cold with less than {} % of gum or husk"): lambda: [
        100 * handbook().value("swap", "texture", "least_binder").low],
    ("README.md", "is known to a factor of {} to {} either way"): lambda: either_way_of(ropewalk("salt")),
    ("README.md", "a sugar dough to a factor of {} down and {} up"): lambda: either_way_of(ropewalk("sugar")),
    (HOW, "the median resistivity is {}, {}, {}, {} Ω·cm"): lambda: [
        resistivity(salted(grams), 100)[0] for grams in GRAMS],
    (HOW, "beyond about {} g salt stays solid"): lambda: [round(1e3 * row().solid_from.mean, -1)],
    (HOW, "hardly 1 % ({} to {})"): lambda: by_acid(73)[1:],
    (HOW, "A stiff one about {} times ({} Ω·m, {} to {})."): lambda: [
        ratio(sugared(), salted(73)).mean, *resistivity(sugared())],
    (HOW, "120 instead of 70 g of water, only {} Ω·m. Without sugar about {}."): lambda: [
        resistivity(sugared(distilled_water=120))[0], round(resistivity(sugared(granulated_sugar=0))[0], -1)],
    (HOW, "0.4 g in a sugar dough costs a factor {}, 1 g a factor {}."): lambda: [
        1 / changes(sweet=True)[each].mean for each in ("pinch", "gram")],
    (HOW, "{} % with flour, whose own ions dominate; {} % with cornstarch"): lambda: [
        100 * (1 / changes(sweet=True)["tap"].mean - 1),
        100 * (ratio(sugared(True), sugared(True, distilled_water=0, tap_water=70)).mean - 1)],
    (HOW, "By a factor of about {}, on what"): lambda: [round(changes(sweet=True)["starch"].mean)],
    (HOW, "At 60 °C it conducts {} times better than at 25 °C"): lambda: [
        ratio(salted(73, temperature=25 + KELVIN), salted(73, temperature=60 + KELVIN)).mean],
    (HOW, "{} g ({} to {}, from memory) held by a gram of dry flour"): lambda: entry("bound_water"),
    (MEASURES, "moves by {} % in resistivity"): lambda: [
        100 * abs(ropewalk_in_japan().after["resistivity"] / ropewalk_in_japan().before["resistivity"] - 1)],
}  # fmt: skip


ROUGHLY: dict[tuple[str, str], Callable] = {
    # the same for words that say how near: whether what is seen keeps to it
    (MAPS, "{} g conduct as well as {} g, with a third of the sodium"): lambda less, more: (
        abs(ratio(salted(less), salted(more)).mean - 1) < 0.02 and abs(sodium(less) / sodium(more) - 1 / 3) < 0.02
    ),
    (DOUGH, "saturated brine alone gains {},"): lambda gains: (
        abs(full_brine(60).mean / full_brine(20).mean - gains) < 0.05
    ),
    (MEASURES, "a factor of {} either way"): lambda factor: all(
        abs(each - factor) < 0.25 for each in either_way_of(ropewalk_in_japan().resistivity_before)
    ),
}


@pytest.fixture(autouse=True)
def at_the_root(monkeypatch):
    monkeypatch.chdir(Path(__file__).parents[2])


@pytest.mark.parametrize(("name", "words"), SEEN)
def test_the_page_tells_what_is_seen(name, words):
    hold(page(name), words, SEEN[name, words]())


@pytest.mark.parametrize(("name", "words"), ROUGHLY)
def test_what_the_page_tells_roughly_is_so(name, words):
    assert ROUGHLY[name, words](*(figure for figure, _ in figures(page(name), words)))


PLAIN = {
    # numbers that nobody computes: how others see it, what was chosen, and names of scores
    MAPS: (
        "a lump of 60 g", "125 g flour and 237 g water, boiled down by 15 %",
        "Archie with m = 2", "Nobody knows that m is 2", "(above 5 Ω·m)", "more than 1 % of the dough",
        "its 95 % interval", "all that is open (95 %)",
    ),
    DOUGH: (
        "its 95 % interval", "is the 95 % interval", "about 50 ms on two cores", "against 100 ms", "([decision 23",
        "1 crumbles, 2 stiff, 3 right, 4 soft, 5 sticks", "Bleached cake flour may be near 5",
        "18/36/73/146 g salt in 125 g flour and 237 g water: 23.7/14.6/11.3/13.7 Ω·cm (grains, m = 2)",
        "confirmed at m = 2", "Archie's exponent from 1.5 to 3: 8.9 to 18 Ω·cm", "beyond about 66 g salt",
        "| 36 g and 146 g ", "acid adds about 1.5 %", "of cream of tartar about 1 g", "at 60 °C a dough reads",
        "above 35 °C extrapolated", "400 to 2,000 Ω·m, ratio 2,000 to 10,000", "wetter, 120 g of water",
        "a wall of 3 mm and 4 cm² leaks 33/3.6/1.4/0.5 mA at 3.2 V", "coarse salt (1 mm)", "(73 g of salt above)",
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", PLAIN)
def test_no_number_stands_on_the_page_on_trust(name):
    held = [words for where, words in [*SEEN, *ROUGHLY] if where == name]
    assert not_held(page(name), held, PLAIN[name]) == []
