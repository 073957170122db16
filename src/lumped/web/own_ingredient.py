"""An ingredient of the notebook on its page: what is known of it, and its label to be changed or taken along."""

from collections.abc import Callable
from typing import Any

from nicegui import html

from lumped.app.kept import Kept
from lumped.app.larder import ingredient_told, shop_with_own
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.ingredient_slips import put_ingredient
from lumped.web.kitchen import Kitchen
from lumped.web.looks import hand_out, lead_to, sorry
from lumped.web.past import put_old
from lumped.web.words import Words

__all__ = ["put_own"]


def put_own(kitchen: Kitchen, kept: Kept, on_changed: Callable[[], Any]) -> None:
    """Put a person's own ingredient on the page, as it is now or as it once was."""
    if kept.old:
        put_old(kitchen, kept, on_changed)
    title, text = kept.revision.title, kept.text
    shop, troubles = shop_with_own({title: text})
    try:
        told = ingredient_told(shop, title)
    except LumpedError as problem:
        troubles, told = troubles or (str(problem),), None
    for words in troubles:
        sorry(words, "ingredient-trouble")
    if told is not None:
        put_ingredient(told, known=("made_of", "touch", "cautions", "weights", "printed"))
    with html.section().classes("slip folds"), html.details():
        Words("summary", say("web-own-label"))
        Words("pre", text, "as-file")
    with html.div().classes("takes"):
        if not kept.old:
            lead_to(say("web-own-change"), paths.packet(kept.revision.document), "packet-change", "take")
        hand_out(say("web-take-file"), text, kept.given.name if kept.given else "", "take-file")
