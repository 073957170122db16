"""Places for notebooks: a file, and a database on a server of the tests' own."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from tests.notebook.servers import Server, why_none


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    """One cluster for each worker, started when the first test asks for it."""
    if reason := why_none():
        pytest.skip(reason)
    running = Server()
    try:
        yield running
    finally:
        running.close()


@pytest.fixture
def server_address(server: Server) -> Iterator[str]:
    """The address of a database that nobody used."""
    address = server.fresh()
    yield address
    server.drop(address)


@pytest.fixture(params=["file", "server"])
def place(request: pytest.FixtureRequest, tmp_path: Path) -> str | Path:
    """A place for a notebook: the test runs once with a file, once with a database on a server."""
    if request.param == "file":
        return tmp_path / "notebook.sqlite"
    address: str = request.getfixturevalue("server_address")
    return address
