"""What a shopping list is told in, sentences and rows of words: the same in a terminal and on a page."""

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import TYPE_CHECKING

from lumped.app.titles import marked
from lumped.texts import say

if TYPE_CHECKING:
    from lumped.workshop.shopping import Bought, Shopping

__all__ = ["dough_words", "places", "shop_headings", "shop_rows", "shopping_title", "sum_words", "tap_words",
           "till_text", "used_words"]  # fmt: skip


def shopping_title(found: "Shopping") -> str:
    """Say for which doughs it is, and whether a recipe is invented."""
    title = say("shopping-title", titles=", ".join(title for title, _ in found.doughs))
    return marked(title, invented=found.invented)


def dough_words(found: "Shopping") -> str:
    """Say how much of each dough it is for."""
    from lumped.quantities import rounded_text as short

    amounts = [say("shopping-amount", mass=short(mass), title=title) for title, mass in found.doughs]
    return say("shopping-for", amounts=", ".join(amounts))


def places(found: "Shopping") -> "Iterator[tuple[str, list[Bought]]]":
    """Give each place where something is bought, in words, with what is bought there."""
    bought = [each for each in found.lines if each.sold.place != "tap"]
    for place, lines in groupby(bought, key=lambda each: each.sold.words):
        yield say("shopping-place", place=f"{place[:1].upper()}{place[1:]}"), list(lines)


def shop_headings(found: "Shopping") -> list[str]:
    """Give the headings of a place's rows: what, beside what it lies, need, packets, what is left over, money."""
    return ["", "", say("column-need"), say("column-buy"), say("column-over"), found.money]


def shop_rows(lines: "Sequence[Bought]") -> list[tuple[str, ...]]:
    """Give a row for each thing that is bought."""
    from lumped.quantities import weight_text

    return [
        (each.name, say(f"shopping-shelf-{each.shelf}"), weight_text(each.need), _packets(each),
         "" if each.over is None else weight_text(each.over), _paid(each))
        for each in lines
    ]  # fmt: skip


def tap_words(found: "Shopping") -> str:
    """Say what comes from the tap; "" if nothing does."""
    from lumped.quantities import weight_text

    tapped = [f"{weight_text(each.need)} {each.name}" for each in found.lines if each.sold.place == "tap"]
    return say("shopping-tap", what=", ".join(tapped)) if tapped else ""


def sum_words(found: "Shopping") -> str:
    """Say what all packets cost together."""
    from lumped.quantities import coins_text, figure_text

    low, high = (figure_text(end, found.money) for end in (found.total.low, found.total.high))
    total = coins_text(found.total.mean, found.money)
    return say("shopping-total", total=total, low=low, high=high, money=found.money)


def till_text(found: "Shopping") -> str:
    """Give what all packets cost together, with its interval: the figure of `sum_words`."""
    from lumped.quantities import coins_text, figure_text

    low, high = (figure_text(end, found.money) for end in (found.total.low, found.total.high))
    return f"{coins_text(found.total.mean, found.money)} {found.money} ({low} to {high})"


def used_words(found: "Shopping", *, little_over: bool) -> list[str]:
    """Say which oil would do for all, how the packets were chosen, and how good their prices are."""
    chosen = say("shopping-least") if little_over else say("shopping-cheapest")
    return [*filter(None, [found.one_oil]), chosen, say("shopping-used", money=found.money, dated=found.dated)]


def _packets(each: "Bought") -> str:
    from lumped.quantities import weight_text

    if not each.packets:
        return say("shopping-have") if each.need <= each.have else ""
    text = ""
    for size, count in each.packets:
        packet = say("shopping-packet", count=str(count), size=weight_text(size))
        text = say("shopping-packet-sum", left=text, right=packet) if text else packet
    return text


def _paid(each: "Bought") -> str:
    from lumped.quantities import figure_text

    return figure_text(each.cost.mean, each.cost.unit) if each.cost else ""
