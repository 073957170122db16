"""The page of a dough that comes along with Lumped."""

from nicegui import PageArguments, html

from lumped.app.examples import example_recipe
from lumped.app.given import Given
from lumped.web import paths
from lumped.web.asked import Asked, sorted_query, with_own
from lumped.web.kitchen import Kitchen
from lumped.web.nothing import nothing_here
from lumped.web.recipe_view import RecipeView

__all__ = ["dough_page"]


async def dough_page(kitchen: Kitchen, name: str, asked: PageArguments) -> None:
    """Lay out the page of an example recipe; what was changed of it stands in the address, so it can be kept."""
    text = example_recipe(name)
    if text is None:
        nothing_here()
        return
    options, changes = sorted_query(asked.query_parameters)
    with html.div().style("display: contents") as place:
        pass
    given = await with_own(kitchen, Given(name=name, text=text))
    with place:
        RecipeView(kitchen, Asked(page=paths.dough(name), written=given, changes=changes, options=options))
