"""The command `lumped`: verbs that each call one function of `app` and show what it returns.

Exit codes: 0 computed (a sad verdict too), 1 the file or the work failed, 2 wrong usage.
"""

import os

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # over matrices as small as a dough's, threads only wait

from lumped.cli.main import main

__all__ = ["main"]
