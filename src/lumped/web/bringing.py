"""Taking in what a person brings: a sculpture with the recipes it names, a recipe, ingredients, batches.

Sculptures and recipes are looked at first; ingredients and batches are taken into the notebook, as
`lumped notebook save` does: all of them, or none.
"""

import asyncio
from urllib.parse import urlsplit

from fastapi import Request
from fastapi.responses import HTMLResponse, RedirectResponse, Response
from starlette.datastructures import UploadFile
from starlette.exceptions import HTTPException

from lumped.app.given import SIZE_LIMIT, Given, plain_name
from lumped.app.labels import label_texts
from lumped.app.titles import kind_in
from lumped.errors import InputError, LumpedError
from lumped.notebook import Revision
from lumped.texts import say
from lumped.web import paths
from lumped.web.kitchen import Kitchen
from lumped.web.plain import plain_page

__all__ = ["bring"]

FILES_LIMIT = 20


async def bring(request: Request, kitchen: Kitchen) -> Response:
    """Take files in and lead to what they hold; say in words what can't be taken."""
    try:
        _refuse_elsewhere(request)
        address = await asyncio.to_thread(_taken, kitchen, await _texts(request))
    except LumpedError as error:
        return HTMLResponse(plain_page(str(error)), status_code=400)
    return RedirectResponse(address, status_code=303)


def _refuse_elsewhere(request: Request) -> None:
    """Take nothing that another site's page sends."""
    origin = request.headers.get("origin")
    if origin and urlsplit(origin).netloc != request.headers.get("host"):
        raise InputError("web-elsewhere")


async def _texts(request: Request) -> dict[str, str]:
    """Texts of the files by their plain names."""
    if int(request.headers.get("content-length") or 0) > 2 * SIZE_LIMIT:
        raise InputError("document-too-large", file=say("web-bring"), limit="2 MB")
    texts: dict[str, str] = {}
    try:
        async with request.form(max_files=FILES_LIMIT, max_fields=FILES_LIMIT) as form:
            for file in (each for each in form.getlist("files") if isinstance(each, UploadFile)):
                if (name := plain_name(file.filename or "")) in texts:
                    raise InputError("web-bring-alike", file=name)
                texts[name] = await _text(file)
    except HTTPException:
        raise InputError("web-bring-many", most=FILES_LIMIT) from None
    return texts


async def _text(file: UploadFile) -> str:
    name, content = plain_name(file.filename or ""), await file.read(SIZE_LIMIT + 1)
    if len(content) > SIZE_LIMIT:
        raise InputError("document-too-large", file=name, limit="2 MB")
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError:
        key = "label-csv-encoding" if name.lower().endswith(".csv") else "document-not-text"
        raise InputError(key, file=name) from None


def _taken(kitchen: Kitchen, texts: dict[str, str]) -> str:
    """Tell the kinds of files apart, and give the address of what was taken in."""
    kinds = {name: _kind(name, text) for name, text in texts.items()}
    labels = {title: text for name in _of(kinds, "ingredient") for title, text in label_texts(texts[name], name)}
    batches, recipes = _of(kinds, "batch"), {name: texts[name] for name in _of(kinds, "recipe")}
    if batches and _of(kinds, "sculpture"):
        raise InputError("web-bring-apart")
    if batches or (labels and len(kinds) == len(_of(kinds, "ingredient"))):
        given = [Given(name=name, text=texts[name], recipes=recipes) for name in batches]
        return _address(kitchen.shelf.take_in(labels, given))
    return paths.brought(kitchen.keep(_sorted_out(texts, kinds, labels)))


def _of(kinds: dict[str, str], kind: str) -> list[str]:
    return [name for name, each in kinds.items() if each == kind]


def _address(revisions: tuple[Revision, ...]) -> str:
    """Where what was taken in can be seen: its own page, or the pantry or notebook for several."""
    if len(revisions) == 1:
        return paths.kept(revisions[0].document)
    return paths.PANTRY if all(each.kind == "ingredient" for each in revisions) else paths.NOTEBOOK


def _sorted_out(texts: dict[str, str], kinds: dict[str, str], labels: dict[str, str]) -> Given:
    """Tell the sculpture from the recipes; a file alone is taken for what it says, or for a sculpture to be refused."""
    sculptures = _of(kinds, "sculpture")
    others = [name for name in texts if kinds[name] != "ingredient"]
    if not sculptures and len(others) == 1:
        sculptures = others
    if not sculptures:
        raise InputError("web-no-sculpture")
    if len(sculptures) > 1:
        raise InputError("web-two-sculptures", count=len(sculptures))
    recipes = {name: texts[name] for name in _of(kinds, "recipe")}
    return Given(name=sculptures[0], text=texts[sculptures[0]], recipes=recipes, labels=labels)


def _kind(name: str, text: str) -> str:
    """Tell what a file is: a table holds ingredients, a TOML file says its kind."""
    return "ingredient" if name.lower().endswith(".csv") else kind_in(text)
