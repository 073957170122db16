"""A PostgreSQL of the tests' own: one cluster in a temporary folder, on a unix socket, gone afterwards."""

import os
import pwd
import shutil
import subprocess
import tempfile
from itertools import count
from pathlib import Path

__all__ = ["Server", "why_none"]

SUPER = "postgres"
GUARDED = "guarded"  # a role with a password, to be let in or not
SETTINGS = {
    "listen_addresses": "",
    "fsync": "on",
    "synchronous_commit": "on",
    "shared_buffers": "32MB",
    "max_connections": "40",
}


def why_none() -> str | None:
    """Say why no server can be started here; None if one can."""
    if _tool("initdb") is None or _tool("pg_ctl") is None:
        return "PostgreSQL is not installed here (Debian: apt-get install postgresql)"
    if os.geteuid() == 0 and (shutil.which("runuser") is None or _account() is None):
        return "PostgreSQL refuses to run as root, and there is no user postgres to run it"
    return None


class Server:
    """A running cluster; `close` stops and removes it."""

    def __init__(self) -> None:
        self.folder = Path(tempfile.mkdtemp(prefix="lumped-pg-"))  # short: a socket's path has at most 107 letters
        if os.geteuid() == 0:
            owner = _account()
            assert owner is not None
            os.chown(self.folder, owner.pw_uid, owner.pw_gid)
        self.folder.chmod(0o755)  # the socket is for this user too
        self._names = (f"notebook_{n}" for n in count(1))
        try:
            self._run("initdb", "-D", str(self.data), "-U", SUPER, "-A", "trust", "-E", "UTF8", "--locale=C", "-N")
            trust = (self.data / "pg_hba.conf").read_text()
            (self.data / "pg_hba.conf").write_text(f"local all {GUARDED} scram-sha-256\n{trust}")
            self.start()
            self.say(f"CREATE ROLE {GUARDED} LOGIN PASSWORD 'salt'")
        except BaseException:
            self.close()
            raise

    @property
    def data(self) -> Path:
        return self.folder / "data"

    def start(self) -> None:
        given = " ".join(f"-c {key}={value!r}" for key, value in SETTINGS.items()) + f" -k {self.folder}"
        self._run("pg_ctl", "-D", str(self.data), "-l", str(self.folder / "log"), "-o", given, "-w", "start")

    def stop(self, how: str = "fast") -> None:
        """Stop it: `fast` says farewell to clients, `immediate` is as if the power failed."""
        self._run("pg_ctl", "-D", str(self.data), "-m", how, "-w", "stop")

    def close(self) -> None:
        if (self.data / "postmaster.pid").exists():
            subprocess.run(
                self._command("pg_ctl", "-D", str(self.data), "-m", "immediate", "stop"),
                check=False,
                capture_output=True,
            )
        shutil.rmtree(self.folder, ignore_errors=True)

    def fresh(self) -> str:
        """Make a database that nobody used; give its address."""
        name = next(self._names)
        self.say(f"CREATE DATABASE {name}")
        return self.address(name)

    def address(self, database: str, *, user: str = SUPER, password: str = "") -> str:
        secret = f"&password={password}" if password else ""
        return f"postgresql:///{database}?host={self.folder}&user={user}{secret}"

    def drop(self, address: str) -> None:
        name = address.removeprefix("postgresql:///").partition("?")[0]
        self.say(f"DROP DATABASE IF EXISTS {name} WITH (FORCE)")

    def say(self, statement: str) -> None:
        import psycopg

        with psycopg.connect(host=str(self.folder), user=SUPER, dbname="postgres", autocommit=True) as connection:
            connection.execute(statement)

    def _run(self, tool: str, *arguments: str) -> None:
        # to a file, not a pipe: the server inherits it and would hold a pipe open
        with (self.folder / "said").open("w+") as said:
            done = subprocess.run(
                self._command(tool, *arguments), check=False, stdout=said, stderr=said, cwd="/", timeout=60
            )
            said.seek(0)
            if done.returncode:
                log = self.folder / "log"
                raise RuntimeError(f"{tool}: {said.read()}\n{log.read_text() if log.exists() else ''}")

    def _command(self, tool: str, *arguments: str) -> list[str]:
        found = _tool(tool)
        assert found is not None
        as_other = ["runuser", "-u", "postgres", "--"] if os.geteuid() == 0 else []
        return [*as_other, found, *arguments]


def _tool(name: str) -> str | None:
    """Debian keeps the tools of each version in a folder of their own; the newest one counts."""
    kept = sorted(Path("/usr/lib/postgresql").glob(f"*/bin/{name}"), key=lambda path: int(path.parts[4].split(".")[0]))
    return str(kept[-1]) if kept else shutil.which(name)


def _account() -> pwd.struct_passwd | None:
    try:
        return pwd.getpwnam("postgres")
    except KeyError:
        return None
