"""The folder that a file should go into: one that is missing was mistyped, so it is named and never made."""

from pathlib import Path

from lumped.errors import InputError

__all__ = ["refuse_missing_folder"]


def refuse_missing_folder(path: Path) -> None:
    """See that the folder is there in which something will be written.

    Parameters
    ----------
    path : Path
        What will be written: a file, or a new folder.

    Raises
    ------
    InputError
        If there is no such folder; it names the first that is missing.
    OSError
        If that can't be seen.
    """
    missing = [each for each in path.absolute().parents if not each.exists()]
    if missing:
        near = len(missing) - 1
        raise InputError("folder-missing", folder=str(path.parents[near]), file=str(path))
