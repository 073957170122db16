"""Taking in what a person brings: a form with one sculpture file and the recipes it names, or one recipe alone."""

import tomllib
from urllib.parse import urlsplit

from fastapi import Request
from fastapi.responses import HTMLResponse, RedirectResponse, Response
from starlette.datastructures import UploadFile

from lumped.app.given import SIZE_LIMIT, Given, plain_name
from lumped.errors import InputError
from lumped.texts import say
from lumped.web import paths
from lumped.web.kitchen import Kitchen
from lumped.web.plain import plain_page

__all__ = ["bring"]

FILES_LIMIT = 20


async def bring(request: Request, kitchen: Kitchen) -> Response:
    """Take files in and lead to the sculpture's page; say in words what can't be taken."""
    try:
        _refuse_elsewhere(request)
        key = kitchen.keep(_sorted_out(await _texts(request)))
    except InputError as error:
        return HTMLResponse(plain_page(str(error)), status_code=400)
    return RedirectResponse(paths.brought(key), status_code=303)


def _refuse_elsewhere(request: Request) -> None:
    """Take nothing that another site's page sends."""
    origin = request.headers.get("origin")
    if origin and urlsplit(origin).netloc != request.headers.get("host"):
        raise InputError("web-elsewhere")


async def _texts(request: Request) -> dict[str, str]:
    """Texts of the files by their plain names."""
    if int(request.headers.get("content-length") or 0) > 2 * SIZE_LIMIT:
        raise InputError("document-too-large", file=say("web-bring"), limit="2 MB")
    texts = {}
    async with request.form(max_files=FILES_LIMIT, max_fields=FILES_LIMIT) as form:
        for file in form.getlist("files"):
            if isinstance(file, UploadFile):
                texts[plain_name(file.filename or "")] = await _text(file)
    return texts


async def _text(file: UploadFile) -> str:
    name, content = plain_name(file.filename or ""), await file.read(SIZE_LIMIT + 1)
    if len(content) > SIZE_LIMIT:
        raise InputError("document-too-large", file=name, limit="2 MB")
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise InputError("document-not-text", file=name) from None


def _sorted_out(texts: dict[str, str]) -> Given:
    """Tell the sculpture from the recipes; a file alone is taken for what it says, or for a sculpture to be refused."""
    kinds = {name: _kind(text) for name, text in texts.items()}
    sculptures = [name for name, kind in kinds.items() if kind == "sculpture"]
    if not sculptures and len(texts) == 1:
        sculptures = list(texts)
    if not sculptures:
        raise InputError("web-no-sculpture")
    if len(sculptures) > 1:
        raise InputError("web-two-sculptures", count=len(sculptures))
    recipes = {name: text for name, text in texts.items() if kinds[name] == "recipe"}
    return Given(name=sculptures[0], text=texts[sculptures[0]], recipes=recipes)


def _kind(text: str) -> str:
    try:
        return str(tomllib.loads(text).get("kind", ""))
    except (tomllib.TOMLDecodeError, RecursionError):
        return ""
