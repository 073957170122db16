"""The running app: pages by their address, on this computer only, until Ctrl-C."""

import logging
import signal
import socket
import threading
from collections.abc import Callable
from contextlib import suppress
from functools import partial

from fastapi import Request
from fastapi.responses import Response
from nicegui import app, ui
from nicegui.elements.sub_pages import SubPages
from starlette.middleware.trustedhost import TrustedHostMiddleware

from lumped.app.jobs import Jobs
from lumped.app.readings import warm_up
from lumped.app.settings import Settings
from lumped.errors import InputError
from lumped.texts import say
from lumped.web import paths
from lumped.web.batch_page import batch_page
from lumped.web.beside_page import beside_page
from lumped.web.bringing import bring
from lumped.web.care_page import care_page
from lumped.web.dough_page import dough_page
from lumped.web.file_page import brought_page, example_page
from lumped.web.first_page import ask_for_sketches, first_page
from lumped.web.ingredient_page import ingredient_page
from lumped.web.kept_page import kept_page
from lumped.web.kitchen import Kitchen
from lumped.web.make_page import make_page
from lumped.web.maps_pages import mix_page, salt_page
from lumped.web.notebook_page import notebook_page
from lumped.web.nothing import nothing_here
from lumped.web.packet_page import packet_page
from lumped.web.pantry_page import pantry_page
from lumped.web.shape_page import shape_page
from lumped.web.swap_page import swap_page
from lumped.web.theme import ICON, serve_looks, wear
from lumped.web.time_page import time_page
from lumped.web.trial_page import trial_page
from lumped.web.wall_page import wall_page

__all__ = ["add_routes", "pages", "serve"]

HOST = "127.0.0.1"
_ASKED = {"swap": swap_page, "salt": salt_page, "mix": mix_page, "care": care_page, "wall": wall_page,
          "beside": beside_page, "time": time_page, "trial": trial_page, "make": make_page,
          "batch": batch_page}  # fmt: skip


def serve(settings: Settings) -> None:
    """Serve the app on this computer until Ctrl-C.

    Parameters
    ----------
    settings : Settings
        Port 0 takes any free one.

    Raises
    ------
    InputError
        If the port is in use.
    """
    port = _free_port(settings.port)
    jobs = Jobs()
    kitchen = Kitchen(settings=settings, jobs=jobs)
    app.add_middleware(TrustedHostMiddleware, allowed_hosts=[HOST, "localhost"])
    add_routes(kitchen)
    app.on_startup(lambda: _open_up(kitchen, port))
    logging.getLogger("nicegui").setLevel(logging.ERROR)
    signal.signal(signal.SIGTERM, signal.default_int_handler)  # to be ended from outside is as good as Ctrl-C
    try:
        with suppress(KeyboardInterrupt):
            ui.run(
                pages(kitchen), host=HOST, port=port, title=say("web-title"), favicon=ICON, language="en-GB", dark=None,
                show=False, reload=False, show_welcome_message=False, tailwind=False, uvicorn_logging_level="error",
                binding_refresh_interval=None,
            )  # fmt: skip
    finally:
        jobs.close()
        kitchen.shelf.close()


def pages(kitchen: Kitchen) -> Callable[[], None]:
    """Give the function that builds the page of the address that is asked for.

    Parameters
    ----------
    kitchen : Kitchen
        What all pages share.
    """

    def root() -> None:
        wear()
        _Pages(
            {
                paths.TABLE: partial(first_page, kitchen),
                paths.SHAPE: partial(shape_page, kitchen),
                paths.EXAMPLE: partial(example_page, kitchen),
                paths.DOUGH: partial(dough_page, kitchen),
                **{paths.ASK[what]: partial(page, kitchen) for what, page in _ASKED.items()},
                paths.PANTRY: partial(pantry_page, kitchen),
                paths.INGREDIENT: partial(ingredient_page, kitchen),
                paths.PACKET: partial(packet_page, kitchen),
                paths.BROUGHT: partial(brought_page, kitchen),
                paths.NOTEBOOK: partial(notebook_page, kitchen),
                paths.KEPT: partial(kept_page, kitchen),
                paths.OLD: partial(kept_page, kitchen),
            }
        )

    return root


def add_routes(kitchen: Kitchen) -> None:
    """Add what is no page: looks, and the form that takes files in."""
    serve_looks()

    @app.post(paths.BRING)
    async def _bring(request: Request) -> Response:
        return await bring(request, kitchen)


class _Pages(SubPages):
    """Pages by address; an unknown one says so in our words."""

    def _render_404(self) -> None:
        nothing_here()

    def _render_error(self, _: Exception) -> None:
        nothing_here(say("work-broke-off"))


def _open_up(kitchen: Kitchen, port: int) -> None:
    kitchen.jobs.warm_up()
    threading.Thread(target=warm_up, daemon=True).start()
    ask_for_sketches(kitchen)
    print(say("cli-serving", address=f"http://{HOST}:{port}"), flush=True)


def _free_port(port: int) -> int:
    """Give the port, or any free one for 0, if nobody else uses it."""
    with socket.socket() as door:
        door.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            door.bind((HOST, port))
        except OSError:
            raise InputError("port-taken", port=str(port), other=str(port + 1)) from None
        return int(door.getsockname()[1])
