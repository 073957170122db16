"""A file or a folder takes its name only when it is whole, and never the name of something that is there."""

import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from lumped.errors import InputError, LumpedError
from lumped.notebook.lines import shown

__all__ = ["whole_file", "whole_folder"]


@contextmanager
def whole_file(path: Path, *, make_folder: bool = False) -> Iterator[Path]:
    """Give a name beside `path` to write to; when the block ends well, what is there becomes `path`.

    Parameters
    ----------
    path : Path
        A file that is not there yet.
    make_folder : bool
        Whether its folder is Lumped's own, and made if need be; one that a person named may be mistyped.

    Raises
    ------
    InputError
        If there is something of that name, its folder is missing, or the disk refuses; then nothing is left behind.
    """
    from lumped.documents import refuse_missing_folder

    with _in_words(path):
        if os.path.lexists(path):
            raise InputError("plain-exists", file=str(path))
        if make_folder:
            path.parent.mkdir(parents=True, exist_ok=True)
        refuse_missing_folder(path)
        handle, name = tempfile.mkstemp(prefix=path.name[:100] + ".", suffix=".part", dir=path.parent)
        part = Path(name)
        try:
            os.close(handle)
            part.chmod(0o666 & ~_mask())
            yield part
            _sync(part)
            _name(part, path)
            _sync(path.parent)
        finally:
            part.unlink(missing_ok=True)


@contextmanager
def whole_folder(path: Path) -> Iterator[Path]:
    """Give a folder beside `path` to write into; when the block ends well, it becomes `path`.

    Raises
    ------
    InputError
        If there is something of that name (other than an empty folder), its folder is missing, or the disk refuses;
        then nothing is left.
    """
    from lumped.documents import refuse_missing_folder

    with _in_words(path):
        if os.path.lexists(path) and (path.is_symlink() or not path.is_dir() or any(path.iterdir())):
            raise InputError("plain-exists", file=str(path))
        refuse_missing_folder(path)
        part = Path(tempfile.mkdtemp(prefix=path.name[:100] + ".", suffix=".part", dir=path.parent))
        try:
            part.chmod(0o777 & ~_mask())
            yield part
            _sync_all(part)
            with suppress(FileNotFoundError):
                path.rmdir()  # only an empty one can go
            part.rename(path)
            _sync(path.parent)
        finally:
            shutil.rmtree(part, ignore_errors=True)


def _name(part: Path, path: Path) -> None:
    try:
        path.hardlink_to(part)  # unlike renaming, this fails if the name was taken meanwhile
    except FileExistsError:
        raise InputError("plain-exists", file=str(path)) from None
    except OSError:  # a disk without such links
        part.rename(path)


@contextmanager
def _in_words(path: Path) -> Iterator[None]:
    try:
        yield
    except LumpedError:
        raise
    except (OSError, ValueError) as error:
        problem = getattr(error, "strerror", None) or str(error)
        raise InputError("plain-unwritable", file=shown(path, 200), problem=shown(problem, 120)) from None


def _mask() -> int:
    mask = os.umask(0o077)
    os.umask(mask)
    return mask


def _sync_all(folder: Path) -> None:
    """One call for many files: to wait for each of ten thousand takes minutes."""
    if hasattr(os, "sync"):
        os.sync()
        return
    for each in folder.rglob("*"):
        if each.is_file():
            _sync(each)


def _sync(path: Path) -> None:
    if os.name != "posix" and path.is_dir():
        return
    handle = os.open(path, os.O_RDWR if path.is_file() else os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
