"""Settings: flags over `LUMPED_…` variables over settings.toml over defaults; and the folders that Lumped uses."""

import os
import tomllib
from collections.abc import Mapping
from dataclasses import asdict, dataclass, fields
from pathlib import Path
from typing import Any, Literal

from platformdirs import user_config_path

from lumped.documents import is_there
from lumped.errors import InputError

__all__ = ["Settings", "load_settings", "settings_path"]

_CHOICES: dict[str, tuple[str, ...]] = {"paper": ("a4", "us-letter"), "effort": ("quick", "full")}


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """What a person may set once and for all.

    Parameters
    ----------
    paper : {"a4", "us-letter"}
        Size of printed sheets.
    effort : {"quick", "full"}
        How finely a check is computed.
    port : int
        Port of the app on this computer.
    notebook : str
        Place of the notebook: a file, a folder, or a PostgreSQL address; the usual file if empty.
    who : str
        Who writes in the notebook; the name of the user of this computer if empty.

    Examples
    --------
    >>> Settings().paper
    'a4'
    """

    paper: Literal["a4", "us-letter"] = "a4"
    effort: Literal["quick", "full"] = "full"
    port: int = 8765
    notebook: str = ""
    who: str = ""

    def as_dict(self) -> dict[str, Any]:
        """Give them as JSON shows them."""
        return asdict(self)


def settings_path() -> Path:
    """Give the place of settings.toml."""
    return user_config_path("lumped") / "settings.toml"


def load_settings(
    flags: Mapping[str, Any] | None = None, environment: Mapping[str, str] | None = None, file: Path | None = None
) -> Settings:
    """Gather the settings.

    Parameters
    ----------
    flags : mapping, optional
        What was said on the command line; None means not said.
    environment : mapping of str to str, optional
        Variables; those of the process if left out.
    file : Path, optional
        The settings file; the usual one if left out.

    Returns
    -------
    Settings

    Raises
    ------
    InputError
        If a setting is unknown or can't be what it is said to be, with where it was said.

    Examples
    --------
    >>> load_settings({"paper": "us-letter"}, environment={"LUMPED_PAPER": "a4"}, file=Path("none")).paper
    'us-letter'
    """
    known = {field.name for field in fields(Settings)}
    environment = os.environ if environment is None else environment
    said: dict[str, tuple[Any, str]] = {}
    path = file or settings_path()
    if is_there(path):
        try:
            said |= {name: (value, str(path)) for name, value in tomllib.loads(path.read_text("utf-8")).items()}
        except (tomllib.TOMLDecodeError, UnicodeDecodeError) as error:
            raise InputError("document-not-toml", file=str(path), problem=str(error)) from None
    for name in known:
        if (value := environment.get(f"LUMPED_{name.upper()}")) is not None:
            said[name] = (value, f"LUMPED_{name.upper()}")
        if flags and flags.get(name) is not None:
            said[name] = (flags[name], f"--{name}")
    return Settings(**{name: _read(name, value, where, known) for name, (value, where) in said.items()})


def _read(name: str, value: Any, where: str, known: set[str]) -> Any:
    if name not in known:
        raise InputError("setting-unknown", name=name, where=where, known=", ".join(sorted(known)))
    if name == "port":
        if not str(value).isdecimal() or not 0 <= int(value) <= 65535:
            raise InputError("setting-port", value=str(value), where=where)
        return int(value)
    if name in _CHOICES and value not in _CHOICES[name]:
        choices = ", ".join(_CHOICES[name])
        raise InputError("setting-choice", name=name, value=str(value), where=where, choices=choices)
    return str(value)
