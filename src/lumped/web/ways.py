"""Ways on from a dough: what else can be asked about it, each a page of its own."""

from nicegui import html

from lumped.texts import say
from lumped.web import paths
from lumped.web.asked import Asked
from lumped.web.looks import lead_to
from lumped.web.words import Words

__all__ = ["Ways", "put_other_ways"]


class Ways:
    """Links that follow the recipe of the page while it changes; a new question needs a row in `paths.ASK` only."""

    def __init__(self) -> None:
        self._links: dict[str, html.a] = {}
        with html.nav().classes("onward") as place:
            place.props.update({"aria-label": say("web-ways")})
            for what in paths.ASK:
                with lead_to(say(f"web-way-{what}"), "", f"way-{what}", "way") as link:
                    Words("span", say(f"web-way-{what}-lure"), "soft")
                self._links[what] = link

    def lead(self, asked: Asked) -> None:
        """Lead on from a recipe."""
        for what, link in self._links.items():
            link.props.update({"href": asked.ask(what)})


def put_other_ways(asked: Asked, here: str) -> None:
    """Put the ways on from one question to the others on its page."""
    with html.nav().classes("ways-on") as place:
        place.props.update({"aria-label": say("web-ways")})
        for what in paths.ASK:
            if what != here:
                lead_to(say(f"web-way-{what}"), asked.ask(what), f"way-{what}", "back")
