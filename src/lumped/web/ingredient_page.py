"""One ingredient of the pantry: what is known of it, and of each figure where it comes from."""

import asyncio

from nicegui import PageArguments, html, ui

from lumped.app.larder import ingredient_told
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.ingredient_slips import put_ingredient
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to
from lumped.web.nothing import nothing_here
from lumped.web.pantry_page import own_shop
from lumped.web.words import Words

__all__ = ["ingredient_page"]


async def ingredient_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the page of an ingredient, which the address calls by its key or any name of it."""
    with html.div().style("display: contents") as place:
        pass
    shop, _, documents = await own_shop(kitchen)
    try:
        told = await asyncio.to_thread(ingredient_told, shop, str(asked.query_parameters.get("name", "")))
    except LumpedError as error:
        with place:
            nothing_here(str(error))
        return
    with place, html.main(), html.div().classes("sheet-width question"):
        ui.page_title(say("web-page-title", title=told["title"]))
        with html.header().classes("top"):
            lead_to(say("web-back-to-pantry"), paths.PANTRY, "to-pantry", "back")
            Words("h1", told["title"])
            if told["own"] and told["title"] in documents:
                lead_to(say("web-ingredient-kept"), paths.kept(documents[told["title"]]), "to-kept", "back")
        put_ingredient(told)
