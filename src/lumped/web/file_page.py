"""A sculpture from a file: one of the story's, or what was brought along."""

from nicegui import PageArguments, html

from lumped.app.examples import example_heading, example_text
from lumped.app.given import Given
from lumped.app.titles import kind_in
from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked, sorted_query, with_own
from lumped.web.kitchen import Kitchen
from lumped.web.nothing import nothing_here
from lumped.web.recipe_view import RecipeView
from lumped.web.sculpture_view import SculptureView

__all__ = ["brought_page", "example_page"]


def example_page(kitchen: Kitchen, name: str) -> None:
    """Lay out the page of a sculpture of the story."""
    text = example_text(name)
    if text is None:
        nothing_here()
        return
    SculptureView(kitchen, example_heading(name)[0]).ask(Given(name=name, text=text))


async def brought_page(kitchen: Kitchen, key: str, asked: PageArguments) -> None:
    """Lay out the page of a sculpture, or a recipe with what was changed of it, that was brought along."""
    given = kitchen.brought(key)
    if given is None:
        nothing_here(say("web-no-brought"))
        return
    with html.div().style("display: contents") as place:
        pass
    given = await with_own(kitchen, given)
    with place:
        if kind_in(given.text) == "recipe":
            options, changes = sorted_query(asked.query_parameters)
            RecipeView(kitchen, Asked(page=paths.brought(key), written=given, changes=changes, options=options))
        else:
            SculptureView(kitchen, given.name).ask(given)
