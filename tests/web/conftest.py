"""A kitchen with one worker, and a notebook of its own, for all tests of a module."""

import pytest

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
