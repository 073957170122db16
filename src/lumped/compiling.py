"""Loops compiled to machine code once, and kept on disk for the next time.

numba keeps what it compiled beside the source (or in the user's cache, where that can't be written) and compiles anew
when the file of a loop changed, but not when a file that the loop calls into did. So whatever was compiled before the
newest file of a loop's package is forgotten here first.
"""

from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any

from numba import njit

__all__ = ["compiled"]


def compiled(function: Callable[..., Any], *, parallel: bool = False, **options: Any) -> Callable[..., Any]:
    """Compile a loop when it is first called, or read back what was compiled before.

    Parameters
    ----------
    function : callable
        A function that numba can compile; it runs without holding Python's lock, and division by zero gives
        infinity.
    parallel : bool
        Whether `prange` runs on all threads.
    **options
        More of numba's options.

    Examples
    --------
    Above a function of a module: ``@compiled``.
    """
    made = njit(parallel=parallel, cache=True, nogil=True, error_model="numpy", **options)(function)
    _forget_stale(made._cache.cache_path, str(Path(function.__code__.co_filename).parent))
    return made  # type: ignore[no-any-return]


@cache
def _forget_stale(kept: str, package: str) -> None:
    """Remove the index of whatever was compiled before the newest source of a package."""
    newest = max((source.stat().st_mtime_ns for source in Path(package).glob("*.py")), default=0)
    for index in Path(kept).glob("*.nbi"):
        try:
            if index.stat().st_mtime_ns < newest:
                index.unlink()
        except OSError:
            pass  # another process was quicker, or it can't be written: numba's own check remains
