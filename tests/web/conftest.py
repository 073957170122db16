"""A kitchen with one worker, and a notebook of its own, for all tests of a module; a browser."""

import pytest
from tests.web.served import FLAGS, chromium

from lumped.app.jobs import Jobs
from lumped.app.settings import Settings
from lumped.web.kitchen import Kitchen


@pytest.fixture(scope="module")
def kitchen(tmp_path_factory):
    jobs = Jobs(workers=1)
    jobs.warm_up()
    place = tmp_path_factory.mktemp("notebook") / "notebook.sqlite"
    kitchen = Kitchen(settings=Settings(effort="quick", notebook=str(place), who="Ann"), jobs=jobs)
    yield kitchen
    jobs.close()
    kitchen.shelf.close()


@pytest.fixture(scope="module")
def browser():
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium(), args=FLAGS)
        yield browser
        browser.close()
