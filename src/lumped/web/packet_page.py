"""An ingredient of one's own from its packet: the label copied into a form, and beside it what Lumped takes from it."""

import asyncio
from collections.abc import Mapping
from typing import Any

from nicegui import PageArguments, html, ui
from nicegui.element import Element

from lumped.app.larder import choices
from lumped.app.packets import CONTAINS, Packet, filled_in, packet_of
from lumped.errors import LumpedError
from lumped.pantry import pantry, region, regions
from lumped.pantry.ingredient import METHODS
from lumped.texts import say
from lumped.web import paths
from lumped.web.filling import Filling
from lumped.web.ingredient_slips import put_ingredient
from lumped.web.kitchen import Kitchen
from lumped.web.looks import lead_to, press, sorry
from lumped.web.pantry_page import role_words
from lumped.web.quick import Quick, answer_to
from lumped.web.words import Words

__all__ = ["packet_page"]

_PER = ("100 g", "100 mL", "serving")
_PRINTED = ("energy_kJ", "energy_kcal", "fat_g", "carbohydrate_g", "sugars_g", "fibre_g", "protein_g", "salt_g",
            "sodium_mg")  # fmt: skip
_ALWAYS = {"kind", "schema", "title"}
_RARE = ("polyols_g", "water_g", "ash_g", "alcohol_g", "density_g_per_mL")


async def packet_page(kitchen: Kitchen, asked: PageArguments) -> None:
    """Lay out the form; empty, or filled in with an ingredient of the notebook."""
    with html.div().style("display: contents") as place:
        pass
    document = str(asked.query_parameters.get("of", ""))
    said: dict[str, str] = {}
    if document:
        try:
            kept = await asyncio.to_thread(kitchen.shelf.kept, document)
            if kept.revision.kind == "ingredient":
                said = filled_in(kept.text)
        except LumpedError:
            pass
    with place:
        await _PacketPage(kitchen, said, document if said else None).look(said)


