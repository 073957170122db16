"""A person at the pages, without a browser; and what she reads there."""

import asyncio
from contextlib import asynccontextmanager

from nicegui import ElementFilter
from nicegui.testing import user_simulation

from lumped.web import add_routes, pages, paths
from lumped.web.drawing import Drawing
from lumped.web.words import Words

__all__ = ["a_person", "answered", "away", "beside", "bring", "drawn", "slip", "texts", "there", "wait_for", "within"]


@asynccontextmanager
async def a_person(kitchen):
    async with user_simulation(root=pages(kitchen)) as user:
        add_routes(kitchen)
        yield user


async def wait_for(true, seconds=30.0):
    for _ in range(int(seconds / 0.05)):
        if true():
            return
        await asyncio.sleep(0.05)
    raise AssertionError("it never came")


def texts(user, marker=None):
    with user.client:
        return [each.text for each in ElementFilter(kind=Words, marker=marker)]


def there(user, marker):
    """Whether something of that name lies on the page."""
    with user.client:
        return next(iter(ElementFilter(marker=marker)), None) is not None


def away(user, marker):
    """Whether what has that name is taken off the page for now, by itself or with what it lies in."""
    with user.client:
        place = next(iter(ElementFilter(marker=marker)))
        return any("hidden-now" in each.classes for each in (place, *place.ancestors()))


def within(user, marker):
    """All words inside what has that name."""
    with user.client:
        place = next(iter(ElementFilter(marker=marker)))
        return [each.text for each in ElementFilter(kind=Words).within(instance=place)]


def beside(user, name):
    """What stands beside a field of a form; "" if nothing is wrong with it."""
    with user.client:
        place = next(iter(ElementFilter(marker=f"beside-{name}")))
    return "" if "hidden-now" in place.classes else place.text


def drawn(user):
    with user.client:
        return [each.svg for each in ElementFilter(kind=Drawing)]


def slip(user, part):
    with user.client:
        found = next(iter(ElementFilter(marker=f"slip-{part}".split())), None)
        return [] if found is None else [each.text for each in ElementFilter(kind=Words).within(instance=found)]


async def answered(user, part):
    await wait_for(lambda: slip(user, part) or texts(user, "failure"))
    return slip(user, part)


async def bring(user, files, **headers):
    parts = [("files", (name, text, "application/toml")) for name, text in files.items()]
    return await user.http_client.post(paths.BRING, files=parts, headers=headers)
