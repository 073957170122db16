"""The command `lumped`: verbs that each call one function of `app` and show what it returns.

Exit codes: 0 computed (a sad verdict too), 1 the file or the work failed, 2 wrong usage.
"""

from lumped.cli.main import main

__all__ = ["main"]
