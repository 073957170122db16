"""One ingredient on slips: what it is made of, who must not touch it, what a cup weighs, where it is sold."""

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from nicegui import html
from nicegui.element import Element

from lumped.app.readings import home_region
from lumped.texts import say
from lumped.web.looks import listed
from lumped.web.sources import Sources
from lumped.web.words import Words

__all__ = ["put_ingredient"]


_ALL = ("made_of", "touch", "cautions", "weights", "offers", "names", "printed")


def put_ingredient(told: Mapping[str, Any], known: Sequence[str] = _ALL) -> Element:
    """Put an ingredient on the page, as `app.larder.ingredient_told` tells it; each figure says where it comes from.

    Parameters
    ----------
    told : mapping
        The ingredient.
    known : sequence of str
        Which of the slips.
    """
    sources = Sources(lambda what: told["sources"][what])
    place: Element = html.div().classes("ingredient").mark("ingredient")
    slips: dict[str, Callable[[], None]] = {
        "made_of": lambda: _put_numbers("made-of", say("web-ingredient-made-of"), told["made_of"], sources),
        "touch": lambda: _put_touch(told, sources),
        "cautions": lambda: _put_cautions(told, sources),
        "weights": lambda: _put_numbers("weights", say("web-ingredient-weights"), told["weights"], sources,
                                        say("web-ingredient-weigh-it")),
        "offers": lambda: _put_offers(told, sources),
        "names": lambda: _put_names(told, sources),
        "printed": lambda: _put_numbers("printed", say("web-ingredient-printed"), told["printed"], sources),
    }  # fmt: skip
    with place:
        _put_assumed(told["assumed"])
        for key in known:
            if told.get(key, True):
                slips[key]()
    return place


def _put_assumed(assumed: Sequence[str]) -> None:
    if assumed:
        with html.section().classes("slip wide").mark("assumed"):
            Words("h2", say("larder-heading-assumed"))
            listed(assumed)


def _put_numbers(
    marker: str, heading: str, rows: Sequence[tuple[str, str, str, str]], sources: Sources, none: str = ""
) -> None:
    """Words, figure and status of each row."""
    with html.section().classes("slip").mark(marker):
        Words("h2", heading)
        if not rows:
            Words("p", none, "soft")
        with html.dl().classes("numbers ingredient-numbers"):
            for key, words, figure, status in rows:
                Words("dt", words)
                with html.dd():
                    sources.figure(key, figure)
                    Words("span", status, "soft status")


def _put_touch(told: Mapping[str, Any], sources: Sources) -> None:
    with html.section().classes("slip").mark("touch"):
        Words("h2", say("web-ingredient-does"))
        Words("p", ", ".join(told["roles"]) or say("web-pantry-nothing"))
        Words("h3", say("web-care-allergens"))
        with html.dl().classes("numbers ingredient-numbers"):
            for key, words, names in told["allergens"]:
                Words("dt", words)
                with html.dd():
                    sources.figure(key, names)
        if told["remarks"]:
            Words("h3", say("heading-remarks"))
            listed(told["remarks"])


def _put_cautions(told: Mapping[str, Any], sources: Sources) -> None:
    if not told["cautions"]:
        return
    with html.section().classes("slip").mark("cautions"):
        Words("h2", say("heading-cautions"))
        sources.cautions(told["cautions"])


def _put_offers(told: Mapping[str, Any], sources: Sources) -> None:
    """Where one is at home first, or where somebody bought it; the rest folded away."""
    offers: Sequence[tuple[str, str, str, str, str]] = told["offers"]
    here = next((key for key, _, _, packs, _ in offers if told["own"] and packs != "–"), f"offer-{home_region()}")
    with html.section().classes("slip").mark("offers"):
        Words("h2", say("web-ingredient-offers"))
        _put_places([each for each in offers if each[0] == here], sources)
        with html.details():
            Words("summary", say("web-ingredient-elsewhere"))
            _put_places([each for each in offers if each[0] != here], sources)


def _put_places(offers: Sequence[tuple[str, str, str, str, str]], sources: Sources) -> None:
    with html.dl().classes("numbers ingredient-numbers"):
        for key, place, price, packs, sold in offers:
            with html.dt():
                Words("span", place)
                Words("span", sold, "soft status")
            with html.dd():
                sources.figure(key, price)
                Words("span", packs, "soft status")


def _put_names(told: Mapping[str, Any], sources: Sources) -> None:
    with html.section().classes("slip").mark("names"):
        Words("h2", say("web-ingredient-names"))
        with html.dl().classes("numbers ingredient-numbers"):
            for key, language, name in told["names"]:
                Words("dt", language)
                with html.dd():
                    sources.figure(key, name)
        if told["also"]:
            Words("p", say("larder-also", also=", ".join(told["also"])), "soft")
