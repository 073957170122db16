"""A file that somebody asks for: seen before a long computation to be possible, written whole or not at all."""

from contextlib import suppress
from pathlib import Path

from lumped.errors import InputError

__all__ = ["ready_to_write", "write_whole"]


def ready_to_write(path: Path, endings: tuple[str, ...]) -> None:
    """See before a long computation that its result can be written.

    Parameters
    ----------
    path : Path
        Where something will be written.
    endings : tuple of str
        What its name may end in.

    Raises
    ------
    InputError
        If the ending is another one, its folder is missing, or nothing can be written there.
    """
    from lumped.documents import refuse_missing_folder

    if path.suffix.lower() not in endings:
        raise InputError("file-ending", file=str(path), endings=" or ".join(endings))
    try:
        refuse_missing_folder(path)
        part = path.with_name(path.name + ".part")
        part.touch()
        part.unlink()
    except InputError:
        raise
    except (OSError, ValueError) as error:
        raise _unwritable(path, error) from None


def write_whole(path: Path, content: bytes) -> None:
    """Write a file whole or not at all.

    Raises
    ------
    InputError
        If it can't be written.
    """
    part = path.with_name(path.name + ".part")
    try:
        part.write_bytes(content)
        part.replace(path)
    except OSError as error:
        with suppress(OSError):
            part.unlink()
        raise _unwritable(path, error) from None


def _unwritable(path: Path, error: Exception) -> InputError:
    return InputError("file-unwritable", file=str(path), problem=getattr(error, "strerror", None) or str(error))
