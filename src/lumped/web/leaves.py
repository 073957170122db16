"""What is in the notebook, as things on the table: found by a word, or by what kind of thing it is."""

import asyncio
from collections.abc import Sequence

from nicegui import html, ui
from nicegui.element import Element

from lumped.app.kept import Leaf
from lumped.errors import LumpedError
from lumped.texts import say
from lumped.web import paths
from lumped.web.controls import choose
from lumped.web.drawing import Drawing
from lumped.web.fields import search_field
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, moment, press, reveal, sorry
from lumped.web.past import kind_words
from lumped.web.sketches import draw_soon
from lumped.web.words import Words

__all__ = ["Leaves", "put_shelf"]

DRAWN = 8  # sculptures that are drawn; the workers have other things to do too
FEW = 6  # from more on it is worth searching
_MADE = ("sculpture", "recipe")


class Leaves:
    """A list of documents that can be searched.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    kinds : sequence of str
        Kinds that can be chosen; none of them means all.
    shown : int
        How many are shown at first.
    only_made : bool
        Whether to leave out what is neither a sculpture nor a recipe, unless it is asked for.
    """

    def __init__(self, kitchen: Kitchen, *, kinds: Sequence[str], shown: int, only_made: bool = False) -> None:
        self._kitchen, self._shown, self._only_made = kitchen, shown, only_made
        self._kind, self._words = "", ""
        self._asked = 0
        self.empty = True
        with html.div().classes("search hidden-now") as self._search:
            search_field(self._look_for)
            options = [("", say("web-kinds-all")), *((kind, say(f"web-kinds-{kind}")) for kind in kinds)]
            choose(say("web-kinds"), options, "", self._choose, classes="ways", marker="kind")
        self._found = Words("p", "", "unseen").props("role=status")
        self._list: Element = html.div().mark("leaves")

    async def _look_for(self, words: str) -> None:
        self._words = words
        await self.show()

    async def _choose(self, kind: str) -> None:
        self._kind = kind
        await self.show()

    async def show(self) -> None:
        """Read the notebook and show what was found."""
        self._asked += 1
        asked = self._asked
        trouble, leaves = "", ()  # type: str, tuple[Leaf, ...]
        try:
            leaves = await asyncio.to_thread(
                self._kitchen.shelf.leaves, kind=self._kind or None, words=self._words, drawn=DRAWN
            )
        except LumpedError as error:
            trouble = str(error)
        if asked != self._asked:
            return
        if self._only_made and not self._kind:
            leaves = tuple(each for each in leaves if each.entry.kind in _MADE)
        searched = bool(self._kind or self._words)
        self.empty = not (leaves or searched or trouble)
        reveal(self._search, searched or len(leaves) > FEW)
        self._found.tell(say("web-found", count=len(leaves)) if searched else "")
        self._list.clear()
        with self._list:
            if trouble:
                sorry(trouble, "notebook-trouble")
            elif leaves:
                self._put(leaves)
            elif searched:
                Words("p", say("web-found", count=0), "soft")

    def _put(self, leaves: Sequence[Leaf], start: int = 0) -> None:
        drawings = []
        with html.ul().classes("shelf"):
            for leaf in leaves[start : start + self._shown]:
                with html.li():
                    drawing = _put_leaf(leaf)
                if drawing is not None and leaf.given is not None:
                    drawings.append((drawing, leaf.given.computed("quick")))
        draw_soon(self._kitchen, drawings)
        rest = len(leaves) - start - self._shown
        if rest > 0:
            with html.div().classes("takes") as more:

                def go_on() -> None:
                    more.clear()
                    with self._list:
                        self._put(leaves, start + self._shown)

                press(say("web-more", count=rest), go_on, "more")


def _put_leaf(leaf: Leaf) -> Drawing | None:
    """Put one document on the page, with room for its drawing if it is to be drawn."""
    entry, drawing = leaf.entry, None
    with html.a(href=paths.kept(entry.document)).classes("sheaf").mark(f"leaf-{entry.document}"):
        if leaf.given is not None:
            with html.div().classes("mat small"):
                drawing = Drawing(entry.title)
        with html.div():
            Words("b", entry.title)
            Words("span", kind_words(entry.kind), "kind")
            Words("p", say("web-leaf", number=entry.number, moment=moment(entry.at), who=entry.made_by), "soft")
    return drawing


def put_shelf(kitchen: Kitchen) -> None:
    """Put what was written down last on the first page; nothing if there is nothing yet."""
    with html.section().classes("hidden-now").mark("shelf") as place:
        place.props.update({"aria-label": say("web-notebook")})
        Words("h2", say("web-notebook"), "heading")
        Words("p", say("web-notebook-lure"), "soft")
        leaves = Leaves(kitchen, kinds=_MADE, shown=DRAWN, only_made=True)
        lead_to(say("web-notebook-all"), paths.NOTEBOOK, "to-notebook", "back")

    async def look() -> None:
        await leaves.show()
        reveal(place, not leaves.empty)

    with place:
        ui.timer(0.01, look, once=True)