class _PacketPage:
    def __init__(self, kitchen: Kitchen, said: Mapping[str, str], document: str | None) -> None:
        self._kitchen, self._document = kitchen, document
        self._packet = packet_of({})
        self._quick = Quick(packet_of, self._show)
        ui.page_title(say("web-page-title", title=say("web-packet")))
        with html.main(), html.div().classes("sheet-width question packet"):
            with html.header().classes("top"):
                lead_to(say("web-back-to-pantry"), paths.PANTRY, "to-pantry", "back")
                Words("h1", say("web-packet"))
                Words("p", say("web-packet-lure"), "soft")
            with html.div().classes("filled"):
                with html.section().classes("slip leaf"):
                    self._filling = Filling("packet", on_look=self.look, on_send=self._send)
                    with self._filling.form:
                        self._put_fields(said)
                        self._put_ends()
                with html.div().classes("taken").props("aria-live=polite"):
                    Words("h2", say("web-packet-taken"), "heading")
                    self._taken: Element = html.div().mark("taken")

    def _put_fields(self, said: Mapping[str, str]) -> None:
        one = self._filling
        one.write("title", say("web-packet-title"), said.get("title", ""), required=True, maxlength=80)
        alike = sorted(((key, each.name) for key, each in pantry().items()), key=lambda each: each[1])
        one.choose("like", say("web-packet-like"), [("", say("web-packet-like-none")), *alike], _like(said))
        roles = [(each, role_words(each)) for each in choices()["role"]]
        if ", " in said.get("role", ""):
            roles.insert(0, (said["role"], said["role"]))
        one.choose("role", say("web-pantry-role"), [("", say("web-packet-role-none")), *roles], said.get("role", ""))
        self._put_table(said)
        self._put_serving(said)
        self._put_allergens(said)
        self._put_price(said)

    def _put_price(self, said: Mapping[str, str]) -> None:
        one = self._filling
        Words("h2", say("web-packet-price"))
        Words("p", say("web-packet-price-hint"), "soft")
        with html.div().classes("figures-in"):
            one.write("pack_g", say("web-packet-pack-g"), said.get("pack_g", ""), inputmode="decimal", maxlength=12)
            one.write("pack_price", say("web-packet-pack-price"), said.get("pack_price", ""), inputmode="decimal",
                      maxlength=12)  # fmt: skip
        places = [(key, say("web-packet-money", place=region(key).name, money=region(key).currency))
                  for key in regions()]  # fmt: skip
        one.choose("bought_in", say("web-region"), [("", say("web-packet-unsaid")), *places], said.get("bought_in", ""))

    def _put_table(self, said: Mapping[str, str]) -> None:
        one = self._filling
        Words("h2", say("web-packet-table"))
        Words("p", say("web-packet-table-hint"), "soft")
        one.choose("per", say("web-packet-per"), [(each, say(f"web-packet-per-{each.replace(' ', '-')}"))
                                                  for each in _PER], said.get("per", ""))  # fmt: skip
        self._put_numbers(_PRINTED, said)
        with html.details() as fold:
            Words("summary", say("web-packet-rare"))
            self._put_numbers(_RARE, said)
            ways = [("", say("web-packet-fibre-unsaid")), ("yes", say("web-packet-fibre-yes")),
                    ("no", say("web-packet-fibre-no"))]  # fmt: skip
            one.choose("fibre_within", say("web-packet-fibre"), ways, said.get("fibre_within", ""))
            parts = [("", say("web-packet-unsaid")), *((each, each) for each in ("salt", "baking soda"))]
            one.choose("sodium_from", say("web-packet-sodium-from"), parts, said.get("sodium_from", ""))
        if any(said.get(name) for name in (*_RARE, "fibre_within", "sodium_from")):
            fold.props("open")

    def _put_serving(self, said: Mapping[str, str]) -> None:
        one = self._filling
        Words("h2", say("web-packet-serving"))
        with html.div().classes("figures-in"):
            one.write("serving_g", say("web-packet-serving-g"), said.get("serving_g", ""), inputmode="decimal")
            one.write("serving", say("web-packet-serving-measure"), said.get("serving", ""), maxlength=40)
        ways = [("", say("web-packet-unsaid")), *((each, each) for each in METHODS)]
        one.choose("filled", say("web-packet-filled"), ways, said.get("filled", ""))

    def _put_allergens(self, said: Mapping[str, str]) -> None:
        one = self._filling
        Words("h2", say("web-care-allergens"))
        hint = say("web-packet-none-hint")
        one.write("allergens", say("web-packet-allergens"), said.get("allergens", ""), hint=hint, maxlength=400)
        one.write("may_contain", say("web-packet-traces"), said.get("may_contain", ""), maxlength=400)
        with html.fieldset().classes("pick"):
            Words("legend", say("web-packet-contains"))
            for each in CONTAINS:
                one.tag(f"contains-{each}", each, chosen=bool(said.get(f"contains-{each}")))

    def _put_numbers(self, names: tuple[str, ...], said: Mapping[str, str]) -> None:
        with html.div().classes("figures-in"):
            for name in names:
                words = say(f"web-packet-{name.replace('_', '-')}")
                self._filling.write(name, words, said.get(name, ""), inputmode="decimal", maxlength=12)

    def _put_ends(self) -> None:
        with html.div().classes("takes"):
            button = html.button().classes("take ink").props("type=submit").mark("packet-keep")
            with button:
                Words("span", say("web-keep" if self._document is None else "web-keep-next"))
            press(say("web-take-file"), self._hand_out, "packet-file")
        self._trouble: Element = html.div().props("role=status")

    async def look(self, said: Mapping[str, str]) -> None:
        """Look at what stands in the fields, and show what comes of it."""
        await self._quick.ask(dict(said))

    def _show(self, packet: Packet | None, failure: Mapping[str, Any] | None) -> None:
        if packet is None:
            self._say([failure["message"] if failure else ""])
            return
        self._packet = packet
        rest = self._filling.tell(packet.slips)
        self._taken.clear()
        with self._taken:
            if set(packet.document) <= _ALWAYS:
                Words("p", say("web-packet-first"), "soft").mark("taken-not")
            elif packet.told is None:
                for words in rest or (say("web-packet-see-fields"),):
                    Words("p", words).mark("taken-not")
            else:
                priced = ("offers",) if packet.document.get("bought_in") else ()
                put_ingredient(packet.told, known=("made_of", "weights", "touch", *priced))

    async def _send(self, said: dict[str, str]) -> None:
        """Keep it, or say what is still wrong and leave everything as it was typed."""
        packet, failure = await answer_to(packet_of, said)
        self._show(packet, failure)
        if packet is None:
            return
        if not said.get("title", "").strip():
            self._filling.tell({**packet.slips, "title": say("document-remedy-short")})
            self._filling.go_to_first()
        elif packet.told is None:
            self._filling.go_to_first()
        else:
            await self._keep(packet)

    async def _keep(self, packet: Packet) -> None:
        shelf, given = self._kitchen.shelf, packet.given
        try:
            if self._document is None:
                kept = await asyncio.to_thread(shelf.keep_titled, given)
            else:
                kept = await asyncio.to_thread(shelf.keep, given, document=self._document)
        except LumpedError as error:
            self._say([str(error)])
            return
        ui.navigate.to(paths.kept(kept.document))

    def _say(self, sentences: list[str]) -> None:
        self._trouble.clear()
        with self._trouble:
            for words in sentences:
                sorry(words, "packet-trouble")

    def _hand_out(self) -> None:
        if self._packet.told is None:
            self._filling.go_to_first()
            return
        given = self._packet.given
        ui.download(given.text.encode(), given.name, "application/toml")


def _like(said: Mapping[str, str]) -> str:
    return pantry().key_of(said.get("like", "")) or ""
