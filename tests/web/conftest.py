"""A kitchen with one worker for all tests of a module."""

import pytest

from lumped.app.jobs import Jobs
from lumped.app.settings import Settings
from lumped.web.kitchen import Kitchen


@pytest.fixture(scope="module")
def kitchen():
    jobs = Jobs(workers=1)
    jobs.warm_up()
    yield Kitchen(settings=Settings(effort="quick"), jobs=jobs)
    jobs.close()
